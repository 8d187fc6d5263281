package roll

import "testing"

// BenchmarkNeed is a job worked out, and its piece priced.
func BenchmarkNeed(b *testing.B) {
	j := notices()
	b.ReportAllocs()
	for b.Loop() {
		n, err := j.Need()
		if err != nil {
			b.Fatal(err)
		}
		if _, err := n.EachCosts(Prices{Film: 1.2, Hour: 45}, j.Pieces); err != nil {
			b.Fatal(err)
		}
	}
}
