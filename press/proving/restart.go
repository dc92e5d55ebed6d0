package proving

import (
	"cmp"
	"math"
	"slices"

	"ramplan/press/study"
)

// restart judges what a new start moves: pushes on one master after each of several.
func (j *judging) restart() {
	setting, ok := j.pushedAt()
	if !ok {
		return
	}
	starts, n := j.starts()
	groups := make([][]float64, len(starts))
	r := &RestartResult{N: n, Starts: make([]Start, len(starts))}
	enough := len(starts) >= 5
	for i, s := range starts {
		groups[i] = s.x
		enough = enough && len(s.x) >= 2
	}
	g := study.AnalyseGroups(groups)
	for i, s := range starts {
		r.Starts[i] = Start{Start: s.start, N: len(s.x), Mean: g.Means[i]}
	}
	r.Within, r.Between, r.SD, r.Outliers = g.SDWithin, g.SDBetween, g.SD, j.fromStarts(starts, g.Means).outliers()
	if g.F != nil {
		r.Anova = &F{F: g.F, DF1: &g.DF1, DF2: &g.DF2, P: g.P}
	}
	tidied := make([]float64, len(g.Means)) // equal starts are equal, whatever the order of their rows
	for i, m := range g.Means {
		tidied[i] = tidy(m)
	}
	r.Trend, r.Serial = trendOf(tidied), serialOf(tidied)
	r.Supported = supports(g.SD, len(starts)).Upper
	st := &j.plan.Plan.Station
	r.Spread = against(g.SD, len(starts), root(st.ReferenceUncertainty/2, st.NestDrift/math.Sqrt(3), pushSD(j.plan, setting)/math.Sqrt(g.Harmonic)))
	r.ColdWarm = j.coldWarm(starts, g.Means)
	j.result = r

	drift := drifts(r.Trend, r.Serial)
	j.check(CheckSize, passes(enough, Open))
	j.check(CheckSpread, answer(r.Spread.P != nil, !r.Spread.over()))
	j.check(CheckDrift, passes(!drift, Open))
	if r.Supported != nil {
		v := max(0, *r.Supported**r.Supported-4*st.NestDrift*st.NestDrift/3)
		j.adopt = &Adopt{Reference: upTo(math.Sqrt(v), 3)}
	}
	j.say(r.ColdWarm != nil && math.Abs(r.ColdWarm.Difference) > st.ReferenceUncertainty+slack, WarmUp)
	j.sayOf(r.Spread.over(), SpreadOverPlan, "station.reference_uncertainty")
	j.say(drift, Drifting)
	j.say(len(r.Outliers) > 0, Outlying)
	j.say(g.P != nil && *g.P < refutes, StartsDiffer)
}

// pushesOf are the readings after one start.
type pushesOf struct {
	start float64
	x     []float64
	of    []int // places of the rows
}

// starts parts the readings by start, in the order of their numbers.
func (j *judging) starts() (out []pushesOf, n int) {
	v := readings(j.study.Rows)
	for i, x := range v.x {
		start := *j.study.Rows[v.of[i]].Start
		at, known := slices.BinarySearchFunc(out, start, func(p pushesOf, s float64) int { return cmp.Compare(p.start, s) })
		if !known {
			out = slices.Insert(out, at, pushesOf{start: start})
		}
		out[at].x, out[at].of = append(out[at].x, x), append(out[at].of, v.of[i])
	}
	return out, len(v.x)
}

// fromStarts are the readings less the mean of their own start, stretched to the scatter of
// one push. A start of one push tells nothing of it.
func (j *judging) fromStarts(starts []pushesOf, means []float64) values {
	off := map[int]float64{}
	for i, p := range starts {
		if n := float64(len(p.x)); n > 1 {
			for k, row := range p.of {
				off[row] = (p.x[k] - means[i]) * math.Sqrt(n/(n-1))
			}
		}
	}
	var v values
	for _, row := range inOrder(j.study.Rows) {
		if x, ok := off[row]; ok {
			v.of, v.x = append(v.of, row), append(v.x, x)
		}
	}
	return v
}

// condition of a start is that of all its rows; empty where one tells none, or they differ.
func (p pushesOf) condition(rows []Row) string {
	found := rows[p.of[0]].Condition
	for _, i := range p.of {
		if rows[i].Condition != found {
			return ""
		}
	}
	return found
}

// coldWarm is by how much cold starts differ from warm ones; nil under two of either. Where
// neither scatter there are no limits.
func (j *judging) coldWarm(starts []pushesOf, means []float64) *ColdWarmMean {
	var cold, warm []float64
	for i, p := range starts {
		switch p.condition(j.study.Rows) {
		case Cold:
			cold = append(cold, means[i])
		case Warm:
			warm = append(warm, means[i])
		}
	}
	if len(cold) < 2 || len(warm) < 2 {
		return nil
	}
	difference, limits := study.Welch(cold, warm)
	if limits != nil && limits[0] == limits[1] {
		limits = nil
	}
	return &ColdWarmMean{Difference: difference, Limits: limits}
}
