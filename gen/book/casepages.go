package book

import (
	"html/template"

	"laydown/gen/shop"
)

// casesPage is a page of computed cases: tables, then the workings that their numbers
// lead to.
type casesPage struct {
	Said      string
	CSV, JSON string
	Back      *way
	Caution   template.HTML // what is said beside the usual cautions
	Rules     []string      // for whoever takes a number to the machine
	Drawing   template.HTML
	Grids     []grid
	Links     *list
	Folds     []workingFold
}

// way leads from a page to another.
type way struct{ Href, Text string }

// filmLink leads back to a film's page.
func filmLink(f *shop.Film) *way {
	return &way{"/materials/films/" + f.ID + ".html", "To the film’s page"}
}

// usualClimate names the usual room for the corner of a table.
func (b *builder) usualClimate() string {
	room := b.shop.Room(b.shop.Front.Room.ID)
	return lowerFirst(room.Name) + ", " + climate(room)
}
