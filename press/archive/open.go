package archive

import (
	"context"
	"database/sql"
	"log"
	"os"
	"path/filepath"
	"sync"
	"sync/atomic"
	"time"

	lib "modernc.org/sqlite/lib"

	"ramplan/press"
)

// FileName is the name of the archive in its folder.
const FileName = "ramplan.db"

// Pause is how long typing rests before the next change of the same field is a
// state of its own.
const Pause = time.Second

// An Archive is an open archive. Its methods may be called at the same time.
type Archive struct {
	dir, path string
	now       func() time.Time
	log       *log.Logger
	swap      sync.Mutex // while another file is opened in place of the one that stood
	handles   atomic.Pointer[handles]
	made      bool
	idle      idle

	planDigests sync.Map // by the digest of a stored draft, that of the plan which it makes
}

// Options of opening.
type Options struct {
	First []*press.Draft   // stand on the shelf of an archive that is new
	Now   func() time.Time // nil: the clock
	Log   *log.Logger      // of what goes wrong while nobody asks; nil: the usual one
}

// Open opens the archive in a folder, and makes both when they are not there.
// An archive of an older schema is copied beside and brought forward; one of a
// newer program is refused.
func Open(ctx context.Context, dir string, o Options) (*Archive, error) {
	dir, err := filepath.Abs(dir)
	if err != nil {
		return nil, explain(err)
	}
	path, err := fileIn(dir)
	if err != nil {
		return nil, explain(err)
	}
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, folderFault(dir, err)
	}
	if err := notAFile(path); err != nil {
		return nil, err
	}
	a := &Archive{dir: filepath.Dir(path), path: path, now: o.Now, log: o.Log}
	if a.log == nil {
		a.log = log.Default()
	}
	if a.now == nil {
		a.now = time.Now
	}
	if err := keepOlder(ctx, a.path); err != nil {
		return nil, explain(err)
	}
	h, err := patiently(ctx, func() (*handles, error) {
		made, err := a.make(ctx, o.First)
		if err != nil {
			return nil, err
		}
		a.made = a.made || made
		return connect(ctx, a.path, nil)
	})
	if err != nil {
		return nil, explain(err)
	}
	ownOnly(a.path)
	a.handles.Store(h)
	a.rests()
	return a, nil
}

// patiently tries to connect again while another process holds the file: who
// turns its log on, or closes it as the last one, has it alone for a moment in
// which the database refuses others without waiting.
func patiently(ctx context.Context, connect func() (*handles, error)) (*handles, error) {
	for end := time.Now().Add(5 * time.Second); ; {
		h, err := connect()
		if c := code(err); err == nil || c != lib.SQLITE_BUSY && c != lib.SQLITE_LOCKED || time.Now().After(end) {
			return h, err
		}
		select {
		case <-ctx.Done():
			return nil, ctx.Err()
		case <-time.After(20 * time.Millisecond):
		}
	}
}

// Path of the archive's file.
func (a *Archive) Path() string { return a.path }

// Made tells whether there was none and this one was made.
func (a *Archive) Made() bool { return a.made }

// Close writes what is in the log into the file and lets it go.
func (a *Archive) Close() error {
	a.idle.end()
	h := a.handles.Load()
	if a.stands(h) != nil {
		return nil // see reopen
	}
	if !a.logStands(h) {
		return explain(h.rescue(context.Background()))
	}
	return h.close()
}

// change does one transaction that writes. Once begun it is ended, also when
// whoever asked for it has gone.
func (a *Archive) change(ctx context.Context, do func(context.Context, *sql.Tx) error) error {
	return a.changeIn(ctx, func(ctx context.Context, _ *handles, tx *sql.Tx) error { return do(ctx, tx) })
}

// changeIn does one, and tells in which file.
func (a *Archive) changeIn(ctx context.Context, do func(context.Context, *handles, *sql.Tx) error) error {
	if err := ctx.Err(); err != nil {
		return err
	}
	ctx = context.WithoutCancel(ctx)
	h, err := a.current(ctx)
	if err != nil {
		return explain(err)
	}
	if h.write == nil {
		return &Failure{Text: say.OpenedToLook()}
	}
	h.compile(ctx)
	tx, err := h.write.BeginTx(ctx, nil)
	if err != nil {
		return explain(err)
	}
	if err := do(ctx, h, tx); err != nil {
		_ = tx.Rollback()
		return explain(err)
	}
	if err := tx.Commit(); err != nil {
		_, _ = h.write.ExecContext(ctx, "rollback") // a refused commit may leave it open
		return explain(err)
	}
	if err := a.stands(h); err != nil {
		return explain(err) // what went into a removed file was not kept
	}
	if !a.logStands(h) {
		return explain(h.rescue(ctx))
	}
	a.rests()
	return nil
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
