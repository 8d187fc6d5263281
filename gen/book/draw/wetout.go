package draw

import "html/template"

// Fill is how far an adhesive has come down into a print's relief at a moment.
type Fill struct {
	Name  string
	Share float64 // of the depth, 0 to 1
	Said  string
}

// WetOut draws the same valley of a print at several moments: film, adhesive, and
// what air is left under it.
func WetOut(id, title, depth, width string, fills []Fill) template.HTML {
	const (
		wide, apart = 210.0, 30.0
		top, film   = 34.0, 18.0
		adhesive    = 34.0
		deep        = 60.0 // the valley
		sheet       = 46.0
	)
	said := ""
	for i, f := range fills {
		if i > 0 {
			said += "; "
		}
		said += f.Name + ", " + f.Said
	}
	var v canvas
	height := top + film + adhesive + deep + sheet + 52
	v.open(id, "section", chartWidth, height, title, "Cuts through a valley "+depth+" deep and "+width+" wide. "+said+".")
	for i, f := range fills {
		x := 2 + float64(i)*(wide+apart)
		v.text("label", "start", x, 16, f.Name)
		hatch(&v, FilmMatter, x, top, wide, film)
		face := top + film + adhesive // the hills of the print
		floor := face + deep
		left, right := x+50, x+wide-50
		low := face + deep*f.Share
		hatch(&v, AdhesiveMatter, left, top+film, right-left, low-top-film)
		hatch(&v, AdhesiveMatter, x, top+film, left-x, adhesive)
		hatch(&v, AdhesiveMatter, right, top+film, x+wide-right, adhesive)
		v.rect("solid", x, face, left-x, floor-face)
		v.rect("solid", right, face, x+wide-right, floor-face)
		hatch(&v, FibreMatter, x, floor, wide, sheet)
		if f.Share < 0.98 {
			v.text("tick", "middle", (left+right)/2, (low+floor)/2+5, "air")
		}
		v.text("tick", "start", x, floor+sheet+20, f.Said)
	}
	v.text("tick", "start", 2, height-8, "valley "+depth+" deep, "+width+" wide; not to scale")
	return v.close()
}
