// Package bond computes how the adhesive of a film wets out a print: how much of the
// print's relief the nip fills, how much capillary pressure fills in the hours after
// it, and what that asks of temperature, pressure and time.
//
// # The equations
//
// An adhesive that flows goes into a valley of the print under a pressure p:
//
//	η·v·(2a·ζ + b)/w = p            Poiseuille in the valley, Stokes at its mouth
//	a·ζ² + b·ζ = ∫ p/η dt = S       its integral from an empty valley
//	groove:  a = 6,   b = 16/π      pit:  a = 16,  b = 3π
//
// with
//
//	η     viscosity of the adhesive, Pa·s
//	v     speed of the front, m/s
//	z     depth the front has come to, m;  d, depth of the valley
//	w     width of the valley, m: of the groove, or the pit's diameter
//	ζ     z/w
//	p     pressure that drives, Pa: of the nip, and of the capillary
//	t     time, s
//	S     supply, without unit: what pressure, time and heat have done
//
// The demand of a valley is the S that fills it, a·(d/w)² + b·(d/w). The first term is
// flow between plates, or in a tube: with the capillary pressure alone it is the
// equation of Lucas and Washburn. The second is the way from the open layer into the
// mouth, half of the resistance of a hole in a thin wall (Sampson; of a slit,
// Hasimoto); it rules where a valley is wider than deep, as the relief of ink is.
//
// The capillary pulls with
//
//	groove  p_c = 2γ·cosθ/w         pit  p_c = 4γ·cosθ/w
//
// with γ the surface tension of the adhesive (N/m) and θ its contact angle.
//
// # Viscosity
//
// Hot melts follow Arrhenius' law between where they set and where they are worked
// (Melt); pressure-sensitive adhesives the law of Williams, Landel and Ferry above
// their glass transition (FreeVolume), which must not be used below it (ErrGlassy). A
// melt begins to flow at its melting temperature and ends at its setting temperature,
// which lies lower.
//
// # Validity
//
// Left out, each of them: elasticity of the adhesive (a pressure-sensitive adhesive is
// cross-linked in part: it flows less in the end than a liquid and more at once);
// shear thinning; the film's stiffness, but for SpringBack; air that cannot leave the
// valley; melting heat. Valleys are alike and even. Low Reynolds numbers throughout
// (below 1e-9 here). Where the entry term rules, the layer is taken as deep against
// the width of the valley; a thin layer is slower.
//
// Viscosities of film adhesives are known to a factor of ten or worse and the width of
// a valley hardly better. So an answer is one of three classes with a spread (Spread),
// never a promise of minutes; ratios (hotter against colder, deeper against shallower)
// are better than times.
//
// # Sources
//
//   - E. W. Washburn, The dynamics of capillary flow, Phys. Rev. 17 (1921) 273: tube,
//     dl/dt = P·r²/(8·η·l), l² = γ·r·t·cosθ/(2η). R. Lucas, Kolloid-Z. 23 (1918) 15.
//   - H. Lamb, Hydrodynamics, 6th ed., 1932, §330: flow between plates, w²/(12η).
//     (Section from memory.)
//   - R. A. Sampson, On Stokes's current function, Phil. Trans. R. Soc. A 182 (1891)
//     449: hole in a thin wall, Q = Δp·D³/(24η).
//   - Z. Dagan, S. Weinbaum and R. Pfeffer, J. Fluid Mech. 115 (1982) 505: Sampson's
//     and Poiseuille's resistances add, within 1 %. (From memory.)
//   - H. Hasimoto, J. Phys. Soc. Japan 13 (1958) 633: slit in a thin wall,
//     Q = π·Δp·w²/(32η) per length. (From memory.)
//   - M. L. Williams, R. F. Landel and J. D. Ferry, J. Am. Chem. Soc. 77 (1955) 3701.
//   - J. Stefan, Sitzungsber. Akad. Wiss. Wien 69 (1874) 713: discs squeezed together.
//   - L. A. Girifalco and R. J. Good, J. Phys. Chem. 61 (1957) 904: contact angle from
//     surface energies. (From memory.)
//   - K. L. Johnson, Contact Mechanics, 1985, ch. 4: Hertz' line contact.
package bond
