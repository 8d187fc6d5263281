package browser

import (
	"errors"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// validate runs the HTML validator over pages and returns its complaints.
func validate(t *testing.T, dir string, pages []string) []string {
	t.Helper()
	npm, err := filepath.Abs(filepath.Join(root, "testdata", "npm"))
	if err != nil {
		t.Fatal(err)
	}
	bin := filepath.Join(npm, "node_modules", ".bin", "html-validate")
	if _, err := os.Stat(bin); errors.Is(err, fs.ErrNotExist) {
		lacking(t, "the npm package html-validate")
	}
	if _, err := exec.LookPath("node"); err != nil {
		lacking(t, "node")
	}
	cmd := exec.Command(bin, append([]string{"--config", filepath.Join(npm, "htmlvalidate.cjs"), "--formatter", "text"}, pages...)...)
	cmd.Dir = dir
	out, err := cmd.Output()
	var exit *exec.ExitError
	if err != nil && !(errors.As(err, &exit) && exit.ExitCode() == 1) {
		t.Fatalf("html-validate: %v\n%s", err, out)
	}
	var faults []string
	for _, line := range strings.Split(string(out), "\n") {
		if strings.Contains(line, ": error [") || strings.Contains(line, ": warning [") {
			faults = append(faults, strings.TrimPrefix(line, dir+string(filepath.Separator)))
		}
	}
	if err != nil && len(faults) == 0 {
		t.Fatalf("html-validate: %v\n%s", err, out)
	}
	return faults
}

// TestValidHTML: pages of every kind are valid HTML, and with LAYDOWN_ALL every page.
func TestValidHTML(t *testing.T) {
	dir := handbook(t)
	for _, f := range validate(t, dir, sampled(pagesOf(t, dir))) {
		t.Error(f)
	}
}

// TestValidatorFindsPlantedFaults holds the validator to it.
func TestValidatorFindsPlantedFaults(t *testing.T) {
	rows := []struct{ page, want string }{
		{"good.html", ""},
		{"id-twice.html", "no-dup-id"},
		{"no-alt.html", "wcag/h37"},
		{"no-doctype.html", "missing-doctype"},
	}
	for _, row := range rows {
		faults := validate(t, faultyDir, []string{row.page})
		if row.want == "" && len(faults) > 0 {
			t.Errorf("%s: a false alarm: %q", row.page, faults)
		}
		if row.want != "" && !strings.Contains(strings.Join(faults, "\n"), row.want) {
			t.Errorf("%s: found %q, want %s", row.page, faults, row.want)
		}
	}
}
