package press

import (
	"sync"

	"ramplan/press/sequence"
)

// Evaluate computes everything that the plan leads to, in the order in which
// one figure rests on another. Every plan has a result: where a blocker leaves a
// figure without a meaning, the figure is nil. The result knows its plan.
func Evaluate(p *Plan) *Result {
	w := &work{p: p, r: &Result{Format: ResultFormat, PlanDigest: p.Digest(), Plan: p}}
	w.run()
	w.r.work = w
	return w.r
}

func (w *work) run() {
	w.heights()
	w.jointFigures()
	w.forceWindow()
	w.readings()
	w.travel()
	w.verdict()
	w.probe()
	w.risks()
	w.cycle()
	w.impact()
	w.catalogue()
	w.probeRows()
	w.sequence()
	w.samples()
	w.findings()
}

// work is one evaluation: the plan, the result as it grows, and what lies
// between the figures. Each file of this package that adds a method to it is one
// section of the model.
type work struct {
	p *Plan
	r *Result

	parts  parts
	joint  joint
	force  drive
	seated reading
	zone   signals
	probed *probing        // nil without a probe, or where its end is not known
	ran    *sequence.Cycle // nil without a sequence, or where it cannot be run
	chance chance
	visits []visit // one a row of the catalogue

	lamps    map[sequence.Signal][]Lit // of the nominal run
	pushFrom float64                   // mm, where the first push begins

	once   sync.Once
	traces Traces
}

func ptr[T any](v T) *T { return &v }
