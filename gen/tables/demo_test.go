package tables_test

import (
	"testing"

	"laydown/data"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// demo makes the tables of the demonstration shop.
func demo(t testing.TB) *tables.Tables {
	t.Helper()
	s, problems := shop.Load(data.Files, nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	made, err := tables.New(s)
	if err != nil {
		t.Fatal(err)
	}
	return made
}

// everyWait computes the whole table once for the tests that sweep over it.
func everyWait(t testing.TB, made *tables.Tables) []tables.WaitValue {
	t.Helper()
	all, err := made.Waits()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 1000 {
		t.Fatalf("%d waits: the sweep would prove little", len(all))
	}
	return all
}
