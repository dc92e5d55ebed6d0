package risk

import (
	"math"
	"slices"

	"ramplan/press/stack"
)

// Push is a normal force against what pressing in takes.
type Push struct {
	Mean, SD float64 // N
	Against  float64 // N, what is taken whatever the fit: drag, what pushes back
}

// Fit is what the fit of two parts takes at the seat beyond that:
//
//	gain · friction · interference · length engaged
type Fit struct {
	Gain          float64    // N a µm and mm
	FrictionLow   float64    // –
	FrictionHigh  float64    // –, uniform between the two
	Interference  *stack.Sum // µm, what is left of it after smoothing; below 0 there is none
	Travel        *stack.Sum // mm, of the press-in
	Pilot, Length float64    // mm, where the fit begins, and how long it is

	tail *tail // of the interference
	rub  *memo // share that needs more than a product of friction and interference
}

// Triangle is what the seat takes where it was measured: N, most often Mode.
type Triangle struct{ Low, Mode, High float64 }

// Unseated gives the share of parts that a push does not bring to the seat.
//
//	P(against + gain·μ·i·engaged(t) > F)
//
// Result: share of all parts.
// Range: gain ≥ 0, friction ≥ 0; no published limit. Exact to 1e-8.
// Special cases: a part that needs just the force is seated; what has no spread is a
// fixed value.
// Source: total probability over force, travel and friction; the interference by its own
// distribution.
func (f Fit) Unseated(p Push) float64 {
	f.tail = newTail(f.Interference)
	if _, last := f.Interference.Support(); f.tail != nil && last > 0 {
		f.rub = newMemo(f.FrictionHigh*last, f.FrictionLow*f.Interference.Normal(), f.rubs)
	}
	return p.over(nil, func(left float64) float64 { return f.more(left) })
}

// Unseated gives the same share for a force at the seat that was measured.
func (t Triangle) Unseated(p Push) float64 {
	return p.over([]float64{t.Low, t.Mode, t.High}, t.above)
}

// over takes a share that hangs on the force left for the fit over all forces; bends are
// those at which the share bends.
func (p Push) over(bends []float64, more func(left float64) float64) float64 {
	mean := p.Mean - p.Against
	if p.SD == 0 {
		if mean < -slack {
			return 1
		}
		return more(max(0, mean))
	}
	const far = 8.5 // standard deviations
	density := func(x float64) float64 {
		z := (x - mean) / p.SD
		return math.Exp(-z*z/2) / p.SD / math.Sqrt(2*math.Pi)
	}
	cuts := []float64{mean - far*p.SD, mean, mean + far*p.SD}
	for _, b := range append(bends, 0) {
		if math.Abs(b-mean) < far*p.SD {
			cuts = append(cuts, b)
		}
	}
	slices.Sort(cuts)
	cuts = slices.DeleteFunc(cuts, func(c float64) bool { return c < 0 })
	none := math.Erfc(mean/p.SD/math.Sqrt2) / 2 // not even without a fit
	return none + integrateTo(1e-10, 8, func(x float64) float64 { return density(x) * more(x) }, cuts)
}

// above is the share of measured forces over some force.
func (t Triangle) above(f float64) float64 {
	switch {
	case f >= t.High:
		return 0
	case f < t.Low:
		return 1
	case f >= t.Mode:
		return (t.High - f) * (t.High - f) / (t.High - t.Low) / (t.High - t.Mode)
	}
	return 1 - (f-t.Low)*(f-t.Low)/(t.High-t.Low)/(t.Mode-t.Low)
}

// more is the share of fits that take more than some force.
func (f Fit) more(left float64) float64 {
	if f.Gain <= 0 {
		return 0
	}
	need := left / f.Gain // of friction times interference times length
	if f.Travel.Point() {
		return f.engaged(need, min(max(f.Travel.Mean()-f.Pilot, 0), f.Length))
	}
	if f.engaged(need, f.Length) == 0 { // the whole length takes the most
		return 0
	}
	first, last := f.Travel.Support()
	from, to := max(first, f.Pilot), min(last, f.Pilot+f.Length)
	all := f.Travel.Above(f.Pilot+f.Length) * f.engaged(need, f.Length)
	if from >= to {
		return all
	}
	cuts := []float64{from, to}
	for _, k := range f.Travel.Kinks() {
		if k > from && k < to {
			cuts = append(cuts, k)
		}
	}
	slices.Sort(cuts)
	return all + integrateTo(1e-11, 8, func(t float64) float64 { return f.Travel.PDF(t) * f.engaged(need, t-f.Pilot) }, cuts)
}

// engaged is the share of fits over a length that need more than a product of friction,
// interference and length.
func (f Fit) engaged(need, length float64) float64 {
	if length <= 0 {
		return 0
	}
	need /= length
	if f.FrictionHigh <= f.FrictionLow {
		return f.tight(need, f.FrictionLow)
	}
	width := f.FrictionHigh - f.FrictionLow
	if f.Interference.Point() {
		i := f.Interference.Mean()
		if i <= 0 {
			return 0
		}
		return min(1, max(0, (f.FrictionHigh-need/i)/width))
	}
	first, last := f.Interference.Support()
	switch {
	case need >= f.FrictionHigh*last: // not even the tightest at the most friction
		return 0
	case need < f.FrictionLow*first: // even the loosest at the least
		return 1
	}
	if f.rub != nil {
		return min(1, max(0, f.rub.at(need)))
	}
	return f.rubs(need)
}

// rubs is the share that needs more than a product of friction and interference, over the
// whole range of friction.
func (f Fit) rubs(need float64) float64 {
	width := f.FrictionHigh - f.FrictionLow
	cuts := []float64{f.FrictionLow, f.FrictionHigh}
	for _, k := range f.Interference.Kinks() {
		if k > 0 && need/k > f.FrictionLow && need/k < f.FrictionHigh {
			cuts = append(cuts, need/k)
		}
	}
	slices.Sort(cuts)
	return integrateTo(1e-12, 8, func(mu float64) float64 { return f.tight(need, mu) / width }, cuts)
}

// tight is the share of interferences that take more at a friction.
func (f Fit) tight(need, friction float64) float64 {
	if friction <= 0 {
		return 0
	}
	if f.tail != nil {
		return f.tail.above(need / friction)
	}
	return f.Interference.Above(need / friction)
}
