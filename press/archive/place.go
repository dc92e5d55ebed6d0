package archive

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// fileIn gives the archive's file in a folder. Where a link stands there, that is
// the file it leads to: its log lies beside it, and so does its lock.
func fileIn(dir string) (string, error) {
	path, err := filepath.Abs(filepath.Join(dir, FileName))
	if err != nil {
		return "", err
	}
	if s, err := os.Lstat(path); err != nil || s.Mode()&fs.ModeSymlink == 0 {
		return path, nil // there is none yet, or opening it says what is wrong
	}
	real, err := filepath.EvalSymlinks(path)
	if errors.Is(err, fs.ErrNotExist) {
		to, _ := os.Readlink(path)
		return "", &Failure{Text: fmt.Sprintf("%s is a link to %s, and nothing is there.", path, to), Err: err}
	}
	return real, err
}

// ownOnly takes the right to read from everybody else, also where an older program
// gave it: plans and names of people stand in these files.
func ownOnly(path string) {
	for _, name := range []string{path, path + "-wal", path + "-shm"} {
		_ = os.Chmod(name, 0o600) // not every disk knows of rights
	}
}
