package main

import (
	"bytes"
	"net/http"
	"path"
	"strings"
	"sync/atomic"
	"time"
)

// viewer answers requests with the pages of a handbook that is kept in memory.
type viewer struct {
	host  string // the address that it answers at
	pages atomic.Pointer[map[string][]byte]
}

func newViewer(host string, pages map[string][]byte) *viewer {
	v := &viewer{host: host}
	v.show(pages)
	return v
}

// show puts another handbook in place of the last. A request sees the whole of one.
func (v *viewer) show(pages map[string][]byte) { v.pages.Store(&pages) }

// types are the kinds of files in a handbook: what the system thinks of an ending
// does not matter.
var types = map[string]string{
	".html": "text/html; charset=utf-8", ".css": "text/css; charset=utf-8", ".js": "text/javascript; charset=utf-8",
	".json": "application/json", ".csv": "text/csv; charset=utf-8", ".svg": "image/svg+xml",
}

// ServeHTTP answers with a page. It answers only to its own address: a page elsewhere
// whose name leads to this machine learns nothing.
func (v *viewer) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	switch {
	case r.Host != v.host:
		http.Error(w, "this handbook is at http://"+v.host+"/", http.StatusForbidden)
		return
	case r.Method != http.MethodGet && r.Method != http.MethodHead:
		w.Header().Set("Allow", "GET, HEAD")
		http.Error(w, "a handbook is only read", http.StatusMethodNotAllowed)
		return
	}
	name := strings.TrimPrefix(r.URL.Path, "/")
	if name == "" || strings.HasSuffix(name, "/") {
		name += "index.html"
	}
	page, ok := (*v.pages.Load())[name]
	if !ok {
		http.Error(w, "no such page in this handbook", http.StatusNotFound)
		return
	}
	if kind, ok := types[path.Ext(name)]; ok {
		w.Header().Set("Content-Type", kind)
	}
	w.Header().Set("X-Content-Type-Options", "nosniff")
	w.Header().Set("Cache-Control", "no-store")
	http.ServeContent(w, r, "", time.Time{}, bytes.NewReader(page))
}
