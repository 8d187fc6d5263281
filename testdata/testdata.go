// Package testdata holds the published values that the computations must
// reproduce, one file a source. Tests check them, and the handbook's verification
// page shows each beside what this build computed.
package testdata

import "embed"

// Published holds the files published/*.yaml.
//
//go:embed published
var Published embed.FS
