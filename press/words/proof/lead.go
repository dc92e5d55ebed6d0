package proof

import (
	"strconv"

	"ramplan/press"
	"ramplan/press/proving"
)

// LeadOf is the one sentence of a study: what the station itself says.
func (say Words) LeadOf(r *press.Result, s *proving.Study, j *proving.Judged) string {
	t := say.about(r, s, j)
	switch x := j.Result.(type) {
	case *proving.LoadCellResult:
		at := x.AtSetting
		if at == nil {
			return strconv.Itoa(x.N) + " pushes at " + strconv.Itoa(len(x.Settings)) + several(len(x.Settings), " setting.", " settings.")
		}
		out := "At " + say.Setting(at.Setting) + " the ram pushes with " + say.Force(at.Force)
		if at.Predict != nil {
			out += ", one further push with " + say.Force(at.Predict[0]) + " to " + say.Force(at.Predict[1])
		}
		return out + "; the plan has " + say.Force(r.Force.Low) + " to " + say.Force(r.Force.High) + "."
	case *proving.StiffnessResult:
		if x.Stiffness == nil || x.Nest == nil {
			return strconv.Itoa(x.N) + " pushes, and no line through them that rises."
		}
		k := say.Stiffness(x.Stiffness.Value)
		if u := x.Stiffness.Uncertainty; u != nil {
			k = say.Stiffness(x.Stiffness.Value, *u)
		}
		return "The station gives way with " + k + "; under " + say.Force(x.Nest.NestForce) + " the nest stands at " + t.pos.At(x.Nest.Value) + t.sure(x.Nest.Uncertainty) + "."
	case *proving.MasterResult:
		out := strconv.Itoa(x.N) + several(x.N, " push reads ", " pushes read ") + t.beside(x.Bias.Value) + " the predicted place"
		if x.SD != nil && *x.SD == 0 {
			return out + ", all the same: a finer reading would show how they scatter."
		}
		if x.Repeatability != nil && x.Repeatability.Upper != nil {
			out += " on average and show " + t.within(*x.Repeatability.Upper) + " for one push"
		}
		return out + "."
	case *proving.RestartResult:
		if x.Supported == nil {
			return "One start tells of no other."
		}
		return strconv.Itoa(len(x.Starts)) + " starts show that a new one keeps " + t.within(*x.Supported) + "."
	case *proving.TrialResult:
		accepted := x.Shares[0]
		out := t.ofAll(accepted, "parts") + " gave both lamps"
		if accepted.Predicted != nil {
			out += ", " + say.SeenShare(*accepted.Predicted) + " predicted"
		}
		if shift := x.StationShift; shift != nil {
			return out + "; the station reads " + t.beside(shift.Value) + " the planned places" + t.sure(shift.Uncertainty) + "."
		}
		if x.Shift != nil {
			return out + "; the readings lie " + t.beside(x.Shift.Value) + " the planned ones" + t.sure(x.Shift.Uncertainty) + "."
		}
		return out + "."
	case *proving.SamplesResult:
		return t.samplesSaid(proving.Check{Name: proving.CheckLamps})
	}
	return ""
}
