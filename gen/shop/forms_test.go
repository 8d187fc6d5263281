package shop

import (
	"strings"
	"testing"
)

// TestForms: a form is read whole, and what cannot be a sheet is a problem.
func TestForms(t *testing.T) {
	form := func(part string) string {
		return "forms:\n  - id: log\n    name: Log\n    cautions: [nip]\n    parts:\n      - " + part + "\n"
	}
	s := mustLoad(t, smallShop(t), file("forms.yaml", form("{name: A, heads: [day, learns], rows: [1 | stops], lines: 3, fields: [{name: Who, wide: true, ticks: [me, you]}]}")))
	f := s.Forms[len(s.Forms)-1]
	if f.ID != "log" || f.Cautions[0].ID != "nip" || f.Parts[0].Lines != 3 || !f.Parts[0].Fields[0].Wide || Cells(f.Parts[0].Rows[0])[1] != "stops" {
		t.Errorf("read as %+v", f)
	}
	for _, test := range []struct{ part, want string }{
		{"{heads: [a], rows: [1 | 2]}", `a row of form "log" has 2 cells and the table 1 heads`},
		{"{rows: [1 | 2]}", `a table of form "log" has no heads`},
		{"{heads: [a], lines: 41}", `a part of form "log" has 41 lines`},
		{"{heads: [a, b, c, d, e, f, g, h, i, j]}", `a table of form "log" has 10 columns`},
		{"{fields: [{wide: 3}]}", "true or false"},
	} {
		_, problems := Load(smallShop(t), file("forms.yaml", form(test.part)))
		if got := problems.Error(); !strings.HasPrefix(got, "data/forms.yaml:6:") || !strings.Contains(got, test.want) || strings.Contains(got, "\n") {
			t.Errorf("%s: got %s, want %s", test.part, got, test.want)
		}
	}
}
