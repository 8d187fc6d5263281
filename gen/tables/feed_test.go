package tables

import (
	"testing"

	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// Hot film on paper wants the grain across the feed, parallel to the roller
// axes (common practice, no source). The rows draw each case: the sheet's side
// along the roller, its side along the feed, in millimetres.
func TestFeed(t *testing.T) {
	paper, vinyl := &shop.Medium{HasGrain: true}, &shop.Medium{}
	hot, cold := &shop.Film{Class: "thermal"}, &shop.Film{Class: "cold"}
	machine := &shop.Laminator{}
	machine.Name, machine.Width.Best = "the machine", 400*quantity.Millimetre
	tests := []struct {
		name          string
		film          *shop.Film
		medium        *shop.Medium
		grain         string
		across, along quantity.Length
		roll          bool
		want          string
	}{
		{"long grain, long side along the roller", hot, paper, "long", 360, 250, false, AsItLies},
		{"long grain, long side along the feed", hot, paper, "long", 250, 360, false, TurnIt},
		{"the same, too long for the machine", hot, paper, "long", 320, 450, false, TooWide},
		{"short grain, short side along the roller", hot, paper, "short", 320, 450, false, AsItLies},
		{"short grain, short side along the feed", hot, paper, "short", 360, 250, false, TurnIt},
		{"nobody knows the grain", hot, paper, "unknown", 320, 450, false, UnknownGrain},
		{"a roll", hot, paper, "long", 320, 0, true, CannotTurn},
		{"a cold film", cold, paper, "long", 250, 360, false, NoMatter},
		{"no grain", hot, vinyl, "long", 250, 360, false, NoMatter},
	}
	for _, tt := range tests {
		s := sheet{Across: tt.across * quantity.Millimetre, Along: tt.along * quantity.Millimetre, Roll: tt.roll}
		got := feed(tt.film, tt.medium, tt.grain, s, machine)
		if got.Advice != tt.want || got.Why == "" {
			t.Errorf("%s: %q (%s), want %q", tt.name, got.Advice, got.Why, tt.want)
		}
	}
}
