package main_test

import (
	"fmt"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

// module is the import path that all our packages start with.
const module = "laydown/"

// arrows are the packages of the project and what each may import of the others.
// Arrows point downward only: what a package knows, it knows without those above.
// A package that is not listed fails the test: add it with its arrows.
var arrows = map[string][]string{
	"gen":             {"gen/book", "gen/changes", "gen/publish", "gen/shop", "gen/tables", "gen/quantity", "data", "content", "templates"},
	"gen/changes":     {},
	"gen/publish":     {},
	"gen/book":        {"gen/tables", "gen/shop", "gen/quantity", "gen/book/draw", "gen/book/search"},
	"gen/book/draw":   {"gen/quantity"},
	"gen/book/search": {"gen/quantity"},
	"gen/tables": {"gen/shop", "gen/drying", "gen/nip", "gen/cooling", "gen/curl", "gen/stack", "gen/bond", "gen/roll", "gen/vent",
		"gen/faults", "gen/paper", "gen/air", "gen/quantity", "testdata"},
	"gen/shop":        {"gen/quantity"},
	"gen/drying":      {"gen/quantity", "gen/air"},
	"gen/nip":         {"gen/quantity"},
	"gen/nip/niptest": {"gen/nip", "gen/quantity"},
	"gen/paper":       {"gen/quantity", "gen/air"},
	"gen/cooling":     {"gen/quantity", "gen/air"},
	"gen/curl":        {"gen/quantity"},
	"gen/stack":       {"gen/quantity", "gen/air", "gen/paper"},
	"gen/bond":        {"gen/quantity"},
	"gen/roll":        {"gen/quantity"},
	"gen/vent":        {"gen/quantity", "gen/air"},
	"gen/faults":      {"gen/quantity"},
	"gen/air":         {"gen/quantity"},
	"gen/quantity":    {},
	"gen/browser":     {"gen/tables", "gen/shop", "gen/book/search"},
	"content":         {},
	"data":            {},
	"templates":       {},
	"testdata":        {},
}

// embedded are the folders that only carry files; a test may read them whatever
// its package knows.
var embedded = []string{"content", "data", "templates", "testdata"}

// secondMethods are packages that only tests may import, those of any package.
var secondMethods = []string{"gen/nip/niptest"}

// outside lists the modules of other people and the only packages that may use them.
var outside = map[string][]string{
	"gopkg.in/yaml.v3":               {"gen/shop", "gen/book/search", "testdata"},
	"github.com/yuin/goldmark":       {"gen/book"},
	"github.com/alecthomas/chroma":   {"gen/book"},
	"golang.org/x/sys":               {"gen/publish"},
	"github.com/chromedp/chromedp":   {"gen/browser"},
	"github.com/chromedp/cdproto":    {"gen/browser"},
	"github.com/go-json-experiment/": {"gen/browser"},
}

// testOnly are the modules that never reach the program itself.
var testOnly = []string{"github.com/chromedp/", "github.com/go-json-experiment/"}

// inTests are the modules that the tests of any package may use: the published
// values in testdata are YAML.
var inTests = []string{"gopkg.in/yaml.v3"}

// physics are the packages that speak in quantities and know nothing of files,
// pages or the network.
var physics = []string{"gen/quantity", "gen/air", "gen/paper", "gen/drying", "gen/nip",
	"gen/cooling", "gen/curl", "gen/stack", "gen/bond", "gen/roll", "gen/vent", "gen/faults"}

// physicsAvoids are the parts of the standard library that physics does without.
var physicsAvoids = []string{"os", "io/fs", "embed", "html", "net", "path/filepath", "encoding/json", "text/template", "log"}

// TestImports reads the imports of every package of the project.
func TestImports(t *testing.T) {
	faults, seen, err := checkImports(os.DirFS(".."))
	if err != nil {
		t.Fatal(err)
	}
	if !slices.Contains(seen, "gen/quantity") || len(seen) < 5 {
		t.Fatalf("saw only the packages %v", seen)
	}
	for _, f := range faults {
		t.Error(f)
	}
}

// TestArrowsPointDown: the table itself may hold no circle and no unknown name.
func TestArrowsPointDown(t *testing.T) {
	var visit func(p string, above []string)
	visit = func(p string, above []string) {
		if slices.Contains(above, p) {
			t.Fatalf("a circle: %v → %s", above, p)
		}
		targets, ok := arrows[p]
		if !ok {
			t.Errorf("%s is the end of an arrow, but is not listed", p)
		}
		for _, q := range targets {
			visit(q, append(slices.Clip(above), p))
		}
	}
	for p := range arrows {
		visit(p, nil)
	}
}

// TestImportRuleFindsPlantedFaults holds the rule to what it promises.
func TestImportRuleFindsPlantedFaults(t *testing.T) {
	source := func(pkg string, imports ...string) *fstest.MapFile {
		text := "package " + pkg + "\n"
		for _, i := range imports {
			text += fmt.Sprintf("import _ %q\n", i)
		}
		return &fstest.MapFile{Data: []byte(text)}
	}
	rows := []struct {
		name, file string
		source     *fstest.MapFile
		want       string // part of the message; empty: no fault
	}{
		{"downward", "gen/drying/a.go", source("drying", "math", "laydown/gen/air"), ""},
		{"second method in a test", "gen/tables/a_test.go", source("tables", "laydown/gen/nip/niptest"), ""},
		{"second method in the program", "gen/tables/a.go", source("tables", "laydown/gen/nip/niptest"), "may not import laydown/gen/nip/niptest"},
		{"upward", "gen/quantity/a.go", source("quantity", "laydown/gen/shop"), "may not import laydown/gen/shop"},
		{"sideways", "gen/air/a.go", source("air", "laydown/gen/drying"), "may not import laydown/gen/drying"},
		{"past a layer", "gen/book/a.go", source("book", "laydown/gen/drying"), "may not import laydown/gen/drying"},
		{"the publish knows nothing of ours", "gen/publish/a.go", source("publish", "laydown/gen/quantity"), "may not import"},
		{"a new package", "gen/spare/a.go", source("spare"), `gen/spare is not listed: add it to "arrows"`},
		{"a new package with only tests", "gen/spare/a_test.go", source("spare"), "gen/spare is not listed"},
		{"below a listed one", "gen/shop/inner/a.go", source("inner"), "gen/shop/inner is not listed"},
		{"a parser of YAML elsewhere", "gen/tables/a.go", source("tables", "gopkg.in/yaml.v3"), "may not import gopkg.in/yaml.v3"},
		{"a parser of YAML where it belongs", "gen/shop/a.go", source("shop", "gopkg.in/yaml.v3"), ""},
		{"a parser of YAML in a test", "gen/drying/a_test.go", source("drying", "gopkg.in/yaml.v3"), ""},
		{"Markdown where it belongs", "gen/book/a.go", source("book", "github.com/yuin/goldmark/ast", "github.com/alecthomas/chroma/v2"), ""},
		{"Markdown elsewhere", "gen/a.go", source("main", "github.com/yuin/goldmark"), "may not import github.com/yuin/goldmark"},
		{"a module nobody listed", "gen/book/a.go", source("book", "example.org/clever"), "may not import example.org/clever"},
		{"the browser's driver in a test", "gen/browser/a_test.go", source("browser", "github.com/chromedp/chromedp"), ""},
		{"the browser's driver in the program", "gen/browser/a.go", source("browser", "github.com/chromedp/chromedp"), "only in tests"},
		{"the browser's driver in another test", "gen/book/a_test.go", source("book", "github.com/chromedp/chromedp"), "may not import"},
		{"a test reads the demo data", "gen/shop/a_test.go", source("shop", "laydown/data"), ""},
		{"the package itself does not", "gen/shop/a.go", source("shop", "laydown/data"), "may not import laydown/data"},
		{"a test from outside imports its package", "gen/shop/a_test.go", source("shop_test", "laydown/gen/shop"), ""},
		{"a test looks two layers down", "gen/book/a_test.go", source("book", "laydown/gen/air"), ""},
		{"a test looks up", "gen/air/a_test.go", source("air_test", "laydown/gen/tables"), "may not import laydown/gen/tables"},
		{"physics that reads files", "gen/air/a.go", source("air", "os"), "knows nothing of files"},
		{"physics that serves", "gen/drying/a.go", source("drying", "net/http"), "knows nothing of files"},
		{"a test of physics reads files", "gen/air/a_test.go", source("air", "os"), ""},
		{"C", "gen/air/a.go", source("air", "C"), "may not import C"},
		{"broken source", "gen/air/a.go", &fstest.MapFile{Data: []byte("no Go")}, "expected 'package'"},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) {
			faults, _, err := checkImports(fstest.MapFS{row.file: row.source})
			if err != nil {
				t.Fatal(err)
			}
			switch {
			case row.want == "" && len(faults) > 0:
				t.Errorf("a false alarm: %v", faults)
			case row.want != "" && len(faults) != 1:
				t.Errorf("faults %v, want one with %q", faults, row.want)
			case row.want != "" && !strings.Contains(faults[0], row.want):
				t.Errorf("fault %q lacks %q", faults[0], row.want)
			}
		})
	}
}

// checkImports reads every Go file of the tree and returns the faults, in order,
// and the packages seen.
func checkImports(tree fs.FS) (faults, seen []string, err error) {
	err = fs.WalkDir(tree, ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if entry.IsDir() {
			if base := entry.Name(); base != "." && strings.HasPrefix(base, ".") || base == "node_modules" || base == "site" {
				return fs.SkipDir
			}
			return nil
		}
		if path.Ext(name) != ".go" {
			return nil
		}
		data, err := fs.ReadFile(tree, name)
		if err != nil {
			return err
		}
		if pkg := path.Dir(name); !slices.Contains(seen, pkg) {
			seen = append(seen, pkg)
		}
		faults = append(faults, checkFile(name, data)...)
		return nil
	})
	slices.Sort(faults)
	return slices.Compact(faults), seen, err
}

// checkFile judges the imports of one file.
func checkFile(name string, data []byte) []string {
	pkg, test := path.Dir(name), strings.HasSuffix(name, "_test.go")
	if _, ok := arrows[pkg]; !ok {
		return []string{fmt.Sprintf(`%s is not listed: add it to "arrows" in gen/layout_test.go with what it may import`, pkg)}
	}
	file, err := parser.ParseFile(token.NewFileSet(), name, data, parser.ImportsOnly)
	if err != nil {
		return []string{err.Error()}
	}
	var faults []string
	for _, spec := range file.Imports {
		imported := strings.Trim(spec.Path.Value, "`\"")
		if why := judge(pkg, imported, test); why != "" {
			faults = append(faults, name+": "+why)
		}
	}
	return faults
}

// judge says why the package may not import this, "" when it may.
func judge(pkg, imported string, test bool) string {
	first, _, _ := strings.Cut(imported, "/")
	no := fmt.Sprintf("%s may not import %s", pkg, imported)
	switch {
	case strings.HasPrefix(imported, module):
		ours := strings.TrimPrefix(imported, module)
		if slices.Contains(arrows[pkg], ours) {
			return ""
		}
		if test && (ours == pkg || slices.Contains(embedded, ours) || slices.Contains(secondMethods, ours) || below(pkg, ours)) {
			return ""
		}
		return no
	case strings.Contains(first, "."):
		for prefix, users := range outside {
			if !strings.HasPrefix(imported, prefix) {
				continue
			}
			if !slices.Contains(users, pkg) && !(test && slices.Contains(inTests, prefix)) {
				return no
			}
			if !test && slices.ContainsFunc(testOnly, func(p string) bool { return strings.HasPrefix(imported, p) }) {
				return imported + " is allowed only in tests"
			}
			return ""
		}
		return no + ": no such module is listed in gen/layout_test.go"
	case imported == "C":
		return no
	}
	if test || !slices.Contains(physics, pkg) {
		return ""
	}
	for _, avoid := range physicsAvoids {
		if imported == avoid || strings.HasPrefix(imported, avoid+"/") {
			return no + ": physics knows nothing of files, pages or the network"
		}
	}
	return ""
}

// below reports whether arrows lead from one package down to another, however far.
func below(from, to string) bool {
	return slices.ContainsFunc(arrows[from], func(p string) bool { return p == to || below(p, to) })
}
