//go:build !unix || solaris || aix

package publish

import "os"

// lockFolder has no lock to take on this system; leftovers are told by their age.
func lockFolder(dir string) (unlock func(), locked bool, err error) {
	return func() {}, false, nil
}

// syncFolder does nothing: this system cannot flush a folder.
func syncFolder(dir string) error { return nil }

// sameMode has nothing to compare: permissions here are not the Unix ones.
func sameMode(have, want os.FileMode) bool { return true }
