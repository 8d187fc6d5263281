package book

import (
	"io/fs"
	"os"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"laydown/gen/shop"
	"laydown/gen/tables"
	"laydown/templates"
)

// smallTables are the tables of the smallest shop there is.
func smallTables(t testing.TB) *tables.Tables {
	t.Helper()
	answers, err := loadSmall()
	if err != nil {
		t.Fatal(err)
	}
	return answers
}

// loadSmall loads it once: tables are safe to share.
var loadSmall = sync.OnceValues(func() (*tables.Tables, error) {
	s, problems := shop.Load(os.DirFS("../../testdata/smallshop/data"), nil)
	if err := problems.Err(); err != nil {
		return nil, err
	}
	return tables.New(s)
})

// smallContent is one chapter with one block of each kind, and two words.
func smallContent() fstest.MapFS {
	return fstest.MapFS{
		"10-trying.md": &fstest.MapFile{Data: []byte(strings.ReplaceAll(smallChapter, "~~~", "```"))},
		"words.yaml": &fstest.MapFile{Data: []byte(`words:
  - term: silvering
    meaning: Tiny bright points under the film.
    also: [frost]
    source: common practice, no source
  - term: bond line
    meaning: Where adhesive meets print.
    source: common practice, no source
`)},
	}
}

const smallChapter = `---
title: Trying
thumb: Learn
order: 10
summary: One of each.
minutes: 3
---

Begin with **this**.

~~~note
The margin says *why*.
~~~

## A table {#table}

| Print | Hours |
|---|--:|
| a | 1 |

~~~caution
Knife
Cut away from the hand. Follow local codes.
~~~

## Computed {#computed}

See [the table](#table) and [all waits](../tables/waits.html).

~~~computed
show: waits
ink: test-solvent
medium: test-vinyl
~~~

~~~computed
show: residue
ink: test-solvent
medium: test-vinyl
coverage: light, heavy
~~~

~~~computed
show: after
ink: test-solvent
medium: test-vinyl
film: test-cold
back: open, mounted
spent: 40 %
~~~

~~~yaml
films:
  - id: one # a comment
~~~

~~~question
What now?

a) Wait
b) Laminate
right: a
because: It is not *dry*.
~~~
`

// smallBook builds the small handbook, which has no problem.
func smallBook(t testing.TB) map[string]string {
	t.Helper()
	files, problems := Build(smallTables(t), smallContent(), templates.Files)
	if len(problems) > 0 {
		t.Fatal(problems.Error())
	}
	return byPath(files)
}

func byPath(files []File) map[string]string {
	m := map[string]string{}
	for _, f := range files {
		m[f.Path] = string(f.Data)
	}
	return m
}

// onlyTemplates are the templates with one more file, or one replaced.
func onlyTemplates(t *testing.T, name, text string) fs.FS {
	t.Helper()
	m := fstest.MapFS{}
	names, err := fs.Glob(templates.Files, "*.*")
	if err != nil {
		t.Fatal(err)
	}
	for _, n := range names {
		data, err := fs.ReadFile(templates.Files, n)
		if err != nil {
			t.Fatal(err)
		}
		m[n] = &fstest.MapFile{Data: data}
	}
	m[name] = &fstest.MapFile{Data: []byte(text)}
	return m
}
