// Package vent computes how much vapour drying prints leave in the air of a room, and
// how many square metres of print a room bears.
//
// # The equations
//
// The room is taken as well mixed, but for a factor that says how badly its air reaches
// the place where people breathe:
//
//	V·dC/dt = E(t) − (Q/K)·C          balance of the vapour in the room
//	C_steady = K·E/Q                   where the emission is steady
//	C(t) = C₀·exp(−Q·t/(K·V))          where nothing is given off: purging
//
// with
//
//	V     volume of the room, m³
//	Q     flow of fresh air, m³/s; n = Q/V the air changes, 1/s
//	K     mixing factor: 1 for perfect mixing, to 10 for very poor
//	C     concentration of the vapour above that of the fresh air, kg/m³
//	E     emission, kg/s: area times that of a square metre of print
//	e(t)  emission of a square metre since it was printed, kg/(m² s)
//	L     exposure limit, kg/m³;  x a share by volume;  M molar mass, kg/mol
//
// The emission of a print is given by points with straight lines between them, so its
// early peak stays; two points at one time are a jump. C and its integral are then exact:
// a straight line or parabola of E between two times gives integrals of u^n·exp(−λ(t−u))
// in closed form (see kernel). Nothing is stepped.
//
//	C = x·p·M/(R·T)                    ideal gas: 24.465 L/mol at 25 °C and 1 atm; lists take 24.45
//	E_m = Σ C_i/L_i                    limits add for vapours that act alike
//	Σ x_i/x_LEL,i                      share of the lower explosive limit, Le Chatelier
//
// # Validity and caution
//
// A mean of the room says little about the air over a rack or at the printer: vapour of
// solvents is heavier than air, and near a wet print the concentration is many times the
// room's. Prints are not the only source: the printer, wipes and open cans give off
// more. Limits add only for vapours that harm alike; those taken up through the skin are
// not kept by air alone. A nose is no instrument. K is a judgement, V what is really free
// air. So what a Room bears is "at most this many square metres, before anything else in
// the room", and never a permit: local codes, the safety data sheet and a licensed
// professional decide, and measuring is better than computing.
//
// Emission of prints is known within a factor of two at best; the answer is
// proportional to it.
//
// # Sources
//
//   - American Conference of Governmental Industrial Hygienists, Industrial Ventilation:
//     dilution equations with the mixing factor K, 1 to 10. (From memory.)
//   - Centers for Disease Control, MMWR 43 (RR-13), 28 October 1994, Table S3-1: purging,
//     and that the mixing factor multiplies the time and can be as high as 10.
//   - 29 CFR 1910.1000(d): time-weighted average of a shift, and of mixtures.
//   - Limits of explosive mixtures: H. Le Chatelier, Ann. Mines 19 (1891) 388. (From
//     memory.)
package vent
