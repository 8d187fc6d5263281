// Package publish puts a finished handbook on disk, all of it or none of it.
//
// The new tree is written into a temporary folder beside the output, flushed to
// the disk, and swapped with the old one in a single step where the system can
// do that. Whatever fails before the swap leaves the old handbook as it was; a
// kill at any moment leaves one whole handbook, the old or the new.
//
// The package knows nothing of materials or pages: it takes finished files, so
// a handbook with problems never gets this far.
package publish

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
)

// File is one finished file of the handbook. Path is relative to the output,
// with forward slashes on every system.
type File struct {
	Path string
	Data []byte
}

// Options are the choices of one publish. The zero value is right for a normal one.
type Options struct {
	// Sources are the folders that the handbook was made from. The output may
	// not be one of them, nor a folder that holds one of them.
	Sources []string
	// NoSync leaves out the flush to the disk: for a preview that is published
	// again a moment later. A crash of the machine may then cost the handbook.
	NoSync bool

	fault    func(step, path string) error // tests: called before each step; an error stops the publish there
	twoSteps bool                          // tests: swap with two renames, as on systems without an exchange
}

// Result says what a publish did.
type Result struct {
	// Changed is false when the output already held exactly these files; then
	// nothing was touched.
	Changed bool
	// Files and Bytes count the handbook's files, without the marker.
	Files int
	Bytes int64
	// Leftover is the old tree's temporary name when the new handbook is in
	// place but the old one could not be removed. The next publish tries again.
	Leftover string
}

// ErrForeign is wrapped by every refusal to replace a folder that is not a
// handbook of ours.
var ErrForeign = errors.New("not a published handbook")

// Publish makes the folder out hold exactly the given files, a marker that
// lists them, and the .gitignore that the folder had before. It is safe to call
// from several processes at once: they take turns where the system has locks.
func Publish(out string, files []File, o Options) (Result, error) {
	var done Result
	if err := checkPaths(files); err != nil {
		return done, err
	}
	target, err := resolve(out, o.Sources)
	if err != nil {
		return done, err
	}
	parent := filepath.Dir(target)
	if err := os.MkdirAll(parent, dirMode); err != nil {
		return done, fmt.Errorf("publish %s: %w", out, err)
	}
	unlock, locked, err := lockFolder(parent)
	if err != nil {
		return done, fmt.Errorf("publish %s: %w", out, err)
	}
	defer unlock()
	if err := recoverTarget(target, locked); err != nil {
		return done, fmt.Errorf("publish %s: %w", out, err)
	}
	old, err := inspect(target)
	if err != nil {
		return done, fmt.Errorf("publish %s: %w", out, err)
	}
	next := newMarker(files)
	done.Files = len(files)
	for _, f := range files {
		done.Bytes += int64(len(f.Data))
	}
	if old.marker != nil && old.marker.equal(next) && old.verify() {
		return done, nil
	}
	done.Changed = true
	done.Leftover, err = replace(target, files, next, old, o)
	if err != nil {
		return Result{}, fmt.Errorf("publish %s: %w", out, err)
	}
	return done, nil
}

// replace builds the new tree beside the target and swaps the two.
func replace(target string, files []File, m *marker, old *tree, o Options) (leftover string, err error) {
	tmp, err := os.MkdirTemp(filepath.Dir(target), tempPrefix(target, "new")+"*")
	if err != nil {
		return "", err
	}
	if err := writeTree(tmp, files, m, old.gitignore, o); err != nil {
		return "", errors.Join(err, os.RemoveAll(tmp))
	}
	aside, err := swap(tmp, target, old.exists, o)
	if err != nil {
		return "", errors.Join(err, os.RemoveAll(tmp))
	}
	if !o.NoSync {
		// The new handbook is in place. Should this flush fail, a power cut
		// may bring back the old name; both trees are whole.
		syncFolder(filepath.Dir(target))
	}
	if aside == "" {
		return "", nil
	}
	if err := o.step("remove old", aside); err != nil {
		return aside, nil
	}
	if err := os.RemoveAll(aside); err != nil {
		return aside, nil
	}
	return "", nil
}

// step lets a test stop the publish at a named place.
func (o Options) step(name, path string) error {
	if o.fault == nil {
		return nil
	}
	if err := o.fault(name, path); err != nil {
		return fmt.Errorf("%s %s: %w", name, path, err)
	}
	return nil
}

// sorted returns the files in the order of their paths, whatever order they came in.
func sorted(files []File) []File {
	s := slices.Clone(files)
	slices.SortFunc(s, func(a, b File) int {
		if a.Path < b.Path {
			return -1
		}
		if a.Path > b.Path {
			return 1
		}
		return 0
	})
	return s
}
