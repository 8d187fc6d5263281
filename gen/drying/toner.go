package drying

import "laydown/gen/quantity"

// Toner is the wait of a fused toner print: it cools, its fuser oil spreads, and
// the sheet takes back the moisture that the fuser drove out. The hours add up: one
// trade laminator's published rule, whose figures are the shop's data with their
// sources. Neither storage nor room enters.
type Toner struct {
	Base   quantity.Time // any sheet
	Coated quantity.Time // more on a gloss-coated sheet
	Heavy  quantity.Time // more for heavy coverage
}

// Wait is the sum of the hours that apply, never below 0.
func (t Toner) Wait(coated, heavy bool) quantity.Time {
	wait := t.Base
	if coated {
		wait += t.Coated
	}
	if heavy {
		wait += t.Heavy
	}
	return max(wait, 0)
}

// After is what is left of a wait when some time has already been spent, never below 0.
func (t Toner) After(coated, heavy bool, spent quantity.Time) quantity.Time {
	return max(t.Wait(coated, heavy)-spent, 0)
}
