package archive

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"modernc.org/sqlite"
	lib "modernc.org/sqlite/lib"
)

// lookerName is the driver of those who only look: when the last of them closes
// the file, its log stays, as another archive may stand at that name by then.
const lookerName = "ramplan-looker"

func init() {
	d := &sqlite.Driver{}
	d.RegisterConnectionHook(func(conn sqlite.ExecQuerierContext, _ string) error {
		f, ok := conn.(sqlite.FileControl)
		if !ok {
			return fmt.Errorf("archive: a connection of type %T cannot keep its log", conn)
		}
		_, err := f.FileControlPersistWAL("main", 1)
		return err
	})
	sql.Register(lookerName, d)
}

// look opens a file for reading, whatever schema it has, and tells which.
func look(ctx context.Context, path string) (*sql.DB, int, error) {
	if err := loneLog(path); err != nil {
		return nil, 0, err
	}
	if err := unread(path); err != nil {
		return nil, 0, err
	}
	if s, err := os.Stat(path); err != nil {
		return nil, 0, err
	} else if s.Size() == 0 {
		return nil, 0, &Failure{Text: say.FileEmpty()}
	}
	db, err := openToLook(ctx, path, "&_pragma=query_only(1)")
	if err != nil {
		return nil, 0, err
	}
	n, err := schemaOf(ctx, db)
	if err == nil && n == 0 {
		err = foreign(ctx, db, path)
	}
	if err == nil && n > Schema() {
		err = newer(n)
	}
	if err != nil {
		return nil, 0, errors.Join(err, db.Close())
	}
	return db, n, nil
}

// openToLook opens a file that is there. On a disk that is read-only the database
// cannot keep count of its readers: there the file is read as it is, if nothing is
// left in its log.
func openToLook(ctx context.Context, path, more string) (*sql.DB, error) {
	db, err := sql.Open(lookerName, dsn(path, "mode=rw"+more))
	if err != nil {
		return nil, err
	}
	_, err = schemaOf(ctx, db)
	switch code(err) {
	case lib.SQLITE_CANTOPEN, lib.SQLITE_READONLY, lib.SQLITE_PROTOCOL:
	default:
		return db, nil // what else is wrong is met again
	}
	_ = db.Close()
	if s, e := os.Stat(path + "-wal"); e == nil && s.Size() > 0 {
		return nil, &Failure{Text: say.LogNeedsWritableFolder(path), Err: err}
	}
	return sql.Open(lookerName, dsn(path, "mode=ro&immutable=1"))
}

// Look opens the archive in a folder for reading, beside the process that serves
// it. One of an older schema is brought forward first, unless it is served.
func Look(ctx context.Context, dir string) (*Archive, error) {
	path, err := fileIn(dir)
	if err != nil {
		return nil, explain(err)
	}
	db, schema, err := look(ctx, path)
	if err != nil {
		return nil, lookFault(err)
	}
	if schema < Schema() {
		if err := errors.Join(db.Close(), bringForward(ctx, dir)); err != nil {
			return nil, err
		}
		if db, _, err = look(ctx, path); err != nil {
			return nil, lookFault(err)
		}
	}
	h := &handles{read: db}
	if h.file, err = os.Stat(path); err != nil {
		return nil, errors.Join(explain(err), db.Close())
	}
	a := &Archive{dir: filepath.Dir(path), path: path, now: time.Now}
	a.handles.Store(h)
	return a, nil
}

func bringForward(ctx context.Context, dir string) error {
	lock, err := TakeLock(dir)
	if held := (*Held)(nil); errors.As(err, &held) {
		return &Failure{Text: say.ServedByOlder(), Err: held}
	}
	if err != nil {
		return err
	}
	a, err := Open(ctx, dir, Options{})
	if err == nil {
		err = a.Close()
	}
	return errors.Join(err, lock.Release())
}

// lookFault explains why an archive cannot be read.
func lookFault(err error) error {
	if failure := (*Failure)(nil); errors.As(err, &failure) {
		return err
	}
	if errors.Is(err, os.ErrNotExist) {
		return &Failure{Text: say.NoArchiveInFolder(), Err: err}
	}
	return explain(err)
}
