package testdata

import (
	"bytes"
	"fmt"
	"io/fs"
	"math"

	"gopkg.in/yaml.v3"
)

// Source is a file of published values: one book, paper or standard.
type Source struct {
	File    string  `yaml:"-"`
	Title   string  `yaml:"title"`
	Where   string  `yaml:"where"`   // author, edition, section, equation, page
	Package string  `yaml:"package"` // whose Verify computes them
	Values  []Value `yaml:"values"`
}

// Value is one published value with what it was published for.
type Value struct {
	What  string             `yaml:"what"`
	Of    string             `yaml:"of"` // a substance, where the source names one
	Given map[string]float64 `yaml:"given"`
	// Expect is the published value, Tolerance how far the computed one may be
	// from it: half its last printed digit, or what the file says.
	Expect    float64 `yaml:"expect"`
	Tolerance float64 `yaml:"tolerance"`
	Unit      string  `yaml:"unit"`
	Status    string  `yaml:"status"` // published, computed elsewhere, worked out from published, from memory
}

// Sources reads every file of published values, in the order of their names.
func Sources() ([]Source, error) {
	files, err := fs.Glob(Published, "published/*.yaml")
	if err != nil {
		return nil, err
	}
	var list []Source
	for _, file := range files {
		text, err := Published.ReadFile(file)
		if err != nil {
			return nil, err
		}
		s := Source{File: file}
		decoder := yaml.NewDecoder(bytes.NewReader(text))
		decoder.KnownFields(true)
		if err := decoder.Decode(&s); err != nil {
			return nil, fmt.Errorf("%s: %w", file, err)
		}
		list = append(list, s)
	}
	return list, nil
}

// Reproduce computes every published value of a package. It returns how many
// there are and a line for each that is not met.
func Reproduce(pkg string, verify func(what string, given map[string]float64) (float64, error)) (n int, missed []string, err error) {
	sources, err := Sources()
	if err != nil {
		return 0, nil, err
	}
	for _, s := range sources {
		if s.Package != pkg {
			continue
		}
		for _, v := range s.Values {
			n++
			got, err := verify(v.What, v.Given)
			if err != nil || !(v.Tolerance > 0) || !(math.Abs(got-v.Expect) <= v.Tolerance) {
				missed = append(missed, fmt.Sprintf("%s: %s %s %v: computed %.10g (%v), published %.10g ± %g",
					s.File, v.What, v.Of, v.Given, got, err, v.Expect, v.Tolerance))
			}
		}
	}
	return n, missed, nil
}
