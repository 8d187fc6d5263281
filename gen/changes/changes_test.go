package changes

import (
	"strings"
	"testing"
)

const waits = "ink,medium,storage,hours,reason\n"

// TestBetween: what a manager would say had changed, by hand.
func TestBetween(t *testing.T) {
	for _, tt := range []struct {
		name    string
		old, is string
		want    string
	}{
		{"nothing", waits + "a,v,hung,12,\n", waits + "a,v,hung,12,\n", ""},
		{"a value", waits + "a,v,hung,12,\na,v,rack,13,\n", waits + "a,v,hung,12,\na,v,rack,15,\n",
			"tables/waits: 1 of 2 rows changed; most: a, v, rack: hours 13 becomes 15\n"},
		{"the farthest for its size", waits + "a,v,hung,100,\na,v,rack,2,\n", waits + "a,v,hung,110,\na,v,rack,3,\n",
			"tables/waits: 2 of 2 rows changed; most: a, v, rack: hours 2 becomes 3\n"},
		{"a value that is no more", waits + "a,v,hung,12,\na,v,rack,12,\n", waits + "a,v,hung,12,\na,v,rack,,hardly dries\n",
			"tables/waits: 1 of 2 rows changed; most: a, v, rack: hours 12 becomes none\n"},
		{"rows", waits + "a,v,hung,12,\nb,v,hung,12,\n", waits + "b,v,hung,12,\nc,v,hung,12,\nd,v,hung,9,\n",
			"tables/waits: 2 rows new, a row gone\n"},
		{"another order", waits + "a,v,hung,12,\nb,v,hung,10,\n", waits + "b,v,hung,10,\na,v,hung,12,\n", ""},
		{"columns", waits + "a,v,hung,12,\n", "ink,medium,storage,days,reason\na,v,hung,1,\n",
			"tables/waits: column days is new, column hours is gone\n"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			list, err := Between(Values{"tables/waits.csv": []byte(tt.old)}, Values{"tables/waits.csv": []byte(tt.is)})
			if err != nil {
				t.Fatal(err)
			}
			var b strings.Builder
			Tell(&b, list)
			if b.String() != tt.want {
				t.Errorf("got  %q\nwant %q", b.String(), tt.want)
			}
		})
	}
}

// TestChartsComeFirst: a stale chart is what somebody has to walk to.
func TestChartsComeFirst(t *testing.T) {
	head := "chart,paper,sheet,holds,stamp,page\n"
	old := Values{Stamps: []byte(head + "Waits,A3,1,rows 1–3,AA-11,x\nWaits,A3,2,rows 4–6,BB-22,y\n"), "tables/gone.csv": []byte(waits)}
	now := Values{Stamps: []byte(head + "Waits,A3,1,rows 1–3,CC-33,x\nGrain,A3,1,rows 1–4,DD-44,z\n"), "tables/new.csv": []byte(waits)}
	list, err := Between(old, now)
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	Tell(&b, list)
	want := "print anew: Waits, A3, 1: AA-11 becomes CC-33\nnew chart: Grain, A3, 1\ntake down: Waits, A3, 2\n" +
		"tables/gone: no longer there\ntables/new: a new table\n"
	if b.String() != want {
		t.Errorf("got\n%s\nwant\n%s", b.String(), want)
	}
}

// TestManyCharts: the list does not run off the screen, and says so.
func TestManyCharts(t *testing.T) {
	head, old, now := "chart,paper,sheet,stamp\n", "", ""
	for _, c := range strings.Split("abcdefghijklmnop", "") {
		old += c + ",A3,1,X" + c + "\n"
		now += c + ",A3,1,Y" + c + "\n"
	}
	list, err := Between(Values{Stamps: []byte(head + old)}, Values{Stamps: []byte(head + now)})
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	Tell(&b, list)
	if n := strings.Count(b.String(), "print anew"); n != mostCharts || !strings.Contains(b.String(), "and 4 charts more") {
		t.Errorf("%d charts are named:\n%s", n, b.String())
	}
}

// TestBrokenTable: a file that somebody spoiled is named.
func TestBrokenTable(t *testing.T) {
	_, err := Between(Values{"tables/a.csv": []byte("a,b\n1\n")}, Values{"tables/a.csv": []byte("a,b\n1,2\n")})
	if err == nil || !strings.HasPrefix(err.Error(), "tables/a.csv: as it was: ") {
		t.Errorf("got %v", err)
	}
}

// A handbook against itself has no change, and what came the one way went the other.
func FuzzBetween(f *testing.F) {
	f.Add(waits+"a,v,hung,12,\n", waits+"b,v,hung,12,\n")
	f.Add("a\n", "a,b\n1,2\n")
	f.Fuzz(func(t *testing.T, old, now string) {
		a, b := Values{"x.csv": []byte(old)}, Values{"x.csv": []byte(now)}
		there, err := Between(a, b)
		if err != nil {
			return
		}
		if same, err := Between(a, a); err != nil || len(same) > 0 {
			t.Errorf("against itself: %+v, %v", same, err)
		}
		back, err := Between(b, a)
		if err != nil || len(back) != len(there) {
			t.Fatalf("there %+v, back %+v, %v", there, back, err)
		}
		for i := range there {
			if len(there[i].Added) != len(back[i].Gone) || len(there[i].Changed) != len(back[i].Changed) {
				t.Errorf("there %+v, back %+v", there[i], back[i])
			}
		}
	})
}
