package book

import (
	"html/template"
)

// File is one finished file of the handbook; Path is relative to its folder,
// with forward slashes.
type File struct {
	Path string
	Data []byte
}

// page is one page before it is set.
type page struct {
	Path    string // chapters/drying.html
	Kind    string // names its template
	Title   string
	Lead    string // the line under the title
	Tab     string // of the thumb index; empty for none
	Scripts []string
	Styles  []string // beside the book's own
	Data    any
	Bare    bool // sets itself, without the layout: a wall chart

	Cautions []string // ids of those that what it shows calls for, whatever its words

	Found  string   // what a hit of the search says it is: ink, chapter …; empty keeps it out
	Also   []string // other names
	Weight float64
	Aside  bool // its headings come behind those of other pages

	main template.HTML
}

// tab is one tab of the thumb index.
type tab struct {
	Name, Href string
	Here       bool
}

// thumbs are the tabs in their order.
var thumbs = []tab{
	{Name: "Plan", Href: "/plan.html"},
	{Name: "Faults", Href: "/faults/index.html"},
	{Name: "Materials", Href: "/materials/index.html"},
	{Name: "Tables", Href: "/tables/index.html"},
	{Name: "Learn", Href: "/chapters/index.html"},
	{Name: "Charts", Href: "/charts/index.html"},
	{Name: "A–Z", Href: "/glossary.html"},
}

func thumbsAt(name string) []tab {
	list := make([]tab, len(thumbs))
	for i, t := range thumbs {
		t.Here = t.Name == name
		list[i] = t
	}
	return list
}

// view is what a page's template sees.
type view struct {
	*page
	Shop     string // the shop's name
	Invented bool   // the data is a demonstration's
	Revised  string // 20 Nov
	Full     string // 20 November 2026
	Stamp    string // of this edition
	Tabs     []tab
	Main     template.HTML
}
