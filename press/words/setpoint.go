package words

import "ramplan/press"

// Two words tell where a figure comes from, the same on every page: proposed is what the
// program suggests where nothing was set by hand, and computed is a result, which nobody
// sets. What a plan with a blocker leads to is no suggestion.
const (
	byHand      = "by hand"
	proposed    = "proposed"
	computed    = "computed"
	notForUse   = "not for use"
	asProposed  = "as proposed"
	untilMended = " before the blocker is mended"
)

// SetpointNote says where a setpoint comes from. In a plan with blockers it says that the
// setpoint must not be used yet, and that of a proposal alone.
func (say Printer) SetpointNote(r *press.Result, hand bool) string {
	s := chosen(r, hand)
	n := r.Count(press.Blocker)
	if n == 0 {
		return s
	}
	if hand {
		s += "; " + notForUse
	}
	if n == 1 {
		return s + untilMended
	}
	return s + " before the blockers are mended"
}

// Source says in a word or two where a setpoint of an issued sheet or of a draft comes
// from: what is issued was taken as it was proposed.
func (s Setpoint) Source(issued bool) string {
	if issued && s.From == proposed {
		return asProposed
	}
	return s.From
}

// chosen says it of a setpoint in a word or two.
func chosen(r *press.Result, hand bool) string {
	switch {
	case hand:
		return byHand
	case r.Blocked():
		return notForUse
	}
	return proposed
}
