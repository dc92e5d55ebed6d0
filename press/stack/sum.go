package stack

import (
	"math"
	"slices"
)

// Sum is the exact distribution of a sum of independent terms.
//
// Every normal term is merged into one normal, a triangular term is two uniform
// terms of half its width, so that a sum is
//
//	mean + normal + Σ uniform
//
// The widest uniforms, the boxes, are taken exactly: the distribution of a
// uniform of half-width a added to anything is the difference of that thing's
// integrated distribution at x+a and x−a over 2a. The rest, the core, is smooth
// on its own scale and is a Fourier series. How many boxes are split off is
// chosen for the least work at the wanted accuracy, 1e-11 in probability.
type Sum struct {
	mean  float64
	sd    float64
	sigma float64 // of the normal part
	reach float64 // beyond mean ± reach lies less than 1e-13
	boxes []box   // the corners of the boxes, with their signs
	scale float64 // 1 / Π 2a over the boxes
	m     int     // number of boxes
	core  core
}

// box is one corner: where it stands from the mean, and its sign.
type box struct{ at, sign float64 }

// NewSum makes the distribution of a sum of independent terms.
func NewSum(terms []Term) *Sum {
	var s Sum
	var variance float64
	widths := make([]float64, 0, 2*len(terms))
	for _, t := range terms {
		s.mean += t.Times * t.Mean
		half := math.Abs(t.Times) * t.Half
		s.sd += square(t.Times * t.SD())
		switch {
		case half == 0:
		case t.Shape == Normal:
			variance += square(half / t.Sigmas)
		case t.Shape == Triangular:
			widths = append(widths, half/2, half/2)
		default:
			widths = append(widths, half)
		}
	}
	s.sd = math.Sqrt(s.sd)
	s.build(math.Sqrt(variance), widths)
	return &s
}

// NewError makes the distribution of a reading error: zero mean, a normal part of
// this standard deviation, and further terms about their mean.
func NewError(sigma float64, terms []Term) *Sum {
	all := make([]Term, 0, len(terms)+1)
	all = append(all, Term{Row{Half: sigma, Shape: Normal, Sigmas: 1}, 1})
	for _, t := range terms {
		t.Mean = 0
		all = append(all, t)
	}
	return NewSum(all)
}

// Accuracy and effort of the split into boxes and core.
const (
	wanted    = 1e-11 // in probability
	mostBoxes = 6
	mostTerms = 4096
	mostGain  = 3e4 // rounding errors may be magnified this much
)

// build splits the parts into boxes and core.
func (s *Sum) build(sigma float64, widths []float64) {
	slices.SortFunc(widths, func(a, b float64) int { return compare(b, a) })
	// What is too narrow to move a probability by the wanted accuracy goes.
	if n := len(widths); n > 0 {
		for n > 1 && widths[n-1] < 1e-12*(widths[0]+sigma) {
			n--
		}
		widths = widths[:n]
	}
	if sigma < 1e-12*s.sd {
		sigma = 0
	}
	best := cheapest(sigma, widths, mostGain)
	// Without a normal part, very narrow uniforms beside a wide one leave no split that is
	// fine enough: then rounding errors cost up to 1e-8, and narrower ones still are taken for
	// normals of the same spread, which moves the corners of the wide one by 1e-7 at most.
	for _, gain := range []float64{1e6, 1e8} {
		if math.IsInf(best.cost, 1) {
			best = cheapest(sigma, widths, gain)
		}
	}
	for math.IsInf(best.cost, 1) && len(widths) > 1 {
		n := len(widths) - 1
		sigma = math.Hypot(sigma, widths[n]/math.Sqrt(3))
		widths = widths[:n]
		best = cheapest(sigma, widths, mostGain)
	}
	s.reach = reach(sigma, widths, s.sd)
	s.sigma = sigma
	s.m = best.m
	s.boxes = corners(widths[:s.m])
	s.scale = 1
	for _, a := range widths[:s.m] {
		s.scale /= 2 * a
	}
	s.core = newCore(sigma, widths[s.m:], best, s.m)
}

// cheapest is the split of the least cost; infinite where none is fine enough.
func cheapest(sigma float64, widths []float64, gain float64) split {
	total := sum(widths)
	best := split{cost: math.Inf(1)}
	for m := 0; m <= min(mostBoxes, len(widths)); m++ {
		if p := trySplit(sigma, widths, m, total, gain); p.cost < best.cost {
			best = p
		}
	}
	return best
}

// reach is a half-width beyond which lies less than 1e-13: the sum of the limits
// with 7.6 standard deviations of the normal, or eight of the whole (every part
// is strictly sub-Gaussian, so the tail is below 2·exp(−32)).
func reach(sigma float64, widths []float64, sd float64) float64 {
	return min(sum(widths)+7.6*sigma, 8*sd)
}

// corners lists every sum ±a ± a … of the boxes with the product of its signs.
func corners(widths []float64) []box {
	cs := make([]box, 1, 1<<len(widths))
	cs[0] = box{0, 1}
	for _, a := range widths {
		n := len(cs)
		for i := range n {
			c := cs[i]
			cs[i] = box{c.at + a, c.sign}
			cs = append(cs, box{c.at - a, -c.sign})
		}
	}
	return cs
}

// Mean of the sum, mm.
func (s *Sum) Mean() float64 { return s.mean }

// SD is the standard deviation of the sum, mm.
func (s *Sum) SD() float64 { return s.sd }

// Normal is the standard deviation of the sum's normal part, mm: the scale below which
// nothing of the distribution bends; 0 where no term is normal.
func (s *Sum) Normal() float64 { return s.sigma }

// Point tells whether the sum has no spread at all.
func (s *Sum) Point() bool { return s.reach == 0 }

// Support gives the interval outside which lies less than 1e-13, mm.
func (s *Sum) Support() (low, high float64) { return s.mean - s.reach, s.mean + s.reach }

// CDF gives the probability that the sum is at most x. A sum without spread
// counts a distance of 1e-9 mm as none.
func (s *Sum) CDF(x float64) float64 {
	z := x - s.mean
	switch {
	case s.Point():
		if z < -1e-9 {
			return 0
		}
		return 1
	case z <= -s.reach:
		return 0
	case z >= s.reach:
		return 1
	case z > 0: // by symmetry, where the sums are small
		return 1 - s.lower(-z)
	}
	return s.lower(z)
}

// Above gives the probability that the sum is more than x.
func (s *Sum) Above(x float64) float64 {
	if s.Point() {
		return 1 - s.CDF(x)
	}
	return s.CDF(2*s.mean - x)
}

func (s *Sum) lower(z float64) float64 {
	return min(1, max(0, s.scale*s.corners(z, s.m)))
}

// PDF gives the probability density at x, 1/mm; 0 for a sum without spread.
func (s *Sum) PDF(x float64) float64 {
	z := math.Abs(x - s.mean)
	if s.Point() || z >= s.reach {
		return 0
	}
	return max(0, s.scale*s.corners(-z, s.m-1))
}

// corners adds up the j-fold integrated core over the corners of the boxes.
func (s *Sum) corners(z float64, j int) float64 {
	var v float64
	for _, b := range s.boxes {
		v += b.sign * s.core.integral(z+b.at, j)
	}
	return v
}

// Kinks gives the positions, in mm, between which the density is smooth: the
// corners of the boxes, with the reach of the core on both sides.
func (s *Sum) Kinks() []float64 {
	if s.Point() {
		return []float64{s.mean}
	}
	ks := make([]float64, 0, 3*len(s.boxes))
	for _, b := range s.boxes {
		at := s.mean + b.at
		ks = append(ks, at)
		if s.core.reach > 0 {
			ks = append(ks, at-s.core.reach, at+s.core.reach)
		}
	}
	return ks
}

func sum(xs []float64) float64 {
	var t float64
	for _, x := range xs {
		t += x
	}
	return t
}

func compare(a, b float64) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}
