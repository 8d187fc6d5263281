// Package cooling computes how a laminate cools after the nip, and when it may be
// touched, stacked and trimmed.
//
// # The equations
//
// From the film's outer face down lie
//
//	film base | adhesive | ink or coating | medium (| lower film's adhesive | its base)
//
// A sheet is wide and long against its thickness, so heat goes through it in one
// dimension:
//
//	ρ·c·∂T/∂t = ∂/∂x(k·∂T/∂x)      Fourier
//	q = h·(T₁ − T₂)                 at a contact between layers, or at a face
//
// with
//
//	T     temperature, K
//	t     time, s
//	x     depth below the film's outer face, m
//	k     conductivity, W/(m K)
//	ρ     density, kg/m³
//	c     specific heat, J/(kg K)
//	α     k/(ρ·c), diffusivity, m²/s
//	q     heat flow, W/m²
//	h     contact conductance, or convection and radiation together, W/(m² K)
//	L     thickness, m
//	e     √(k·ρ·c), effusivity, W·s½/(m² K)
//	ε     emissivity
//
// The sheet starts with the profile that the nip left in it and goes through stages:
// free run, fan, chill roller, rest on a table or a stack. In each, either face has a
// conductance to a body or to air of one temperature.
//
// # Where the four curves part, and where they meet
//
// Film, adhesive, coating and medium have different temperatures in the nip and for a
// short while after it: a layer of 100 µm evens out within 0.3·L²/α, some 30 ms, a
// laminate of 200 µm in a tenth of a second or two (see EvensOut and EvensOutStack).
// From then on the air takes heat so slowly (h·L/k is about 0.02) that all layers have
// the same temperature within half a kelvin or so, and fall together for a minute or
// more. They part again, by a few kelvin, only while one face lies on a chill roller.
// Drawn on a log time axis the four curves are one line from there on. What remains
// different is what each layer does with its temperature: where it sets, and how much it
// contracts from there. See Cooling.Widest and Cooling.Meets, which say it of a case.
//
// # Cells and steps
//
// Finite volumes of even cells within a layer, conductances in series. Steps of the
// singly diagonally implicit Runge–Kutta method of two stages (γ = 1 − 1/√2): second
// order and L-stable. They grow by a twentieth each from the start of a stage, so that they
// keep pace with what still changes. Between steps the temperatures are cubic in time,
// with the slopes that the equations give. Both orders are measured in the tests. What a
// step takes from the cells is what it puts through the faces, so that the balance of
// heat closes to rounding (Cooling.Balance).
//
// # Accuracy
//
// For usual laminates within 0.02 K of eigenfunction series and of a fine explicit
// scheme (measured in the tests). Convection is known to about 20 %, contact with a
// roller within a factor of three, and both outweigh that.
//
// # Validity
//
// Left out: heat that leaving water takes; the adhesive's heat of setting, which holds
// a thick adhesive near its setting temperature for some seconds (75 J/g in 50 µm is
// worth about 10 K of a laminate of 230 µm); properties that change with temperature;
// edges. Conductances are constant within a stage: take them at the stage's middle
// temperature, or cut a long stage in two.
//
// # Sources
//
//   - H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed., Oxford
//     1959: the equations, the contact of two half spaces.
//   - S. V. Patankar, Numerical Heat Transfer and Fluid Flow, 1980: finite volumes.
//     (From memory.)
//   - R. Alexander, SIAM J. Numer. Anal. 14 (1977) 1006: the two-stage method.
//     (Number from memory.)
//   - Convection: package air; moving webs: see MovingWeb.
//   - ISO 13732-1, Ergonomics of the thermal environment, hot surfaces: what a burn
//     threshold is. It covers contacts of 0.5 s and longer, sets no limits itself, and
//     its figures here are from memory (see Thresholds).
//
// A roller, a shoe and a fresh laminate can burn, and a fan or a chill roller has a
// nip: nothing here replaces the maker's manual, a guard or a local rule.
package cooling
