package press

import (
	"sync"

	"ramplan/press/model"
)

// ResultFormat is the name of the result format.
const ResultFormat = "ramplan.result/1"

// A Result is a plan with everything that it leads to. [Evaluate] makes it. One that is put
// together by hand has its figures and nothing behind them: what is computed when it is asked
// for (traces, courses, chances, the digest) panics there and says so.
type Result struct {
	Plan *Plan
	File string // from which the plan came; often none

	model.Outcome

	digest func() string
}

// Evaluate computes everything that the plan leads to. Every plan has a result.
func Evaluate(p *Plan) *Result {
	return &Result{Plan: p, Outcome: *model.Evaluate(&p.Input), digest: sync.OnceValue(p.Digest)}
}

// PlanDigest names the plan of the result. It is computed when it is asked for first.
func (r *Result) PlanDigest() string {
	if r.digest == nil {
		panic("press: this result was not made by Evaluate: its plan has no digest")
	}
	return r.digest()
}
