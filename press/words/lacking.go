package words

import "ramplan/press"

// Lacking says what of the fault catalogue and the limit samples does not exist
// for a plan, and why; nothing where all of it does. The findings must have been
// explained.
func (say Printer) Lacking(r *press.Result) []string {
	var out []string
	switch {
	case r.Verdict == nil:
		out = append(out, "There is no verdict, so there is neither a fault catalogue nor a limit sample: "+say.unknownEnds(r)+" not known.")
	case r.Samples == nil:
		out = append(out, "No part is accepted, so the rows at the edges of the window and the limit samples do not exist.")
	default:
		return nil
	}
	for _, f := range r.Findings {
		if f.Code == press.NoAcceptance || f.Code == press.NeverGood {
			out = append(out, f.Message)
		}
	}
	return out
}

// unknownEnds names the positions that a verdict needs and the plan does not have.
func (say Printer) unknownEnds(r *press.Result) string {
	var what []string
	z := r.Window.Zone
	if z == nil || z[0] == nil {
		what = append(what, "zone start")
	}
	if z == nil || z[1] == nil {
		what = append(what, "zone end")
	}
	if r.Travel.PushEnd == nil {
		what = append(what, "push end")
	}
	if len(what) == 1 {
		return what[0] + " is"
	}
	return and(what) + " are"
}
