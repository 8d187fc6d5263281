package publish

import (
	"errors"
	"maps"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// refused publishes and wants an error that says why, with nothing changed.
func refused(t *testing.T, root, out string, o Options, why string) error {
	t.Helper()
	before := contents(t, root)
	r, err := Publish(out, book("new"), o)
	if err == nil {
		t.Fatalf("not refused: %+v", r)
	}
	if !strings.Contains(err.Error(), why) {
		t.Errorf("message %q lacks %q", err, why)
	}
	if after := contents(t, root); !maps.Equal(before, after) {
		t.Errorf("a refusal changed the folder:\nbefore %v\nafter  %v", before, after)
	}
	return err
}

func TestRefusesForeignFolders(t *testing.T) {
	marker, _ := newMarker(nil).text()
	rows := []struct {
		name  string
		files map[string]string
		why   string
	}{
		{"somebody's files", map[string]string{"thesis.doc": "x"}, "thesis.doc"},
		{"files in a folder below", map[string]string{"a/b/c.txt": "x"}, "a/b/c.txt"},
		{"a .gitignore and more", map[string]string{".gitignore": "*", "main.go": "x"}, "main.go"},
		{"a repository", map[string]string{".git/HEAD": "x"}, ".git/HEAD"},
		{"many files", map[string]string{"a": "", "b": "", "c": "", "d": "", "e": ""}, "a, b, c and 2 more"},
		{"a marker that is no JSON", map[string]string{".laydown": "handbook"}, "cannot be read"},
		{"an empty marker", map[string]string{".laydown": ""}, "cannot be read"},
		{"a marker of a later program", map[string]string{".laydown": `{"format": 99}`}, "format 99"},
		{"ours, with a note that somebody dropped in", map[string]string{".laydown": string(marker), "notes.txt": "x"}, "notes.txt"},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) {
			out := output(t)
			for p, data := range row.files {
				write(t, filepath.Join(out, filepath.FromSlash(p)), data)
			}
			if err := refused(t, out, out, Options{}, row.why); !errors.Is(err, ErrForeign) {
				t.Errorf("%v does not wrap ErrForeign", err)
			}
			alone(t, out)
		})
	}
}

func TestRefusesAFile(t *testing.T) {
	out := output(t)
	write(t, out, "a file")
	refused(t, filepath.Dir(out), out, Options{}, "is a file")
}

func TestRefusesSymbolicLinks(t *testing.T) {
	root := t.TempDir()
	real := filepath.Join(root, "real")
	mustPublish(t, real, book("old"), Options{})
	link := filepath.Join(root, "link")
	if err := os.Symlink(real, link); err != nil {
		t.Fatal(err)
	}
	refused(t, real, link, Options{}, "symbolic link")
	dangling := filepath.Join(root, "dangling")
	if err := os.Symlink(filepath.Join(root, "nowhere"), dangling); err != nil {
		t.Fatal(err)
	}
	refused(t, root, dangling, Options{}, "symbolic link")

	// A link inside the handbook is not followed and not removed in silence.
	victim := filepath.Join(root, "victim.txt")
	write(t, victim, "keep me")
	page := filepath.Join(real, "index.html")
	if err := os.Remove(page); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(victim, page); err != nil {
		t.Fatal(err)
	}
	refused(t, real, real, Options{}, "index.html")
	if data, _ := os.ReadFile(victim); string(data) != "keep me" {
		t.Error("wrote through a link")
	}
}

func TestRefusesMarkerAndGitignoreThatAreNoFiles(t *testing.T) {
	for _, name := range []string{markerName, gitignoreName} {
		out := output(t)
		write(t, filepath.Join(filepath.Dir(out), "elsewhere"), "x")
		if err := os.Mkdir(out, 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.Symlink("../elsewhere", filepath.Join(out, name)); err != nil {
			t.Fatal(err)
		}
		refused(t, out, out, Options{}, "not a plain file")
	}
}

func TestRefusesPlacesWhereASwapDoesHarm(t *testing.T) {
	root := t.TempDir()
	for _, d := range []string{"shop/data", "shop/content", "empty", "home/me"} {
		if err := os.MkdirAll(filepath.Join(root, d), 0o755); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Symlink(filepath.Join(root, "shop"), filepath.Join(root, "by-another-name")); err != nil {
		t.Fatal(err)
	}
	in := func(p string) string { return filepath.Join(root, filepath.FromSlash(p)) }
	t.Setenv("HOME", in("home/me"))
	t.Chdir(in("empty"))
	rows := []struct {
		name, out string
		sources   []string
		why       string
	}{
		{"no name", "", nil, "no name"},
		{"blank", "  ", nil, "no name"},
		{"the file system", "/", nil, "whole file system"},
		{"the file system, the long way", in("../../../../../../../../.."), nil, "whole file system"},
		{"a source", in("shop/data"), []string{in("shop/data")}, "source folder"},
		{"above a source", in("shop"), []string{in("shop/data")}, "source folder"},
		{"far above a source", root, []string{in("shop/data")}, ""}, // also holds the working folder
		{"a source through a link", in("by-another-name/data"), []string{in("shop/data")}, "source folder"},
		{"a source named through a link", in("shop/data"), []string{in("by-another-name/data")}, "source folder"},
		{"where the command runs", ".", nil, "folder this command runs in"},
		{"above where the command runs", "..", nil, "folder this command runs in"},
		{"the home folder", in("home/me"), nil, "home folder"},
		{"above the home folder", in("home"), nil, "home folder"},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) {
			refused(t, root, row.out, Options{Sources: row.sources}, row.why)
		})
	}
	// Beside and inside a source is fine: a shop keeps its handbook with its data.
	mustPublish(t, in("shop/site"), book("one"), Options{Sources: []string{in("shop/data"), in("shop")}})
}

func TestRefusesUnsafePaths(t *testing.T) {
	bad := []string{
		"", ".", "..", "../x", "a/../x", "a/../../x", "/etc/passwd", "//host/x", "a//b", "a/", "./a",
		`..\x`, `a\b`, "C:/x", "a:b", "nul", "charts/CON.html", "aux.txt", "lpt9", "a?.html", "a*b", "a|b", `a"b`, "a<b>",
		"tab\tname", "line\nname", "zero\x00", "del\x7f", "bad\xff\xfeutf8",
		"ends.", "ends ", "a. /b", ".laydown", ".gitignore", strings.Repeat("x", 256),
	}
	for _, p := range bad {
		out := output(t)
		if _, err := Publish(out, []File{{Path: "index.html"}, {Path: p}}, Options{}); err == nil {
			t.Errorf("path %q was taken", p)
		}
		if len(beside(t, out)) != 0 || exists(out) {
			t.Errorf("path %q: something was written", p)
		}
	}
	pairs := [][2]string{{"a", "a"}, {"A.html", "a.html"}, {"a", "a/b"}, {"x/Y", "X/y/z"}}
	for _, pair := range pairs {
		out := output(t)
		if _, err := Publish(out, []File{{Path: pair[0]}, {Path: pair[1]}}, Options{}); err == nil {
			t.Errorf("%q and %q were both taken", pair[0], pair[1])
		}
	}
	for _, p := range []string{"index.html", "a b/c d.html", "größe.html", "nullable.html", "console/aux-room.html", ".hidden", strings.Repeat("x", 255)} {
		if err := checkPath(p); err != nil {
			t.Errorf("path %q: %v", p, err)
		}
	}
}

func exists(p string) bool {
	_, err := os.Lstat(p)
	return err == nil
}

// FuzzCheckPath: a path that passes never leaves the output.
func FuzzCheckPath(f *testing.F) {
	for _, s := range []string{"index.html", "../x", "a/./b", `a\..\b`, "/a", "a/b/c"} {
		f.Add(s)
	}
	root := filepath.FromSlash("/some/where/site")
	f.Fuzz(func(t *testing.T, p string) {
		if checkPath(p) != nil {
			return
		}
		full := filepath.Join(root, filepath.FromSlash(p))
		if !strings.HasPrefix(full, root+string(filepath.Separator)) {
			t.Errorf("%q leads to %q", p, full)
		}
		if rel, err := filepath.Rel(root, full); err != nil || filepath.ToSlash(rel) != p {
			t.Errorf("%q comes back as %q, %v", p, rel, err)
		}
	})
}
