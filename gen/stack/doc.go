// Package stack computes what happens inside a stack of sheets that comes from one air
// into another: how far its border has dried or dampened, how long a wrapped one takes
// to warm up, and where a hot nip that drives moisture ahead of itself would blister it.
//
// # A block's change
//
// A stack is a rectangular block that starts the same throughout. What is left of its
// change at a place is the product of what is left in its three directions (Newman):
//
//	θ(x, y, z, t) = θ_x·θ_y·θ_z
//	∂θ/∂t = D·∂²θ/∂x²,   −D·∂θ/∂x = v·θ at the face        a slab, for each direction
//	θ = Σ A_n·cos(β_n·x/l)·exp(−β_n²·Fo)
//	β·tan β = B,  B = v·l/D,  Fo = D·t/l²,  A_n = 4·sin β/(2β + sin 2β)
//
// with
//
//	θ   what is left of the change: 1 at first, 0 in the end
//	l   half the size where both faces are open, the whole where one is sealed, m
//	D   diffusivity in that direction, m²/s
//	v   transfer at the face over what a volume stores for each step of it, m/s
//
// Below Fo = 0.02 half spaces from both faces take over from the series.
//
// # Moisture
//
// In the plane of the sheets water goes as vapour through the pores, as vapour through
// the gaps between the sheets, and in the fibre, side by side:
//
//	D_M = [(1−φ)·D_p + φ·D_a]/[(1−φ)·S] + D_f,   S = ρ_p·ΔM/Δρ_v
//
//	D_M  diffusivity of moisture, m²/s      D_p  of vapour in the pores     D_a  in free air
//	D_f  of water in the fibre              φ    share of the pile that is gaps
//	M    moisture, kg/kg dry                ρ_v  vapour, kg/m³              ρ_p  dry density of the sheet
//
// S, a few thousand, is why a stack is so slow. D_p in the plane and the gaps are hardly
// known: each answer is a Band, over a decade of D_p and the gaps that go with it. For a
// thin uncoated sheet D_M comes out six times less at the low end than at the best, and
// three times more at the high end. Times go with 1/D_M, depths with its square root.
//
// The isotherm enters by its secant between the two humidities; heat of sorption and
// hysteresis are left out. A single sheet, free on both sides, is done in minutes and
// is no case for this package.
//
// # Warming up in the wrap
//
// Parcel is the same block for heat. Its wrap keeps the water in. Still air and
// radiation take the heat at the faces (package air), and its bottom is sealed by the
// floor or its pallet.
//
// ConditioningChart is what the trade hangs on the wall instead. Its hours rise nearly in
// proportion to the difference, the time of a block's core with the logarithm of it. We
// expected the two to part at large differences. They part at small ones: for a solid cube
// whose core is to come within 2 K of the room the computed time is some nine times the
// chart's at 5.6 K, and three times at 28 K. After the chart's hours a cube of up to
// 0.7 m³ is still 4 to 7 K off on the mean, from whatever difference, and its core has
// hardly moved. What the faces alone would take (Lumped) lies below most of the chart.
// All are shown; none is fitted to another.
//
// # Moisture driven ahead
//
// The trade says that on paper with a dry margin and a damp core the first blisters lie
// where the margin ends, and that size and number rise downstream (common practice, no
// source). Feed is the least that can say so: of the water in the nip a share goes
// forward, comes to rest a nip's length ahead, and is met again. Water is conserved. The
// share is not known; DrivenAhead is a band of two decades. It is for a teaching
// drawing.
//
// # Validity
//
// Moisture: 10 to 90 % relative humidity at one temperature, sheets that are alike. The
// answer is good to its band. Heat: parcels of 0.05 to 2 m, differences to 50 K; still
// air around them, good to about 20 %. Packs with air between them are faster than a
// block, one in a crowded corner slower.
//
// Nothing here is calibrated.
//
// # Sources
//
//   - A. B. Newman, Heating and cooling rectangular and cylindrical solids, Ind. Eng.
//     Chem. 28 (1936) 545. (From memory.)
//   - H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids; J. Crank, The
//     Mathematics of Diffusion: the slab and the half space.
//   - Molecular Diffusion of Water in Paper (II), Journal of Korea TAPPI (1998): the two
//     diffusivities, from its abstract.
//   - H. Gupta and S. G. Chatterjee, Ind. Eng. Chem. Res. 42 (2003) 6582 and 6593: pores
//     and fibre side by side. (Its tables were not seen.)
//   - In-plane diffusivity of moisture in paper, abstract: very much greater than
//     through the thickness, and rising with moisture.
package stack
