package risk

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/integrate/quad"

	"ramplan/press/stack"
)

// Population is every part that the process makes, and what the drawing asks
// for. A part whose carrying rows add up to s reads Base − s without error, and its
// height is s with what stands beside it.
type Population struct {
	Height    *stack.Sum // mm, the rows that height and reading share
	Beside    *stack.Sum // mm, what is in the height and not in the reading; nil: nothing
	Whole     *stack.Sum // mm, the sum of both, the height; nil where Beside is
	Low, High float64    // mm, the requirement
	Base      float64    // mm, the reading of a part of which nothing is in the reading
}

// height is the distribution of all heights.
func (p Population) height() *stack.Sum {
	if p.Beside != nil {
		return p.Whole
	}
	return p.Height
}

// Conforming gives the share of parts inside the requirement.
//
//	P(low ≤ C ≤ high)
//
// Range: any; no published limit. Exact to 1e-10.
// Source: JCGM 106:2012, 7.1.
func (p Population) Conforming() float64 {
	c := p.height()
	if c.Point() {
		return indicator(p.inside(c.Mean()))
	}
	return max(0, c.CDF(p.High)-c.CDF(p.Low))
}

func (p Population) inside(c float64) bool { return c >= p.Low-slack && c <= p.High+slack }

func indicator(yes bool) float64 {
	if yes {
		return 1
	}
	return 0
}

// Global gives the risks of all parts: consumer, the share of parts that are
// outside the requirement and accepted, and producer, the share that are inside
// and refused.
//
//	consumer = ∫ outside f(c)·A(c) dc,  producer = ∫ inside f(c)·(1 − A(c)) dc
//
// with A the probability of acceptance of a part of height c. Where something
// stands beside the part, the integral is over the rows s that height and reading
// share: given their sum the two are independent, and "inside" is a probability.
// Range: any; no published limit. Exact to 1e-9.
// Special cases: parts or readings without spread are compared with 1e-9 mm slack.
// Source: JCGM 106:2012, 9.5.
func (p Population) Global(w Window) (consumer, producer float64) {
	accept := func(c float64) float64 { return w.Accept(p.Base - c) }
	conforming := p.Conforming()
	switch {
	case w.Empty:
		return 0, conforming
	case p.Beside != nil:
		return p.besides(w, conforming)
	case p.Height.Point():
		a := accept(p.Height.Mean())
		if conforming == 1 {
			return 0, 1 - a
		}
		return a, 0
	}
	low, high := p.Base-w.High, p.Base-w.Low // heights accepted without error
	share := func(a, b float64) float64 {    // accepted parts with heights from a to b
		if w.Error.Point() {
			a, b = max(a, low), min(b, high)
			if a >= b {
				return 0
			}
			return max(0, p.Height.CDF(b)-p.Height.CDF(a))
		}
		first, last := p.Height.Support()
		_, far := w.Error.Support()
		a, b = max(a, first, low-far), min(b, last, high+far)
		return integrate(func(c float64) float64 { return p.Height.PDF(c) * accept(c) }, p.cuts(w, a, b))
	}
	consumer = share(math.Inf(-1), p.Low) + share(p.High, math.Inf(1))
	producer = max(0, conforming-share(p.Low, p.High))
	return consumer, producer
}

// besides are the two risks where something in the height is not in the reading.
func (p Population) besides(w Window, conforming float64) (consumer, producer float64) {
	accept := func(s float64) float64 { return w.Accept(p.Base - s) }
	inside := func(s float64) float64 { // given the shared rows
		if p.Beside.Point() {
			return indicator(p.inside(s + p.Beside.Mean()))
		}
		return max(0, p.Beside.CDF(p.High-s)-p.Beside.CDF(p.Low-s))
	}
	outside := func(s float64) float64 {
		if p.Beside.Point() {
			return 1 - inside(s)
		}
		return p.Beside.CDF(p.Low-s) + p.Beside.Above(p.High-s)
	}
	if p.Height.Point() {
		s := p.Height.Mean()
		return outside(s) * accept(s), inside(s) * (1 - accept(s))
	}
	first, last := p.Height.Support()
	cuts := p.cuts(w, first, last)
	for _, k := range p.Beside.Kinks() {
		cuts = append(cuts, p.Low-k, p.High-k)
	}
	if w.Error.Point() {
		cuts = append(cuts, p.Base-w.High, p.Base-w.Low)
	}
	cuts = slices.DeleteFunc(cuts, func(c float64) bool { return c < first || c > last })
	slices.Sort(cuts)
	consumer = integrate(func(s float64) float64 { return p.Height.PDF(s) * outside(s) * accept(s) }, cuts)
	accepted := integrate(func(s float64) float64 { return p.Height.PDF(s) * inside(s) * accept(s) }, cuts)
	return consumer, max(0, conforming-accepted)
}

// cuts lists a, b and every position between them at which the integrand may
// bend.
func (p Population) cuts(w Window, a, b float64) []float64 {
	if a >= b {
		return nil
	}
	low, high := p.Base-w.High, p.Base-w.Low
	height, reading := p.Height.Kinks(), w.Error.Kinks()
	cuts := make([]float64, 0, 2+len(height)+2*len(reading))
	cuts = append(cuts, a, b)
	add := func(c float64) {
		if c > a && c < b {
			cuts = append(cuts, c)
		}
	}
	for _, k := range height {
		add(k)
	}
	for _, k := range reading {
		add(low + k)
		add(high + k)
	}
	slices.Sort(cuts)
	return cuts
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

// integrate adds up the panels between the cuts, each halved until the halves
// agree with the whole.
func integrate(f func(float64) float64, cuts []float64) float64 {
	return integrateTo(1e-12, 14, f, cuts)
}

// integrateTo is the same to a precision of the reader's own: what is integrated may be an
// integral itself, and no better than that.
func integrateTo(within float64, depth int, f func(float64) float64, cuts []float64) float64 {
	var v float64
	for i := 1; i < len(cuts); i++ {
		if a, b := cuts[i-1], cuts[i]; b > a {
			v += halve(f, a, b, gauss(f, a, b), within, depth)
		}
	}
	return v
}

func halve(f func(float64) float64, a, b, whole, within float64, depth int) float64 {
	mid := (a + b) / 2
	left, right := gauss(f, a, mid), gauss(f, mid, b)
	if depth == 0 || !(math.Abs(left+right-whole) > within) {
		return left + right
	}
	return halve(f, a, mid, left, within, depth-1) + halve(f, mid, b, right, within, depth-1)
}
