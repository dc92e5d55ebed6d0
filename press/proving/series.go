package proving

import (
	"cmp"
	"math"
	"slices"

	"ramplan/press/study"
)

// refutes is the level at which a test makes a finding or fails a check: a right station is
// seldom accused.
const refutes = 0.01

// slack is what comparisons of lengths forgive, mm.
const slack = 1e-9

// inOrder gives the places of the rows in the order in which they were pushed: that of their
// times where every row has one, else as given.
func inOrder(rows []Row) []int {
	at := make([]int, len(rows))
	timed := true
	for i := range rows {
		at[i] = i
		timed = timed && rows[i].Time != nil
	}
	if timed {
		slices.SortStableFunc(at, func(a, b int) int { return cmp.Compare(*rows[a].Time, *rows[b].Time) })
	}
	return at
}

// values are figures of some rows in the order in which these were pushed.
type values struct {
	of []int // places of the rows
	x  []float64
}

// take collects a figure of every row that has it, in the order of the pushes.
func take(rows []Row, figure func(*Row) *float64) values {
	var v values
	for _, i := range inOrder(rows) {
		if x := figure(&rows[i]); x != nil {
			v.of, v.x = append(v.of, i), append(v.x, *x)
		}
	}
	return v
}

// readings are those of all rows.
func readings(rows []Row) values {
	return take(rows, func(r *Row) *float64 { return r.Reading })
}

// outliers are the numbers of the rows that stand apart, in rising order.
func (v values) outliers() []int {
	found := study.Outliers(v.x)
	rows := make([]int, len(found))
	for i, at := range found {
		rows[i] = v.of[at] + 1
	}
	slices.Sort(rows)
	return rows
}

// mean and its uncertainty, t_0.975 s/√n in a root with something known to ± two standard
// deviations; nil where nothing tells of it.
func meanOf(x []float64, beside float64) (mean float64, uncertainty *float64) {
	mean = study.Mean(x)
	if s := study.SD(x); s != nil {
		n := float64(len(x))
		u := math.Hypot(study.TQuantile(0.975, n-1)**s/math.Sqrt(n), beside)
		uncertainty = &u
	}
	return mean, uncertainty
}

// trendOf and serialOf test values in their order.
func trendOf(x []float64) *Trend {
	if t := study.MannKendall(x); t != nil {
		return &Trend{S: t.S, Tau: t.Tau, P: t.P}
	}
	return nil
}

func serialOf(x []float64) *Serial {
	if t := study.VonNeumann(x); t != nil {
		return &Serial{Ratio: t.Ratio, P: t.P}
	}
	return nil
}

// drifts tells whether values drift: by either test.
func drifts(t *Trend, s *Serial) bool {
	return t != nil && t.P < refutes || s != nil && s.P < refutes
}

// against holds a standard deviation against the planned one.
func against(s *float64, n int, planned float64) Spread {
	out := Spread{PlannedSD: planned}
	if s != nil {
		p := study.SDAgainst(*s, float64(n-1), planned)
		out.P = &p
	}
	return out
}

// over tells whether the spread refutes the planned one.
func (s Spread) over() bool { return s.P != nil && *s.P < refutes }

// sdLimits are the limits of a standard deviation.
func sdLimits(s *float64, n int) *Pair {
	if s == nil {
		return nil
	}
	l := study.SDLimits(*s, float64(n-1))
	return &l
}

// supports is what ± a standard deviation is, and what ± it supports; both nil without one.
func supports(s *float64, n int) *Supported {
	if s == nil {
		return &Supported{}
	}
	v, u := 2**s, 2*study.SDUpper(*s, float64(n-1))
	return &Supported{Value: &v, Upper: &u}
}

// given is what was typed, or what stands in for it.
func orElse(x *float64, otherwise float64) float64 {
	if x == nil {
		return otherwise
	}
	return *x
}

// upTo rounds up to a step of so many decimals; binary noise makes no step.
func upTo(x float64, decimals int) *float64 {
	scale := math.Pow10(decimals)
	v := math.Ceil(x*scale-1e-9) / scale
	return &v
}
