package publish

import (
	"bytes"
	"fmt"
	"testing"
)

// BenchmarkPublish writes and swaps a handbook of 300 files and 9 MB.
func BenchmarkPublish(b *testing.B) {
	files := func(edition int) []File {
		var list []File
		for i := range 300 {
			text := fmt.Sprintf("page %d of edition %d ", i, edition)
			list = append(list, File{Path: fmt.Sprintf("pages/%03d.html", i), Data: bytes.Repeat([]byte(text), 30_000/len(text))})
		}
		return list
	}
	run := func(b *testing.B, o Options, editions [][]File, warm bool) {
		out := b.TempDir() + "/site"
		if warm {
			if _, err := Publish(out, editions[0], o); err != nil {
				b.Fatal(err)
			}
		}
		i := 0
		for b.Loop() {
			r, err := Publish(out, editions[i%len(editions)], o)
			if err != nil {
				b.Fatal(err)
			}
			if r.Changed == warm {
				b.Fatalf("changed = %v", r.Changed)
			}
			i++
		}
	}
	two := [][]File{files(1), files(2)}
	b.Run("flushed", func(b *testing.B) { run(b, Options{}, two, false) })
	b.Run("preview", func(b *testing.B) { run(b, Options{NoSync: true}, two, false) })
	b.Run("up to date", func(b *testing.B) { run(b, Options{}, two[:1], true) })
}
