package archive

import (
	"context"
	"database/sql"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"time"

	_ "modernc.org/sqlite" // the database, in Go

	"ramplan/press"
)

// FileName is the name of the archive in its folder.
const FileName = "ramplan.db"

// Pause is how long typing rests before the next change of the same field is a
// state of its own.
const Pause = time.Second

// An Archive is an open archive. Its methods may be called at the same time.
type Archive struct {
	path  string
	file  os.FileInfo // of the file as it was opened
	write *sql.DB     // one connection
	read  *sql.DB
	now   func() time.Time
}

// Options of opening.
type Options struct {
	First []*press.Draft   // stand on the shelf of an archive that is new
	Now   func() time.Time // nil: the clock
}

// Open opens the archive in a folder, and makes both when they are not there.
// An archive of an older schema is brought forward; one of a newer program is
// refused.
func Open(ctx context.Context, dir string, o Options) (*Archive, error) {
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, explain(err)
	}
	a := &Archive{path: filepath.Join(dir, FileName), now: o.Now}
	if a.now == nil {
		a.now = time.Now
	}
	_, err := os.Stat(a.path)
	fresh := os.IsNotExist(err)
	if err := a.connect(ctx); err != nil {
		a.Close()
		return nil, explain(err)
	}
	if fresh {
		for _, d := range o.First {
			if _, err := a.Create(ctx, d, DidMake); err != nil {
				a.Close()
				return nil, err
			}
		}
	}
	return a, nil
}

func (a *Archive) connect(ctx context.Context) (err error) {
	if a.write, err = open(a.path, "_txlock=immediate"); err != nil {
		return err
	}
	a.write.SetMaxOpenConns(1)
	if err := migrate(ctx, a.write); err != nil {
		return err
	}
	if a.read, err = open(a.path, "_pragma=query_only(1)"); err != nil {
		return err
	}
	a.read.SetMaxOpenConns(4)
	a.file, err = os.Stat(a.path)
	return err
}

// open opens a file with what keeps it safe: a write-ahead log, synced at every
// commit.
func open(path, more string) (*sql.DB, error) {
	const settings = "_pragma=busy_timeout(5000)&_pragma=journal_mode(WAL)&_pragma=synchronous(FULL)&_pragma=foreign_keys(1)"
	name := url.URL{Scheme: "file", Opaque: (&url.URL{Path: path}).EscapedPath(), RawQuery: settings + "&" + more}
	return sql.Open("sqlite", name.String())
}

// Path of the archive's file.
func (a *Archive) Path() string { return a.path }

// Close writes what is in the log into the file and lets it go.
func (a *Archive) Close() error {
	var err error
	if a.read != nil {
		err = a.read.Close()
	}
	if a.write != nil {
		if e := a.write.Close(); e != nil {
			err = e
		}
	}
	return err
}

// present fails when the file that is open is not the one in the folder any
// more: what is written into a removed file is lost.
func (a *Archive) present() error {
	now, err := os.Stat(a.path)
	if err != nil {
		return err
	}
	if !os.SameFile(now, a.file) {
		return fmt.Errorf("archive: another file stands at %s: %w", a.path, os.ErrNotExist)
	}
	return nil
}

// change does one transaction that writes.
func (a *Archive) change(ctx context.Context, do func(*sql.Tx) error) error {
	if err := a.present(); err != nil {
		return explain(err)
	}
	tx, err := a.write.BeginTx(ctx, nil)
	if err != nil {
		return explain(err)
	}
	if err := do(tx); err != nil {
		_ = tx.Rollback()
		return explain(err)
	}
	return explain(tx.Commit())
}

// stamp is the time of now as it is stored.
func (a *Archive) stamp() string { return a.now().UTC().Format(stampLayout) }

const stampLayout = "2006-01-02T15:04:05.000Z"

func readStamp(s string) time.Time {
	t, err := time.Parse(stampLayout, s)
	if err != nil {
		return time.Time{}
	}
	return t
}
