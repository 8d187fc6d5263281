package publish

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
)

// Modes are fixed, whatever the umask, so that equal input gives equal trees
// and everybody in the shop can read the handbook.
const (
	fileMode os.FileMode = 0o644
	dirMode  os.FileMode = 0o755
)

// writeTree writes every file, the carried .gitignore and, last, the marker
// into the empty folder root, then flushes files and folders.
func writeTree(root string, files []File, m *marker, gitignore []byte, o Options) error {
	dirs := []string{root}
	made := map[string]bool{root: true}
	for _, f := range sorted(files) {
		name := filepath.Join(root, filepath.FromSlash(f.Path))
		for _, d := range missing(root, filepath.Dir(name), made) {
			if err := o.step("folder", d); err != nil {
				return err
			}
			if err := os.Mkdir(d, dirMode); err != nil {
				return err
			}
			made[d] = true
			dirs = append(dirs, d)
		}
		if err := writeFile(name, f.Data, o); err != nil {
			return err
		}
	}
	if gitignore != nil {
		if err := writeFile(filepath.Join(root, gitignoreName), gitignore, o); err != nil {
			return err
		}
	}
	text, err := m.text()
	if err != nil {
		return err
	}
	// The marker comes last: a tree without it was never finished.
	if err := writeFile(filepath.Join(root, markerName), text, o); err != nil {
		return err
	}
	for _, d := range dirs {
		if err := os.Chmod(d, dirMode); err != nil {
			return err
		}
		if o.NoSync {
			continue
		}
		if err := o.step("flush", d); err != nil {
			return err
		}
		if err := syncFolder(d); err != nil {
			return fmt.Errorf("flush folder %s: %w", d, err)
		}
	}
	return nil
}

// missing lists the folders from root down to dir that were not made yet, outermost first.
func missing(root, dir string, made map[string]bool) []string {
	var list []string
	for d := dir; d != root && !made[d]; d = filepath.Dir(d) {
		list = append(list, d)
	}
	slices.Reverse(list)
	return list
}

// writeFile creates a file that must not exist yet, and flushes it.
func writeFile(name string, data []byte, o Options) (err error) {
	if err := o.step("write", name); err != nil {
		return err
	}
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, fileMode)
	if err != nil {
		return err
	}
	defer func() {
		if closed := f.Close(); err == nil {
			err = closed
		}
	}()
	if _, err := f.Write(data); err != nil {
		return err
	}
	if err := f.Chmod(fileMode); err != nil {
		return err
	}
	if o.NoSync {
		return nil
	}
	return f.Sync()
}
