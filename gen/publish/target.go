package publish

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
)

// resolve turns the output's name into an absolute one whose parents hold no
// symbolic link, and refuses the places where a swap would do harm.
func resolve(out string, sources []string) (string, error) {
	refuse := func(why string) (string, error) {
		return "", fmt.Errorf("publish %s: %s", out, why)
	}
	if strings.TrimSpace(out) == "" {
		return "", errors.New("publish: the output folder has no name")
	}
	abs, err := filepath.Abs(out)
	if err != nil {
		return "", fmt.Errorf("publish %s: %w", out, err)
	}
	if filepath.Dir(abs) == abs {
		return refuse("a whole file system cannot be the output")
	}
	if info, err := os.Lstat(abs); err == nil && info.Mode()&os.ModeSymlink != 0 {
		return refuse("is a symbolic link; name the folder itself")
	}
	target := filepath.Join(realPath(filepath.Dir(abs)), filepath.Base(abs))
	if cwd, err := os.Getwd(); err == nil && holds(target, realPath(cwd)) {
		return refuse("is the folder this command runs in, or one above it; run it from outside")
	}
	if home, err := os.UserHomeDir(); err == nil && holds(target, realPath(home)) {
		return refuse("is the home folder, or one above it")
	}
	for _, s := range sources {
		src, err := filepath.Abs(s)
		if err != nil {
			return "", fmt.Errorf("publish %s: source %s: %w", out, s, err)
		}
		if holds(target, realPath(src)) {
			return refuse("is the source folder " + s + ", or holds it; a publish would replace it")
		}
	}
	return target, nil
}

// realPath follows the symbolic links of an absolute path, as far as it exists.
func realPath(p string) string {
	if real, err := filepath.EvalSymlinks(p); err == nil {
		return real
	}
	up := filepath.Dir(p)
	if up == p {
		return p
	}
	return filepath.Join(realPath(up), filepath.Base(p))
}

// holds reports whether path is dir or lies below it. It asks the file system
// too, for disks on which one folder has several spellings.
func holds(dir, path string) bool {
	dirInfo, dirErr := os.Stat(dir)
	for p := path; ; p = filepath.Dir(p) {
		if p == dir {
			return true
		}
		if dirErr == nil {
			if info, err := os.Stat(p); err == nil && os.SameFile(dirInfo, info) {
				return true
			}
		}
		if filepath.Dir(p) == p {
			return false
		}
	}
}
