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
	s, err := scanState(id, q.QueryRowContext(ctx, "select "+stateColumns+" from state where plan = $1 and n = $2", id, n).Scan)
	if errors.Is(err, sql.ErrNoRows) {
		return s, ErrNotFound
	}
	if err == nil && s.Damaged {
		return s, &Damaged{Plan: id, What: stateName(n)}
	}
	return s, err
}

func scanState(id ID, scan scanner) (State, error) {
	var s State
	var at string
	var body []byte
	if err := scan(&s.N, &at, &s.Did, &s.Prev, &s.Digest, &s.Valid, &body, &s.Stands); err != nil {
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
		s, err := scanState(id, rows.Scan)
		if err != nil {
			return nil, explain(err)
		}
		out = append(out, s)
	}
	return out, explain(rows.Err())
}

// IssuedStates tells at which states revisions were issued, by the number of the
// state the letters in order: the newest state of that time that makes the plan
// which was issued. One that is damaged or has no such state is not told.
func (a *Archive) IssuedStates(ctx context.Context, id ID) (map[int64][]string, error) {
	q := a.reader(ctx)
	type issue struct{ letter, at, digest string }
	var issues []issue
	err := each(ctx, q, "select letter, at, plan_digest from revision where plan = $1 order by seq", []any{id}, func(scan scanner) error {
		var i issue
		err := scan(&i.letter, &i.at, &i.digest)
		issues = append(issues, i)
		return err
	})
	if err != nil {
		return nil, explain(err)
	}
	out := map[int64][]string{}
	for _, i := range issues {
		n, err := issuedState(ctx, q, id, i.at, i.digest)
		if err != nil {
			return nil, explain(err)
		}
		if n > 0 {
			out[n] = append(out[n], i.letter)
		}
	}
	return out, nil
}

// mostTried is in how many states one that was issued is looked for.
const mostTried = 200

// issuedState finds the newest state of a time that makes a plan; 0 where there
// is none.
func issuedState(ctx context.Context, q querier, id ID, at, planDigest string) (int64, error) {
	rows, err := q.QueryContext(ctx, "select "+stateColumns+" from state where plan = $1 and valid and at <= $2 order by n desc limit "+count(mostTried), id, at)
	if err != nil {
		return 0, err
	}
	defer rows.Close()
	for rows.Next() {
		s, err := scanState(id, rows.Scan)
		if err != nil {
			return 0, err
		}
		if s.Damaged {
			continue
		}
		if plan, faults := s.Draft.Check(); len(faults) == 0 && plan.Digest() == planDigest {
			return s.N, nil
		}
	}
	return 0, rows.Err()
}

// A Step is a state with the draft that it was made from.
type Step struct {
	State
	Was *press.Draft
}

// stepsOn follows a state to what it was made from, and gives the states on that line by what
// was done to make them: what was undone meanwhile is not on it.
const stepsOn = `
with recursive line (n, prev) as (
	select n, prev from state where plan = $1 and n = $2
	union all
	select s.n, s.prev from line join state s on s.plan = $1 and s.n = line.prev
)
select ` + stateColumns + ` from state where plan = $1 and n in (select n from line) and prev is not null and substr(did, 1, length($3)) = $3 order by n`

// StepsTo lists the steps that led to the draft, or to the state that was issued by a letter,
// and that were made by something whose name begins so, the oldest first, and gives that draft
// besides. A damaged state, or one made from such a one, is not told; nothing is where it is not
// known from which state a revision was issued.
func (a *Archive) StepsTo(ctx context.Context, id ID, letter, did string) ([]Step, *press.Draft, error) {
	steps, at, err := stepsTo(ctx, a.reader(ctx), id, letter, did)
	return steps, at, explain(err)
}

func stepsTo(ctx context.Context, q querier, id ID, letter, did string) (out []Step, at *press.Draft, err error) {
	var n int64
	if letter == "" {
		err = q.QueryRowContext(ctx, "select head from plan where id = $1", id).Scan(&n)
	} else {
		var when, sum string
		if err = q.QueryRowContext(ctx, "select at, plan_digest from revision where plan = $1 and letter = $2", id, letter).Scan(&when, &sum); err == nil {
			n, err = issuedState(ctx, q, id, when, sum)
		}
	}
	if errors.Is(err, sql.ErrNoRows) {
		return nil, nil, ErrNotFound
	}
	if err != nil || n == 0 {
		return nil, nil, err
	}
	var states []State
	err = each(ctx, q, stepsOn, []any{id, n, did}, func(scan scanner) error {
		s, err := scanState(id, scan)
		states = append(states, s)
		return err
	})
	if err != nil {
		return nil, nil, err
	}
	whole := func(n int64) (*press.Draft, error) {
		s, err := getState(ctx, q, id, n)
		if damaged := (*Damaged)(nil); errors.As(err, &damaged) {
			return nil, nil
		}
		return s.Draft, err
	}
	if at, err = whole(n); err != nil || at == nil {
		return nil, nil, err
	}
	for _, s := range states {
		was, err := whole(s.Prev)
		if err != nil {
			return nil, nil, err
		}
		if s.Draft != nil && was != nil {
			out = append(out, Step{s, was})
		}
	}
	return out, at, nil
}
