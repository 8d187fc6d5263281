package tables

import "laydown/gen/shop"

// MachineCautions are the ids of what can hurt somebody at a laminator: its nip,
// and its heat where it has any.
func MachineCautions(machine *shop.Laminator) []string {
	list := []string{shop.NipCaution}
	if heated(machine) {
		list = append(list, shop.HotRollerCaution)
	}
	return list
}

// FilmCautions are the ids of what can hurt somebody with a film in any machine:
// the nip, heat and what overheated film gives off where it is laid hot, and the
// blade that cuts it.
func FilmCautions(film *shop.Film) []string {
	list := []string{shop.NipCaution}
	if film.Class != "cold" {
		list = append(list, shop.HotRollerCaution, shop.FumesCaution)
	}
	return append(list, shop.BladeCaution)
}

// InkCautions are the ids of what can hurt somebody who handles fresh prints of
// an ink.
func InkCautions(ink *shop.Ink) []string {
	if ink.Class == "solvent" {
		return []string{shop.SolventCaution}
	}
	return nil
}

// MediumCautions are the ids of what can hurt somebody who carries a medium.
func MediumCautions(medium *shop.Medium) []string {
	if medium.Class == "board" || !medium.SheetLength.Set {
		return []string{shop.LiftingCaution}
	}
	return nil
}

// heated says that a machine has a heater.
func heated(m *shop.Laminator) bool { return m.SensedAt != "none" }

// cautions are what can hurt somebody in this job, in the shop's words.
func (t *Tables) cautions(r request) []string {
	list := []string{shop.NipCaution}
	if r.film.Class != "cold" || heated(r.machine) {
		list = append(list, shop.HotRollerCaution)
	}
	if r.film.Class != "cold" {
		list = append(list, shop.FumesCaution)
	}
	list = append(list, InkCautions(r.ink)...)
	if r.sheet.Roll || r.medium.Class == "board" {
		list = append(list, shop.LiftingCaution)
	}
	list = append(list, shop.BladeCaution)
	texts := t.cautionTexts()
	said := make([]string, len(list))
	for i, id := range list {
		said[i] = texts[id]
	}
	return said
}

// cautionTexts are the shop's cautions as the plan says them, by id: the name,
// then the sentences.
func (t *Tables) cautionTexts() map[string]string {
	texts := map[string]string{}
	for _, c := range t.shop.Cautions {
		texts[c.ID] = c.Name + ". " + c.Says
	}
	return texts
}
