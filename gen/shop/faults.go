package shop

// lendChecks gives the families' checks that name a general one all that its
// record says, and its time where they state none.
func (s *Shop) lendChecks() {
	general := byID(s.Checks)
	for _, family := range s.Faults {
		for i := range family.Checks {
			c := &family.Checks[i]
			from := general[c.Use.ID]
			if from == nil {
				continue
			}
			c.ID, c.Name, c.Do = from.ID, from.Name, from.Do
			c.Outcomes, c.Cautions, c.See = from.Outcomes, from.Cautions, from.See
			if !c.Takes.given() {
				c.Takes = from.Takes
			}
		}
	}
}

// Sign finds one of the family's signs; nil when there is none.
func (f *FaultFamily) Sign(id string) *FaultSign {
	for i := range f.Signs {
		if f.Signs[i].ID == id {
			return &f.Signs[i]
		}
	}
	return nil
}

// Cause finds one of the family's causes; nil when there is none.
func (f *FaultFamily) Cause(id string) *FaultCause {
	for i := range f.Causes {
		if f.Causes[i].ID == id {
			return &f.Causes[i]
		}
	}
	return nil
}

// Check finds one of the family's checks; nil when there is none.
func (f *FaultFamily) Check(id string) *FaultCheck {
	for i := range f.Checks {
		if f.Checks[i].ID == id {
			return &f.Checks[i]
		}
	}
	return nil
}

// Remedy finds one of the family's remedies; nil when there is none.
func (f *FaultFamily) Remedy(id string) *Remedy {
	for i := range f.Remedies {
		if f.Remedies[i].ID == id {
			return &f.Remedies[i]
		}
	}
	return nil
}
