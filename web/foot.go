package web

import (
	"context"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/issue"
	"ramplan/press/words"
)

// draftFoot stands at the foot of what a browser prints of a plan's draft. The plan is
// the last sound one, and may be nil; entries of the draft may be at fault.
func draftFoot(d *press.Draft, p *press.Plan, r *press.Result, unsound bool) string {
	id := words.Identity{Date: say.Today()}
	if p != nil {
		id = say.IdentityOf(p, r, "", say.Today())
	}
	if d != nil {
		id.Number, _ = d.Get("title.number")
		id.Name, _ = d.Get("title.name")
	}
	return id.Foot(unsound)
}

// benchFoot stands at the foot of a printed bench: its entries are a draft, or again what
// was issued last.
func (s *site) benchFoot(ctx context.Context, b *bench, l *leads, asIssued bool) (string, error) {
	if !asIssued {
		return draftFoot(&b.typed.Draft, l.plan, l.result, len(l.faults) > 0), nil
	}
	return s.standingFoot(ctx, b.head, l.plan, l.result, false)
}

// standingFoot stands at the foot of a page of a plan that is kept: where nothing was changed
// since, it is what was issued last, on every page alike.
func (s *site) standingFoot(ctx context.Context, head archive.Head, p *press.Plan, r *press.Result, unsound bool) (string, error) {
	if unsound || p == nil || r.PlanDigest() != head.Issued {
		return draftFoot(head.Draft, p, r, unsound), nil
	}
	last, err := s.store.LastIssued(ctx, head.ID)
	if err != nil {
		return "", err
	}
	return say.IdentityOf(p, r, last.Letter, say.Day(last.At)).Foot(false), nil
}

// issuedFoot stands at the foot of what a browser prints of an issued revision.
func (s *site) issuedFoot(ctx context.Context, id archive.ID, rev issue.Revision, r *press.Result) (string, error) {
	what := say.IdentityOf(rev.Plan, r, rev.Letter, say.Day(rev.At))
	var err error
	if what.Superseded, err = s.supersededBy(ctx, id, rev.Letter); err != nil {
		return "", err
	}
	return what.Foot(false), nil
}

// drillFoot stands at the foot of what a browser prints of a drill.
func drillFoot(p *press.Plan, r *press.Result, letter string, issued []issue.Revision) string {
	id := say.IdentityOf(p, r, letter, say.Today())
	for _, rev := range issued {
		if rev.Letter == letter {
			id.Date = say.Day(rev.At)
			if last := issued[0]; last.Letter != letter {
				id.Superseded = say.SupersededBy(last.Letter, say.Day(last.At))
			}
		}
	}
	return id.Foot(false)
}

// standingDigest names the plan that a draft makes, where it makes one.
func standingDigest(d *press.Draft) string {
	if d == nil {
		return ""
	}
	plan, faults := d.Check()
	if plan == nil || len(faults) > 0 {
		return say.DraftHasFaults()
	}
	return say.DraftIsPlan(plan.Digest())
}

// plainFoot stands at the foot of a printed page that is about several states of a plan.
func plainFoot(d *press.Draft, what string) string {
	called := ""
	if d != nil {
		called, _ = d.Get("title.number")
		if called == "" {
			called, _ = d.Get("title.name")
		}
	}
	if called == "" {
		called = say.NewPlan()
	}
	return printedToday(called + " · " + what)
}

// printedToday says what a printed page is, and when it was printed.
func printedToday(what string) string { return say.PrintedToday(what) }
