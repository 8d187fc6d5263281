//go:build unix && !solaris && !aix

package publish

import (
	"errors"
	"os"
	"syscall"
	"time"
)

// lockWait is how long a publish waits for another one in the same folder.
const lockWait = 30 * time.Second

// lockFolder takes an exclusive lock on the folder itself, flock(2), which ends
// with the process however that ends. locked is false where the file system has
// no such locks.
func lockFolder(dir string) (unlock func(), locked bool, err error) {
	f, err := os.Open(dir)
	if err != nil {
		return nil, false, err
	}
	for start := time.Now(); ; time.Sleep(20 * time.Millisecond) {
		err := syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
		switch {
		case err == nil:
			return func() { f.Close() }, true, nil
		case errors.Is(err, syscall.EINTR):
		case !errors.Is(err, syscall.EWOULDBLOCK):
			f.Close()
			return func() {}, false, nil
		case time.Since(start) > lockWait:
			f.Close()
			return nil, false, errors.New("another publish is at work in this folder")
		}
	}
}

// syncFolder flushes a folder's list of names to the disk.
func syncFolder(dir string) error {
	f, err := os.Open(dir)
	if err != nil {
		return err
	}
	err = f.Sync()
	if errors.Is(err, syscall.EINVAL) || errors.Is(err, syscall.ENOTSUP) {
		err = nil // some file shares cannot, and keep their names safe themselves
	}
	if closed := f.Close(); err == nil {
		err = closed
	}
	return err
}

// sameMode compares permissions.
func sameMode(have, want os.FileMode) bool { return have.Perm() == want.Perm() }
