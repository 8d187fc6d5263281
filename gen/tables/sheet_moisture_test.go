package tables_test

import "testing"

// TestMoistureIn: a damper room of the same temperature makes every sheet
// moister and lets steam swell sooner; what the sheet holds is what the windows
// of that room rest on.
func TestMoistureIn(t *testing.T) {
	made := demo(t)
	winter, quay := made.Shop().Room("winter"), made.Shop().Room("damp-quay")
	if winter.Temperature.Best != quay.Temperature.Best || winter.Humidity.Best >= quay.Humidity.Best {
		t.Fatalf("%s and %s do not differ in their humidity alone", winter.ID, quay.ID)
	}
	dry, err := made.MoistureIn(winter)
	if err != nil {
		t.Fatal(err)
	}
	damp, err := made.MoistureIn(quay)
	if err != nil {
		t.Fatal(err)
	}
	if len(dry) != len(damp) || len(dry) < 5 {
		t.Fatalf("%d and %d media take up water", len(dry), len(damp))
	}
	for i := range dry {
		d, w := dry[i], damp[i]
		if w.Moisture <= d.Moisture {
			t.Errorf("%s: %.4f in the damp room, %.4f in the dry one", d.Medium, w.Moisture, d.Moisture)
		}
		if d.Limited && (!w.Limited || w.Swells >= d.Swells) {
			t.Errorf("%s: steam swells from %.1f °C damp, from %.1f °C dry", d.Medium, w.Swells.Celsius(), d.Swells.Celsius())
		}
	}
	all, err := made.Windows()
	if err != nil {
		t.Fatal(err)
	}
	checked := 0
	for _, v := range all {
		if v.Room != quay.ID {
			continue
		}
		for _, m := range damp {
			if m.Medium != v.Medium || !m.Limited {
				continue
			}
			for _, b := range v.FirstBounds {
				if b.Limit == "gas" {
					checked++
					if b.At != m.Swells {
						t.Errorf("%s on %s: the window's steam limit is %.2f °C, the sheet's %.2f °C", v.Film, v.Medium, b.At.Celsius(), m.Swells.Celsius())
					}
				}
			}
		}
	}
	if checked == 0 {
		t.Error("no window has a steam limit")
	}
}
