package tables

import "strings"

// phrases are the sentences of a plan. The page's script fills the same ones,
// so that the page and the terminal say the same.
var phrases = map[string]string{
	"film-class":        "{laminator} does not run {class} films.",
	"film-machine":      "{film} is not among the films that run on {laminator}.",
	"form":              "{laminator} does not take {medium} in the form it comes in.",
	"opening":           "{medium} with this film is too thick for {laminator}.",
	"too-wide":          "At {width} across, the print is wider than {laminator} takes ({limit}).",
	"speed":             "{laminator} runs from {slowest} to {fastest}; {speed} is outside.",
	"no-pair":           "{medium} is not made to be printed with {ink}: no wait can be told, and no film advised.",
	"no-film":           "No film in the data would do on this print.",
	"others":            "Films that would do: {films}.",
	"other-machines":    "This film runs on {laminators}.",
	"no-machine":        "No laminator in the data runs this film on this medium.",
	"unknown-print":     "When it was printed is not known, so the clock says nothing: do a readiness test before you laminate.",
	"ready":             "Dry by the clock: {counted} counted, {wait} needed.",
	"wait":              "Not dry yet: {remaining} still to go of {wait}, kept as it is ({storage}).",
	"hardly":            "Kept like this ({storage}) it hardly dries: {left} would still be there after 14 days, and {limit} is the limit.",
	"hardly-hung":       "Bring it into the air: {storage}, it needs {wait} more.",
	"never":             "It would not dry in this room however it is kept.",
	"maker":             "The maker asks for {maker}; this record allows no less than {least}.",
	"test-first":        "Laminate a test piece first.",
	"cold":              "A pressure-sensitive film is laid without heat: it has no temperature window.",
	"no-window":         "No set temperature will do: {why-low} needs {low} at least, and {why-high} allows {high} at most. They miss each other by {gap}.",
	"way-slower":        "Slower: at {speed} there is a window.",
	"way-drier":         "Drier: with the sheet in balance with {humidity} relative humidity there is a window.",
	"way-film":          "Another film: {films}.",
	"heat-unknown":      "Not computed: the record of {medium} says nothing of its conductivity or specific heat.",
	"window-misfit":     "Not computed: this film and this print do not go through this laminator.",
	"start":             "Film tension {tension}, nip load {load}, which is {pressure} on the mean. The maker’s manual comes first.",
	"cooling":           "On a rack: carry it after {carry}, trim it after {trim}, stack it after {stack}.",
	"curl":              "Film on one side, fresh: {bend}.",
	"curl-unknown":      "Film on one side, fresh. With the grain across the feed: {across}; along it: {along}.",
	"balanced":          "Film on both sides: it lies flat.",
	"silvering-spread":  "{best} (within what is known: {easy}, or {hard})",
	"hand-over":         "{machine} at the machine for {pieces} ({parts}), then flat for {rest} before it is cut, rolled or mounted, and {trim} of trimming.",
	"hand-over-roll":    "{machine} at the machine for {pieces} ({parts}) and the running, which is not counted: the length of the roll is not told. Then flat for {rest} before it is cut, rolled or mounted, and {trim} of trimming.",
	"set-up-hot":        "{set-up} set-up, {warm-up} warming up",
	"set-up-cold":       "{set-up} set-up",
	"no-hand-over":      "No hand-over can be promised like this: the reasons say why.",
	"hand-over-unknown": "No hand-over can be promised: nobody knows when it was printed.",
	"hand-over-hardly":  "No hand-over can be promised: kept like this it hardly dries.",
	"hand-over-work":    "No hand-over is told: the shop's record says nothing of its work.",
	"hand-over-rest":    "No hand-over is told: the record of {film} does not say how long it rests.",
	"start-and-run":     "Start at {first}. In the steady run the soft cover gives up heat and the rollers want {steady}: raise the setting as they cool, and watch the bond.",
	"regain-late":       "Kept like this ({storage}) the sheet takes longer than the rule to have its water back: {back}.",
	"regain-never":      "Kept like this ({storage}) the middle of the sheet does not get its water back in fourteen days: lay the sheets out singly before you film them hot.",
	"early":             "Laminated now it would hold {left} under the film, where {limit} may be, and take {days} to come down to that. Until then the adhesive is soft and bubbles may come: wait.",
	"early-locked":      "Laminated now it would hold {left} under the film, where {limit} may be, and keep it for more than a year: wait.",
	"half-day":          "half a day",
	"one-day":           "a day",
	"days":              "{n} days",
	"many-days":         "more than 30 days",
}

// fill puts values into a phrase: fill("{a} b", "a", "x") is "x b".
func fill(phrase string, pairs ...string) string {
	for i := 0; i+1 < len(pairs); i += 2 {
		phrase = strings.ReplaceAll(phrase, "{"+pairs[i]+"}", pairs[i+1])
	}
	return phrase
}
