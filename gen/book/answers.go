package book

import (
	"cmp"
	"io"
	"slices"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// answers is what the pages ask of the computed tables. *tables.Tables is one;
// tests have a small one of their own.
type answers interface {
	Shop() *shop.Shop
	Warnings() []tables.Warning
	Waits() ([]tables.WaitValue, error)
	StoragesFor(*shop.Medium) []*shop.Storage
	Curve(tables.WaitCase, quantity.Time) (tables.Curve, error)
	HistoryCurve(tables.WaitCase, string, quantity.Time) (tables.Curve, error)
	ParseHistory(string) (tables.History, error)
	Pair(ink, medium, film, coverage string) tables.PairAnswer
	DemoPrints() ([]tables.DemoPrint, error)
	PlanShards() (map[string][]byte, error)
	Windows() ([]tables.WindowValue, error)
	MoistureIn(*shop.Room) ([]tables.SheetMoisture, error)
	WindowAt(tables.WindowCase) (tables.WindowValue, error)
	WindowsBySpeed(c tables.WindowCase, steps int) ([]tables.WindowValue, error)
	WindowsByHumidity(c tables.WindowCase, steps int) ([]tables.WindowValue, error)
	HumiditiesAt(tables.WindowCase, []quantity.Temperature) ([]tables.HumidityValue, error)
	BondLine(tables.WindowCase, quantity.Temperature) (tables.BondCurve, error)
	Profile(tables.WindowCase, quantity.Temperature) (tables.StackProfile, error)
	WriteWindowColumns(io.Writer, []tables.WindowValue) error
	WindowWorking(tables.WindowValue) (tables.Working, error)
	WindowSpread(tables.WindowCase) ([]tables.Move, error)
	Humidities() ([]tables.HumidityValue, error)
	WindowPrints() ([]tables.WindowPrint, error)
	Vapours() ([]tables.VapourValue, error)
	Rolls() (tables.RollTable, error)
	Cuts() ([]tables.CutValue, error)
	WaitSpread(tables.WaitCase) ([]tables.WaitMove, error)
	FaultKeys() ([]tables.FaultKey, error)
	ClaimPrints() ([]tables.ClaimPrint, error)
	Coolings() ([]tables.CoolingValue, error)
	CoolingWorking(tables.CoolingValue) (tables.Working, error)
	CoolingCurve(c tables.LaminateCase, way string) (tables.CoolingCurve, error)
	Curls() ([]tables.CurlValue, error)
	CurlWorking(tables.CurlValue) (tables.Working, error)
	Grains() ([]tables.GrainValue, error)
	Bond(tables.BondCase) (tables.BondValue, error)
	Bonds() ([]tables.BondValue, error)
	BondWorking(tables.BondValue) (tables.Working, error)
	Start(film, laminator string) (tables.StartSettings, bool)
	Afters() ([]tables.AfterValue, error)
	After(tables.AfterCase) (tables.AfterValue, error)
	AfterCurve(tables.AfterCase, quantity.Time) (tables.Curve, error)
	UsualAfter(*shop.Ink, *shop.Medium) tables.AfterCase
	FilmsOn(ink *shop.Ink, medium *shop.Medium, coverage string) []*shop.Film
	stackAnswers
}

// waits is the whole table of waits with a way to find one.
type waits struct {
	all  []tables.WaitValue
	find map[tables.WaitCase]int
}

func newWaits(all []tables.WaitValue) *waits {
	w := &waits{all: all, find: make(map[tables.WaitCase]int, len(all))}
	for i, v := range all {
		w.find[v.WaitCase] = i
	}
	return w
}

// get finds the wait of a case; false where the table has none.
func (w *waits) get(c tables.WaitCase) (tables.WaitValue, bool) {
	i, ok := w.find[c]
	if !ok {
		return tables.WaitValue{}, false
	}
	return w.all[i], true
}

// printPath is where an ink's waits on a medium stand, with their workings.
func printPath(ink, medium string) string { return "tables/waits/" + ink + "." + medium + ".html" }

// workingHref is where the working of a wait stands.
func workingHref(c tables.WaitCase) string {
	return "/" + printPath(c.Ink, c.Medium) + "#" + workingID(c)
}

// workingID is the id of a wait's working on its page.
func workingID(c tables.WaitCase) string {
	return strings.Join([]string{c.Coverage, c.Storage, c.Room}, ".")
}

// short is a name up to its first comma: "Hung up" for "Hung up, air on both sides".
func short(name string) string {
	before, _, _ := strings.Cut(name, ",")
	return before
}

// lowerFirst writes a name as it stands inside a sentence: "eco-solvent". A
// name that begins with an abbreviation such as UV keeps its capitals.
func lowerFirst(name string) string {
	if len(name) > 1 && name[0] >= 'A' && name[0] <= 'Z' && !(name[1] >= 'A' && name[1] <= 'Z') {
		name = strings.ToLower(name[:1]) + name[1:]
	}
	return unbroken(name)
}

// unbroken keeps a number and its unit on one line.
var unbroken = strings.NewReplacer(" g/m²", "\u00a0g/m²", " µm", "\u00a0µm").Replace

// upperFirst writes a name as it stands at the head of a page or a line.
func upperFirst(name string) string {
	if name != "" && name[0] >= 'a' && name[0] <= 'z' {
		name = strings.ToUpper(name[:1]) + name[1:]
	}
	return unbroken(name)
}

// usual is the case that stands for an ink on a medium where nothing else is
// said: normal coverage, kept in the shop's usual way, in its usual room.
func (b *builder) usual(ink *shop.Ink, medium *shop.Medium) tables.WaitCase {
	return tables.WaitCase{Ink: ink.ID, Medium: medium.ID, Coverage: "normal", Storage: b.usualStorage(medium), Room: b.shop.Front.Room.ID}
}

// usualStorage is how a medium waits unless something else is said: the shop's
// usual way, or the first that suits the medium.
func (b *builder) usualStorage(medium *shop.Medium) string {
	usual := b.shop.Front.Storage.ID
	list := b.answers.StoragesFor(medium)
	if len(list) == 0 || slices.ContainsFunc(list, func(s *shop.Storage) bool { return s.ID == usual }) {
		return usual
	}
	return list[0].ID
}

// mediaOf are the media that an ink prints on, its maker's reference first.
func (b *builder) mediaOf(ink *shop.Ink) []*shop.Medium {
	var list []*shop.Medium
	for _, m := range b.shop.Media {
		if b.shop.PrintsOn(ink, m) {
			if m.ID == ink.Makers.Medium.ID {
				list = append([]*shop.Medium{m}, list...)
			} else {
				list = append(list, m)
			}
		}
	}
	return list
}

// inksOf are the inks that print on a medium.
func (b *builder) inksOf(medium *shop.Medium) []*shop.Ink {
	var list []*shop.Ink
	for _, ink := range b.shop.Inks {
		if b.shop.PrintsOn(ink, medium) {
			list = append(list, ink)
		}
	}
	return list
}

func byName[T any](name func(T) string) func(a, b T) int {
	return func(a, b T) int { return cmp.Compare(strings.ToLower(name(a)), strings.ToLower(name(b))) }
}
