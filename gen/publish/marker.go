package publish

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"maps"
)

const (
	markerName    = ".laydown"
	gitignoreName = ".gitignore"
	markerFormat  = 1
)

// marker is the content of the file that makes a folder ours: the SHA-256 of
// every published file. It holds no time and no address, so equal handbooks
// have equal markers.
type marker struct {
	Note   string            `json:"note"`
	Format int               `json:"format"`
	Files  map[string]string `json:"files"`
}

func newMarker(files []File) *marker {
	m := &marker{
		Note:   "Published by laydown, which replaces this whole folder. Keep nothing of your own here.",
		Format: markerFormat,
		Files:  make(map[string]string, len(files)),
	}
	for _, f := range files {
		m.Files[f.Path] = digest(f.Data)
	}
	return m
}

func digest(data []byte) string {
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:])
}

// text is the marker as written: JSON, with the paths in order.
func (m *marker) text() ([]byte, error) {
	b, err := json.MarshalIndent(m, "", "  ")
	if err != nil {
		return nil, err
	}
	return append(b, '\n'), nil
}

func (m *marker) equal(n *marker) bool {
	return m.Format == n.Format && maps.Equal(m.Files, n.Files)
}

// readMarker parses a marker. An unreadable one makes the folder foreign: it
// cannot say which files are ours to remove.
func readMarker(text []byte) (*marker, error) {
	var m marker
	if err := json.Unmarshal(text, &m); err != nil {
		return nil, fmt.Errorf("its %s cannot be read (%v): %w", markerName, err, ErrForeign)
	}
	if m.Format < 1 || m.Format > markerFormat {
		return nil, fmt.Errorf("its %s has format %d, this program knows %d: %w", markerName, m.Format, markerFormat, ErrForeign)
	}
	return &m, nil
}
