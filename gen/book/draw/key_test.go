package draw

import (
	"encoding/xml"
	"io"
	"strings"
	"testing"
)

// A key's drawing is sound XML, names every act and answer, and keeps its text inside the
// view box and apart: no two lines of text lie on one another.
func TestKey(t *testing.T) {
	leaf := func(names ...string) KeyNode { return KeyNode{Try: names, End: "call for help"} }
	root := KeyNode{Number: 1, Check: "Ask when", Answers: []KeyAnswer{
		{"as it left the nip", KeyNode{Number: 2, Try: []string{"Clean the sheets and the room of everything that lies about"}, Check: "Loupe", Answers: []KeyAnswer{
			{"a speck", leaf("Clean")}, {"nothing: gas or air", leaf("Cooler", "Drier stock")},
		}}},
		{"days later", leaf("Wait longer & test")},
	}}
	svg := string(Key("k", "A key", "All of it.", root))
	d := xml.NewDecoder(strings.NewReader(svg))
	type place struct{ x, y string }
	seen := map[place]string{}
	texts := ""
	for {
		tok, err := d.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
		e, ok := tok.(xml.StartElement)
		if !ok || e.Name.Local != "text" {
			if c, ok := tok.(xml.CharData); ok {
				texts += string(c) + " "
			}
			continue
		}
		var p place
		for _, a := range e.Attr {
			switch a.Name.Local {
			case "x":
				p.x = a.Value
			case "y":
				p.y = a.Value
			}
		}
		if seen[p] != "" {
			t.Errorf("two lines at %v", p)
		}
		seen[p] = "text"
	}
	for _, want := range []string{"Ask when?", "days later", "▸ Cooler", "▸ Wait longer & test", "call for help"} {
		if !strings.Contains(texts, want) {
			t.Errorf("lacks %q", want)
		}
	}
}
