package probe

import "math"

// A leaf is a stretch of grips on which the refusal is a polynomial, in Legendre's form.
type leaf struct {
	from, to float64
	coeffs   [12]float64
}

// base is a grip that is typical for the push: what would stall it over the length.
func (r *Refusal) base() float64 {
	return max(math.Abs(r.Force)+far*r.Sigma, 1e-6) / max(r.Length, 1e-6) / 64
}

// edge is where the n-th panel of grips begins: 0, then a doubling row.
func (r *Refusal) edge(n int) float64 {
	if n == 0 {
		return 0
	}
	return r.base() * math.Ldexp(1, n-1)
}

// panel gives the leaves of the n-th panel.
func (r *Refusal) panel(n int) []leaf {
	if r.panels == nil {
		r.panels = map[int][]leaf{}
	}
	if kept, known := r.panels[n]; known {
		return kept
	}
	a, b := r.edge(n), r.edge(n+1)
	leaves := r.leaves(a, b, r.Of(a), r.Of(b), most)
	r.panels[n] = leaves
	return leaves
}

// most is how often a panel is halved at most.
const most = 40

// leaves cuts a stretch of grips until polynomials tell it. The refusal never rises with
// the grip, so that two equal ends leave nothing between. The narrower a stretch, the less
// it weighs in a mean, and the more it may be off: or what is computed to 1e-10 only would
// be cut without end.
func (r *Refusal) leaves(a, b, atA, atB float64, depth int) []leaf {
	l := leaf{from: a, to: b}
	mid := (a + b) / 2
	if math.Abs(atA-atB) < 1e-13 || depth == 0 || mid <= a || mid >= b {
		l.coeffs[0] = (atA + atB) / 2
		return []leaf{l}
	}
	var p [12]float64
	for i, x := range nodes {
		v := r.Of(mid+(b-a)/2*x) * weights[i]
		legendre(x, &p)
		for k := range l.coeffs {
			l.coeffs[k] += (2*float64(k) + 1) / 2 * v * p[k]
		}
	}
	rough := math.Abs(l.coeffs[9]) + math.Abs(l.coeffs[10]) + math.Abs(l.coeffs[11])
	weighs := math.Ldexp(1, most-depth)
	if rough < 1e-11*weighs && math.Abs(l.at(-1)-atA) < 1e-9*weighs && math.Abs(l.at(1)-atB) < 1e-9*weighs {
		return []leaf{l}
	}
	half := r.Of(mid)
	return append(r.leaves(a, mid, atA, half, depth-1), r.leaves(mid, b, half, atB, depth-1)...)
}

func legendre(x float64, p *[12]float64) {
	p[0], p[1] = 1, x
	for k := 1; k < 11; k++ {
		n := float64(k)
		p[k+1] = ((2*n+1)*x*p[k] - n*p[k-1]) / (n + 1)
	}
}

func (l *leaf) at(x float64) float64 {
	var p [12]float64
	legendre(x, &p)
	var v float64
	for k, c := range l.coeffs {
		v += c * p[k]
	}
	return v
}

// integral is the area from the leaf's begin to a grip inside it.
func (l *leaf) integral(grip float64) float64 {
	half := (l.to - l.from) / 2
	x := (grip-l.from)/half - 1
	var p [12]float64
	legendre(x, &p)
	twelfth := (23*x*p[11] - 11*p[10]) / 12
	v := l.coeffs[0] * (x + 1)
	for k := 1; k < 12; k++ {
		above := twelfth
		if k < 11 {
			above = p[k+1]
		}
		v += l.coeffs[k] * (above - p[k-1]) / (2*float64(k) + 1)
	}
	return v * half
}

// Over gives the mean probability of refusal of grips between two, any as likely as
// another.
//
//	1/(G2−G1)·∫ refused(G) dG
//
// Arguments: low, N/mm, the least grip; high, N/mm, the greatest.
// Result: –.
// Range: any; no published limit. Exact to 1e-9.
// Special cases: two equal grips are one.
// Source: derived here from [Refusal.Of].
func (r *Refusal) Over(low, high float64) float64 {
	if high-low <= 1e-6*high {
		return r.Of((low + high) / 2)
	}
	n := 0
	if low >= r.base() {
		n = 1 + int(math.Floor(math.Log2(low/r.base())))
		for n > 0 && r.edge(n) > low {
			n--
		}
	}
	var sum float64
	for ; r.edge(n) < high; n++ {
		for _, l := range r.panel(n) {
			a, b := max(low, l.from), min(high, l.to)
			if b <= a {
				continue
			}
			v := l.integral(b)
			if a > l.from {
				v -= l.integral(a)
			}
			sum += v
		}
	}
	return min(1, max(0, sum/(high-low)))
}
