package book

import (
	"html"
	"strings"
)

// tag is one start tag of a finished page. The pages are our own, with every
// value in double quotes, so a small scanner reads them.
type tag struct {
	Name  string
	Attrs []attr
	At    int // offset in the page
	End   int // offset behind the tag
	Close bool
}

type attr struct{ Name, Value string }

// get is an attribute's value; "" where the tag has none.
func (t tag) get(name string) string {
	for _, a := range t.Attrs {
		if a.Name == name {
			return a.Value
		}
	}
	return ""
}

func (t tag) has(name string) bool {
	for _, a := range t.Attrs {
		if a.Name == name {
			return true
		}
	}
	return false
}

// scan calls visit for every tag of a page, in order.
func scan(page string, visit func(tag)) {
	for i := 0; i < len(page); {
		open := strings.IndexByte(page[i:], '<')
		if open < 0 {
			return
		}
		i += open
		if strings.HasPrefix(page[i:], "<!--") {
			end := strings.Index(page[i:], "-->")
			if end < 0 {
				return
			}
			i += end + 3
			continue
		}
		t, ok := readTag(page, i)
		if !ok {
			i++
			continue
		}
		visit(t)
		i = t.End
	}
}

func readTag(page string, at int) (tag, bool) {
	t := tag{At: at}
	i := at + 1
	if i < len(page) && page[i] == '/' {
		t.Close = true
		i++
	}
	from := i
	for i < len(page) && (letterAt(page, i) || i > from && (page[i] >= '0' && page[i] <= '9' || page[i] == '-')) {
		i++
	}
	if i == from {
		return t, false
	}
	t.Name = strings.ToLower(page[from:i])
	for i < len(page) {
		for i < len(page) && strings.IndexByte(" \n\t\r/", page[i]) >= 0 {
			i++
		}
		if i >= len(page) {
			return t, false
		}
		if page[i] == '>' {
			t.End = i + 1
			return t, true
		}
		from := i
		for i < len(page) && strings.IndexByte(" \n\t\r/>=", page[i]) < 0 {
			i++
		}
		if i == from {
			i++
			continue
		}
		a := attr{Name: strings.ToLower(page[from:i])}
		if i+1 < len(page) && page[i] == '=' && page[i+1] == '"' {
			end := strings.IndexByte(page[i+2:], '"')
			if end < 0 {
				return t, false
			}
			a.Value = html.UnescapeString(page[i+2 : i+2+end])
			i += end + 3
		} else if i < len(page) && page[i] == '=' {
			i++
			from := i
			for i < len(page) && strings.IndexByte(" \n\t\r>", page[i]) < 0 {
				i++
			}
			a.Value = html.UnescapeString(strings.Trim(page[from:i], "'"))
		}
		t.Attrs = append(t.Attrs, a)
	}
	return t, false
}

func letterAt(s string, i int) bool {
	return s[i] >= 'a' && s[i] <= 'z' || s[i] >= 'A' && s[i] <= 'Z'
}
