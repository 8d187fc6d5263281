package publish

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"
)

func TestPublishIntoNothingAndOverItself(t *testing.T) {
	out := output(t)
	first, second := book("one"), book("two")
	second = append(second[:1], second[2:]...) // the second edition has no wall chart
	r := mustPublish(t, out, first, Options{})
	if !r.Changed || r.Files != 4 || r.Bytes == 0 || r.Leftover != "" {
		t.Fatalf("first publish: %+v", r)
	}
	holdsExactly(t, out, first, nil)
	alone(t, out)
	if r := mustPublish(t, out, second, Options{}); !r.Changed {
		t.Fatalf("second publish: %+v", r)
	}
	holdsExactly(t, out, second, nil)
	alone(t, out)
	if _, err := os.Stat(filepath.Join(out, "charts", "a3")); !errors.Is(err, os.ErrNotExist) {
		t.Fatalf("the folder of the old chart: %v", err)
	}
}

func TestMakesTheFoldersAboveTheOutput(t *testing.T) {
	out := filepath.Join(t.TempDir(), "share", "handbook", "site")
	mustPublish(t, out, book("one"), Options{})
	holdsExactly(t, out, book("one"), nil)
}

func TestCarriesTheGitignoreOver(t *testing.T) {
	out := output(t)
	ignore := map[string]string{".gitignore": "*\n!.gitignore\n"}
	write(t, filepath.Join(out, ".gitignore"), ignore[".gitignore"])
	for _, edition := range []string{"one", "two"} {
		mustPublish(t, out, book(edition), Options{})
		holdsExactly(t, out, book(edition), ignore)
	}
	write(t, filepath.Join(out, ".gitignore"), "") // an empty one is one too
	mustPublish(t, out, book("three"), Options{})
	holdsExactly(t, out, book("three"), map[string]string{".gitignore": ""})
}

// TestNothingChangedTouchesNothing compares every time stamp, the folders' too.
func TestNothingChangedTouchesNothing(t *testing.T) {
	out := output(t)
	mustPublish(t, out, book("one"), Options{})
	long := time.Date(2001, 2, 3, 4, 5, 6, 0, time.UTC)
	var all []string
	_ = filepath.Walk(filepath.Dir(out), func(p string, _ os.FileInfo, err error) error {
		all = append(all, p)
		return err
	})
	slices.Reverse(all)
	for _, p := range all {
		if err := os.Chtimes(p, long, long); err != nil {
			t.Fatal(err)
		}
	}
	files := book("one")
	slices.Reverse(files) // the order of the files does not count
	if r := mustPublish(t, out, files, Options{}); r.Changed || r.Files != 4 {
		t.Fatalf("an equal publish: %+v", r)
	}
	for _, p := range all {
		info, err := os.Stat(p)
		if err != nil {
			t.Fatal(err)
		}
		if !info.ModTime().Equal(long) {
			t.Errorf("%s was touched", p)
		}
	}
}

func TestPutsRightWhatSomebodyChanged(t *testing.T) {
	damage := map[string]func(t *testing.T, out string){
		"a page edited by hand": func(t *testing.T, out string) { write(t, filepath.Join(out, "index.html"), "scribble") },
		"a page gone": func(t *testing.T, out string) {
			if err := os.Remove(filepath.Join(out, "index.html")); err != nil {
				t.Fatal(err)
			}
		},
		"a page nobody may read": func(t *testing.T, out string) {
			if err := os.Chmod(filepath.Join(out, "index.html"), 0o600); err != nil {
				t.Fatal(err)
			}
		},
		"what a file browser left": func(t *testing.T, out string) {
			write(t, filepath.Join(out, "charts", "Thumbs.db"), "x")
			write(t, filepath.Join(out, "index.html"), "scribble")
		},
	}
	for name, do := range damage {
		t.Run(name, func(t *testing.T) {
			out := output(t)
			mustPublish(t, out, book("one"), Options{})
			do(t, out)
			if r := mustPublish(t, out, book("one"), Options{}); !r.Changed {
				t.Fatal("took it for up to date")
			}
			holdsExactly(t, out, book("one"), nil)
			info, err := os.Stat(filepath.Join(out, "index.html"))
			if err != nil || info.Mode().Perm() != fileMode {
				t.Fatalf("mode %v, %v", info.Mode(), err)
			}
			alone(t, out)
		})
	}
}

func TestEqualHandbooksAreEqualOnDisk(t *testing.T) {
	a, b := output(t), output(t)
	files := book("one")
	mustPublish(t, a, files, Options{})
	slices.Reverse(files)
	mustPublish(t, b, files, Options{NoSync: true, twoSteps: true})
	holdsExactly(t, a, files, nil)
	holdsExactly(t, b, files, nil)
	text, err := os.ReadFile(filepath.Join(a, markerName))
	if err != nil {
		t.Fatal(err)
	}
	if strings.Contains(string(text), filepath.Dir(a)) {
		t.Error("the marker names a path of this machine")
	}
}

func TestModesAreFixed(t *testing.T) {
	out := output(t)
	mustPublish(t, out, book("one"), Options{})
	err := filepath.Walk(out, func(p string, info os.FileInfo, err error) error {
		if err != nil {
			return err
		}
		want := fileMode
		if info.IsDir() {
			want = dirMode
		}
		if info.Mode().Perm() != want {
			t.Errorf("%s has mode %v, want %v", p, info.Mode().Perm(), want)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

func TestTwoAtOnceTakeTurns(t *testing.T) {
	out := output(t)
	done := make(chan error, 8)
	for i := range 8 {
		go func() {
			_, err := Publish(out, book(string(rune('a'+i))), Options{NoSync: true})
			done <- err
		}()
	}
	for range 8 {
		if err := <-done; err != nil {
			t.Error(err)
		}
	}
	whole := false
	for i := range 8 {
		whole = whole || differs(t, out, book(string(rune('a'+i))), nil) == ""
	}
	if !whole {
		t.Errorf("a mixture of editions: %v", contents(t, out))
	}
	alone(t, out)
}
