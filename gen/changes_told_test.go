package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"laydown/gen/book"
)

// A manager is told which charts on the walls are stale and which tables moved, against a
// handbook that stands in a folder; and that nothing did where nothing did.
func TestChangesAreTold(t *testing.T) {
	const head = "chart,paper,sheet,holds,stamp,page\nHours to wait,A3,sheet 2,rows 4–6,6D-R3,charts/waits-a3-2.html\n"
	dir := t.TempDir()
	for name, text := range map[string]string{
		"charts/stamps.csv":       head + "Hours to wait,A3,sheet 1,rows 1–3,J2-WH,charts/waits-a3-1.html\n",
		"tables/waits.csv":        "ink,storage,wait_hours\neco-solvent,hung,24\neco-solvent,rack,30\n",
		"tables/waits/other.json": "{}",
	} {
		name = filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	files := []book.File{
		{Path: "charts/stamps.csv", Data: []byte(head + "Hours to wait,A3,sheet 1,rows 1–3,XJ-X9,charts/waits-a3-1.html\n")},
		{Path: "tables/waits.csv", Data: []byte("ink,storage,wait_hours\neco-solvent,hung,36\neco-solvent,rack,30\n")},
		{Path: "index.html", Data: []byte("<!doctype html>")},
	}
	told := func(files []book.File) string {
		t.Helper()
		var out bytes.Buffer
		if err := (command{out: &out}).tellChanges(valuesIn(dir), files); err != nil {
			t.Fatal(err)
		}
		return out.String()
	}
	want := "print anew: Hours to wait, A3, sheet 1: J2-WH becomes XJ-X9\n" +
		"tables/waits: 1 of 2 rows changed; most: eco-solvent, hung: wait_hours 24 becomes 36\n"
	if got := told(files); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	var same []book.File
	for name, data := range valuesIn(dir) {
		same = append(same, book.File{Path: name, Data: data})
	}
	if got := told(same); got != "no value and no chart is different\n" {
		t.Errorf("of the same: %q", got)
	}

	status, _, errs := laydown("proof", "-against", filepath.Join(dir, "nothing"))
	if status != misuse || !strings.Contains(errs, "there is no handbook in it") {
		t.Errorf("a folder without a handbook: status %d: %s", status, errs)
	}
}
