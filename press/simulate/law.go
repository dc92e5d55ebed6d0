package simulate

import (
	"math"

	"gonum.org/v1/gonum/mathext"
)

// law is the distribution of one quantity of which tails are taken: the interference or
// the measured force.
type law interface {
	above(x float64) float64     // the share of parts with more than x
	below(x float64) float64     // the share with less
	upTo(x float64) float64      // the share with no more: the same where there is spread
	upper(share float64) float64 // the value that this share lies above
}

// between is the share from a to b, taken on the side on which nothing cancels.
func between(l law, a, b float64) float64 {
	if !(a < b) {
		return 0
	}
	if p := l.above(a); p < 0.5 {
		return max(0, p-l.above(b))
	}
	return max(0, l.below(b)-l.below(a))
}

// normal is a normal law.
type normal struct{ mean, sd float64 }

func (n normal) above(x float64) float64 { return upperTail((x - n.mean) / n.sd) }
func (n normal) below(x float64) float64 { return upperTail((n.mean - x) / n.sd) }
func (n normal) upTo(x float64) float64  { return n.below(x) }
func (n normal) upper(share float64) float64 {
	return n.mean - n.sd*mathext.NormalQuantile(share)
}

// upperTail is the share of the standard normal above z.
func upperTail(z float64) float64 { return math.Erfc(z/math.Sqrt2) / 2 }

// trapezoid is the sum of two uniform laws about a middle, of half-widths wide ≥ narrow.
type trapezoid struct{ middle, wide, narrow float64 }

func newTrapezoid(middle, a, b float64) trapezoid { return trapezoid{middle, max(a, b), min(a, b)} }

func (t trapezoid) above(x float64) float64 { return t.tail(x - t.middle) }
func (t trapezoid) below(x float64) float64 { return t.tail(t.middle - x) }

// tail is the share above a distance from the middle.
func (t trapezoid) tail(x float64) float64 {
	switch end, flat := t.wide+t.narrow, t.wide-t.narrow; {
	case x < 0:
		return 1 - t.tail(-x)
	case x >= end:
		return 0
	case x > flat:
		return (end - x) * (end - x) / (8 * t.wide * t.narrow)
	}
	return (t.wide - x) / (2 * t.wide)
}

func (t trapezoid) upTo(x float64) float64 { return t.below(x) }
func (t trapezoid) upper(share float64) float64 {
	if share > 0.5 {
		return 2*t.middle - t.upper(1-share)
	}
	if corner := t.narrow / (2 * t.wide); share < corner {
		return t.middle + t.wide + t.narrow - math.Sqrt(8*t.wide*t.narrow*share)
	}
	return t.middle + t.wide - 2*t.wide*share
}

// triangle is a triangular law.
type triangle struct{ low, mode, high float64 }

func (t triangle) above(x float64) float64 {
	switch {
	case x <= t.low:
		return 1
	case x >= t.high:
		return 0
	case x >= t.mode:
		return (t.high - x) / (t.high - t.low) * (t.high - x) / (t.high - t.mode)
	}
	return 1 - t.below(x)
}

func (t triangle) below(x float64) float64 {
	switch {
	case x <= t.low:
		return 0
	case x >= t.high:
		return 1
	case x <= t.mode:
		return (x - t.low) / (t.high - t.low) * (x - t.low) / (t.mode - t.low)
	}
	return 1 - t.above(x)
}

func (t triangle) upTo(x float64) float64 { return t.below(x) }
func (t triangle) upper(share float64) float64 {
	if share*(t.high-t.low) < t.high-t.mode {
		return t.high - math.Sqrt(share*(t.high-t.low)*(t.high-t.mode))
	}
	return t.low + math.Sqrt((1-share)*(t.high-t.low)*(t.mode-t.low))
}

// always is a quantity without spread.
type always float64

func (a always) above(x float64) float64 { return indicator(float64(a) > x) }
func (a always) below(x float64) float64 { return indicator(float64(a) < x) }
func (a always) upTo(x float64) float64  { return indicator(float64(a) <= x) }
func (a always) upper(float64) float64   { return float64(a) }

func indicator(yes bool) float64 {
	if yes {
		return 1
	}
	return 0
}
