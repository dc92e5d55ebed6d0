package canvas

import "math"

// Scale puts an interval of figures on an interval of px.
type Scale struct{ From, To, X0, X1 float64 }

// NewScale makes a scale that has some width: an interval of no length, or one
// that is lost in the precision of its numbers, is widened about its middle.
func NewScale(from, to, x0, x1 float64) Scale {
	if !Finite(from) || !Finite(to) {
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
	return Scale{from, to, x0, x1}
}

// Finite tells whether a figure is a number.
func Finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

// At gives the place of a figure, cut at the ends.
func (s Scale) At(v float64) float64 {
	switch {
	case !(v > s.From):
		return s.X0
	case v >= s.To:
		return s.X1
	}
	return s.X0 + (s.X1-s.X0)*((v-s.From)/(s.To-s.From))
}

// Has tells whether a figure lies on the scale.
func (s Scale) Has(v float64) bool { return v >= s.From && v <= s.To }

// Ticks gives round figures on the scale, about n of them, the decimals that
// show them.
func (s Scale) Ticks(n int) (at []float64, decimals int) {
	if n < 1 {
		return nil, 0
	}
	rough := (s.To - s.From) / float64(n)
	power := math.Pow10(int(math.Floor(math.Log10(rough))))
	step := 10 * power
	for _, m := range []float64{1, 2, 5} {
		if m*power >= rough*(1-1e-9) {
			step = m * power
			break
		}
	}
	decimals = min(max(0, -int(math.Floor(math.Log10(step)+1e-9))), 9)
	for k := math.Ceil(s.From/step - 1e-9); k*step <= s.To+1e-9*step && len(at) <= n; k++ {
		at = append(at, k*step)
	}
	return at, decimals
}

// Minor gives the figures between ticks, a fifth or a quarter of their distance
// apart.
func (s Scale) Minor(at []float64) []float64 {
	if len(at) < 2 {
		return nil
	}
	const parts = 5
	step := (at[1] - at[0]) / parts
	if step <= 0 || (s.X1-s.X0)/(s.To-s.From)*step < 4 {
		return nil
	}
	var out []float64
	for k := -parts; k < parts*len(at); k++ {
		if v := at[0] + float64(k)*step; k%parts != 0 && s.Has(v) {
			out = append(out, v)
		}
	}
	return out
}
