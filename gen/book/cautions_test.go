package book

import (
	"os"
	"strings"
	"testing"
	"testing/fstest"
)

// TestCautionsOfMaterials: what a record is calls for cautions, whatever the
// words of its page.
func TestCautionsOfMaterials(t *testing.T) {
	files, problems := Build(smallTables(t), smallContent(), os.DirFS("../../templates"))
	if err := problems.Err(); err != nil {
		t.Fatal(err)
	}
	for path, ids := range map[string][]string{
		"materials/inks/test-solvent.html":     {"solvent"},
		"materials/films/test-cold.html":       {"nip", "blade"},
		"materials/laminators/small-wide.html": {"nip", "hot-roller"},
		"materials/media/test-vinyl.html":      {"lifting"},
	} {
		text := string(fileOf(t, files, path))
		for _, id := range ids {
			if strings.Count(text, `data-caution="`+id+`"`) != 1 {
				t.Errorf("%s does not show the caution %s once", path, id)
			}
		}
	}
}

func fileOf(t *testing.T, files []File, path string) []byte {
	t.Helper()
	for _, f := range files {
		if f.Path == path {
			return f.Data
		}
	}
	t.Fatalf("no file %s", path)
	return nil
}

// TestCautionByID: a chapter takes the shop's own words, adds to them, and is told
// of an id that no caution has.
func TestCautionByID(t *testing.T) {
	chapter := func(block string) fstest.MapFS {
		files := smallContent()
		files["10-trying.md"].Data = []byte("---\ntitle: Trying\nthumb: Learn\norder: 10\nsummary: One.\nminutes: 3\n---\n\nBegin.\n\n```caution\n" + block + "\n```\n")
		return files
	}
	files, problems := Build(smallTables(t), chapter("caution: nip, blade\nOn a bench."), os.DirFS("../../templates"))
	if err := problems.Err(); err != nil {
		t.Fatal(err)
	}
	want := `<p data-caution="nip"><strong>Nip.</strong> Keep hands from it. Follow local codes.</p><p data-caution="blade"><strong>Blade.</strong> Cut away from the hand. Follow local codes.</p><p>On a bench.</p>`
	if got := string(fileOf(t, files, "chapters/trying.html")); !strings.Contains(got, want) {
		t.Errorf("the chapter does not hold %s", want)
	}
	_, problems = Build(smallTables(t), chapter("caution: nipp"), os.DirFS("../../templates"))
	want = `no caution is called "nipp"; did you mean "nip"?`
	if got := problems.Error(); !strings.HasPrefix(got, "content/10-trying.md:12:1: ") || !strings.HasSuffix(got, want) {
		t.Errorf("got %s, want %s", got, want)
	}
}

// TestHasWord: a word is found whole, and not inside another.
func TestHasWord(t *testing.T) {
	for _, test := range []struct {
		text, word string
		want       bool
	}{
		{"the nip.", "nip", true}, {"snip and nipper", "nip", false}, {"nip", "nip", true}, {"hot rollers", "hot roller", false},
		{"a snip, a nip", "nip", true}, {"", "nip", false}, {"nip", "", false},
	} {
		if got := hasWord(test.text, test.word); got != test.want {
			t.Errorf("%q in %q: %v, want %v", test.word, test.text, got, test.want)
		}
	}
}
