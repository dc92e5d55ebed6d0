package proof

import "math"

// mostMarks is how many readings are drawn one by one; more are drawn as stretches.
const mostMarks = 200

// A stretch is readings one behind the other, drawn as what they reach from and to.
type stretch struct {
	first, last    int // places, from 0
	low, high, mid float64
}

// stretches cuts readings into at most so many stretches of one length.
func stretches(values []float64, most int) []stretch {
	n := len(values)
	if n == 0 || most < 1 {
		return nil
	}
	long := (n + most - 1) / most
	var out []stretch
	for from := 0; from < n; from += long {
		s := stretch{from, min(from+long, n) - 1, math.Inf(1), math.Inf(-1), 0}
		for _, v := range values[from : s.last+1] {
			s.low, s.high, s.mid = math.Min(s.low, v), math.Max(s.high, v), s.mid+v
		}
		s.mid /= float64(s.last - from + 1)
		out = append(out, s)
	}
	return out
}
