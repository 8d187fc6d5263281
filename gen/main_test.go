package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// laydown runs the program as a shell would, on a clock that stands still.
func laydown(args ...string) (status int, out, errs string) { return laydownWith("", args...) }

// laydownWith runs it with something typed into it.
func laydownWith(typed string, args ...string) (status int, out, errs string) {
	var o, e bytes.Buffer
	status = run(args, strings.NewReader(typed), &o, &e, func() time.Time { return time.Date(2026, 11, 25, 9, 0, 0, 0, time.UTC) })
	return status, o.String(), e.String()
}

// Every broken shop: all its problems in one run, as its expect.txt has them,
// exit status 1, and nothing written.
func TestBrokenShops(t *testing.T) {
	folders, err := filepath.Glob("../testdata/broken/*")
	if err != nil || len(folders) < 15 {
		t.Fatalf("%d broken shops found, %v", len(folders), err)
	}
	for _, folder := range folders {
		t.Run(filepath.Base(folder), func(t *testing.T) {
			want, err := os.ReadFile(filepath.Join(folder, "expect.txt"))
			if err != nil {
				t.Fatal(err)
			}
			site := filepath.Join(t.TempDir(), "site")
			for _, args := range [][]string{{"publish", "-shop", folder, "-out", site}, {"proof", "-shop", folder}} {
				status, out, errs := laydown(args...)
				if status != problems {
					t.Errorf("%s: status %d, want %d", args[0], status, problems)
				}
				if errs != string(want) {
					t.Errorf("%s:\n got %s\nwant %s", args[0], errs, want)
				}
				if out != "" {
					t.Errorf("%s printed a result: %s", args[0], out)
				}
			}
			if _, err := os.Stat(site); !os.IsNotExist(err) {
				t.Errorf("something was written to %s", site)
			}
		})
	}
}

// The same for a file that is too deep to keep in testdata.
func TestNestedLists(t *testing.T) {
	shop, site := t.TempDir(), filepath.Join(t.TempDir(), "site")
	if err := os.Mkdir(filepath.Join(shop, "data"), 0o755); err != nil {
		t.Fatal(err)
	}
	deep := "rooms: " + strings.Repeat("[", 10_000) + strings.Repeat("]", 10_000)
	if err := os.WriteFile(filepath.Join(shop, "data", "rooms.yaml"), []byte(deep), 0o644); err != nil {
		t.Fatal(err)
	}
	status, out, errs := laydown("publish", "-shop", shop, "-out", site)
	const want = "data/rooms.yaml:1:47: lists or records stand more than 40 deep inside each other here: no record needs that\n"
	if status != problems || errs != want || out != "" {
		t.Errorf("status %d, printed %q, said %q; want status %d and %q", status, out, errs, problems, want)
	}
	if _, err := os.Stat(site); !os.IsNotExist(err) {
		t.Errorf("something was written to %s", site)
	}
}

func TestCommandLineIsWrong(t *testing.T) {
	tests := []struct {
		args []string
		want string
	}{
		{nil, "Laydown makes the handbook"},
		{[]string{"print"}, `no command is called "print"`},
		{[]string{"publish", "there"}, `what is "there" for?`},
		{[]string{"publish", "-shop", "/no/such/folder"}, "the shop's folder"},
		{[]string{"proof", "-shop", "main.go"}, "is not a folder"},
		{[]string{"proof", "-shop", "."}, "has neither data nor content nor templates"},
		{[]string{"plan", "-ink", "eco-solvnt"}, `did you mean "eco-solvent"?`},
		{[]string{"plan", "-colour", "red"}, "flag provided but not defined"},
		{[]string{"plan", "-ink", "eco-solvent", "-medium", "vinyl-cast", "-film", "cold-vinyl-cast-gloss", "-format", "pdf"}, `no format is called "pdf"`},
		{[]string{"table"}, "which table?"},
		{[]string{"table", "tides"}, `no table is called "tides"`},
		{[]string{"table", "waits", "-format", "pdf"}, `no format is called "pdf"`},
	}
	for _, tt := range tests {
		status, out, errs := laydown(tt.args...)
		if status != misuse || !strings.Contains(errs, tt.want) || out != "" {
			t.Errorf("%q: status %d, printed %q, said %q; want status %d and %q", tt.args, status, out, errs, misuse, tt.want)
		}
	}
}

// A plan as JSON has the keys that other programs rely on, null where nothing
// is known, whatever the verdict; and the exit status is 0.
func TestPlanJSON(t *testing.T) {
	keys := []string{"verdict", "reasons", "wait_hours", "maker_wait_hours", "ready_by", "window", "feed", "cautions", "working"}
	tests := []struct {
		args    []string
		verdict string
	}{
		{[]string{"-ink", "eco-solvent", "-medium", "vinyl-calendered", "-film", "cold-vinyl-calendered-gloss", "-printed", "2026-11-24T15:40"}, "wait"},
		{[]string{"-ink", "eco-solvent", "-medium", "vinyl-calendered", "-film", "cold-vinyl-calendered-gloss", "-printed", "2026-11-20T15:40"}, "go"},
		{[]string{"-ink", "eco-solvent", "-medium", "vinyl-calendered", "-film", "thermal-pet-gloss-75"}, "change"},
		{[]string{"-ink", "toner-dry", "-medium", "banner", "-film", "cold-vinyl-calendered-gloss"}, "refuse"},
		{[]string{"-ink", "eco-solvent", "-medium", "vinyl-calendered", "-film", "cold-vinyl-calendered-gloss", "-storage", "tight-roll"}, "wait"},
	}
	for _, tt := range tests {
		status, out, errs := laydown(append([]string{"plan", "-format", "json"}, tt.args...)...)
		if status != done {
			t.Errorf("%q: status %d: %s", tt.args, status, errs)
			continue
		}
		var p map[string]any
		if err := json.Unmarshal([]byte(out), &p); err != nil {
			t.Errorf("%q: %v", tt.args, err)
			continue
		}
		for _, k := range keys {
			if _, ok := p[k]; !ok {
				t.Errorf("%q: no %q in the answer", tt.args, k)
			}
		}
		if p["verdict"] != tt.verdict {
			t.Errorf("%q: %v, want %s", tt.args, p["verdict"], tt.verdict)
		}
		if reasons, _ := p["reasons"].([]any); len(reasons) == 0 {
			t.Errorf("%q: no reasons", tt.args)
		}
		if p["wait_hours"] == nil && p["wait_reason"] == "" || p["window"] == nil && p["window_reason"] == "" {
			t.Errorf("%q: a null without a reason", tt.args)
		}
	}
}

func TestTableFormats(t *testing.T) {
	tests := []struct{ table, format, begins, holds string }{
		{"waits", "text", "hours to wait", "eco-solvent"},
		{"waits", "csv", "ink,medium,coverage,storage,room,wait_hours", "eco-solvent"},
		{"waits", "json", `{"table":"waits"`, "eco-solvent"},
		{"windows", "text", "set temperature in °C", "thermal-pet-gloss-75"},
		{"windows", "csv", "film,medium,laminator,speed_m_min,room", "thermal-pet-gloss-75"},
		{"windows", "json", `{"table":"windows"`, "thermal-pet-gloss-75"},
		{"stacks", "text", "depth in mm", "coated-silk-250"},
		{"stacks", "csv", "medium,from,to,border", "coated-silk-250"},
		{"stacks", "json", `{"table":"stacks"`, "coated-silk-250"},
		{"acclimatise", "text", "hours to stay wrapped", " ("},
		{"acclimatise", "csv", "medium,parcel,room", "pallet"},
		{"acclimatise", "json", `{"table":"acclimatise"`, "pallet"},
		{"driven-ahead", "text", "first blister in mm", "encapsulator"},
		{"driven-ahead", "csv", "medium,film,laminator,from,to", "encapsulator"},
		{"driven-ahead", "json", `{"table":"driven-ahead"`, "encapsulator"},
		{"humidity", "text", "highest relative humidity", "thermal-pet-gloss-75"},
		{"humidity", "csv", "film,medium,laminator,speed_m_min,set_c", "thermal-pet-gloss-75"},
		{"humidity", "json", `{"table":"humidity"`, "thermal-pet-gloss-75"},
		{"cooling", "text", "seconds from the nip", "thermal-pet-gloss-75"},
		{"cooling", "csv", "film,medium,laminator,room,set_c", "thermal-pet-gloss-75"},
		{"cooling", "json", `{"table":"cooling"`, "thermal-pet-gloss-75"},
		{"curl", "text", "rise of an A4", "cold-pp-matt"},
		{"curl", "csv", "film,medium,laminator,laminated_in", "cold-pp-matt"},
		{"curl", "json", `{"table":"curl"`, "cold-pp-matt"},
		{"grain", "text", "greatest risk of ridges", "uncoated-90"},
		{"grain", "csv", "film,medium,laminator,room,advice", "uncoated-90"},
		{"grain", "json", `{"table":"grain"`, "uncoated-90"},
		{"bond", "text", "what becomes of silvering", "uv-inkjet"},
		{"bond", "csv", "ink,medium,film,laminator", "uv-inkjet"},
		{"bond", "json", `{"table":"bond"`, "uv-inkjet"},
		{"faults", "csv", "family,cause,share", "bubbles"},
		{"vapour", "text", "at most so many m²", "vinyl-calendered"},
		{"vapour", "csv", "ink,medium,storage,room,at_once_m2", "vinyl-calendered"},
		{"vapour", "json", `{"table":"vapour"`, "vinyl-calendered"},
		{"rolls", "text", "film left on the roll", "cold-"},
		{"rolls", "csv", "part,film,laminator,roller,diameter_mm", "thermal-pet-gloss-75"},
		{"rolls", "json", `{"table":"rolls"`, "thermal-pet-gloss-75"},
		{"cuts", "text", "cutting so that the grain", "SRA3"},
		{"cuts", "csv", "parent,grain,piece,lead", "SRA3"},
		{"cuts", "json", `{"table":"cuts"`, "SRA3"},
		{"after", "text", "carrier left under film", "cold-pp-matt"},
		{"after", "csv", "ink,medium,film,back,coverage,storage,room,spent_percent", "cold-pp-matt"},
		{"after", "json", `{"table":"after"`, "cold-pp-matt"},
	}
	// One as a shell would; the rest from one set of tables, which is quicker.
	if status, out, errs := laydown("table", "waits", "-format", "csv"); status != done || !strings.HasPrefix(out, "ink,medium,") {
		t.Fatalf("status %d, %s, begins %.60q", status, errs, out)
	}
	src, err := open("")
	if err != nil {
		t.Fatal(err)
	}
	made, found, err := src.tables()
	if err != nil || len(found) > 0 {
		t.Fatal(err, found)
	}
	for _, tt := range tests {
		var b bytes.Buffer
		if err := printable[tt.table][tt.format](&b, made); err != nil {
			t.Fatalf("%s %s: %v", tt.table, tt.format, err)
		}
		out := b.String()
		if !strings.HasPrefix(out, tt.begins) {
			t.Errorf("%s %s: begins %.60q", tt.table, tt.format, out)
		}
		least := 20
		if tt.table == "faults" {
			least = 8 // a line for each cause of a family
		}
		if strings.Count(out, tt.holds) < least {
			t.Errorf("%s %s: hardly any rows", tt.table, tt.format)
		}
		if tt.format == "json" && !json.Valid([]byte(out)) {
			t.Errorf("%s: the JSON is not JSON", tt.table)
		}
	}
}

func BenchmarkPublish(b *testing.B) {
	for b.Loop() {
		site := filepath.Join(b.TempDir(), "site")
		if status, _, errs := laydown("publish", "-out", site); status != done {
			b.Fatal(errs)
		}
	}
}

// A walk through a key: what is typed leads on, what is no answer is asked again, and the
// end of the input ends it.
func TestCure(t *testing.T) {
	status, out, errs := laydownWith("7\n1\n", "cure", "bubbles")
	if status != done || errs != "" && !strings.Contains(errs, "doubt") {
		t.Fatalf("status %d, %s", status, errs)
	}
	for _, want := range []string{"Bubbles\n", "1  ", "a number from 1 to", "by now:"} {
		if !strings.Contains(out, want) {
			t.Errorf("lacks %q:\n%s", want, out)
		}
	}
	if strings.Count(out, "which?") != 3 {
		t.Errorf("asked %d times, want 3:\n%s", strings.Count(out, "which?"), out)
	}
	for _, tt := range []struct{ args, want string }{
		{"cure", "which fault? there are bubbles"},
		{"cure bubles", `no family of faults is called "bubles"`},
		{"cure bubbles -answers never", "is none of its answers"},
	} {
		status, _, errs := laydown(strings.Fields(tt.args)...)
		if status != misuse || !strings.Contains(errs, tt.want) {
			t.Errorf("%s: status %d, %s", tt.args, status, errs)
		}
	}
}
