package nip

import "laydown/gen/quantity"

// Boundary names a temperature that the run depends on.
type Boundary int

// The temperatures. Each has a response; Room is the one that all others are
// counted from.
const (
	// Room is the air, and the surroundings that faces radiate to.
	Room Boundary = iota
	// Set is the set temperature of the hot roller, drum or heat shoe.
	Set
	// Lower is the lower roller: its own set temperature, or what it settles at.
	Lower
	// Print is the print as it enters.
	Print
	// Film is the film as it leaves its roll.
	Film
	// Preheat is a body that warms film or print ahead of the roller.
	Preheat
	// Chill is a cooled body after the nip.
	Chill
	// Boundaries is how many there are.
	Boundaries = iota
)

// Temps are the temperatures for which responses are evaluated. One that the
// pass does not use may be left 0.
type Temps struct {
	Room, Set, Lower, Print, Film, Preheat, Chill quantity.Temperature
}

// Same is a machine and its materials all at one temperature.
func Same(t quantity.Temperature) Temps {
	return Temps{t, t, t, t, t, t, t}
}

// of is the temperature of boundary b.
func (t *Temps) of(b Boundary) quantity.Temperature {
	switch b {
	case Set:
		return t.Set
	case Lower:
		return t.Lower
	case Print:
		return t.Print
	case Film:
		return t.Film
	case Preheat:
		return t.Preheat
	case Chill:
		return t.Chill
	}
	return t.Room
}

// Row is a temperature as a response: how far it moves per kelvin of each
// boundary, φ_b. The shares of all seven, Row[Room] among them, add up to 1.
type Row [Boundaries]float64

// At is T_room + Σ_b (T_b − T_room)·φ_b.
func (r *Row) At(t Temps) quantity.Temperature {
	return quantity.Temperature(r.at(&t))
}

func (r *Row) at(t *Temps) float64 {
	room := float64(t.Room)
	sum := room
	for b := Set; b < Boundaries; b++ {
		if r[b] != 0 {
			sum += r[b] * (float64(t.of(b)) - room)
		}
	}
	return sum
}

// fillRoom gives the room what the others leave of 1.
func (r *Row) fillRoom() {
	r[Room] = 1 - ((r[Set] + r[Lower] + r[Print]) + (r[Film] + r[Preheat] + r[Chill]))
}

// setFor is the set temperature at which r is at the target, the other
// temperatures being as in t. It says false where the set temperature hardly
// matters.
func (r *Row) setFor(target float64, t *Temps) (float64, bool) {
	if r[Set] < leastShare {
		return 0, false
	}
	others := *r
	others[Set] = 0
	return float64(t.Room) + (target-others.at(t))/r[Set], true
}

// leastShare is the response below which a place is said not to feel the set
// temperature: to warm it by 1 K there would take 1000 K.
const leastShare = 1e-3
