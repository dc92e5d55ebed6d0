package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
)

// NewStrips makes the decision strips of two states of a plan, to be looked at
// one under the other: both magnified alike, and the same stretch of both where
// they lie close enough.
func NewStrips(p [2]*press.Plan, r [2]*press.Result, o [2]Options) [2]*canvas.Picture {
	var m [2]*stripModel
	for i := range m {
		m[i] = newStripModel(p[i], r[i], *r[i].Traces())
	}
	m[0].lens, m[1].lens = alike(m[0].lens, m[1].lens)
	return [2]*canvas.Picture{m[0].picture(o[0]), m[1].picture(o[1])}
}

// farApart is how much wider a stretch that holds both may be than the wider of
// them.
const farApart = 1.5

// alike gives two stretches of one length: the one that holds both, or else each
// widened about its middle.
func alike(a, b press.Pair) (press.Pair, press.Pair) {
	widest := math.Max(a[1]-a[0], b[1]-b[0])
	both := press.Pair{math.Min(a[0], b[0]), math.Max(a[1], b[1])}
	if both[1]-both[0] <= farApart*widest {
		return both, both
	}
	about := func(x press.Pair) press.Pair {
		middle := (x[0] + x[1]) / 2
		return press.Pair{middle - widest/2, middle + widest/2}
	}
	return about(a), about(b)
}
