// Package curl computes how a laminate bends, whether ridges can rise in it, and
// whether loose strips of it lift: layers that were joined flat, and each of which
// would now like to be of another size than its neighbours.
//
// # What each layer would like
//
// The free strain of a layer is counted from the moment at which the adhesive set:
//
//	f = α·(T − T_set) + β·(M − M_set) − (strain under web tension when joined)
//
// with
//
//	α   thermal expansion, 1/K
//	β   swelling, strain per unit moisture ratio
//	M   moisture, kg water per kg dry
//	T   temperature, K
//
// each along (MD, 1) and across (CD, 2) the layer's machine direction. Web tension is
// along the feed; let go of, the film is that much shorter, and a little wider. A
// share of the first and the last part may have crept away (State.Relaxed).
//
// # Laminate theory
//
// Layers are thin, in plane stress, and stay joined. With x along the feed, y across
// it, z up from the middle of the laminate:
//
//	ε(z) = ε⁰ + z·κ           strain
//	σ = Q̄·(ε − f)             stress in a layer, Q̄ its stiffness turned to the feed
//	A, B, D = Σ ∫ Q̄ (1, z, z²) dz
//	N*, M* = Σ ∫ Q̄·f (1, z) dz
//	N* = A·ε⁰ + B·κ,  M* = B·ε⁰ + D·κ        nothing pulls at the sheet
//
// κ > 0 bends the edges down, away from the uppermost layer; κ < 0 up. For two layers
// with the same Poisson ratio this is Timoshenko's bimetal formula exactly; for a film
// much thinner than its base it becomes Stoney's.
//
// # The cylinder
//
// Laminate theory mostly answers with a saddle or a dish. A sheet that is large
// against its thickness cannot take either without stretching, and rolls into a
// cylinder. With ε⁰ free the energy of a curvature is
//
//	U(κ) = ½κ·D*·κ − κ·M′ + U_flat,  D* = D − B·A⁻¹·B,  M′ = M* − B·A⁻¹·N*
//
// and Plate.Cylinder finds the least of it among all κ = k·(cos²φ, sin²φ, 2 sinφ cosφ):
// those of no Gaussian curvature. Plate.SaddleBelow estimates the size below which
// the saddle may stay (after the idea of Hyer 1981); it is one to a few centimetres for usual
// laminates.
//
// # Ridges
//
// A Line compares the compression of the medium with what buckles it. Two cases:
//
// Held: in the nip, before the adhesive has set. The rollers hold the sheet's width as
// it was on entry; the medium would like to grow with heat and with moisture driven
// into it (or to shrink as it dries) and cannot; along the feed it can. Rubber on both
// sides is the bed into which waves press. The film is taken as free of stress, since
// it came to the roller's temperature ahead of the nip.
//
// Joined: the laminate lies flat and each layer's force follows from laminate theory.
// The film holds against the medium, and the adhesive is the bed.
//
// Stiff layers are plates in cylindrical bending, soft ones the beds between
// (chain.buckles); the least load over all wavelengths counts. On a deep bed this is
// the wrinkling of Allen and of Bowden et al., ε = ¼(3·Ē_s/Ē_f)^⅔; on a thin one
// Winkler's 2√(D·K). A thin layer that cannot change its volume has to flow sideways,
// which makes it stiff (bed.stiffness has both, and all between).
//
// What that gives: a set adhesive of 10 to 25 µm is so stiff a bed that the critical
// strain is of the order of ten per cent (2 to 4 while it is still as soft as 1 MPa),
// and paper crushes below one. After the adhesive has set no ridge rises by elastic
// buckling of a sound bond, in either direction. What risk there is lies in the nip,
// and is well below 1 for a flat sheet: it makes waves grow that the sheet brings with
// it, by 1/(1 − risk), and the bond then keeps them.
//
// # Tunnels
//
// A compressed layer that is loose over a width w lifts at (π²/3)(t/w)², a clamped
// strip (Laminate.Tunnel).
//
// # Validity
//
// Elastic: moduli are those of the present moisture and of the temperature that they
// were measured at. A film at 60 °C is softer than its figure at 23 °C, adhesives creep,
// and paper dried under tension shrinks for good; Relaxed and Softening are all there
// is for it. Strains of 0.1 to 0.5 % are well inside; curvature must be small
// against 1/thickness, not against 1/size. Weight is left out: a sheet that curls less
// than its weight pulls it flat lies flat. Paper is taken as orthotropic and the same
// through its thickness; an unlaminated sheet's own two-sidedness is not known here.
// In buckling: shear between the layers, the softness of paper through its thickness,
// the time an adhesive has to flow, and a sheet's first waviness are left out; an
// adhesive is taken as thin beside the wave.
//
// Nothing here is calibrated.
//
// # Sources
//
//   - R. M. Jones, Mechanics of Composite Materials; P. K. Mallick, Fiber-Reinforced
//     Composites, 3rd ed., CRC 2008: laminate theory.
//   - S. Timoshenko, J. Opt. Soc. Am. 11 (1925) 233: the bimetal strip.
//   - M. W. Hyer, Calculations of the room-temperature shapes of unsymmetric laminates,
//     J. Composite Materials 15 (1981) 296: that they are cylinders. (From memory.)
//   - G. A. Baum, D. C. Brennan and C. C. Habeger, Orthotropic elastic constants of
//     paper, Tappi 64 (1981) no. 8, 97: √(ν₁₂ν₂₁) = 0.293 and G = 0.387·√(E₁E₂), which is
//     √(E₁E₂)/(2(1 + 0.293)). (Numbers from memory.)
//   - H. G. Allen, Analysis and Design of Structural Sandwich Panels, Pergamon 1969;
//     N. Bowden et al., Nature 393 (1998) 146; M. A. Biot, 1957: plates on soft beds.
//     (From memory.)
//   - J. W. Hutchinson and Z. Suo, Adv. Appl. Mech. 29 (1992) 63: blisters. (From
//     memory.)
package curl
