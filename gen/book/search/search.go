// Package search knows how people look things up in the handbook: half-typed,
// in slang, misspelt, with units glued to numbers. Build turns the pages'
// texts into an index; Script writes it as one classic script that works from
// file://, and Read reads it back; Ask answers a query in Go by the same rules
// as templates/search.js, and one file of cases (testdata/search-cases.json)
// holds the two together.
//
// An answer has up to four parts, in the order in which a page shows them:
// what to do first where somebody may be hurt (pins), the number that was
// asked for (boxes), the entries that have the words (hits), and what the
// words were read as.
//
// The tables that the rules need (letters folded, stop words, units, groups of
// words) travel inside the index, so the script has none of its own.
package search

// Book is what an index is made from.
type Book struct {
	Entries []Entry
	Words   Words
	Pins    []Pin
	Things  []Thing
	Facts   []Fact
	Charts  []Chart
	Stamps  string // the signs that stamps are made of
	Edition string // the stamp of the whole edition
}

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

// Pin is what stands before everything else where a query sounds as if
// somebody were in danger.
type Pin struct {
	Title string
	Say   string // what to do now, in a sentence or two
	URL   string
	Ask   []string // words and phrases that call for it wherever they stand
	Alone []string // words that call for it as the whole query
}

// Thing is something that a question can be about, under each of its names.
type Thing struct {
	Kind  string // ink, medium, film
	Name  string // as a sentence has it
	Names []string
}

// Fact answers a question about one thing or two: how long an ink waits on a
// medium, how hot a film runs on it. It was computed when the handbook was
// published.
type Fact struct {
	Ask   string // the key of asks: what is asked for
	About []int  // the things, one or two
	Box   Box    // its What is made from the things' names where it is empty
}

// Box is one direct answer: a number, large, with what it is.
type Box struct {
	What   string `json:"what"`
	Number string `json:"number"`
	Unit   string `json:"unit"`
	Under  string `json:"under"`
	URL    string `json:"url"`
}

// Chart is a wall chart with its stamp. Sheets that say the same on different
// papers have one stamp.
type Chart struct{ Stamp, Title, URL string }

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
	Pins    []int // numbers of the pins, as given to Build
	Boxes   []Box
	Hits    []Hit
	All     bool      // every hit has all of the query's words
	Read    []Reading // words read as others
	Missing []string  // words that no entry has, in any reading
	Closest []string  // known words near the missing ones, to offer
}

// First is where the answer leads: the first pin, the first hit, or "".
func (x *Index) First(a Answer) string {
	switch {
	case len(a.Pins) > 0:
		return x.pins[a.Pins[0]].URL
	case len(a.Hits) > 0:
		return a.Hits[0].URL
	}
	return ""
}

// shelf is a heading under which hits of some kinds are shown together.
type shelf struct {
	name  string
	kinds []string
}

// shelves are in the order that settles ties; a kind that none names stands
// under the last.
var shelves = []shelf{
	{"Faults", []string{"fault", "fault key"}},
	{"Tables", []string{"table"}},
	{"Materials", []string{"ink", "film", "medium", "laminator", "room", "storage"}},
	{"Chapters", []string{"chapter"}},
	{"Words", []string{"word"}},
	{"Wall charts", []string{"chart"}},
	{"Other pages", []string{"plan", "list"}},
}
