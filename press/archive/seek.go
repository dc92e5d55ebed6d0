package archive

import (
	"context"
	"database/sql"
	"errors"
	"time"

	"ramplan/press"
	"ramplan/press/drafts"
)

// Found is an issued revision with the plan that it belongs to.
type Found struct {
	Plan         ID
	Name, Number string // of the plan's draft
	Letter       string
	At           time.Time // of issue
	Digest       string    // of the plan
	Last         string    // letter of the last revision of the plan: another one supersedes this
	LastAt       time.Time
}

// Superseded tells whether a newer revision was issued.
func (f Found) Superseded() bool { return f.Last != f.Letter }

// Issued finds the revisions whose plan has this digest.
func (a *Archive) Issued(ctx context.Context, planDigest string) ([]Found, error) {
	return a.found(ctx, "r.plan_digest = $1 order by p.id, r.seq", planDigest)
}

// IssuedAs finds the revisions whose plan has a digest that begins with these
// digits, as [drafts.TypedDigest] reads them.
func (a *Archive) IssuedAs(ctx context.Context, digits string) ([]Found, error) {
	return a.found(ctx, "r.plan_digest between $1 and $1 || 'g' order by p.id, r.seq", drafts.DigestName+digits)
}

// LetterOf gives the last revision of a plan that has this digest; empty where none
// has.
func (a *Archive) LetterOf(ctx context.Context, id ID, planDigest string) (string, error) {
	var letter string
	err := a.reader(ctx).QueryRowContext(ctx, "select letter from revision where plan = $1 and plan_digest = $2 order by seq desc limit 1", id, planDigest).Scan(&letter)
	if errors.Is(err, sql.ErrNoRows) {
		return "", nil
	}
	return letter, explain(err)
}

// IssuedOf finds the revisions of the plans with this number that have this
// letter.
func (a *Archive) IssuedOf(ctx context.Context, number, letter string) ([]Found, error) {
	return a.found(ctx, "p.number = $1 and r.letter = $2 order by p.id, r.seq", number, letter)
}

func (a *Archive) found(ctx context.Context, where string, args ...any) ([]Found, error) {
	rows, err := a.reader(ctx).QueryContext(ctx, `
select p.id, p.name, p.number, r.letter, r.at, r.plan_digest, l.letter, l.at
from revision r join plan p on p.id = r.plan join revision l on l.plan = p.id and l.seq = (select max(seq) from revision where plan = p.id)
where `+where, args...)
	if err != nil {
		return nil, explain(err)
	}
	defer rows.Close()
	var out []Found
	for rows.Next() {
		var f Found
		var at, last string
		if err := rows.Scan(&f.Plan, &f.Name, &f.Number, &f.Letter, &at, &f.Digest, &f.Last, &last); err != nil {
			return nil, explain(err)
		}
		f.At, f.LastAt = readStamp(at), readStamp(last)
		out = append(out, f)
	}
	return out, explain(rows.Err())
}

// Numbered lists the plans on the shelf with exactly this number.
func (a *Archive) Numbered(ctx context.Context, number string) ([]ID, error) {
	rows, err := a.reader(ctx).QueryContext(ctx, "select id from plan where number = $1 and binned is null order by id", number)
	if err != nil {
		return nil, explain(err)
	}
	defer rows.Close()
	var out []ID
	for rows.Next() {
		var id ID
		if err := rows.Scan(&id); err != nil {
			return nil, explain(err)
		}
		out = append(out, id)
	}
	return out, explain(rows.Err())
}

// Sound gives the working draft of a plan as a plan, or tells why it is none.
func (a *Archive) Sound(ctx context.Context, id ID) (*press.Plan, error) {
	h, err := a.Get(ctx, id)
	if err != nil {
		return nil, err
	}
	plan, faults := h.Draft.Check()
	if len(faults) > 0 {
		return nil, faults
	}
	return plan, nil
}

// findBy makes the plan found by these texts.
func findBy(ctx context.Context, tx *sql.Tx, id ID, l drafts.Labels) error {
	_, err := tx.ExecContext(ctx, "insert or replace into find (rowid, name, number, notes, parts) values ($1, $2, $3, $4, $5)", id, l.Name, l.Number, l.Notes, l.Parts)
	return err
}
