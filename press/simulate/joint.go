package simulate

import (
	"math"

	"ramplan/press/fit"
	"ramplan/press/model"
)

// joint is what pressing in takes and what it gives. The pressure is a straight line in
// the interference that is left after smoothing, so one figure says all of it.
type joint struct {
	kind    kind
	drag    float64 // N, all the way
	counter float64 // N at the seat, rising from nothing at contact

	forceLow, forceMode, forceHigh float64 // N at the seat, measured

	grip                        float64 // N per µm and mm of engaged length at a friction of 1
	pilot, engagement           float64 // mm
	middle                      float64 // µm, mean interference
	hole, shaft                 float64 // µm, half-widths of their limits
	roughLow, roughHigh         float64 // µm, least and most smoothing
	frictionLow, frictionHigh   float64
	holding, required, withSafe float64 // friction; N; N with the safety factor
}

type kind int

const (
	touch kind = iota
	measured
	interference
)

func newJoint(in *model.Input, out *model.Outcome) joint {
	j := &in.Joint
	q := joint{counter: j.Counterforce}
	switch j.Kind {
	case model.Measured:
		q.kind = measured
		q.forceLow, q.forceMode, q.forceHigh = j.ForceLow, j.ForceTypical, j.ForceHigh
	case model.Interference:
		q.kind = interference
		q.drag = j.Drag
		q.grip = j.Rings().Pressure(1) * math.Pi * j.Diameter
		q.pilot, q.engagement = out.Pilot(), j.Engagement
		q.middle = fit.Interference(fit.Limits{Low: j.Hole[0], High: j.Hole[1]}, fit.Limits{Low: j.Shaft[0], High: j.Shaft[1]}).Mean
		q.hole, q.shaft = (j.Hole[1]-j.Hole[0])/2, (j.Shaft[1]-j.Shaft[0])/2
		rough := j.Hub.RoughnessRz + j.Insert.RoughnessRz
		q.roughLow, q.roughHigh = j.SmoothingLeast*rough, j.SmoothingMost*rough
		q.frictionLow, q.frictionHigh = j.FrictionLow, j.FrictionHigh
		q.holding, q.required, q.withSafe = j.HoldingFriction, j.HoldingRequired, j.HoldingRequired*j.HoldingSafety
	}
	return q
}

// engaged is the length that grips at a depth, mm.
func (q *joint) engaged(z float64) float64 {
	return min(max(z-q.pilot, 0), q.engagement)
}

// way is what one part demands on its way in, over the press-in travel.
type way struct {
	drag   float64 // N from the contact on
	seat   float64 // N at the seat that rise in a straight line from the contact
	slope  float64 // N per mm engaged
	travel float64 // mm
}

// stall gives the first depth at which the demand reaches a force that is less than the
// demand at the seat.
func (q *joint) stall(w way, force float64) float64 {
	left := force - w.drag
	if left <= 0 || w.travel <= 0 {
		return 0
	}
	if w.slope <= 0 { // the straight line alone
		return min(w.travel, w.travel*left/w.seat)
	}
	rise := w.seat / w.travel
	pilot := min(q.pilot, w.travel)
	if before := rise * pilot; before >= left {
		return left / rise
	}
	left -= rise * pilot
	steep := rise + w.slope
	if length := min(q.engagement, w.travel-pilot); left > steep*length && rise > 0 {
		return min(w.travel, pilot+length+(left-steep*length)/rise)
	}
	return min(w.travel, pilot+left/steep)
}
