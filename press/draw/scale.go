package draw

import "math"

// scale puts an interval of figures on an interval of px.
type scale struct{ from, to, x0, x1 float64 }

// newScale makes a scale that has some width: an interval of no length, or one
// that is lost in the precision of its numbers, is widened about its middle.
func newScale(from, to, x0, x1 float64) scale {
	if !finite(from) || !finite(to) {
		from, to = 0, 1
	}
	if from > to {
		from, to = to, from
	}
	least := 1e-9 * math.Max(1, math.Max(math.Abs(from), math.Abs(to)))
	if to-from < least {
		mid := from + (to-from)/2
		from, to = mid-least/2, mid+least/2
	}
	return scale{from, to, x0, x1}
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

// x gives the place of a figure, cut at the ends.
func (s scale) x(v float64) float64 {
	switch {
	case !(v > s.from):
		return s.x0
	case v >= s.to:
		return s.x1
	}
	return s.x0 + (s.x1-s.x0)*((v-s.from)/(s.to-s.from))
}

// has tells whether a figure lies on the scale.
func (s scale) has(v float64) bool { return v >= s.from && v <= s.to }

// ticks gives round figures on the scale, about n of them, the decimals that
// show them.
func (s scale) ticks(n int) (at []float64, decimals int) {
	if n < 1 {
		return nil, 0
	}
	rough := (s.to - s.from) / float64(n)
	power := math.Pow10(int(math.Floor(math.Log10(rough))))
	step := 10 * power
	for _, m := range []float64{1, 2, 5} {
		if m*power >= rough*(1-1e-9) {
			step = m * power
			break
		}
	}
	decimals = min(max(0, -int(math.Floor(math.Log10(step)+1e-9))), 9)
	for k := math.Ceil(s.from/step - 1e-9); k*step <= s.to+1e-9*step && len(at) <= n; k++ {
		at = append(at, k*step)
	}
	return at, decimals
}

// minor gives the figures between ticks, a fifth or a quarter of their distance
// apart.
func (s scale) minor(at []float64) []float64 {
	if len(at) < 2 {
		return nil
	}
	const parts = 5
	step := (at[1] - at[0]) / parts
	if step <= 0 || (s.x1-s.x0)/(s.to-s.from)*step < 4 {
		return nil
	}
	var out []float64
	for k := -parts; k < parts*len(at); k++ {
		if v := at[0] + float64(k)*step; k%parts != 0 && s.has(v) {
			out = append(out, v)
		}
	}
	return out
}
