package archive

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"strings"
	"time"

	"ramplan/press"
)

// A RamID names a ram on the shelf; it is never given again.
type RamID int64

// A Ram is one on the shelf of rams: the ram section of a plan under a name, with
// what its controller calls the setpoints and where it comes from.
type Ram struct {
	ID      RamID
	Version int64 // counts every change; a save names the one it started from
	Told
	Entries []press.Entry // such as ram.stroke and controller.words[0].name
	Digest  string        // of the entries; a plan keeps that of the ram that it was given
	Changed time.Time
	Damaged bool // the stored document does not match its digest; of Told only Name is known, and Entries is nil
}

// Told is what is said of a ram beside its entries.
type Told struct {
	Name     string // no two rams have the same
	Source   string // whose figures they are
	Measured string // date, such as 2026-03-02; empty when they were not measured
	Method   string // how they were measured
	Notes    string
}

// Paths of what is said of a ram.
const (
	PathRamName     = "shelf.name"
	PathRamSource   = "shelf.source"
	PathRamMeasured = "shelf.measured"
	PathRamMethod   = "shelf.method"
	PathRamNotes    = "shelf.notes"
)

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
func (a *Archive) CreateRam(ctx context.Context, r Ram) (Ram, error) {
	r.ID = 0
	err := a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		stored, body, err := storable(ctx, tx, r)
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
func (a *Archive) SaveRam(ctx context.Context, id RamID, from int64, r Ram) (Ram, error) {
	r.ID = id
	err := a.changeRam(ctx, id, from, func(ctx context.Context, tx *sql.Tx, was Ram) error {
		stored, body, err := storable(ctx, tx, r)
		if err != nil {
			return err
		}
		if sum := digest(body); was.Damaged || sum != was.sum() {
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
	wanted := wordsOf(text)
	err := each(ctx, a.reader(ctx), "select "+ramColumns+" from ram order by name collate nocase", nil, func(scan scanner) error {
		r, err := scanRam(scan)
		if err == nil && r.found(wanted) {
			out = append(out, r)
		}
		return err
	})
	return out, explain(err)
}

// found tells whether every wanted word begins one of the ram's.
func (r *Ram) found(wanted []string) bool {
	name, _ := (&press.Draft{Entries: r.Entries}).Get("ram.name")
	has := wordsOf(strings.Join([]string{r.Name, name, r.Source, r.Measured, r.Method, r.Notes}, " "))
	for _, w := range wanted {
		found := false
		for _, h := range has {
			found = found || strings.HasPrefix(strings.ToLower(h), strings.ToLower(w))
		}
		if !found {
			return false
		}
	}
	return true
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
		r = Ram{ID: r.ID, Version: r.Version, Told: Told{Name: name}, Changed: r.Changed, Damaged: true}
	}
	return r, nil
}
