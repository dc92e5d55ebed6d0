package archive

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"
)

// PutBack makes a backup the archive in a folder, after a check of the backup:
// a damaged one is refused with [*Unsound]. While a process serves the archive
// the error is [*Held]. The archive that stood there is kept beside it, under the
// name that is returned; there is never a moment without an archive.
func PutBack(ctx context.Context, dir, file string) (aside string, r *Report, err error) {
	if file, err = filepath.Abs(file); err != nil {
		return "", nil, err
	}
	if err := unread(file); errors.Is(err, fs.ErrNotExist) {
		return "", nil, &Failure{Text: say.NoFile(file), Err: err}
	} else if err != nil {
		return "", nil, err
	}
	if path, err := fileIn(dir); err != nil {
		return "", nil, explain(err)
	} else if err := notAFile(path); err != nil {
		return "", nil, err
	}
	lock, err := TakeLock(dir)
	if err != nil {
		return "", nil, err
	}
	defer func() { err = errors.Join(err, lock.Release()) }()
	path, err := fileIn(dir)
	if err != nil {
		return "", nil, explain(err)
	}
	dir = filepath.Dir(path)
	from := file
	if isLog(file) {
		if from, err = fromLog(ctx, file, dir); err != nil {
			return "", nil, err
		}
		defer os.RemoveAll(filepath.Dir(from))
	}
	part, r, err := copyChecked(ctx, from, dir)
	if err != nil {
		return "", nil, err
	}
	defer os.Remove(part)
	if len(r.Faults) > 0 {
		return "", r, &Unsound{file, r}
	}
	if aside, err = keepAside(ctx, path, time.Now()); err != nil {
		return "", r, err
	}
	if err := os.Rename(part, path); err != nil {
		return aside, r, explain(err)
	}
	return aside, r, syncFolder(dir)
}

// Unsound says that a backup is damaged itself.
type Unsound struct {
	File   string
	Report *Report
}

func (e *Unsound) Error() string {
	return fmt.Sprintf("archive: %s is damaged, nothing was put back: %s", e.File, e.Report.Faults[0])
}

// keepAside gives the file that stands a second name, with all that its log
// holds, and leaves no log that the next file could be taken to have written. A log
// that lies alone is kept as it is.
func keepAside(ctx context.Context, path string, now time.Time) (string, error) {
	alone := loneLog(path) != nil
	_, err := os.Stat(path)
	missing := errors.Is(err, os.ErrNotExist)
	if missing && !alone {
		return "", nil
	}
	if !alone {
		_ = emptyLog(ctx, path) // a damaged one keeps its log beside it
	}
	aside := freeName(path, now)
	if !missing {
		if err := newName(path, aside); err != nil {
			return "", explain(err)
		}
	}
	kept := aside
	if s, err := os.Stat(path + "-wal"); err == nil && s.Size() > 0 {
		if err := os.Rename(path+"-wal", aside+"-wal"); err != nil {
			return "", explain(err)
		}
		if missing {
			kept = aside + "-wal"
		}
	} else {
		_ = os.Remove(path + "-wal")
	}
	_ = os.Remove(path + "-shm")
	return kept, nil
}

// freeName is a dated name beside a file that neither a file nor a log has.
func freeName(path string, now time.Time) string {
	base := strings.TrimSuffix(path, ".db") + now.Format("-2006-01-02-150405")
	name := base + ".db"
	for n := 2; ; n++ {
		_, file := os.Lstat(name)
		_, log := os.Lstat(name + "-wal")
		if file != nil && log != nil {
			return name
		}
		name = fmt.Sprintf("%s-%d.db", base, n)
	}
}

// emptyLog writes what the log of a file holds into the file.
func emptyLog(ctx context.Context, path string) error {
	db, err := open(path, "mode=rw")
	if err != nil {
		return err
	}
	var busy, pages, written int
	err = db.QueryRowContext(ctx, "pragma wal_checkpoint(truncate)").Scan(&busy, &pages, &written)
	if err == nil && busy != 0 {
		err = errors.New("archive: another program reads the log")
	}
	return errors.Join(err, db.Close())
}
