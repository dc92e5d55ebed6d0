package words

import (
	"math"
	"slices"

	"ramplan/press"
)

// ForceTitle is the message of the force window.
func (say Printer) ForceTitle(r *press.Result) string {
	f := &r.Force
	at := say.Setting(f.Setting)
	if f.Low >= f.Need && f.High <= f.Cap {
		return "At " + at + " even a weak ram pushes " + say.Force(f.Low-f.Need) + " more than needed, and a strong one stays " + say.Force(f.Cap-f.High) + " under what may be borne, at rest"
	}
	s := "At " + at + " "
	if slices.ContainsFunc(r.Findings, func(x press.Finding) bool { return x.Code == press.NoSetting }) {
		s = "No setting will do: at " + at + " "
	}
	if f.Low < f.Need {
		_, _, gap := say.forces(f.Low, f.Need)
		s += "a weak ram lacks " + gap
		if f.High > f.Cap {
			s += " and "
		}
	}
	if f.High > f.Cap {
		_, _, gap := say.forces(f.High, f.Cap)
		s += "a strong one pushes " + gap + " too much"
	}
	return s
}

// PressInTitle is the message of the press-in force; tight and stall are the
// depths at which the tightest fit stalls a weak ram, and the typical one a
// typical ram.
func (say Printer) PressInTitle(p *press.Plan, r *press.Result, tight, stall *float64) string {
	pos := say.Positions(p)
	switch {
	case r.Joint == nil:
		return "Nothing is pressed in: the push meets no force before the seat"
	case stall != nil:
		return "Even the usual fit stalls the ram, at " + pos.At(*stall) + " of " + pos.At(r.Travel.PressIn)
	case tight != nil:
		return "The tightest fit stalls a weak ram at " + pos.At(*tight) + " of " + pos.At(r.Travel.PressIn)
	case r.Force.Low < r.Joint.Demand[2]:
		return "The tightest fit takes all that a weak ram gives"
	}
	return "Even the tightest fit is pressed in: " + say.Force(r.Joint.Demand[2]) + " of the " + say.Force(r.Force.Low) + " of a weak ram"
}

// CycleTitle is the message of the cycle.
func (say Printer) CycleTitle(r *press.Result) string {
	c := &r.Cycle
	s := "One part takes " + say.Seconds(c.Total)
	if c.WatchTime != nil {
		s += "; an arrival is due by " + say.After(math.Max(*c.WatchTime, 0)) + say.ByMotion(r)
		if TwoLooks(r) {
			s = "One part takes " + say.Seconds(c.Total) + "; an arrival is due by " + say.After(*r.Probe.WatchTime) + " in the probe and by " + say.After(math.Max(*c.WatchTime, 0)) + " in the push" + say.ByMotion(r)
		}
	}
	return s
}
