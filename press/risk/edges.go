package risk

import (
	"math"
	"slices"
	"sort"

	"ramplan/press/stack"
)

// Edges tells what each end of a window lets pass by itself. The risks of all parts are
// a function of the lower end and one of the upper end added up:
//
//	consumer = P(long, R ≥ z) − P(short, R < z) + P(short, R ≤ e) − P(long, R > e)
//	producer = P(good, R < z) + P(good) − P(good, R ≤ e)
//
// with R the reading, z and e the ends of the window, and long, good and short what the
// drawing says of the height. So a table over n positions judges all n² windows.
type Edges struct {
	Good float64 // share of parts within the requirement

	p     Population
	e     *stack.Sum
	panes []pane // in rising s; nil: each position is integrated by itself
	tail  *tail  // of the error, for the panes
}

// A pane is one point of the sum of the rows that height and reading share, with the
// shares of parts that stand for it, and what stands before or behind it in the list.
type pane struct {
	at        float64 // mm
	is        classes
	before    classes // all panes before this one
	andBehind classes // this one and all behind it
}

// classes are shares of parts by what the drawing says of their height.
type classes struct{ long, good, short float64 }

func (c classes) plus(d classes) classes {
	return classes{c.long + d.long, c.good + d.good, c.short + d.short}
}

func (c classes) times(f float64) classes { return classes{f * c.long, f * c.good, f * c.short} }

// An End is one end of a window: the shares of all parts that it parts off.
type End struct {
	LongAbove  float64 // too tall, and read above it
	ShortBelow float64 // too low, and read below it
	GoodBelow  float64 // within the drawing, and read below it
}

// Edges makes the table's functions for a population that is read with an error.
//
// Result: shares of all parts.
// Range: any; no published limit. Exact to 1e-10.
// Special cases: parts or readings without spread are compared with 1e-9 mm slack.
// Source: JCGM 106:2012, 9.5, each integral cut in two at the end of the window.
func (p Population) Edges(e *stack.Sum) *Edges {
	t := &Edges{Good: p.Conforming(), p: p, e: e}
	t.spread()
	return t
}

// Lower tells what a window's lower end lets pass: it is within the window itself.
func (t *Edges) Lower(x float64) End { return t.end(x, -slack) }

// Upper tells the same of its upper end.
func (t *Edges) Upper(x float64) End { return t.end(x, slack) }

// Alike tells whether a position is the same as either end: nothing rests on it alone.
func (t *Edges) Alike() bool { return !t.p.Height.Point() || !t.e.Point() }

// Global gives the risks of a window from its ends, as [Population.Global] does.
func (t *Edges) Global(lower, upper End) (consumer, producer float64) {
	consumer = lower.LongAbove - upper.LongAbove + upper.ShortBelow - lower.ShortBelow
	return max(0, consumer), max(0, t.Good-upper.GoodBelow+lower.GoodBelow)
}

func (t *Edges) end(x, forgive float64) End {
	switch {
	case t.panes != nil:
		return t.sum(x)
	case t.e.Point():
		return t.exact(x, forgive)
	}
	first, last := t.p.Height.Support()
	return t.integral(x, first, last)
}

// sum adds up the panes: those far from the position are read on one side of it for
// certain.
func (t *Edges) sum(x float64) End {
	_, far := t.e.Support()
	at := x - t.p.Base // a part whose rows add up to s is read below x where e < at + s
	first := sort.Search(len(t.panes), func(i int) bool { return at+t.panes[i].at > -far })
	last := first + sort.Search(len(t.panes)-first, func(i int) bool { return at+t.panes[first+i].at >= far })
	var out End
	switch {
	case first < len(t.panes):
		out.LongAbove = t.panes[first].before.long
	default:
		n := t.panes[len(t.panes)-1]
		out.LongAbove = n.before.plus(n.is).long
	}
	if last < len(t.panes) {
		out.ShortBelow, out.GoodBelow = t.panes[last].andBehind.short, t.panes[last].andBehind.good
	}
	for i := first; i < last; i++ {
		n := &t.panes[i]
		z := at + n.at
		below := t.below(math.Abs(z)) // the error is symmetric about zero
		above := 1 - below
		if z > 0 {
			below, above = above, below
		}
		out.LongAbove += n.is.long * above
		out.ShortBelow += n.is.short * below
		out.GoodBelow += n.is.good * below
	}
	return out
}

// exact is for readings without error.
func (t *Edges) exact(x, forgive float64) End {
	s := t.p.Base - x // sums above it are read below x
	if t.p.Height.Point() {
		c := t.p.given(t.p.Height.Mean())
		if t.p.Height.Mean()+forgive > s {
			return End{ShortBelow: c.short, GoodBelow: c.good}
		}
		return End{LongAbove: c.long}
	}
	first, last := t.p.Height.Support()
	s = min(max(s, first), last)
	above := t.integral(x, first, s)
	below := t.integral(x, s, last)
	return End{LongAbove: above.LongAbove, ShortBelow: below.ShortBelow, GoodBelow: below.GoodBelow}
}

// integral takes one position by itself, over the shared rows from a to b.
func (t *Edges) integral(x, a, b float64) End {
	if t.e.Point() && t.p.sharp() {
		return t.between(a, b)
	}
	below := func(s float64) float64 { return t.e.CDF(x - t.p.Base + s) }
	above := func(s float64) float64 { return t.e.Above(x - t.p.Base + s) }
	if t.e.Point() {
		all := func(float64) float64 { return 1 }
		below, above = all, all
	}
	cuts := t.p.bends(a, b)
	for _, k := range t.e.Kinks() {
		if c := t.p.Base - x + k; c > a && c < b {
			cuts = append(cuts, c)
		}
	}
	slices.Sort(cuts)
	over := func(of func(c classes) float64, side func(float64) float64) float64 {
		var v float64
		for i := 1; i < len(cuts); i++ {
			if cuts[i] <= cuts[i-1] {
				continue
			}
			mid := (cuts[i-1] + cuts[i]) / 2
			if t.p.sharp() && of(t.p.given(mid)) == 0 {
				continue
			}
			f := func(s float64) float64 { return t.p.Height.PDF(s) * of(t.p.given(s)) * side(s) }
			if t.p.sharp() { // one class all along, its ends included
				f = func(s float64) float64 { return t.p.Height.PDF(s) * side(s) }
			}
			v += integrate(f, cuts[i-1:i+1])
		}
		return v
	}
	return End{
		LongAbove:  over(func(c classes) float64 { return c.long }, above),
		ShortBelow: over(func(c classes) float64 { return c.short }, below),
		GoodBelow:  over(func(c classes) float64 { return c.good }, below),
	}
}

// between are the parts whose rows add up to something from a to b, where the sum alone
// decides.
func (t *Edges) between(a, b float64) End {
	low, high := t.p.limits()
	from := func(a, b float64) float64 {
		if a >= b {
			return 0
		}
		if a > t.p.Height.Mean() {
			return max(0, t.p.Height.Above(a)-t.p.Height.Above(b))
		}
		return max(0, t.p.Height.CDF(b)-t.p.Height.CDF(a))
	}
	return End{LongAbove: from(max(a, high), b), ShortBelow: from(a, min(b, low)), GoodBelow: from(max(a, low), min(b, high))}
}

// sharp tells whether the shared rows decide alone what the drawing says of a part.
func (p Population) sharp() bool { return p.Beside == nil || p.Beside.Point() }

// limits are the requirement in the sum of the shared rows, where that decides alone.
func (p Population) limits() (low, high float64) {
	if p.Beside == nil {
		return p.Low, p.High
	}
	return p.Low - p.Beside.Mean(), p.High - p.Beside.Mean()
}

// given are the shares of what the drawing says of parts whose shared rows add up to s.
func (p Population) given(s float64) classes {
	if !p.sharp() {
		long, short := p.Beside.Above(p.High-s), p.Beside.CDF(p.Low-s)
		return classes{long, max(0, 1-long-short), short}
	}
	switch low, high := p.limits(); {
	case s > high+slack:
		return classes{long: 1}
	case s < low-slack:
		return classes{short: 1}
	}
	return classes{good: 1}
}

// bends lists a, b and the positions between them at which the density of the shared
// rows, or what the drawing says of them, may bend, in rising order.
func (p Population) bends(a, b float64) []float64 {
	cuts := []float64{a, b}
	add := func(c float64) {
		if c > a && c < b {
			cuts = append(cuts, c)
		}
	}
	for _, k := range p.Height.Kinks() {
		add(k)
	}
	if p.sharp() {
		low, high := p.limits()
		add(low)
		add(high)
	} else {
		for _, k := range p.Beside.Kinks() {
			add(p.Low - k)
			add(p.High - k)
		}
	}
	slices.Sort(cuts)
	return cuts
}
