package search

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"strings"
)

// Read reads an index back from its script, to ask a published handbook. What
// only Build needs, the entries' weights and other names, is not in it.
func Read(script []byte) (*Index, error) {
	body, ok := bytes.CutPrefix(script, []byte(prefix))
	if !ok {
		return nil, errors.New("search: the script does not begin as an index does")
	}
	body, ok = bytes.CutSuffix(body, []byte(suffix))
	if !ok {
		return nil, errors.New("search: the script is cut short")
	}
	var p packed
	if err := json.Unmarshal(body, &p); err != nil {
		return nil, fmt.Errorf("search: the script cannot be read: %w", err)
	}
	x := newIndex()
	x.stamps, x.edition = p.Stamps, p.Edition
	if err := x.readEntries(p.Entries); err != nil {
		return nil, err
	}
	words, err := unpackWords(p.Words)
	if err != nil {
		return nil, err
	}
	x.words = words
	x.readGroups(p.Groups)
	if err := x.readPosts(p.Amounts, p.Posts); err != nil {
		return nil, err
	}
	if err := x.readNames(p.Names); err != nil {
		return nil, err
	}
	if err := x.readFacts(p); err != nil {
		return nil, err
	}
	for _, c := range p.Charts {
		x.charts = append(x.charts, Chart{c[0], c[1], c[2]})
	}
	return x, nil
}

func (x *Index) readEntries(list [][]string) error {
	page, section, kind := "", "", ""
	for i, e := range list {
		switch {
		case len(e) == 3 && strings.HasPrefix(e[0], "#"):
			x.entries = append(x.entries, Entry{URL: page + e[0], Title: e[1], Section: section, Kind: kind, Text: e[2]})
		case len(e) == 5:
			x.entries = append(x.entries, Entry{URL: e[0], Title: e[1], Section: e[2], Kind: e[3], Text: e[4]})
			var found bool
			page, _, found = strings.Cut(e[0], "#")
			section, kind = e[2], e[3]
			if !found {
				section = e[1]
			}
		default:
			return fmt.Errorf("search: entry %d has %d parts", i, len(e))
		}
	}
	return nil
}

func unpackWords(text string) ([]string, error) {
	var words []string
	last := ""
	for _, w := range parted(text, "<") {
		word, err := unpackText(last, w)
		if err != nil {
			return nil, err
		}
		if word == "" {
			return nil, errors.New("search: a word is empty")
		}
		words = append(words, word)
		last = word
	}
	return words, nil
}

func (x *Index) readGroups(groups []string) {
	for g, text := range groups {
		parts := strings.Split(text, "|")
		x.heads = append(x.heads, parts[0])
		for i, how := range []byte{sameAs, misspelt, nearTo} {
			if i+1 >= len(parts) || parts[i+1] == "" {
				continue
			}
			for _, key := range strings.Split(parts[i+1], ",") {
				x.addMember(key, member{g, how})
			}
		}
	}
}

func (x *Index) readPosts(amounts, posts string) error {
	terms := stemsOf(x.words)
	if amounts != "" {
		for _, list := range strings.Split(amounts, "<") {
			if list == "" {
				return errors.New("search: a list of quantities has no kind")
			}
			numbers, err := unpackNumbers(list[1:])
			if err != nil {
				return err
			}
			step := -zero
			for _, n := range numbers {
				step += n
				terms = append(terms, quantityTerm(list[:1], step))
			}
		}
	}
	for g := range x.heads {
		terms = append(terms, groupTerm(g))
	}
	lists := strings.Split(posts, "<")
	if len(terms) == 0 && posts == "" {
		return nil
	}
	if len(lists) != len(terms) {
		return fmt.Errorf("search: %d lists for %d terms", len(lists), len(terms))
	}
	for i, list := range lists {
		numbers, err := unpackNumbers(list)
		if err != nil || len(numbers)%2 != 0 {
			return fmt.Errorf("search: the list of %q cannot be read", terms[i])
		}
		entry := 0
		for k := 0; k < len(numbers); k += 2 {
			entry += numbers[k]
			if entry >= len(x.entries) {
				return fmt.Errorf("search: the list of %q names entry %d of %d", terms[i], entry, len(x.entries))
			}
			x.posts[terms[i]] = append(x.posts[terms[i]], posting{entry, numbers[k+1]})
		}
	}
	return nil
}

func (x *Index) readNames(text string) error {
	numbers, err := unpackNumbers(text)
	if err != nil {
		return err
	}
	h := uint32(0)
	for i := 0; i+1 < len(numbers); {
		h += uint32(numbers[i])
		n := numbers[i+1]
		i += 2
		entry := 0
		for ; n > 0 && i < len(numbers); n-- {
			entry += numbers[i]
			if entry >= len(x.entries) {
				return fmt.Errorf("search: a name belongs to entry %d of %d", entry, len(x.entries))
			}
			x.names[h] = append(x.names[h], entry)
			i++
		}
	}
	return nil
}

// unpackNumbers reads numbers written in digits46.
func unpackNumbers(text string) ([]int, error) {
	var out []int
	n := 0
	for i := range len(text) {
		d := strings.IndexByte(digits46, text[i])
		switch {
		case d < 0:
			return nil, fmt.Errorf("search: %q is no digit", text[i])
		case n > 1<<32:
			return nil, errors.New("search: a number is longer than any that is written")
		case d >= 46:
			n = n*46 + d - 46
		default:
			out = append(out, n*46+d)
			n = 0
		}
	}
	return out, nil
}

func (x *Index) readFacts(p packed) error {
	for _, n := range p.Pins {
		if len(n) != 5 {
			return errors.New("search: a pin has not five parts")
		}
		x.pins = append(x.pins, pin{Pin{Title: n[0], Say: n[1], URL: n[2]}, parted(n[3], "|"), parted(n[4], "|")})
	}
	for _, t := range p.Things {
		if len(t) != 4 {
			return errors.New("search: a thing has not four parts")
		}
		x.things = append(x.things, thing{Thing{Name: t[0]}, setOf(parted(t[1], " ")), setOf(parted(t[2], "|")), setOf(parted(t[3], " "))})
	}
	under, url := "", ""
	for _, f := range p.Facts {
		var numbers []int
		var texts []string
		for _, v := range f {
			switch v := v.(type) {
			case float64:
				numbers = append(numbers, int(v))
			case string:
				texts = append(texts, v)
			}
		}
		if len(numbers) != 3 || len(texts) < 4 || numbers[0] < 0 || numbers[0] >= len(asks) || numbers[1] < 0 {
			return errors.New("search: a fact cannot be read")
		}
		out := fact{ask: asks[numbers[0]]}
		out.Ask = out.ask.key
		for _, i := range numbers[1:] {
			if i >= len(x.things) {
				return errors.New("search: a fact is about nothing")
			}
			if i >= 0 {
				out.About = append(out.About, i)
			}
		}
		var broken [2]error
		under, broken[0] = unpackText(under, texts[2])
		url, broken[1] = unpackText(url, texts[3])
		if err := errors.Join(broken[:]...); err != nil {
			return err
		}
		out.Box = Box{Number: texts[0], Unit: texts[1], Under: under, URL: url}
		if len(texts) > 4 {
			out.Box.What = texts[4]
		}
		x.facts = append(x.facts, out)
	}
	return nil
}

func parted(text, by string) []string {
	if text == "" {
		return nil
	}
	return strings.Split(text, by)
}

func setOf(list []string) map[string]bool {
	m := map[string]bool{}
	for _, s := range list {
		m[s] = true
	}
	return m
}
