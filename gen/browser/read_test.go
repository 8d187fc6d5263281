package browser

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"regexp"
	"slices"
	"strings"
)

// ref is one address or id reference in a page.
type ref struct {
	element, attribute, value string
}

func (r ref) String() string { return fmt.Sprintf("%s %s=%q", r.element, r.attribute, r.value) }

// page is what the file checks need to know of one page.
type page struct {
	path    string
	ids     map[string]bool
	links   []ref // addresses: href, src and the like
	idrefs  []ref // ids of the same page: for, aria-labelledby, url(#…) and the like
	rel     []ref // what a link element's address is for
	faults  []string
	title   string
	text    string // all text that a reader sees
	lang    string
	policy  string
	charset bool
	view    bool
}

func (p *page) fault(format string, args ...any) {
	p.faults = append(p.faults, p.path+": "+fmt.Sprintf(format, args...))
}

// addresses are the attributes that hold an address.
var addresses = []string{"href", "src", "action", "formaction", "poster", "data", "cite", "manifest", "ping", "background"}

// idAttributes are the attributes that hold ids of the same page, separated by spaces.
var idAttributes = []string{
	"for", "form", "headers", "list", "popovertarget", "commandfor",
	"aria-labelledby", "aria-describedby", "aria-controls", "aria-owns", "aria-details",
	"aria-activedescendant", "aria-errormessage", "aria-flowto",
}

var idInURL = regexp.MustCompile(`url\(\s*['"]?#([^)'"]+)`)

// readPage takes a page apart. It reads the tokens only: our templates write
// every attribute in quotes and escape every text, and what cannot be read this
// way is a fault.
func readPage(tree fs.FS, path string) *page {
	p := &page{path: path, ids: map[string]bool{}}
	data, err := fs.ReadFile(tree, path)
	if err != nil {
		p.fault("%v", err)
		return p
	}
	if !strings.HasPrefix(strings.ToLower(string(data)), "<!doctype html>") {
		p.fault("does not start with <!doctype html>")
	}
	d := xml.NewDecoder(bytes.NewReader(data))
	d.Strict = false
	d.Entity = xml.HTMLEntity
	var inside string // the script, style or title that the text belongs to
	var text strings.Builder
	for {
		tok, err := d.RawToken()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			p.fault("cannot be read: %v", err)
			break
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			name := strings.ToLower(tok.Name.Local)
			p.element(name, tok.Attr)
			switch name {
			case "title":
				if p.title == "" {
					inside = name
				}
			case "script", "style":
				inside = name
			}
		case xml.EndElement:
			if strings.ToLower(tok.Name.Local) == inside {
				inside = ""
			}
			text.WriteByte(' ')
		case xml.CharData:
			switch inside {
			case "title":
				p.title += string(tok)
			case "script", "style":
			default:
				text.Write(tok)
			}
		}
	}
	p.text = strings.Join(strings.Fields(text.String()), " ")
	p.whole()
	return p
}

// element judges one start tag.
func (p *page) element(name string, attrs []xml.Attr) {
	get := func(want string) (string, bool) {
		for _, a := range attrs {
			if attrName(a) == want {
				return a.Value, true
			}
		}
		return "", false
	}
	switch name {
	case "html":
		p.lang, _ = get("lang")
	case "meta":
		p.meta(get)
	case "style":
		p.fault("an inline style element")
	case "base":
		p.fault("a base element: every address would change its meaning")
	case "iframe", "object", "embed", "frame", "portal":
		p.fault("a %s element", name)
	case "script":
		kind, _ := get("type")
		if src, ok := get("src"); ok {
			if kind == "module" {
				p.fault("script %s is a module: browsers do not load modules from files", src)
			}
			if _, ok := get("defer"); !ok {
				p.fault("script %s holds the page up until it is read: give it defer", src)
			}
			for _, bad := range []string{"integrity", "crossorigin"} {
				if _, ok := get(bad); ok {
					p.fault("script %s has %s: browsers then do not load it from files", src, bad)
				}
			}
		} else if kind != "application/json" {
			p.fault("an inline script")
		}
	case "a":
		if target, _ := get("target"); target == "_blank" {
			p.fault("a link opens a new window")
		}
	}
	if (name == "script" || name == "link") && p.policy == "" {
		p.fault("a %s stands before the content security policy", name)
	}
	for _, a := range attrs {
		p.attribute(name, attrName(a), a.Value)
	}
	if name == "link" {
		rel, _ := get("rel")
		p.rel = append(p.rel, ref{name, "rel", rel})
		if slices.ContainsFunc(strings.Fields(rel), func(r string) bool {
			return slices.Contains([]string{"preconnect", "dns-prefetch", "prefetch", "prerender", "modulepreload"}, r)
		}) {
			p.fault("link rel=%q asks for something ahead of time", rel)
		}
	}
}

func attrName(a xml.Attr) string {
	if a.Name.Space != "" && a.Name.Space != "xlink" {
		return strings.ToLower(a.Name.Space + ":" + a.Name.Local)
	}
	return strings.ToLower(a.Name.Local)
}

// meta keeps what a page must declare.
func (p *page) meta(get func(string) (string, bool)) {
	if set, ok := get("charset"); ok {
		p.charset = strings.EqualFold(set, "utf-8")
	}
	content, _ := get("content")
	if name, _ := get("name"); name == "viewport" {
		p.view = true
		for _, bad := range []string{"user-scalable=no", "user-scalable=0", "maximum-scale"} {
			if strings.Contains(strings.ReplaceAll(content, " ", ""), bad) {
				p.fault("the viewport forbids zooming: %s", content)
			}
		}
	}
	switch equiv, _ := get("http-equiv"); strings.ToLower(equiv) {
	case "":
	case "content-security-policy":
		p.policy = content
	case "refresh":
		p.fault("a page that reloads or leads elsewhere by itself")
	}
}

// attribute judges one attribute.
func (p *page) attribute(element, name, value string) {
	r := ref{element, name, value}
	switch {
	case name == "id":
		if value == "" || strings.ContainsAny(value, " \t\n") {
			p.fault("the id %q is empty or has a space", value)
		}
		if p.ids[value] {
			p.fault("the id %q stands twice", value)
		}
		p.ids[value] = true
	case name == "style":
		p.fault("an inline style: %s", r)
	case strings.HasPrefix(name, "on"):
		p.fault("an inline event handler: %s", r)
	case name == "srcset" || name == "imagesrcset":
		for _, part := range strings.Split(value, ",") {
			if f := strings.Fields(part); len(f) > 0 {
				p.links = append(p.links, ref{element, name, f[0]})
			}
		}
	case slices.Contains(addresses, name) && !(name == "data" && element != "object"):
		p.links = append(p.links, r)
	case slices.Contains(idAttributes, name):
		for _, id := range strings.Fields(value) {
			p.idrefs = append(p.idrefs, ref{element, name, id})
		}
	case name == "tabindex" && value != "0" && value != "-1":
		p.fault("%s changes the order of the keyboard", r)
	}
	for _, m := range idInURL.FindAllStringSubmatch(value, -1) {
		p.idrefs = append(p.idrefs, ref{element, name, m[1]})
	}
}

// whole judges what a page as a whole must have.
func (p *page) whole() {
	if p.lang == "" {
		p.fault("the html element has no lang")
	}
	if strings.TrimSpace(p.title) == "" {
		p.fault("no title")
	}
	if !p.charset {
		p.fault("no meta charset=utf-8")
	}
	if !p.view {
		p.fault("no meta viewport")
	}
	for _, f := range policyFaults(p.policy) {
		p.fault("%s", f)
	}
}

// policyFaults judges a content security policy: nothing by default, files of
// ours only, nothing inline, nothing evaluated, no network.
func policyFaults(policy string) []string {
	if policy == "" {
		return []string{"no content security policy"}
	}
	var faults []string
	has := map[string][]string{}
	for _, directive := range strings.Split(policy, ";") {
		f := strings.Fields(directive)
		if len(f) == 0 {
			continue
		}
		has[f[0]] = f[1:]
		for _, source := range f[1:] {
			switch source {
			case "'none'", "'self'":
			case "data:":
				if f[0] != "img-src" {
					faults = append(faults, fmt.Sprintf("the content security policy allows %s for %s", source, f[0]))
				}
			default:
				faults = append(faults, fmt.Sprintf("the content security policy allows %s for %s", source, f[0]))
			}
		}
	}
	for _, directive := range []string{"default-src", "base-uri", "form-action"} {
		// A form may lead to a page of the handbook: the search does.
		own := directive == "form-action" && slices.Equal(has[directive], []string{"'self'"})
		if !own && !slices.Equal(has[directive], []string{"'none'"}) {
			faults = append(faults, fmt.Sprintf("the content security policy has no %s 'none'", directive))
		}
	}
	if slices.Contains(has["connect-src"], "'self'") {
		faults = append(faults, "the content security policy allows connections")
	}
	return faults
}
