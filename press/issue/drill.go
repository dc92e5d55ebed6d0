package issue

import (
	"slices"

	"ramplan/press"
)

// What a planner says of a change and the drill. Where nothing is said it concerns the
// drill.
const (
	DrillAgain = "again" // everybody is due again
	DrillSame  = "same"  // who passed on the revision before has passed on this one
)

// sameDrill tells why it cannot be said, as signed, that a change does not concern the
// drill.
func (c *Case) sameDrill(before Revision) press.Problems {
	refused := func(why string) press.Problems {
		return press.Problems{{Path: PathDrill, Code: press.CodeConflict, Message: why}}
	}
	switch c.signed.Drill {
	case "", DrillAgain:
		return nil
	case DrillSame:
	default:
		return refused("whether the change concerns the drill is told by " + DrillAgain + " or " + DrillSame)
	}
	if before.Plan == nil {
		return refused("revision " + before.Letter + " cannot be read, so nobody knows whether its drill was the same")
	}
	if !SameLamps(before.Plan, c.plan) {
		return refused("the lamps mean something else than in revision " + before.Letter + ", so the change concerns the drill")
	}
	return nil
}

// SameLamps tells whether the four pairs of lamps mean the same in two plans.
func SameLamps(one, other *press.Plan) bool {
	a, b := press.Evaluate(one).Verdict, press.Evaluate(other).Verdict
	if a == nil || b == nil {
		return a == b
	}
	for _, arrival := range []bool{true, false} {
		for _, zone := range []bool{true, false} {
			if !slices.Equal(a.Table.Words(arrival, zone), b.Table.Words(arrival, zone)) {
				return false
			}
		}
	}
	return true
}

// Counting are the digests of the states of a plan that people may have passed on to be
// trained for the last that was issued, of revisions that stand newest first: its own,
// and those before it as long as each change did not concern the drill.
func Counting(issued []Revision) []string {
	var out []string
	for _, r := range issued {
		if out = append(out, r.PlanDigest); r.Damaged || r.Drill != DrillSame {
			break
		}
	}
	return out
}
