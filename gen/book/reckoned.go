package book

import "html/template"

// reckonedPage is a page of arithmetic: tables, and the workings of their numbers on the
// same page.
type reckonedPage struct {
	Caution   template.HTML
	Said      []string
	CSV, JSON string
	Back      *way
	Parts     []reckonedPart
}

type reckonedPart struct {
	ID, Name, Lead string
	Grids          []grid
	Lists          []list
	Folds          []workingFold
}
