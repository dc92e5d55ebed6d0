package archive

import (
	"bytes"
	"context"
	"database/sql"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// A log that lies alone holds what was saved last, and a database that is opened
// beside it would remove it: where the archive's file is empty or missing, nothing
// is opened and nothing is made.

// logHeader is the length of what stands in a log before its first page.
const logHeader = 32

// loneLog tells of a log beside which the archive's file is empty or missing.
func loneLog(path string) error {
	what := say.IsMissing()
	if s, err := os.Stat(path); err == nil && s.Size() > 0 {
		return nil
	} else if err == nil {
		what = say.IsEmpty()
	} else if !errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	s, err := os.Stat(path + "-wal")
	if err != nil || s.Size() <= logHeader {
		return nil
	}
	return &Failure{Text: say.LoneLog(path, filepath.Dir(path), what, s.Size()), Err: fs.ErrNotExist}
}

// bare explains a database without a single table: a copy of an archive's file
// without the log that held its plans.
func bare(path string) error {
	return &Failure{Text: say.HoldsNoPlans(path, FileName)}
}

// foreign explains a database that has no schema of this program.
func foreign(ctx context.Context, db *sql.DB, path string) error {
	var tables int
	if err := db.QueryRowContext(ctx, "select count(*) from sqlite_master").Scan(&tables); err != nil {
		return err
	}
	if tables == 0 {
		return bare(path)
	}
	return &Failure{Text: say.NoArchive()}
}

// isLog tells whether a file is a log, by its first bytes.
func isLog(file string) bool {
	f, err := os.Open(file)
	if err != nil {
		return false
	}
	defer f.Close()
	head := make([]byte, 4)
	_, err = io.ReadFull(f, head)
	return err == nil && (bytes.Equal(head, []byte{0x37, 0x7f, 0x06, 0x82}) || bytes.Equal(head, []byte{0x37, 0x7f, 0x06, 0x83}))
}

// fromLog makes a file in a folder of what a log holds alone: a copy of it stands
// beside an empty page, over which the database reads the pages of the log.
func fromLog(ctx context.Context, log, dir string) (file string, err error) {
	work, err := os.MkdirTemp(dir, ".ramplan-*.part")
	if err != nil {
		return "", copyFault(err)
	}
	defer func() {
		if err != nil {
			_ = os.RemoveAll(work)
		}
	}()
	file = filepath.Join(work, FileName)
	if err := copyWhole(log, file+"-wal"); err != nil {
		return "", copyFault(err)
	}
	if err := os.WriteFile(file, make([]byte, 4096), 0o600); err != nil {
		return "", copyFault(err)
	}
	if err := emptyLog(ctx, file); err != nil {
		return "", &Failure{Text: say.LogAlone(log), Err: err}
	}
	return file, nil
}

func copyWhole(from, to string) error {
	in, err := os.Open(from)
	if err != nil {
		return err
	}
	defer in.Close()
	out, err := os.OpenFile(to, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600)
	if err != nil {
		return err
	}
	_, err = io.Copy(out, in)
	return errors.Join(err, out.Close())
}
