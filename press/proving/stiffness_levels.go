package proving

import (
	"cmp"
	"math"
	"slices"

	"ramplan/press"
	"ramplan/press/study"
)

// block are the pushes on a hard block, in the order in which they were pushed.
type block struct {
	plan      *press.Result
	study     *Study
	all       []int     // places of the rows
	force     []float64 // N, by place
	rest      []float64 // mm, reading and height together, by place
	weight    []float64 // by place; nil where all weigh the same
	fromCurve bool      // the forces are those of the plan's curve
	levels    [][]int   // places of the rows of each level, of rising force
	dropped   int       // how many levels are left out from below
}

// blockPushes reads the pushes; false where a force is asked of the curve beyond its ends.
func blockPushes(plan *press.Result, s *Study) (*block, bool) {
	n := len(s.Rows)
	b := &block{plan: plan, study: s, all: inOrder(s.Rows), force: make([]float64, n), rest: make([]float64, n)}
	b.fromCurve = s.Rows[0].Force == nil
	if b.fromCurve {
		b.weight = make([]float64, n)
	}
	sharp := true
	for i := range s.Rows {
		row := &s.Rows[i]
		b.rest[i] = *row.Reading + orElse(row.Height, orElse(s.Height, 0))
		if !b.fromCurve {
			b.force[i] = *row.Force
			continue
		}
		if !onCurve(plan, *row.Setting) {
			return nil, false
		}
		b.force[i] = forceAt(plan, *row.Setting)[1]
		sd := pushSD(plan, *row.Setting)
		b.weight[i] = 1 / square(sd)
		sharp = sharp && sd > 0
	}
	if !sharp {
		b.weight = nil
	}
	b.levels = b.sortLevels()
	return b, true
}

// sortLevels puts rows of one setting together, or of one force where not every row names a
// setting.
func (b *block) sortLevels() [][]int {
	rows := slices.Clone(b.all)
	if slices.ContainsFunc(b.study.Rows, func(r Row) bool { return r.Setting == nil }) {
		slices.SortStableFunc(rows, func(i, k int) int { return cmp.Compare(b.force[i], b.force[k]) })
		var levels [][]int
		for _, i := range rows {
			if n := len(levels); n > 0 && b.force[i] <= 1.05*b.force[levels[n-1][0]] {
				levels[n-1] = append(levels[n-1], i)
				continue
			}
			levels = append(levels, []int{i})
		}
		return levels
	}
	place := map[float64]int{}
	var levels [][]int
	for _, i := range rows {
		c := *b.study.Rows[i].Setting
		at, ok := place[c]
		if !ok {
			at = len(levels)
			place[c] = at
			levels = append(levels, nil)
		}
		levels[at] = append(levels[at], i)
	}
	mean := func(level []int) float64 {
		x, _, _ := b.pick(level)
		return study.Mean(x)
	}
	slices.SortStableFunc(levels, func(a, c []int) int { return cmp.Compare(mean(a), mean(c)) })
	return levels
}

// pick collects forces, rests and weights of some rows.
func (b *block) pick(rows []int) (x, y, w []float64) {
	for _, i := range rows {
		x, y = append(x, b.force[i]), append(y, b.rest[i])
		if b.weight != nil {
			w = append(w, b.weight[i])
		}
	}
	return x, y, w
}

// used are the rows that are left, in the order of the pushes.
func (b *block) used() []int {
	if b.dropped == 0 {
		return b.all
	}
	left := map[int]bool{}
	for _, level := range b.levels[b.dropped:] {
		for _, i := range level {
			left[i] = true
		}
	}
	return slices.DeleteFunc(slices.Clone(b.all), func(i int) bool { return !left[i] })
}

// forces are the least and the greatest force of some rows.
func (b *block) forces(rows []int) (low, high float64) {
	x, _, _ := b.pick(rows)
	return slices.Min(x), slices.Max(x)
}

// dropStartup holds the lowest level against the line of the others and leaves out those at
// which play still closes. It tells of the first.
func (b *block) dropStartup(step float64) *Lowest {
	var first *Lowest
	for level := startup; ; level = stillStartup {
		lowest := b.lowest()
		if first == nil {
			first = lowest
		}
		if lowest == nil || lowest.P == nil || *lowest.P >= level || math.Abs(lowest.Deviation) <= step/2 || len(b.levels)-b.dropped <= 3 {
			return first
		}
		b.dropped++
	}
}

// lowest holds the lowest level that is left against the line of the others; nil under three
// levels or six rows.
func (b *block) lowest() *Lowest {
	rows := b.used()
	if len(b.levels)-b.dropped < 3 || len(rows) < 6 {
		return nil
	}
	x, y, w := b.pick(rows)
	low := map[int]bool{}
	for _, i := range b.levels[b.dropped] {
		low[i] = true
	}
	there := make([]float64, len(rows))
	for k, i := range rows {
		if low[i] {
			there[k] = 1
		}
	}
	fit := study.LeastSquares([][]float64{ones(len(x)), x, there}, y, w)
	if fit == nil {
		return nil
	}
	t, p := fit.CoefT(2)
	return &Lowest{Deviation: fit.Coef[2], T: t, DF: fit.DF, P: p}
}

// curvature looks for a bend in what is left, and tells whether there is one; nil under three
// levels.
func (b *block) curvature(used []int, step float64) (*Curvature, bool) {
	if len(b.levels)-b.dropped < 3 {
		return nil, false
	}
	x, y, w := b.pick(used)
	middle := study.Mean(x)
	bow := make([]float64, len(x))
	for i := range x {
		bow[i] = square(x[i] - middle)
	}
	fit := study.LeastSquares([][]float64{ones(len(x)), x, bow}, y, w)
	if fit == nil {
		return nil, false
	}
	t, p := fit.CoefT(2)
	low, high := b.forces(used)
	c := &Curvature{T: t, DF: fit.DF, P: p, Sag: math.Abs(fit.Coef[2]) * square((high-low)/2)}
	return c, p != nil && *p < refutes && c.Sag > step/2
}

func ones(n int) []float64 {
	x := make([]float64, n)
	for i := range x {
		x[i] = 1
	}
	return x
}
