package archive

import (
	"context"
	"database/sql"
	"errors"
	"math"
	"time"

	"ramplan/press"
)

// A State is one that a plan's draft had.
type State struct {
	N       int64
	At      time.Time
	Did     string // what was done to make it
	Prev    int64  // the state that it was made from; 0 for the first
	Draft   *press.Draft
	Digest  string
	Valid   bool // it is a sound plan
	Stands  bool // it is the head
	Damaged bool // it does not match its digest; Draft is nil
}

const stateColumns = "n, at, did, coalesce(prev, 0), digest, valid, body, n = (select head from plan where id = plan)"

// State gives one state of a plan.
func (a *Archive) State(ctx context.Context, id ID, n int64) (State, error) {
	s, err := getState(ctx, a.reader(ctx), id, n)
	return s, a.tell(ctx, err)
}

func getState(ctx context.Context, q querier, id ID, n int64) (State, error) {
	s, err := scanState(id, q.QueryRowContext(ctx, "select "+stateColumns+" from state where plan = $1 and n = $2", id, n))
	if errors.Is(err, sql.ErrNoRows) {
		return s, ErrNotFound
	}
	if err == nil && s.Damaged {
		return s, &Damaged{Plan: id, What: stateName(n)}
	}
	return s, err
}

func scanState(id ID, row interface{ Scan(...any) error }) (State, error) {
	var s State
	var at string
	var body []byte
	if err := row.Scan(&s.N, &at, &s.Did, &s.Prev, &s.Digest, &s.Valid, &body, &s.Stands); err != nil {
		return s, err
	}
	s.At = readStamp(at)
	var err error
	if s.Draft, err = readBody(id, stateName(s.N), s.Digest, body); err != nil {
		s.Damaged = true
	}
	return s, nil
}

// History lists states, the newest first: at most limit of those before the
// number given, 0 for all.
func (a *Archive) History(ctx context.Context, id ID, before int64, limit int) ([]State, error) {
	if before <= 0 {
		before = math.MaxInt64
	}
	rows, err := a.reader(ctx).QueryContext(ctx, "select "+stateColumns+" from state where plan = $1 and n < $2 order by n desc limit $3", id, before, limit)
	if err != nil {
		return nil, explain(err)
	}
	defer rows.Close()
	var out []State
	for rows.Next() {
		s, err := scanState(id, rows)
		if err != nil {
			return nil, explain(err)
		}
		out = append(out, s)
	}
	return out, explain(rows.Err())
}
