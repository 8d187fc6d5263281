package book

import (
	"fmt"
	"net/url"
	"path"
	"strings"

	"laydown/gen/shop"
)

// checkLinks looks through every finished page: ids used twice, script or
// style inside the page, links that lead nowhere. A link of a chapter that
// leads nowhere is reported where its author wrote it.
func (b *builder) checkLinks(views []view) {
	ids := map[string]map[string]bool{} // page → ids
	known := map[string]bool{}
	for _, f := range b.files {
		known[f.Path] = true
	}
	type use struct {
		page string
		pos  shop.Pos
		dest string
	}
	var uses []use
	reportedBefore := b.faultyChapters()
	for _, f := range b.files {
		if path.Ext(f.Path) != ".html" {
			continue
		}
		text := string(f.Data)
		ix := newLineIndex(f.Path, f.Data)
		here := map[string]bool{}
		ids[f.Path] = here
		scan(text, func(t tag) {
			if t.Close {
				return
			}
			faults := faultsOf(t, here)
			if reportedBefore[f.Path] {
				return
			}
			for _, fault := range faults {
				b.problems.add(ix.pos(t.At), fault)
			}
			for _, name := range []string{"href", "src", "action"} {
				if dest := t.get(name); dest != "" {
					uses = append(uses, use{f.Path, shop.Pos{Line: t.At}, dest})
				}
			}
		})
	}
	reported := b.checkChapterLinks(ids, known)
	index := map[string]*lineIndex{}
	for _, u := range uses {
		target, fragment, local := resolve(u.page, u.dest)
		if !local {
			continue
		}
		fault := leads(target, fragment, ids, known)
		if fault == "" || reported[u.page+"\x00/"+target+hash(fragment)] {
			continue
		}
		if u.page == trainingPath && len(reported) > 0 {
			continue // it repeats what the chapters say
		}
		if index[u.page] == nil {
			for _, f := range b.files {
				if f.Path == u.page {
					index[u.page] = newLineIndex(f.Path, f.Data)
				}
			}
		}
		b.problems.add(index[u.page].pos(u.pos.Line), fmt.Sprintf("the link %q: %s", u.dest, fault))
	}
}

// faultyChapters are the pages of chapters that were already reported, where
// their author wrote what is wrong, and with them the book that repeats them.
func (b *builder) faultyChapters() map[string]bool {
	pages := map[string]bool{}
	for _, c := range b.chapters {
		for _, p := range b.problems.list {
			if p.File == c.File {
				pages[c.Page], pages[trainingPath] = true, true
			}
		}
	}
	return pages
}

// faultsOf says what is wrong with a tag by itself, and notes its id.
func faultsOf(t tag, ids map[string]bool) []string {
	var faults []string
	if id := t.get("id"); id != "" {
		if ids[id] {
			faults = append(faults, fmt.Sprintf("the id %q is used twice", id))
		}
		ids[id] = true
	}
	if t.has("style") {
		faults = append(faults, "a style attribute: the page's policy forbids it")
	}
	if t.Name == "style" || t.Name == "script" && t.get("src") == "" {
		faults = append(faults, "script or style inside the page: the page's policy forbids it")
	}
	for _, a := range t.Attrs {
		if strings.HasPrefix(a.Name, "on") {
			faults = append(faults, fmt.Sprintf("the attribute %s: the page's policy forbids it", a.Name))
		}
	}
	return faults
}

// checkChapterLinks reports dead links where chapters' authors wrote them, and
// says which it reported.
func (b *builder) checkChapterLinks(ids map[string]map[string]bool, known map[string]bool) map[string]bool {
	reported := map[string]bool{}
	for _, c := range b.chapters {
		for _, l := range c.links {
			target, fragment, _ := resolve("index.html", strings.TrimPrefix(l.Dest, "/"))
			if fault := leads(target, fragment, ids, known); fault != "" {
				b.problems.add(l.Pos, fmt.Sprintf("the link %q: %s", l.Text, fault))
				reported[c.Page+"\x00/"+target+hash(fragment)] = true
			}
		}
	}
	return reported
}

func hash(fragment string) string {
	if fragment == "" {
		return ""
	}
	return "#" + fragment
}

// resolve gives the page and the id that a link of a page leads to; false for
// the web and for data.
func resolve(from, dest string) (target, fragment string, local bool) {
	u, err := url.Parse(dest)
	if err != nil || u.Scheme != "" || u.Host != "" {
		return "", "", false
	}
	target = from
	if u.Path != "" {
		target = path.Join(path.Dir(from), u.Path)
	}
	return target, u.Fragment, true
}

// leads says why a place is not there; "" where it is.
func leads(target, fragment string, ids map[string]map[string]bool, known map[string]bool) string {
	switch {
	case !known[target]:
		return "there is no such page"
	case fragment != "" && ids[target] != nil && !ids[target][fragment]:
		return fmt.Sprintf("the page has no place called %q", fragment)
	}
	return ""
}
