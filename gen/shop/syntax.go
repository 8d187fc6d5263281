package shop

import (
	"bytes"
	"fmt"
	"regexp"
	"sort"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"
)

// syntaxWords puts the YAML reader's complaints in words for the person who
// has to mend the file. The first that fits counts.
var syntaxWords = []struct{ theirs, ours string }{
	{"exceeded max depth", tooDeep},
	{"unknown anchor", "an alias (* before a name) names nothing above it in this file: write the value out"},
	{"did not find expected key", "this line does not fit those above it: check how far it is indented"},
	{"did not find expected '-' indicator", "this line does not fit the list above it: begin a record with - and indent its lines alike"},
	{"mapping values are not allowed", "a colon stands where none can: check the indentation, and put text that holds a colon in quotes"},
	{"block sequence entries are not allowed", "a list begins where none can: put it on lines of its own under its key"},
	{"mapping keys are not allowed", "a key stands where none can: check the indentation"},
	{"could not find expected ':'", "a key has no colon after it: write key: value"},
	{"cannot start any token", "a tab, or a sign such as @ % or `, begins something here: indent with spaces, and put such text in quotes"},
	{"found a tab character", "a tab indents this line: use spaces"},
	{"expected ',' or ']'", "a list in [ ] has no comma between two entries, or no ] at its end"},
	{"expected ',' or '}'", "a group in { } has no comma between two entries, or no } at its end"},
	{"found unexpected end of stream", "a quotation mark is opened and never closed"},
	{"found unexpected document indicator", "a quotation mark is opened and never closed"},
	{"unknown escape character", "a backslash in double quotes means something else here: use single quotes"},
	{"control characters are not allowed", "a character that cannot be seen stands here: delete it and type the line again"},
}

var errorLine = regexp.MustCompile(`^yaml: (?:line (\d+): )?(.*)$`)

// syntaxProblem says what is wrong with the form of a file and near which
// line. The YAML reader names the place where the broken list or record
// began, which can be a hundred lines up; the line to mend is the first one
// with which the file, cut off after it, is broken in the same way.
func syntaxProblem(text []byte, err error) (line int, what string) {
	found := errorLine.FindStringSubmatch(strings.SplitN(err.Error(), "\n", 2)[0])
	line, what = 1, "the form of this file is broken: check the indentation, colons, dashes and quotes"
	if found == nil {
		return line, what
	}
	if n, err := strconv.Atoi(found[1]); err == nil {
		line = n
	}
	for _, w := range syntaxWords {
		if strings.Contains(found[2], w.theirs) {
			what = w.ours
			break
		}
	}
	lines := bytes.SplitAfter(text, []byte("\n"))
	end := 0
	ends := make([]int, len(lines))
	for i, l := range lines {
		end += len(l)
		ends[i] = end
	}
	first := sort.Search(len(lines), func(i int) bool {
		return complaint(text[:ends[i]]) == found[2]
	})
	if first < len(lines) {
		line = first + 1
	}
	return line, what
}

// complaint gives what the YAML reader has against a text, without the line.
func complaint(text []byte) string {
	decoder := yaml.NewDecoder(bytes.NewReader(text))
	for {
		err := decodeNode(decoder, new(yaml.Node))
		if err == nil {
			continue
		}
		if found := errorLine.FindStringSubmatch(strings.SplitN(err.Error(), "\n", 2)[0]); found != nil {
			return found[2]
		}
		return fmt.Sprint(err)
	}
}
