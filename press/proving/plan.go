package proving

import (
	"math"

	"ramplan/press"
)

// What the plan says that studies are held against, beside the figures of its result.

// onCurve tells whether the plan knows the force at a setting.
func onCurve(plan *press.Result, setting float64) bool {
	_, err := plan.Plan.Drive.Force(setting)
	return err == nil
}

// forceAt is the plan's force at the tool at a setting of its curve, N: low, typical and
// high, the weight in it.
func forceAt(plan *press.Result, setting float64) [3]float64 {
	at := plan.PushAt(setting)
	return [3]float64{at.Low, at.Typical, at.High}
}

// scatterAt is h, by which ± a push scatters at a setting of the curve, two standard
// deviations, N.
func scatterAt(plan *press.Result, setting float64) float64 {
	at := forceAt(plan, setting)
	return (at[2] - at[0]) / 2
}

// pushSD is σ_push: one push on one part, one standard deviation, mm.
func pushSD(plan *press.Result, setting float64) float64 {
	p := plan.Plan
	return math.Hypot(p.Ram.Repeatability/2, scatterAt(plan, setting)/(2*p.Station.Stiffness))
}

// allowedAt is by how much ± a whole station may be off at a setting of the curve, mm.
func allowedAt(plan *press.Result, setting float64) float64 {
	doubt := scatterAt(plan, setting) / (2 * plan.Plan.Station.Stiffness)
	return math.Hypot(allowedUnder(plan, forceAt(plan, setting)[1]), 2*doubt)
}

// allowedUnder is by how much ± a whole station may be off under a force that was measured, mm.
func allowedUnder(plan *press.Result, force float64) float64 {
	st := &plan.Plan.Station
	bend := (force - st.NestForce) / st.Stiffness
	return 2 * math.Hypot(math.Hypot(st.NestDrift/math.Sqrt(3), st.ReferenceUncertainty/2), bend*st.StiffnessTolerance/100/2)
}

// nestUnder is where the plan has the bare nest in the encoder's readings under a force, mm.
func nestUnder(plan *press.Result, force float64) float64 {
	st := &plan.Plan.Station
	return st.Nest + (force-st.NestForce)/st.Stiffness
}
