package proof

import (
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/proving"
)

// RevisionState says whether a revision is proved, and what stands in its way; the letter is
// empty for a plan that was not issued.
func (say Words) RevisionState(letter string, p *proving.Proved) string {
	name := "The plan"
	if letter != "" {
		name = "Revision " + letter
	}
	lower := func(kinds []string) string {
		names := make([]string, len(kinds))
		for i, k := range kinds {
			names[i] = strings.ToLower(say.KindName(k))
		}
		return listed(names)
	}
	with := func(kinds []string, states ...string) []string {
		var out []string
		for _, k := range kinds {
			if slices.Contains(states, p.Kinds[k].State) {
				out = append(out, k)
			}
		}
		return out
	}
	not := name + " is not proved"
	all := slices.Concat(proving.Needed, []string{proving.Restart, proving.Trial})
	failed := with(all, string(proving.Fail))
	switch {
	case p.State == proving.StateProved && p.Until != nil:
		return name + " is proved until " + *p.Until + "."
	case p.PlanBlocked:
		return not + ": the plan itself has a blocker."
	case p.State == proving.StateWithdrawn:
		return name + " is no longer proved: something happened since to the station, which withdrew " + lower(with(proving.Needed, proving.StateWithdrawn)) + "."
	case p.State == proving.StateExpired:
		return name + " is no longer proved: more than a year has gone by since " + lower(with(proving.Needed, proving.StateExpired)) + "."
	case len(failed) > 0:
		return not + ": refuted by " + lower(failed) + "."
	}
	if open := with(proving.Needed, string(proving.Open), proving.StateMissing, proving.StateOtherPlan, proving.StateOtherRam); len(open) > 0 {
		var parts []string
		for _, state := range []string{proving.StateMissing, string(proving.Open), proving.StateOtherPlan, proving.StateOtherRam} {
			if kinds := with(open, state); len(kinds) > 0 {
				parts = append(parts, lower(kinds)+" "+say.stateSaid(state))
			}
		}
		return not + ": " + strings.Join(parts, "; ") + "."
	}
	if p.AsFound == nil {
		return not + ": what the station promises as it was found is not known."
	}
	return not + ": as it was found, the station misses a target of the plan."
}

// stateSaid is a state behind the kinds that are in it.
func (say Words) stateSaid(state string) string {
	switch state {
	case proving.StateMissing:
		return "missing"
	case proving.StateOtherPlan:
		return "shown to another plan"
	case proving.StateOtherRam:
		return "taken with another ram"
	}
	return "still open"
}

// RoleName names what a sample proves.
func (say Words) RoleName(role *string) string {
	if role == nil {
		return "proves nothing"
	}
	switch *role {
	case press.Long:
		return "too tall"
	case press.Short:
		return "too short"
	case press.Good:
		return "good"
	}
	return "nothing in it"
}

// RoleSays is what a sample of a role must give, and why it is pushed.
func (say Words) RoleSays(role *string) string {
	if role == nil {
		return "A right station accepts it now and refuses it then."
	}
	switch *role {
	case press.Long:
		return "It stands too tall: the station must refuse it."
	case press.Short:
		return "It sits too low: the station must refuse it."
	case press.Good:
		return "It is within the drawing: the station must accept it."
	}
	return "Without an insert the station must not accept."
}
