package proving

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// Band is the line of a stiffness study with its two-sided 95 % limits, as a drawing of it
// needs them: at(f) gives the position at a force and half the width of the limits, mm. Nil
// where the line has no uncertainty.
//
// The variance of a straight line at f is s_b²(f − m)² + s_a² − s_b²m², with the standard
// deviations s_a of the intercept and s_b of the slope and the weighted mean m of the forces
// (JCGM 100:2008, H.3, from memory). Measured forces all weigh the same, so m is their mean;
// forces of the curve do not, and there m follows from the uncertainty of the taught
// position, which holds the same variance.
func (r *StiffnessResult) Band(s *Study) func(f float64) (position, half float64) {
	l := r.Line
	if l == nil || l.SlopeSD == nil || l.InterceptSD == nil || l.DF <= 0 || *l.SlopeSD == 0 {
		return nil
	}
	t := distuv.StudentsT{Sigma: 1, Nu: l.DF}.Quantile(0.975)
	sb, sa := *l.SlopeSD, *l.InterceptSD
	var mean float64
	switch q := r.Taught; {
	case r.ForceFrom == FromCell:
		n := 0.0
		for _, row := range s.Rows {
			if row.Force != nil && (r.StartupBelow == nil || *row.Force >= *r.StartupBelow) {
				mean, n = mean+*row.Force, n+1
			}
		}
		mean /= n
	case q != nil && q.Uncertainty != nil && q.NestForce != 0:
		height := 0.0
		if s.HeightUncertainty != nil {
			height = *s.HeightUncertainty
		}
		at := (*q.Uncertainty**q.Uncertainty - height*height) / (t * t)
		mean = (sb*sb*q.NestForce*q.NestForce + sa*sa - at) / (2 * sb * sb * q.NestForce)
	default:
		return nil
	}
	least := sa*sa - sb*sb*mean*mean
	if !(least >= -1e-9*sa*sa) {
		return nil
	}
	return func(f float64) (position, half float64) {
		return l.Intercept + l.Slope*f, t * math.Sqrt(sb*sb*(f-mean)*(f-mean)+max(0, least))
	}
}
