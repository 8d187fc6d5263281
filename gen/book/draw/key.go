package draw

import (
	"html/template"
	"strings"
)

// KeyNode is a place in a fault key: remedies to try in turn, and then a check whose
// answers branch off. A node without a check is an end.
type KeyNode struct {
	Number  int      // of the check's step, or of the first remedy's
	Try     []string // remedies, in turn
	Check   string
	Answers []KeyAnswer
	End     string // what is left when all that was tried has failed
}

// KeyAnswer leads from a check to what comes next.
type KeyAnswer struct {
	Says string
	To   KeyNode
}

// The measures of a key's drawing, in units of its view box.
const (
	keyLine   = 17.0 // from line to line
	keySize   = 13.0 // height of type
	keyColumn = 190.0
	keyGap    = 26.0
	keyRow    = 9.0 // between neighbours
)

// Key draws a key as a tree that grows to the right: checks where it branches, answers on
// the branches, remedies at their ends.
func Key(id, title, desc string, root KeyNode) template.HTML {
	laid := layKey(root, "")
	var v canvas
	v.open(id, "keytree", keyColumn*float64(laid.depth())+keyGap*float64(laid.depth()-1)+8, laid.height+8, title, desc)
	laid.draw(&v, 4, 4)
	return v.close()
}

// laidKey is a node with its lines and its place among its neighbours.
type laidKey struct {
	says, head, tail []string // answer that leads here; what to try; the check, or the end
	height           float64  // with all that follows
	children         []*laidKey
}

func layKey(n KeyNode, says string) *laidKey {
	l := &laidKey{}
	if says != "" {
		l.says = wrap(says, keyColumn-6)
	}
	for _, t := range n.Try {
		l.head = append(l.head, wrap("▸ "+t, keyColumn-6)...)
	}
	switch {
	case n.Check != "":
		l.tail = wrap(n.Check+"?", keyColumn-16)
	case n.End != "":
		l.tail = wrap(n.End, keyColumn-16)
	}
	below := 0.0
	for i, a := range n.Answers {
		child := layKey(a.To, a.Says)
		l.children = append(l.children, child)
		if i > 0 {
			below += keyRow
		}
		below += child.height
	}
	l.height = max(l.own(), below)
	return l
}

// own is the height of a node's own lines.
func (l *laidKey) own() float64 {
	h := keyLine*float64(len(l.says)+len(l.head)) + keyRow
	if len(l.tail) > 0 {
		h += keyLine*float64(len(l.tail)) + 10
	}
	return h
}

func (l *laidKey) depth() int {
	deepest := 0
	for _, c := range l.children {
		deepest = max(deepest, c.depth())
	}
	return 1 + deepest
}

// draw sets a node with its upper left corner at a place, and what follows to its right.
func (l *laidKey) draw(v *canvas, x, y float64) {
	at := y
	for _, s := range l.says {
		at += keyLine
		v.text("key-answer", "start", x, at-4, s)
	}
	for _, s := range l.head {
		at += keyLine
		v.text("key-try", "start", x, at-4, s)
	}
	if len(l.tail) > 0 {
		h := keyLine*float64(len(l.tail)) + 6
		class := "key-check"
		if len(l.children) == 0 {
			class = "key-end"
		}
		v.rect(class, x, at+2, keyColumn-4, h)
		for i, s := range l.tail {
			v.text("key-name", "start", x+6, at+keyLine*float64(i+1), s)
		}
		at += 2
	}
	from := point{x + keyColumn - 4, at + 10}
	top := y
	for _, c := range l.children {
		to := point{x + keyColumn + keyGap - 4, top + 12}
		mid := x + keyColumn + keyGap/2 - 4
		v.path("stroke", []point{from, {mid, from.y}, {mid, to.y}, to})
		c.draw(v, x+keyColumn+keyGap, top)
		top += c.height + keyRow
	}
}

// wrap breaks a text into lines that fit a width.
func wrap(text string, width float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && TextWidth(longer)*keySize*0.7 > width {
			lines = append(lines, line)
			longer = word
		}
		line = longer
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}
