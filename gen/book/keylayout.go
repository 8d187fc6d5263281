package book

import (
	"fmt"
	"strings"

	"laydown/gen/book/draw"
)

// chartPart is what a sheet of a chart takes whole: a row of a table, a check with its
// answers, some remedies side by side.
type chartPart interface {
	height(l chartLayout) float64 // at most, in mm
	words() [][]string            // all that it says, for the stamp
}

// The measures of a key on a wall, in cap heights.
const (
	discCaps    = 1.8  // a check's number in its ring
	boxCaps     = 1.56 // a remedy's letter in its box
	drawingCaps = 1.9  // the width of an answer's drawing, in the column of numbers
	boxRule     = 0.13 // the rule of either
	symbolGap   = 0.14 // between one box and the next
	arrowCaps   = 1.5  // before them
	symbolCaps  = 2.2  // the column of numbers
	answerPad   = 0.04 // over and under an answer
	partRule    = 0.08 // between checks, and over the remedies
	doCaps      = 14   // the least width of how a check is made, beside its name
	doGap       = 1.2  // between the two
	actPad      = 0.10 // over and under a check's name
	cureCaps    = 18   // the least width of a remedy
	cureSymbol  = 1.9  // the column of letters beside what to do
	cureGap     = 0.9  // between remedies side by side
	curePad     = 0.12 // over and under a remedy
)

// leadsWidth is what the widest lead of a key takes.
func (k *chartKey) leadsWidth() float64 {
	w := 0.0
	for _, c := range k.Checks {
		for _, a := range c.Answers {
			w = max(w, a.width())
		}
	}
	return w
}

func (l keyLead) width() float64 {
	switch {
	case l.Number > 0:
		return arrowCaps + discCaps
	case len(l.Letters) > 0:
		w := arrowCaps
		for _, letter := range l.Letters {
			w += symbolGap + max(boxCaps, draw.TextWidth(letter)+2*boxRule)
		}
		return w
	}
	return arrowCaps + mediumCap*draw.TextWidth(helpLead)
}

// pieces are the check with all its answers, or, where no sheet holds them, with some of
// them each.
func (c keyCheck) pieces(l chartLayout) []chartPart {
	var list []chartPart
	for n := len(c.Answers); n > 1 && c.height(l) > l.room(); n = len(c.Answers) {
		piece, rest := c, c
		for piece.Answers = c.Answers[:n]; len(piece.Answers) > 1 && piece.height(l) > l.room(); {
			piece.Answers = piece.Answers[:len(piece.Answers)-1]
		}
		rest.Answers = c.Answers[len(piece.Answers):]
		list = append(list, piece)
		c = rest
	}
	return append(list, c)
}

// parts are what the sheets of a key are made of: each check, then the remedies, as many
// side by side as have room.
func (k *chartKey) parts(l chartLayout) []chartPart {
	var list []chartPart
	for _, c := range k.Checks {
		list = append(list, c.pieces(l)...)
	}
	for left := k.Remedies; len(left) > 0; {
		n := min(l.abreast(), len(left))
		list = append(list, keyRemedies(left[:n]))
		left = left[n:]
	}
	return list
}

// abreast is how many remedies stand side by side.
func (l chartLayout) abreast() int {
	width, _ := l.Paper.content()
	return int((width + cureGap) / (cureCaps + cureGap))
}

// height is that of the check and all its answers.
func (c keyCheck) height(l chartLayout) float64 {
	width, _ := l.Paper.content()
	width -= symbolCaps
	name := min(draw.TextWidth(c.Name)+underGap, width-doCaps)
	h := partRule + 2*actPad + max(discCaps, textHeight(c.Name, name, 1), textHeight(c.Does(), (width-name-doGap)/draw.RegularShare, smallEm))
	for _, a := range c.Answers {
		symbol := boxCaps
		if a.Number > 0 {
			symbol = discCaps
		}
		if a.Drawing != "" {
			symbol = max(symbol, drawingCaps*draw.FaultShape)
		}
		h += 2*answerPad + max(symbol, textHeight(a.Says, (l.names-symbolCaps-nameGap)/draw.RegularShare, mediumCap))
	}
	return h*l.Paper.Cap + ruleMM*float64(len(c.Answers)+1)
}

// keyRemedies are remedies side by side.
type keyRemedies []keyRemedy

// height is that of the highest of them.
func (r keyRemedies) height(l chartLayout) float64 {
	width, _ := l.Paper.content()
	n := float64(l.abreast())
	width = (width-(n-1)*cureGap)/n - cureSymbol
	h := 0.0
	for _, one := range r {
		lines := linesOf(one.Name, width/mediumCap)
		used := draw.TextWidth(one.Name+" ")*mediumCap - width*float64(lines-1)
		after := linesFrom(max(0, used)/smallEm, one.Does(), width/smallEm/draw.RegularShare) - 1
		h = max(h, boxCaps, float64(lines)*mediumCap*em*leading+float64(after)*smallEm*em*leading)
	}
	if r[0].Letter == remedyLetter(0) {
		h += partRule
	}
	return (h+2*curePad)*l.Paper.Cap + ruleMM
}

// textHeight is what a text of a size takes in a width, in cap heights.
func textHeight(text string, width, size float64) float64 {
	return float64(linesOf(text, width/size)) * size * em * leading
}

func (c keyCheck) words() [][]string {
	list := [][]string{{fmt.Sprint(c.Number), c.Name, c.Do, c.Takes}}
	for _, a := range c.Answers {
		list = append(list, []string{a.Says, a.Leads(), string(a.Drawing)})
	}
	return list
}

func (r keyRemedies) words() [][]string {
	var list [][]string
	for _, one := range r {
		list = append(list, []string{one.Letter, one.Name, one.Do, one.Takes})
	}
	return list
}

// checkPart is a part of a key if it is a check; nil otherwise.
func checkPart(p chartPart) *keyCheck {
	if c, ok := p.(keyCheck); ok {
		return &c
	}
	return nil
}

// remedyPart is a part of a key if it is remedies.
func remedyPart(p chartPart) keyRemedies {
	r, _ := p.(keyRemedies)
	return r
}

// keySpan says which parts of a key a sheet holds.
func keySpan(parts []chartPart) string {
	var checks, letters []string
	for _, p := range parts {
		switch p := p.(type) {
		case keyCheck:
			checks = append(checks, fmt.Sprint(p.Number))
		case keyRemedies:
			for _, one := range p {
				letters = append(letters, one.Letter)
			}
		}
	}
	var said []string
	for _, s := range []struct {
		one, many string
		list      []string
	}{{"check", "checks", checks}, {"remedy", "remedies", letters}} {
		switch n := len(s.list); {
		case n == 1:
			said = append(said, s.one+" "+s.list[0])
		case n > 1:
			said = append(said, s.many+" "+s.list[0]+"–"+s.list[n-1])
		}
	}
	return strings.Join(said, ", ")
}
