package archive

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io/fs"
	"net/url"
	"os"

	_ "modernc.org/sqlite" // the database, in Go
)

// readers is how many may read at the same time.
const readers = 4

// handles are the open connections to one file.
type handles struct {
	file  os.FileInfo // of the file as it was opened
	log   os.FileInfo // of its log
	write *sql.DB     // one connection; nil for those who only look
	read  *sql.DB

	toRead, toWrite compiled // the query of a head
}

// connect opens a file and brings it to the newest schema. A new one is filled in
// the same transaction; without a fill, a file that holds nothing is refused.
func connect(ctx context.Context, path string, fill func(*sql.Tx) error) (*handles, error) {
	h := &handles{}
	var err error
	if h.write, err = open(path, "mode=rwc&_txlock=immediate&_pragma=journal_mode(WAL)"); err != nil {
		return nil, err
	}
	h.write.SetMaxOpenConns(1)
	if err := migrate(ctx, h.write, fill); err != nil {
		_ = h.close()
		if errors.Is(err, errBare) {
			err = bare(path)
		}
		return nil, err
	}
	// Readers never make a file: one that was removed stays away.
	if h.read, err = open(path, "mode=rw&_pragma=query_only(1)"); err != nil {
		_ = h.close()
		return nil, err
	}
	h.read.SetMaxOpenConns(readers)
	h.read.SetMaxIdleConns(readers)
	if h.file, err = os.Stat(path); err == nil {
		h.log, err = os.Stat(path + "-wal")
	}
	if err != nil {
		_ = h.close()
		return nil, err
	}
	return h, nil
}

// open opens a file with what keeps it safe: every commit is synced.
func open(path, more string) (*sql.DB, error) { return sql.Open("sqlite", dsn(path, more)) }

func dsn(path, more string) string {
	const settings = "&_pragma=busy_timeout(5000)&_pragma=synchronous(FULL)&_pragma=foreign_keys(1)"
	name := url.URL{Scheme: "file", Opaque: (&url.URL{Path: path}).EscapedPath(), RawQuery: more + settings}
	return name.String()
}

func (h *handles) close() error {
	var err error
	for _, db := range []*sql.DB{h.read, h.write} {
		if db != nil {
			err = errors.Join(err, db.Close())
		}
	}
	return err
}

// stands fails when the file that is open is not the one in the folder any more:
// what is written into a removed file is lost.
func (a *Archive) stands(h *handles) error {
	now, err := os.Stat(a.path)
	if err != nil {
		return err
	}
	if !os.SameFile(now, h.file) {
		return fmt.Errorf("archive: another file stands at %s: %w", a.path, fs.ErrNotExist)
	}
	return nil
}

// logStands tells whether the log is still the one in the folder. It holds what
// was acknowledged and is not in the file yet.
func (a *Archive) logStands(h *handles) bool {
	now, err := os.Stat(a.path + "-wal")
	return h.log == nil || err == nil && os.SameFile(now, h.log)
}

// rescue writes what a removed log holds, as long as it is open, into the file.
func (h *handles) rescue(ctx context.Context) error {
	var busy, pages, written int
	err := h.write.QueryRowContext(ctx, "pragma wal_checkpoint(full)").Scan(&busy, &pages, &written)
	if err == nil && (busy != 0 || written < pages) {
		err = &Failure{Text: say.LogRemoved()}
	}
	return err
}

// current gives the connections to the file that stands in the folder. When it
// is another one than before, such as one that was put back, that is opened.
func (a *Archive) current(ctx context.Context) (*handles, error) {
	h := a.handles.Load()
	if h.write == nil || a.stands(h) == nil && a.logStands(h) {
		return h, nil // who only looks goes on looking at what was opened
	}
	a.swap.Lock()
	defer a.swap.Unlock()
	h = a.handles.Load()
	if a.stands(h) == nil {
		if a.logStands(h) {
			return h, nil
		}
		if err := h.rescue(context.WithoutCancel(ctx)); err != nil {
			return nil, err
		}
	}
	return a.reopen(ctx)
}

// reopen opens the file that stands in the folder now. The connections to the
// one that stood there are left alone: closing them would remove the log by its
// name, and the log of that name is another one's now.
func (a *Archive) reopen(ctx context.Context) (*handles, error) {
	if s, err := os.Stat(a.path); err != nil {
		return nil, err
	} else if s.Size() == 0 {
		return nil, &Failure{Text: say.EmptyInPlace()}
	}
	h, err := connect(context.WithoutCancel(ctx), a.path, nil)
	if err != nil {
		return nil, err
	}
	a.handles.Store(h)
	return h, nil
}

// reader gives what to read from.
func (a *Archive) reader(ctx context.Context) *sql.DB { return a.readable(ctx).read }

// readable gives the connections to read from. A removed file is read as long as it is
// open, so that it can be copied out.
func (a *Archive) readable(ctx context.Context) *handles {
	if h, err := a.current(ctx); err == nil {
		return h
	}
	return a.handles.Load()
}
