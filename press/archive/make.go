package archive

import (
	"context"
	"database/sql"
	"errors"
	"io/fs"
	"os"
	"path/filepath"

	"ramplan/press"
	"ramplan/press/drafts"
)

// make makes a new archive when there is none: under another name first, so that
// its own name never stands for half of one, nor for a file whose plans are in its
// log alone. It tells whether it did.
func (a *Archive) make(ctx context.Context, plans []*press.Draft) (bool, error) {
	s, err := os.Stat(a.path)
	if err == nil && s.Size() > 0 || err != nil && !errors.Is(err, fs.ErrNotExist) {
		return false, nil // opening it says what is wrong
	}
	if err := loneLog(a.path); err != nil {
		return false, err
	}
	f, err := os.CreateTemp(a.dir, ".ramplan-*.part")
	if err != nil {
		return false, err
	}
	part := f.Name()
	defer os.Remove(part)
	if err := f.Close(); err != nil {
		return false, err
	}
	h, err := connect(ctx, part, func(tx *sql.Tx) error {
		for _, d := range plans {
			if _, err := a.create(ctx, tx, d, drafts.DidMake); err != nil {
				return err
			}
		}
		return nil
	})
	if err == nil {
		err = h.close() // which writes its log into it
	}
	for _, log := range []string{"-wal", "-shm"} {
		_ = os.Remove(part + log)
	}
	if err != nil {
		return false, err
	}
	if s != nil { // an empty file stood there
		err = os.Rename(part, a.path)
	} else {
		err = newName(part, a.path)
	}
	if errors.Is(err, fs.ErrExist) {
		return false, nil // another process was faster
	}
	if err != nil {
		return false, err
	}
	return true, syncFolder(filepath.Dir(a.path))
}

// newName gives a file another name, which must be free.
func newName(part, name string) error {
	err := os.Link(part, name)
	if err == nil || errors.Is(err, fs.ErrExist) {
		return err
	}
	f, e := os.OpenFile(name, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600) // a disk without second names
	if e != nil {
		return e
	}
	err = errors.Join(f.Close(), os.Rename(part, name))
	if err != nil {
		_ = os.Remove(name)
	}
	return err
}
