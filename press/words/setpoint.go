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

func chosen(byHand bool) string {
	if byHand {
		return "by hand"
	}
	return "proposed"
}
