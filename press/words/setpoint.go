package words

import "ramplan/press"

// SetpointNote says where a setpoint comes from. In a plan with blockers it says
// as well that the setpoint must not be used yet.
func SetpointNote(r *press.Result, byHand bool) string {
	s := chosen(byHand)
	switch n := r.Count(press.Blocker); n {
	case 0:
		return s
	case 1:
		return s + "; holds only once the blocker is mended"
	}
	return s + "; holds only once the blockers are mended"
}

// Source says in a word or two where a setpoint of an issued sheet or of a draft
// comes from: what is issued is no proposal any more.
func (s Setpoint) Source(issued bool) string {
	if issued && s.From == chosen(false) {
		return "computed"
	}
	return s.From
}

func chosen(byHand bool) string {
	if byHand {
		return "by hand"
	}
	return "proposed"
}
