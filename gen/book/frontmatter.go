package book

import (
	"bytes"
	"fmt"
	"strconv"
	"strings"

	"laydown/gen/shop"
)

// front is what a chapter says of itself before its text.
type front struct {
	Title   string
	Thumb   string // the tab it stands under
	Summary string
	Order   int
	Minutes int // to read
	// Reference is for looking things up behind the scenes: the search offers it last.
	Reference bool
}

// readFront reads the lines between the two rules at a chapter's head, one
// "key: value" a line, and returns the offset of the text behind them.
func readFront(ix *lineIndex, p *problems) (front, int) {
	var f front
	src := ix.src
	if !bytes.HasPrefix(src, []byte("---\n")) {
		p.add(ix.pos(0), "a chapter begins with a line ---, then title: and the rest, then a line ---")
		return f, 0
	}
	seen := map[string]bool{}
	at := 4
	for at < len(src) {
		end := bytes.IndexByte(src[at:], '\n')
		if end < 0 {
			end = len(src) - at
		}
		line := string(src[at : at+end])
		here := ix.pos(at)
		next := at + end + 1
		if strings.TrimRight(line, " \r") == "---" {
			if f.Title == "" {
				p.add(ix.pos(0), "the chapter has no title")
			}
			if f.Summary == "" {
				p.add(ix.pos(0), "the chapter has no summary")
			}
			return f, min(next, len(src))
		}
		if strings.TrimSpace(line) != "" {
			readFrontLine(&f, line, here, seen, p)
		}
		at = next
	}
	p.add(ix.pos(0), "the chapter's head has no line --- at its end")
	return f, len(src)
}

func readFrontLine(f *front, line string, here shop.Pos, seen map[string]bool, p *problems) {
	key, value, ok := strings.Cut(line, ":")
	key, value = strings.TrimSpace(key), unquote(strings.TrimSpace(value))
	switch {
	case !ok:
		p.add(here, fmt.Sprintf("%q is not a line of the form key: value", strings.TrimSpace(line)))
		return
	case seen[key]:
		p.add(here, fmt.Sprintf("%s is given twice", key))
		return
	}
	seen[key] = true
	switch key {
	case "title":
		f.Title = value
	case "thumb":
		f.Thumb = value
	case "summary":
		f.Summary = value
	case "order":
		f.Order = wholeNumber(key, value, here, p)
	case "minutes":
		f.Minutes = wholeNumber(key, value, here, p)
	case "reference":
		f.Reference = value == "yes"
		if value != "yes" && value != "no" {
			p.add(here, fmt.Sprintf("reference: %q is neither yes nor no", value))
		}
	default:
		p.add(here, fmt.Sprintf("unknown key %s: a chapter has title, thumb, order, summary, minutes and reference", key))
	}
}

func wholeNumber(key, value string, here shop.Pos, p *problems) int {
	n, err := strconv.Atoi(value)
	if err != nil || n < 0 {
		p.add(here, fmt.Sprintf("%s: %q is not a whole number", key, value))
	}
	return n
}

// unquote takes the quotation marks off a value that has them on both sides.
func unquote(s string) string {
	if len(s) >= 2 && (s[0] == '"' || s[0] == '\'') && s[len(s)-1] == s[0] {
		return s[1 : len(s)-1]
	}
	return s
}
