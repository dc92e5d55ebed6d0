// Package model computes what a station's figures lead to: from an [Input] that was
// checked to an [Outcome]. It knows neither documents nor digests, so that many
// varied inputs can be evaluated one after the other.
//
// Units everywhere inside: mm, N, s, kg, MPa, mm/s, mm/s², µm where a name says
// so, settings in % of the rated motor current.
package model

import (
	"sync"

	"ramplan/press/sequence"
)

// Evaluate computes everything that the figures of a station lead to, in the order
// in which one rests on another. Every sound input has an outcome: where a blocker
// leaves a figure without a meaning, the figure is nil.
func Evaluate(in *Input) *Outcome {
	return evaluate(in, true)
}

// EvaluateWithoutRisk leaves out what costs most: the shares of parts, the detection
// of the catalogue, the limit samples, and every finding that rests on them. These
// figures are 0 or nil in its outcome.
func EvaluateWithoutRisk(in *Input) *Outcome {
	return evaluate(in, false)
}

func evaluate(in *Input, withRisk bool) *Outcome {
	w := &work{p: in, r: &Outcome{}, withRisk: withRisk}
	w.run()
	w.r.work = w
	return w.r
}

// run goes through the sections of the model: each takes what it rests on and gives
// what it adds. Findings and catalogue look at all of it.
func (w *work) run() {
	in, out := w.p, w.r
	w.parts, out.Stack = stackUp(in.Parts, in.Station.Nest)
	w.joint, out.Joint = in.Joint.pressIn(w.parts.travel)
	w.window()
	out.Verdict = w.zone.verdict(&out.Window, w.sure(), w.withoutInsert())
	w.probe()
	if w.withRisk {
		w.chance, out.Risk = in.risks(&w.parts, &w.seated, &w.zone)
		out.Samples = w.chance.samples(in.Faults.SampleProbability, w.seated.base)
	}
	out.Cycle = w.cycle()
	out.Heating = w.heating(&out.Cycle)
	out.Impact = in.impact(&out.Force, w.joint.push[low].seat(), w.force.at(w.p.Ram.SettingMax).typical)
	w.catalogue()
	w.probeRows()
	w.sequence()
	w.findings()
}

// window finds the setting and the positions of the push: the one decides how readings
// bend and scatter, and the positions may decide whether it stays.
func (w *work) window() {
	in, out := w.p, w.r
	need := w.joint.push[high].seat() + in.Requirement.MinSeatingForce
	w.force, out.Force = forceWindow(&in.Ram, newDrive(&in.Ram, in.Drive), need, in.Station.MaxForce, in.Window.Setting)
	moved := w.settingForTarget()
	w.seated, out.Window = in.readings(&w.parts, w.force.now, w.joint.push[mid])
	w.rule = in.propose(&w.parts, &w.seated, &out.Window)
	w.zone, out.Travel = in.travel(&w.parts, &w.seated, &w.rule)
	w.zone.tell(&out.Window)
	out.Window.By = in.origins(&w.rule, &w.zone, moved)
}

// work is one evaluation: the input, the outcome as it grows, and what the sections
// gave beside its figures.
type work struct {
	p *Input
	r *Outcome

	withRisk bool

	parts  parts
	joint  joint
	force  drive
	seated reading
	rule   edges // what the rule proposes
	zone   signals
	probed *probing        // nil without a probe, or where its end is not known
	ran    *sequence.Cycle // nil without a sequence, or where it cannot be run
	chance chance
	visits []visit // one a row of the catalogue

	lamps    map[sequence.Signal][]Lit // of the nominal run
	pushFrom float64                   // mm, where the first push begins

	once   sync.Once
	traces Traces

	toTarget sync.Once
	changes  []TargetChange

	onDay sync.Once
	day   *WorstDay

	onRules sync.Once
	rules   []RuleWindow // of all rules
}

func ptr[T any](v T) *T { return &v }
