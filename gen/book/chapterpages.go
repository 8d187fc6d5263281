package book

// chapterPage is one chapter as its page shows it.
type chapterPage struct {
	*chapter
	Next     *chapter
	Previous *chapter
}

// learnPage is the list of chapters, and of the forms that belong to learning.
type learnPage struct {
	Chapters []*chapter
	Forms    []formLink
}

// chapterPages adds the chapters and the list of them.
func (b *builder) chapterPages() {
	for i, c := range b.chapters {
		d := chapterPage{chapter: c}
		if i > 0 {
			d.Previous = b.chapters[i-1]
		}
		if i+1 < len(b.chapters) {
			d.Next = b.chapters[i+1]
		}
		b.add(page{Path: c.Page, Kind: "chapter", Title: c.Title, Lead: c.Summary, Tab: b.thumb(c), Data: d, Found: "chapter", Aside: c.Reference})
	}
	b.add(page{Path: "chapters/index.html", Kind: "chapters", Title: "Learn", Lead: "Read in order once. Each chapter ends with questions.", Tab: "Learn", Data: learnPage{b.chapters, b.learnForms()}, Found: "list", Also: []string{"training"}})
}

// thumb is the tab that a chapter stands under: its own word where that is a
// tab, else Learn.
func (b *builder) thumb(c *chapter) string {
	for _, t := range thumbs {
		if t.Name == c.Thumb {
			return t.Name
		}
	}
	return "Learn"
}
