package archive

import (
	"errors"
	"os"

	"golang.org/x/sys/windows"
)

// lockFile takes the system's lock of an open file, or fails at once. It locks a
// byte far behind the text, which others could not read otherwise.
func lockFile(f *os.File) error {
	far := &windows.Overlapped{OffsetHigh: 1 << 30}
	err := windows.LockFileEx(windows.Handle(f.Fd()), windows.LOCKFILE_EXCLUSIVE_LOCK|windows.LOCKFILE_FAIL_IMMEDIATELY, 0, 1, 0, far)
	if errors.Is(err, windows.ERROR_LOCK_VIOLATION) {
		return errLocked
	}
	return err
}
