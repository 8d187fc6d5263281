// Package faults computes fault keys: which check or remedy to take first, and which
// after each outcome, so that the expected cost until the fault is gone is least.
//
// # The model
//
// A Family is a number of faults that look alike. Exactly one of its causes is present.
//
//	w(c)        weight of cause c before anything is looked at
//	P(o | a, c) chance of outcome o of act a, given the cause
//	k(a)        cost of act a, minutes
//
// A check only tells something. A remedy ends the matter with a chance that depends on
// the cause, and where it does not, that too is evidence. Help always ends it, at a
// stated cost. Each check and remedy is done once at most; outcomes are independent
// given the cause. A Problem is the general form, in which costs may depend on the
// cause and there may be several ends: that is a decision problem as it stands in
// textbooks, and a gain is a negative cost.
//
// # The best key
//
// What is known depends on which acts were done and what came of them, not on the
// order: that is a state s. With the weights
//
//	w_s(c) = w(c) · Π P(o | a, c)     over the acts done in s and their outcomes
//
// Bellman's equation needs no division:
//
//	V(s) = min over acts a not done of  Σ_c w_s(c)·k(a) + Σ_o V(s with a → o)
//
// where o runs over the outcomes that do not end the matter. V(s)/Σ w_s is the expected
// cost from s on. With up to 4 million states all are valued, the last first, and the
// key is exact.
//
// Of two keys that cost the same, the one with fewer acts is better: every act costs a
// thousand-millionth of the dearest one on top. So a check that costs nothing is made
// as soon as its result can change what is done, and never if it cannot. Of acts that
// are still equal a check comes before a remedy, a remedy before an end, and then the
// one that stands first.
//
// # Families that are too large
//
// There the states are searched from the first down, where it matters most (AO*, best
// first), with an upper and a lower bound on each. The upper bound is a key that exists.
// The lower bound lets all checks that are left tell their results for nothing, and what
// is left is the least cost of the remedies alone: knowing more for nothing cannot make
// the best key dearer. Key.Least is then proven, whatever was searched, and Key.Loss is
// the most that the key can cost too much. The search counts states and times nothing:
// it gives the same key every time.
//
// How that grows, in families of invented figures with as many causes as checks and
// remedies, with the usual Effort on one core: up to 8 of each exact within half a
// second; 9 and 10 in one or two seconds, mostly with a loss below 1 %; 11 and 12 in two
// to four seconds with 2 to 6 %. More Effort.Open helps slowly, more Effort.Room hardly.
// Causes that no check tells apart well are what makes a family hard.
//
// # Short keys
//
// Solver.Short is the best key that has room for so many steps in print: a numbered key,
// in which each lead names the next step, or the end. A check with more than two results
// stands as one step with as many lines. It counts as one step less than it has results,
// since it could be written as that many two-way steps. Where all states were valued it
// is found with a price on each step (a Lagrange multiplier), and what the price leaves
// open by branch and bound. Where they were not it is a good one: bettered in each place
// until nothing is gained. Short.LeastOfSize tells how good; the loss against the best
// key of any size goes with it too.
//
// # Keys for a wall
//
// Solver.Lists is a key that is read from afar: some checks first, and at the end of each
// branch a list of remedies to be tried in turn. The checks are counted by the lines that
// they take, each one and one for each lead, and a remedy takes none, since it stands once
// however many lists name it. All trees of checks of that size are tried; the lists stand
// by the ratio of cost to chance, each remedy as things stand when its turn comes. Its
// loss against the best key of any form goes with it.
//
// # Learning
//
// Experience.Learn counts a shop's fault log: the weights are a Dirichlet distribution,
// worth so many cases, and so are a check's results given a cause; a remedy's chance is a
// beta distribution. Family.Given shifts the weights by what is known of the job.
//
// # Validity
//
// One cause at a time: two faults at once are outside. Checks that are wrong together
// (one eye, one torch) are taken as independent, which makes them look better than they
// are. A remedy changes nothing for the next one. Chances are a shop's judgement until
// its log has replaced them; the key is as good as they are. Sums may differ in the last
// digits from one processor to another, and then of two acts that cost the same but for
// a 10⁻¹² part another may come first.
//
// # Sources
//
//   - H. Raiffa, Decision Analysis, 1968; J. B. Kadane and H. A. Simon, Annals of
//     Statistics 5 (1977) 237: the order of remedies. (From memory.)
//   - D. Heckerman, J. S. Breese and K. Rommelse, Decision-theoretic troubleshooting,
//     CACM 38 (1995) no. 3, 49.
//   - J. R. Quinlan, Machine Learning 1 (1986) 81: the information of a check.
//   - M. R. Garey and R. L. Graham, Acta Informatica 3 (1974) 347: that asking for the
//     most information can cost any multiple of the best.
//   - H. Everett, Operations Research 11 (1963) 399: a price in place of a limit. (From
//     memory.)
//
// A remedy at a hot roller or an open nip is safe only as the maker's manual and local
// rules have it: nothing here weighs the danger of an act.
package faults
