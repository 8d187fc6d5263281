package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A folder that was begun loads without problems, as it is and with every example in
// it taken into use, and bears the day on which it was begun.
func TestBegin(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "our-shop")
	status, out, errs := laydown("begin", dir)
	if status != done || errs != "" || !strings.Contains(out, "laydown view -shop") {
		t.Fatalf("status %d, printed %q, said %q", status, out, errs)
	}
	for _, name := range []string{"README.txt", "data/shop.yaml", "data/rooms.yaml", "data/materials.yaml", "content/99-our-rules.md", "examples/data/inks.yaml", "examples/content/10-drying.md"} {
		if _, err := os.Stat(filepath.Join(dir, name)); err != nil {
			t.Error(err)
		}
	}
	shop, err := os.ReadFile(filepath.Join(dir, "data/shop.yaml"))
	if err != nil || !bytes.Contains(shop, []byte("revised: 2026-11-25 ")) {
		t.Errorf("%v; the day is not the clock's:\n%.600s", err, shop)
	}
	src, err := open(dir)
	if err != nil {
		t.Fatal(err)
	}
	if _, found, err := src.tables(); err != nil || len(found) > 0 {
		t.Errorf("as begun: %v\n%v", err, found)
	}
	examples := 0
	for _, name := range []string{"shop", "rooms", "materials"} {
		file := filepath.Join(dir, "data", name+".yaml")
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		examples += bytes.Count(text, []byte("\n#: "))
		if err := os.WriteFile(file, bytes.ReplaceAll(text, []byte("\n#: "), []byte("\n")), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if examples < 50 {
		t.Errorf("only %d lines of examples", examples)
	}
	if status, out, errs := laydown("proof", "-shop", dir); status != done || !strings.Contains(out, "no problems") {
		t.Errorf("with its examples: status %d, printed %q, said %q", status, out, errs)
	}
}

// A folder that has something in it is left as it is, and so is a file.
func TestBeginRefuses(t *testing.T) {
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "mine.txt"), []byte("mine"), 0o644); err != nil {
		t.Fatal(err)
	}
	for _, row := range []struct {
		args []string
		want string
	}{
		{[]string{"begin"}, "which folder?"},
		{[]string{"begin", "a", "b"}, "which folder?"},
		{[]string{"begin", dir}, "is not empty (it has mine.txt in it)"},
		{[]string{"begin", filepath.Join(dir, "mine.txt")}, "not a directory"},
		{[]string{"begin", "-force", dir}, "flag provided but not defined"},
	} {
		status, out, errs := laydown(row.args...)
		if status != misuse || out != "" || !strings.Contains(errs, row.want) {
			t.Errorf("%q: status %d, printed %q, said %q; want status %d and %q", row.args, status, out, errs, misuse, row.want)
		}
	}
	if left, err := os.ReadDir(dir); err != nil || len(left) != 1 {
		t.Errorf("the folder holds %d files, %v", len(left), err)
	}
	if status, _, errs := laydown("begin", filepath.Join(dir, "empty", "below")); status != done {
		t.Errorf("a folder that is not there yet: status %d, %s", status, errs)
	}
}
