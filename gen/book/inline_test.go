package book

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"laydown/templates"
)

// TestInserts: what stands in a page for a mark in braces.
func TestInserts(t *testing.T) {
	rows := []struct{ name, text, want string }{
		{"a value with a page", "A {value medium test-vinyl thickness} film.", `<p>A <a class="num" href="../materials/media/test-vinyl.html">80 µm (3.1 mil)</a> film.</p>`},
		{"a range", "At {value film test-thermal roller_range}.", `<a class="num" href="../materials/films/test-thermal.html">105 to 120 °C (221 to 248 °F)</a>`},
		{"a value without a page", "At {value contact film-on-roller conductance}.", `<a class="num" href="../sources.html#guessed">400 W/(m² K)</a>`},
		{"one with neither page nor source", "Of {value storage on-the-line oxygen}.", `<p>Of 100 %.</p>`},
		{"a source", "So 24 h {source guessed}.", `<cite class="from"><a href="../sources.html#guessed" title="A guess">from memory</a></cite>`},
		{"in a list", "- 24 h {source guessed}", `<li>24 h <cite class="from">`},
		{"in a table", "| A | B |\n|---|---|\n| x | 24 h {source guessed} |", `<td class="al-none">24 h <cite class="from">`},
		{"in a note", "```note\n24 h {source guessed}.\n```", `<div class="note"><p>24 h <cite class="from">`},
		{"in code marks", "Write `{source guessed}`.", `<code>{source guessed}</code>`},
		{"in a code block", "```\n{source guessed}\n```", `{source guessed}`},
		{"a brace that is text", "A set {1, 2} and { so on.", `<p>A set {1, 2} and { so on.</p>`},
	}
	chapters := fstest.MapFS{}
	for i, row := range rows {
		chapters[fmt.Sprintf("r%d.md", i)] = &fstest.MapFile{Data: []byte(headOfChapter + row.text + "\n")}
	}
	files, problems := Build(smallTables(t), chapters, templates.Files)
	if len(problems) > 0 {
		t.Fatal(problems.Error())
	}
	pages := byPath(files)
	for i, row := range rows {
		page := strings.ReplaceAll(pages[fmt.Sprintf("chapters/r%d.html", i)], "\u00a0", " ")
		if !strings.Contains(page, row.want) {
			t.Errorf("%s: the page lacks %s", row.name, row.want)
		}
	}
}

// TestInsertProblems: a mark that stands for nothing is reported where it is.
func TestInsertProblems(t *testing.T) {
	rows := []struct {
		name, text string
		want       []string
	}{
		{"a source that is not there", "So 24 h {source none}.\n", []string{`6:9: no source is called "none": see the list under Sources of the data`}},
		{"a film nearly right", "At {value film test-themal activation}.\n", []string{`6:4: no film is called "test-themal"; did you mean "test-thermal"?`}},
		{"a field nearly right", "Text.\n\n- At {value film test-thermal activatoin}.\n", []string{`8:6: film test-thermal: there is no field "activatoin"; did you mean "activation"?`}},
		{"a kind that is none", "At {value foil test-thermal activation}.\n", []string{`6:4: "foil" is no kind of record: ink, medium, film, laminator, room, storage, carrier, substance, contact`}},
		{"a word too few", "At {value film activation}.\n", []string{"6:4: {value film activation}: a text takes {value kind id field} and {source id}; other braces belong in code marks"}},
		{"a word of no meaning", "At {figure 1}.\n", []string{"6:4: {figure 1}: a text takes {value kind id field} and {source id}; other braces belong in code marks"}},
		{"without an end", "At {source\nguessed}.\n", []string{"6:4: a mark in braces ends on its own line, with }"}},
		{"in a heading", "## At {source guessed} it\n", []string{"6:7: a mark in braces in a heading: put it in the text below"}},
		{"in a cell", "| A | B |\n|---|---|\n| x | {source none} |\n", []string{`8:7: no source is called "none": see the list under Sources of the data`}},
		{"in an answer", "```question\nWhat?\n\na) A {source none}\nb) B\nright: a\nbecause: so {source none}\n```\n", []string{
			`9:6: no source is called "none": see the list under Sources of the data`,
			`12:13: no source is called "none": see the list under Sources of the data`}},
	}
	chapters := fstest.MapFS{}
	var want []string
	for i, row := range rows {
		name := fmt.Sprintf("r%02d.md", i)
		chapters[name] = &fstest.MapFile{Data: []byte(headOfChapter + row.text)}
		for _, w := range row.want {
			want = append(want, "content/"+name+":"+w)
		}
	}
	_, problems := Build(smallTables(t), chapters, templates.Files)
	for i, p := range problems {
		if i >= len(want) || p.String() != want[i] {
			t.Errorf("got %s, want one of\n%s", p, strings.Join(want, "\n"))
		}
	}
	if len(problems) < len(want) {
		t.Errorf("not reported: %q", want[len(problems):])
	}
}
