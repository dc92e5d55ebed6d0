package archive

import (
	"context"
	"database/sql"
	"errors"

	"ramplan/press/drafts"

	"ramplan/press/issue"
)

// plans looks at each plan.
func (c *checker) plans(ctx context.Context) error {
	var all []planRow
	err := each(ctx, c.tx, "select id, version, head, top, name, number, binned is not null from plan order by id", nil, func(scan scanner) error {
		var p planRow
		if err := scan(&p.id, &p.version, &p.head, &p.top, &p.name, &p.number, &p.binned); err != nil {
			return err
		}
		all = append(all, p)
		return nil
	})
	if err != nil {
		return err
	}
	for _, p := range all {
		c.Plans++
		if p.binned {
			c.Binned++
		}
		for _, step := range []func(context.Context, *planRow) error{c.states, c.head, c.revisions} {
			if err := step(ctx, &p); err != nil && !c.broken(err) {
				return err
			}
		}
	}
	return nil
}

type planRow struct {
	id                 ID
	version, head, top int64
	name, number       string
	binned             bool
}

// states looks at every state of a plan: its document, and that the lines of
// undo and redo lead to states that lead back.
func (c *checker) states(ctx context.Context, p *planRow) error {
	type link struct{ prev, next int64 }
	links := map[int64]link{}
	err := each(ctx, c.tx, "select n, coalesce(prev, 0), coalesce(next, 0), digest, body from state where plan = $1 order by n", []any{p.id}, func(scan scanner) error {
		var n int64
		var l link
		var sum string
		var body []byte
		if err := scan(&n, &l.prev, &l.next, &sum, &body); err != nil {
			return err
		}
		c.States++
		links[n] = l
		if digest(body) != sum {
			c.fault(p.id, stateName(n), "does not match its digest")
		} else if _, err := readBody(p.id, stateName(n), sum, body); err != nil {
			c.fault(p.id, stateName(n), "is no draft")
		}
		return nil
	})
	if err != nil {
		return err
	}
	for n := int64(1); n <= p.top; n++ {
		l, there := links[n]
		switch {
		case !there:
			c.fault(p.id, stateName(n), "is not there")
		case l.prev < 0 || l.prev >= n || l.prev == 0 && n > 1:
			c.fault(p.id, stateName(n), "was made from state %d, which cannot be", l.prev)
		case l.next != 0 && links[l.next].prev != n:
			c.fault(p.id, stateName(n), "leads on to state %d, which does not lead back", l.next)
		}
	}
	if len(links) > int(p.top) {
		c.fault(p.id, "its history", "holds more than its %d states", p.top)
	}
	if _, there := links[p.head]; !there {
		c.fault(p.id, "its draft", "is state %d, which is not there", p.head)
	}
	return nil
}

// head looks at what the shelf and the search say of a plan.
func (c *checker) head(ctx context.Context, p *planRow) error {
	s, err := getState(ctx, c.tx, p.id, p.head)
	var damaged *Damaged
	if errors.As(err, &damaged) || errors.Is(err, ErrNotFound) {
		return nil // told already
	}
	if err != nil {
		return err
	}
	want := drafts.LabelsOf(s.Draft)
	if p.name != want.Name || p.number != want.Number {
		c.fault(p.id, "its card", "names %q, %q; its draft %q, %q", p.name, p.number, want.Name, want.Number)
	}
	var l drafts.Labels
	err = c.tx.QueryRowContext(ctx, "select name, number, notes, parts from find where rowid = $1", p.id).Scan(&l.Name, &l.Number, &l.Notes, &l.Parts)
	if errors.Is(err, sql.ErrNoRows) {
		c.fault(p.id, "the search", "does not know it")
		return nil
	}
	if err == nil && l != want {
		c.fault(p.id, "the search", "knows other words than its draft has")
	}
	return err
}

// revisions looks at the issued revisions of a plan.
func (c *checker) revisions(ctx context.Context, p *planRow) error {
	seq := 0
	columns, read := sealedColumns, scanSealed
	switch {
	case c.schema < 3:
		columns = revisionColumns
		read = func(scan scanner) (issue.Revision, error) {
			r, _, err := scanRevision(scan)
			return r, err
		}
	case c.schema < 6:
		columns = sealedColumns3
	}
	return each(ctx, c.tx, "select seq, "+columns+" from revision where plan = $1 order by seq", []any{p.id}, func(scan scanner) error {
		var n int
		r, err := read(func(to ...any) error { return scan(append([]any{&n}, to...)...) })
		if err != nil {
			return err
		}
		c.Revisions++
		seq++
		what := "revision " + r.Letter
		if n != seq || r.Letter != issue.Letter(n) {
			c.fault(p.id, what, "stands at place %d, where %s belongs", n, issue.Letter(seq))
		}
		switch {
		case r.Damaged:
			c.fault(p.id, what, "does not match its digest")
		case r.Plan == nil:
			c.NotTaken = append(c.NotTaken, Fault{p.id, what, "is whole, but today's rules do not take it: " + r.Faults[0].String()})
		}
		return nil
	})
}

// rams looks at every ram on the shelf.
func (c *checker) rams(ctx context.Context) error {
	if c.schema < 3 {
		return nil
	}
	return each(ctx, c.tx, "select "+ramColumns+" from ram order by id", nil, func(scan scanner) error {
		r, err := scanRam(scan)
		if err != nil {
			return err
		}
		c.Rams++
		if r.Damaged {
			c.fault(0, r.what(), "does not match its digest")
		}
		return nil
	})
}

// trainings looks at every training record.
func (c *checker) trainings(ctx context.Context) error {
	if c.schema < 4 {
		return nil
	}
	return each(ctx, c.tx, "select "+trainingColumns+" from training order by id", nil, func(scan scanner) error {
		t, err := scanTraining(scan)
		if err != nil {
			return err
		}
		c.Trainings++
		if t.Damaged {
			c.fault(0, trainingName(t.ID), "does not match its digest")
		}
		return nil
	})
}

// studies looks at every study and shift check, and at what they name.
func (c *checker) studies(ctx context.Context) error {
	if c.schema < 7 {
		return nil
	}
	all, err := studies(ctx, c.tx, "from study order by id")
	if err != nil {
		return err
	}
	known := map[StudyID]KeptStudy{}
	for _, k := range all {
		known[k.ID] = k
		if k.Shift {
			c.Checks++
		} else {
			c.Studies++
		}
		if k.Damaged || k.Study != nil && k.Study.Digest() != k.Digest {
			c.fault(k.Plan, studyName(k.ID), "does not match its digest")
		}
		if old, there := known[k.Replaces]; k.Replaces != 0 && (!there || old.Plan != k.Plan || old.Kind != k.Kind || !old.Signed()) {
			c.fault(k.Plan, studyName(k.ID), "%s", say.CorrectsWrongly(studyName(k.Replaces)))
		}
	}
	return nil
}
