package shop

// record is any record with a head.
type record interface{ head() *Head }

func (h *Head) head() *Head { return h }

// find gives the record with an id, or nil.
func find[T any, P interface {
	*T
	record
}](records []P, id string) P {
	for _, r := range records {
		if r.head().ID == id {
			return r
		}
	}
	return nil
}

// Ink finds an ink by its id; nil when there is none.
func (s *Shop) Ink(id string) *Ink { return find(s.Inks, id) }

// Medium finds a medium by its id; nil when there is none.
func (s *Shop) Medium(id string) *Medium { return find(s.Media, id) }

// Film finds a film by its id; nil when there is none.
func (s *Shop) Film(id string) *Film { return find(s.Films, id) }

// Laminator finds a laminator by its id; nil when there is none.
func (s *Shop) Laminator(id string) *Laminator { return find(s.Laminators, id) }

// Room finds a room by its id; nil when there is none.
func (s *Shop) Room(id string) *Room { return find(s.Rooms, id) }

// Storage finds a way of storing by its id; nil when there is none.
func (s *Shop) Storage(id string) *Storage { return find(s.Storages, id) }

// Carrier finds a carrier by its id; nil when there is none.
func (s *Shop) Carrier(id string) *Carrier { return find(s.Carriers, id) }

// Substance finds a substance by its id; nil when there is none.
func (s *Shop) Substance(id string) *Substance { return find(s.Substances, id) }

// Limit finds a limit by its id; nil when there is none.
func (s *Shop) Limit(id string) *Limit { return find(s.Limits, id) }

// Contact finds a contact by its id; nil when there is none.
func (s *Shop) Contact(id string) *Contact { return find(s.Contacts, id) }

// Source finds a source by its id; nil when there is none.
func (s *Shop) Source(id string) *Source {
	for _, r := range s.Sources {
		if r.ID == id {
			return r
		}
	}
	return nil
}

// Caution finds a caution by its id; nil when there is none.
func (s *Shop) Caution(id string) *Caution { return find(s.Cautions, id) }

// Check finds a general check by its id; nil when there is none.
func (s *Shop) Check(id string) *GeneralCheck { return find(s.Checks, id) }

// Fault finds a family of faults by its id; nil when there is none.
func (s *Shop) Fault(id string) *FaultFamily { return find(s.Faults, id) }

// LoggedFaults lists the logged cases of a family that count: those of the
// shop's own log, and in a demonstration also those that came with it.
func (s *Shop) LoggedFaults(family string) []*LoggedFault {
	var cases []*LoggedFault
	for _, one := range s.FaultsLog {
		if one.Family.ID == family && (!one.Demo || s.Front.Invented) {
			cases = append(cases, one)
		}
	}
	return cases
}

// PrintsOn says whether the shop prints an ink on a medium.
func (s *Shop) PrintsOn(ink *Ink, medium *Medium) bool {
	return ink != nil && medium != nil && lists(medium.Inks, ink.ID)
}

// Closest gives the id of the record of a kind ("inks", "media", …) that
// somebody most likely meant by a word that is no id: one whose name or other
// name is that word, else one whose id or name is nearly spelt so. It gives ""
// where none is near.
func (s *Shop) Closest(kind, word string) string {
	var owners, words []string
	for _, h := range s.heads(kind) {
		for _, w := range append([]string{h.ID, h.Name}, h.Also...) {
			owners, words = append(owners, h.ID), append(words, w)
		}
	}
	near := nearest(word, words)
	for i, w := range words {
		if w == near && near != "" {
			return owners[i]
		}
	}
	return ""
}

// heads lists the heads of a kind's records.
func (s *Shop) heads(kind string) []*Head {
	switch kind {
	case "rooms":
		return headsOf(s.Rooms)
	case "carriers":
		return headsOf(s.Carriers)
	case "substances":
		return headsOf(s.Substances)
	case "inks":
		return headsOf(s.Inks)
	case "media":
		return headsOf(s.Media)
	case "films":
		return headsOf(s.Films)
	case "laminators":
		return headsOf(s.Laminators)
	case "storage":
		return headsOf(s.Storages)
	case "limits":
		return headsOf(s.Limits)
	case "predictions":
		return headsOf(s.Predictions)
	case "cautions":
		return headsOf(s.Cautions)
	case "checks":
		return headsOf(s.Checks)
	case "faults":
		return headsOf(s.Faults)
	}
	return nil
}

func headsOf[P record](records []P) []*Head {
	heads := make([]*Head, len(records))
	for i, r := range records {
		heads[i] = r.head()
	}
	return heads
}

// lists says whether an id is in a list of references.
func lists(refs []Ref, id string) bool {
	for _, r := range refs {
		if r.ID == id {
			return true
		}
	}
	return false
}
