package words

import (
	"strings"

	"ramplan/press"
)

// What stands where a drawing would, when the plan has nothing for it.
const (
	NoSteps        = "The plan lists no steps: its cycle is approach, push and retract."
	NoStepFigures  = "The steps have no figures: the plan has no push end, or its probe has none."
	NoProbe        = "No probe takes place in this plan."
	NoProbeFigures = "The probe has no figures: its setting or its end is not known."
)

// RunTitle is the message of the run.
func (say Printer) RunTitle(r *press.Result) string {
	s := say.Seconds(r.Cycle.Total) + " a part"
	if h := r.Cycle.Handling; h > 0 {
		s += ", " + say.Seconds(h) + " of it handling"
	}
	return s + "; the zone signal " + say.comesOn(r.Sequence.Nominal.Signals.StepZone)
}

func (say Printer) comesOn(c press.Changes) string {
	n, on := 0, c.First
	if on {
		n++
	}
	for range c.Changes {
		if on = !on; on {
			n++
		}
	}
	switch n {
	case 0:
		return "never comes on"
	case 1:
		return "comes on once"
	case 2:
		return "comes on twice"
	}
	return "comes on " + Fixed(float64(n), 0) + " times"
}

// ProbeTitle is the message of the probe's drawing.
func (say Printer) ProbeTitle(r *press.Result) string {
	b := &r.Probe
	s := "The probe refuses no fit surely"
	if c := b.CaughtBelow; c != nil {
		s = "The probe refuses below " + say.CaughtBelow(c.Effective) + " with " + say.TargetShare(r.Plan.Faults.SampleProbability)
	}
	if b.FalseRefusalPPM != nil {
		s += "; " + say.inMillion(*b.FalseRefusalPPM) + " sound parts refused"
	}
	return s
}

// inMillion writes parts per million in words.
func (say Printer) inMillion(ppm float64) string {
	return strings.TrimSuffix(strings.TrimSuffix(say.PPM(ppm), "ppm"), thin) + " in a million"
}

// StepName is what a step is called where its number stands beside it: its own name, or
// its kind.
func StepName(p *press.Plan, i int) string {
	if p.Sequence == nil || i < 0 || i >= len(p.Sequence.Steps) {
		return ""
	}
	if name := strings.TrimSpace(p.Sequence.Steps[i].Name); name != "" {
		return name
	}
	return p.Sequence.Steps[i].Kind
}
