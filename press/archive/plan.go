package archive

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"time"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/press/training"
)

// An ID names a plan in one archive; it is never given again.
type ID = training.PlanID

// A Head is the working draft of a plan as it stands.
type Head struct {
	ID       ID
	Version  int64 // counts every change; a save names the one it started from
	State    int64 // number of the state that stands
	Draft    *press.Draft
	Digest   string // of the stored document
	At       time.Time
	CanUndo  bool
	CanRedo  bool
	Binned   bool
	Revision string // letter of the last issued revision; empty before the first
	Issued   string // digest of that revision's plan

	window string // that made the last changes
	since  int64  // version that stood before the first of them
	sender string // the window that sends the change under way

	damaged *Damaged // the stored document is, and Draft is empty
}

// digest of a stored document.
func digest(body []byte) string { return drafts.Digest(body) }

// encode gives a draft as it is stored, and as it reads from there.
func encode(d *press.Draft) ([]byte, *press.Draft, error) {
	body := d.Encode()
	kept, faults := press.DecodeDraft(body)
	if len(faults) > 0 {
		return nil, nil, fmt.Errorf("archive: the draft cannot be kept: %w", faults)
	}
	return body, kept, nil
}

// Create puts a new plan on the shelf. One that is too large for a draft is
// refused with [press.Problems].
func (a *Archive) Create(ctx context.Context, d *press.Draft, did string) (Head, error) {
	var h Head
	err := a.change(ctx, func(ctx context.Context, tx *sql.Tx) (err error) {
		h, err = a.create(ctx, tx, d, did)
		return err
	})
	return h, err
}

func (a *Archive) create(ctx context.Context, tx *sql.Tx, d *press.Draft, did string) (Head, error) {
	body, d, err := encode(d)
	if err != nil {
		return Head{}, err
	}
	now := a.stamp()
	h := Head{Version: 1, State: 1, Draft: d, Digest: digest(body), At: readStamp(now)}
	l := drafts.LabelsOf(d)
	r, err := tx.ExecContext(ctx, "insert into plan (name, number, made, changed) values ($1, $2, $3, $3)", l.Name, l.Number, now)
	if err != nil {
		return h, err
	}
	id, err := r.LastInsertId()
	if err != nil {
		return h, err
	}
	h.ID = ID(id)
	if err := findBy(ctx, tx, h.ID, l); err != nil {
		return h, err
	}
	return h, addState(ctx, tx, h.ID, 1, 0, now, did, h.Digest, body, isPlan(d))
}

func isPlan(d *press.Draft) bool {
	_, faults := d.Check()
	return len(faults) == 0
}

func addState(ctx context.Context, tx *sql.Tx, id ID, n, prev int64, at, did, digest string, body []byte, valid bool) error {
	_, err := tx.ExecContext(ctx, "insert into state (plan, n, prev, at, did, digest, valid, body) values ($1, $2, nullif($3, 0), $4, $5, $6, $7, $8)",
		id, n, prev, at, did, digest, valid, body)
	return err
}

// Get gives the working draft of a plan. A draft that does not match its digest
// any more is given as [*Damaged], with the newest state that does.
func (a *Archive) Get(ctx context.Context, id ID) (Head, error) {
	h, err := getHead(ctx, a.readable(ctx).heads(ctx), id)
	return h, a.tell(ctx, err)
}

// tell explains an error; what is damaged comes with the newest state that is
// not.
func (a *Archive) tell(ctx context.Context, err error) error {
	var damaged *Damaged
	if errors.As(err, &damaged) && damaged.Plan != 0 && damaged.Good == nil {
		a.lastGood(ctx, damaged)
	}
	return explain(err)
}

// querier is a database or a transaction.
type querier interface {
	QueryRowContext(ctx context.Context, query string, args ...any) *sql.Row
	QueryContext(ctx context.Context, query string, args ...any) (*sql.Rows, error)
}

// getHead reads the head of a plan. Of the drafts that are known already none is read
// from its document again.
func getHead(ctx context.Context, ask heads, id ID, known ...Head) (Head, error) {
	h := Head{ID: id}
	var at, sum sql.NullString
	var body []byte
	err := ask(ctx, id).Scan(&h.Version, &h.window, &h.since, &h.State, &at, &h.Binned, &h.CanUndo, &h.CanRedo, &sum, &body, &h.Revision, &h.Issued)
	if errors.Is(err, sql.ErrNoRows) {
		return h, ErrNotFound
	}
	if err != nil {
		return h, err
	}
	h.At, h.Digest = readStamp(at.String), sum.String
	for _, k := range known {
		if k.Draft != nil && k.Digest == h.Digest && digest(body) == h.Digest {
			h.Draft = k.Draft
			return h, nil
		}
	}
	h.Draft, err = readBody(id, stateName(h.State), h.Digest, body)
	return h, err
}

// readBody gives the draft in a stored document, after a look at its digest.
func readBody(id ID, what, sum string, body []byte) (*press.Draft, error) {
	if digest(body) != sum {
		return nil, &Damaged{Plan: id, What: what}
	}
	d, faults := press.DecodeDraft(body)
	if len(faults) > 0 {
		return nil, &Damaged{Plan: id, What: what}
	}
	return d, nil
}

// Save makes the draft the working draft of a plan, if the version that it
// started from still stands; else it gives [*Stale] and changes nothing. A draft
// that is the one that stands changes nothing either.
func (a *Archive) Save(ctx context.Context, id ID, from Start, d *press.Draft, did string) (Head, error) {
	body, d, err := encode(d)
	if err != nil {
		return Head{}, err
	}
	c, err := a.current(ctx)
	if err != nil {
		return Head{}, explain(err)
	}
	stood, err := getHead(ctx, c.heads(ctx), id)
	if err == nil && drafts.Same(stood.Draft, d) {
		return stood, nil
	}
	save := func(ctx context.Context, tx *sql.Tx, h *Head) error {
		if drafts.Same(h.Draft, d) && h.damaged == nil {
			return nil
		}
		if did == "" {
			did = drafts.DidTyped
			if path, one := drafts.OnePath(h.Draft, d); one {
				did = path
			}
		}
		return a.put(ctx, tx, h, d, body, did)
	}
	return a.step(ctx, id, from, save, stood, Head{Digest: digest(body), Draft: d})
}

// step does one change of a plan that started from a version, and gives what
// stands after it. Drafts that are known need not be read again.
func (a *Archive) step(ctx context.Context, id ID, from Start, do func(context.Context, *sql.Tx, *Head) error, known ...Head) (Head, error) {
	var h Head
	err := a.changeIn(ctx, func(ctx context.Context, c *handles, tx *sql.Tx) error {
		ask := c.headsIn(ctx, tx)
		var err error
		if h, err = anyHead(ctx, ask, id, known...); err != nil {
			return err
		}
		if h.stale(from) {
			return &Stale{From: from.Version, Head: h}
		}
		h.sender = from.Window
		if err := do(ctx, tx, &h); err != nil {
			return err
		}
		h, err = anyHead(ctx, ask, id, known...)
		return err
	})
	var stale *Stale
	if errors.As(err, &stale) {
		return stale.Head, err
	}
	return h, a.tell(ctx, err)
}

// anyHead gives the head of a plan, a damaged one with an empty draft: a new
// state may stand over it, and it may go to the bin.
func anyHead(ctx context.Context, ask heads, id ID, known ...Head) (Head, error) {
	h, err := getHead(ctx, ask, id, known...)
	if errors.As(err, &h.damaged) {
		h.Draft = &press.Draft{}
		return h, nil
	}
	return h, err
}

// put makes a draft the head of a plan: as a state of its own, or in place of
// the last one while typing in the same field has not rested.
func (a *Archive) put(ctx context.Context, tx *sql.Tx, h *Head, d *press.Draft, body []byte, did string) error {
	now := a.stamp()
	sum := digest(body)
	valid := isPlan(d)
	joined, err := a.joins(ctx, tx, h, did, now, valid)
	if err != nil {
		return err
	}
	n := h.State
	if joined {
		_, err = tx.ExecContext(ctx, "update state set at = $1, digest = $2, body = $3, valid = $4 where plan = $5 and n = $6", now, sum, body, valid, h.ID, n)
	} else {
		if err := tx.QueryRowContext(ctx, "update plan set top = top + 1 where id = $1 returning top", h.ID).Scan(&n); err != nil {
			return err
		}
		if err := addState(ctx, tx, h.ID, n, h.State, now, did, sum, body, valid); err != nil {
			return err
		}
		_, err = tx.ExecContext(ctx, "update state set next = $1 where plan = $2 and n = $3", n, h.ID, h.State)
	}
	if err != nil {
		return err
	}
	return a.moveHead(ctx, tx, h, n, d, now)
}

// joins tells whether a change goes on with the typing of the state that stands.
// A sound plan is never replaced by what is none: it is the last that there was.
// Nor is what another window typed: what both started from stays known.
func (a *Archive) joins(ctx context.Context, tx *sql.Tx, h *Head, did, now string, valid bool) (bool, error) {
	if h.damaged != nil || h.window != h.sender || !drafts.TypedIn(did) || h.CanRedo || !h.CanUndo {
		return false, nil
	}
	var last string
	var sound bool
	if err := tx.QueryRowContext(ctx, "select did, valid from state where plan = $1 and n = $2", h.ID, h.State).Scan(&last, &sound); err != nil {
		return false, err
	}
	if sound && !valid {
		return false, nil
	}
	rest := readStamp(now).Sub(h.At)
	return last == did && rest >= 0 && rest < Pause, nil
}

// moveHead makes state n the one that stands.
func (a *Archive) moveHead(ctx context.Context, tx *sql.Tx, h *Head, n int64, d *press.Draft, now string) error {
	l := drafts.LabelsOf(d)
	const query = `update plan set version = version + 1, head = $1, name = $2, number = $3, changed = $4,
		since = case when window = $5 and window <> '' then since else version end, window = $5 where id = $6`
	if _, err := tx.ExecContext(ctx, query, n, l.Name, l.Number, now, h.sender, h.ID); err != nil {
		return err
	}
	if h.damaged == nil && l == drafts.LabelsOf(h.Draft) {
		return nil
	}
	return findBy(ctx, tx, h.ID, l)
}
