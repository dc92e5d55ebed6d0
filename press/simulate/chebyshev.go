package simulate

import "math"

// three is one figure for each class of heights: right, too tall, too low.
type three [3]float64

// Classes of heights.
const (
	right = iota
	tall
	squat
)

func (t three) all() float64 { return t[right] + t[tall] + t[squat] }

// A piece is three functions on a stretch, each a sum of Chebyshev polynomials.
const degree = 12 // of a piece, plus one

type piece struct {
	from, to float64
	c        [degree]three
	terms    int  // that are not next to nothing
	alone    bool // the second and third function are nothing
}

// nodesOf holds the places, from −1 to 1, at which a function is taken, and the matrix
// that turns its values into coefficients.
//
// Source: L. N. Trefethen, Approximation Theory and Approximation Practice, 2013,
// chapters 2 and 3 (nodes of the first kind).
var chebyshevNodes, chebyshevMatrix = func() (x [degree]float64, m [degree][degree]float64) {
	for j := range x {
		at := math.Pi * (float64(j) + 0.5) / degree
		x[j] = math.Cos(at)
		for k := range m {
			m[k][j] = 2 * math.Cos(float64(k)*at) / degree
			if k == 0 {
				m[k][j] /= 2
			}
		}
	}
	return x, m
}()

// through makes a piece through a function.
func through(from, to float64, f func(float64) three) *piece {
	p := &piece{from: from, to: to}
	mid, half := (from+to)/2, (to-from)/2
	for j, x := range chebyshevNodes {
		v := f(mid + half*x)
		for k := range p.c {
			for i := range v {
				p.c[k][i] += chebyshevMatrix[k][j] * v[i]
			}
		}
	}
	return p.trim(0)
}

// rest is how large the last coefficients are: about the error.
func (p *piece) rest() float64 {
	var most float64
	for _, c := range p.c[degree-3:] {
		for _, x := range c {
			most = max(most, math.Abs(x))
		}
	}
	return most
}

// trace is what a coefficient, in shares of all parts, may lack.
const trace = 1e-16

// trim finds what need not be added up.
func (p *piece) trim(trace float64) *piece {
	p.terms, p.alone = 1, true
	for k, c := range p.c {
		if math.Abs(c[0]) > trace || math.Abs(c[1]) > trace || math.Abs(c[2]) > trace {
			p.terms = k + 1
		}
		p.alone = p.alone && c[1] == 0 && c[2] == 0
	}
	return p
}

// at evaluates the three functions (Clenshaw's recurrence).
func (p *piece) at(x float64) three {
	z := (2*x - p.from - p.to) / (p.to - p.from)
	zz := 2 * z
	if p.alone {
		b1, b2 := 0.0, 0.0
		for k := p.terms - 1; k > 0; k-- {
			b1, b2 = p.c[k][0]+zz*b1-b2, b1
		}
		return three{p.c[0][0] + z*b1 - b2}
	}
	var b1, b2 three
	for k := p.terms - 1; k > 0; k-- {
		c := &p.c[k]
		b1[0], b2[0] = c[0]+zz*b1[0]-b2[0], b1[0]
		b1[1], b2[1] = c[1]+zz*b1[1]-b2[1], b1[1]
		b1[2], b2[2] = c[2]+zz*b1[2]-b2[2], b1[2]
	}
	c := &p.c[0]
	return three{c[0] + z*b1[0] - b2[0], c[1] + z*b1[1] - b2[1], c[2] + z*b1[2] - b2[2]}
}

// integrated gives the piece's integral from its beginning on, with what came before;
// of its last coefficient, which is next to nothing, a part is lost.
func (p *piece) integrated(before three) *piece {
	out := &piece{from: p.from, to: p.to}
	half := (p.to - p.from) / 2
	for i := range before {
		get := func(k int) float64 {
			if k >= degree {
				return 0
			}
			return p.c[k][i]
		}
		var atStart float64
		for k := 1; k < degree; k++ {
			left := get(k - 1)
			if k == 1 {
				left *= 2
			}
			v := half * (left - get(k+1)) / float64(2*k)
			out.c[k][i] = v
			if k%2 == 1 {
				v = -v
			}
			atStart += v
		}
		out.c[0][i] = before[i] - atStart
	}
	return out.trim(trace)
}

// end is the value at the end of the piece.
func (p *piece) end() three {
	var v three
	for k := range p.c {
		for i := range v {
			v[i] += p.c[k][i]
		}
	}
	return v
}

// pieces is three functions from their first piece to their last; before they are
// nothing, behind they stay.
type pieces struct {
	list  []*piece
	whole three // at the end of the last
	first []int // for equal steps, the piece in which each begins
	step  float64
}

func (p *pieces) at(x float64) three {
	n := len(p.list)
	if n == 0 || x <= p.list[0].from {
		return three{}
	}
	if x >= p.list[n-1].to {
		return p.whole
	}
	i := p.first[min(int((x-p.list[0].from)/p.step), len(p.first)-1)]
	for i > 0 && x < p.list[i].from {
		i--
	}
	for i < n-1 && x > p.list[i].to {
		i++
	}
	return p.list[i].at(x)
}

// index makes the list quick to look up.
func (p *pieces) index() {
	n := len(p.list)
	if n == 0 {
		return
	}
	p.whole = p.list[n-1].end()
	from, to := p.list[0].from, p.list[n-1].to
	steps := 4 * n
	p.step = (to - from) / float64(steps)
	p.first = make([]int, steps)
	i := 0
	for k := range p.first {
		for i < n-1 && p.list[i].to < from+float64(k)*p.step {
			i++
		}
		p.first[k] = i
	}
}

// cumulated integrates three densities from the first cut on. Between the cuts they are
// smooth; a stretch is halved until its piece fits to about 1e-13 of all parts.
func cumulated(density func(float64) three, cuts []float64) *pieces {
	out := pieced(density, cuts)
	var sum three
	for i, p := range out.list {
		out.list[i] = p.integrated(sum)
		sum = out.list[i].end()
	}
	out.index()
	return out
}

// pieced puts pieces through three densities.
func pieced(density func(float64) three, cuts []float64) *pieces {
	out := &pieces{}
	var walk func(a, b float64, depth int)
	walk = func(a, b float64, depth int) {
		p := through(a, b, density)
		if mid := (a + b) / 2; depth > 0 && p.rest()*(b-a) > 2e-13 && a < mid && mid < b {
			walk(a, mid, depth-1)
			walk(mid, b, depth-1)
			return
		}
		out.list = append(out.list, p)
	}
	for i := 1; i < len(cuts); i++ {
		if cuts[i] > cuts[i-1] {
			walk(cuts[i-1], cuts[i], 12)
		}
	}
	out.index()
	return out
}
