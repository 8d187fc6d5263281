package shop

import (
	"errors"
	"io"
	"io/fs"
	"path"
	"slices"
	"strings"
	"unicode/utf8"
)

// longestFile is the most bytes that a data file may have: a film's record
// takes about one thousand, so this is a thousand films.
const longestFile = 1 << 20

// dataFiles lists the data files of a folder: those at its root, and those in
// folders named after a kind. Files whose names are not quite right are
// problems; other files (a Go file, a picture) are none of ours.
func (l *loader) dataFiles(s *side) []string {
	var found []string
	root, err := fs.ReadDir(s.files, ".")
	if err != nil {
		if !errors.Is(err, fs.ErrNotExist) {
			l.sayAt(Pos{File: strings.TrimSuffix(s.prefix, "/"), Line: 1, Col: 1}, "cannot be read: %s", plainError(err))
		}
		return nil
	}
	for _, e := range root {
		name := e.Name()
		if strings.HasPrefix(name, ".") {
			continue // editors' and systems' own files
		}
		if !e.IsDir() {
			found = append(found, l.named(s, name)...)
			continue
		}
		inside, err := fs.ReadDir(s.files, name)
		if err != nil {
			l.sayAt(s.at(name), "cannot be read: %s", plainError(err))
			l.markUnread(s, name)
			continue
		}
		var yamls []string
		for _, f := range inside {
			if !f.IsDir() && !strings.HasPrefix(f.Name(), ".") && looksLikeData(f.Name()) {
				yamls = append(yamls, path.Join(name, f.Name()))
			}
		}
		if _, ok := kindOf(name); !ok {
			if len(yamls) > 0 {
				l.sayAt(s.at(name), "the folder %s is not read: name it after what it holds (%s)%s",
					quote(name), list(kindKeys()), maybe(nearest(name, kindKeys())))
			}
			continue
		}
		for _, f := range yamls {
			found = append(found, l.named(s, f)...)
		}
	}
	slices.Sort(found)
	return found
}

// looksLikeData says whether a name ends as a data file's does, or nearly so.
func looksLikeData(name string) bool {
	end := strings.ToLower(path.Ext(name))
	return end == ".yaml" || end == ".yml"
}

// named passes on a data file's name if it is spelt as it should be.
func (l *loader) named(s *side, name string) []string {
	if !looksLikeData(name) {
		return nil
	}
	if path.Ext(name) != ".yaml" {
		right := strings.TrimSuffix(path.Base(name), path.Ext(name)) + ".yaml"
		l.sayAt(s.at(name), "this file is not read: name it %s", right)
		l.markUnread(s, name)
		return nil
	}
	return []string{name}
}

// text reads a data file, within bounds. What cannot be text is a problem.
func (l *loader) text(s *side, name string) ([]byte, bool) {
	refuse := func(format string, args ...any) ([]byte, bool) {
		l.sayAt(s.at(name), format, args...)
		l.markUnread(s, name)
		return nil, false
	}
	info, err := fs.Stat(s.files, name)
	if err != nil {
		return refuse("cannot be read: %s", plainError(err))
	}
	if !info.Mode().IsRegular() {
		return refuse("is not an ordinary file: put the data into a file of this name")
	}
	f, err := s.files.Open(name)
	if err != nil {
		return refuse("cannot be read: %s", plainError(err))
	}
	defer f.Close()
	text, err := io.ReadAll(io.LimitReader(f, longestFile+1))
	if err != nil {
		return refuse("cannot be read: %s", plainError(err))
	}
	if len(text) > longestFile {
		return refuse("is larger than 1 MiB: split it into several files in a folder")
	}
	if !utf8.Valid(text) || slices.Contains(text, 0) {
		return refuse("is not text: save it as plain text in UTF-8")
	}
	return text, true
}

// plainError says what went wrong with a file, without the path that the
// message already begins with.
func plainError(err error) string {
	var failed *fs.PathError
	if errors.As(err, &failed) {
		return failed.Err.Error()
	}
	return err.Error()
}
