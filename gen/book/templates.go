package book

import (
	"bytes"
	"fmt"
	"html/template"
	"io/fs"
	"strings"

	"laydown/gen/book/draw"
	"laydown/gen/shop"
)

// pressRoom holds the parsed templates, one set a kind of page.
type pressRoom struct {
	kinds  map[string]*template.Template
	layout *template.Template
}

// functions are what templates may call.
var functions = template.FuncMap{
	"mark":    draw.Mark,
	"short":   short,
	"lower":   lowerFirst,
	"upper":   upperFirst,
	"join":    strings.Join,
	"plusOne": func(n int) int { return n + 1 },
	"symbol":  symbol,
	"slug":    slug,
	"cells":   shop.Cells,
	"upTo":    upTo,

	"checkPart":  checkPart,
	"remedyPart": remedyPart,
	"bigmark": func(verdict string) template.HTML {
		return draw.Mark(verdict, 132, 24)
	},
}

// upTo are the numbers from 0 that a template counts empty lines by.
func upTo(n float64) []int { return make([]int, int(n)) }

// symbol writes a quantity's symbol: what follows an underscore stands low.
func symbol(text string) template.HTML {
	base, low, ok := strings.Cut(text, "_")
	out := "<i>" + template.HTMLEscapeString(base) + "</i>"
	if ok {
		out += "<sub>" + template.HTMLEscapeString(low) + "</sub>"
	}
	return template.HTML(out)
}

// newPressRoom parses layout.html, parts.html and a template for each kind.
func newPressRoom(files fs.FS) (*pressRoom, error) {
	shared, err := template.New("layout.html").Funcs(functions).Option("missingkey=error").ParseFS(files, "layout.html", "parts.html")
	if err != nil {
		return nil, err
	}
	names, err := fs.Glob(files, "*.html")
	if err != nil {
		return nil, err
	}
	p := &pressRoom{kinds: map[string]*template.Template{}, layout: shared}
	for _, name := range names {
		if name == "layout.html" || name == "parts.html" {
			continue
		}
		set, err := shared.Clone()
		if err != nil {
			return nil, err
		}
		if _, err := set.ParseFS(files, name); err != nil {
			return nil, err
		}
		p.kinds[strings.TrimSuffix(name, ".html")] = set
	}
	return p, nil
}

// fill makes the main block of a page.
func (p *pressRoom) fill(v view) (template.HTML, error) {
	set, ok := p.kinds[v.Kind]
	if !ok {
		return "", fmt.Errorf("%s: there is no template %s.html", v.Path, v.Kind)
	}
	var b bytes.Buffer
	if err := set.ExecuteTemplate(&b, "main", v); err != nil {
		return "", fmt.Errorf("%s: %w", v.Path, err)
	}
	return template.HTML(b.String()), nil
}

// part fills a block of parts.html by itself, for a place in a chapter.
func (b *builder) part(name string, data any) template.HTML {
	var out bytes.Buffer
	if err := b.press.layout.ExecuteTemplate(&out, name, data); err != nil {
		b.fault("templates/parts.html", err)
	}
	return template.HTML(bytes.TrimSpace(out.Bytes()))
}

// set puts a filled page into the layout and makes its links relative.
func (p *pressRoom) set(v view) ([]byte, error) {
	if v.Bare {
		return relative(v.Path, []byte(v.Main)), nil
	}
	var b bytes.Buffer
	if err := p.layout.ExecuteTemplate(&b, "layout.html", v); err != nil {
		return nil, fmt.Errorf("%s: %w", v.Path, err)
	}
	return relative(v.Path, b.Bytes()), nil
}

// relative turns links from the root into links from the page. Text cannot be
// mistaken for one: there a quotation mark is written as an entity.
func relative(path string, text []byte) []byte {
	up := strings.Repeat("../", strings.Count(path, "/"))
	for _, name := range []string{"href", "src", "action", "data-root"} {
		text = bytes.ReplaceAll(text, []byte(" "+name+`="/`), []byte(" "+name+`="`+up))
	}
	return text
}
