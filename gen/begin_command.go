package main

import (
	"bytes"
	"embed"
	"errors"
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"

	"laydown/content"
	"laydown/data"
)

// beginning is what a new shop's folder holds.
//
//go:embed begin
var beginning embed.FS

// anyDay stands for the day on which the folder is begun.
const anyDay = "2000-01-01"

// begin starts a shop's own folder.
func (c command) begin(args []string) int {
	f := c.flags("begin")
	f.Usage = func() {
		fmt.Fprintln(c.errs, "laydown begin DIR: starts a shop's own folder, in a folder that is new or empty")
	}
	switch err := f.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return done
	case err != nil:
		return misuse
	case f.NArg() != 1:
		return c.wrong("begin", errors.New("which folder? laydown begin DIR names one that is new or empty"))
	}
	dir := f.Arg(0)
	if err := vacant(dir); err != nil {
		return c.wrong("begin", err)
	}
	files, err := c.beginFiles()
	if err != nil {
		fmt.Fprintf(c.errs, "laydown begin: %v\n", err)
		return problems
	}
	for _, file := range files {
		if err := writeNew(filepath.Join(dir, filepath.FromSlash(file.name)), file.text); err != nil {
			fmt.Fprintf(c.errs, "laydown begin: %v\n", err)
			return problems
		}
	}
	fmt.Fprintf(c.out, "%s: %d files. Begin with data/shop.yaml, then: laydown view -shop %s\n", dir, len(files), dir)
	return done
}

// vacant says why a folder cannot be begun in; nil where it is new or empty.
func vacant(dir string) error {
	entries, err := os.ReadDir(dir)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return err
	case len(entries) > 0:
		return fmt.Errorf("%s is not empty (it has %s in it): name a folder that is new or empty", dir, entries[0].Name())
	}
	return nil
}

// beginFile is a file of a new shop's folder.
type beginFile struct {
	name string
	text []byte
}

// beginFiles are the files of a new shop's folder: its own, and as examples the
// demonstration's data and the program's chapters.
func (c command) beginFiles() ([]beginFile, error) {
	var files []beginFile
	add := func(tree fs.FS, root, into string) error {
		return fs.WalkDir(tree, root, func(name string, e fs.DirEntry, err error) error {
			if err != nil || e.IsDir() {
				return err
			}
			text, err := fs.ReadFile(tree, name)
			if err != nil {
				return err
			}
			text = bytes.ReplaceAll(text, []byte(anyDay), []byte(c.now().Format("2006-01-02")))
			files = append(files, beginFile{path.Join(into, name), text})
			return nil
		})
	}
	own, err := fs.Sub(beginning, "begin")
	if err != nil {
		return nil, err
	}
	return files, errors.Join(
		add(own, ".", ""),
		add(data.Files, ".", "examples/data"),
		add(content.Files, ".", "examples/content"))
}

// writeNew writes a file that is not there yet.
func writeNew(name string, text []byte) error {
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return err
	}
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	_, err = f.Write(text)
	return errors.Join(err, f.Close())
}
