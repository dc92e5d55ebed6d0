package issue

import (
	"time"

	"ramplan/press"
)

// Refused says why a plan was not issued, beside the field that would mend it.
type Refused struct{ Problems press.Problems }

func (e *Refused) Error() string { return "issue: not issued: " + e.Problems.Error() }

// A Case is a draft that somebody wants to issue: the plan that it makes, and what
// forbids it.
type Case struct {
	plan   *press.Plan
	signed Signed
	faults press.Problems
	before string         // digest of the revision that its drill was compared with
	drill  press.Problems // what is said wrongly of the two
}

// Judge looks at a draft that is to be issued as signed.
func Judge(d *press.Draft, s Signed) *Case {
	c := &Case{signed: s}
	if c.plan, c.faults = d.Check(); len(c.faults) == 0 {
		c.faults = Refuse(c.plan, s)
	}
	return c
}

// Compare holds what is said of the drill against the revision before. It takes its
// time, so it can be done beforehand.
func (c *Case) Compare(before Revision) {
	if len(c.faults) == 0 {
		c.before, c.drill = before.PlanDigest, c.sameDrill(before)
	}
}

// Next gives the revision that is issued at a time after the last one, which is the
// n-th; n is 0 where none was. Asking again for what was issued last, with the same
// names and reason, as after a lost answer, gives that once more; with others it is
// refused, as one plan is not issued twice in a row.
func (c *Case) Next(last Revision, n int, now time.Time) (r Revision, again bool, err error) {
	if len(c.faults) > 0 {
		return r, false, &Refused{c.faults}
	}
	signed, digest := c.signed, c.plan.Digest()
	if n == 0 || n == 1 && last.PlanDigest == digest {
		signed.Drill = "" // there is nothing that it could be the same as
	}
	if last.PlanDigest == digest && !last.Damaged {
		if last.Signed != signed {
			return r, false, &Refused{press.Problems{{Code: press.CodeConflict, Message: "this very plan is issued already, as revision " + last.Letter + "; nothing was issued a second time"}}}
		}
		return last, true, nil
	}
	if n > 0 {
		if c.before != last.PlanDigest {
			c.Compare(last)
		}
		if len(c.drill) > 0 {
			return r, false, &Refused{c.drill}
		}
	}
	return Revision{Letter: Letter(n + 1), At: now, Signed: signed, Document: c.plan.Document(), Plan: c.plan, PlanDigest: digest}, false, nil
}
