// Package roll does the arithmetic of rolls, sheets, jobs and clocks: how much film is
// left on a roll, how much film and time a job takes, which roller makes a mark that
// repeats, what a basis weight is in grams per square metre, how to cut a sheet so that
// the grain ends up across the feed, when a laminate can be handed over, and what a piece
// costs.
//
// # The equations
//
//	L = π·(D² − d²)/(4·t)              film on a roll: the end face is the film's edge
//	N = (D − d)/(2·t)                  wraps
//	t = π·(D² − d²)/(4·L)              thickness, from a full roll of known length
//	s = π·D                            a mark repeats once in a roller's turn
//	w = b·m_lb/(n·A)                   grammage from a basis weight
//	c = w·v                            caliper from bulk
//	m = A·Σ t_i·ρ_i                    mass of a web
//	n_run = ⌈n/(1 − s_p)⌉              prints to run for n good ones
//	L_job = ⌈n_run/k⌉·(l + g) + e      film for a job, g no less than two borders
//	T_job = T_0 + ⌈n_run/k⌉·(l + g)/v + n_run·T_h + c_r·T_r
//	T_i = max(T_(i−1), R_i) + W_i      hand-over: rests run from the nip, work adds up
//
// with
//
//	D, d   outer diameter of the roll, outside diameter of its core, m
//	t      thickness of all that is wound: film, adhesive and liner, m
//	L      length, m;  N wraps
//	s      distance from a mark to its next, m
//	m_lb   pounds a ream of n = 500 sheets of basic size A weighs; b kg in a pound
//	w      grammage, kg/m²;  v bulk, m³/kg;  c caliper, m;  ρ density, kg/m³
//	l, g   length of a piece along the feed, gap to the next, m
//	k      pieces abreast;  e film lost in threading, m;  v speed, m/s
//	s_p    share of prints that are spoiled
//	T_0    set-up and warm-up, T_h hand work for a piece, T_r for one of c_r rolls, s
//	R_i    rest from the nip before a step, W_i the work of it, s
//
// # Validity
//
// L holds for a tight roll; it is as good as t, and d is the outside of the core, not its
// bore. Air wound in makes the true length less: measure a full roll once (see
// Wound.Measured). A mark repeats at π·D where the web does not slip; film that stretches
// and a web that is thick against the roller move it by a per cent or two. Basic sizes
// are those of the United States. All times are the shop's own: no equation knows how
// fast a hand is. A laminate's rest is the film maker's to say.
//
// # Sources
//
//   - Length, wraps and thickness of what is wound: "Determining Length of Material
//     Remaining on a Roll", Ask Dr. Math, The Math Forum, 24 November 2003.
//   - Basic sizes and the factors of basis weights: PrintWiki, "Grammage"; further basic
//     sizes from memory.
//   - Exact pound and inch: NIST SP 811, appendix B.
//   - Job, hand-over, cost and roller finder: common practice, no source.
//
// A roll of film is heavy and a nip draws in: how a roll is lifted, threaded and looked
// at is the maker's manual's and the local rules' to say. Never feel for a mark on a
// roller that turns.
package roll
