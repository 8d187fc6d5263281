package publish

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"
)

// errNoExchange says that the system or the file system cannot swap two folders
// in one step.
var errNoExchange = errors.New("no exchange of folders here")

// tempPrefix starts the names of the temporary folders beside the output. kind
// is "new" for a tree being written and "old" for one moved out of the way.
func tempPrefix(target, kind string) string {
	return ".laydown-" + filepath.Base(target) + "-" + kind + "-"
}

// swap puts tmp at the target and returns the name that the old tree has now,
// "" when there was none.
func swap(tmp, target string, exists bool, o Options) (aside string, err error) {
	if !exists {
		if err := o.step("place", target); err != nil {
			return "", err
		}
		return "", os.Rename(tmp, target)
	}
	if !o.twoSteps {
		if err := o.step("exchange", target); err != nil {
			return "", err
		}
		err := exchange(tmp, target)
		if err == nil {
			return tmp, nil
		}
		if !errors.Is(err, errNoExchange) {
			return "", fmt.Errorf("swap the new handbook in: %w", err)
		}
	}
	return swapInTwo(tmp, target, o)
}

// swapInTwo moves the old tree aside and the new one in. Between the two
// renames the output is missing for a moment; a failure moves the old tree
// back, and after a kill the next publish does (recoverTarget).
func swapInTwo(tmp, target string, o Options) (aside string, err error) {
	// The name of the new tree is free for the other kind too: it is unique.
	suffix := strings.TrimPrefix(filepath.Base(tmp), tempPrefix(target, "new"))
	aside = filepath.Join(filepath.Dir(target), tempPrefix(target, "old")+suffix)
	if err := o.step("move old", target); err != nil {
		return "", err
	}
	if err := os.Rename(target, aside); err != nil {
		return "", fmt.Errorf("move the old handbook aside: %w", err)
	}
	err = o.step("move new", target)
	if err == nil {
		err = os.Rename(tmp, target)
	}
	if err == nil {
		return aside, nil
	}
	err = fmt.Errorf("move the new handbook in: %w", err)
	if undo := os.Rename(aside, target); undo != nil {
		return "", errors.Join(err, fmt.Errorf("and the old handbook back (it is whole, in %s): %w", aside, undo))
	}
	return "", err
}

// staleAfter is how old a temporary folder must be to count as left behind where
// the system has no locks. A publish takes seconds.
const staleAfter = time.Hour

// recoverTarget tidies up after a publish that was killed: it moves the old tree
// back where a kill fell between two renames, and removes what is left over.
// With the lock held, every temporary folder of this output is such a leftover.
func recoverTarget(target string, locked bool) error {
	stale := func(kind string) ([]string, error) {
		entries, err := os.ReadDir(filepath.Dir(target))
		if err != nil {
			return nil, err
		}
		var list []string
		for _, e := range entries {
			if !e.IsDir() || !strings.HasPrefix(e.Name(), tempPrefix(target, kind)) {
				continue
			}
			info, err := e.Info()
			if err != nil {
				continue // gone in the meantime
			}
			if locked || time.Since(info.ModTime()) > staleAfter {
				list = append(list, filepath.Join(filepath.Dir(target), e.Name()))
			}
		}
		return list, nil
	}
	aside, err := stale("old")
	if err != nil {
		return err
	}
	if _, err := os.Lstat(target); errors.Is(err, os.ErrNotExist) && len(aside) > 0 {
		i := newest(aside)
		if i < 0 {
			return fmt.Errorf("%s stands where an old handbook would, %w", aside[0], ErrForeign)
		}
		if err := os.Rename(aside[i], target); err != nil {
			return fmt.Errorf("bring back the old handbook: %w", err)
		}
		aside = slices.Delete(aside, i, i+1)
	}
	fresh, err := stale("new")
	if err != nil {
		return err
	}
	for _, dir := range append(aside, fresh...) {
		// A leftover that cannot be removed now (open on another machine, say)
		// is in nobody's way: the next publish tries again.
		_ = os.RemoveAll(dir)
	}
	return nil
}

// newest returns the index of the old tree that was published last, -1 when
// none of the folders is one.
func newest(dirs []string) int {
	best, at := -1, time.Time{}
	for i, d := range dirs {
		if _, err := inspect(d); err != nil {
			continue
		}
		info, err := os.Lstat(filepath.Join(d, markerName))
		switch {
		case err == nil && info.ModTime().After(at):
			best, at = i, info.ModTime()
		case err != nil && best < 0:
			best = i // never published: empty, or with a .gitignore
		}
	}
	return best
}
