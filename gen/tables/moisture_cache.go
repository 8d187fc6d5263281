package tables

import (
	"sync"

	"laydown/gen/quantity"
)

// gasKey is what a gas limit depends on.
type gasKey struct {
	medium   string
	humidity quantity.Fraction
	room     quantity.Temperature
}

// gasLimits keeps the limits that were computed: the same sheet in the same
// air comes up for every film and machine.
type gasLimits struct {
	mu   sync.Mutex
	kept map[gasKey]gasLimit
}

func (g *gasLimits) get(k gasKey) (gasLimit, bool) {
	g.mu.Lock()
	defer g.mu.Unlock()
	v, ok := g.kept[k]
	return v, ok
}

func (g *gasLimits) put(k gasKey, v gasLimit) {
	g.mu.Lock()
	defer g.mu.Unlock()
	if g.kept == nil {
		g.kept = map[gasKey]gasLimit{}
	}
	g.kept[k] = v
}
