package shop

import (
	"io/fs"
	"os"
	"testing"
	"testing/fstest"
)

// smallShop is the data of a tiny whole shop that has nothing wrong with it.
func smallShop(t testing.TB) fs.FS {
	t.Helper()
	return os.DirFS("../../testdata/smallshop/data")
}

// file makes a folder with one file in it.
func file(name, text string) fstest.MapFS {
	return fstest.MapFS{name: {Data: []byte(text)}}
}

// mustLoad loads a shop that has nothing wrong with it.
func mustLoad(t testing.TB, demo, own fs.FS) *Shop {
	t.Helper()
	s, problems := Load(demo, own)
	if err := problems.Err(); err != nil {
		t.Fatal(err)
	}
	return s
}
