package archive

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"time"

	"ramplan/press/drafts"
)

// A RamID names a ram on the shelf; it is never given again.
type RamID int64

// A Ram is one on the shelf of rams.
type Ram struct {
	ID      RamID
	Version int64 // counts every change; a save names the one it started from
	drafts.Ram
	Changed time.Time
	Damaged bool // the stored document does not match its digest; of Told only Name is known, and Entries is nil
}

// A StaleRam is a change of a ram that started from an older version than the one
// that stands. It changed nothing.
type StaleRam struct {
	From   int64
	Stands Ram
}

func (e *StaleRam) Error() string {
	return fmt.Sprintf("archive: the change of ram %d started from version %d; version %d stands", e.Stands.ID, e.From, e.Stands.Version)
}

// CreateRam puts a ram on the shelf. What is wrong with what is said of it is
// given as [press.Problems].
func (a *Archive) CreateRam(ctx context.Context, ram drafts.Ram) (Ram, error) {
	var r Ram
	err := a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		stored, body, err := storable(ctx, tx, 0, ram)
		if err != nil {
			return err
		}
		now := a.stamp()
		row, err := tx.ExecContext(ctx, "insert into ram (name, changed, digest, sum, body) values ($1, $2, $3, $4, $5)", stored.Name, now, stored.Digest, digest(body), body)
		if err != nil {
			return err
		}
		id, err := row.LastInsertId()
		if err != nil {
			return err
		}
		r, err = getRam(ctx, tx, RamID(id))
		return err
	})
	return r, err
}

// Ram gives a ram of the shelf.
func (a *Archive) Ram(ctx context.Context, id RamID) (Ram, error) {
	r, err := getRam(ctx, a.reader(ctx), id)
	return r, explain(err)
}

// SaveRam changes a ram, if the version that the change started from still
// stands; else it gives [*StaleRam] and changes nothing. Plans keep their copies.
func (a *Archive) SaveRam(ctx context.Context, id RamID, from int64, ram drafts.Ram) (Ram, error) {
	var r Ram
	err := a.changeRam(ctx, id, from, func(ctx context.Context, tx *sql.Tx, was Ram) error {
		stored, body, err := storable(ctx, tx, id, ram)
		if err != nil {
			return err
		}
		if sum := digest(body); was.Damaged || sum != digest(was.Document().Encode()) {
			_, err = tx.ExecContext(ctx, "update ram set version = version + 1, name = $1, changed = $2, digest = $3, sum = $4, body = $5 where id = $6", stored.Name, a.stamp(), stored.Digest, sum, body, id)
		}
		if err != nil {
			return err
		}
		r, err = getRam(ctx, tx, id)
		return err
	})
	return r, err
}

// RemoveRam takes a ram off the shelf and gives it back: putting that on the
// shelf again undoes it. Plans keep their copies.
func (a *Archive) RemoveRam(ctx context.Context, id RamID, from int64) (Ram, error) {
	var r Ram
	err := a.changeRam(ctx, id, from, func(ctx context.Context, tx *sql.Tx, was Ram) error {
		r = was
		_, err := tx.ExecContext(ctx, "delete from ram where id = $1", id)
		return err
	})
	return r, err
}

// changeRam does one change of a ram that started from a version; a damaged one
// may be changed too.
func (a *Archive) changeRam(ctx context.Context, id RamID, from int64, do func(context.Context, *sql.Tx, Ram) error) error {
	return a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		was, err := getRam(ctx, tx, id)
		var damaged *Damaged
		if err != nil && !errors.As(err, &damaged) {
			return err
		}
		if was.Version != from {
			return &StaleRam{From: from, Stands: was}
		}
		return do(ctx, tx, was)
	})
}

// Rams lists the rams on the shelf by name: those in which every word of the
// text, or its beginning, is found; all for an empty one.
func (a *Archive) Rams(ctx context.Context, text string) ([]Ram, error) {
	var out []Ram
	wanted := drafts.Words(text)
	err := each(ctx, a.reader(ctx), "select "+ramColumns+" from ram order by name collate nocase", nil, func(scan scanner) error {
		r, err := scanRam(scan)
		if err == nil && r.Found(wanted) {
			out = append(out, r)
		}
		return err
	})
	return out, explain(err)
}

const ramColumns = "id, version, name, changed, digest, sum, body"

func getRam(ctx context.Context, q querier, id RamID) (Ram, error) {
	r, err := scanRam(q.QueryRowContext(ctx, "select "+ramColumns+" from ram where id = $1", id).Scan)
	if errors.Is(err, sql.ErrNoRows) {
		return r, ErrNotFound
	}
	if err == nil && r.Damaged {
		return r, &Damaged{What: r.what()}
	}
	return r, err
}

func (r *Ram) what() string { return fmt.Sprintf("ram %d (%s)", r.ID, r.Name) }

func scanRam(scan scanner) (Ram, error) {
	var r Ram
	var changed, name, section, sum string
	var body []byte
	if err := scan(&r.ID, &r.Version, &name, &changed, &section, &sum, &body); err != nil {
		return r, err
	}
	r.Changed = readStamp(changed)
	if r.read(sum, body); r.Damaged || r.Name != name || r.Digest != section {
		r = Ram{ID: r.ID, Version: r.Version, Ram: drafts.Ram{Told: drafts.Told{Name: name}}, Changed: r.Changed, Damaged: true}
	}
	return r, nil
}
