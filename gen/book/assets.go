package book

import (
	"io/fs"
	"path"
	"strings"
)

// assets adds style sheets and scripts: those of the templates' folder, the
// colours of code, and the scripts that the plan answers from.
func (b *builder) assets(templates fs.FS) {
	code, err := codeCSS()
	if err != nil {
		b.fault("style/book.css", err)
	}
	entries, err := fs.ReadDir(templates, ".")
	if err != nil {
		b.fault("templates", err)
		return
	}
	for _, e := range entries {
		name := e.Name()
		if e.IsDir() || path.Ext(name) != ".css" && path.Ext(name) != ".js" {
			continue
		}
		data, err := fs.ReadFile(templates, name)
		if err != nil {
			b.fault("templates/"+name, err)
			continue
		}
		if path.Ext(name) == ".js" {
			b.file("script/"+name, data)
			continue
		}
		if name == "book.css" {
			data = append(data, code...)
		}
		b.file("style/"+name, data)
	}
	shards, err := b.answers.PlanShards()
	if err != nil {
		b.fault("script/plan-data.js", err)
	}
	for name, data := range shards {
		if !strings.Contains(name, "/") {
			name = "script/" + name
		}
		b.file(name, data)
	}
}
