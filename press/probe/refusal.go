package probe

import (
	"math"

	"gonum.org/v1/gonum/integrate/quad"
)

// A Refusal is how a probe judges parts whose place of contact and whose force scatter.
type Refusal struct {
	Push
	Joint
	Contact *Spread // mm, where a part is met

	panels map[int][]leaf // of the grip, made when they are asked for
}

// far is how many standard deviations of the force are looked at: beyond lies less than
// 1e-16.
const far = 8.3

// Of gives the probability that a part of one grip is refused: that the ram passes the
// limit, or the part is met nowhere before it.
//
//	P(F > F*) = ∫ φ(F)·P(X > Q − (F − nest_force)/k − z(F)) dF
//
// with z(F) the depth at which F stalls, at most the travel.
//
// Arguments: grip, N/mm, G.
// Result: –.
// Range: any; no published limit. Exact to 1e-10.
// Special cases: a force or a place without spread counts as it is.
// Source: derived here from [Push.Threshold].
func (r *Refusal) Of(grip float64) float64 {
	var sum float64
	for _, p := range r.pieces(grip) {
		if r.Sigma == 0 {
			if r.Force > p.from && r.Force <= p.to {
				return r.Contact.Above(r.stall(p, r.Force))
			}
			continue
		}
		sum += r.share(p)
	}
	return min(1, max(0, sum))
}

// stall is the place of contact beyond which a force of a piece passes the limit.
func (r *Refusal) stall(p piece, force float64) float64 {
	depth := p.depth
	if p.slope > 0 {
		depth += p.slope * (force - p.from)
	}
	return r.Limit - (force-r.NestForce)/r.Stiffness - depth
}

// share is what a piece of the forces brings to the refusal.
func (r *Refusal) share(p piece) float64 {
	from, to := max(p.from, r.Force-far*r.Sigma), min(p.to, r.Force+far*r.Sigma)
	if !(to > from) {
		return 0
	}
	// The stall falls with the force: below some nothing is refused, above some all.
	fall := 1/r.Stiffness + p.slope
	top := r.stall(p, from)
	first, all := from+(top-r.Contact.high)/fall, from+(top-r.Contact.low)/fall
	first, all = min(max(first, from), to), min(max(all, from), to)
	sum := r.between(all, to)
	density := func(f float64) float64 {
		u := (f - r.Force) / r.Sigma
		return math.Exp(-u*u/2) / (r.Sigma * math.Sqrt(2*math.Pi)) * r.Contact.Above(r.stall(p, f))
	}
	if all > first {
		n := math.Ceil(max((all-first)/r.Sigma, 2))
		for i := range int(n) {
			a, b := first+(all-first)*float64(i)/n, first+(all-first)*float64(i+1)/n
			sum += integrate(density, a, b)
		}
	}
	return sum
}

// between is the probability of a force between two.
func (r *Refusal) between(from, to float64) float64 {
	if !(to > from) {
		return 0
	}
	a, b := (from-r.Force)/r.Sigma/math.Sqrt2, (to-r.Force)/r.Sigma/math.Sqrt2
	if b <= 0 {
		a, b = -b, -a
	}
	return (math.Erfc(a) - math.Erfc(b)) / 2
}

// Gauss's rule with 12 points on [−1, 1].
var nodes, weights = func() (x, w [12]float64) {
	quad.Legendre{}.FixedLocations(x[:], w[:], -1, 1)
	return x, w
}()

func gauss(f func(float64) float64, a, b float64) float64 {
	mid, half := (a+b)/2, (b-a)/2
	var v float64
	for i, x := range nodes {
		v += weights[i] * f(mid+half*x)
	}
	return v * half
}

// integrate halves a panel until the halves agree with the whole.
func integrate(f func(float64) float64, a, b float64) float64 {
	return halve(f, a, b, gauss(f, a, b), 14)
}

func halve(f func(float64) float64, a, b, whole float64, depth int) float64 {
	mid := (a + b) / 2
	left, right := gauss(f, a, mid), gauss(f, mid, b)
	if depth == 0 || !(math.Abs(left+right-whole) > 1e-12) {
		return left + right
	}
	return halve(f, a, mid, left, depth-1) + halve(f, mid, b, right, depth-1)
}
