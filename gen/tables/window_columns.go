package tables

import (
	"encoding/json"
	"io"
	"math"
	"slices"

	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// windowColumns are the columns of the compact table. The first five count in the
// lists beside it. The spans are in whole °C; a span whose low is above its high is
// no window. Then come the set temperatures in tenths of a °C at which each limit is
// met, first piece and steady run; null where a limit does not hold.
var windowColumns = []string{"film", "medium", "laminator", "speed", "room",
	"first_low_c", "first_high_c", "steady_low_c", "steady_high_c",
	"first_activation_dc", "first_film_dc", "first_medium_dc", "first_gas_dc",
	"steady_activation_dc", "steady_film_dc", "steady_medium_dc", "steady_gas_dc"}

type (
	filmColumn struct {
		ID         string   `json:"id"`
		Activation *float64 `json:"activation_c"`
		Limit      *float64 `json:"limit_c"`
	}
	mediumColumn struct {
		ID    string   `json:"id"`
		Limit *float64 `json:"limit_c"`
		// Moisture and Gas are room by room: what the sheet holds, and the bond line
		// from which air and steam swell too far.
		Moisture []*float64 `json:"moisture"`
		Gas      []*float64 `json:"gas_c"`
		Swelling float64    `json:"swelling_allowed,omitempty"`
	}
	machineColumn struct {
		ID      string    `json:"id"`
		Speeds  []float64 `json:"speeds_m_min"`
		Hottest float64   `json:"hottest_c"`
	}
	roomColumn struct {
		ID          string  `json:"id"`
		Temperature float64 `json:"temperature_c"`
		Humidity    float64 `json:"humidity"`
	}
)

// WriteWindowColumns writes the whole table of windows in little room: lists of what
// occurs, then a row of whole numbers for each window.
func (t *Tables) WriteWindowColumns(w io.Writer, windows []WindowValue) error {
	var films []filmColumn
	var media []mediumColumn
	var machines []machineColumn
	var rooms []roomColumn
	film, medium, machine, room := map[string]int{}, map[string]int{}, map[string]int{}, map[string]int{}
	for _, r := range t.shop.Rooms {
		room[r.ID] = len(rooms)
		rooms = append(rooms, roomColumn{r.ID, rounded(r.Temperature.Best.Celsius(), 2), rounded(float64(r.Humidity.Best), 4)})
	}
	for _, v := range windows {
		if _, ok := film[v.Film]; !ok {
			film[v.Film] = len(films)
			f := t.shop.Film(v.Film)
			films = append(films, filmColumn{f.ID, celsiusOf(f.Activation), celsiusOf(f.HeatLimit)})
		}
		if _, ok := medium[v.Medium]; !ok {
			medium[v.Medium] = len(media)
			m := t.shop.Medium(v.Medium)
			c := mediumColumn{ID: m.ID, Limit: celsiusOf(m.HeatLimit)}
			for _, r := range t.shop.Rooms {
				g, err := t.gasOf(m, r.Humidity.Best, r.Temperature.Best)
				if err != nil {
					return err
				}
				c.Moisture = append(c.Moisture, some(g.moisture > 0, rounded(float64(g.moisture), 5)))
				c.Gas = append(c.Gas, some(g.holds, rounded(g.temperature.Celsius(), 2)))
				c.Swelling = g.ratio
			}
			media = append(media, c)
		}
		if _, ok := machine[v.Laminator]; !ok {
			machine[v.Laminator] = len(machines)
			m := t.shop.Laminator(v.Laminator)
			c := machineColumn{ID: m.ID, Hottest: rounded(m.Hottest.Best.Celsius(), 2)}
			for _, s := range Speeds(m) {
				c.Speeds = append(c.Speeds, rounded(quantity.Number(s, "m/min"), 3))
			}
			machines = append(machines, c)
		}
	}
	head, err := json.Marshal(struct {
		Table      string          `json:"table"`
		Films      []filmColumn    `json:"films"`
		Media      []mediumColumn  `json:"media"`
		Laminators []machineColumn `json:"laminators"`
		Rooms      []roomColumn    `json:"rooms"`
		Columns    []string        `json:"columns"`
	}{"windows", films, media, machines, rooms, windowColumns})
	if err != nil {
		return err
	}
	if _, err := w.Write(append(head[:len(head)-1], ",\n\"rows\":[\n"...)); err != nil {
		return err
	}
	for i, v := range windows {
		speed := slices.Index(Speeds(t.shop.Laminator(v.Laminator)), v.Speed)
		f, s := v.Spans()
		row := []*int{whole(film[v.Film]), whole(medium[v.Medium]), whole(machine[v.Laminator]), whole(speed), whole(room[v.Room]),
			degree(f.Low), degree(f.High), degree(s.Low), degree(s.High)}
		row = append(append(row, tenths(v.FirstBounds)...), tenths(v.SteadyBounds)...)
		line, err := json.Marshal(row)
		if err != nil {
			return err
		}
		if i < len(windows)-1 {
			line = append(line, ',')
		}
		if _, err := w.Write(append(line, '\n')); err != nil {
			return err
		}
	}
	_, err = io.WriteString(w, "]}\n")
	return err
}

// tenths are the set temperatures at which the limits are met, in tenths of a °C, in
// the order of the columns.
func tenths(list []Bound) []*int {
	var out []*int
	for _, limit := range []string{"activation", "film", "medium", "gas"} {
		i := slices.IndexFunc(list, func(b Bound) bool { return b.Limit == limit })
		if i < 0 {
			out = append(out, nil)
			continue
		}
		out = append(out, whole(int(math.Round(list[i].Temperature.Celsius()*10))))
	}
	return out
}

func whole(n int) *int { return &n }

func degree(celsius float64) *int { return whole(int(math.Round(celsius))) }

// some is a number where there is one.
func some(there bool, v float64) *float64 {
	if !there {
		return nil
	}
	return &v
}

func celsiusOf(v shop.Value[quantity.Temperature]) *float64 {
	return some(v.Set, rounded(v.Best.Celsius(), 2))
}
