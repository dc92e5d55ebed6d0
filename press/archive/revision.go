package archive

import (
	"context"
	"database/sql"
	"errors"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/issue"
)

// Issue makes the working draft of a plan its next revision, if the version
// named still stands; what may be issued, and what asking again gives, is the rule of
// [issue.Case], which refuses with [issue.Refused].
func (a *Archive) Issue(ctx context.Context, id ID, from Start, s issue.Signed) (issue.Revision, error) {
	// What takes its time is done before anybody has to wait: on the state that stands,
	// and again in the rare case that it is another one by then.
	of, ready := a.ready(ctx, id, s)
	var out issue.Revision
	_, err := a.step(ctx, id, from, func(ctx context.Context, tx *sql.Tx, h *Head) error {
		if h.damaged != nil {
			return h.damaged
		}
		if of != h.Digest {
			ready = issue.Judge(h.Draft, s)
		}
		issued, err := last(ctx, tx, id)
		if err != nil {
			return err
		}
		now := a.stamp()
		var again bool
		if out, again, err = ready.Next(issued.Revision, issued.seq, readStamp(now)); err != nil || again {
			return err
		}
		if err := addRevision(ctx, tx, id, issued.seq+1, &out); err != nil {
			return err
		}
		_, err = tx.ExecContext(ctx, "update plan set changed = $1 where id = $2", now, id)
		return err
	})
	return out, err
}

// ready judges the draft that stands, of which it gives the digest; where it cannot be
// read, nothing.
func (a *Archive) ready(ctx context.Context, id ID, s issue.Signed) (string, *issue.Case) {
	h, err := getHead(ctx, a.readable(ctx).heads(ctx), id)
	if err != nil {
		return "", nil // met again, and told
	}
	c := issue.Judge(h.Draft, s)
	if issued, err := last(ctx, a.reader(ctx), id); err == nil && issued.seq > 0 {
		c.Compare(issued.Revision)
	}
	return h.Digest, c
}

// numbered is a revision with its number; 0 where there is none.
type numbered struct {
	issue.Revision
	seq int
}

func last(ctx context.Context, q querier, id ID) (numbered, error) {
	var n numbered
	row := q.QueryRowContext(ctx, "select seq, "+sealedColumns+" from revision where plan = $1 order by seq desc limit 1", id)
	r, err := scanSealed(func(to ...any) error { return row.Scan(append([]any{&n.seq}, to...)...) })
	if errors.Is(err, sql.ErrNoRows) {
		return n, nil
	}
	n.Revision = r
	return n, err
}

// LastIssued gives the last issued revision of a plan, as it is stored; one without
// a letter where nothing was issued.
func (a *Archive) LastIssued(ctx context.Context, id ID) (issue.Revision, error) {
	n, err := last(ctx, a.reader(ctx), id)
	return n.Revision, explain(err)
}

func addRevision(ctx context.Context, tx *sql.Tx, id ID, seq int, r *issue.Revision) error {
	body := r.Plan.JSON()
	sum := digest(body)
	_, err := tx.ExecContext(ctx, `insert into revision (plan, seq, letter, at, prepared, checked, approved, reason, despite, second, plan_digest, digest, seal, body, drill)
		values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15)`,
		id, seq, r.Letter, r.At.UTC().Format(stampLayout), r.Prepared, r.Checked, r.Approved, r.Reason, r.Despite, r.Second, r.PlanDigest, sum, seal(r, sum), body, r.Drill)
	return err
}

// seal is the digest of all that is said of a revision, its document by its own
// digest.
func seal(r *issue.Revision, body string) string {
	var b strings.Builder
	said := []string{r.Letter, r.At.UTC().Format(stampLayout), r.Prepared, r.Checked, r.Approved, r.Reason, r.Despite, r.Second, r.PlanDigest, body}
	if r.Drill != "" { // seals of before schema 6 hold as they are
		said = append(said, r.Drill)
	}
	for _, s := range said {
		b.WriteString(strconv.Itoa(len(s)) + " " + s + "\n")
	}
	return digest([]byte(b.String()))
}

const revisionColumns = "letter, at, prepared, checked, approved, reason, despite, second, plan_digest, digest, body"

// sealedColumns are those of schema 6 and later, sealedColumns3 of those from 3 on.
const (
	sealedColumns  = revisionColumns + ", drill, seal"
	sealedColumns3 = revisionColumns + ", '', seal"
)

// Revision gives one issued revision. Where today's rules do not take its plan it
// comes with [*NotTaken] and without a plan, else as it was issued.
func (a *Archive) Revision(ctx context.Context, id ID, letter string) (issue.Revision, error) {
	r, err := scanSealed(a.reader(ctx).QueryRowContext(ctx, "select "+sealedColumns+" from revision where plan = $1 and letter = $2", id, letter).Scan)
	if errors.Is(err, sql.ErrNoRows) {
		return r, ErrNotFound
	}
	switch {
	case err != nil:
		return r, explain(err)
	case r.Damaged:
		return r, a.tell(ctx, &Damaged{Plan: id, What: "revision " + letter})
	case r.Plan == nil:
		return r, &NotTaken{Plan: id, Letter: letter, Faults: r.Faults}
	}
	return r, nil
}

// Revisions lists the issued revisions, the newest first.
func (a *Archive) Revisions(ctx context.Context, id ID) ([]issue.Revision, error) {
	rows, err := a.reader(ctx).QueryContext(ctx, "select "+sealedColumns+" from revision where plan = $1 order by seq desc", id)
	if err != nil {
		return nil, explain(err)
	}
	defer rows.Close()
	var out []issue.Revision
	for rows.Next() {
		r, err := scanSealed(rows.Scan)
		if err != nil {
			return nil, explain(err)
		}
		out = append(out, r)
	}
	return out, explain(rows.Err())
}

// scanSealed reads the sealed columns.
func scanSealed(scan scanner) (issue.Revision, error) {
	var drill, said string
	r, body, err := scanRevision(func(to ...any) error { return scan(append(to, &drill, &said)...) })
	r.Drill = drill
	if err == nil && seal(&r, body) != said {
		damage(&r)
	}
	return r, err
}

// scanRevision reads the columns of schema 1; it gives the digest that is kept of the
// document, too.
func scanRevision(scan scanner) (r issue.Revision, sum string, err error) {
	var at string
	var body []byte
	if err := scan(&r.Letter, &at, &r.Prepared, &r.Checked, &r.Approved, &r.Reason, &r.Despite, &r.Second, &r.PlanDigest, &sum, &body); err != nil {
		return r, sum, err
	}
	r.At = readStamp(at)
	if digest(body) != sum {
		damage(&r)
		return r, sum, nil
	}
	if r.Document, r.Faults = press.ReadDocument(body); r.Document == nil {
		return r, sum, nil
	}
	if r.Document.Digest() != r.PlanDigest {
		damage(&r)
		return r, sum, nil
	}
	r.Plan, r.Faults = r.Document.Check()
	return r, sum, nil
}

// damage says that a revision is not what was stored: nothing of its plan is told.
func damage(r *issue.Revision) { r.Damaged, r.Document, r.Plan, r.Faults = true, nil, nil, nil }
