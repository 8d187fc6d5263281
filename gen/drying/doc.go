// Package drying computes how a print gives up what has to leave it, or how its
// ink hardens, before it may be laminated.
//
// # Evaporating inks: the slab
//
// The carrier (a solvent, a glycol, water) sits in an absorbing layer: the ink
// and the part of the medium that took the carrier up. It moves to the faces of
// the layer by diffusion and leaves there by convection. With x = 0 at the back
// and x = 1 at the printed face, in thicknesses of the layer:
//
//	∂u/∂Fo = ∂²u/∂x²                 Fick's second law
//	∂u/∂x = B_back·u    at x = 0      what arrives at the back leaves it
//	−∂u/∂x = B_face·u   at x = 1      what arrives at the face leaves it
//
// with
//
//	u       content at x above the room's floor, kg/m² (concentration × L)
//	L       thickness of the layer, m
//	D       diffusivity of the carrier in the layer, m²/s
//	t       time, s
//	Fo      D·t/L², the Fourier number
//	k       transfer coefficient of a face on the layer's own concentration,
//	        m/s: h·c_sat/C_ref with h the gas-side coefficient (m/s), c_sat
//	        the saturated vapour (kg/m³) and C_ref the concentration in the
//	        layer over which the air is saturated (kg/m³)
//	B       k·L/D, the Biot number of a face; 0 where the face is sealed
//	floor   the amount in equilibrium with the room's own vapour, kg/m²; it is
//	        the same at both faces, so u is counted from it
//
// The solution is a sum over modes X_n(x) = cos(β_n·x − φ_n) that decay as
// exp(−β_n²·Fo). The boundary conditions give
//
//	tan φ_n = B_back/β_n
//	β_n − atan(B_face/β_n) − atan(B_back/β_n) = n·π,   n = 0, 1, 2 …
//
// The left side rises with β, so each root is alone in [nπ, (n+1)π] and is found
// to full double precision at every Biot number. It is the phase form of
// tan β = β(B_face + B_back)/(β² − B_face·B_back), without that form's poles.
//
// From the equations above follow, in closed form,
//
//	∫X_n  = [(−1)ⁿ·sin ψ_n + sin φ_n]/β_n,  sin ψ = B_face/√(β² + B_face²), sin φ alike
//	∫X_n² = ½·[1 + B_face/(β² + B_face²) + B_back/(β² + B_back²)]
//	share left of a uniform content = Σ (∫X_n)²/∫X_n² · exp(−β_n²·Fo)
//
// With the back sealed and L the Biot number of the face these are Crank's
// β·tan β = L and his series for a sheet with surface evaporation.
//
// Before Fo = 0.01 the sum needs many modes. There each face is taken as the
// face of a half space of its own (see Modes.Left); the error of that is proven
// to be below 4e-13 of the content.
//
// # Histories
//
// A print hangs for some hours, lies on a roll, hangs again. Its State is the set
// of mode amplitudes. When the conditions change so that the Biot numbers change,
// the content is projected on the modes of the new conditions by the closed form
// of ∫cos(a·x − p)·cos(b·x − q). See State.March for what 32 modes cost in accuracy.
//
// # After lamination
//
// The film does not stop the carrier, it stands in its way. The same State marches
// on in a setting whose face is covered, and its back as well where a film or a
// panel lies on it (Setting.Covered):
//
//	1/k′ = 1/k + Σ ℓ/(K·D_ply)
//
//	ℓ       thickness of a ply, m
//	D_ply   diffusivity of the carrier in it, m²/s
//	K       partition: concentration in the ply over that in the layer at rest
//
// The content is projected on the modes of the covered layer, exactly but for the
// rest, and no amount is lost in it. With both faces closed β_0 = 0: that mode is
// the content itself, and it stays.
//
// A ply counts as steady: it passes on what it takes. In truth it takes up carrier
// of its own before it lets any out, for about ℓ²/(6·D_ply) (Ply.Lag). Against a film
// as thick and as open as the layer the print was in truth drier by up to a tenth
// of what it began with, and late in its course wetter by a fortieth; print and film
// together never hold less than is computed. What a film holds decides little where
// it is much tighter than the layer.
//
// # Validity
//
// One-dimensional (the layer is thin against the sheet), one diffusivity through
// the layer and at every content, linear partition between layer and air, layer of
// constant thickness. A diffusivity that falls as the carrier leaves, a skin, or
// case II swelling are not in it: a diffusivity solved from a maker's wait stands
// for their mean over that wait.
//
// # Inks that react, and toner
//
// Oxidising inks and the dark cure of radiation-cured inks follow a first-order
// law (FirstOrder) with an Arrhenius rate. Fused toner follows additive hours
// (Toner), a rule of the trade. A water-based ink is the slab with the slow
// co-solvent as its carrier: the water has gone long before.
//
// # Sources
//
//   - J. Crank, The Mathematics of Diffusion, 2nd ed., Oxford 1975: §3.3 half
//     space with surface evaporation; §4.3 plane sheet; §4.3.6 surface
//     evaporation and its table of roots; §10.6 half-time. (Section numbers
//     from memory.)
//   - H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed.,
//     Oxford 1959: slab with radiation at both faces; App. IV, roots of
//     α·tan α = C. (Numbers from memory.) That table is reprinted in R. G. Watts,
//     Essentials of Applied Mathematics for Scientists and Engineers, Morgan &
//     Claypool 2007, App. A, Table A.1, which prints the sign of C wrongly.
//   - H. A. Daynes, Proceedings of the Royal Society A 97, 286, 1920, and R. M.
//     Barrer: the time lag of a membrane, ℓ²/(6D). Plies in series add up as the
//     resistances of a composite wall do. (From memory.)
//   - P. W. Atkins, Physical Chemistry: the Arrhenius law, first-order rates. (From
//     memory.)
package drying
