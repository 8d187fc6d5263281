package book

import (
	"strings"
	"sync"
	"testing"

	"laydown/content"
	"laydown/templates"
)

// mostBytes is how large a page may be: it opens at once on an old tablet, over a
// file share.
const mostBytes = 100_000

// wholeBook is the one page that is a whole book, to be printed in one piece.
const wholeBook = "training.html"

// demoFiles are the files of the demonstration's whole handbook, built once.
var demoFiles = sync.OnceValues(func() ([]File, error) {
	made, err := loadDemo()
	if err != nil {
		return nil, err
	}
	files, problems := build(made.answers, content.Files, templates.Files)
	return files, problems.Err()
})

// TestPagesAreSmall: no page of the demonstration's handbook is larger than it may be.
func TestPagesAreSmall(t *testing.T) {
	if testing.Short() {
		t.Skip("builds the whole handbook")
	}
	files, err := demoFiles()
	if err != nil {
		t.Fatal(err)
	}
	pages := 0
	for _, f := range files {
		if !strings.HasSuffix(f.Path, ".html") {
			continue
		}
		pages++
		if len(f.Data) > mostBytes && f.Path != wholeBook {
			t.Errorf("%s has %d bytes, %d at most: part it", f.Path, len(f.Data), mostBytes)
		}
	}
	if pages < 100 {
		t.Errorf("only %d pages", pages)
	}
}
