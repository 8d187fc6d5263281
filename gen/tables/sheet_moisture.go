package tables

import (
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// SheetMoisture is what a sheet in balance with a room holds, and what that means
// under a hot film.
type SheetMoisture struct {
	Medium   string
	Moisture quantity.Fraction // water over dry mass, of the sheet, or of the coat over a sealed back
	Sealed   bool              // it is the coat's: what lies under it does not matter
	// Swells is the bond line temperature from which air and steam swell too far
	// under the film; Limited says that there is one below the isotherms' end.
	Swells  quantity.Temperature
	Limited bool
}

// MoistureIn computes the moisture of each medium that takes up water, in balance
// with a room, in the data's order.
func (t *Tables) MoistureIn(room *shop.Room) ([]SheetMoisture, error) {
	var list []SheetMoisture
	for _, m := range t.shop.Media {
		g, err := t.gasOf(m, room.Humidity.Best, room.Temperature.Best)
		if err != nil {
			return nil, err
		}
		if g.moisture > 0 {
			list = append(list, SheetMoisture{m.ID, g.moisture, g.sealed, g.temperature, g.holds})
		}
	}
	return list, nil
}
