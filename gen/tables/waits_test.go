package tables_test

import (
	"math"
	"testing"

	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// length is a wait for comparing: what hardly dries is longest.
func length(v tables.WaitValue) float64 {
	if !v.Dries {
		return math.Inf(1)
	}
	return v.Computed.Hours()
}

func byCase(all []tables.WaitValue) map[tables.WaitCase]tables.WaitValue {
	m := map[tables.WaitCase]tables.WaitValue{}
	for _, v := range all {
		m[v.WaitCase] = v
	}
	return m
}

// More coverage never dries sooner: it is more carrier, or more film, on the
// same area.
func TestMoreCoverageNeverDriesSooner(t *testing.T) {
	all := byCase(everyWait(t, demo(t)))
	pairs := 0
	for c, v := range all {
		for i, lighter := range tables.Coverages[:len(tables.Coverages)-1] {
			if c.Coverage != tables.Coverages[i+1] {
				continue
			}
			l := c
			l.Coverage = lighter
			pairs++
			if length(v) < length(all[l])-1e-9 {
				t.Errorf("%+v: %.3f h, but %s coverage takes %.3f h", c, length(v), lighter, length(all[l]))
			}
		}
	}
	if pairs == 0 {
		t.Fatal("no two coverages compared")
	}
}

// Warmer never dries an evaporating or oxidising ink later, at the same
// relative humidity and air.
func TestWarmerNeverDriesLater(t *testing.T) {
	made := demo(t)
	s := made.Shop()
	room := s.Rooms[0]
	kept := *room
	defer func() { *room = kept }()
	checked := 0
	for _, ink := range s.Inks {
		if ink.Dries == "toner" {
			continue
		}
		for _, medium := range s.Media {
			if !s.PrintsOn(ink, medium) {
				continue
			}
			for _, storage := range made.StoragesFor(medium) {
				before := math.Inf(1)
				for _, c := range []float64{10, 15, 20, 25, 30, 35} {
					room.Temperature.Best = quantity.FromCelsius(c)
					v, err := made.Wait(tables.WaitCase{Ink: ink.ID, Medium: medium.ID, Coverage: "normal", Storage: storage.ID, Room: room.ID})
					if err != nil {
						t.Fatal(err)
					}
					if length(v) > before+1e-9 {
						t.Errorf("%s on %s, %s: %.3f h at %.0f °C, longer than in the cooler room", ink.ID, medium.ID, storage.ID, length(v), c)
					}
					before = length(v)
					checked++
				}
			}
		}
	}
	if checked < 100 {
		t.Fatalf("only %d waits checked", checked)
	}
}

// What the handbook tells is never under the computed wait (but for the minute
// that rounding forgives), nor under the least that the record allows.
func TestToldWaitHoldsBothFloors(t *testing.T) {
	made := demo(t)
	for _, v := range everyWait(t, made) {
		if !v.Dries {
			if v.Reason == "" {
				t.Errorf("%+v hardly dries, and no reason is given", v.WaitCase)
			}
			continue
		}
		m := made.Shop().Ink(v.Ink).Makers
		least := m.Wait.Best
		if m.Least.Set {
			least = m.Least.Best
		}
		if v.Wait < least-quantity.Minute {
			t.Errorf("%+v: told %.2f h, the record allows no less than %.2f h", v.WaitCase, v.Wait.Hours(), least.Hours())
		}
		if v.Wait < v.Computed-quantity.Minute {
			t.Errorf("%+v: told %.2f h, computed %.2f h", v.WaitCase, v.Wait.Hours(), v.Computed.Hours())
		}
	}
}

// Under the maker's own conditions the computed wait is the maker's: the anchor holds.
func TestMakersConditionsGiveTheMakersWait(t *testing.T) {
	made := demo(t)
	s := made.Shop()
	warned := map[string]bool{}
	for _, w := range made.Warnings() {
		warned[w.Ink] = true
	}
	room := s.Rooms[0]
	kept := *room
	defer func() { *room = kept }()
	for _, ink := range s.Inks {
		if ink.Dries == "toner" || warned[ink.ID] {
			continue
		}
		m := ink.Makers
		room.Temperature, room.Humidity, room.AirSpeed = m.Temperature, m.Humidity, m.AirSpeed
		room.Vapour.Best = 0
		v, err := made.Wait(tables.WaitCase{Ink: ink.ID, Medium: m.Medium.ID, Coverage: m.Coverage, Storage: m.Storage.ID, Room: room.ID})
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(v.Computed.Hours()-m.Wait.Best.Hours()) > 0.01 {
			t.Errorf("%s: %.3f h computed in the maker's own conditions, the maker says %.3f h", ink.ID, v.Computed.Hours(), m.Wait.Best.Hours())
		}
	}
}

// Every value carries the steps to it.
func TestEveryWaitHasItsWorking(t *testing.T) {
	for _, v := range everyWait(t, demo(t)) {
		if len(v.Working.Steps) < 3 {
			t.Fatalf("%+v: a working of %d steps", v.WaitCase, len(v.Working.Steps))
		}
		for _, s := range v.Working.Steps {
			if math.IsNaN(s.SI) || math.IsInf(s.SI, 0) || s.Text == "" || s.Shown == "" {
				t.Errorf("%+v: step %+v", v.WaitCase, s)
			}
		}
	}
}

func BenchmarkNew(b *testing.B) {
	s := demo(b).Shop()
	for b.Loop() {
		if _, err := tables.New(s); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkWait(b *testing.B) {
	made := demo(b)
	c := tables.WaitCase{Ink: "eco-solvent", Medium: "vinyl-calendered", Coverage: "heavy", Storage: "hung", Room: "cool-store"}
	for b.Loop() {
		if _, err := made.Wait(c); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkWaits(b *testing.B) {
	made := demo(b)
	for b.Loop() {
		if _, err := made.Waits(); err != nil {
			b.Fatal(err)
		}
	}
}
