// Package search knows how people look things up in the handbook: half-typed,
// in slang, misspelt, with units glued to numbers. Build turns the pages'
// texts into an index; Script writes it as one classic script that works from
// file://; Find answers a query in Go by the same rules as templates/search.js,
// and one file of cases (testdata/search-cases.json) holds the two together.
//
// The tables that the rules need (letters folded, stop words, units, groups of
// words) travel inside the index, so the script has none of its own.
package search

// Entry is one thing that can be found: a page, or one section of a page.
type Entry struct {
	URL     string   // address relative to the handbook's folder
	Title   string   // what the hit is called
	Section string   // where it stands: a chapter, a family
	Kind    string   // one plain word: fault, ink, table, chapter
	Text    string   // running text; white space is collapsed
	Also    []string // other names, which count nearly as much as the title
	Weight  float64  // 0 is taken as 1; 2 doubles every score of the entry
}

// Hit is one entry found.
type Hit struct {
	Entry int // number of the entry as given to Build
	URL   string
	Title string
	Score int
}

// Reading says that a typed word was read as another.
type Reading struct {
	Typed string   `json:"typed"`
	Read  string   `json:"read"`
	Or    []string `json:"or,omitempty"` // other words equally near
}

// Answer is everything a query brings back.
type Answer struct {
	Hits    []Hit
	All     bool      // every hit has all of the query's words
	Read    []Reading // words read as others
	Missing []string  // words that no entry has, in any reading
	Closest []string  // known words near the missing ones, to offer
}
