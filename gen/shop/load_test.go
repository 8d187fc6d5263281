package shop

import (
	"math"
	"os"
	"reflect"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"laydown/gen/quantity"
)

// near compares what came through a conversion of units.
func near(got, want float64) bool { return math.Abs(got-want) <= 1e-12*math.Abs(want) }

func TestSmallShop(t *testing.T) {
	s := mustLoad(t, nil, smallShop(t))
	if s.Front.Name != "The Small Test Shop" || !s.Front.Invented || s.Front.Room.ID != "back-room" || s.Front.Charts.Paper[0] != "A3" {
		t.Errorf("front %+v", s.Front)
	}
	room := s.Room("back-room")
	temperature := room.Temperature
	if !near(float64(temperature.Best), 294.15) || !near(float64(temperature.Low), 293.15) || !near(float64(temperature.High), 296.15) {
		t.Errorf("temperature %+v", temperature)
	}
	if temperature.Source != "invented-here" || room.AirSpeed.Source != "guessed" {
		t.Errorf("sources %q and %q: a value without one takes its record's", temperature.Source, room.AirSpeed.Source)
	}
	if humidity := room.Humidity; humidity.Low != humidity.Best || humidity.High != humidity.Best || humidity.Text != "50 %" || !humidity.Set {
		t.Errorf("humidity %+v", humidity)
	}
	if room.Vapour.Set || room.Vapour.Source != "" {
		t.Errorf("a vapour that nobody stated: %+v", room.Vapour)
	}
	cold := s.Film("test-cold")
	if !near(float64(cold.BaseThickness.Best), 76.2e-6) || cold.BaseThickness.Text != "3 mil" {
		t.Errorf("3 mil is %+v", cold.BaseThickness)
	}
	if want := (Pos{File: "data/films.yaml", Line: 21, Col: 21}); cold.BaseThickness.Pos != want {
		t.Errorf("it stands at %v, want %v", cold.BaseThickness.Pos, want)
	}
	thermal := s.Film("test-thermal")
	if thermal.Rollers.From.Source != "guessed" || thermal.Melts.From.Source != "invented-here" || cold.Assist.From.Source != "" {
		t.Errorf("sources %q, %q, %q: a group's own comes before its record's", thermal.Rollers.From.Source, thermal.Melts.From.Source, cold.Assist.From.Source)
	}
	if cold.Demo || s.Source("guessed").Demo {
		t.Error("the shop's own records are marked as the demo's")
	}
	if a := s.Carrier("test-carrier").Antoine; a.A != 22.75 || a.C != -48 || !near(float64(a.To.Best), 463.15) {
		t.Errorf("antoine %+v", a)
	}
	if p := s.Front.Charts.Waits[0]; p.Ink.ID != "test-solvent" || p.Pos.Line != 14 {
		t.Errorf("chart row %+v", p)
	}
}

const loft = `
  - {id: loft, name: Loft, temperature: 18 °C, humidity: 60 %, air_speed: 0.1 m/s}`

func TestOverlay(t *testing.T) {
	own := file("rooms.yaml", "rooms:"+loft+`
  - {id: back-room, name: Our back room, temperature: 70 °F, humidity: 45 %, air_speed: 20 ft/min}
`)
	s := mustLoad(t, smallShop(t), own)
	var ids []string
	for _, r := range s.Rooms {
		ids = append(ids, r.ID)
	}
	if got := strings.Join(ids, " "); got != "back-room loft" {
		t.Errorf("rooms are %s: want the demo's order, then what the shop adds", got)
	}
	room := s.Room("back-room")
	if room.Name != "Our back room" || room.Demo || room.Volume.Set {
		t.Errorf("the shop's record does not stand whole for the demo's: %+v", room)
	}
	if !s.Film("test-cold").Demo || !s.Source("guessed").Demo {
		t.Error("the demo's records are not marked")
	}
	if len(s.Predictions) != 1 {
		t.Error("the demo's prediction is gone although its room is there")
	}
	if got := s.Film("test-cold").Pos.String(); got != "demo/films.yaml:16:5" {
		t.Errorf("a demo record stands at %s", got)
	}
}

func TestOverlayOfShop(t *testing.T) {
	own := file("shop.yaml", "shop: {name: Another, revised: 2026-01-31, room: back-room, laminator: small-wide, storage: in-a-stack}\n")
	s := mustLoad(t, smallShop(t), own)
	if s.Front.Name != "Another" || s.Front.Invented || len(s.Front.Charts.Waits) != 0 {
		t.Errorf("front %+v", s.Front)
	}
}

func TestReplacesAll(t *testing.T) {
	own := fstest.MapFS{
		"rooms.yaml": {Data: []byte("replaces: all\nrooms:" + loft + "\n")},
		"shop.yaml":  {Data: []byte("shop: {name: Another, revised: 2026-01-31, room: loft, laminator: small-wide, storage: in-a-stack}\n")},
	}
	s := mustLoad(t, smallShop(t), own)
	if len(s.Rooms) != 1 || s.Rooms[0].ID != "loft" {
		t.Errorf("rooms %v", s.Rooms)
	}
	if len(s.Predictions) != 0 {
		t.Error("a prediction of the demo's stands although its room is gone")
	}
	delete(own, "shop.yaml")
	_, problems := Load(smallShop(t), own)
	want := `demo/shop.yaml:8:9: there is no room "back-room": this record came with the program, and the shop's data replaces all rooms; give the shop a record of its own here, or write replaces: all beside shop too`
	if got := problems.Error(); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

// TestFolders reads kinds from folders of their names.
func TestFolders(t *testing.T) {
	own := fstest.MapFS{
		"rooms/b.yaml":      {Data: []byte("rooms:" + strings.ReplaceAll(loft, "loft", "second") + "\n")},
		"rooms/a.yaml":      {Data: []byte("rooms:" + strings.ReplaceAll(loft, "loft", "first") + "\n")},
		"data.go":           {Data: []byte("package data\n")},
		".hidden.yaml":      {Data: []byte("nothing: of ours\n")},
		"pictures/dog.jpeg": {Data: []byte{0xff}},
	}
	s := mustLoad(t, smallShop(t), own)
	if len(s.Rooms) != 3 || s.Rooms[1].ID != "first" || s.Rooms[2].ID != "second" {
		t.Errorf("rooms %v", s.Rooms)
	}
	own["room/c.yaml"] = &fstest.MapFile{Data: []byte("rooms: []\n")}
	_, problems := Load(smallShop(t), own)
	if got := problems.Error(); !strings.HasPrefix(got, `data/room:1:1: the folder "room" is not read`) || !strings.HasSuffix(got, `; did you mean "rooms"?`) {
		t.Errorf("got %s", got)
	}
}

// TestUnreadFileHidesNothingElse: what a broken file may have held is not
// reported as missing, and everything else still is.
func TestUnreadFileHidesNothingElse(t *testing.T) {
	own := fstest.MapFS{
		"sources.yaml": {Data: []byte("sources: [\n")},
		"rooms.yaml":   {Data: []byte("rooms:" + strings.Replace(loft, "18 °C", "18 °C, source: not-read", 1) + "\n")},
		"limits.yaml":  {Data: []byte("limits: [{id: a, name: A, verdict: test, why: x, media: [nowhere]}]\n")},
	}
	_, problems := Load(smallShop(t), own)
	if len(problems) != 2 || problems[0].File != "data/limits.yaml" || problems[1].File != "data/sources.yaml" {
		t.Errorf("got\n%s", problems.Error())
	}
}

func TestNoData(t *testing.T) {
	for name, own := range map[string]fstest.MapFS{"nothing": nil, "an empty folder": {}} {
		s, problems := Load(nil, own)
		if s != nil || len(problems) != 1 || !strings.HasPrefix(problems[0].String(), "data/shop.yaml:1:1: the shop itself is missing") {
			t.Errorf("%s: %v", name, problems)
		}
	}
	if s, problems := Load(smallShop(t), os.DirFS("../../testdata/no-such-folder")); s == nil {
		t.Errorf("a shop's folder without data takes the demo's: %v", problems)
	}
}

// TestSameEveryTime: equal input gives the same shop and the same problems.
func TestSameEveryTime(t *testing.T) {
	first := mustLoad(t, smallShop(t), nil)
	for range 5 {
		if again := mustLoad(t, smallShop(t), nil); !reflect.DeepEqual(first, again) {
			t.Fatal("two loads of the same data differ")
		}
	}
}

// TestLayouts reads the tags of the whole model: a range that cannot be read
// or a reference to no kind would panic here.
func TestLayouts(t *testing.T) {
	l := &loader{layouts: map[reflect.Type]*layout{}}
	var visit func(reflect.Type)
	values := 0
	visit = func(of reflect.Type) {
		for _, f := range l.layout(of).fields {
			to := of.FieldByIndex(f.index).Type
			if _, ok := reflect.New(to).Interface().(measure); ok {
				values++
				continue
			}
			if to.Kind() == reflect.Pointer || to.Kind() == reflect.Slice {
				to = to.Elem()
			}
			if to.Kind() == reflect.Struct && to != reflect.TypeFor[Ref]() {
				visit(to)
			}
		}
	}
	for _, k := range kinds {
		visit(k.record)
		if _, ok := l.layout(k.record).find("id"); ok == (k.single || k.log) {
			t.Errorf("%s: a list of records wants an id, and a single one or a log has none", k.key)
		}
	}
	if values < 90 {
		t.Errorf("only %d values have a range", values)
	}
}

func TestLookups(t *testing.T) {
	s := mustLoad(t, nil, smallShop(t))
	if s.Ink("test-solvent") == nil || s.Ink("none") != nil || s.Limit("no-heat-on-solvent") == nil || s.Laminator("small-wide") == nil ||
		s.Storage("in-a-stack") == nil || s.Substance("test-glue") == nil || s.Source("none") != nil || s.Medium("test-paper") == nil {
		t.Error("a lookup failed")
	}
	if !s.PrintsOn(s.Ink("test-toner"), s.Medium("test-paper")) || s.PrintsOn(s.Ink("test-toner"), s.Medium("test-vinyl")) || s.PrintsOn(nil, s.Medium("test-vinyl")) {
		t.Error("PrintsOn is wrong")
	}
	for _, test := range []struct{ kind, word, want string }{
		{"inks", "test-solvant", "test-solvent"},
		{"inks", "Test toner", "test-toner"},
		{"rooms", "the back", "back-room"},
		{"storage", "in-a-stak", "in-a-stack"},
		{"films", "test-th", "test-thermal"},
		{"films", "harbour", ""},
		{"boats", "test-cold", ""},
	} {
		if got := s.Closest(test.kind, test.word); got != test.want {
			t.Errorf("closest to %q in %s is %q, want %q", test.word, test.kind, got, test.want)
		}
	}
}

func TestProblems(t *testing.T) {
	if (Problems{}).Err() != nil {
		t.Error("no problems are an error")
	}
	ps := Problems{
		{Pos{"data/b.yaml", 2, 1}, "x"}, {Pos{"demo/a.yaml", 9, 9}, "x"}, {Pos{"data/b.yaml", 1, 12}, "x"},
		{Pos{"data/b.yaml", 1, 3}, "x"}, {Pos{"data/b.yaml", 2, 1}, "x"},
	}.sort().Under("our shop/")
	want := "our shop/data/b.yaml:1:3: x\nour shop/data/b.yaml:1:12: x\nour shop/data/b.yaml:2:1: x\ndemo/a.yaml:9:9: x"
	if got := ps.Err().Error(); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

func TestNearest(t *testing.T) {
	known := []string{"thickness", "grammage", "width", "low", "high"}
	for word, want := range map[string]string{
		"thicknes": "thickness", "tihckness": "thickness", "Thickness": "thickness", "gramage": "grammage",
		"thick": "thickness", "lo": "low", "hihg": "high", "colour": "", "": "", "x": "",
	} {
		if got := nearest(word, known); got != want {
			t.Errorf("nearest to %q is %q, want %q", word, got, want)
		}
	}
	// A published pair: kitten to sitting takes three (Wagner and Fischer's distance, from memory).
	for _, test := range []struct {
		from, to string
		want     int
	}{{"kitten", "sitting", 3}, {"", "abc", 3}, {"ab", "ba", 1}, {"µm", "um", 1}, {"same", "same", 0}} {
		if got := editDistance(test.from, test.to); got != test.want || editDistance(test.to, test.from) != got {
			t.Errorf("%q to %q takes %d, want %d", test.from, test.to, got, test.want)
		}
	}
}

// TestRangeInTheirUnit: bounds come in the author's unit too, offsets and all.
func TestRangeInTheirUnit(t *testing.T) {
	f := field{lowText: "0 °C", highText: "50 °C", low: 273.15, high: 323.15}
	for text, want := range map[string]string{
		"150 °F": " (32 °F and 122 °F)", "400 K": " (273 K and 323 K)", "90 °C": "", "9 × 10² °F": " (32 °F and 122 °F)",
	} {
		if got := inTheirUnit(text, new(Value[quantity.Temperature]), f); got != want {
			t.Errorf("%s: got %q, want %q", text, got, want)
		}
	}
}

func BenchmarkLoad(b *testing.B) {
	small := smallShop(b)
	for b.Loop() {
		if _, problems := Load(small, nil); problems != nil {
			b.Fatal(problems)
		}
	}
}

// TestAliases: an alias stands for what it names, at its own place, with the
// source of the record that it stands in; and it counts as all of that.
func TestAliases(t *testing.T) {
	own := file("rooms.yaml", `rooms:
  - {id: one, name: One, source: guessed, temperature: &warm {value: 25 °C, low: 24 °C}, humidity: &damp 70 %, air_speed: 0.1 m/s}
  - {id: two, name: Two, source: invented-here, temperature: *warm, humidity: *damp, air_speed: 0.1 m/s}
`)
	s := mustLoad(t, smallShop(t), own)
	one, two := s.Room("one"), s.Room("two")
	if two.Temperature.Best != one.Temperature.Best || two.Temperature.Low != one.Temperature.Low || two.Humidity.Text != "70 %" {
		t.Errorf("got %+v", two)
	}
	if one.Temperature.Source != "guessed" || two.Temperature.Source != "invented-here" {
		t.Errorf("sources %q and %q", one.Temperature.Source, two.Temperature.Source)
	}
	if want := (Pos{"data/rooms.yaml", 3, 62}); two.Temperature.Pos != want {
		t.Errorf("the alias stands at %v, want %v", two.Temperature.Pos, want)
	}
	// Each of these lists holds the one above it: few values to write, and
	// deeper than forty at the end.
	deep := "a: &a0 [x]\n"
	for i := range 45 {
		deep += "k" + strings.Repeat("k", i) + ": &a" + strconv.Itoa(i+1) + " [*a" + strconv.Itoa(i) + "]\n"
	}
	_, problems := Load(smallShop(t), file("rooms.yaml", deep))
	if len(problems) != 1 || !strings.HasPrefix(problems[0].Message, tooDeep) {
		t.Errorf("got %s", problems.Error())
	}
}
