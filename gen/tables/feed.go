package tables

import (
	"fmt"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// The words of feeding advice.
const (
	AsItLies     = "as it lies"
	TurnIt       = "turn it"
	CannotTurn   = "cannot be turned"
	TooWide      = "too wide that way"
	UnknownGrain = "unknown: test first"
	NoMatter     = "does not matter"
)

// sheet is a print as it is fed: Across lies along the roller, Along the feed.
type sheet struct {
	Across, Along quantity.Length
	Roll          bool
}

// parseSheet reads "320x450 mm", "12.6 x 17.7 in" or "roll". Empty takes the
// medium's own size, its long side along the feed.
func parseSheet(text string, medium *shop.Medium) (sheet, error) {
	text = strings.TrimSpace(text)
	switch {
	case text == "" && medium.SheetLength.Set:
		return sheet{Across: medium.Width.Best, Along: medium.SheetLength.Best}, nil
	case text == "" || text == "roll":
		return sheet{Across: medium.Width.Best, Roll: true}, nil
	}
	bad := fmt.Errorf("%q is not a sheet: write the side along the roller, then the side along the feed, such as 320x450 mm, or roll", text)
	first, second, ok := strings.Cut(strings.ReplaceAll(text, "×", "x"), "x")
	if !ok {
		return sheet{}, bad
	}
	second = strings.TrimSpace(second)
	unit := strings.TrimLeft(second, "0123456789. ")
	first = strings.TrimSpace(first)
	if strings.TrimLeft(first, "0123456789. ") == "" {
		first += " " + unit
	}
	across, err := quantity.Parse[quantity.Length](first)
	if err != nil {
		return sheet{}, bad
	}
	along, err := quantity.Parse[quantity.Length](second)
	if err != nil {
		return sheet{}, bad
	}
	if across <= 0 || along <= 0 {
		return sheet{}, bad
	}
	return sheet{Across: across, Along: along}, nil
}

// feed says which way round a print goes into the machine.
func feed(film *shop.Film, medium *shop.Medium, grain string, s sheet, machine *shop.Laminator) Feed {
	advise := func(advice, why string, values ...string) Feed {
		return Feed{advice, fill(feedTexts[why], append(values, "rule", feedTexts["rule"])...)}
	}
	switch {
	case film.Class == "cold":
		return advise(NoMatter, "cold")
	case !medium.HasGrain:
		return advise(NoMatter, "no-grain")
	case s.Roll:
		return advise(CannotTurn, "roll")
	case grain == "unknown":
		return advise(UnknownGrain, "unknown")
	case (grain == "long") == (s.Across >= s.Along):
		return advise(AsItLies, "lies")
	case s.Along > machine.Width.Best: // its width once turned
		return advise(TooWide, "wide", "across", side(s.Along), "laminator", machine.Name, "limit", side(machine.Width.Best))
	}
	return advise(TurnIt, "turn")
}

// side writes a sheet's or a machine's side in whole millimetres and tenths of an inch.
func side(l quantity.Length) string {
	return fmt.Sprintf("%.0f\u00a0mm (%.1f\u00a0in)", l.Millimetres(), quantity.Number(l, "in"))
}
