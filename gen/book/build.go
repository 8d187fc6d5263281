package book

import (
	"fmt"
	"io/fs"
	"runtime"
	"sort"
	"sync"

	"laydown/gen/shop"
	"laydown/gen/tables"
)

// Build makes every file of the handbook, sorted by path. What is wrong with
// the chapters, the words or the templates comes back as problems; the files
// then are not to be published.
func Build(t *tables.Tables, content, templates fs.FS) ([]File, shop.Problems) {
	return build(t, content, templates)
}

// builder carries what all pages are made from.
type builder struct {
	answers  answers
	press    *pressRoom
	shop     *shop.Shop
	waits    *waits
	windows  *windows
	vapours  []tables.VapourValue
	rolls    tables.RollTable
	afters   *afters
	stacks   *stacks
	content  fs.FS
	chapters []*chapter
	problems *problems
	pages    []*page
	files    []File
}

func build(a answers, content, templates fs.FS) ([]File, shop.Problems) {
	b := &builder{answers: a, shop: a.Shop(), content: content, problems: &problems{}}
	all, err := a.Waits()
	if err != nil {
		b.fault("tables/waits.html", err)
		return nil, b.problems.sorted()
	}
	b.waits = newWaits(all)
	heat, err := a.Windows()
	if err != nil {
		b.fault("tables/windows.html", err)
		return nil, b.problems.sorted()
	}
	b.windows = newWindows(heat, b.shop)
	if b.vapours, err = a.Vapours(); err != nil {
		b.fault("tables/vapour.html", err)
		return nil, b.problems.sorted()
	}
	if b.rolls, err = a.Rolls(); err != nil {
		b.fault("tables/rolls.html", err)
		return nil, b.problems.sorted()
	}
	under, err := a.Afters()
	if err != nil {
		b.fault("tables/after.html", err)
		return nil, b.problems.sorted()
	}
	b.afters = newAfters(under)
	if b.stacks, err = newStacks(a); err != nil {
		b.fault("tables/stacks.html", err)
		return nil, b.problems.sorted()
	}
	if b.press, err = newPressRoom(templates); err != nil {
		b.fault("templates", err)
		return nil, b.problems.sorted()
	}
	words := b.words()
	b.chapters = readChapters(content, b, b.problems)

	b.frontPages()
	b.materialPages()
	b.tablePages()
	b.heatPages()
	b.vapourPage()
	b.rollPages()
	b.cutPage()
	b.coolingPages()
	b.curlPages()
	b.bondPages()
	b.afterPages()
	b.stackPages()
	b.tableList()
	b.faultPages()
	b.chapterPages()
	b.trainingBook()
	b.chartPages()
	b.formPages()
	b.verificationPage()
	b.assets(templates)

	views := b.fill(b.pages)
	b.backMatter(words, views)
	views = append(views, b.fill(b.pages[len(views):])...)
	b.stampAll(views)
	b.index(views, words)
	b.setAll(views)
	b.checkLinks(views)
	sort.Slice(b.files, func(i, j int) bool { return b.files[i].Path < b.files[j].Path })
	return b.files, b.problems.sorted()
}

// fault reports an error of ours, at a page and not at a line.
func (b *builder) fault(where string, err error) {
	b.problems.add(shop.Pos{File: where, Line: 1, Col: 1}, err.Error())
}

func (b *builder) add(p page) { b.pages = append(b.pages, &p) }

func (b *builder) file(path string, data []byte) { b.files = append(b.files, File{path, data}) }

// fill fills the main block of pages, several at once.
func (b *builder) fill(pages []*page) []view {
	sort.SliceStable(pages, func(i, j int) bool { return pages[i].Path < pages[j].Path })
	front := b.shop.Front
	views := make([]view, len(pages))
	b.each(pages, func(i int) error {
		p := pages[i]
		v := view{page: p, Shop: front.Name, Invented: front.Invented, Tabs: thumbsAt(p.Tab),
			Revised: day(front.Revised, "2 Jan"), Full: day(front.Revised, "2 January 2006")}
		main, err := b.press.fill(v)
		main = b.withCautions(p, main)
		v.Main, p.main = main, main
		views[i] = v
		return err
	})
	return views
}

// stampAll stamps the edition with what its pages hold.
func (b *builder) stampAll(views []view) {
	parts := make([][]byte, 0, 2*len(views))
	for _, v := range views {
		parts = append(parts, []byte(v.Path+"\n"+v.Title+"\n"+v.Lead), []byte(v.Main))
	}
	edition := stamp(parts...)
	for i := range views {
		views[i].Stamp = edition
	}
}

// setAll sets the pages into the layout.
func (b *builder) setAll(views []view) {
	done := make([]File, len(views))
	b.each(b.pages, func(i int) error {
		data, err := b.press.set(views[i])
		done[i] = File{views[i].Path, data}
		return err
	})
	b.files = append(b.files, done...)
}

// each does a piece of work for every page, on all processors; errors are
// reported in the pages' order.
func (b *builder) each(pages []*page, work func(i int) error) {
	n := len(pages)
	errs := make([]error, n)
	var group sync.WaitGroup
	next := make(chan int)
	for range runtime.GOMAXPROCS(0) {
		group.Go(func() {
			for i := range next {
				errs[i] = work(i)
			}
		})
	}
	for i := range n {
		next <- i
	}
	close(next)
	group.Wait()
	for i, err := range errs {
		if err != nil {
			b.fault(pages[i].Path, fmt.Errorf("%w", err))
		}
	}
}
