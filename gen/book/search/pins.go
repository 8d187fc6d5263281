package search

import (
	"slices"
	"strings"
)

// pin is a pin with the stems of what calls for it.
type pin struct {
	Pin
	ask, alone []string // stems parted by spaces
}

func newPin(p Pin) pin {
	return pin{p, runs(p.Ask), runs(p.Alone)}
}

// runs is the stems of each phrase, parted by spaces.
func runs(phrases []string) []string {
	var out []string
	for _, p := range phrases {
		out = append(out, strings.Join(wordRun(Tokens(p)), " "))
	}
	return out
}

// pinned lists the pins that a query calls for, in their order: by its words
// as typed, or as they were read.
func (x *Index) pinned(typed, read []string) []int {
	var out []int
	for i, p := range x.pins {
		if p.calledBy(typed) || p.calledBy(read) {
			out = append(out, i)
		}
	}
	return out
}

func (p pin) calledBy(words []string) bool {
	var run []string
	for _, w := range words {
		run = append(run, stem(w))
	}
	text := strings.Join(run, " ")
	return slices.Contains(p.alone, text) ||
		slices.ContainsFunc(p.ask, func(key string) bool { return strings.Contains(" "+text+" ", " "+key+" ") })
}
