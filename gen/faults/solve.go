package faults

// Effort says how much may be spent on a key. Zero values stand for the defaults, and
// equal effort gives an equal key on any machine: nothing is timed.
type Effort struct {
	// Table is the most states that are valued one and all, for an exact key.
	// Problems that have more are searched.
	Table int
}

// defaultTable takes 32 MB and some tenths of a second.
const defaultTable = 4_000_000

// Solve finds the key of least expected cost.
func Solve(p *Problem, e Effort) (*Key, error) {
	m, err := newModel(p)
	if err != nil {
		return nil, err
	}
	if e.Table == 0 {
		e.Table = defaultTable
	}
	t := newTable(m, 0)
	k := m.explain(m.plan(0, m.prior, 0, t), t)
	k.Least, k.Exact, k.States = k.Cost, true, len(t.value)
	return k, nil
}
