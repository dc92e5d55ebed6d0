package probe

import (
	"math"
	"slices"

	"ramplan/press/stack"
)

// A Fit is a probe's judgement of parts by their effective interference.
type Fit struct {
	*Refusal
	PerMicron                 float64 // N/mm per µm at a friction of 1: the grip of an interference
	FrictionLow, FrictionHigh float64
}

// Most is the greatest interference that is looked at, µm.
const Most = 1000

// Refused gives the probability that a part of an effective interference is refused,
// its friction anywhere in its range.
//
//	mean of refused(G) over G = μ·π·d·p(i)/1 mm
//
// Arguments: i, µm, effective.
// Result: –.
// Range: as for [Refusal.Over].
// Special cases: without interference all friction is one grip, none.
// Source: as for [Refusal.Over]; the grip is μ·π·d·p(i).
func (f Fit) Refused(i float64) float64 {
	return f.Over(f.FrictionLow*f.PerMicron*i, f.FrictionHigh*f.PerMicron*i)
}

// Bound gives the effective interference at which refusal falls below a probability.
//
//	refused(i) = p
//
// Arguments: p, –, the probability.
// Result: µm, to 1e-9; false where no interference from 0 to [Most] does it.
// Range: as for [Fit.Refused], which never rises with the interference.
// Special cases: where refusal is a step, its place.
// Source: derived here, by halving.
func (f Fit) Bound(p float64) (float64, bool) {
	if f.Refused(0) < p || f.Refused(Most) > p {
		return 0, false
	}
	from, to := 0.0, float64(Most)
	for to-from > 1e-10 {
		mid := (from + to) / 2
		if mid == from || mid == to {
			break
		}
		if f.Refused(mid) >= p {
			from = mid
		} else {
			to = mid
		}
	}
	return (from + to) / 2, true
}

// Wrongly gives the share of all parts that the probe refuses.
//
//	∫ g(i)·refused(max(0, i)) di
//
// Arguments: raw, µm, the distribution of the interference before it is cut at 0.
// Result: –.
// Range: as for [Fit.Refused].
// Special cases: without spread the refusal of that interference.
// Source: derived here, the law of total probability.
func (f Fit) Wrongly(raw *stack.Sum) float64 {
	if raw.Point() {
		return f.Refused(math.Max(0, raw.Mean()))
	}
	low, high := raw.Support()
	sum := 0.0
	if low < 0 {
		sum = raw.CDF(0) * f.Refused(0)
	}
	cuts := append([]float64{max(low, 0), high}, raw.Kinks()...)
	for _, p := range []float64{1 - 1e-6, 0.5, 1e-3, 1e-9} {
		if at, known := f.Bound(p); known {
			cuts = append(cuts, at)
		}
	}
	cuts = slices.DeleteFunc(cuts, func(c float64) bool { return c < max(low, 0) || c > high })
	slices.Sort(cuts)
	for k := 1; k < len(cuts); k++ {
		if cuts[k] > cuts[k-1] {
			sum += integrate(func(i float64) float64 { return raw.PDF(i) * f.Refused(i) }, cuts[k-1], cuts[k])
		}
	}
	return min(1, max(0, sum))
}
