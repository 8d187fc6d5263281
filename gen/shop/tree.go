package shop

import (
	"bytes"
	"errors"
	"io"

	"gopkg.in/yaml.v3"
)

// Bounds on what a data file may hold. Ours nest six deep.
const (
	deepest   = 40
	mostNodes = 200_000
)

// tree reads a data file's text into nodes, and reports what makes the file
// as a whole unreadable: it holds nothing, its form is broken, it nests too
// deep, or its aliases stand for too much. It gives nil then.
func (l *loader) tree(s *side, name string, text []byte) *yaml.Node {
	refuse := func(line, column int, format string, args ...any) *yaml.Node {
		l.sayAt(Pos{File: s.prefix + name, Line: max(line, 1), Col: max(column, 1)}, format, args...)
		l.markUnread(s, name)
		return nil
	}
	decoder := yaml.NewDecoder(bytes.NewReader(text))
	var first, second yaml.Node
	err := decodeNode(decoder, &first)
	if errors.Is(err, io.EOF) {
		return refuse(1, 1, "this file holds nothing: write a key such as films: with records under it, or delete the file")
	}
	if err == nil {
		if n, what := bounds(&first); n != nil {
			return refuse(n.Line, n.Column, "%s", what)
		}
		err = decodeNode(decoder, &second)
		if err == nil {
			return refuse(second.Line, second.Column, "a second document begins here (---): put everything into one, or into two files")
		}
	}
	if !errors.Is(err, io.EOF) {
		line, what := syntaxProblem(text, err)
		return refuse(line, 1, "near line %d: %s", line, what)
	}
	if len(first.Content) != 1 || isNull(first.Content[0]) {
		return refuse(1, 1, "this file holds nothing: write a key such as films: with records under it, or delete the file")
	}
	return first.Content[0]
}

// decodeNode reads one document. The YAML reader is not ours: if it ever
// panics on some file, that file is a problem and not the end of the program.
func decodeNode(decoder *yaml.Decoder, n *yaml.Node) (err error) {
	defer func() {
		if recover() != nil {
			err = errors.New("the reader gave up")
		}
	}()
	return decoder.Decode(n)
}

// bounds looks for the first node that is too deep, one too many, or of a sort
// that is not read, and says what is wrong with it. An alias counts as all that
// it stands for, without being followed: nine lines of aliases can stand for
// more values than a machine holds, and one for a list that contains itself.
// When nothing is wrong, what each alias names has been put in its place.
func bounds(top *yaml.Node) (*yaml.Node, string) {
	b := &bounder{sizes: map[*yaml.Node]int{}, heights: map[*yaml.Node]int{}, open: map[*yaml.Node]bool{}}
	if _, bad, what := b.look(top, 0); bad != nil {
		return bad, what
	}
	for _, n := range b.aliases {
		line, column := n.Line, n.Column
		*n = *n.Alias
		n.Line, n.Column = line, column
	}
	return nil, ""
}

// bounder is one run of bounds. An alias names something above it in the file,
// so that by then its size and height are known, or else it is still open: then
// the alias stands inside what it names.
type bounder struct {
	count   int
	sizes   map[*yaml.Node]int
	heights map[*yaml.Node]int
	open    map[*yaml.Node]bool
	aliases []*yaml.Node
}

// look goes through a node, and gives its height or what is wrong.
func (b *bounder) look(n *yaml.Node, depth int) (height int, bad *yaml.Node, what string) {
	size, before := 1, b.count
	if n.Kind == yaml.AliasNode {
		if b.open[n.Alias] {
			return 0, n, "the alias *" + n.Value + " stands inside what it names, which would never end: write the value out"
		}
		size, height = b.sizes[n.Alias], b.heights[n.Alias]
		b.aliases = append(b.aliases, n)
	}
	b.count += size
	switch {
	case depth+height > deepest:
		return 0, n, tooDeep
	case b.count > mostNodes && n.Kind == yaml.AliasNode:
		return 0, n, "the aliases up to here stand for more than 200 000 values: write out the few that are needed"
	case b.count > mostNodes:
		return 0, n, "this file holds more than 200 000 values: split it into several files in a folder"
	case n.Tag == "!!merge":
		return 0, n, "<< is not read here: write the keys out"
	case n.Style&yaml.TaggedStyle != 0:
		return 0, n, "tags (a word with ! before it) are not read here: write the value alone, in quotes if it begins with !"
	}
	b.open[n] = true
	for _, c := range n.Content {
		h, bad, what := b.look(c, depth+1)
		if bad != nil {
			return 0, bad, what
		}
		height = max(height, h+1)
	}
	delete(b.open, n)
	if n.Anchor != "" {
		b.sizes[n], b.heights[n] = b.count-before, height
	}
	return height, nil, ""
}

// What is said of files that nest too deep.
const tooDeep = "lists or records stand more than 40 deep inside each other here: no record needs that"

// isNull says whether a node stands for nothing at all.
func isNull(n *yaml.Node) bool {
	return n.Kind == yaml.ScalarNode && n.Tag == "!!null"
}
