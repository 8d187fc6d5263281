// Package air knows the air that a print waits in: its water, the vapour of ink
// carriers in it, and how fast it takes vapour away from a surface.
//
// # Water in air
//
// Saturation pressure p_s(T) and its inverse are IAPWS-IF97 region 4 (0 °C and
// up). Moist air is a mixture of ideal gases, by the relations of the ASHRAE
// Handbook, Fundamentals (2017), chapter 1; what that leaves out is the
// enhancement factor, 0.4 % near room conditions (Enhancement).
//
//	T    temperature, K            t   temperature, °C
//	p    pressure of the air, Pa   p_w pressure of its water vapour, Pa
//	W    humidity ratio: water per dry air, kg/kg
//
// # Vapour of carriers
//
// ln p = A − B/(T + C) by Antoine, or Clausius–Clapeyron from one point and a heat
// of vaporisation. Room-temperature pressures of slow solvents are known to about
// ±30 %; where a fit is used outside its range, it says so (Extrapolates).
//
// # Transfer
//
//	h   transfer coefficient on concentration, m/s
//	Re  = uL/ν, Reynolds number;   Sc = ν/D, Schmidt number;   Pr = ν/α, Prandtl number
//	Sh  = hL/D, Sherwood number;   Nu, the same for heat;      Gr = gβΔT·L³/ν², Grashof number
//
// A correlation for a plate is good to about 15–25 % (common knowledge of heat
// transfer books; no single source), less at low Re. Everything outside a range of
// validity is an error that names the range; nothing returns NaN.
package air
