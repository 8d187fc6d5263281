package tables

import (
	"encoding/json"
	"fmt"

	"laydown/gen/drying"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// PlanShards makes the scripts that the plan page answers from: one for what
// every job needs, one for each ink (how it dries) and two for each medium
// (what heat does on it, and what comes after the nip). Each calls a function of the page's own
// script with plain data. All numbers are computed here; the page multiplies
// the modes of the storages through a print's history.
//
// The keys are file names without their folder.
func (t *Tables) PlanShards() (map[string][]byte, error) {
	shards := map[string][]byte{}
	put := func(name, function string, data any) error {
		b, err := json.Marshal(data)
		if err != nil {
			return err
		}
		shards[name] = fmt.Appendf(nil, "window.laydownPlan.%s(%s);\n", function, b)
		return nil
	}
	if err := put("plan-data.js", "common", t.commonShard()); err != nil {
		return nil, err
	}
	pairings := t.pairings()
	for _, medium := range t.shop.Media {
		s, err := t.heatShard(medium, pairings)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", medium.ID, err)
		}
		if err := put("heat-"+medium.ID+".js", "heat", s); err != nil {
			return nil, err
		}
	}
	laminates, err := t.laminateShards()
	if err != nil {
		return nil, err
	}
	for _, s := range laminates {
		if err := put("laminate-"+s.Medium+".js", "laminate", s); err != nil {
			return nil, err
		}
	}
	for _, ink := range t.shop.Inks {
		s, err := t.inkShard(ink)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", ink.ID, err)
		}
		if err := put("plan-"+ink.ID+".js", "ink", s); err != nil {
			return nil, err
		}
	}
	return shards, nil
}

type commonShard struct {
	Defaults   map[string]string `json:"defaults"`
	Phrases    map[string]string `json:"phrases"`
	Verdicts   []Verdict         `json:"verdicts"`
	Inks       []inkJS           `json:"inks"`
	Media      []mediumJS        `json:"media"`
	Films      []filmJS          `json:"films"`
	Laminators []laminatorJS     `json:"laminators"`
	Rooms      []roomJS          `json:"rooms"`
	Storages   []storageJS       `json:"storages"`
	Rules      []ruleJS          `json:"rules"`
	Cautions   map[string]string `json:"cautions"`
	Feeds      map[string]string `json:"feeds"`
	Hardly     float64           `json:"hardly_h"`
	Causes     []causeJS         `json:"causes"` // those of all families of faults that name a physics
	Locked     float64           `json:"locked_h"`
	// Steps are the humidities of a measured stack, Limits the words for what
	// bounds a window: its lowest, then the highest ones in the order of their codes.
	Steps  []float64         `json:"humidity_steps"`
	Limits []string          `json:"limits"`
	Words  map[string]string `json:"limit_words"`
	// Work is what a job takes beside the running; null where the shop does not say.
	Work *workJS `json:"work"`
}

// workJS is the shop's work, in seconds and metres.
type workJS struct {
	SetUp   float64 `json:"set_up_s"`
	Feeding float64 `json:"feeding_s"`
	Trim    float64 `json:"trim_s"`
	Gap     float64 `json:"gap_m"`
	Border  float64 `json:"border_m"`
	Spoils  float64 `json:"spoils"`
}

type causeJS struct {
	Family  string  `json:"family"`
	ID      string  `json:"id"`
	Text    string  `json:"text"`
	Physics string  `json:"physics"`
	Share   float64 `json:"share"`
}

type namedJS struct {
	ID   string `json:"id"`
	Name string `json:"name"`
}

type roomJS struct {
	namedJS
	Humidity float64 `json:"humidity"`
}

type inkJS struct {
	namedJS
	Class string   `json:"class"`
	Maker float64  `json:"maker_h"`
	Least float64  `json:"least_h"`
	Tests []string `json:"tests"`
}

type mediumJS struct {
	namedJS
	Class     string   `json:"class"`
	Inks      []string `json:"inks"`
	Forms     []string `json:"forms"`
	Grain     bool     `json:"grain"`
	Width     float64  `json:"width_m"`
	Length    float64  `json:"length_m"` // 0: a roll
	Thickness float64  `json:"thickness_m"`
}

type filmJS struct {
	namedJS
	Class     string   `json:"class"`
	Thickness float64  `json:"thickness_m"`
	RunsOn    []string `json:"runs_on"`
	Safe      *float64 `json:"safe"`   // g/m²; null: the ink's own
	Rest      *float64 `json:"rest_s"` // null: not stated
	// Pass is how freely a carrier passes the film, 1 over the sum of its layers'
	// thickness over mobility, in 1/m; 0: not at all, null: not known.
	Pass *float64 `json:"pass"`
}

type laminatorJS struct {
	namedJS
	Films   []string  `json:"films"`
	Forms   []string  `json:"forms"`
	Width   float64   `json:"width_m"`
	Opening float64   `json:"opening_m"` // 0: not stated
	Slowest float64   `json:"slowest"`   // m/s
	Fastest float64   `json:"fastest"`
	Speeds  []float64 `json:"speeds"` // for which windows are held
	Usual   int       `json:"usual"`  // which of them is the usual
	Heated  bool      `json:"heated"`
	WarmUp  float64   `json:"warm_up_s"`
	// Overlaps is true where sheets overlap under the film: no gap, no border.
	Overlaps bool `json:"overlaps"`
}

type storageJS struct {
	namedJS
	Forms []string `json:"forms"`
}

type ruleJS struct {
	Films         []string `json:"films"`
	FilmIDs       []string `json:"film_ids"`
	Inks          []string `json:"inks"`
	InkClasses    []string `json:"ink_classes"`
	Media         []string `json:"media"`
	MediumClasses []string `json:"medium_classes"`
	Coverages     []string `json:"coverages"`
	Verdict       string   `json:"verdict"`
	Why           string   `json:"why"`
	Source        string   `json:"source"`
}

func (t *Tables) commonShard() commonShard {
	front := t.shop.Front
	c := commonShard{
		Defaults: map[string]string{"room": front.Room.ID, "laminator": front.Laminator.ID, "storage": front.Storage.ID},
		Phrases:  phrases, Verdicts: Verdicts, Cautions: t.cautionTexts(), Feeds: feedTexts,
		Hardly: HardlyDries.Hours(), Locked: LockedIn.Hours(), Limits: limitNames, Words: limitWords,
	}
	for _, cause := range t.physicalCauses() {
		c.Causes = append(c.Causes, causeJS{cause.Family, cause.Cause, cause.Text, cause.physics, cause.share})
	}
	if w := front.Work; w != nil {
		c.Work = &workJS{float64(w.SetUp.Best), float64(w.Feeding.Best), float64(w.Trim.Best), float64(w.Gap.Best), float64(w.Border.Best), float64(w.Spoils.Best)}
	}
	for _, h := range humiditySteps {
		c.Steps = append(c.Steps, float64(h))
	}
	for _, i := range t.shop.Inks {
		c.Inks = append(c.Inks, inkJS{namedJS{i.ID, i.Name}, i.Class, i.Makers.Wait.Best.Hours(), least(i).Hours(), i.ReadyTests})
	}
	for _, m := range t.shop.Media {
		c.Media = append(c.Media, mediumJS{namedJS{m.ID, m.Name}, m.Class, ids(m.Inks), m.Forms, m.HasGrain,
			float64(m.Width.Best), float64(m.SheetLength.Best), float64(m.Thickness.Best)})
	}
	for _, f := range t.shop.Films {
		j := filmJS{namedJS{f.ID, f.Name}, f.Class, float64(f.BaseThickness.Best + f.AdhesiveThickness.Best), ids(f.RunsOn), nil, nil, t.passes(f)}
		if f.Rest.Set {
			rest := float64(f.Rest.Best)
			j.Rest = &rest
		}
		if f.Safe.Set {
			g := grams(f.Safe.Best)
			j.Safe = &g
		}
		c.Films = append(c.Films, j)
	}
	for _, m := range t.shop.Laminators {
		c.Laminators = append(c.Laminators, laminatorJS{namedJS{m.ID, m.Name}, m.Films, m.Forms, float64(m.Width.Best),
			float64(m.Opening.Best), float64(m.Slowest.Best), float64(m.Fastest.Best), nil, 0, heated(m), float64(m.WarmUp.Best), overlaps(m)})
		last := &c.Laminators[len(c.Laminators)-1]
		for i, v := range Speeds(m) {
			last.Speeds = append(last.Speeds, float64(v))
			if v == m.Usual.Best {
				last.Usual = i
			}
		}
	}
	for _, r := range t.shop.Rooms {
		c.Rooms = append(c.Rooms, roomJS{namedJS{r.ID, r.Name}, float64(r.Humidity.Best)})
	}
	for _, s := range t.shop.Storages {
		c.Storages = append(c.Storages, storageJS{namedJS{s.ID, s.Name}, s.Forms})
	}
	for _, l := range t.shop.Limits {
		c.Rules = append(c.Rules, ruleJS{l.Films, ids(l.FilmIDs), ids(l.Inks), l.InkClasses, ids(l.Media), l.MediumClasses, l.Coverages, l.Verdict, l.Why, l.Source.ID})
	}
	return c
}

func ids(refs []shop.Ref) []string {
	list := make([]string, len(refs))
	for i, r := range refs {
		list[i] = r.ID
	}
	return list
}

// inkShard is one ink's law on every medium that it prints on.
type inkShard struct {
	ID    string               `json:"id"`
	Kind  string               `json:"kind"`            // modes, rate or clock
	Unit  string               `json:"unit"`            // of what is left
	Safe  float64              `json:"safe"`            // the limit in that unit
	Media map[string]mediumLaw `json:"media"`           // by medium
	Rates map[string]float64   `json:"rates,omitempty"` // kind rate: room/storage → 1/h
}

type mediumLaw struct {
	// Start is what a fresh print holds by coverage: g/m², % or hours.
	Start map[string]float64 `json:"start"`
	// Slabs by room/storage: D/L² in 1/h, the floor in g/m², the Biot numbers of
	// face and back, then the eigenvalues.
	Slabs map[string][]float64 `json:"slabs,omitempty"`
	// Over is the layer's mobility over its thickness, in 1/m: with a film's pass it
	// gives the film's resistance as a Biot number wants it.
	Over float64 `json:"over_m,omitempty"`
	// Shut is the same with the back closed, where that differs.
	Shut map[string][]float64 `json:"shut,omitempty"`
}

func (t *Tables) inkShard(ink *shop.Ink) (inkShard, error) {
	s := inkShard{ID: ink.ID, Media: map[string]mediumLaw{}}
	for _, medium := range t.shop.Media {
		if !t.shop.PrintsOn(ink, medium) {
			continue
		}
		l, err := t.law(ink, medium, noFilm)
		if err != nil {
			return s, err
		}
		m := mediumLaw{Start: map[string]float64{}}
		for _, c := range Coverages {
			m.Start[c] = l.fresh(c).left()
		}
		s.Safe, s.Unit = l.limit()
		switch l := l.(type) {
		case evaporating:
			s.Kind = "modes"
			if err := t.slabs(&m, l, medium); err != nil {
				return s, err
			}
		case reacting:
			s.Kind = "rate"
			s.Rates = t.rates(l)
		default:
			s.Kind = "clock"
		}
		s.Media[medium.ID] = m
	}
	return s, nil
}

// passes is how freely a carrier passes a film, relative to plasticised calendered
// vinyl of a metre: R·D/L of State.Clears is the medium's over_m divided by it.
func (t *Tables) passes(film *shop.Film) *float64 {
	plies, err := t.plies(film, 1)
	if err != nil {
		return nil
	}
	sum := 0.0
	for _, p := range plies {
		sum += float64(p.Resistance())
	}
	pass := digits(1/sum, 12)
	return &pass
}

func (t *Tables) slabs(m *mediumLaw, l evaporating, medium *shop.Medium) error {
	m.Over = digits(float64(medium.Drying.Mobility.Best)/float64(medium.Drying.Absorbs.Best), 12)
	m.Slabs, m.Shut = map[string][]float64{}, map[string][]float64{}
	for _, room := range t.shop.Rooms {
		for _, storage := range t.StoragesFor(medium) {
			key := room.ID + "/" + storage.ID
			p := in(room, storage)
			open, err := l.in(p)
			if err != nil {
				return err
			}
			if m.Slabs[key], err = slabJS(open.Setting); err != nil {
				return err
			}
			if open.Back > 0 {
				p.backShut = true
				shut, err := l.in(p)
				if err != nil {
					return err
				}
				if m.Shut[key], err = slabJS(shut.Setting); err != nil {
					return err
				}
			}
		}
	}
	return nil
}

func slabJS(s drying.Setting) ([]float64, error) {
	modes, err := s.Modes()
	if err != nil {
		return nil, err
	}
	list := []float64{float64(s.Rate() * quantity.Rate(quantity.Hour)), grams(s.Floor), modes.Face, modes.Back}
	list = append(list, modes.Beta...)
	for i, x := range list {
		list[i] = digits(x, 12)
	}
	return list, nil
}

func (t *Tables) rates(l reacting) map[string]float64 {
	rates := map[string]float64{}
	for _, room := range t.shop.Rooms {
		for _, storage := range t.shop.Storages {
			k := l.in(in(room, storage)).Rate
			rates[room.ID+"/"+storage.ID] = digits(float64(k*quantity.Rate(quantity.Hour)), 12)
		}
	}
	return rates
}
