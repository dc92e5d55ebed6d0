package risk

import (
	"math"
	"sort"
)

// A Goal is what a window is looked for: no more than these shares of all parts accepted
// of a wrong height, and refused of a right one, on each of the days.
type Goal struct {
	Accept, Reject float64  // shares of all parts, more than 0
	Days           []*Edges // one: the average; several: the worst of them counts
}

// A Place is where one edge of the window may stand.
type Place struct {
	At  float64 // mm, the position that is set
	End float64 // mm, the end of the accepted readings that it makes
}

// A Pick is the best pair of places for a goal.
type Pick struct {
	Low, High int // places

	Accept, Reject float64 // the shares in terms of what is wanted: at most 1 meets it
	CanAccept      bool    // some pair keeps the false accepts by themselves
	CanReject      bool    // some pair keeps the false rejects by themselves
}

// Measure is the larger of the two: at most 1 meets both.
func (p Pick) Measure() float64 { return max(p.Accept, p.Reject) }

const (
	ample = 0.1  // of what is wanted: more reserve goes into narrower windows
	alike = 1e-6 // relative: measures that differ by less are one
)

// Best finds the window for a goal among pairs of places, each list in rising order, the
// lower place below the upper one.
//
// Of windows that keep both shares tenfold, the one with the narrowest range of accepted
// readings; else the one whose larger share, in terms of what is wanted, is the least. Of
// windows alike the narrower, then the one that ends first, then the one that starts first.
//
// Special cases: false where no pair is in order.
// Source: this program's own rule; the shares by [Edges]. Widening a window raises the one
// and lowers the other, so that the best upper place for a lower one is found by halving:
// n log n for n places.
func (g Goal) Best(lows, highs []Place) (Pick, bool) {
	s := g.tabulate(lows, highs)
	best, ok := s.narrowest(ample, true)
	if !ok {
		if best, ok = s.least(); !ok {
			return Pick{}, false
		}
		if narrow, found := s.narrowest(best.Measure()*(1+alike), false); found {
			best = narrow
		}
	}
	best.CanAccept, best.CanReject = s.alone()
	return best, true
}

// search is a goal with its ends worked out.
type search struct {
	Goal
	lows, highs  []Place
	lower, upper [][]End // of each day
}

func (g Goal) tabulate(lows, highs []Place) *search {
	s := &search{Goal: g, lows: lows, highs: highs}
	for _, day := range g.Days {
		known := map[float64]End{}
		end := func(x float64, of func(float64) End) End {
			if !day.Alike() {
				return of(x)
			}
			e, ok := known[x]
			if !ok {
				e = of(x)
				known[x] = e
			}
			return e
		}
		lower, upper := make([]End, len(lows)), make([]End, len(highs))
		for i, at := range lows {
			lower[i] = end(at.End, day.Lower)
		}
		for j, at := range highs {
			upper[j] = end(at.End, day.Upper)
		}
		s.lower, s.upper = append(s.lower, lower), append(s.upper, upper)
	}
	return s
}

// at judges one pair.
func (s *search) at(i, j int) (accept, reject float64) {
	empty := s.lows[i].End > s.highs[j].End+slack
	for k, day := range s.Days {
		consumer, producer := 0.0, day.Good
		if !empty {
			consumer, producer = day.Global(s.lower[k][i], s.upper[k][j])
		}
		accept, reject = max(accept, consumer), max(reject, producer)
	}
	return accept / s.Accept, reject / s.Reject
}

func (s *search) width(i, j int) float64 { return max(0, s.highs[j].End-s.lows[i].End) }

// above is the first upper place over a lower one.
func (s *search) above(i int) int {
	return sort.Search(len(s.highs), func(j int) bool { return s.highs[j].At > s.lows[i].At+slack })
}

// first is the first upper place, over a lower one, of which something holds that holds
// of every later one.
func (s *search) first(i int, holds func(j int) bool) int {
	from := s.above(i)
	return from + sort.Search(len(s.highs)-from, func(k int) bool { return holds(from + k) })
}

// least is a pair of the least measure of all.
func (s *search) least() (best Pick, ok bool) {
	for i := range s.lows {
		j := s.first(i, func(j int) bool { accept, reject := s.at(i, j); return reject <= accept })
		for _, j := range []int{j - 1, j} { // the two beside the point where they cross
			if j >= s.above(i) && j < len(s.highs) {
				next := Pick{Low: i, High: j}
				if next.Accept, next.Reject = s.at(i, j); !ok || next.Measure() < best.Measure() {
					best, ok = next, true
				}
			}
		}
	}
	return best, ok
}

// narrowest is the pair with the fewest accepted readings of those within a measure.
func (s *search) narrowest(most float64, bySmaller bool) (best Pick, ok bool) {
	for i := range s.lows {
		j := s.first(i, func(j int) bool { _, reject := s.at(i, j); return reject <= most })
		if j == len(s.highs) {
			continue
		}
		next := Pick{Low: i, High: j}
		if next.Accept, next.Reject = s.at(i, j); next.Accept > most {
			continue
		}
		if !ok || s.before(next, best, bySmaller) {
			best, ok = next, true
		}
	}
	return best, ok
}

// before tells whether a pair goes before another. Its lower place lies further up.
func (s *search) before(a, b Pick, bySmaller bool) bool {
	if d := s.width(a.Low, a.High) - s.width(b.Low, b.High); math.Abs(d) > slack {
		return d < 0
	}
	if ma, mb := a.Measure(), b.Measure(); bySmaller && math.Abs(ma-mb) > alike*math.Max(ma, mb) {
		return ma < mb
	}
	return a.High < b.High
}

// alone tells of each share whether some pair keeps it, whatever becomes of the other: of
// the false accepts one of the narrowest, of the false rejects the widest.
func (s *search) alone() (accept, reject bool) {
	for i := range s.lows {
		j := s.above(i)
		if j == len(s.highs) {
			continue
		}
		a, _ := s.at(i, j)
		_, r := s.at(i, len(s.highs)-1)
		accept, reject = accept || a <= 1, reject || r <= 1
	}
	return accept, reject
}

// Judge gives the measure of a range of accepted readings.
func (g Goal) Judge(low, high float64) float64 {
	s := g.tabulate([]Place{{End: low}}, []Place{{End: high}})
	return math.Max(s.at(0, 0))
}
