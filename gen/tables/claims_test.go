package tables

import "testing"

// What came out of each claim when it was first computed. The claims were committed
// before; a change here is a change of the physics or of the data, and has to be told.
func TestClaims(t *testing.T) {
	want := map[string]bool{
		"along-ridges-pp": true, "along-ridges-pet": true, "cold-hardly-ridges": false, "pp-curls-more": true,
		"lay-flat-stays": false, "damp-turns-to-film": true, "dry-turns-to-paper": true, "across-grows": true,
		"open-back-recovers": true, "filmed-back-does-not": false,
	}
	prints, err := demoTables(t).ClaimPrints()
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range prints {
		t.Logf("%s: expected %s; got %s; hit %v", p.ID, p.Expected, p.Got, p.Hit)
		if hit, ok := want[p.ID]; !ok || hit != p.Hit {
			t.Errorf("%s: hit %v", p.ID, p.Hit)
		}
		delete(want, p.ID)
	}
	for id := range want {
		t.Errorf("%s was not computed", id)
	}
}
