package archive

import (
	"context"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
)

// Backup copies one moment of the archive in a folder into a new file and checks
// the copy. Whoever serves the archive goes on. A file that is there is never
// overwritten. A copy in which something is damaged stands all the same, as it is
// the best there is; the report says so.
func Backup(ctx context.Context, dir, file string) (*Report, error) {
	from, err := fileIn(dir)
	if err != nil {
		return nil, explain(err)
	}
	if file, err = filepath.Abs(file); err != nil {
		return nil, err
	}
	if _, err := os.Lstat(file); err == nil {
		return nil, thereAlready(file)
	}
	part, report, err := copyChecked(ctx, from, filepath.Dir(file))
	if err != nil {
		return nil, err
	}
	defer os.Remove(part)
	return report, place(part, file)
}

func thereAlready(file string) error {
	return &Failure{Text: say.NeverOverwritten(file), Err: fs.ErrExist}
}

// copyChecked copies an archive into a new file of a folder, synced, and checks
// the copy.
func copyChecked(ctx context.Context, from, dir string) (string, *Report, error) {
	db, _, err := look(ctx, from)
	if err != nil {
		return "", nil, lookFault(err)
	}
	if err := db.Close(); err != nil {
		return "", nil, err
	}
	f, err := os.CreateTemp(dir, ".ramplan-*.part") // the copy goes into an empty file
	if err != nil {
		return "", nil, copyFault(err)
	}
	part := f.Name()
	err = vacuumInto(ctx, from, part)
	if err == nil {
		err = f.Sync()
	}
	err = errors.Join(err, f.Close())
	var report *Report
	if err == nil {
		report, err = checkFile(ctx, part)
	}
	for _, log := range []string{"-wal", "-shm", "-journal"} {
		_ = os.Remove(part + log)
	}
	if err != nil {
		_ = os.Remove(part)
		return "", nil, copyFault(err)
	}
	return part, report, nil
}

func vacuumInto(ctx context.Context, from, to string) error {
	db, err := openToLook(ctx, from, "")
	if err != nil {
		return err
	}
	_, err = db.ExecContext(ctx, "vacuum into $1", to)
	return errors.Join(err, db.Close())
}

// place gives a file its name, unless that is taken.
func place(part, file string) error {
	f, err := os.OpenFile(file, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600)
	if errors.Is(err, fs.ErrExist) {
		return thereAlready(file)
	}
	if err != nil {
		return copyFault(err)
	}
	if err := errors.Join(f.Close(), os.Rename(part, file)); err != nil {
		_ = os.Remove(file)
		return copyFault(err)
	}
	return syncFolder(filepath.Dir(file))
}

// syncFolder makes a new name in a folder last, where the system can.
func syncFolder(dir string) error {
	d, err := os.Open(dir)
	if err != nil {
		return nil
	}
	_ = d.Sync() // folders of some systems cannot be synced
	return d.Close()
}

// copyFault explains why a copy could not be made; it is about another file than
// the archive.
func copyFault(err error) error {
	var path *fs.PathError
	switch {
	case errors.Is(err, context.Canceled):
		return err
	case errors.As(err, &path) && errors.Is(err, fs.ErrNotExist):
		return &Failure{Text: say.NoFolder(filepath.Dir(path.Path)), Err: err}
	case errors.As(err, &path) && errors.Is(err, syscall.EROFS):
		return &Failure{Text: say.IsReadOnly(filepath.Dir(path.Path)), Err: err}
	case errors.As(err, &path) && errors.Is(err, fs.ErrPermission):
		return &Failure{Text: say.MayNotWrite(path.Path), Err: err}
	}
	return explain(err)
}
