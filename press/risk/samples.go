package risk

// Limits are the readings of limit samples. A window takes a part at its middle
// with the greatest probability, and less and less on either side.
type Limits struct {
	Low, High           float64 // mm, rejected with the probability from here outward
	GoodLow, GoodHigh   float64 // mm, accepted with the probability between them
	HasGood             bool    // false: not even the middle is accepted so surely
	EvenMiddleIsRefused bool    // Low and High are then the middle
}

// Limits finds the readings at which the window judges with probability p.
//
//	A(Low) = A(High) = 1 − p,  A(GoodLow) = A(GoodHigh) = p
//
// Argument: p, from 0.5 to below 1.
// Result: mm.
// Range: any window that is not empty. Exact to 1e-11 mm where the error has a spread.
// Special cases: without error all four lie on the ends of the window.
// Source: the operating characteristic of JCGM 106:2012, turned round.
func (w Window) Limits(p float64) Limits {
	mid := (w.Low + w.High) / 2
	reach := w.reach()
	l := Limits{Low: mid, High: mid}
	top := w.Accept(mid)
	if top <= 1-p {
		l.EvenMiddleIsRefused = true
	} else {
		d := w.crossing(mid, reach, 1-p)
		l.Low, l.High = mid-d, mid+d
	}
	if top >= p {
		d := w.crossing(mid, reach, p)
		l.GoodLow, l.GoodHigh, l.HasGood = mid-d, mid+d, true
	}
	return l
}

// reach is a distance from the middle at which nothing is accepted.
func (w Window) reach() float64 {
	_, far := w.Error.Support()
	return (w.High-w.Low)/2 + far + 1e-3
}

// crossing finds the distance from the middle at which acceptance falls below a
// level. Acceptance is symmetric about the middle and never rises outward.
func (w Window) crossing(mid, reach, level float64) float64 {
	if w.Error.Point() {
		return (w.High - w.Low) / 2
	}
	in, out := 0.0, reach
	for out-in > 1e-13*(1+reach) {
		d := (in + out) / 2
		if d == in || d == out {
			break
		}
		if w.Accept(mid+d) >= level {
			in = d
		} else {
			out = d
		}
	}
	return in
}
