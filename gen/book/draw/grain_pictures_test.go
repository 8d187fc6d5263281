package draw

import (
	"encoding/xml"
	"io"
	"strings"
	"testing"
)

// TestGrainPictures: every picture is well-formed, named, without words but a label's
// size, and shows more than an outline.
func TestGrainPictures(t *testing.T) {
	names := GrainPictureNames()
	if len(names) < 8 {
		t.Fatalf("only %d pictures", len(names))
	}
	for _, name := range names {
		svg, ok := GrainPicture("it", name)
		if !ok {
			t.Errorf("%s is listed, and there is none", name)
		}
		dec := xml.NewDecoder(strings.NewReader(string(svg)))
		for {
			if _, err := dec.Token(); err == io.EOF {
				break
			} else if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
		}
		text := string(svg)
		if !strings.Contains(text, `aria-labelledby="it-t it-d"`) || strings.Contains(text, "<text") != (name == "grain-label") {
			t.Errorf("%s has no name, or words: %s", name, text)
		}
		if n := strings.Count(text, `class="thin"`); n < 10 {
			t.Errorf("%s has %d thin lines: the grain is not to be seen", name, n)
		}
	}
	if _, ok := GrainPicture("it", "grain-tear"); ok {
		t.Error("there is a picture of a tear, which proves nothing")
	}
}

// TestUprightGrain: narrow sheets show upright grain too.
func TestUprightGrain(t *testing.T) {
	for _, upright := range []bool{true, false} {
		var v canvas
		fromAbove(&v, box{0, 0, 130, 34}, upright)
		if n := strings.Count(string(v.close()), "thin"); n < 5 {
			t.Errorf("upright %v: %d lines of grain", upright, n)
		}
	}
}
