package book

import (
	"cmp"
	"encoding/json"
	"fmt"
	"html/template"
	"math"
	"slices"
	"strings"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// faultPage is one family of faults: how it looks, the key to its cure, and what is
// behind it.
type faultPage struct {
	Family   *shop.FaultFamily
	Script   string // file of the key for stepping through it
	Drawing  template.HTML
	Signs    []faultSign
	Said     string // how sure the key is
	Log      string // what stands behind the numbers
	Causes   []faultCause
	Steps    []faultStep
	StepSaid string
	Tree     template.HTML // the same as a drawing
	Checks   []faultAct
	Remedies []faultAct
	Caution  template.HTML
	Chart    string // the place of its wall chart in the list; empty where none hangs
	See      []way
}

type faultSign struct {
	ID, Name, Also, Looks, When, Where string
	Drawing                            template.HTML
}

type faultCause struct {
	ID, Name, Why, Prevent, Share, Behind string
}

type faultStep struct {
	Number          int
	Name, Do, Takes string
	Likely          string // the likeliest causes on coming here
	Answers         []faultAnswer
}

type faultAnswer struct {
	Says string
	Next int
	End  string // gone, or call for help
}

type faultAct struct {
	ID, Name, Do, Takes, Under string
}

// faultPages adds a page for each family of faults, the scripts that step through their
// keys, and the page that leads to them.
func (b *builder) faultPages() {
	keys, err := b.answers.FaultKeys()
	if err != nil {
		b.fault("faults/index.html", err)
		return
	}
	index := faultIndex{}
	for i := range keys {
		k := &keys[i]
		f := k.Family
		p := b.faultPage(k)
		index.Families = append(index.Families, faultEntry{Href: "/faults/" + f.ID + ".html", Name: f.Name, Looks: f.Looks, Drawing: b.faultDrawing("family-"+f.ID, f.Drawing), Also: signNames(f)})
		b.add(page{Path: "faults/" + f.ID + ".html", Kind: "fault", Title: f.Name, Lead: f.Looks, Tab: "Faults", Styles: []string{"faults.css"}, Scripts: []string{"key.js"}, Data: p,
			Found: "fault", Also: f.Also, Weight: 1.4})
		b.keyScript(k)
	}
	b.add(page{Path: "faults/index.html", Kind: "faults", Title: "A fault in hand", Lead: "Which of these does it look like? Each leads to the shortest way to a cure.", Tab: "Faults", Styles: []string{"faults.css"}, Data: index,
		Found: "list", Also: []string{"troubleshooting", "what went wrong", "problem", "defect"}})
}

// faultIndex is the page of all families.
type faultIndex struct{ Families []faultEntry }

type faultEntry struct {
	Href, Name, Looks, Also string
	Drawing                 template.HTML
}

func signNames(f *shop.FaultFamily) string {
	var names []string
	for _, s := range f.Signs {
		names = append(names, lowerFirst(s.Name))
	}
	return strings.Join(names, ", ")
}

func (b *builder) faultDrawing(id, name string) template.HTML {
	if name == "" {
		return ""
	}
	svg, ok := draw.Fault(id, name)
	if !ok {
		b.fault("faults/"+id, fmt.Errorf("there is no drawing %q", name))
	}
	return svg
}

func (b *builder) faultPage(k *tables.FaultKey) faultPage {
	f := k.Family
	p := faultPage{Family: f, Script: "key-" + f.ID + ".js", Drawing: b.faultDrawing("fault-"+f.ID, f.Drawing)}
	for _, s := range f.Signs {
		sign := faultSign{ID: s.ID, Name: s.Name, Also: strings.Join(s.Also, ", "), Looks: s.Looks, When: cmp.Or(s.When, f.When), Where: cmp.Or(s.Where, f.Where)}
		if s.Drawing != f.Drawing {
			sign.Drawing = b.faultDrawing("sign-"+s.ID, s.Drawing)
		}
		p.Signs = append(p.Signs, sign)
	}
	p.Said = keySaid(k)
	p.Log = keyLog(k)
	for _, c := range k.Ranked() {
		p.Causes = append(p.Causes, faultCause{ID: c.ID, Name: c.Name, Why: c.Why, Prevent: c.Prevent, Share: percent(c.Share), Behind: behind(c)})
	}
	printed := k.Printed()
	for i := range printed.Steps {
		p.Steps = append(p.Steps, toldStep(printed, &printed.Steps[i]))
	}
	p.StepSaid = fmt.Sprintf("It takes %s on the mean.", handTime(printed.Minutes))
	if k.Short != nil {
		p.StepSaid = fmt.Sprintf("It is the best key of so few steps that was found, and takes %s on the mean: %s more than the longer one above, which the page steps through.", handTime(printed.Minutes), handTime(max(printed.Minutes-k.Minutes, 0)))
	}
	p.Tree = draw.Key("key-"+f.ID, "Key: "+lowerFirst(f.Name), fmt.Sprintf("The %d steps of the key in numbers, as a tree from left to right.", len(printed.Steps)), keyNode(printed, 1))
	for _, c := range f.Checks {
		p.Checks = append(p.Checks, faultAct{c.ID, c.Name, c.Do, handTime(c.Takes.Best), ""})
	}
	for _, r := range f.Remedies {
		p.Remedies = append(p.Remedies, faultAct{r.ID, r.Name, r.Do, handTime(r.Takes.Best), r.Prevent})
	}
	p.Caution = b.familyCautions(f)
	if slices.ContainsFunc(b.shop.Front.Charts.Faults, func(r shop.Ref) bool { return r.ID == f.ID }) {
		p.Chart = chartPlace(f.Name, keyFor)
	}
	p.See = b.faultLinks(f)
	return p
}

// keySaid says how sure a key is and what it costs.
func keySaid(k *tables.FaultKey) string {
	said := fmt.Sprintf("On the mean it takes %s of hands and machine until the fault is gone or somebody is called", handTime(k.Minutes))
	if k.Exact {
		return said + fmt.Sprintf("; no order of these checks and remedies takes less (all %s states of knowledge were valued).", thousands(k.States))
	}
	return said + fmt.Sprintf("; no order of these checks and remedies can take less than %s (a proven bound).", handTime(k.Bound(quantity.Minute/2)))
}

func keyLog(k *tables.FaultKey) string {
	if k.Cases == 0 {
		return "Weights and chances are estimates; no case of the shop’s log counts here yet."
	}
	return fmt.Sprintf("Weights and chances are estimates, and %d cases of the shop’s log count beside them.", k.Cases)
}

func thousands(n int) string {
	text := fmt.Sprint(n)
	for i := len(text) - 3; i > 0; i -= 3 {
		text = text[:i] + "\u202f" + text[i:]
	}
	return text
}

// behind says what a cause's share rests on.
func behind(c tables.FaultCause) string {
	if c.Cases == 0 {
		return fmt.Sprintf("estimate, weight %g", c.Weight)
	}
	return fmt.Sprintf("estimate, weight %g, and %d logged", c.Weight, c.Cases)
}

func percent(x float64) string {
	if x > 0 && x < 0.005 {
		return "under 1\u00a0%"
	}
	return fmt.Sprintf("%.0f\u00a0%%", 100*x)
}

// handTime is a time of hands and machine, in whole minutes or half hours.
func handTime(t quantity.Time) string {
	switch m := t.Minutes(); {
	case m == 0:
		return "no time"
	case m < 1:
		return fmt.Sprintf("%.0f\u00a0s", 60*m)
	case m < 100:
		return fmt.Sprintf("%.3g\u00a0min", math.Round(m*2)/2)
	default:
		return fmt.Sprintf("%.2g\u00a0h", m/60)
	}
}

func toldStep(k *tables.FaultKey, s *tables.FaultStep) faultStep {
	step := faultStep{Number: s.Number, Name: s.Act.Name, Do: s.Act.Do, Takes: handTime(s.Act.Takes), Likely: likely(k, s.Belief, 3)}
	for _, a := range s.Answers {
		answer := faultAnswer{Says: a.Says, Next: a.Next}
		switch {
		case a.Help:
			answer.End = "call for help"
		case a.Next == 0:
			answer.End = "done: note the cause in the log"
		}
		step.Answers = append(step.Answers, answer)
	}
	return step
}

// keyNode is a printed key from a step on, remedies in turn gathered to one node.
func keyNode(k *tables.FaultKey, number int) draw.KeyNode {
	n := draw.KeyNode{Number: number}
	for {
		s := k.Step(number)
		if s == nil {
			n.End = "call for help"
			return n
		}
		if s.Act.Kind != tables.RemedyAct {
			n.Check = s.Act.Name
			for _, a := range s.Answers {
				n.Answers = append(n.Answers, draw.KeyAnswer{Says: a.Says, To: keyNode(k, a.Next)})
			}
			return n
		}
		n.Try = append(n.Try, s.Act.Name)
		next := 0
		for _, a := range s.Answers {
			if a.Next != 0 {
				next = a.Next
			}
		}
		number = next
	}
}

// likely names the n likeliest causes.
func likely(k *tables.FaultKey, belief []float64, n int) string {
	var parts []string
	for _, i := range k.Likeliest(belief, n) {
		if belief[i] < 0.02 {
			break
		}
		parts = append(parts, lowerFirst(k.Causes[i].Name)+" "+percent(belief[i]))
	}
	return strings.Join(parts, ", ")
}

// familyCautions are a family's cautions in one frame.
func (b *builder) familyCautions(f *shop.FaultFamily) template.HTML {
	var ids []string
	for _, ref := range f.Cautions {
		ids = append(ids, ref.ID)
	}
	return cautionFrame(b.cautionLines(ids))
}

// faultLinks lead to the chapters and tables that a family names.
func (b *builder) faultLinks(f *shop.FaultFamily) []way {
	var list []way
	for _, see := range f.See {
		name, heading, _ := strings.Cut(see, "#")
		c := b.chapter(name)
		if c == nil {
			continue
		}
		l := way{"/" + c.Page, c.Title}
		for _, h := range c.Headings {
			if h.ID == heading {
				l = way{l.Href + "#" + h.ID, c.Title + ": " + h.Text}
			}
		}
		list = append(list, l)
	}
	for _, t := range f.Tables {
		for _, p := range b.pages {
			if p.Path == "tables/"+t+".html" {
				list = append(list, way{"/" + p.Path, p.Title})
			}
		}
	}
	return list
}

// keyScript writes the key for stepping: what each act can show, and the steps as rows of
// act, minutes and acts from here on, next best act (-1 for none), by how many minutes it
// is dearer, and the step after each outcome: 0 where the matter ends, -1 for a call for
// help.
func (b *builder) keyScript(k *tables.FaultKey) {
	type outcomeJS struct {
		ID     string    `json:"id"`
		Says   string    `json:"says"`
		Chance []float64 `json:"chance"`
	}
	type actJS struct {
		Kind     string      `json:"kind"`
		Name     string      `json:"name"`
		Do       string      `json:"do"`
		Takes    string      `json:"takes"`
		Free     bool        `json:"free,omitempty"`
		Cautions []string    `json:"cautions,omitempty"`
		Outcomes []outcomeJS `json:"outcomes"`
	}
	data := struct {
		Causes   []string          `json:"causes"`
		IDs      []string          `json:"ids"`
		Prior    []float64         `json:"prior"`
		Cautions map[string]string `json:"cautions"`
		Acts     []actJS           `json:"acts"`
		Steps    [][]float64       `json:"steps"`
	}{Cautions: map[string]string{}}
	for _, c := range k.Causes {
		data.Causes = append(data.Causes, c.Name)
		data.IDs = append(data.IDs, c.ID)
		data.Prior = append(data.Prior, fixed(c.Share, 6))
	}
	number := map[string]int{}
	for i := range k.Acts {
		a := &k.Acts[i]
		number[a.Kind+a.ID] = i
		act := actJS{Kind: a.Kind, Name: a.Name, Do: a.Do, Takes: handTime(a.Takes), Free: a.Takes == 0}
		for _, id := range a.Cautions {
			if c := b.shop.Caution(id); c != nil {
				data.Cautions[id] = c.Name + ". " + c.Says
				act.Cautions = append(act.Cautions, id)
			}
		}
		for _, o := range a.Outcomes {
			outcome := outcomeJS{ID: o.ID, Says: o.Says}
			for _, q := range o.Chance {
				outcome.Chance = append(outcome.Chance, fixed(q, 5))
			}
			act.Outcomes = append(act.Outcomes, outcome)
		}
		data.Acts = append(data.Acts, act)
	}
	for i := range k.Steps {
		s := &k.Steps[i]
		row := []float64{float64(number[s.Act.Kind+s.Act.ID]), fixed(s.Minutes.Minutes(), 1), fixed(s.Acts, 1), -1, 0}
		if s.Instead != nil {
			row[3], row[4] = float64(number[s.Instead.Kind+s.Instead.ID]), fixed(max(s.Dearer.Minutes(), 0), 1)
		}
		for _, o := range s.Act.Outcomes {
			next := 0
			for _, a := range s.Answers {
				if a.ID == o.ID {
					next = a.Next
					if a.Help {
						next = -1
					}
				}
			}
			row = append(row, float64(next))
		}
		data.Steps = append(data.Steps, row)
	}
	text, err := json.Marshal(data)
	if err != nil {
		b.fault("script/key-"+k.Family.ID+".js", err)
		return
	}
	b.file("script/key-"+k.Family.ID+".js", fmt.Appendf(nil, "window.laydownKey(%s);\n", text))
}

// fixed rounds to some decimals.
func fixed(x float64, digits int) float64 {
	p := math.Pow(10, float64(digits))
	return math.Round(x*p) / p
}
