package tables

import (
	"math"
	"strings"
	"testing"

	"laydown/gen/quantity"
	"laydown/gen/vent"
)

func vapours(t *testing.T, made *Tables) []VapourValue {
	t.Helper()
	all, err := made.Vapours()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 150 {
		t.Fatalf("only %d areas", len(all))
	}
	return all
}

// A room that holds what the table tells stays within both bounds, and where it tells
// less than it computed it is by rounding alone.
func TestEveryAreaKeepsItsBounds(t *testing.T) {
	made := demoTables(t)
	known, over := 0, 0
	for _, v := range vapours(t, made) {
		if v.Average <= 0 || v.Peak < v.Average || len(v.Working.Steps) < 8 {
			t.Errorf("%+v: average %g, peak %g, %d steps", v.VapourCase, float64(v.Average), float64(v.Peak), len(v.Working.Steps))
		}
		for _, s := range v.Working.Steps {
			if s.Text == "" || s.Shown == "" || math.IsNaN(s.SI) || math.IsInf(s.SI, 0) {
				t.Errorf("%+v: step %+v", v.VapourCase, s)
			}
		}
		if !v.Known {
			if v.Reason == "" || v.Area != 0 {
				t.Errorf("%+v: unknown without a reason, or with an area", v.VapourCase)
			}
			continue
		}
		known++
		carrier := made.shop.Carrier(made.shop.Ink(v.Ink).Evaporation.Carrier.ID)
		room := made.shop.Room(v.Room)
		free := float64(ExposureShare)*float64(carrier.ExposureLimit.Best) - float64(room.Vapour.Best)
		if full := float64(v.Average) * float64(v.Computed); v.By == vent.ByExposure && math.Abs(full/free-1) > 1e-6 || full > free*(1+1e-6) {
			t.Errorf("%+v: %g m² come to %g kg/m³ of the %g that are free, by the %s", v.VapourCase, float64(v.Computed), full, free, v.By)
		}
		// The explosive limit by hand, as a concentration of ideal gas.
		lel := float64(carrier.LowerExplosive.Best) * float64(made.pressure) * float64(carrier.MolarMass.Best) / (8.314462618 * float64(room.Temperature.Best))
		if share := (float64(v.Peak)*float64(v.Computed) + float64(room.Vapour.Best)) / lel; share > float64(ExplosiveShare)*(1+1e-6) {
			t.Errorf("%+v: %g of the lower explosive limit", v.VapourCase, share)
		}
		switch {
		case v.Over:
			over++
			if v.Computed <= MostArea || v.Area != MostArea {
				t.Errorf("%+v: told over %g, computed %g", v.VapourCase, float64(v.Area), float64(v.Computed))
			}
		case v.Area > v.Computed || float64(v.Computed-v.Area) > max(1, 0.1*float64(v.Computed)):
			t.Errorf("%+v: told %g m², computed %g", v.VapourCase, float64(v.Area), float64(v.Computed))
		}
	}
	if known < 100 || over == known {
		t.Errorf("%d areas known, %d of them over %g m²: little is shown", known, over, float64(MostArea))
	}
}

// A second method: the residue curve that the drawings show, and the room's balance in
// small steps of Euler's.
func TestVapourAgainstSteps(t *testing.T) {
	made := demoTables(t)
	for _, c := range []VapourCase{
		{"solvent", "vinyl-calendered", "hung", "finishing-room"},
		{"screen-solvent", "vinyl-calendered", "fan", "cool-store"},
		{"aqueous-dye", "photo-microporous", "rack", "damp-quay"},
	} {
		v, err := made.Vapour(c)
		if err != nil || !v.Known {
			t.Fatal(v.Reason, err)
		}
		const step, span = quantity.Minute, 40 * quantity.Hour
		room := made.shop.Room(c.Room)
		p, why, err := made.vapourPrint(printed{made.shop.Ink(c.Ink), made.shop.Medium(c.Medium), made.shop.Storage(c.Storage), room})
		if err != nil || why != "" {
			t.Fatal(why, err)
		}
		law, err := made.law(p.ink, p.medium, noFilm)
		if err != nil {
			t.Fatal(err)
		}
		fresh, here := law.fresh("normal"), in(room, p.storage)
		lambda := float64(room.AirChanges.Best) / room.Mixing
		n := int(span / step)
		sums := make([]float64, n+1)
		conc, before, peak := 0.0, fresh.left(), 0.0
		for i := range n {
			s, err := fresh.march(here, quantity.Time(i+1)*step)
			if err != nil {
				t.Fatal(err)
			}
			given := (before - s.left()) / 1000 / float64(room.Volume.Best)
			before = s.left()
			next := (conc + given) * math.Exp(-lambda*float64(step))
			sums[i+1] = sums[i] + (conc+given+next)/2*float64(step)
			conc = next
			peak = math.Max(peak, conc+given/2)
		}
		worst := 0.0
		const day = int(shift / step)
		for i := 0; i+day <= n; i++ {
			worst = math.Max(worst, (sums[i+day]-sums[i])/float64(shift))
		}
		if math.Abs(worst/float64(v.Average)-1) > 0.01 || math.Abs(peak/float64(v.Peak)-1) > 0.02 {
			t.Errorf("%+v: average %.4g, by steps %.4g; peak %.4g, by steps %.4g mg/m³", c, milligrams(v.Average), worst*1e6, milligrams(v.Peak), peak*1e6)
		}
	}
}

// More air, better mixing and less carrier never bear less; a fan, which dries sooner,
// never bears more than still air. The moves say the same.
func TestAreaProperties(t *testing.T) {
	made := demoTables(t)
	room := made.shop.Room("finishing-room")
	area := func(storage string) float64 {
		v, err := made.Vapour(VapourCase{"solvent", "vinyl-calendered", storage, room.ID})
		if err != nil || !v.Known {
			t.Fatal(v.Reason, err)
		}
		for _, m := range v.Moves {
			down := strings.HasPrefix(m.Input, "mixing") || strings.HasPrefix(m.Input, "carrier") || strings.HasPrefix(m.Input, "vapour")
			if down != (m.Low > m.High) {
				t.Errorf("%s moves the area from %g to %g m²", m.Input, float64(m.Low), float64(m.High))
			}
		}
		for i := 1; i < len(v.Moves); i++ {
			if v.Moves[i].size() > v.Moves[i-1].size() {
				t.Errorf("%s stands after %s and moves more", v.Moves[i].Input, v.Moves[i-1].Input)
			}
		}
		return float64(v.Computed)
	}
	base := area("hung")
	if a := area("fan"); a > base {
		t.Errorf("under a fan %g m², hung %g", a, base)
	}
	kept := *room
	defer func() { *room = kept }()
	room.AirChanges.Best *= 2
	if a := area("hung"); a <= base {
		t.Errorf("with twice the air %g m², before %g", a, base)
	}
	*room = kept
	room.Mixing = 1
	if a := area("hung"); a <= base {
		t.Errorf("perfectly mixed %g m², before %g", a, base)
	}
	*room = kept
	ev := made.shop.Ink("solvent").Evaporation
	ev.Load.Best *= 2 // the diffusivity stays as it was solved: all is in proportion
	defer func() { ev.Load.Best /= 2 }()
	if a := area("hung"); math.Abs(a/base-0.5) > 1e-6 {
		t.Errorf("twice the carrier %g m², before %g", a, base)
	}
}

// What the data does not hold is said, not guessed.
func TestVapourSaysWhatIsMissing(t *testing.T) {
	made := demoTables(t)
	ask := func(c VapourCase) VapourValue {
		v, err := made.Vapour(c)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	if v := ask(VapourCase{"eco-solvent", "vinyl-calendered", "hung", "winter"}); v.Known || !strings.Contains(v.Reason, "no exposure limit") || v.Average <= 0 {
		t.Errorf("without a limit: %+v", v)
	}
	if v := ask(VapourCase{"toner-dry", "coated-gloss-135", "stack", "winter"}); v.Known || !strings.Contains(v.Reason, "no carrier") {
		t.Errorf("toner: %+v", v)
	}
	room := made.shop.Room("winter")
	kept := *room
	defer func() { *room = kept }()
	room.Volume.Set = false
	if v := ask(VapourCase{"solvent", "vinyl-calendered", "hung", "winter"}); v.Known || !strings.Contains(v.Reason, "no volume") {
		t.Errorf("without a volume: %+v", v)
	}
	*room = kept
	room.Vapour.Best = 70e-6 // more than half of the limit of 133 mg/m³, and prints still dry in it
	if v := ask(VapourCase{"solvent", "vinyl-calendered", "hung", "winter"}); !v.Known || v.Area != 0 || v.Daily != 0 {
		t.Errorf("in a room full of vapour: %+v", v)
	}
	if _, err := made.Vapour(VapourCase{"solvent", "vinyl-calendered", "hung", "nowhere"}); err == nil {
		t.Error("no such room: no error")
	}
}

func BenchmarkVapours(b *testing.B) {
	made := demoTables(b)
	for b.Loop() {
		if _, err := made.Vapours(); err != nil {
			b.Fatal(err)
		}
	}
}
