package book

import (
	"sort"
	"strconv"
	"strings"
	"unicode/utf8"

	"laydown/gen/shop"
)

// lineIndex turns byte offsets of a text into lines and columns.
type lineIndex struct {
	file   string
	src    []byte
	starts []int
}

func newLineIndex(file string, src []byte) *lineIndex {
	ix := &lineIndex{file: file, src: src, starts: []int{0}}
	for i, b := range src {
		if b == '\n' {
			ix.starts = append(ix.starts, i+1)
		}
	}
	return ix
}

// pos gives the place of an offset; columns count characters, from 1.
func (ix *lineIndex) pos(offset int) shop.Pos {
	if offset < 0 {
		offset = 0
	}
	if offset > len(ix.src) {
		offset = len(ix.src)
	}
	line := sort.SearchInts(ix.starts, offset+1)
	col := utf8.RuneCount(ix.src[ix.starts[line-1]:offset]) + 1
	return shop.Pos{File: ix.file, Line: line, Col: col}
}

// problems collects what is wrong, in the order of finding.
type problems struct{ list shop.Problems }

func (p *problems) add(pos shop.Pos, message string) {
	p.list = append(p.list, shop.Problem{Pos: pos, Message: message})
}

// sorted gives the problems by file, line, column and message.
func (p *problems) sorted() shop.Problems {
	sort.SliceStable(p.list, func(i, j int) bool {
		a, b := p.list[i], p.list[j]
		switch {
		case a.File != b.File:
			return a.File < b.File
		case a.Line != b.Line:
			return a.Line < b.Line
		case a.Col != b.Col:
			return a.Col < b.Col
		}
		return a.Message < b.Message
	})
	return p.list
}

// blank gives the source with everything before from made into spaces, lines
// kept, so that what is parsed from it has its right offsets.
func blank(src []byte, from int) []byte {
	out := append([]byte(nil), src...)
	for i := range out[:from] {
		if out[i] != '\n' {
			out[i] = ' '
		}
	}
	return out
}

// addLine takes a problem that is written out: file:line:column: message.
func (p *problems) addLine(line string) {
	parts := strings.SplitN(line, ":", 4)
	if len(parts) == 4 {
		l, err1 := strconv.Atoi(parts[1])
		c, err2 := strconv.Atoi(parts[2])
		if err1 == nil && err2 == nil {
			p.add(shop.Pos{File: parts[0], Line: l, Col: c}, strings.TrimSpace(parts[3]))
			return
		}
	}
	p.add(shop.Pos{File: contentName(wordsFile), Line: 1, Col: 1}, line)
}
