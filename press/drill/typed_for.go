package drill

import (
	"math"

	"ramplan/press"
)

// A height and a reading are both lengths in mm, and people type one for the other.
// What lies this much nearer to the one than to the other is taken for it.
const farOff = 10 // of the width that the drawing allows

// ForHeight tells whether what was typed as a reading looks like the height of a
// part.
func ForHeight(p *press.Plan, r *press.Result, x float64) bool {
	return looksLike(p, x, r.HeightOf(r.Nominal()), r.Nominal())
}

// ForReading tells whether what was typed as a height looks like a reading.
func ForReading(p *press.Plan, r *press.Result, x float64) bool {
	return looksLike(p, x, r.Nominal(), r.HeightOf(r.Nominal()))
}

func looksLike(p *press.Plan, x, one, other float64) bool {
	room := math.Max(1, farOff*(p.Requirement.HeightHigh-p.Requirement.HeightLow))
	return math.Abs(x-one) <= room && math.Abs(x-other) > room
}
