package proving

import (
	"math"

	"ramplan/press"
)

func (s *Study) Digest() string { return "" }

func pushSD(plan *press.Result, setting float64) float64 {
	at := plan.PushAt(setting)
	p := plan.Plan
	return math.Hypot(p.Ram.Repeatability/2, (at.High-at.Low)/2/(2*p.Station.Stiffness))
}

func allowedAt(plan *press.Result, setting float64) float64 {
	at, st := plan.PushAt(setting), &plan.Plan.Station
	bend := (at.Typical - st.NestForce) / st.Stiffness
	return 2 * root(st.NestDrift/math.Sqrt(3), st.ReferenceUncertainty/2, bend*st.StiffnessTolerance/100/2, (at.High-at.Low)/2/(2*st.Stiffness))
}

func onCurve(plan *press.Result, setting float64) bool {
	_, err := plan.Plan.Drive.Force(setting)
	return err == nil
}

func (j *judging) loadCell()  {}
func (j *judging) stiffness() {}
