package tables

import (
	"testing"

	"laydown/gen/quantity"
)

// A single sheet has its water back in minutes to an hour or two, a stack does not in
// days; what the sheet holds is what the tables of humidity hold it for.
func TestTonerSheetsRegainTheirWater(t *testing.T) {
	made := demoTables(t)
	checked := 0
	for _, ink := range made.shop.Inks {
		if ink.Dries != "toner" {
			continue
		}
		for _, medium := range made.shop.Media {
			if !made.shop.PrintsOn(ink, medium) || medium.FibreShare.Best == 0 {
				continue
			}
			room := made.shop.Room(made.shop.Front.Room.ID)
			at := map[string]regain{}
			for _, storage := range made.StoragesFor(medium) {
				r, holds, err := made.regain(medium, in(room, storage))
				if err != nil || !holds {
					t.Fatalf("%s, %s: %v, %v", medium.ID, storage.ID, holds, err)
				}
				at[storage.ID] = r
			}
			gas, err := made.gas(medium, room.Humidity.Best, room.Temperature.Best)
			if err != nil {
				t.Fatal(err)
			}
			rack, hung, fan, stack := at["rack"], at["hung"], at["fan"], at["stack"]
			if rack.balance != gas.moisture {
				t.Errorf("%s: %g in the room, %g by the windows", medium.ID, float64(rack.balance), float64(gas.moisture))
			}
			if !(rack.back > 2*quantity.Minute && rack.back < 3*quantity.Hour) {
				t.Errorf("%s on a rack: water back after %s", medium.ID, duration(rack.back))
			}
			if !(fan.back < hung.back && hung.back < rack.back && rack.back < stack.back && stack.back > 3*quantity.Day) {
				t.Errorf("%s: fan %s, hung %s, rack %s, stack %s", medium.ID, duration(fan.back), duration(hung.back), duration(rack.back), duration(stack.back))
			}
			t.Logf("%s: fan %s, hung %s, rack %s, stack %.0f d", medium.ID, duration(fan.back), duration(hung.back), duration(rack.back), float64(stack.back/quantity.Day))
			checked++
		}
	}
	if checked < 5 {
		t.Errorf("only %d papers checked", checked)
	}
}

// The working of a toner print shows it, and says where the rule's hours are too short.
func TestTonerWorkingShowsTheRegain(t *testing.T) {
	made := demoTables(t)
	for storage, notes := range map[string]int{"rack": 1, "stack": 2} {
		v, err := made.Wait(WaitCase{"toner-dry", "uncoated-150", "normal", storage, made.shop.Front.Room.ID})
		if err != nil {
			t.Fatal(err)
		}
		found := false
		for _, s := range v.Working.Steps {
			found = found || s.Symbol == "M_f" && s.SI > 0.02 && s.SI < 0.04
		}
		if !found || len(v.Working.Notes) != notes {
			t.Errorf("%s: %+v", storage, v.Working)
		}
	}
}
