// Package data carries the demonstration shop: the invented inks, media, films,
// machines and rooms of a finishing room in a small harbour town, embedded so
// that the program publishes a whole handbook with no folder given.
package data

import "embed"

// Files holds the demonstration's YAML, one file a kind; families of faults have
// a file each.
//
//go:embed *.yaml faults/*.yaml
var Files embed.FS
