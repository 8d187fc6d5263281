package tables

import (
	"errors"
	"runtime"
	"sync"
	"sync/atomic"

	"laydown/gen/nip"
)

// eachOf computes n values on all processors, each worker with a solver of its own.
func eachOf[V any](n int, compute func(solver *nip.Solver, i int) (V, error)) ([]V, error) {
	list := make([]V, n)
	errs := make([]error, n)
	var next atomic.Int64
	var group sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), n) {
		group.Go(func() {
			solver := nip.NewSolver()
			for i := next.Add(1) - 1; i < int64(n); i = next.Add(1) - 1 {
				list[i], errs[i] = compute(solver, int(i))
			}
		})
	}
	group.Wait()
	return list, errors.Join(errs...)
}
