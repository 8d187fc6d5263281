package publish

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
)

var errPlanted = errors.New("planted fault")

// steps counts the steps of replacing edition one by edition two.
func steps(t *testing.T, o Options) []string {
	t.Helper()
	out := output(t)
	mustPublish(t, out, book("one"), o)
	var names []string
	o.fault = func(step, path string) error {
		names = append(names, step)
		return nil
	}
	mustPublish(t, out, book("two"), o)
	return names
}

// ways are the two ways to swap.
var ways = []struct {
	name string
	o    Options
}{
	{"exchange", Options{}},
	{"two renames", Options{twoSteps: true}},
}

// TestFailureAtAnyStepLeavesAWholeHandbook stops a publish by an error at every
// single step: before the swap the old handbook must stand, after it the new one,
// and nothing may be left beside it.
func TestFailureAtAnyStepLeavesAWholeHandbook(t *testing.T) {
	for _, way := range ways {
		t.Run(way.name, func(t *testing.T) {
			names := steps(t, way.o)
			if len(names) < 10 {
				t.Fatalf("only %d steps: %v", len(names), names)
			}
			for i, name := range names {
				out := output(t)
				mustPublish(t, out, book("one"), way.o)
				o, n := way.o, 0
				o.fault = func(step, path string) error {
					n++
					if n == i+1 {
						return errPlanted
					}
					return nil
				}
				r, err := Publish(out, book("two"), o)
				if name == "remove old" {
					if err != nil || r.Leftover == "" {
						t.Errorf("step %d (%s): %+v, %v", i, name, r, err)
					}
					holdsExactly(t, out, book("two"), nil)
					mustPublish(t, out, book("two"), way.o) // up to date, and tidies up
					alone(t, out)
					continue
				}
				if !errors.Is(err, errPlanted) {
					t.Errorf("step %d (%s): error %v", i, name, err)
				}
				holdsExactly(t, out, book("one"), nil)
				alone(t, out)
			}
		})
	}
}

// TestFirstPublishFails leaves nothing at all.
func TestFirstPublishFails(t *testing.T) {
	out := output(t)
	o := Options{fault: func(step, path string) error {
		if step == "place" {
			return errPlanted
		}
		return nil
	}}
	if _, err := Publish(out, book("one"), o); !errors.Is(err, errPlanted) {
		t.Fatalf("error %v", err)
	}
	if exists(out) {
		t.Error("a half handbook stands")
	}
	alone(t, out)
}

// TestKillAtAnyStepLeavesAWholeHandbook kills a child process (SIGKILL) at every
// step. What stands afterwards must be a whole handbook, or, for a kill between
// the two renames, become one with the next publish that fails before it starts
// writing; then a normal publish must succeed and leave nothing behind.
func TestKillAtAnyStepLeavesAWholeHandbook(t *testing.T) {
	if at := os.Getenv("PUBLISH_KILL_AT"); at != "" {
		dieAt(t, at)
		return
	}
	for w, way := range ways {
		t.Run(way.name, func(t *testing.T) {
			for i, name := range steps(t, way.o) {
				out := output(t)
				mustPublish(t, out, book("one"), way.o)
				cmd := exec.Command(os.Args[0], "-test.run=^TestKillAtAnyStepLeavesAWholeHandbook$")
				cmd.Env = append(os.Environ(), fmt.Sprintf("PUBLISH_KILL_AT=%d/%d", w, i+1), "PUBLISH_OUT="+out)
				text, err := cmd.CombinedOutput()
				var exit *exec.ExitError
				if !errors.As(err, &exit) || exit.ExitCode() != -1 {
					t.Fatalf("step %d (%s): the child was not killed: %v\n%s", i, name, err, text)
				}
				if len(beside(t, out)) == 0 {
					t.Errorf("step %d (%s): a kill in the middle should leave a temporary folder", i, name)
				}
				if name == "move new" {
					if exists(out) {
						t.Errorf("step %d (%s): the old handbook should be aside", i, name)
					}
					o := way.o
					o.fault = func(string, string) error { return errPlanted }
					if _, err := Publish(out, book("two"), o); !errors.Is(err, errPlanted) {
						t.Errorf("step %d (%s): %v", i, name, err)
					}
				}
				want := book("one")
				if name == "remove old" {
					want = book("two")
				}
				if diff := differs(t, out, want, nil); diff != "" {
					t.Errorf("step %d (%s): %s", i, name, diff)
				}
				mustPublish(t, out, book("three"), way.o)
				holdsExactly(t, out, book("three"), nil)
				alone(t, out)
			}
		})
	}
}

// dieAt is the child: it publishes edition two and kills itself at the given step.
func dieAt(t *testing.T, at string) {
	way, step, _ := strings.Cut(at, "/")
	w, err := strconv.Atoi(way)
	if err != nil {
		t.Fatal(err)
	}
	n, err := strconv.Atoi(step)
	if err != nil {
		t.Fatal(err)
	}
	o := ways[w].o
	o.fault = func(string, string) error {
		if n--; n == 0 {
			self, err := os.FindProcess(os.Getpid())
			if err != nil {
				return err
			}
			if err := self.Kill(); err != nil {
				return err
			}
			select {} // the signal is on its way
		}
		return nil
	}
	if _, err := Publish(os.Getenv("PUBLISH_OUT"), book("two"), o); err != nil {
		t.Fatal(err)
	}
	t.Fatal("was never killed")
}

// TestOtherPeoplesFoldersBesideTheOutputStay: only leftovers of this very output go.
func TestOtherPeoplesFoldersBesideTheOutputStay(t *testing.T) {
	out := output(t)
	root := filepath.Dir(out)
	mustPublish(t, out, book("zero"), Options{})
	keep := []string{".laydown-siteb-new-1/x", ".laydown-site/x", "site-new/x", "site.old/x"}
	for _, p := range keep {
		write(t, filepath.Join(root, p), "keep")
	}
	write(t, filepath.Join(root, ".laydown-site-new-file"), "a file, not a folder")
	write(t, filepath.Join(root, ".laydown-site-new-123", "index.html"), "half")
	write(t, filepath.Join(root, ".laydown-site-old-456", "index.html"), "old")
	mustPublish(t, out, book("one"), Options{})
	have := contents(t, root)
	for _, p := range append(keep, ".laydown-site-new-file") {
		if have[p] == "" {
			t.Errorf("%s is gone", p)
		}
	}
	for p := range have {
		if strings.HasPrefix(p, ".laydown-site-new-123/") || strings.HasPrefix(p, ".laydown-site-old-456/") {
			t.Errorf("%s was left", p)
		}
	}
}

// TestBringsBackTheOldTree: a kill between two renames leaves no output, and the
// old tree under its other name.
func TestBringsBackTheOldTree(t *testing.T) {
	failing := Options{fault: func(string, string) error { return errPlanted }}
	t.Run("the one published last", func(t *testing.T) {
		out := output(t)
		for i, edition := range []string{"one", "two", "three"} {
			old := filepath.Join(filepath.Dir(out), ".laydown-site-old-"+strconv.Itoa((i*2)%5))
			mustPublish(t, old, book(edition), Options{})
			when := time.Date(2020, 1, 1+i, 0, 0, 0, 0, time.UTC)
			if err := os.Chtimes(filepath.Join(old, markerName), when, when); err != nil {
				t.Fatal(err)
			}
		}
		if _, err := Publish(out, book("four"), failing); !errors.Is(err, errPlanted) {
			t.Fatal(err)
		}
		holdsExactly(t, out, book("three"), nil)
		alone(t, out)
	})
	t.Run("only a .gitignore", func(t *testing.T) {
		out := output(t)
		write(t, filepath.Join(filepath.Dir(out), ".laydown-site-old-1", ".gitignore"), "*")
		mustPublish(t, out, book("one"), Options{})
		holdsExactly(t, out, book("one"), map[string]string{".gitignore": "*"})
	})
	t.Run("somebody's folder of that name", func(t *testing.T) {
		out := output(t)
		theirs := filepath.Join(filepath.Dir(out), ".laydown-site-old-1")
		write(t, filepath.Join(theirs, "thesis.doc"), "keep")
		if _, err := Publish(out, book("one"), Options{}); !errors.Is(err, ErrForeign) {
			t.Fatal(err)
		}
		if contents(t, theirs)["thesis.doc"] != "keep" {
			t.Error("the folder was emptied")
		}
	})
}

// TestAReaderNeverMeetsAGap reads while others publish.
func TestAReaderNeverMeetsAGap(t *testing.T) {
	out := output(t)
	mustPublish(t, out, book("0"), Options{NoSync: true})
	a, b := t.TempDir(), t.TempDir()
	if err := exchange(a, b); errors.Is(err, errNoExchange) {
		t.Skip("this system has no exchange of folders: the gap between two renames is known")
	}
	stop := make(chan struct{})
	bad := make(chan error, 1)
	go func() {
		defer close(bad)
		for {
			select {
			case <-stop:
				return
			default:
			}
			if _, err := os.ReadFile(filepath.Join(out, "index.html")); err != nil {
				bad <- err
				return
			}
		}
	}()
	for i := range 30 {
		mustPublish(t, out, book(strconv.Itoa(i+1)), Options{NoSync: true})
	}
	close(stop)
	if err := <-bad; err != nil {
		t.Errorf("a reader found a gap: %v", err)
	}
}
