package press

// Evaluate computes everything that the plan leads to.
func Evaluate(p *Plan) *Result {
	return &Result{Format: ResultFormat, PlanDigest: p.Digest()}
}
