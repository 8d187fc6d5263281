package book

import (
	"encoding/xml"
	"fmt"
	"regexp"
	"strings"
	"sync"
	"testing"

	"laydown/data"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
	"laydown/templates"
)

// demoBook is a builder on the demonstration shop, as far as a computed block
// needs one. Its tables are computed once.
func demoBook(t *testing.T) *builder {
	t.Helper()
	made, err := loadDemo()
	if err != nil {
		t.Fatal(err)
	}
	b := *made
	b.problems = &problems{}
	return &b
}

var loadDemo = sync.OnceValues(func() (*builder, error) {
	s, problems := shop.Load(data.Files, nil)
	if err := problems.Err(); err != nil {
		return nil, err
	}
	a, err := tables.New(s)
	if err != nil {
		return nil, err
	}
	heat, err := a.Windows()
	if err != nil {
		return nil, err
	}
	press, err := newPressRoom(templates.Files)
	return &builder{answers: a, shop: s, windows: newWindows(heat, s), press: press}, err
})

// shown is what a computed block becomes on the demonstration shop, without problems.
func shown(t *testing.T, b *builder, lines ...string) string {
	t.Helper()
	out := string(b.compute(blockOf(lines)))
	for _, p := range b.problems.sorted() {
		t.Errorf("%v: %s", lines, p.Message)
	}
	return out
}

func blockOf(lines []string) computedBlock {
	block := computedBlock{ID: "it", Keys: map[string]string{}, At: map[string]shop.Pos{}}
	for i, line := range lines {
		key, value, _ := strings.Cut(line, ": ")
		block.Keys[key], block.At[key] = value, shop.Pos{Line: i + 1}
	}
	return block
}

var pet = []string{"film: thermal-pet-gloss-75", "medium: uncoated-150", "machine: encapsulator"}

func with(lines []string, more ...string) []string {
	return append(append([]string{}, lines...), more...)
}

// TestShowWindows: machines across without a machine, speeds with one, rooms
// with a speed too; each cell is the table's value, linked to its working, and
// one at another speed is computed.
func TestShowWindows(t *testing.T) {
	b := demoBook(t)
	p := hotPair{b.shop.Film("thermal-pet-gloss-75"), b.shop.Medium("uncoated-150"), b.shop.Laminator("encapsulator")}
	usual, _ := b.windows.get(b.here(p))
	first, _ := usual.Spans()
	out := shown(t, b, "show: windows", "film: thermal-pet-gloss-75", "medium: uncoated-150, card")
	for _, want := range []string{"Two-sided encapsulator", "Wide hot laminator", "Uncoated paper, 150", "Card, 300",
		fmt.Sprintf(`<a class="num" href="/tables/windows/thermal-pet-gloss-75.uncoated-150.encapsulator.html#1.finishing-room">%.0f–%.0f`, first.Low, first.High)} {
		if !strings.Contains(out, want) {
			t.Errorf("by machine: %q is not there:\n%s", want, out)
		}
	}
	if rows := strings.Count(out, `scope="row"`); rows != 2 {
		t.Errorf("%d rows for two media", rows)
	}
	speeds := shown(t, b, with(pet, "show: windows")...)
	for _, v := range tables.Speeds(p.machine) {
		if !strings.Contains(speeds, quantity.Metric(v)) {
			t.Errorf("by speed: no column for %s", quantity.Metric(v))
		}
	}
	rooms := shown(t, b, with(pet, "show: windows", "speed: 0.7 m/min")...)
	for _, r := range b.shop.Rooms {
		if !strings.Contains(rooms, r.Name) {
			t.Errorf("by room: no column for %s", r.Name)
		}
	}
	alone, err := b.answers.WindowAt(b.hotCase(p, 0.7*quantity.MetrePerMinute))
	if err != nil {
		t.Fatal(err)
	}
	first, _ = alone.Spans()
	if want := rangeText(first.Low, first.High); !strings.Contains(rooms, want) {
		t.Errorf("at 0.7 m/min: %s is not there", want)
	}
}

// TestShowHumidity: as the page of humidities has it, and settings of one's own.
func TestShowHumidity(t *testing.T) {
	b := demoBook(t)
	c := b.hotCase(hotPair{b.shop.Film("thermal-pet-gloss-75"), b.shop.Medium("uncoated-150"), b.shop.Laminator("encapsulator")}, 0)
	c.Speed = b.shop.Laminator("encapsulator").Usual.Best
	list, err := b.answers.HumiditiesAt(c, []quantity.Temperature{quantity.FromCelsius(118)})
	if err != nil {
		t.Fatal(err)
	}
	if !list[0].Runs || list[0].Free {
		t.Fatalf("118 °C says nothing of the humidity: %+v", list[0])
	}
	out := shown(t, b, with(pet, "show: humidity", "set: 118 °C, 70 °C")...)
	if want := fmt.Sprintf(">%.0f</span>", list[0].Humidity.Percent()); !strings.Contains(out, want) || !strings.Contains(out, ">118 <small>244</small>") {
		t.Errorf("%q is not there:\n%s", want, out)
	}
	if n := strings.Count(out, "<td"); n != 2 {
		t.Errorf("%d cells for two settings", n)
	}
	all := shown(t, b, "show: humidity", "film: thermal-pet-gloss-75", "machine: encapsulator")
	if rows, want := strings.Count(all, `scope="row"`), len(b.hotPairs(b.shop.Film("thermal-pet-gloss-75"), nil, b.shop.Laminator("encapsulator"))); rows != want {
		t.Errorf("%d rows, %d media run", rows, want)
	}
}

// TestShowDrawings: every drawing of heat is well formed, titled and described,
// and says the numbers that the tables have.
func TestShowDrawings(t *testing.T) {
	b := demoBook(t)
	p := hotPair{b.shop.Film("thermal-pet-gloss-75"), b.shop.Medium("uncoated-150"), b.shop.Laminator("encapsulator")}
	c := b.hotCase(p, p.machine.Usual.Best)
	set := quantity.FromCelsius(115)
	bond, err := b.answers.BondLine(c, set)
	if err != nil {
		t.Fatal(err)
	}
	profile, err := b.answers.Profile(c, set)
	if err != nil {
		t.Fatal(err)
	}
	bySpeed, err := b.answers.WindowsBySpeed(c, sweepSteps)
	if err != nil {
		t.Fatal(err)
	}
	slow, _ := bySpeed[0].Spans()
	for _, row := range []struct {
		kind  string
		more  []string
		wants []string
	}{
		{"bond-line", []string{"set: 115 °C"}, []string{"set to 115\u00a0°C", quantity.Both(bond.First[bond.NipEnd].Print), "nip 0.48\u00a0s", "wrap", "free run", "print, first piece", "print, steady run", "adhesive works from"}},
		{"bond-line", []string{"set: 115 °C", "speed: fastest"}, []string{pace(p.machine.Fastest.Best), "nip 0.16\u00a0s"}},
		{"stack-profile", []string{"set: 115 °C"}, []string{quantity.Both(profile.Parts[1].First[0]), "first piece", "steady run", "top of the print", "bottom of the lower film"}},
		{"window-speed", nil, []string{"steam", "adhesive", spanText(slow), pace(p.machine.Slowest.Best)}},
		{"window-humidity", []string{"speed: slowest"}, []string{"20\u00a0%", "65\u00a0%", "adhesive", pace(p.machine.Slowest.Best)}},
	} {
		out := shown(t, b, with(pet, with(row.more, "show: "+row.kind)...)...)
		for _, want := range row.wants {
			if !strings.Contains(out, want) {
				t.Errorf("%s: %q is not there", row.kind, want)
			}
		}
		svg := regexp.MustCompile(`(?s)<svg.*</svg>`).FindString(out)
		if err := xml.Unmarshal([]byte(svg), new(struct{})); err != nil {
			t.Errorf("%s: %v", row.kind, err)
		}
		if !strings.Contains(svg, `<title id="it-t">`) || !strings.Contains(svg, `<desc id="it-d">`) || strings.Contains(svg, "style=") || strings.Contains(svg, "NaN") {
			t.Errorf("%s: no title, no description, a style or a number that is none:\n%s", row.kind, svg)
		}
	}
}

// TestShowHeatProblems: what a block about heat has wrong is reported where it stands.
func TestShowHeatProblems(t *testing.T) {
	for _, row := range []struct {
		lines []string
		want  string
	}{
		{[]string{"show: windows"}, "0: this computed block needs film:"},
		{[]string{"show: windows", "film: thermal-pet-glos-75"}, `2: no film is called "thermal-pet-glos-75"; did you mean "thermal-pet-gloss-75"?`},
		{[]string{"show: windows", "film: cold-pp-matt"}, "2: cold-pp-matt is laid without heat"},
		{[]string{"show: windows", "film: thermal-pet-gloss-75", "medium: uncoated-150, uncoted-90"}, `3: no medium is called "uncoted-90"; did you mean "uncoated-90"?`},
		{[]string{"show: windows", "film: thermal-pet-gloss-75", "machine: sheet-fed"}, "3: thermal-pet-gloss-75 does not run in sheet-fed"},
		{[]string{"show: windows", "film: thermal-pet-gloss-75", "speed: 1 m/min"}, "3: speed: without a machine: it is slowest, usual or fastest"},
		{with(pet, "show: bond-line", "speed: 9 m/min"), "5: speed: encapsulator runs from 0.3\u00a0m/min to 3\u00a0m/min"},
		{with(pet, "show: bond-line", "speed: brisk"), "5: speed: slowest, usual, fastest or a speed: "},
		{with(pet, "show: bond-line", "set: 100 °C, 110 °C"), "5: a computed block that shows bond-line takes one set temperature"},
		{with(pet, "show: bond-line", "set: 110"), "5: set: "},
		{with(pet, "show: window-speed", "set: 110 °C"), "5: set: a computed block that shows window-speed does not take it"},
		{[]string{"show: window-speed", "film: thermal-pet-gloss-75", "medium: uncoated-150, card", "machine: encapsulator"}, "3: a computed block that shows window-speed takes one medium"},
		{[]string{"show: stack-profile", "film: thermal-pp-gloss-27", "medium: banner", "machine: sheet-fed"}, "3: thermal-pp-gloss-27 is not laid on banner in sheet-fed"},
		{[]string{"show: humidity", "film: thermal-pet-gloss-75"}, "0: this computed block needs machine:"},
	} {
		b := demoBook(t)
		b.compute(blockOf(row.lines))
		list := b.problems.sorted()
		if len(list) != 1 {
			t.Errorf("%v: problems %v, want %q", row.lines, list, row.want)
			continue
		}
		if got := fmt.Sprintf("%d: %s", list[0].Pos.Line, list[0].Message); !strings.HasPrefix(got, row.want) {
			t.Errorf("%v:\n got  %s\n want %s", row.lines, got, row.want)
		}
	}
}
