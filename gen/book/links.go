package book

import (
	"fmt"
	"net/url"
	"path"
	"strings"

	"laydown/gen/shop"
)

// link checks where a link of a chapter leads and gives its destination: from
// the root for places in the handbook, as it stands for the web.
func (r *reader) link(dest string, here shop.Pos) string {
	u, err := url.Parse(dest)
	switch {
	case err != nil:
		r.problems.add(here, fmt.Sprintf("the link %q cannot be read", dest))
		return "#"
	case u.Scheme == "http" || u.Scheme == "https" || u.Scheme == "mailto":
		return dest
	case u.Scheme != "":
		r.problems.add(here, fmt.Sprintf("a %s: link is not allowed: link to a page of the handbook, or to http, https or mailto", u.Scheme))
		return "#"
	case u.Host != "" || strings.HasPrefix(u.Path, "/") || u.RawQuery != "" && u.Path == "":
		r.problems.add(here, fmt.Sprintf("the link %q must be relative: drying.md, or ../tables/waits.html", dest))
		return "#"
	}
	target := r.page
	if u.Path != "" {
		target = path.Join(path.Dir(r.page), u.Path)
		if strings.HasSuffix(u.Path, ".md") {
			page, ok := r.slugs[chapterSlug(path.Base(u.Path))]
			if !ok {
				r.problems.add(here, fmt.Sprintf("the link %q: there is no such chapter", dest))
				return "#"
			}
			target = page
		}
	}
	full := "/" + target
	if u.RawQuery != "" {
		full += "?" + u.RawQuery
	}
	if u.Fragment != "" {
		full += "#" + u.EscapedFragment()
	}
	r.links = append(r.links, link{here, full, dest})
	return full
}

// chapterSlug is the name of a chapter's page: its file's name without the
// number in front and the ending.
func chapterSlug(file string) string {
	name := strings.TrimSuffix(file, ".md")
	return strings.TrimLeft(name, "0123456789-_ ")
}
