package model

import (
	"math"

	"ramplan/press/stack"
)

// daily are the errors of a reading that are the same for every part of a day, mm: their
// limits, of two standard deviations each but that of the nest's drift, which is whole.
type daily struct{ nest, reference, stiffness, curve float64 }

func (in *Input) daily(s *reading) daily {
	return daily{
		nest:      in.Station.NestDrift,
		reference: in.Station.ReferenceUncertainty,
		stiffness: math.Abs(s.deflection) * in.Station.StiffnessTolerance / 100,
		curve:     in.curveScatter(s) / in.Station.Stiffness,
	}
}

// curveScatter is how far the ram's own curve may be off for a whole day, N.
func (in *Input) curveScatter(s *reading) float64 {
	return math.Sqrt(max(0, square(s.force.scatter)-square(in.Ram.ForceScatter)))
}

// together is their root sum of squares, B.
func (d daily) together() float64 {
	return math.Sqrt(square(d.nest) + square(d.reference) + square(d.stiffness) + square(d.curve))
}

// worstDay gives by how much all readings of a worst day are off, and the error that is
// left within it.
func (in *Input) worstDay(q *parts, s *reading) (off float64, left *stack.Sum) {
	sigma := math.Hypot(in.Ram.Repeatability/2, in.Ram.ForceScatter/2/in.Station.Stiffness)
	return in.daily(s).together(), stack.NewError(sigma, q.read)
}
