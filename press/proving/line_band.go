package proving

import "ramplan/press/study"

// Band is the line of a stiffness study with its two-sided 95 % limits, as a drawing of it
// needs them: at(f) gives the position at a force, N, and half the width of the limits, mm.
// Nil where the line has no uncertainty.
func (l *Line) Band() func(f float64) (position, half float64) {
	if l == nil || l.fit == nil || l.DF <= 0 || !(l.fit.ResidualSD > 0) {
		return nil
	}
	t := study.TQuantile(0.975, l.DF)
	return func(f float64) (position, half float64) {
		return l.Intercept + l.Slope*f, t * *l.fit.ValueSD([]float64{1, f})
	}
}
