package shop

import (
	"fmt"
	"io/fs"
	"math"
	"strings"
	"testing"
	"testing/fstest"

	"laydown/gen/quantity"
)

// bubbles is a small family with nothing wrong with it, over the small shop.
const bubbles = `
sources:
  - {id: tally, kind: measured, title: Our own tally}
cautions:
  - {id: hot-roller, name: Hot roller, says: "It burns. Follow the maker's manual and local codes."}
checks:
  - id: loupe
    name: Loupe
    takes: 1 min
    do: Look into a bubble through a loupe.
    outcomes:
      - {id: speck, says: A speck lies in it., drawing: dirt-tent}
      - {id: empty, says: It is empty.}
    cautions: [hot-roller]
faults:
  - id: bubbles
    name: Bubbles
    looks: Round and raised.
    when: In the nip.
    where: All over.
    drawing: bubbles-pin
    help: 2 h
    source: guessed
    see: [drying#late-bubbles]
    tables: [waits]
    signs:
      - {id: round, name: Round bubbles, also: [pimples], looks: Round and clear.}
    causes:
      - {id: damp, name: A damp sheet, why: Its water boils., weight: 5, signs: [round], physics: moist-sheet}
      - {id: dust, name: Dust, why: It holds the film off., weight: 3, signs: [round], source: tally}
      - {id: air, name: Air, why: It is laid in., weight: 2, signs: [round]}
    checks:
      - use: loupe
        takes: 90 s
        found:
          dust: {speck: 66.4 %, empty: {value: 33.2 %, low: 20 %, high: 40 %, source: tally}}
          others: {empty: 100 %}
      - id: slow
        name: Slow down
        takes: 2 min
        do: Run a third slower.
        outcomes: [{id: gone, says: It is gone.}, {id: stays, says: It stays.}]
        found: {damp: {stays: 100 %}, air: {gone: 70 %, stays: 30 %}, dust: {stays: 100 %}}
    remedies:
      - {id: dry, name: Dry the stock, takes: 1 h, do: Hang the sheets., cures: {damp: 80 %, others: 10 %}, cautions: [hot-roller]}
`

func faultShop(log string) fstest.MapFS {
	return fstest.MapFS{"faults/bubbles.yaml": {Data: []byte(bubbles)}, "faults-log.yaml": {Data: []byte(log)}}
}

const oneCase = "faults_log:\n  - {date: 2026-11-03, family: bubbles, cause: dust, checks: {loupe: speck}, cured_by: dry}\n"

func TestFaults(t *testing.T) {
	s := mustLoad(t, smallShop(t), faultShop(oneCase))
	f := s.Fault("bubbles")
	if f.Cause("damp").Physics != "moist-sheet" || f.Cause("dust").Source.ID != "tally" || f.Cause("none") != nil ||
		f.Remedy("dry").Takes.Best != 3600 || f.Remedy("none") != nil || f.Sign("round").Also[0] != "pimples" || f.Sign("none") != nil {
		t.Errorf("read %+v", f)
	}
	loupe := f.Check("loupe")
	if loupe.Name != "Loupe" || loupe.Do == "" || len(loupe.Outcomes) != 2 || loupe.Takes.Best != 90 || loupe.Cautions[0].ID != "hot-roller" {
		t.Errorf("a general check lends all that its record says but the time: %+v", loupe)
	}
	if s.Check("loupe").Takes.Best != 60 || s.Caution("hot-roller") == nil {
		t.Error("a general check is changed by the family that uses it")
	}
	for _, test := range []struct {
		check, outcome, cause string
		want                  quantity.Fraction
	}{
		{"loupe", "speck", "dust", 66.4 / 99.6}, {"loupe", "empty", "dust", 33.2 / 99.6}, {"loupe", "speck", "damp", 0},
		{"loupe", "empty", "air", 1}, {"slow", "gone", "air", 0.7}, {"slow", "gone", "damp", 0},
	} {
		if got := f.Check(test.check).Chance(test.outcome, test.cause); math.Abs(float64(got-test.want)) > 1e-12 {
			t.Errorf("%s shows %s with %s: %v, want %v", test.check, test.outcome, test.cause, got, test.want)
		}
	}
	if dry := f.Remedy("dry"); dry.Cure("damp") != 0.8 || dry.Cure("air") != 0.1 {
		t.Errorf("cures %v and %v", dry.Cure("damp"), dry.Cure("air"))
	}
	row, _ := loupe.Found.Get("dust")
	if row[0].Value.Source != "guessed" || row[1].Value.Source != "tally" || row[1].Value.Low != 0.2 {
		t.Errorf("sources %q and %q: a share without one has its family's", row[0].Value.Source, row[1].Value.Source)
	}
	if _, ok := (Rows{{Of: "damp"}}).Get("dust"); ok {
		t.Error("a row without others is found for another cause")
	}
	cases := s.LoggedFaults("bubbles")
	if len(cases) != 1 || cases[0].Cause != "dust" || cases[0].Checks[0] != (Finding{"loupe", "speck", cases[0].Checks[0].Pos, cases[0].Checks[0].OutcomePos}) || cases[0].CuredBy != "dry" {
		t.Errorf("cases %+v", cases)
	}
	if got := s.Closest("faults", "buble"); got != "bubbles" {
		t.Errorf("closest family is %q", got)
	}
}

// demoWithFaults is the small shop with a family and a log.
func demoWithFaults(t *testing.T, log string) fstest.MapFS {
	t.Helper()
	demo := faultShop(log)
	for _, name := range []string{"shop.yaml", "rooms.yaml", "materials.yaml", "films.yaml", "machines.yaml", "heat.yaml"} {
		text, err := fs.ReadFile(smallShop(t), name)
		if err != nil {
			t.Fatal(err)
		}
		demo[name] = &fstest.MapFile{Data: text}
	}
	return demo
}

// TestGeneralCheckReplaced: a shop's own check that lacks what the program's
// families look for is one problem, in the shop's file.
func TestGeneralCheckReplaced(t *testing.T) {
	own := file("checks.yaml", "checks:\n  - {id: loupe, name: Lens, takes: 1 min, do: Look., outcomes: [{id: speck, says: x}, {id: hair, says: x}]}\n")
	_, problems := Load(demoWithFaults(t, oneCase), own)
	want := `data/checks.yaml:2:54: check "loupe" stands in place of one that came with the program, whose family "bubbles" needs its outcomes empty: keep them, give this check another id, or write a family "bubbles" of the shop's own`
	if got := problems.Error(); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	own = file("checks.yaml", "checks:\n  - {id: loupe, name: Lens, takes: 1 min, do: Look., outcomes: [{id: speck, says: x}, {id: empty, says: y}]}\n")
	if s := mustLoad(t, demoWithFaults(t, oneCase), own); s.Fault("bubbles").Check("loupe").Name != "Lens" {
		t.Error("the shop's own check is not used")
	}
}

// TestFaultsLogOverlay: invented cases are never counted with a shop's own, nor
// in a shop that is no demonstration.
func TestFaultsLogOverlay(t *testing.T) {
	demo := demoWithFaults(t, oneCase+"  - {date: 2026-11-04, family: bubbles, cause: damp}\n")
	real := "shop: {name: Another, revised: 2026-01-31, room: back-room, laminator: small-wide, storage: in-a-stack}\n"
	family := strings.SplitAfter(bubbles, "faults:\n")[1]
	tests := []struct {
		name string
		own  fstest.MapFS
		want int
	}{
		{"the demonstration", nil, 2},
		{"a real shop without a log", file("shop.yaml", real), 0},
		{"a demonstration with a log of its own", file("faults-log.yaml", oneCase), 1},
		{"a log that replaces all", file("faults-log.yaml", "replaces: all\nfaults_log: []\n"), 0},
		{"a family of its own", file("faults.yaml", "faults:\n"+family), 0},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			s := mustLoad(t, demo, test.own)
			if got := len(s.LoggedFaults("bubbles")); got != test.want {
				t.Errorf("%d cases count, want %d", got, test.want)
			}
		})
	}
}

// TestFamilyBounds: a family that is too large is refused, and quickly.
func TestFamilyBounds(t *testing.T) {
	var text strings.Builder
	text.WriteString("faults:\n  - id: vast\n    name: Vast\n    looks: x\n    when: x\n    where: x\n    help: 1 h\n    source: guessed\n    signs: [{id: s, name: S, looks: x}]\n    causes:\n")
	for i := range 9000 {
		fmt.Fprintf(&text, "      - {id: c%d, name: C, why: x, weight: 1, signs: [s]}\n", i)
	}
	text.WriteString("    remedies: [{id: r, name: R, takes: 1 min, do: x, cures: {others: 50 %}}]\n")
	_, problems := Load(smallShop(t), file("faults.yaml", text.String()))
	want := `data/faults.yaml:10:5: family "vast" has 9000 causes: at most 40; make two families of it`
	if got := problems.Error(); got != want {
		t.Errorf("got %.300s\nwant %s", got, want)
	}
}
