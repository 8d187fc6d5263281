package tables

import "sync"

// memo keeps what was computed for a key. Two workers may compute the same at once; both
// get the same.
type memo[K comparable, V any] struct{ kept sync.Map }

// of gives what is kept for a key, or makes it.
func (m *memo[K, V]) of(k K, make func() (V, error)) (V, error) {
	if v, ok := m.kept.Load(k); ok {
		return v.(V), nil
	}
	v, err := make()
	if err == nil {
		m.kept.Store(k, v)
	}
	return v, err
}
