package simulate

import (
	"math"
	"slices"
	"sync/atomic"

	"gonum.org/v1/gonum/integrate/quad"

	"ramplan/press/stack"
)

// shift is the distribution of what moves contact and reading of a part alike, its rows
// and the error of the position:
//
//	V = P + D − e,  C = P + B
//
// with P the rows of the product that contact and seat share, D such rows under the
// datum, e the error of the position, B rows that stand beside the insert under the
// datum. Each reading is something less V, so that a verdict is an interval of V, and a
// truth by height one of C. below gives P(class of C, V < s).
type shift struct {
	total three // of the three classes
	fixed bool  // V has no spread

	direct func(s float64) three // where that is quick

	// Else a table, of which the stretches are made that are looked up.
	first, step float64
	exact       func(s float64) three
	cells       []atomic.Pointer[branch]
}

// branch is a stretch with its piece, or with two halves.
type branch struct {
	piece  *piece
	middle float64
	halves [2]atomic.Pointer[branch]
}

// below gives, of each class, the share of all parts with V below s.
func (h *shift) below(s float64) three {
	if h.direct != nil {
		return h.direct(s)
	}
	at := (s - h.first) / h.step
	switch {
	case !(at > 0):
		return three{}
	case at >= float64(len(h.cells)):
		return h.total
	}
	i := min(int(at), len(h.cells)-1)
	from := h.first + float64(i)*h.step
	to := from + h.step
	slot := &h.cells[i]
	for depth := 0; ; depth++ {
		b := slot.Load()
		if b == nil { // two that make it at the same time make the same
			b = h.branch(from, to, depth)
			slot.Store(b)
		}
		switch {
		case b.piece != nil:
			return b.piece.at(s)
		case s < b.middle:
			slot, to = &b.halves[0], b.middle
		default:
			slot, from = &b.halves[1], b.middle
		}
	}
}

// Accuracy of the table, in shares of all parts; where V has kinks, it takes many halves.
const (
	tableError = 1e-12
	mostHalves = 36
)

func (h *shift) branch(from, to float64, depth int) *branch {
	p := through(from, to, h.exact)
	if mid := (from + to) / 2; depth < mostHalves && p.rest() > tableError && from < mid && mid < to {
		return &branch{middle: mid}
	}
	return &branch{piece: p.trim(trace)}
}

// newShift sorts the rows that move contact and seat alike, and those beside.
func newShift(rows []row, mean sums, position []stack.Term, low, high float64) *shift {
	var product, other, beside []stack.Term
	other = position
	for _, r := range rows {
		switch {
		case r.of.seat == 0:
			beside = append(beside, r.term(r.of.height))
		case r.of.height == 0:
			other = append(other, r.term(r.of.seat))
		default:
			product = append(product, r.term(r.of.seat))
		}
	}
	// V counts from the mean of its rows, C from its own.
	return makeShift(stack.NewSum(product), stack.NewSum(other), stack.NewSum(beside), low-mean.height, high-mean.height)
}

// term is a row as a term about nothing.
func (r row) term(times float64) stack.Term {
	half, sigmas := r.half, 0.0
	if r.shape == stack.Normal {
		sigmas = 1
	}
	return stack.Term{Row: stack.Row{Half: half, Shape: r.shape, Sigmas: sigmas}, Times: times}
}

func makeShift(p, w, b *stack.Sum, low, high float64) *shift {
	h := &shift{}
	classes := func(x float64) three { // of a part whose shared rows add up to x
		return shares(b, low-x, high-x)
	}
	error := func(x float64) three { return three{w.PDF(x)} }
	switch {
	case p.Point() && w.Point():
		h.fixed, h.total = true, classes(0)
		return h
	case p.Point():
		h.total = classes(0)
		under := cumulated(error, cutsOf(w))
		h.direct = func(s float64) three { return h.total.times(under.at(s)[0] / under.whole[0]) }
		return h
	}
	from, to := p.Support()
	cuts := cutsOf(p)
	for _, limit := range [2]float64{low, high} {
		for _, k := range b.Kinks() {
			if c := limit - k; c > from && c < to {
				cuts = append(cuts, c)
			}
		}
	}
	cuts = apart(cuts)
	heights := cumulated(func(x float64) three { return classes(x).times(p.PDF(x)) }, cuts)
	h.total = heights.whole
	if w.Point() {
		h.direct = heights.at
		return h
	}
	h.table(heights, cuts, pieced(error, cutsOf(w)))
	return h
}

// table prepares the table of V for shared rows and the rest of V:
//
//	P(class, V < s) = ∫ P(class, P < s − w) f(w) dw
//
// by Gauss's rule between the places at which one of the two is cut.
func (h *shift) table(heights *pieces, kinks []float64, rest *pieces) {
	// Where the heights are the finer of the two, every piece of theirs is a cut.
	if narrowest(heights) < narrowest(rest)/2 {
		kinks = nil
		for _, p := range heights.list {
			kinks = append(kinks, p.from, p.to)
		}
	}
	low, high := heights.list[0].from, heights.list[len(heights.list)-1].to
	first, last := rest.list[0].from, rest.list[len(rest.list)-1].to
	h.first = low + first
	n := int(min(2048, max(8, math.Ceil((high+last-h.first)/narrowest(rest)/2))))
	h.step = (high + last - h.first) / float64(n)
	h.cells = make([]atomic.Pointer[branch], n)

	density := make([][len(gaussNodes)]float64, len(rest.list)) // with the rule's weights
	for i, p := range rest.list {
		for j, x := range gaussNodes {
			density[i][j] = gaussWeights[j] * (p.to - p.from) / 2 * p.at((p.from+p.to)/2 + (p.to-p.from)/2*x)[0]
		}
	}
	h.exact = func(s float64) three {
		var sum three
		for i, p := range rest.list {
			if s-p.from <= low {
				break // and all further ones
			}
			inside := make([]float64, 0, 8)
			for _, k := range kinks {
				if c := s - k; c > p.from && c < p.to {
					inside = append(inside, c)
				}
			}
			if len(inside) == 0 {
				mid, half := (p.from+p.to)/2, (p.to-p.from)/2
				for j, x := range gaussNodes {
					sum.add(heights.at(s-mid-half*x), density[i][j])
				}
				continue
			}
			slices.Sort(inside)
			a := p.from
			for _, b := range append(inside, p.to) {
				mid, half := (a+b)/2, (b-a)/2
				for j, x := range gaussNodes {
					w := mid + half*x
					sum.add(heights.at(s-w), gaussWeights[j]*half*p.at(w)[0])
				}
				a = b
			}
		}
		return sum
	}
}

func (t *three) add(o three, times float64) {
	for i := range t {
		t[i] += times * o[i]
	}
}

// narrowest is the width of the narrowest piece.
func narrowest(p *pieces) float64 {
	width := math.Inf(1)
	for _, q := range p.list {
		width = min(width, q.to-q.from)
	}
	return width
}

// Gauss's rule with 12 points on [−1, 1].
var gaussNodes, gaussWeights = func() (x, w [12]float64) {
	quad.Legendre{}.FixedLocations(x[:], w[:], -1, 1)
	return x, w
}()

// shares are those of each class of heights.
func shares(heights *stack.Sum, low, high float64) three {
	if heights.Point() {
		return classOf(heights.Mean(), low, high)
	}
	t := three{tall: heights.Above(high), squat: heights.CDF(low)}
	t[right] = max(0, 1-t[tall]-t[squat])
	return t
}

func classOf(x, low, high float64) three {
	switch {
	case x > high:
		return three{tall: 1}
	case x < low:
		return three{squat: 1}
	}
	return three{right: 1}
}

func (t three) times(x float64) three { return three{t[0] * x, t[1] * x, t[2] * x} }

// cutsOf are the places between which a density is smooth, and its ends.
func cutsOf(s *stack.Sum) []float64 {
	from, to := s.Support()
	cuts := []float64{from, to}
	for _, k := range s.Kinks() {
		if k > from && k < to {
			cuts = append(cuts, k)
		}
	}
	return apart(cuts)
}

// apart sorts cuts and leaves out those that lie next to another: no stretch is so narrow
// that its ends are noise.
func apart(cuts []float64) []float64 {
	slices.Sort(cuts)
	least := 1e-12 * (cuts[len(cuts)-1] - cuts[0])
	return slices.CompactFunc(cuts, func(a, b float64) bool { return math.Abs(b-a) < least })
}
