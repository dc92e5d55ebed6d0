package archive

import (
	"context"
	"database/sql"
	"errors"
	"strconv"
	"strings"
	"time"

	"ramplan/press"
)

// A Revision is an issued state of a plan. It never changes.
type Revision struct {
	Letter string
	At     time.Time // of issue
	Signed
	Document   *press.Document // as it was issued; nil where it is damaged or no document of today
	Plan       *press.Plan     // nil where there is none, or today's rules do not take it
	PlanDigest string          // of the plan in canonical form
	Damaged    bool            // the document or what is said of it does not match its digest
	Faults     press.Problems  // why today's rules do not take it, though it is what was issued

	body string // digest of the document
}

// Signed is who stands for a revision, and why it was issued.
type Signed struct {
	Prepared, Checked, Approved string
	Reason                      string // for the change
	Despite                     string // why it was issued with blockers; empty without
	Second                      string // who else stands for that
	Drill                       string // whether the change concerns the drill: DrillAgain, DrillSame, or empty where nobody said so
}

// What a planner says of a change and the drill. Where nothing is said it concerns the
// drill.
const (
	DrillAgain = "again" // everybody is due again
	DrillSame  = "same"  // who passed on the revision before has passed on this one
)

// Refused says why a plan was not issued, beside the field that would mend it.
type Refused struct{ Problems press.Problems }

func (e *Refused) Error() string { return "archive: not issued: " + e.Problems.Error() }

// Issue makes the working draft of a plan its next revision, if the version
// named still stands. A plan with physical blockers is never issued, one with
// others only with a reason and a second name. Asking again for what was issued
// last, with the same names and reason, as after a lost answer, gives that; with
// others it is refused, as one plan is not issued twice in a row.
func (a *Archive) Issue(ctx context.Context, id ID, from int64, s Signed) (Revision, error) {
	// What takes its time is done before anybody has to wait: on the state that stands,
	// and again in the rare case that it is another one by then.
	ready := a.ready(ctx, id, s)
	var out Revision
	_, err := a.step(ctx, id, from, func(ctx context.Context, tx *sql.Tx, h *Head) error {
		if h.damaged != nil {
			return h.damaged
		}
		if ready.digest != h.Digest {
			ready = judge(*h, s)
		}
		if len(ready.faults) > 0 {
			return &Refused{ready.faults}
		}
		plan := ready.plan
		issued, err := last(ctx, tx, id)
		if err != nil {
			return err
		}
		if issued.seq == 0 || issued.seq == 1 && issued.PlanDigest == plan.Digest() {
			s.Drill = "" // there is nothing that it could be the same as
		}
		if issued.PlanDigest == plan.Digest() && !issued.Damaged {
			if issued.Signed != s {
				return &Refused{press.Problems{{Code: press.CodeConflict, Message: "this very plan is issued already, as revision " + issued.Letter + "; nothing was issued a second time"}}}
			}
			out = issued.Revision
			return nil
		}
		if issued.seq > 0 {
			if ready.before != issued.PlanDigest {
				ready.compare(issued.Revision, s)
			}
			if len(ready.drill) > 0 {
				return &Refused{ready.drill}
			}
		}
		now := a.stamp()
		out = Revision{Letter: Letter(issued.seq + 1), At: readStamp(now), Signed: s, Document: plan.Document(), Plan: plan, PlanDigest: plan.Digest()}
		if err := addRevision(ctx, tx, id, issued.seq+1, &out); err != nil {
			return err
		}
		_, err = tx.ExecContext(ctx, "update plan set changed = $1 where id = $2", now, id)
		return err
	})
	return out, err
}

// A judged draft is the plan that it makes, and what forbids to issue it.
type judged struct {
	digest string // of the draft
	plan   *press.Plan
	faults press.Problems
	before string         // digest of the revision that its drill was compared with
	drill  press.Problems // what is said wrongly of the two
}

// compare holds what is said of the drill against the revision before.
func (j *judged) compare(r Revision, s Signed) {
	j.before, j.drill = r.PlanDigest, sameDrill(j.plan, r, s)
}

// ready judges the draft that stands; where it cannot be read, nothing.
func (a *Archive) ready(ctx context.Context, id ID, s Signed) judged {
	h, err := getHead(ctx, a.reader(ctx), id)
	if err != nil {
		return judged{} // met again, and told
	}
	j := judge(h, s)
	if issued, err := last(ctx, a.reader(ctx), id); err == nil && issued.seq > 0 && len(j.faults) == 0 {
		j.compare(issued.Revision, s)
	}
	return j
}

func judge(h Head, s Signed) judged {
	j := judged{digest: h.Digest}
	if j.plan, j.faults = h.Draft.Check(); len(j.faults) == 0 {
		j.faults = issuable(j.plan, s)
	}
	return j
}

// numbered is a revision with its number; 0 where there is none.
type numbered struct {
	Revision
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
func (a *Archive) LastIssued(ctx context.Context, id ID) (Revision, error) {
	n, err := last(ctx, a.reader(ctx), id)
	return n.Revision, explain(err)
}

func addRevision(ctx context.Context, tx *sql.Tx, id ID, seq int, r *Revision) error {
	body := r.Plan.JSON()
	r.body = digest(body)
	_, err := tx.ExecContext(ctx, `insert into revision (plan, seq, letter, at, prepared, checked, approved, reason, despite, second, plan_digest, digest, seal, body, drill)
		values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15)`,
		id, seq, r.Letter, r.At.UTC().Format(stampLayout), r.Prepared, r.Checked, r.Approved, r.Reason, r.Despite, r.Second, r.PlanDigest, r.body, r.seal(r.body), body, r.Drill)
	return err
}

// seal is the digest of all that is said of a revision, its document by its own
// digest.
func (r *Revision) seal(body string) string {
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
func (a *Archive) Revision(ctx context.Context, id ID, letter string) (Revision, error) {
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
func (a *Archive) Revisions(ctx context.Context, id ID) ([]Revision, error) {
	rows, err := a.reader(ctx).QueryContext(ctx, "select "+sealedColumns+" from revision where plan = $1 order by seq desc", id)
	if err != nil {
		return nil, explain(err)
	}
	defer rows.Close()
	var out []Revision
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
func scanSealed(scan scanner) (Revision, error) {
	var drill, seal string
	r, err := scanRevision(func(to ...any) error { return scan(append(to, &drill, &seal)...) })
	r.Drill = drill
	if err == nil && r.seal(r.body) != seal {
		r.damage()
	}
	return r, err
}

// scanRevision reads the columns of schema 1.
func scanRevision(scan scanner) (Revision, error) {
	var r Revision
	var at string
	var body []byte
	if err := scan(&r.Letter, &at, &r.Prepared, &r.Checked, &r.Approved, &r.Reason, &r.Despite, &r.Second, &r.PlanDigest, &r.body, &body); err != nil {
		return r, err
	}
	r.At = readStamp(at)
	if digest(body) != r.body {
		r.damage()
		return r, nil
	}
	if r.Document, r.Faults = press.ReadDocument(body); r.Document == nil {
		return r, nil
	}
	if r.Document.Digest() != r.PlanDigest {
		r.damage()
		return r, nil
	}
	r.Plan, r.Faults = r.Document.Check()
	return r, nil
}

// damage says that a revision is not what was stored: nothing of its plan is told.
func (r *Revision) damage() { r.Damaged, r.Document, r.Plan, r.Faults = true, nil, nil, nil }
