package book

import (
	"fmt"
	"html/template"
	"slices"

	"laydown/gen/book/draw"
	"laydown/gen/shop"
)

// noticeCharts are the charts in words that the shop has written: a row for each step.
func (b *builder) noticeCharts() []wallChart {
	var list []wallChart
	for _, n := range b.shop.Front.Charts.Notices {
		c := wallChart{Kind: "notice-" + slug(n.Name), Title: n.Name, Where: n.Where, Advice: n.Advice, First: "Step", Names: "the rest"}
		for i, s := range n.Steps {
			r := chartRow{Name: s.Do, Under: s.How}
			if n.Counted {
				r.Name = fmt.Sprintf("%d\u00a0\u00a0%s", i+1, s.Do)
			}
			c.Rows = append(c.Rows, r)
		}
		if slices.ContainsFunc(n.Steps, func(s shop.Step) bool { return s.Picture != "" }) {
			for _, s := range n.Steps {
				c.Pictures = append(c.Pictures, b.grainPicture(c.Kind, s.Picture))
			}
		}
		if caution := b.shop.Caution(n.Caution.ID); caution != nil {
			c.Hazard, c.HazardText = caution.Name+".", caution.Says
		}
		list = append(list, c)
	}
	return list
}

// grainPicture is a step's picture; none where it asks for none.
func (b *builder) grainPicture(kind, name string) template.HTML {
	if name == "" {
		return ""
	}
	svg, ok := draw.GrainPicture(kind+"-"+name, name)
	if !ok {
		b.fault("charts/"+kind, fmt.Errorf("there is no picture %q", name))
	}
	return svg
}

// cautionChart is the chart of the cautions that the shop lists. False where it lists
// none.
func (b *builder) cautionChart() (wallChart, bool) {
	c := wallChart{Kind: "cautions", Title: "Cautions", First: "Caution", Where: "For whoever works here. Stop and ask before you take a risk.",
		Advice: "An emergency stop is not a guard. What is usual stands here; the maker’s manual, local codes and the people licensed for the work come first.",
		Names:  "the rest"}
	for _, ref := range b.shop.Front.Charts.Cautions {
		if caution := b.shop.Caution(ref.ID); caution != nil {
			c.Rows = append(c.Rows, chartRow{Name: caution.Name, Under: caution.Says})
		}
	}
	return c, len(c.Rows) > 0
}
