package tables

import (
	"math"
	"os"
	"testing"

	"laydown/gen/nip"
	"laydown/gen/nip/niptest"
	"laydown/gen/quantity"
)

// agreement is what the nip's solver and a second method may differ by over the
// shop's own pairs, in K.
const agreement = 0.1

// Every film of the demonstration on every medium in every machine, at the
// machine's usual speed, first piece and steady run, against the second method of
// package niptest: the bond line at the nip's end and at its highest. All pairs
// take half a minute, so that one in seven is tried unless LAYDOWN_ALL is set.
func TestPairingsAgreeWithSecondMethod(t *testing.T) {
	made := demoTables(t)
	all := made.pairings()
	step := 7
	if os.Getenv("LAYDOWN_ALL") != "" {
		step = 1
	}
	solver, out := nip.NewSolver(), new(nip.Response)
	largest, tried := 0.0, 0
	for i := 0; i < len(all); i += step {
		p := all[i]
		pass, err := made.pass(p, made.places[p.film.ID])
		if err != nil {
			t.Fatal(err)
		}
		// The second method knows the core's temperature only.
		pass.Upper.Sensed, pass.Lower.Sensed = nip.AtCore, nip.AtCore
		if err := solver.Run(pass, out); err != nil {
			t.Fatal(err)
		}
		temps := temperatures(p.machine, quantity.FromCelsius(23))
		temps.Set = min(quantity.FromCelsius(110), p.machine.Hottest.Best)
		ref := niptest.New(pass, &temps, 2e-6, 160)
		tried++
		for _, c := range []struct {
			name string
			*nip.Case
		}{{"first piece", &out.First}, {"steady run", &out.Steady}} {
			if c.name == "steady run" {
				ref.Settle()
			}
			ref.Turn(true)
			end := len(ref.Times) - 1
			ref.After()
			most := ref.Bond[0]
			for _, v := range ref.Bond {
				most = math.Max(most, v)
			}
			highest, _ := c.BondLineMax(temps)
			atEnd := c.Records[c.NipEnd][nip.BondLine].At(temps)
			for _, y := range []struct {
				place     string
				got, want float64
			}{{"at the nip's end", float64(atEnd), ref.Bond[end]}, {"at its highest", float64(highest), most}} {
				largest = math.Max(largest, math.Abs(y.got-y.want))
				if !(math.Abs(y.got-y.want) <= agreement) {
					t.Errorf("%s on %s in %s, %s: bond line %s %.3f °C, by the second method %+.3f K",
						p.film.ID, p.medium.ID, p.machine.ID, c.name, y.place, y.got-273.15, y.got-y.want)
				}
			}
		}
	}
	t.Logf("%d of %d pairs, largest difference %.3f K", tried, len(all), largest)
}
