package tables

import (
	"encoding/csv"
	"io"
	"math"
	"strconv"
	"strings"

	"laydown/gen/quantity"
)

// WriteStacksCSV writes stacks one a line: depths in mm, times in days, each the least,
// the best and the most.
func WriteStacksCSV(w io.Writer, list []StackValue) error {
	out := csv.NewWriter(w)
	head := []string{"medium", "from", "to", "border"}
	for _, after := range StackTimes {
		name := strings.ReplaceAll(quantity.In(after, "h"), "\u00a0", "_")
		name = "after_" + strings.ReplaceAll(name, " ", "_")
		for _, end := range []string{"least", "best", "most"} {
			head = append(head, name+"_half_mm_"+end)
		}
		head = append(head, name+"_tenth_mm_best")
	}
	for _, size := range []string{"sheet", "a4"} {
		for _, end := range []string{"least", "best", "most"} {
			head = append(head, "even_"+size+"_days_"+end)
		}
	}
	out.Write(head)
	for _, v := range list {
		row := []string{v.Medium, v.From, v.To, v.Border()}
		for _, b := range v.Borders {
			least, most := b.Half.Range()
			row = append(row, millimetres(least), millimetres(b.Half.Best), millimetres(most), millimetres(b.Tenth.Best))
		}
		for _, e := range v.Even {
			least, most := e.Time.Range()
			row = append(row, days(least), days(e.Time.Best), days(most))
		}
		out.Write(row)
	}
	out.Flush()
	return out.Error()
}

// Border is what happens to the border: "damp" or "dry".
func (v StackValue) Border() string {
	if v.Damper {
		return "damp"
	}
	return "dry"
}

func millimetres(l quantity.Length) string {
	if math.IsInf(float64(l), 1) {
		return ""
	}
	return number(l.Millimetres(), 1)
}

// days writes a time in days; nothing beyond a hundred years.
func days(t quantity.Time) string {
	if math.IsInf(float64(t), 1) {
		return ""
	}
	return strconv.FormatFloat(digits(t.Hours()/24, 3), 'f', -1, 64)
}

// bandJSON is the least, the best and the most of an answer; null where there is none.
type bandJSON struct {
	Least *float64 `json:"least"`
	Best  *float64 `json:"best"`
	Most  *float64 `json:"most"`
}

func inBand[Q quantity.Quantity](b Band[Q], tell func(Q) float64) bandJSON {
	least, most := b.Range()
	one := func(q Q) *float64 {
		if math.IsInf(float64(q), 0) {
			return nil
		}
		x := tell(q)
		return &x
	}
	return bandJSON{one(least), one(b.Best), one(most)}
}

func inMillimetres(l quantity.Length) float64 { return rounded(l.Millimetres(), 2) }
func inHours(t quantity.Time) float64         { return digits(t.Hours(), 4) }

type borderJSON struct {
	After float64  `json:"after_hours"`
	Half  bandJSON `json:"half_mm"`
	Tenth bandJSON `json:"tenth_mm"`
}

type evenJSON struct {
	Size string   `json:"size"`
	Time bandJSON `json:"hours"`
}

// WriteStacksJSON writes the table of stacks.
func WriteStacksJSON(w io.Writer, list []StackValue) error {
	return writeLines(w, "stacks", len(list), func(i int) any {
		v := list[i]
		var borders []borderJSON
		for _, b := range v.Borders {
			borders = append(borders, borderJSON{rounded(b.After.Hours(), 2), inBand(b.Half, inMillimetres), inBand(b.Tenth, inMillimetres)})
		}
		var even []evenJSON
		for _, e := range v.Even {
			even = append(even, evenJSON{e.Size, inBand(e.Time, inHours)})
		}
		return struct {
			Medium  string       `json:"medium"`
			From    string       `json:"from"`
			To      string       `json:"to"`
			Border  string       `json:"border"`
			Borders []borderJSON `json:"borders"`
			Even    []evenJSON   `json:"even"`
		}{v.Medium, v.From, v.To, v.Border(), borders, even}
	})
}

// WriteAcclimatiseCSV writes how long parcels stay wrapped, in hours.
func WriteAcclimatiseCSV(w io.Writer, list []AcclimatiseValue) error {
	out := csv.NewWriter(w)
	out.Write([]string{"medium", "parcel", "room", "volume_m3", "colder_k", "hours_least", "hours_best", "hours_most", "faces_alone_hours"})
	for _, v := range list {
		least, most := v.Time.Range()
		out.Write([]string{v.Medium, v.Parcel, v.Room, number(float64(v.Volume()), 3), number(float64(v.Colder), 1),
			decimal(least), decimal(v.Time.Best), decimal(most), decimal(v.Faces)})
	}
	out.Flush()
	return out.Error()
}

// WriteAcclimatiseJSON writes the table of parcels.
func WriteAcclimatiseJSON(w io.Writer, list []AcclimatiseValue) error {
	return writeLines(w, "acclimatise", len(list), func(i int) any {
		v := list[i]
		return struct {
			Medium string     `json:"medium"`
			Parcel string     `json:"parcel"`
			Room   string     `json:"room"`
			Size   [3]float64 `json:"size_mm"`
			Colder float64    `json:"colder_k"`
			Time   bandJSON   `json:"hours"`
			Faces  float64    `json:"faces_alone_hours"`
		}{v.Medium, v.Parcel, v.Room, [3]float64{inMillimetres(v.Length), inMillimetres(v.Width), inMillimetres(v.Height)},
			rounded(float64(v.Colder), 1), inBand(v.Time, inHours), inHours(v.Faces)}
	})
}

// WriteDrivenCSV writes where first blisters lie, in mm from the leading edge; nothing
// where none lies on the sheet.
func WriteDrivenCSV(w io.Writer, list []DrivenValue) error {
	out := csv.NewWriter(w)
	shares := DrivenShares()
	share := func(s quantity.Fraction) string {
		return "first_mm_at_share_" + strconv.FormatFloat(float64(s), 'f', -1, 64)
	}
	out.Write([]string{"medium", "film", "laminator", "from", "to", "set_c", "limit_humidity_percent", "blisters_at_all",
		"first_mm_nothing_driven", share(shares.Low), share(shares.Best), share(shares.High)})
	for _, v := range list {
		out.Write([]string{v.Medium, v.Film, v.Laminator, v.From, v.To, number(v.Set.Celsius(), 0), number(v.Humidity.Percent(), 0), strconv.FormatBool(!v.Free),
			millimetres(v.Still), millimetres(v.First.Low), millimetres(v.First.Best), millimetres(v.First.High)})
	}
	out.Flush()
	return out.Error()
}

type firstJSON struct {
	Share float64  `json:"share"`
	First *float64 `json:"first_mm"`
}

// WriteDrivenJSON writes the table of first blisters.
func WriteDrivenJSON(w io.Writer, list []DrivenValue) error {
	shares := DrivenShares()
	return writeLines(w, "driven-ahead", len(list), func(i int) any {
		v := list[i]
		var firsts []firstJSON
		for _, one := range []struct {
			share quantity.Fraction
			at    quantity.Length
		}{{0, v.Still}, {shares.Low, v.First.Low}, {shares.Best, v.First.Best}, {shares.High, v.First.High}} {
			f := firstJSON{Share: float64(one.share)}
			if !math.IsInf(float64(one.at), 1) {
				x := rounded(one.at.Millimetres(), 1)
				f.First = &x
			}
			firsts = append(firsts, f)
		}
		return struct {
			Medium    string      `json:"medium"`
			Film      string      `json:"film"`
			Laminator string      `json:"laminator"`
			From      string      `json:"from"`
			To        string      `json:"to"`
			Set       float64     `json:"set_c"`
			Limit     float64     `json:"limit_moisture"`
			Humidity  float64     `json:"limit_humidity"`
			Free      bool        `json:"never_up_to_that,omitempty"`
			Edge      float64     `json:"edge_moisture"`
			Core      float64     `json:"core_moisture"`
			Firsts    []firstJSON `json:"first_blister"`
		}{v.Medium, v.Film, v.Laminator, v.From, v.To, rounded(v.Set.Celsius(), 0), rounded(float64(v.Limit), 4), rounded(float64(v.Humidity), 3), v.Free,
			rounded(float64(v.Edge), 4), rounded(float64(v.Core), 4), firsts}
	})
}
