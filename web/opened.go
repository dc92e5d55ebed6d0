package web

import (
	"context"

	"ramplan/web/page"
)

// justOpened is in the address of a plan that was made of a file just now.
const justOpened = "opened"

// sayIssued tells on the bench of a plan that came from a file that the same plan
// was issued before, and where that revision stands: a draft beside it is easily
// taken for it.
func (s *site) sayIssued(ctx context.Context, b *bench) error {
	plan, faults := b.head.Draft.Check()
	if len(faults) > 0 {
		return nil
	}
	found, err := s.store.Issued(ctx, plan.Digest())
	if err != nil {
		return err
	}
	n := page.Notice{Kind: "done", Text: say.OpenedWasIssued()}
	for _, f := range found {
		if f.Plan == b.head.ID {
			continue
		}
		name := f.Name
		if f.Number != "" {
			name = f.Number + ", " + name
		}
		text := "Revision " + f.Letter + " of " + name
		if f.Superseded() {
			text += ", " + say.SupersededBy(f.Last, "")
		}
		n.Links = append(n.Links, page.Link{Address: planPath(f.Plan, "revisions/"+f.Letter), Text: text})
	}
	if len(n.Links) > 0 {
		b.notices = append(b.notices, n)
	}
	return nil
}
