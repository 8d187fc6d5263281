package main

import (
	"fmt"
	"io/fs"
	"os"
	"path"

	"laydown/gen/book"
	"laydown/gen/changes"
)

// valuesIn reads the files of values of a handbook that stands in a folder; none where
// there is no handbook, or it cannot be read.
func valuesIn(dir string) changes.Values {
	values := changes.Values{}
	if dir == "" {
		return values
	}
	tree := os.DirFS(dir)
	for _, folder := range []string{"charts", "tables"} {
		names, err := fs.Glob(tree, folder+"/*.csv")
		if err != nil {
			continue
		}
		for _, name := range names {
			if data, err := fs.ReadFile(tree, name); err == nil {
				values[name] = data
			}
		}
	}
	return values
}

// tellChanges tells what is different from the values that stood before.
func (c command) tellChanges(before changes.Values, files []book.File) error {
	now := changes.Values{}
	for _, f := range files {
		if dir := path.Dir(f.Path); path.Ext(f.Path) == ".csv" && (dir == "charts" || dir == "tables") {
			now[f.Path] = f.Data
		}
	}
	list, err := changes.Between(before, now)
	if err != nil {
		return err
	}
	if len(list) == 0 {
		fmt.Fprintln(c.out, "no value and no chart is different")
		return nil
	}
	changes.Tell(c.out, list)
	return nil
}
