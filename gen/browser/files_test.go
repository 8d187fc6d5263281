package browser

import (
	"fmt"
	"io/fs"
	"net/url"
	"os"
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// TestFiles reads every file of the handbook, without a browser: addresses,
// ids, policy, nothing inline, nothing left over from a template.
func TestFiles(t *testing.T) {
	for _, f := range checkTree(os.DirFS(handbook(t)), "index.html") {
		t.Error(f)
	}
}

// checkTree judges all pages and style sheets of a published tree. Every page
// must be reachable from the start page; start "" leaves that out.
func checkTree(tree fs.FS, start string) []string {
	pages := map[string]*page{}
	files := map[string]bool{}
	styles := map[string]string{}
	var faults []string
	err := fs.WalkDir(tree, ".", func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return err
		}
		files[name] = true
		switch path.Ext(name) {
		case ".html":
			pages[name] = readPage(tree, name)
		case ".css":
			faults = append(faults, checkStyle(tree, name)...)
			data, err := fs.ReadFile(tree, name)
			if err != nil {
				return err
			}
			styles[name] = styleNote.ReplaceAllString(string(data), "")
		case ".js", ".svg", ".csv", ".json":
			faults = append(faults, checkLeftovers(tree, name)...)
		}
		return nil
	})
	if err != nil {
		faults = append(faults, err.Error())
	}
	faults = append(faults, checkProperties(styles)...)
	reached := map[string]bool{}
	for _, p := range pages {
		for _, r := range p.idrefs {
			if !p.ids[r.value] {
				p.fault("%s: no such id in the page", r)
			}
		}
		for _, r := range p.links {
			p.checkLink(r, files, pages)
		}
		for _, m := range leftovers.FindAllString(p.text+" "+p.title, -1) {
			p.fault("a leftover of a template or a computation: %q", m)
		}
		faults = append(faults, p.faults...)
	}
	if start != "" {
		reach(start, pages, reached)
		for name := range pages {
			if !reached[name] {
				faults = append(faults, name+": no way leads here from "+start)
			}
		}
	}
	slices.Sort(faults)
	return slices.Compact(faults)
}

// checkLink follows one address.
func (p *page) checkLink(r ref, files map[string]bool, pages map[string]*page) {
	u, err := url.Parse(r.value)
	if err != nil {
		p.fault("%s: %v", r, err)
		return
	}
	switch {
	case u.Scheme == "data" && r.element == "img", u.Scheme == "data" && r.element == "link":
		return
	case (u.Scheme == "https" || u.Scheme == "http") && r.element == "a" && u.Host != "":
		return // a source's own address: followed only when somebody clicks
	case u.Scheme == "mailto" && r.element == "a":
		return
	case u.Scheme != "" || u.Host != "":
		p.fault("%s: leads outside", r)
		return
	case strings.HasPrefix(u.Path, "/"):
		p.fault("%s: is absolute and breaks when the folder moves", r)
		return
	case r.value == "" || r.value == "#":
		p.fault("%s: leads nowhere", r)
		return
	}
	target := p.path
	if u.Path != "" {
		target = path.Join(path.Dir(p.path), u.Path)
		if strings.HasSuffix(u.Path, "/") || u.Path == "." || u.Path == ".." {
			p.fault("%s: names a folder; from a disk that shows a list of files: name its index.html", r)
			return
		}
		if !files[target] {
			p.fault("%s: no such file", r)
			return
		}
	}
	if u.Fragment == "" {
		return
	}
	other := pages[target]
	if other == nil {
		if path.Ext(target) != ".svg" {
			p.fault("%s: a fragment of what is no page", r)
		}
		return
	}
	if !other.ids[u.Fragment] {
		p.fault("%s: no such id in %s", r, target)
	}
}

// reach follows the links between pages.
func reach(from string, pages map[string]*page, reached map[string]bool) {
	p := pages[from]
	if p == nil || reached[from] {
		return
	}
	reached[from] = true
	for _, r := range p.links {
		u, err := url.Parse(r.value)
		if (r.element == "a" || r.element == "form") && err == nil && u.Scheme == "" && u.Path != "" {
			reach(path.Join(path.Dir(from), u.Path), pages, reached)
		}
	}
}

// leftovers are what a broken template, format or computation leaves in a page.
// A percent sign followed by an exclamation mark is Go's mark of a wrong format.
var leftovers = regexp.MustCompile(`%![a-zA-Z(]\S*|\bNaN\b|[+-]Inf\b|\bInfinity\b|<nil>|\{\{|\}\}|ZgotmplZ|\[object Object\]|\(MISSING\)|file:///\S*|/(?:tmp|home|root|work|var|usr)/\w+`)

// checkLeftovers looks for the same in files that are not pages. Numbers that are
// no numbers have no place in data, and script text may hold braces.
func checkLeftovers(tree fs.FS, name string) []string {
	data, err := fs.ReadFile(tree, name)
	if err != nil {
		return []string{err.Error()}
	}
	var faults []string
	for _, m := range dataLeftovers.FindAllString(string(data), -1) {
		faults = append(faults, fmt.Sprintf("%s: a leftover of a template or a computation: %q", name, m))
	}
	return faults
}

var dataLeftovers = regexp.MustCompile(`%![a-zA-Z]\((?:[\w.*\[\]]+=|MISSING|BADINDEX)\S*|%!\(EXTRA |[:,]\s*(?:NaN|[+-]?Inf)\b|ZgotmplZ|file:///\S*`)

var (
	propertySet  = regexp.MustCompile(`(--[\w-]+)\s*:`)
	propertyUsed = regexp.MustCompile(`var\(\s*(--[\w-]+)\s*\)`)
)

// checkProperties looks for custom properties that no style sheet sets: what uses
// one falls back without a word, a colour to that of what is around it.
func checkProperties(styles map[string]string) []string {
	set := map[string]bool{}
	for _, text := range styles {
		for _, m := range propertySet.FindAllStringSubmatch(text, -1) {
			set[m[1]] = true
		}
	}
	var faults []string
	for name, text := range styles {
		for _, m := range propertyUsed.FindAllStringSubmatch(text, -1) {
			if !set[m[1]] {
				faults = append(faults, fmt.Sprintf("%s: var(%s): no style sheet sets it", name, m[1]))
			}
		}
	}
	return faults
}

var (
	styleURL    = regexp.MustCompile(`url\(\s*['"]?([^)'"]*)`)
	styleImport = regexp.MustCompile(`@import\b`)
	styleNote   = regexp.MustCompile(`(?s)/\*.*?\*/`)
)

// checkStyle judges the addresses in a style sheet.
func checkStyle(tree fs.FS, name string) []string {
	data, err := fs.ReadFile(tree, name)
	if err != nil {
		return []string{err.Error()}
	}
	text := styleNote.ReplaceAllString(string(data), "")
	var faults []string
	if styleImport.MatchString(text) {
		faults = append(faults, name+": @import")
	}
	for _, m := range styleURL.FindAllStringSubmatch(text, -1) {
		address := m[1]
		switch {
		case strings.HasPrefix(address, "#"), strings.HasPrefix(address, "data:image/"):
		case strings.Contains(address, ":") || strings.HasPrefix(address, "/"):
			faults = append(faults, fmt.Sprintf("%s: url(%s) leads outside", name, address))
		default:
			if _, err := fs.Stat(tree, path.Join(path.Dir(name), address)); err != nil {
				faults = append(faults, fmt.Sprintf("%s: url(%s): no such file", name, address))
			}
		}
	}
	return faults
}
