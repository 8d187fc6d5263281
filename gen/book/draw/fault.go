package draw

import (
	"html/template"
	"slices"
)

// The measures of a drawing of a fault, in units of its view box. It is small,
// so that a dozen stand on one sheet.
const (
	faultWidth  = 240.0
	faultHeight = 180.0
)

// fault is one drawing of how a fault looks: what it is called, what is to be
// seen on it, and how it is drawn.
type fault struct {
	name, title, desc string
	draw              func(v *canvas)
}

// Fault draws how a fault looks. The id is the prefix of the drawing's ids,
// unique on the page. An unknown name gives nothing, and false.
func Fault(id, name string) (template.HTML, bool) {
	for _, f := range faults {
		if f.name != name {
			continue
		}
		var v canvas
		v.open(id, "fault", faultWidth, faultHeight, f.title, f.desc)
		f.draw(&v)
		return v.close(), true
	}
	return "", false
}

// FaultShape is the height of the drawings of faults over their width.
const FaultShape = faultHeight / faultWidth

// FaultNames lists the drawings of faults by name, in order.
func FaultNames() []string {
	names := make([]string, len(faults))
	for i, f := range faults {
		names[i] = f.name
	}
	slices.Sort(names)
	return names
}

// faults are all the drawings of faults. Where a piece is seen from above it
// has left the nip to the right, so its lead edge is the right one.
var faults = slices.Concat(bubbleFaults, clarityFaults, markFaults, curlFaults, wrinkleFaults, liftFaults, damageFaults)
