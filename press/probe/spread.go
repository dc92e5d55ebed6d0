package probe

import (
	"math"
	"slices"
	"sort"

	"ramplan/press/stack"
)

// A Spread is the distribution of a place, kept as a table: it is asked for thousands
// of times.
type Spread struct {
	low, high float64 // mm, all of it lies between
	rows      []spreadRow
}

// A spreadRow is the piece between two places of the table: a cubic.
type spreadRow struct {
	from, to float64 // mm
	above    [2]float64
	falls    [2]float64 // 1/mm, the density at both ends, seen from inside
}

// tableRows is into how many parts a support is cut: the error of a cubic between two
// of them is then under 1e-10.
const tableRows = 1200

// NewSpread tabulates a distribution.
//
//	P(X > x), a cubic through values and densities between two rows
//
// Arguments: of, the distribution, mm.
// Result: a table over mm, to 1e-9 in probability.
// Range: any sum of package stack.
// Special cases: a sum without spread is a step.
// Source: Hermite's cubic; the error of a piece is h⁴/384 times the fourth derivative.
func NewSpread(of *stack.Sum) *Spread {
	s := &Spread{}
	if s.low, s.high = of.Support(); of.Point() {
		return s
	}
	kinks := append([]float64{s.low, s.high}, of.Kinks()...)
	slices.Sort(kinks)
	last, whole := s.low, s.high-s.low
	for _, k := range kinks {
		if k > s.high || k-last < 1e-9*whole {
			continue
		}
		s.tabulate(of, last, k, math.Ceil(tableRows*(k-last)/whole))
		last = k
	}
	return s
}

// tabulate fills the table between two places at which the density may jump or bend.
func (s *Spread) tabulate(of *stack.Sum, from, to, n float64) {
	inside := (to - from) / n * 1e-7
	row := spreadRow{to: from, above: [2]float64{0, of.Above(from)}, falls: [2]float64{0, of.PDF(from + inside)}}
	for i := 1.0; i <= n; i++ {
		x := from + (to-from)*i/n
		at := x
		if i == n {
			x, at = to, to-inside
		}
		row = spreadRow{row.to, x, [2]float64{row.above[1], of.Above(x)}, [2]float64{row.falls[1], of.PDF(at)}}
		s.rows = append(s.rows, row)
	}
}

// Above gives the probability to lie above a place.
//
//	P(X > x)
//
// Arguments: x, mm.
// Result: –.
// Range: any.
// Special cases: a distribution without spread lies above what is less.
// Source: as for [NewSpread].
func (s *Spread) Above(x float64) float64 {
	switch {
	case x < s.low:
		return 1
	case x >= s.high:
		return 0
	}
	i := sort.Search(len(s.rows), func(i int) bool { return s.rows[i].to >= x })
	r := &s.rows[min(i, len(s.rows)-1)]
	h := r.to - r.from
	t := (x - r.from) / h
	u := 1 - t
	return r.above[0]*u*u*(1+2*t) + r.above[1]*t*t*(3-2*t) - h*(r.falls[0]*t*u*u-r.falls[1]*t*t*u)
}
