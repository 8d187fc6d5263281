package shop

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// String gives the place as file:line:column.
func (p Pos) String() string {
	return fmt.Sprintf("%s:%d:%d", p.File, p.Line, p.Col)
}

// Problem is one thing that is wrong with the data, and where.
type Problem struct {
	Pos
	Message string
}

// String gives the problem on one line: file:line:column: message.
func (p Problem) String() string {
	return p.Pos.String() + ": " + p.Message
}

// Problems is everything that is wrong with a shop's data, in the order of
// file, line and column.
type Problems []Problem

// Error lists the problems, one a line.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.String()
	}
	return strings.Join(lines, "\n")
}

// Err gives the problems as an error, and nil when there are none.
func (ps Problems) Err() error {
	if len(ps) == 0 {
		return nil
	}
	return ps
}

// Under gives the same problems with dir put before the paths of the shop's
// own files, so that they can be opened from where the command was given.
func (ps Problems) Under(dir string) Problems {
	dir = strings.TrimRight(dir, "/")
	moved := slices.Clone(ps)
	for i := range moved {
		if dir != "" && strings.HasPrefix(moved[i].File, OwnPrefix) {
			moved[i].File = dir + "/" + moved[i].File
		}
	}
	return moved
}

// sort puts the problems in order and drops repeats.
func (ps Problems) sort() Problems {
	slices.SortFunc(ps, func(a, b Problem) int {
		return cmp.Or(
			cmp.Compare(a.File, b.File),
			cmp.Compare(a.Line, b.Line),
			cmp.Compare(a.Col, b.Col),
			cmp.Compare(a.Message, b.Message),
		)
	})
	return slices.Compact(ps)
}
