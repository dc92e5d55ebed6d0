package model

import (
	"math"

	"ramplan/press/risk"
	"ramplan/press/stack"
)

// unseatedOnWeakDay is the share of parts that do not reach the seat while the ram's
// curve stands at its lower limit and scatters about that.
func (w *work) unseatedOnWeakDay() float64 {
	in := w.p
	typical := w.seated.force.typical
	push := risk.Push{
		Mean: typical - in.curveScatter(&w.seated), SD: in.Ram.ForceScatter / 2,
		Against: w.joint.push[mid].drag + in.Joint.Counterforce,
	}
	j := &in.Joint
	switch j.Kind {
	case Measured:
		return risk.Triangle{Low: j.ForceLow, Mode: j.ForceTypical, High: j.ForceHigh}.Unseated(push)
	case Interference:
		return in.fitAsDrawn(w.joint).Unseated(push)
	}
	return risk.Triangle{}.Unseated(push) // nothing is pressed in
}

// fitAsDrawn is the fit with everything that spreads in it.
func (in *Input) fitAsDrawn(made joint) risk.Fit {
	j := &in.Joint
	between := func(low, high, times float64, shape stack.Shape) stack.Term {
		return stack.Term{Row: stack.Row{Mean: (low + high) / 2, Half: (high - low) / 2, Shape: shape, Sigmas: 3}, Times: times}
	}
	rz := j.Hub.RoughnessRz + j.Insert.RoughnessRz
	var travel []stack.Term
	for _, row := range in.Parts {
		if times := row.Contact - row.Seat; times != 0 {
			travel = append(travel, row.term(times))
		}
	}
	return risk.Fit{
		Gain:        made.rings.Pressure(1) * math.Pi * j.Diameter,
		FrictionLow: j.FrictionLow, FrictionHigh: j.FrictionHigh,
		Interference: stack.NewSum([]stack.Term{
			between(j.Shaft[0], j.Shaft[1], 1, stack.Normal), between(j.Hole[0], j.Hole[1], -1, stack.Normal),
			between(j.SmoothingLeast*rz, j.SmoothingMost*rz, -1, stack.Uniform),
		}),
		Travel: stack.NewSum(travel), Pilot: made.pilot, Length: j.Engagement,
	}
}
