package archive

import (
	"context"
	"database/sql"
	"errors"
	"strconv"

	"ramplan/press"
	"ramplan/press/drafts"
)

func stateName(n int64) string { return "state " + strconv.FormatInt(n, 10) }

// Undo goes back to the state before the one that stands. Without one it changes
// nothing.
func (a *Archive) Undo(ctx context.Context, id ID, from Start) (Head, error) {
	return a.step(ctx, id, from, func(ctx context.Context, tx *sql.Tx, h *Head) error {
		var prev sql.NullInt64
		if err := tx.QueryRowContext(ctx, "select prev from state where plan = $1 and n = $2", id, h.State).Scan(&prev); err != nil {
			return err
		}
		if !prev.Valid {
			return nil
		}
		// Redo leads back here, also after another line was begun.
		if _, err := tx.ExecContext(ctx, "update state set next = $1 where plan = $2 and n = $3", h.State, id, prev.Int64); err != nil {
			return err
		}
		return a.goTo(ctx, tx, h, prev.Int64)
	})
}

// Redo takes the last undoing back. Without one it changes nothing.
func (a *Archive) Redo(ctx context.Context, id ID, from Start) (Head, error) {
	return a.step(ctx, id, from, func(ctx context.Context, tx *sql.Tx, h *Head) error {
		var next sql.NullInt64
		if err := tx.QueryRowContext(ctx, "select next from state where plan = $1 and n = $2", id, h.State).Scan(&next); err != nil {
			return err
		}
		if !next.Valid {
			return nil
		}
		return a.goTo(ctx, tx, h, next.Int64)
	})
}

func (a *Archive) goTo(ctx context.Context, tx *sql.Tx, h *Head, n int64) error {
	s, err := getState(ctx, tx, h.ID, n)
	if err != nil {
		return err
	}
	return a.moveHead(ctx, tx, h, n, s.Draft, a.stamp())
}

// Restore makes a copy of an earlier state the one that stands; undo leads back
// from it.
func (a *Archive) Restore(ctx context.Context, id ID, from Start, n int64) (Head, error) {
	return a.step(ctx, id, from, func(ctx context.Context, tx *sql.Tx, h *Head) error {
		s, err := getState(ctx, tx, id, n)
		if err != nil {
			return err
		}
		if n == h.State {
			return nil
		}
		return a.put(ctx, tx, h, s.Draft, s.Draft.Encode(), drafts.DidRestore(n))
	})
}

// lastGood finds the newest state that is whole.
func (a *Archive) lastGood(ctx context.Context, e *Damaged) {
	rows, err := a.reader(ctx).QueryContext(ctx, "select n, at, digest, body from state where plan = $1 order by n desc", e.Plan)
	if err != nil {
		return
	}
	defer rows.Close()
	for rows.Next() {
		var n int64
		var at, sum string
		var body []byte
		if err := rows.Scan(&n, &at, &sum, &body); err != nil {
			return
		}
		if d, err := readBody(e.Plan, stateName(n), sum, body); err == nil {
			e.State = n
			e.Good = &Head{ID: e.Plan, State: n, Draft: d, Digest: sum, At: readStamp(at)}
			break
		}
	}
	if e.Good != nil {
		_ = a.reader(ctx).QueryRowContext(ctx, "select version from plan where id = $1", e.Plan).Scan(&e.Good.Version)
	}
}

// soundLine follows a state to what it was made from, up to the first that was a
// sound plan: what was undone meanwhile is not on that line.
const soundLine = `
with recursive line (n, prev, valid) as (
	select n, prev, valid from state where plan = $1 and n = $2
	union all
	select s.n, s.prev, s.valid from line join state s on s.plan = $1 and s.n = line.prev where line.valid = 0
)
select n from line where valid = 1`

// LastPlan gives the state that state n descends from, or is, and that was a sound
// plan; nil when there was none.
func (a *Archive) LastPlan(ctx context.Context, id ID, n int64) (*press.Plan, error) {
	var found int64
	err := a.reader(ctx).QueryRowContext(ctx, soundLine, id, n).Scan(&found)
	if errors.Is(err, sql.ErrNoRows) {
		return nil, nil
	}
	if err != nil {
		return nil, explain(err)
	}
	s, err := getState(ctx, a.reader(ctx), id, found)
	if err != nil {
		return nil, explain(err)
	}
	plan, _ := s.Draft.Check() // a later program may ask for more than the one that stored it
	return plan, nil
}
