package press

// Traces are the curves that drawings need beside the figures of a result.
type Traces struct {
	Readings []Pair // the spread of seated readings: position mm, density 1/mm
}

// Trace computes the curves of a plan that was evaluated to r.
func Trace(p *Plan, r *Result) Traces { return Traces{} }
