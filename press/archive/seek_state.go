package archive

import (
	"context"
	"strings"
	"time"

	"ramplan/press/drafts"
)

// A FoundState is a state of a plan's draft whose plan has a digest that was searched for.
type FoundState struct {
	Plan         ID
	Name, Number string // of the plan's draft
	N            int64  // which of its states
	At           time.Time
	Digest       string // of the plan
	Stands       bool   // it is the draft of today
}

// Bounds of a search among states, which must be read one by one.
const (
	mostSought = 3000
	seekTime   = 3 * time.Second
)

// DraftsAs finds the states of drafts whose plan has a digest that begins with these
// digits: of each plan on the shelf the newest. Drafts of today are looked at first, then
// the newest states; whole is false where there were more than could be looked at.
func (a *Archive) DraftsAs(ctx context.Context, digits string) (found []FoundState, whole bool, err error) {
	rows, err := a.reader(ctx).QueryContext(ctx, `
select p.id, p.name, p.number, s.n, s.at, s.n = p.head, s.digest, s.body from state s join plan p on p.id = s.plan
where s.valid and p.binned is null order by s.n = p.head desc, s.at desc, s.n desc limit `+count(mostSought+1))
	if err != nil {
		return nil, false, explain(err)
	}
	defer rows.Close()
	seen := map[ID]bool{}
	end, looked := time.Now().Add(seekTime), 0
	for rows.Next() {
		if looked++; looked > mostSought || time.Now().After(end) {
			return found, false, nil
		}
		f, at, own, body := FoundState{}, "", "", []byte(nil)
		if err := rows.Scan(&f.Plan, &f.Name, &f.Number, &f.N, &at, &f.Stands, &own, &body); err != nil {
			return nil, false, explain(err)
		}
		if seen[f.Plan] {
			continue
		}
		if f.Digest = a.planDigest(f, own, body); strings.HasPrefix(f.Digest, drafts.DigestName+digits) {
			f.At, seen[f.Plan] = readStamp(at), true
			found = append(found, f)
		}
	}
	return found, true, explain(rows.Err())
}

// planDigest is that of the plan which a stored draft makes, remembered by the draft's own;
// empty where it is damaged or makes none today.
func (a *Archive) planDigest(f FoundState, own string, body []byte) string {
	if known, ok := a.planDigests.Load(own); ok {
		return known.(string)
	}
	draft, err := readBody(f.Plan, stateName(f.N), own, body)
	if err != nil {
		return ""
	}
	made := ""
	if plan, faults := draft.Check(); len(faults) == 0 {
		made = plan.Digest()
	}
	a.planDigests.Store(own, made)
	return made
}
