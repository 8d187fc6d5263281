// Package nip computes how heat goes through a print and its film in a laminator:
// film on the hot roller, nip, free run; the first piece and the steady run.
//
// # The equations
//
// From top to bottom lie
//
//	upper roller's cover | film base | adhesive | ink or coating | medium
//	(| lower film's adhesive | its base) | lower roller's cover
//
// Width and length of a nip are large against the thickness of a sheet, and the web
// carries its heat along with it, so that each place of it is a problem in one
// dimension and time:
//
//	ρ·c·∂T/∂t = ∂/∂x(k·∂T/∂x)      Fourier
//	q = h·(T₁ − T₂)                 at a contact, or at a face in air
//
// with
//
//	T     temperature, K
//	t     time, s
//	x     depth, m
//	k     conductivity, W/(m K)
//	ρ     density, kg/m³
//	c     specific heat, J/(kg K)
//	α     k/(ρ·c), diffusivity, m²/s
//	q     heat flow, W/m²
//	h     contact conductance, or convection and radiation together, W/(m² K)
//
// The phases differ in what touches what: stages ahead (a heat shoe, a pre-heat
// roller); the wrap, film on its roller under tension; the nip, all pressed; the
// stages after it (free run, fans, chill roller). Meanwhile each cover turns on:
// it idles in the air and gets its heat back from its core.
//
// # Cells and steps
//
// Finite volumes: each layer is cut into cells, and heat that leaves one enters its
// neighbour. Cells grow away from the faces that are heated suddenly, and a cell's
// node lies where the same growth puts it, not in its middle (see grid.run), which
// divides the error on a cover by ten and more. Steps are of a singly diagonally
// implicit Runge–Kutta method of two stages, second order and L-stable (see
// segment.step), and grow from the start of each phase. Both orders are measured in
// the tests: 2.0 in space and in time. One tridiagonal factorisation serves a step of
// all responses.
//
// # Responses
//
// With constant properties everything is linear in the temperatures that act:
//
//	T = T_room + Σ_b (T_b − T_room)·φ_b
//
// b being the set temperature, the lower roller, print and film as they enter, a
// pre-heat and a chill roller. One Run gives every φ_b, so that limits follow in
// closed form (see Case.SetForBondLine).
//
// Each cell of a cover has a response too. That gives both cases from one run: for
// the first piece the cover's cells are at the roller's temperature; for the steady
// run they are the fixed point c = M·c + D·T of a whole turn, solved exactly (see
// Solver.steady).
//
// # Accuracy
//
// Over usual films, sheets and machines, first piece and steady run, film face, bond
// line and adhesive at the nip's end, the bond line's highest, and the free run after
// 0.3 s agree within 0.1 K with a second method on a fine grid (measured 0.096 K
// at 110 °C set). Heat is conserved to rounding.
//
// # Validity
//
// Left out: the adhesive's melting heat, which moves the bond line's highest by −2.6
// to +1.8 K (measured in the tests with a nonlinear method, 75 J/g at 86 °C); the
// heat that water takes as it leaves a sheet; conductivity and specific heat that
// change with temperature; heat along the rollers' axes and at a sheet's edges; how
// a controller holds its sensor's temperature; the gaps between sheets, which let a
// cover recover, so that sheets lie between first piece and steady run. The first
// piece's cover is taken as hot all through, though a roller that stands in air is
// some kelvin cooler outside. Contact conductances are known within a factor of
// about three either way, which outweighs all of the above.
//
// # Sources
//
//   - H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed., Oxford
//     1959: the equations, and the solutions that tests compare with.
//   - S. V. Patankar, Numerical Heat Transfer and Fluid Flow, 1980: finite volumes,
//     conductances in series at a face. (From memory.)
//   - R. Alexander, Diagonally implicit Runge–Kutta methods for stiff O.D.E.'s, SIAM
//     J. Numer. Anal. 14 (1977) 1006: the two-stage method. (Number from memory.)
//   - D. Ingerman, V. Druskin and L. Knizhnerman, Optimal finite difference grids and
//     rational approximations of the square root, Comm. Pure Appl. Math. 53 (2000)
//     1039: geometric grids. (Number from memory.)
package nip
