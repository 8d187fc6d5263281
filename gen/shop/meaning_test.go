package shop

import (
	"os"
	"strings"
	"testing"
	"testing/fstest"
)

// edited is the small shop with one passage of one file changed.
func edited(t *testing.T, name, from, to string) fstest.MapFS {
	t.Helper()
	all := fstest.MapFS{}
	for _, f := range []string{"shop.yaml", "rooms.yaml", "materials.yaml", "films.yaml", "machines.yaml", "heat.yaml"} {
		text, err := os.ReadFile("../../testdata/smallshop/data/" + f)
		if err != nil {
			t.Fatal(err)
		}
		if f == name {
			if strings.Count(string(text), from) != 1 {
				t.Fatalf("%q stands %d times in %s, not once", from, strings.Count(string(text), from), f)
			}
			text = []byte(strings.Replace(string(text), from, to, 1))
		}
		all[f] = &fstest.MapFile{Data: text}
	}
	return all
}

// TestMeaning changes one thing in the small shop at a time and wants the one
// problem that comes of it.
func TestMeaning(t *testing.T) {
	tests := []struct{ name, file, from, to, want string }{
		{"no vapour pressure", "materials.yaml", "    antoine: {a: 22.75, b: 4673, c: -48, from: 20 °C, to: 190 °C, source: guessed}\n", "",
			`materials.yaml:2:5: carrier "test-carrier" has no vapour pressure: write antoine or vapour_pressure (section 9 of its safety data sheet)`},
		{"vapour pressure twice", "materials.yaml", "    antoine:", "    vapour_pressure: {pressure: 30 Pa, at: 20 °C, heat: 55 kJ/mol}\n    antoine:",
			`materials.yaml:8:5: carrier "test-carrier" has its vapour pressure twice, as antoine and as vapour_pressure: keep one of them`},
		{"Antoine range downwards", "materials.yaml", "from: 20 °C, to: 190 °C", "from: 190 °C, to: 20 °C",
			`materials.yaml:8:48: from, 190 °C, is above to, 20 °C: exchange or correct them`},
		{"toner that dries by oxidation", "materials.yaml", "dries: toner", "dries: oxidation",
			`materials.yaml:40:5: ink "test-toner" dries by oxidation and has no reaction: write that group of keys
materials.yaml:51:5: toner does not belong to an ink that dries by oxidation: take it out, or correct dries`},
		{"normal above heavy", "materials.yaml", "normal: 180 %, heavy: 280 %", "normal: 280 %, heavy: 180 %",
			`materials.yaml:21:38: normal, 280 %, is above heavy, 180 %: exchange or correct them`},
		{"light above normal", "materials.yaml", "light: 100 %", "light: 190 %",
			`materials.yaml:21:23: light, 190 %, is above normal, 180 %: exchange or correct them`},
		{"nothing to wait for", "materials.yaml", "safe_residue: 1 g/m2", "safe_residue: 9 g/m2",
			`materials.yaml:34:21: safe_residue, 9 g/m2, is not below load, 9 g/m2: such a print would be ready as it leaves the printer`},
		{"least above wait", "materials.yaml", "least: 12 h", "least: 2 days",
			`materials.yaml:30:14: least, 2 days, is above wait, 24 h: exchange or correct them`},
		{"maker's medium is not printed with the ink", "materials.yaml", "medium: test-paper", "medium: test-vinyl",
			`materials.yaml:45:15: medium "test-vinyl" is not printed with ink "test-toner": list the ink in the medium's inks, or name another medium`},
		{"maker's medium cannot be stored so", "materials.yaml", "storage: on-the-line", "storage: in-a-stack",
			`materials.yaml:25:16: storage "in-a-stack" takes sheet, and medium "test-vinyl" comes as roll: name another storage`},
		{"air mixed better than perfectly", "rooms.yaml", "    air_changes: 2 1/h\n", "    air_changes: 2 1/h\n    mixing: 0.5\n",
			`rooms.yaml:12:5: room "back-room" has a mixing factor of 0.5: write one from 1, perfect, to 10, very poor`},
		{"foam", "materials.yaml", "grammage: 108 g/m2", "grammage: 20 g/m2",
			`materials.yaml:62:15: medium "test-vinyl" would have a density of 250 kg/m³ (20 g/m2 over 80 µm): media lie between 300 and 1800 kg/m³; check grammage and thickness`},
		{"sheet without length", "materials.yaml", "    sheet_length: 450 mm\n", "",
			`materials.yaml:72:5: medium "test-paper" comes as sheet and has no sheet_length: write the sheet's longer side`},
		{"sheet's sides exchanged", "materials.yaml", "width: 320 mm", "width: 460 mm",
			`materials.yaml:75:19: sheet_length, 450 mm, is less than width, 460 mm: width is a sheet's shorter side; exchange them`},
		{"layer thicker than its medium", "materials.yaml", "absorbing_thickness: 50 µm", "absorbing_thickness: 4 mil",
			`materials.yaml:63:35: absorbing_thickness, 4 mil, is more than the medium's thickness, 80 µm: correct one of them`},
		{"open back without resistance", "materials.yaml", "back: sealed", "back: open",
			`materials.yaml:63:59: medium "test-vinyl" has an open back and no back_resistance: write a vapour resistance such as 2000 s/m`},
		{"sealed back with resistance", "materials.yaml", "back: sealed", "back: sealed, back_resistance: 100 s/m",
			`materials.yaml:63:90: back_resistance belongs to an open back, and this one is sealed: take it out, or write back: open`},
		{"no drying", "materials.yaml", "    drying: {absorbing_thickness: 50 µm, mobility: 100 %, back: sealed}\n", "",
			`materials.yaml:59:12: ink "test-solvent" dries by evaporation, and medium "test-vinyl" has no drying: write absorbing_thickness, mobility and back under drying`},
		{"depth without width", "materials.yaml", "    drying: {absorbing_thickness: 50", "    texture: 2 µm\n    drying: {absorbing_thickness: 50",
			`materials.yaml:63:14: texture, 2 µm, is a depth without a width: write texture_width, how wide the hollows are`},
		{"width without depth", "materials.yaml", "    drying: {absorbing_thickness: 50", "    texture_width: 30 µm\n    drying: {absorbing_thickness: 50",
			`materials.yaml:63:20: texture_width, 30 µm, is a width without a depth: write texture, how deep the hollows are`},
		{"melting range downwards", "films.yaml", "adhesive_melts: {from: 80 °C, to: 95 °C}", "adhesive_melts: {from: 95 °C, to: 80 °C}",
			`films.yaml:13:28: from, 95 °C, is above to, 80 °C: exchange or correct them`},
		{"roller range downwards", "films.yaml", "from: 105 °C, to: 120 °C", "from: 120 °C, to: 105 °C",
			`films.yaml:15:26: from, 120 °C, is above to, 105 °C: exchange or correct them`},
		{"rollers below activation", "films.yaml", "activation: 90 °C", "activation: 125 °C",
			`films.yaml:15:38: the roller range ends at 120 °C, below the activation of 125 °C: no adhesive gets hotter than its roller; correct one of them`},
		{"film that melts before it sticks", "films.yaml", "activation: 90 °C", "activation: 90 °C\n    heat_limit: 80 °C",
			`films.yaml:15:17: heat_limit, 80 °C, is below activation, 90 °C: such a film could never be laminated`},
		{"base of adhesive", "films.yaml", "    base: test-base\n    base_thickness: 12 µm", "    base: test-glue\n    base_thickness: 12 µm",
			`films.yaml:7:11: base names substance "test-glue", which is of class adhesive: name one of class film`},
		{"class the laminator does not run", "films.yaml", "class: thermal", "class: high-tack",
			`films.yaml:12:15: laminator "small-wide" does not run high-tack films (it runs thermal, cold): take it out of runs_on, or add the class to its films`},
		{"activation above another class of machine", "machines.yaml", "class: wide-hot\n    films: [thermal, cold]\n    width: 1400 mm\n    forms: [roll, sheet]\n    hottest: 130 °C",
			"class: desktop\n    films: [thermal, cold]\n    width: 1400 mm\n    forms: [roll, sheet]\n    hottest: 85 °C",
			`films.yaml:12:15: film "test-thermal" needs a roller of at least 90 °C (its activation), and laminator "small-wide" gets no hotter than 85 °C: take it out of runs_on, or correct one of the two`},
		{"slowest above usual", "machines.yaml", "slowest: 0.5 m/min", "slowest: 10 ft/min",
			`machines.yaml:11:14: slowest, 10 ft/min, is above usual, 2 m/min: exchange or correct them`},
		{"cover of adhesive", "machines.yaml", "cover: test-rubber", "cover: test-glue",
			`machines.yaml:15:12: cover names substance "test-glue", which is of class adhesive: name one of class rubber or metal`},
		{"hung without length", "machines.yaml", "length: 1.2 m, ", "",
			`machines.yaml:20:47: storage "on-the-line" is of kind hung and has no length: write the length along which air passes the print, such as 1.2 m`},
		{"stack without gap", "machines.yaml", "gap: 20 µm, ", "",
			`machines.yaml:22:40: storage "in-a-stack" is of kind stack and has no gap: write the gap between its layers, such as 20 µm`},
		{"loose roll", "machines.yaml", "kind: stack, forms: [sheet], gap: 20 µm", "kind: loose-roll, forms: [roll]",
			`machines.yaml:22:40: storage "in-a-stack" is of kind loose-roll and has no draught: write how fast it dries at its face relative to hung, such as 40 %
machines.yaml:22:40: storage "in-a-stack" is of kind loose-roll and has no length: write the length along which air passes the print, such as 1.2 m`},
		{"sheets on a roll", "machines.yaml", "kind: stack, forms: [sheet]", "kind: tight-roll, forms: [sheet]",
			`machines.yaml:22:58: storage "in-a-stack" is of kind tight-roll and cannot take sheet: write forms: [roll]`},
		{"a stack of rolls", "machines.yaml", "kind: stack, forms: [sheet]", "kind: stack, forms: [roll]",
			`machines.yaml:22:53: storage "in-a-stack" is of kind stack and cannot take roll: write forms: [sheet]`},
		{"prediction of a range downwards", "machines.yaml", "from: 20 h", "from: 40 h",
			`machines.yaml:46:11: from, 40 h, is above to, 36 h: exchange or correct them`},
		{"prediction of a print that is not made", "machines.yaml", "medium: test-vinyl", "medium: test-paper",
			`machines.yaml:41:13: medium "test-paper" is not printed with ink "test-solvent": list the ink in the medium's inks, or correct the prediction`},
		{"chart row that is not printed", "shop.yaml", "ink: test-solvent", "ink: test-toner",
			`shop.yaml:14:9: medium "test-vinyl" is not printed with ink "test-toner": list the ink in the medium's inks, or take this row out`},
		{"column that is not printed", "shop.yaml", "    waits:", "    matrices:\n      - {name: A, films: [test-cold], prints: [{ink: test-solvent, medium: test-paper}]}\n    waits:",
			`shop.yaml:14:48: medium "test-paper" is not printed with ink "test-solvent": list the ink in the medium's inks, or take this row out`},
		{"too many prints side by side", "shop.yaml", "    waits:", "    matrices:\n      - {name: A, films: [test-cold], prints: [" + strings.Repeat("{ink: test-solvent, medium: test-vinyl}, ", 6) + "]}\n    waits:",
			`shop.yaml:14:9: 6 prints do not fit side by side on a chart: at most 5, and another chart for the rest`},
		{"two charts of a name", "shop.yaml", "    waits:", "    notices:\n      - {name: A, steps: [{do: b}]}\n      - {name: A, steps: [{do: c}]}\n    waits:",
			`shop.yaml:15:9: two charts are called "A": give this one another name`},
		{"chart of a family that is not there", "shop.yaml", "    waits:", "    faults: [test-bubble]\n    waits:",
			`shop.yaml:13:14: there is no family of faults "test-bubble": add it, or correct the id`},
		{"no contact for a hot film", "heat.yaml", "id: melt-on-print", "id: glue-on-print",
			`films.yaml:2:5: film "test-thermal" is laid with heat, which needs contacts that are not there: write melt-on-print under contacts:`},
		{"wrap longer than the roller", "heat.yaml", "roller_diameter: 100 mm", "roller_diameter: 20 mm",
			`heat.yaml:31:22: roller_diameter: a roller of 20 mm has a girth of 62.83 mm (2.47 in), less than wrap and nip together, 68 mm (2.68 in): correct one of them`},
		{"nothing to compare with", "heat.yaml", "claim: makers-range", "claim: higher",
			`heat.yaml:11:5: the claim "higher" compares two cases: write the second under other:`},
		{"window of a cold film", "heat.yaml", "case: {film: test-warm,", "case: {film: test-cold,",
			`heat.yaml:15:18: film "test-cold" is laid without heat, and has no window: name a hot film`},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			_, problems := Load(nil, edited(t, test.file, test.from, test.to))
			want := OwnPrefix + strings.ReplaceAll(test.want, "\n", "\n"+OwnPrefix)
			if got := problems.Error(); got != want {
				t.Errorf("got\n%s\nwant\n%s", got, want)
			}
		})
	}
}
