// Package model computes what a station's figures lead to: from an [Input] that was
// checked to an [Outcome]. It knows neither documents nor digests, so that many
// varied inputs can be evaluated one after the other.
//
// Units everywhere inside: mm, N, s, kg, MPa, mm/s, mm/s², µm where a name says
// so, settings in % of the rated motor current.
package model

import "sync"

// Evaluate computes everything that the figures of a station lead to, in the order
// in which one rests on another. Every sound input has an outcome: where a blocker
// leaves a figure without a meaning, the figure is nil.
func Evaluate(in *Input) *Outcome {
	w := &work{p: in, r: &Outcome{}}
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
	w.samples()
	w.findings()
}

// work is one evaluation: the input, the outcome as it grows, and what lies
// between the figures. Each file of this package that adds a method to it is one
// section of the model.
type work struct {
	p *Input
	r *Outcome

	parts  parts
	joint  joint
	force  drive
	seated reading
	zone   signals
	chance chance
	visits []visit // one a row of the catalogue

	once   sync.Once
	traces Traces
}

func ptr[T any](v T) *T { return &v }
