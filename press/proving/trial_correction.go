package proving

import (
	"math"

	"ramplan/press"
	"ramplan/press/model"
)

// correction is by how many steps of the position the nest is to be entered elsewhere; nil
// where the shift is not known, or not worth a step.
func (j *judging) correction(r *TrialResult) *Correction {
	shift := r.decides()
	if shift == nil || shift.Uncertainty == nil || math.Abs(shift.Value) <= *shift.Uncertainty {
		return nil
	}
	c := &Correction{Basis: ByShift}
	if r.StationShift != nil {
		c.Basis = ByStationShift
	}
	st := &j.plan.Plan.Station
	c.Steps = int(math.Round(shift.Value / st.PositionStep))
	if c.Steps == 0 {
		return nil
	}
	moved := float64(c.Steps) * st.PositionStep
	c.Nest = tidy(st.Nest + moved)
	c.SharesNow = sharesAt(&j.plan.Outcome, r.Shift.Value)
	c.SharesAfter = sharesAt(WithNest(j.plan, c.Nest), r.Shift.Value-moved)
	return c
}

// WithNest evaluates a plan with the nest elsewhere: the window is proposed anew, and what
// was set by hand stays.
func WithNest(plan *press.Result, nest float64) *press.Outcome {
	in := plan.Plan.Input
	in.Station.Nest = nest
	return model.EvaluateWithoutRisk(&in)
}

// sharesAt are the shares of the four pairs at a station whose readings lie off the planned
// ones; nil where they cannot be predicted.
func sharesAt(o *press.Outcome, shift float64) *Shares {
	c, ok := o.PartChances(shift)
	if !ok {
		return nil
	}
	return &Shares{OnOn: c.Of(true, true), OnOff: c.Of(true, false), OffOn: c.Of(false, true), OffOff: c.Of(false, false)}
}

// tidy takes binary noise off a position.
func tidy(x float64) float64 { return math.Round(x*1e9) / 1e9 }
