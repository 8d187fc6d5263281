package book

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"laydown/gen/tables"
)

// verificationPage is the proof of the numbers: every published value with what
// this build computed for it, and every prediction with what came of it.
type verificationPage struct {
	Values, Sources int
	Read, Memory    int // published or computed elsewhere, and from memory
	Unmet           int
	Hits, Misses    int
	Predictions     []predictionGroup
	Parts           []verifiedPart
}

// predictionGroup is the predictions of one kind, as chapters show them.
type predictionGroup struct {
	ID, Heading string
	Table       demoTable
}

// verifiedPart is the published values that one package computes.
type verifiedPart struct {
	ID, Name string
	Path     string // of its own page
	Sources  []verifiedSource
}

type verifiedSource struct {
	ID, Title, Where string
	Rows             []verifiedRow
	Nearest          string // how much of its tolerance the worst value uses up
}

type verifiedRow struct {
	What, Given, Published, Got, Off, Tolerance, Unit, Status string
	Holds                                                     bool
}

// partNames are what the packages that compute published values are about, in
// the order of the page.
var partNames = []struct{ pkg, name string }{
	{"air", "Air, vapour and mass transfer"},
	{"paper", "Water in paper"},
	{"drying", "Drying"},
	{"nip", "Heat in the nip"},
	{"cooling", "Cooling"},
	{"curl", "Curl and lines"},
	{"stack", "Stacks"},
	{"bond", "Bond and flow"},
	{"roll", "Rolls, sheets and arithmetic"},
	{"vent", "Vapour in the room"},
	{"faults", "Fault keys"},
}

// Met is how many published values are reproduced, Told how many expectations there are.
func (p verificationPage) Met() int  { return p.Values - p.Unmet }
func (p verificationPage) Told() int { return p.Hits + p.Misses }

func (b *builder) verificationPage() {
	list, err := tables.Verification()
	if err != nil {
		b.fault("verification.html", err)
		return
	}
	p := verificationPage{Sources: len(list), Unmet: len(tables.Unmet(list))}
	for _, part := range partNames {
		v := verifiedPart{ID: part.pkg, Name: part.name, Path: "verification/" + part.pkg + ".html"}
		for _, s := range list {
			if s.Package == part.pkg {
				v.Sources = append(v.Sources, verified(s))
			}
		}
		if len(v.Sources) > 0 {
			p.Parts = append(p.Parts, v)
			b.add(page{Path: v.Path, Kind: "proofs", Title: "Proof: " + lowerFirst(part.name), Lead: "Each published value with what this edition computes for it.", Tab: "Tables", Data: v})
		}
	}
	for _, s := range list {
		p.Values += len(s.Checks)
		for _, c := range s.Checks {
			if c.Status == "from memory" {
				p.Memory++
			} else {
				p.Read++
			}
		}
	}
	p.Predictions = b.predictions()
	for _, g := range p.Predictions {
		for _, r := range g.Table.Rows {
			if r.Hit {
				p.Hits++
			} else {
				p.Misses++
			}
		}
	}
	b.add(page{Path: "verification.html", Kind: "verification", Title: "Proof of the numbers",
		Lead: "Published values and what this edition computes for them; what the trade expects, and what came out.",
		Tab:  "Tables", Data: p, Found: "list", Also: []string{"verification", "published values", "can I trust it"}})
}

// verified writes one source's checks.
func verified(s tables.Verified) verifiedSource {
	worst := 0.0
	v := verifiedSource{ID: slug(strings.TrimSuffix(strings.TrimPrefix(s.File, "published/"), ".yaml")), Title: s.Title, Where: s.Where}
	for _, c := range s.Checks {
		places := placesFor(c.Tolerance)
		r := verifiedRow{What: c.What, Unit: c.Unit, Status: c.Status, Holds: c.Holds(),
			Published: number(c.Expect, places), Got: number(c.Got, places), Off: signed(c.Deviation(), places), Tolerance: "±\u00a0" + strconv.FormatFloat(c.Tolerance, 'g', 2, 64)}
		if c.Of != "" {
			r.What += ", " + c.Of
		}
		var given []string
		for _, key := range slices.Sorted(maps.Keys(c.Given)) {
			given = append(given, fmt.Sprintf("%s %s", key, strconv.FormatFloat(c.Given[key], 'g', 6, 64)))
		}
		r.Given = strings.Join(given, ", ")
		v.Rows = append(v.Rows, r)
		if c.Tolerance > 0 {
			worst = max(worst, math.Abs(c.Deviation())/c.Tolerance)
		}
	}
	v.Nearest = fmt.Sprintf("%.0f\u00a0%%", math.Ceil(worst*100-1e-9))
	return v
}

// placesFor is how many decimals show a deviation within a tolerance: one more
// than the tolerance's first digit.
func placesFor(tolerance float64) int {
	if !(tolerance > 0) {
		return 6
	}
	return max(0, int(math.Ceil(-math.Log10(tolerance)))+1)
}

// number writes a value with some decimals, and with a power of ten where that
// would be long.
func number(v float64, places int) string {
	if size := math.Abs(v); size != 0 && (size < 1e-3 || size >= 1e7) {
		digits := places + int(math.Floor(math.Log10(size)))
		return strings.Replace(strconv.FormatFloat(v, 'e', max(0, min(digits, 12)), 64), "-", "−", 1)
	}
	return strings.Replace(strconv.FormatFloat(v, 'f', min(places, 10), 64), "-", "−", 1)
}

// signed is a deviation; one that rounds away is a plain 0.
func signed(v float64, places int) string {
	text := strconv.FormatFloat(v, 'f', min(places, 10), 64)
	if strings.Trim(text, "-0.") == "" {
		return "0"
	}
	if v > 0 {
		return "+" + number(v, places)
	}
	return number(v, places)
}

// predictions lists every prediction of the data beside what came of it.
func (b *builder) predictions() []predictionGroup {
	var groups []predictionGroup
	waits, err := b.demoRows()
	if err != nil {
		b.fault("verification.html", err)
		return nil
	}
	windows, err := b.windowRows()
	if err != nil {
		b.fault("verification.html", err)
		return nil
	}
	claims, err := b.claimRows()
	if err != nil {
		b.fault("verification.html", err)
		return nil
	}
	for _, g := range []struct {
		id, heading, title string
		rows               []demoRow
	}{
		{"predicted-waits", "Waits", "Prints", waits},
		{"predicted-windows", "Temperature windows", "Windows", windows},
		{"predicted-laminates", "After the nip", "Laminates", claims},
	} {
		if len(g.rows) > 0 {
			groups = append(groups, predictionGroup{g.id, g.heading, demoTable{ID: g.id + "-table", Title: g.title, Rows: g.rows}})
		}
	}
	return groups
}
