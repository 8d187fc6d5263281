package book

import (
	"fmt"
	"testing"
)

// TestShelved: every letter stands whole on one page, in order, no page holds more
// than it takes unless a single letter does, and each is found from all pages.
func TestShelved(t *testing.T) {
	var list []letterOf[int]
	total := 0
	for i, n := range []int{3, 5, 2, 9, 1, 1, 4} {
		list = append(list, letterOf[int]{Letter: string(rune('A' + i)), Items: make([]int, n)})
		total += n
	}
	for most, want := range map[int][]string{
		100: {"list.html"},
		8:   {"list.html", "list-c.html", "list-d.html", "list-e.html"}, // A and B; C; D alone is too many; E to G
	} {
		shelves := shelved("list", "List", list, most)
		var paths []string
		held, next := 0, 0
		for _, s := range shelves {
			paths = append(paths, s.Path)
			items := 0
			for _, l := range s.Letters {
				if l.Letter != list[next].Letter {
					t.Errorf("most %d: %s after %d letters", most, l.Letter, next)
				}
				if got, want := s.All[next], (letterPlace{l.Letter, "/" + s.Path + "#letter-" + slug(l.Letter)}); got != want {
					t.Errorf("most %d: %s is said to stand at %v, want %v", most, l.Letter, got, want)
				}
				items += len(l.Items)
				next++
			}
			if items > most && len(s.Letters) > 1 {
				t.Errorf("most %d: %s holds %d", most, s.Path, items)
			}
			held += items
			if named := s.Title != "List"; named != (len(shelves) > 1) {
				t.Errorf("most %d: a page is called %q", most, s.Title)
			}
		}
		if fmt.Sprint(paths) != fmt.Sprint(want) || held != total {
			t.Errorf("most %d: pages %v with %d items, want %v with %d", most, paths, held, want, total)
		}
	}
}
