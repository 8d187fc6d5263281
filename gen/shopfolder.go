package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"laydown/content"
	"laydown/data"
	"laydown/gen/shop"
	"laydown/gen/tables"
	"laydown/templates"
)

// source is where a handbook is made from: the demonstration that the program
// carries, and a shop's own folder over it.
type source struct {
	dir       string // the shop's folder; empty: the demonstration alone
	data      fs.FS  // the shop's own data; nil: none
	content   fs.FS
	templates fs.FS
}

// open looks into a shop's folder.
func open(dir string) (source, error) {
	s := source{dir: dir, content: content.Files, templates: templates.Files}
	if dir == "" {
		return s, nil
	}
	if info, err := os.Stat(dir); err != nil {
		return s, fmt.Errorf("the shop's folder: %w", err)
	} else if !info.IsDir() {
		return s, fmt.Errorf("the shop's folder: %s is not a folder", dir)
	}
	own := false
	for name, use := range map[string]func(fs.FS){
		"data":      func(f fs.FS) { s.data = f },
		"content":   func(f fs.FS) { s.content = over{f, content.Files} },
		"templates": func(f fs.FS) { s.templates = over{f, templates.Files} },
	} {
		// A root keeps links inside the folder: the data of a shop cannot name
		// a file elsewhere on the machine.
		root, err := os.OpenRoot(filepath.Join(dir, name))
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		if err != nil {
			return s, fmt.Errorf("the shop's folder: %w", err)
		}
		use(root.FS())
		own = true
	}
	if !own {
		return s, fmt.Errorf("the shop's folder: %s has neither data nor content nor templates in it", dir)
	}
	return s, nil
}

// tables loads the shop and makes its tables.
func (s source) tables() (*tables.Tables, shop.Problems, error) {
	loaded, problems := shop.Load(data.Files, s.data)
	if len(problems) > 0 {
		return nil, problems, nil
	}
	t, err := tables.New(loaded)
	return t, nil, err
}

// folders are the places on disk that the handbook is made from.
func (s source) folders() []string {
	if s.dir == "" {
		return nil
	}
	return []string{s.dir}
}

// over is a file system whose files stand over those of another.
type over struct{ top, under fs.FS }

// Open opens a file of the upper file system, or else of the lower one.
func (o over) Open(name string) (fs.File, error) {
	f, err := o.top.Open(name)
	if errors.Is(err, fs.ErrNotExist) {
		return o.under.Open(name)
	}
	return f, err
}

// ReadDir lists the files of both.
func (o over) ReadDir(name string) ([]fs.DirEntry, error) {
	above, err := fs.ReadDir(o.top, name)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, err
	}
	below, err := fs.ReadDir(o.under, name)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, err
	}
	return merge(above, below), nil
}

// merge joins two sorted listings; where both have a name, the first's counts.
func merge(a, b []fs.DirEntry) []fs.DirEntry {
	var all []fs.DirEntry
	for len(a) > 0 || len(b) > 0 {
		switch {
		case len(b) == 0 || len(a) > 0 && a[0].Name() < b[0].Name():
			all, a = append(all, a[0]), a[1:]
		case len(a) == 0 || b[0].Name() < a[0].Name():
			all, b = append(all, b[0]), b[1:]
		default:
			all, a, b = append(all, a[0]), a[1:], b[1:]
		}
	}
	return all
}
