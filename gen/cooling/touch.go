package cooling

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// ContactTemperature gives the temperature that two bodies take where they touch,
// until either feels its far side.
//
//	T_c = (e₁·T₁ + e₂·T₂)/(e₁ + e₂)      Carslaw and Jaeger; ASTM C1057 uses it for skin
func ContactTemperature(e1 float64, t1 quantity.Temperature, e2 float64, t2 quantity.Temperature) (quantity.Temperature, error) {
	if !positive(e1) || !positive(e2) || !positive(float64(t1)) || !positive(float64(t2)) {
		return 0, fmt.Errorf("contact of effusivities %g and %g at %g K and %g K: all must be above 0", e1, e2, float64(t1), float64(t2))
	}
	// As t2 plus a share of the difference, so that equal temperatures stay exact.
	return t2 + quantity.Temperature(e1/(e1+e2)*float64(t1-t2)), nil
}

// Skin as a body that is touched. From memory: k about 0.37 W/(m K), ρ 1100 kg/m³, c
// 3400 J/(kg K) for skin with little blood in it; effusivities from 1000 to 1500 are in
// use. Skin temperature of a hand at rest in a room.
const (
	SkinEffusivity                       = 1180 // W·s½/(m² K)
	SkinTemperature quantity.Temperature = 306.15
)

// Touched is what a hand touches.
type Touched int

// The groups of materials that burn thresholds are given for.
const (
	BareMetal Touched = iota
	Plastic
)

func (m Touched) String() string {
	if m == Plastic {
		return "plastic"
	}
	return "bare metal"
}

// Threshold is a burn threshold: the temperature of a surface, kept up during the
// contact, below which a contact of that length burns nobody's skin.
type Threshold struct {
	Of      Touched
	Contact quantity.Time
	At      quantity.Temperature
}

// Thresholds are burn thresholds of the kind that ISO 13732-1 gives: for smooth dry
// surfaces and adults' intact skin. All from memory; only the standard's scope was
// read (contacts of 0.5 s and longer; it sets no limits). Bare metal at 1 s is the
// lower end of the band of 65 to 70 °C, at 10 s that of 55 to 56 °C. For plastics the bands at 1 s and 10 s (about
// 85 and 71 °C) are remembered less surely and left out: a shop that wants them takes
// the standard.
var Thresholds = []Threshold{
	{BareMetal, 1, 338.15},     // 65 °C
	{BareMetal, 10, 328.15},    // 55 °C
	{BareMetal, 60, 324.15},    // 51 °C
	{BareMetal, 600, 321.15},   // 48 °C
	{BareMetal, 28800, 316.15}, // 43 °C
	{Plastic, 60, 333.15},      // 60 °C
	{Plastic, 600, 321.15},     // 48 °C
	{Plastic, 28800, 316.15},   // 43 °C
}

// BurnThreshold gives the threshold for a contact, between the known times on a log
// axis of time. A contact shorter than the shortest known takes that one's, which is on
// the safe side; one longer than 8 h is an error. Plastic takes bare metal's where that
// is higher (under a few seconds), since it gives its heat up slower.
//
// A print is touched as plastic, its film; a roller or a shoe as bare metal, and 43 °C
// covers everything. Who carries prints in a stack, minutes at a time, holds them for
// some 600 s (CarryContact): 48 °C, for either material. A single laminate is milder
// than its threshold, since it holds too little heat to keep its temperature up against
// a hand.
func BurnThreshold(of Touched, contact quantity.Time) (quantity.Temperature, error) {
	if of != BareMetal && of != Plastic {
		return 0, fmt.Errorf("no burn thresholds for material %d", int(of))
	}
	if !positive(float64(contact)) {
		return 0, fmt.Errorf("a contact of %g s: it must be above 0", float64(contact))
	}
	metal, err := between(BareMetal, contact)
	if err != nil || of == BareMetal {
		return metal, err
	}
	plastic, err := between(Plastic, contact)
	return max(metal, plastic), err
}

// between reads the table for one material.
func between(of Touched, contact quantity.Time) (quantity.Temperature, error) {
	var before *Threshold
	for i := range Thresholds {
		k := &Thresholds[i]
		if k.Of != of {
			continue
		}
		if contact <= k.Contact {
			if before == nil {
				return k.At, nil
			}
			share := math.Log(float64(contact/before.Contact)) / math.Log(float64(k.Contact/before.Contact))
			return before.At + quantity.Temperature(share)*(k.At-before.At), nil
		}
		before = k
	}
	return 0, fmt.Errorf("a contact of %g s with %v: thresholds are known to %g s", float64(contact), of, float64(before.Contact))
}

// CarryContact is how long a hand is taken to hold prints that are carried or jogged:
// ten minutes. An assumption.
const CarryContact quantity.Time = 600
