package tables

import "laydown/gen/shop"

// cautionTexts are the usual cautions. Each gives way to local codes, the
// maker's manual and licensed practice, and says so.
var cautionTexts = map[string]string{
	"nip":    "Nip. Rollers draw in hands, sleeves and rings: feed with flat palms, never reach or wipe while they turn." + givesWay,
	"heat":   "Heat. Rollers and shoes burn long after the switch is off: treat them as hot until you have measured." + givesWay,
	"vapour": "Vapour. Prints that dry give off solvent, and it burns: keep the extraction on, and keep undried prints from hot rollers. Go by the safety data sheet." + givesWay,
	"knife":  "Knife. Cut away from the hand, draw the blade in when you put it down, and never use one at a roller." + givesWay,
}

const givesWay = " Follow the maker's manual, local codes and the person licensed for it."

// cautions are what can hurt somebody in this job.
func cautions(ink *shop.Ink, film *shop.Film, machine *shop.Laminator) []string {
	list := []string{cautionTexts["nip"]}
	if film.Class != "cold" || machine.Heated == "both" {
		list = append(list, cautionTexts["heat"])
	}
	if ink.Class == "solvent" {
		list = append(list, cautionTexts["vapour"])
	}
	return append(list, cautionTexts["knife"])
}
