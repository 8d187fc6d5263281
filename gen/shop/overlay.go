package shop

import "reflect"

// overlay lays the shop's own records over the demo's: the demo's order first,
// then what the shop adds.
func (l *loader) overlay(under, over *side) map[string]*shelf {
	merged := map[string]*shelf{}
	for _, k := range kinds {
		to := &shelf{byID: map[string]*entry{}}
		put := func(e *entry) {
			to.entries = append(to.entries, e)
			to.byID[e.id] = e
		}
		own := over.shelves[k.key]
		if !over.replaces[k.key] && !(k.log && over.keepsFaults()) {
			for _, e := range under.shelves[k.key].entries {
				if mine := own.byID[e.id]; mine != nil {
					e = mine
				}
				put(e)
			}
		}
		for _, e := range own.entries {
			if to.byID[e.id] == nil {
				put(e)
			}
		}
		merged[k.key] = to
		if over.replaces[k.key] {
			l.replaced = append(l.replaced, k.key)
		}
	}
	merged["predictions"].dropMoot(merged, over.replaces)
	return merged
}

// keepsFaults says whether the shop has families or a log of its own. The demo's
// log speaks of the demo's families, and its invented cases are never counted
// with real ones.
func (s *side) keepsFaults() bool {
	return s.replaces["faults"] || len(s.shelves["faults"].entries) > 0 || len(s.shelves["faults_log"].entries) > 0
}

// dropMoot leaves out the demo's predictions for prints that the shop's data no
// longer has: nobody asks what was expected of them.
func (predictions *shelf) dropMoot(merged map[string]*shelf, replaced map[string]bool) {
	var kept []*entry
	for _, e := range predictions.entries {
		there := true
		for _, u := range e.refs {
			there = there && (!replaced[u.kind] || u.kind == "sources" || merged[u.kind].byID[u.id] != nil)
		}
		if there || !e.demo {
			kept = append(kept, e)
		} else {
			delete(predictions.byID, e.id)
		}
	}
	predictions.entries = kept
}

// assemble puts the records into a shop, and gives values their sources.
func (l *loader) assemble(shelves map[string]*shelf) *Shop {
	s := new(Shop)
	for _, k := range kinds {
		for _, e := range shelves[k.key].entries {
			cite(reflect.ValueOf(e.record), "")
			switch r := e.record.(type) {
			case *Shopfront:
				s.Front = *r
			case *Room:
				s.Rooms = append(s.Rooms, r)
			case *Carrier:
				s.Carriers = append(s.Carriers, r)
			case *Substance:
				s.Substances = append(s.Substances, r)
			case *Ink:
				s.Inks = append(s.Inks, r)
			case *Medium:
				s.Media = append(s.Media, r)
			case *Film:
				s.Films = append(s.Films, r)
			case *Laminator:
				s.Laminators = append(s.Laminators, r)
			case *Storage:
				s.Storages = append(s.Storages, r)
			case *Limit:
				s.Limits = append(s.Limits, r)
			case *Prediction:
				s.Predictions = append(s.Predictions, r)
			case *WindowPrediction:
				s.WindowPredictions = append(s.WindowPredictions, r)
			case *Claim:
				s.Claims = append(s.Claims, r)
			case *Contact:
				s.Contacts = append(s.Contacts, r)
			case *Caution:
				s.Cautions = append(s.Cautions, r)
			case *Form:
				s.Forms = append(s.Forms, r)
			case *GeneralCheck:
				s.Checks = append(s.Checks, r)
			case *FaultFamily:
				s.Faults = append(s.Faults, r)
			case *LoggedFault:
				s.FaultsLog = append(s.FaultsLog, r)
			case *Source:
				s.Sources = append(s.Sources, r)
			}
		}
	}
	s.lendChecks()
	if len(shelves["shop"].entries) == 0 && !l.unread["shop"] {
		l.sayAt(Pos{File: OwnPrefix + "shop.yaml", Line: 1, Col: 1}, "the shop itself is missing: write a file shop.yaml with the key shop: and under it a name")
	}
	return s
}

// checkRefs reports every place that names a record which is not there.
func (l *loader) checkRefs(shelves map[string]*shelf) {
	dropped := map[string]bool{}
	for _, key := range l.replaced {
		dropped[key] = true
	}
	ids := map[string][]string{}
	for _, k := range kinds {
		for _, e := range shelves[k.key].entries {
			ids[k.key] = append(ids[k.key], e.id)
		}
	}
	for _, k := range kinds {
		for _, e := range shelves[k.key].entries {
			for _, u := range e.refs {
				if shelves[u.kind].byID[u.id] != nil || l.unread[u.kind] {
					continue
				}
				why := ": add it, or correct the id"
				if e.demo && dropped[u.kind] {
					why = ": this record came with the program, and the shop's data replaces all " + u.kind + "; give the shop a record of its own here, or write replaces: all beside " + k.key + " too"
				} else if dropped[u.kind] {
					why = ": the shop's data replaces all " + u.kind
				}
				l.sayAt(u.pos, "there is no %s %s%s%s", kindName(u.kind), quote(u.id), why, maybe(l.suggest(u.id, ids[u.kind])))
			}
		}
	}
}
