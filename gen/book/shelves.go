package book

import "strings"

// shelf is what stands on one page of a list that is parted by letters: the whole
// list, or as many letters as a page takes.
type shelf[T any] struct {
	Path    string
	Title   string // of the page: its letters are named where there is more than one
	Letters []letterOf[T]
	All     []letterPlace // every letter of the list, whatever page it is on
}

// letterPlace is where a letter stands.
type letterPlace struct{ Letter, Href string }

// shelved sets a list on pages of at most most items each, whole letters together.
// The first page has the list's own path, further ones their first letter in it.
func shelved[T any](name, title string, list []letterOf[T], most int) []shelf[T] {
	shelves := []shelf[T]{{Path: name + ".html", Title: title}}
	held := 0
	for _, l := range list {
		here := &shelves[len(shelves)-1]
		if held > 0 && held+len(l.Items) > most {
			shelves = append(shelves, shelf[T]{Path: name + "-" + strings.ToLower(l.Letter) + ".html", Title: title})
			here = &shelves[len(shelves)-1]
			held = 0
		}
		here.Letters = append(here.Letters, l)
		held += len(l.Items)
	}
	var all []letterPlace
	for _, s := range shelves {
		for _, l := range s.Letters {
			all = append(all, letterPlace{l.Letter, "/" + s.Path + "#letter-" + slug(l.Letter)})
		}
	}
	for i := range shelves {
		s := &shelves[i]
		s.All = all
		if len(shelves) > 1 {
			s.Title += ", " + s.Letters[0].Letter + " to " + s.Letters[len(s.Letters)-1].Letter
		}
	}
	return shelves
}
