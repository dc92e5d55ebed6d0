package archive

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
)

// fileIn gives the archive's file in a folder. Where a link stands there, that is
// the file it leads to: its log lies beside it, and so does its lock.
func fileIn(dir string) (string, error) {
	path, err := filepath.Abs(filepath.Join(dir, FileName))
	if err != nil {
		return "", err
	}
	if s, err := os.Stat(dir); err == nil && !s.IsDir() {
		return "", &Failure{Text: say.FileInPlaceOfFolder(dir)}
	}
	if s, err := os.Lstat(path); err != nil || s.Mode()&fs.ModeSymlink == 0 {
		return path, nil // there is none yet, or opening it says what is wrong
	}
	real, err := filepath.EvalSymlinks(path)
	if errors.Is(err, fs.ErrNotExist) {
		to, _ := os.Readlink(path)
		return "", &Failure{Text: say.DeadLinkTo(path, to), Err: err}
	}
	return real, err
}

// notAFile explains a folder where a file was to be; nil where there is none.
func notAFile(path string) error {
	if s, err := os.Stat(path); err == nil && s.IsDir() {
		return &Failure{Text: say.FolderInPlaceOfFile(path)}
	}
	return nil
}

// folderFault explains why nothing can be changed in a folder.
func folderFault(dir string, err error) error {
	switch {
	case errors.Is(err, syscall.EROFS):
		return &Failure{Text: say.FolderReadOnly(dir), Err: err}
	case errors.Is(err, fs.ErrPermission):
		return &Failure{Text: say.FolderMayNotBeWritten(dir), Err: err}
	}
	return explain(err)
}

// unread explains why a file cannot even be looked at; nil where it can.
func unread(path string) error {
	if err := notAFile(path); err != nil {
		return err
	}
	f, err := os.Open(path)
	if errors.Is(err, fs.ErrPermission) {
		return &Failure{Text: say.MayNotBeRead(path), Err: err}
	}
	if err != nil {
		return err
	}
	return f.Close()
}

// ownOnly takes the right to read from everybody else, also where an older program
// gave it: plans and names of people stand in these files.
func ownOnly(path string) {
	for _, name := range []string{path, path + "-wal", path + "-shm"} {
		_ = os.Chmod(name, 0o600) // not every disk knows of rights
	}
}
