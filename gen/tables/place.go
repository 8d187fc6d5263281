package tables

import (
	"fmt"

	"laydown/gen/air"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// place is where and how a print waits.
type place struct {
	storage     *shop.Storage
	temperature quantity.Temperature
	humidity    quantity.Fraction
	airSpeed    quantity.Speed
	vapour      quantity.Density // carrier already in the air
	// backShut closes the print's back whatever the medium and the storage
	// say: it carries a film there, or is mounted.
	backShut bool
}

// in puts a storage into a room.
func in(room *shop.Room, storage *shop.Storage) place {
	return place{
		storage:     storage,
		temperature: room.Temperature.Best,
		humidity:    room.Humidity.Best,
		airSpeed:    room.AirSpeed.Best,
		vapour:      room.Vapour.Best,
	}
}

// makersPlace is the place that an ink's maker states the wait for.
func makersPlace(m shop.MakerWait, storage *shop.Storage) place {
	return place{
		storage:     storage,
		temperature: m.Temperature.Best,
		humidity:    m.Humidity.Best,
		airSpeed:    m.AirSpeed.Best,
	}
}

func airPressure(s *shop.Shop) (quantity.Pressure, error) {
	p, err := air.StandardPressure(s.Front.Altitude.Best)
	if err != nil {
		return 0, fmt.Errorf("altitude: %w", err)
	}
	return p, nil
}

// transfer returns the mass-transfer coefficients of the air at the face and
// at the back of a print of the given width, in m/s on the vapour's
// concentration; the back's is 0 where no air reaches it.
//
//   - hung, flat: laminar plate or natural convection, whichever is more
//     (package air);
//   - loose roll on end: an observed share of the same, not derived;
//   - tight roll, stack: diffusion along the gap to its two open ends, judged at
//     mid-width: h = 2·D_air·gap/(width/2)². It follows from D·gap·c″ = -q with
//     c = 0 at both ends. The gap serves the face and the back of its
//     neighbour; all of it is given to the face.
func (p place) transfer(inAir quantity.Diffusivity, width quantity.Length, pressure quantity.Pressure) (face, back quantity.Speed, err error) {
	st := p.storage
	if st.Kind == "tight-roll" || st.Kind == "stack" {
		half := float64(width) / 2
		return quantity.Speed(2 * float64(inAir) * float64(st.Gap.Best) / (half * half)), 0, nil
	}
	speed := max(p.airSpeed, st.AirSpeed.Best)
	face, err = air.FaceTransfer(speed, st.Length.Best, inAir, p.temperature, pressure)
	if err != nil {
		return 0, 0, err
	}
	if st.Kind == "loose-roll" {
		face *= quantity.Speed(st.Draught.Best)
	}
	if st.BackOpen && !p.backShut {
		back = face
	}
	return face, back, nil
}
