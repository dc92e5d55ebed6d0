//go:build !windows

package archive

import (
	"errors"
	"os"
	"syscall"
)

// lockFile takes the system's lock of an open file, or fails at once.
func lockFile(f *os.File) error {
	err := syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
	if errors.Is(err, syscall.EWOULDBLOCK) {
		return errLocked
	}
	return err
}
