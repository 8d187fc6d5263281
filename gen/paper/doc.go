// Package paper knows how much water a sheet holds, and what that water does when
// the sheet is heated faster than it can dry.
//
// # The sheet and its room
//
// An isotherm gives the moisture of a material in equilibrium with air:
//
//	M    moisture, kg water per kg dry material (never per kg of moist sheet)
//	a    water activity: relative humidity of the air in equilibrium, 0 to 1
//	T    temperature, K        t   the same in °C
//	R    461.5 J/(kg K), gas constant of water vapour
//
// Three are here, and they part: Pulp (GAB, the one to use first), Wood and
// PaltakariKarlsson. Pulp is too wet above 75 % relative humidity beside measured
// paper, and too dry below 40 % (Handsheets, PrintingPapers). Show the spread where
// an answer rests on an isotherm. A Sheet holds the isotherm of its fibre times its
// fibre share, since pigment and filler hold next to nothing, and the water of its
// receiving layers, each by its own isotherm.
//
// Between taking water up and giving it off lies one to two points of moisture
// (OnBranch). For most sheets the branch is not known, and their mean stands.
//
// # Heated at constant moisture
//
// A sheet in a nip has no time to dry. Its activity rises with temperature,
//
//	∂ln a/∂(1/T) at constant M = −ΔH/R
//
// with ΔH the net isosteric heat, J per kg of water: what binds the water on top of
// its heat of vaporisation (NetHeat). The three isotherms agree on its sign and on its
// order only. An activity above 1 would be free water, so it is capped at 1.
//
//	p_w = a(T, M)·p_s(T)           vapour over the sheet, p_s of IAPWS-IF97
//
// # Blisters
//
// Air that the nip shuts in under a film is saturated with the sheet's vapour and, once
// the nip's pressure is off, swells by (Trap.Swelling)
//
//	r = (T/T₀)·(p − p_w0)/(p − p_w)
//
// which has no bound when p_w reaches the pressure p of the room. The ratio at which
// a blister shows is calibrated on what is seen at laminators (OpenLimit,
// SealedLimit, Calibrate).
//
// # Validity
//
// The isotherms have ranges of their own; outside them there is an error that names the
// range, never NaN. None of their data reach the 90–110 °C where blisters form: there
// each is extrapolated, and says so (Extrapolates).
//
// # Sources
//
// Each isotherm names its own. Second methods and measured papers beside them are in
// the tests.
package paper
