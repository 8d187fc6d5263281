package shop

import (
	"strings"
	"testing"
)

// TestCautionsReplaced: a shop may word every caution anew, and may leave none of
// those out that rules call for.
func TestCautionsReplaced(t *testing.T) {
	own := file("cautions.yaml", "replaces: all\ncautions:\n  - {id: nip, name: Nip, says: Keep off. Follow local codes.}\n")
	_, problems := Load(smallShop(t), own)
	want := "cautions that pages and plans call for are not there: write hot-roller, blade, solvent, fumes, static, lifting under cautions:"
	if got := problems.Error(); !strings.HasSuffix(got, want) || strings.Contains(got, "\n") {
		t.Errorf("got %s\nwant one problem that ends in %s", got, want)
	}
	own = file("cautions.yaml", "cautions:\n  - {id: nip, name: Jaws, says: Keep off. Follow local codes.}\n")
	s := mustLoad(t, smallShop(t), own)
	if s.Caution(NipCaution).Name != "Jaws" || s.Caution(BladeCaution) == nil {
		t.Error("one caution of the shop's own is not laid over the program's")
	}
}
