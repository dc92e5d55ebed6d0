package study

import "math"

// Groups is a one-way analysis of variance.
type Groups struct {
	Means                    []float64
	Between, Within          float64  // mean squares; Within is 0 without degrees of freedom
	DF1, DF2                 float64  // degrees of freedom between and within
	F, P                     *float64 // nil where nothing varies within
	SD                       *float64 // standard deviation of the means; nil under two groups
	SDWithin                 *float64 // nil without degrees of freedom
	SDBetween                *float64 // what the groups add beyond what the scatter within explains; likewise
	Harmonic                 float64  // mean size
	effective, squaresWithin float64
}

// AnalyseGroups is the one-way analysis of variance.
//
//	F = MSB/MSW with (a − 1, N − a); between = √max(0, (MSB − MSW)/n₀),
//	n₀ = (N − Σn_i²/N)/(a − 1)
//
// Arguments: groups, the values of each, none of them empty.
// Result: mean squares, F, upper p and standard deviations, –, in the unit of the values or its square.
// Range: normal values that scatter alike within each group.
// Special cases: nothing varies within, or every group has one value: F is nil; nil as a
// whole without groups.
// Source: NIST StRD, one-way analysis of variance (SiRstv, AtmWtAg); components of variance:
// S. R. Searle, G. Casella, C. E. McCulloch, Variance Components (1992), 3.6, from memory.
func AnalyseGroups(groups [][]float64) *Groups {
	if len(groups) == 0 {
		return nil
	}
	g := &Groups{}
	origin := groups[0][0]
	var sizes []int
	total, squaredSizes := 0.0, 0.0
	shifted := make([][]float64, len(groups))
	for i, x := range groups {
		for _, v := range x {
			shifted[i] = append(shifted[i], v-origin)
		}
		sizes = append(sizes, len(x))
		total += float64(len(x))
		squaredSizes += square(float64(len(x)))
	}
	var all []float64
	means := make([]float64, len(groups))
	for i, x := range shifted {
		means[i] = Mean(x)
		g.Means = append(g.Means, origin+means[i])
		_, q := deviations(x)
		g.squaresWithin += q
		all = append(all, x...)
	}
	grand, between := Mean(all), 0.0
	for i := range means {
		between += float64(sizes[i]) * square(means[i]-grand)
	}
	g.Harmonic = HarmonicMean(sizes)
	g.SD = SD(means)
	g.DF1, g.DF2 = float64(len(groups)-1), total-float64(len(groups))
	if g.DF1 > 0 {
		g.Between = between / g.DF1
		g.effective = (total - squaredSizes/total) / g.DF1
	}
	if g.DF2 > 0 {
		g.Within = g.squaresWithin / g.DF2
		within := math.Sqrt(g.Within)
		g.SDWithin = &within
		if g.DF1 > 0 {
			added := math.Sqrt(math.Max(0, (g.Between-g.Within)/g.effective))
			g.SDBetween = &added
		}
	}
	if g.DF1 > 0 && g.Within > 0 {
		f := g.Between / g.Within
		p := FUpperP(f, g.DF1, g.DF2)
		g.F, g.P = &f, &p
	}
	return g
}
