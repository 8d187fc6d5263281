package search

import (
	"bytes"
	"encoding/json"
	"strings"
)

// digits46 writes numbers into a script: a last digit is one of the first 46
// characters, a digit that others follow one of the other 46. None of them
// needs an escape in a string or could close a script element.
const digits46 = " !#$%&'()*+,-./0123456789:;=>?@ABCDEFGHIJKLMNO" +
	"PQRSTUVWXYZ[]^_`abcdefghijklmnopqrstuvwxyz{|}~"

func appendNumber(b []byte, n int) []byte {
	if n >= 46 {
		b = appendHigh(b, n/46)
	}
	return append(b, digits46[n%46])
}

func appendHigh(b []byte, n int) []byte {
	if n >= 46 {
		b = appendHigh(b, n/46)
	}
	return append(b, digits46[46+n%46])
}

// Script is the index as a classic script that sets window.laydownIndex.
// Equal entries and words give equal bytes.
//
// Its keys: fold, stop, units, steps are this package's tables; words are all
// known words, terms the names of the posting lists, posts the lists in the
// same order (for each entry the step from the entry before and the score, as
// numbers in digits), members the groups' words and phrases with group and how
// they belong, heads the groups' own words, entries each URL, title, section,
// kind and text.
func (x *Index) Script() []byte {
	var b bytes.Buffer
	first := true
	put := func(key string, value any) {
		if first {
			b.WriteString("window.laydownIndex = {\n")
		} else {
			b.WriteString(",\n")
		}
		first = false
		b.WriteString(key + ": ")
		b.Write(compact(value))
	}
	put("fold", foldTable)
	put("stop", strings.Join(stopWords, " "))
	var us [][]any
	for _, u := range units {
		us = append(us, []any{u.name, u.kind, u.factor, u.offset})
	}
	put("units", us)
	put("steps", map[string]int{"ratio": ratioSteps, "ratioReach": ratioReach, "degree": degreeSteps, "degreeReach": degreeReach})
	put("digits", digits46)
	put("words", strings.Join(x.words, " "))
	put("terms", strings.Join(x.terms, " "))
	posts := make([]string, len(x.terms))
	for i, t := range x.terms {
		var list []byte
		last := 0
		for _, p := range x.posts[t] {
			list = appendNumber(list, p.entry-last)
			list = appendNumber(list, p.score)
			last = p.entry
		}
		posts[i] = string(list)
	}
	put("posts", posts)
	members := map[string][][]any{}
	for key, ms := range x.members {
		for _, m := range ms {
			members[key] = append(members[key], []any{m.group, string(m.how)})
		}
	}
	put("members", members)
	put("longest", x.longest)
	put("heads", append([]string{}, x.heads...))
	b.WriteString(",\nentries: [\n")
	for i, e := range x.entries {
		if i > 0 {
			b.WriteString(",\n")
		}
		b.Write(compact([]string{e.URL, e.Title, e.Section, e.Kind, e.Text}))
	}
	b.WriteString("\n]};\n")
	return b.Bytes()
}

// compact writes a value as JSON, which sorts the keys of maps. What is written
// here are texts, numbers and lists of them: it cannot fail.
func compact(v any) []byte {
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false) // the script is a file of its own, never inline
	if err := enc.Encode(v); err != nil {
		panic("search: " + err.Error())
	}
	return bytes.TrimRight(b.Bytes(), "\n")
}
