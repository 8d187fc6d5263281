package publish

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// tree is what stands at the output before a publish.
type tree struct {
	root      string
	exists    bool
	marker    *marker // nil when the folder is empty or missing
	gitignore []byte  // nil when there is none
}

// inspect looks at the output and refuses it unless it is missing, empty, holds
// only a .gitignore, or is a handbook of ours with nothing else in it.
func inspect(target string) (*tree, error) {
	t := &tree{root: target}
	info, err := os.Lstat(target)
	if errors.Is(err, fs.ErrNotExist) {
		return t, nil
	}
	if err != nil {
		return nil, err
	}
	if !info.IsDir() {
		return nil, fmt.Errorf("is a file, %w", ErrForeign)
	}
	t.exists = true
	if t.gitignore, err = readOwn(target, gitignoreName); err != nil {
		return nil, err
	}
	text, err := readOwn(target, markerName)
	if err != nil {
		return nil, err
	}
	if text != nil {
		if t.marker, err = readMarker(text); err != nil {
			return nil, err
		}
	}
	strays, err := t.strays()
	if err != nil {
		return nil, err
	}
	if len(strays) == 0 {
		return t, nil
	}
	if t.marker == nil {
		return nil, fmt.Errorf("holds %s and no %s: %w", some(strays), markerName, ErrForeign)
	}
	return nil, fmt.Errorf("holds %s, which no publish wrote; move what you want to keep: %w", some(strays), ErrForeign)
}

// readOwn reads a file of the output that must be a plain one; nil when it is missing.
func readOwn(root, name string) ([]byte, error) {
	full := filepath.Join(root, name)
	info, err := os.Lstat(full)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	if !info.Mode().IsRegular() {
		return nil, fmt.Errorf("its %s is not a plain file: %w", name, ErrForeign)
	}
	data, err := os.ReadFile(full)
	if data == nil && err == nil {
		data = []byte{}
	}
	return data, err
}

// strays lists what is in the folder and in no marker, in order. What file
// browsers leave behind does not count.
func (t *tree) strays() ([]string, error) {
	var list []string
	err := t.walk(func(path string, entry fs.DirEntry) {
		if t.marker != nil && t.marker.Files[path] != "" && entry.Type().IsRegular() {
			return
		}
		if !litter(entry.Name()) {
			list = append(list, path)
		}
	})
	return list, err
}

// walk calls fn for everything below the root that is not a folder, the marker
// or the .gitignore. It follows no symbolic link.
func (t *tree) walk(fn func(path string, entry fs.DirEntry)) error {
	return filepath.WalkDir(t.root, func(full string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		rel, err := filepath.Rel(t.root, full)
		if err != nil {
			return err
		}
		path := filepath.ToSlash(rel)
		if path != markerName && path != gitignoreName {
			fn(path, entry)
		}
		return nil
	})
}

// litter reports the names that file browsers and file shares leave in folders.
func litter(name string) bool {
	switch strings.ToLower(name) {
	case ".ds_store", "thumbs.db", "desktop.ini", ".directory":
		return true
	}
	return strings.HasPrefix(name, "._") || strings.HasPrefix(name, ".nfs")
}

// verify reports whether every file of the marker is on disk with its content
// and its mode.
func (t *tree) verify() bool {
	for path, want := range t.marker.Files {
		full := filepath.Join(t.root, filepath.FromSlash(path))
		info, err := os.Lstat(full)
		if err != nil || !info.Mode().IsRegular() || !sameMode(info.Mode(), fileMode) {
			return false
		}
		data, err := os.ReadFile(full)
		if err != nil || digest(data) != want {
			return false
		}
	}
	return true
}

// some names at most three of the paths.
func some(paths []string) string {
	slices.Sort(paths)
	if len(paths) <= 3 {
		return strings.Join(paths, ", ")
	}
	return fmt.Sprintf("%s and %d more", strings.Join(paths[:3], ", "), len(paths)-3)
}
