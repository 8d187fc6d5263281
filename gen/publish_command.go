package main

import (
	"fmt"

	"laydown/gen/book"
	"laydown/gen/publish"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// publish computes everything and writes the handbook.
func (c command) publish(args []string) int {
	f := c.flags("publish")
	dir := f.String("shop", "", "the shop's folder")
	out := f.String("out", "site", "where the handbook goes")
	if status, ok := c.parse(f, args); !ok {
		return status
	}
	src, t, files, status := c.make("publish", *dir)
	if status != done {
		return status
	}
	finished := make([]publish.File, len(files))
	for i, file := range files {
		finished[i] = publish.File(file)
	}
	against := valuesIn(*out) // before it is replaced
	written := c.progress().step("writing " + *out)
	result, err := publish.Publish(*out, finished, publish.Options{Sources: src.folders()})
	written()
	if err != nil {
		fmt.Fprintf(c.errs, "laydown publish: %v\n", err)
		return problems
	}
	c.doubts(t)
	if !result.Changed {
		fmt.Fprintf(c.out, "%s is up to date: %d files\n", *out, result.Files)
		return done
	}
	fmt.Fprintf(c.out, "%s: %d files, %.1f MB\n", *out, result.Files, float64(result.Bytes)/1e6)
	if len(against) > 0 {
		if err := c.tellChanges(against, files); err != nil {
			fmt.Fprintf(c.errs, "laydown publish: the handbook is written; what changed in it cannot be told: %v\n", err)
		}
	}
	return done
}

// proof computes everything and reports what is wrong or doubtful.
func (c command) proof(args []string) int {
	f := c.flags("proof")
	dir := f.String("shop", "", "the shop's folder")
	other := f.String("against", "", "a published handbook: tell what would change in it")
	if status, ok := c.parse(f, args); !ok {
		return status
	}
	against := valuesIn(*other)
	if *other != "" && len(against) == 0 {
		fmt.Fprintf(c.errs, "laydown proof: -against %s: there is no handbook in it: name the folder that publish wrote\n", *other)
		return misuse
	}
	_, t, files, status := c.make("proof", *dir)
	if status != done {
		return status
	}
	c.doubts(t)
	fmt.Fprintf(c.out, "no problems: %d files would be published\n", len(files))
	if *other == "" {
		return done
	}
	if err := c.tellChanges(against, files); err != nil {
		fmt.Fprintf(c.errs, "laydown proof: -against %s: %v\n", *other, err)
		return problems
	}
	return done
}

// make reads and computes the whole handbook; it reports what stops it.
func (c command) make(name, dir string) (source, *tables.Tables, []book.File, int) {
	src, err := open(dir)
	if err != nil {
		return src, nil, nil, c.wrong(name, err)
	}
	ended := c.progress().step("reading the shop's data")
	t, found, err := src.tables()
	ended()
	if status := c.stopped(name, found, err); status != done {
		return src, nil, nil, status
	}
	ended = c.progress().step("computing published values")
	proved, err := tables.Verification()
	ended()
	if err != nil {
		fmt.Fprintf(c.errs, "laydown %s: %v\n", name, err)
		return src, nil, nil, problems
	}
	if unmet := tables.Unmet(proved); len(unmet) > 0 {
		for _, line := range unmet {
			fmt.Fprintln(c.errs, line)
		}
		return src, nil, nil, problems
	}
	ended = c.progress().step("computing tables and setting pages")
	files, found := book.Build(t, src.content, src.templates)
	ended()
	if len(found) > 0 {
		return src, nil, nil, c.report(found)
	}
	return src, t, files, done
}

// tables loads a shop's tables; it reports what stops it.
func (c command) tables(name string, src source) (*tables.Tables, int) {
	t, found, err := src.tables()
	return t, c.stopped(name, found, err)
}

// stopped reports what stops a command, and how it then exits.
func (c command) stopped(name string, found shop.Problems, err error) int {
	switch {
	case len(found) > 0:
		return c.report(found)
	case err != nil:
		fmt.Fprintf(c.errs, "laydown %s: %v\n", name, err)
		return problems
	}
	return done
}

func (c command) report(found shop.Problems) int {
	for _, p := range found {
		fmt.Fprintln(c.errs, p)
	}
	return problems
}

// doubts prints where the makers' figures and the physics disagree.
func (c command) doubts(t *tables.Tables) {
	for _, w := range t.Warnings() {
		fmt.Fprintf(c.errs, "doubt: %s\n", w.Text)
	}
}
