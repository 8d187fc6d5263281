package publish

import (
	"fmt"
	"io/fs"
	"path"
	"strings"
	"unicode/utf8"
)

// checkPaths refuses any path that could leave the output, that some system in
// the shop cannot store, or that would meet another one on a disk that does not
// tell capitals from small letters.
func checkPaths(files []File) error {
	taken := map[string]string{}   // folded path of a file → path as given
	folders := map[string]string{} // folded path of a folder → a path below it
	for _, f := range files {
		if err := checkPath(f.Path); err != nil {
			return fmt.Errorf("publish %q: %w", f.Path, err)
		}
		key := strings.ToLower(f.Path)
		if other, ok := taken[key]; ok {
			return fmt.Errorf("publish %q: the same place as %q", f.Path, other)
		}
		taken[key] = f.Path
		for d := path.Dir(key); d != "."; d = path.Dir(d) {
			folders[d] = f.Path
		}
	}
	for _, f := range files {
		if below, ok := folders[strings.ToLower(f.Path)]; ok {
			return fmt.Errorf("publish %q: is a file, but %q needs a folder of that name", f.Path, below)
		}
	}
	return nil
}

// checkPath judges one path by itself.
func checkPath(p string) error {
	if !fs.ValidPath(p) || p == "." {
		return fmt.Errorf("must be a plain relative path with forward slashes, without empty, . or .. parts")
	}
	if p == markerName || p == gitignoreName {
		return fmt.Errorf("this name is kept for the publish itself")
	}
	for _, part := range strings.Split(p, "/") {
		if err := checkName(part); err != nil {
			return err
		}
	}
	return nil
}

// checkName judges one file or folder name against what file systems in use can
// store. The list of reserved names and characters is the Win32 one:
// Microsoft, "Naming Files, Paths, and Namespaces".
func checkName(name string) error {
	if len(name) > 255 {
		return fmt.Errorf("a name of %d bytes is longer than file systems take (255)", len(name))
	}
	for _, r := range name {
		if r < 0x20 || r == 0x7f || r == utf8.RuneError || strings.ContainsRune(`\:*?"<>|`, r) {
			return fmt.Errorf("the name %q has the character %q, which some file systems cannot store", name, r)
		}
	}
	if strings.HasSuffix(name, ".") || strings.HasSuffix(name, " ") {
		return fmt.Errorf("the name %q ends with a dot or a space, which some file systems drop", name)
	}
	stem, _, _ := strings.Cut(strings.ToLower(name), ".")
	switch stem {
	case "con", "prn", "aux", "nul",
		"com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9",
		"lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9":
		return fmt.Errorf("the name %q is a device on some systems", name)
	}
	return nil
}
