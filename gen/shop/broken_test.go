package shop

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// TestBroken loads every broken shop of testdata/broken over the small one and
// wants exactly the problems of its expect.txt. Each case brings the records
// that it refers to, so the same lines come out over any other data.
func TestBroken(t *testing.T) {
	folders, err := filepath.Glob("../../testdata/broken/*")
	if err != nil || len(folders) < 30 {
		t.Fatalf("found %d broken shops: %v", len(folders), err)
	}
	for _, folder := range folders {
		t.Run(filepath.Base(folder), func(t *testing.T) {
			want, err := os.ReadFile(filepath.Join(folder, "expect.txt"))
			if err != nil {
				t.Fatal(err)
			}
			s, problems := Load(smallShop(t), os.DirFS(filepath.Join(folder, "data")))
			if s != nil {
				t.Error("a shop came back although its data is broken")
			}
			if got := problems.Error() + "\n"; got != string(want) {
				t.Errorf("got\n%swant\n%s", got, want)
			}
			if strings.TrimSpace(string(want)) == "" {
				t.Error("expect.txt expects nothing")
			}
		})
	}
}
