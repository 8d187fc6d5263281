package nip

import "laydown/gen/quantity"

// Layers of usual materials; the figures are recommended values of the trade's
// polymer and paper handbooks, from memory where not said otherwise. None is a
// product.
func pet(um float64) Layer      { return layer("PET", um, 0.15, 1390, 1170) }
func pp(um float64) Layer       { return layer("PP", um, 0.18, 905, 1920) }
func vinyl(um float64) Layer    { return layer("vinyl", um, 0.16, 1300, 1250) }
func eva(um float64) Layer      { return layer("EVA", um, 0.30, 940, 2300) }
func acrylic(um float64) Layer  { return layer("acrylic", um, 0.18, 1050, 1900) }
func uncoated(um float64) Layer { return layer("uncoated paper", um, 0.12, 800, 1500) }
func coated(um float64) Layer   { return layer("coated paper", um, 0.18, 1200, 1280) }
func toner(um float64) Layer    { return layer("toner", um, 0.17, 1150, 1500) }
func silicone(mm float64) Layer { return layer("silicone", 1000*mm, 0.25, 1150, 1300) }
func steel(mm float64) Layer    { return layer("steel", 1000*mm, 50, 7850, 480) }

func layer(name string, um, k, rho, c float64) Layer {
	return Layer{Name: name, Thickness: quantity.Length(um * 1e-6), Conductivity: quantity.Conductivity(k),
		Density: quantity.Density(rho), SpecificHeat: quantity.SpecificHeat(c)}
}

const (
	metresPerMinute = quantity.Speed(1.0 / 60)
	millimetre      = quantity.Length(1e-3)
)

// celsius are temperatures in °C for tests.
func celsius(room, set, lower float64) Temps {
	k := func(c float64) quantity.Temperature { return quantity.Temperature(c + 273.15) }
	return Temps{Room: k(room), Set: k(set), Lower: k(lower), Print: k(room), Film: k(room), Preheat: k(room), Chill: k(15)}
}

// free is a free run of a while in still air.
func free(seconds float64) []Stage {
	return []Stage{{Time: quantity.Time(seconds), Face: Exposure{15, Room}, Back: Exposure{15, Room}}}
}

// wideHot is a wide hot laminator with a silicone cover on its hot roller.
func wideHot(speed float64) *Pass {
	return &Pass{
		Film:  []Layer{pet(25), eva(50)},
		Print: []Layer{uncoated(150)},
		Upper: Roller{Cover: silicone(3), Diameter: 120 * millimetre, Core: Set, Wrap: 60 * millimetre,
			WrapContact: 400, NipContact: 2500, Idle: 10},
		Lower: Roller{Cover: silicone(6), Diameter: 120 * millimetre, Core: Lower, NipContact: 600, Idle: 10},
		Speed: quantity.Speed(speed) * metresPerMinute, Nip: 8 * millimetre,
		Bond: 10000, OpenFace: 10, After: free(60),
	}
}

// encapsulator is wideHot with both rollers hot and film on both sides.
func encapsulator(speed float64) *Pass {
	p := wideHot(speed)
	p.LowerFilm = p.Film
	p.LowerBond = p.Bond
	p.Lower = p.Upper
	return p
}

// drum is a sheet-fed laminator with a steel drum and a thin film.
func drum(speed float64) *Pass {
	p := wideHot(speed)
	p.Film = []Layer{pp(15), eva(12)}
	p.Upper = Roller{Cover: steel(12), Diameter: 320 * millimetre, Core: Set, Wrap: 400 * millimetre,
		WrapContact: 400, NipContact: 2500, Idle: 10}
	p.Nip = 10 * millimetre
	return p
}

// cold is a cold film under a roller that is only warmed.
func cold(speed float64) *Pass {
	p := wideHot(speed)
	p.Film = []Layer{vinyl(75), acrylic(25)}
	p.Print = []Layer{vinyl(80), acrylic(25), layer("liner", 140, 0.13, 1000, 1400)}
	p.Upper.Cover = silicone(10)
	p.Upper.Diameter = 130 * millimetre
	p.Upper.Wrap = 0
	p.Nip = 12 * millimetre
	p.Bond = 2000
	return p
}

// shoe is a machine with a heat shoe before rollers that have no heater.
func shoe(speed float64) *Pass {
	p := wideHot(speed)
	p.Upper.Core, p.Upper.Insulated, p.Upper.Wrap = Lower, true, 0
	length := 80.0 // mm
	t := length / 1000 / float64(p.Speed)
	p.FilmBefore = []Stage{
		{Time: quantity.Time(t), Face: Exposure{400, Set}, Back: Exposure{10, Room}},
		{Time: quantity.Time(t / 4), Face: Exposure{10, Room}, Back: Exposure{10, Room}},
	}
	return p
}

// realistic are passes of usual materials on usual machines.
var realistic = []struct {
	Name  string
	Pass  *Pass
	Temps Temps
}{
	{"wide hot, 0.5 m/min", wideHot(0.5), celsius(23, 110, 45)},
	{"wide hot, 1 m/min", wideHot(1), celsius(23, 110, 45)},
	{"wide hot, 2 m/min", wideHot(2), celsius(23, 110, 45)},
	{"wide hot, 5 m/min", wideHot(5), celsius(23, 110, 45)},
	{"encapsulator, 0.5 m/min", encapsulator(0.5), celsius(23, 110, 45)},
	{"encapsulator, 1 m/min", encapsulator(1), celsius(23, 110, 45)},
	{"encapsulator, 3 m/min", encapsulator(3), celsius(23, 110, 45)},
	{"drum, 10 m/min", drum(10), celsius(23, 110, 40)},
	{"drum, 20 m/min", drum(20), celsius(23, 110, 40)},
	{"drum, 30 m/min", drum(30), celsius(23, 110, 40)},
	{"drum, 50 m/min", drum(50), celsius(23, 110, 40)},
	{"cold, 1 m/min", cold(1), celsius(23, 45, 23)},
	{"cold, 4 m/min", cold(4), celsius(23, 45, 23)},
	{"shoe, 1 m/min", shoe(1), celsius(23, 120, 30)},
	{"shoe, 3 m/min", shoe(3), celsius(23, 120, 30)},
}
