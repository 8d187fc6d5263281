package book

import (
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// measureWaitFirst lists what moves a wait over the spread of each input: the first
// moves it most.
func (b *builder) measureWaitFirst(c tables.WaitCase) (list, bool) {
	moves := b.waitMoves(c)
	l := list{Name: "What to measure first", Lead: "How far the computed wait moves over the spread of each input, the others staying: on " + lowerFirst(b.shop.Medium(c.Medium).Name) + ", " +
		lowerFirst(short(b.shop.Storage(c.Storage).Name)) + ", normal coverage, " + b.usualClimate() + ". What is solved from the maker’s wait is solved anew each time; “no answer” is where nothing meets it, so that end is not to be believed."}
	for _, m := range moves {
		l.Items = append(l.Items, item{Text: upperFirst(m.Input), Under: moved(m)})
	}
	return l, len(moves) > 0
}

// firstOf names the three that move a wait most, in a sentence.
func (b *builder) firstOf(c tables.WaitCase) string {
	moves := b.waitMoves(c)
	if len(moves) == 0 {
		return ""
	}
	var parts []string
	for _, m := range moves[:min(3, len(moves))] {
		parts = append(parts, m.Input+" ("+moved(m)+")")
	}
	return "Measure first, for the computed wait at normal coverage, " + lowerFirst(short(b.shop.Storage(c.Storage).Name)) + ", in the shop’s room: " + strings.Join(parts, "; ") + "."
}

// waitMoves are the moves of a wait; none where it hardly dries anyhow.
func (b *builder) waitMoves(c tables.WaitCase) []tables.WaitMove {
	if v, ok := b.waits.get(c); !ok || !v.Dries {
		return nil
	}
	moves, err := b.answers.WaitSpread(c)
	if err != nil {
		b.fault("materials/inks/"+c.Ink+".html", err)
	}
	return moves
}

// moved says between what a wait moves, from the low end of the input to its high one.
func moved(m tables.WaitMove) string { return moveEnd(m, 0) + " to " + moveEnd(m, 1) }

func moveEnd(m tables.WaitMove, i int) string {
	switch {
	case !m.Solved[i]:
		return "no answer"
	case !m.Dries[i]:
		return "hardly dries"
	case m.Waits[i] == 0:
		return "at once"
	}
	return quantity.Metric(m.Waits[i])
}
