package proving

import (
	"cmp"
	"math"
	"slices"

	"ramplan/press"
	"ramplan/press/study"
)

// forces are those of a load cell study, by setting.
type forces struct {
	plan     *press.Result
	study    *Study
	settings []forcesAt   // rising
	weight   float64      // N, in every force and in no figure of the curve
	cell     float64      // U_cell as a share
	rho      float64      // ρ_0, the measured curve over the entered one
	split    *study.Split // nil without degrees of freedom
	reach    float64      // t_0.975 of its degrees of freedom
}

// forcesAt are the pushes at one setting.
type forcesAt struct {
	setting float64
	rows    []int // places of the rows in the study, in the order of the pushes
	order   []int // which pushes of the study they were, from 0
	forces  []float64
	mean    float64
	sd      *float64
	known   bool    // the setting lies inside the curve
	curve   float64 // N, of the entered curve, the weight not in it
}

func (p *forcesAt) df() float64 { return float64(len(p.forces) - 1) }

// groupForces sorts the pushes by setting and splits their scatter.
func groupForces(plan *press.Result, s *Study) *forces {
	f := &forces{plan: plan, study: s, weight: plan.Weight(), cell: orElse(s.CellUncertainty, 0) / 100}
	place := map[float64]int{}
	for i, row := range inOrder(s.Rows) {
		c := *s.Rows[row].Setting
		at, ok := place[c]
		if !ok {
			at = len(f.settings)
			place[c] = at
			f.settings = append(f.settings, forcesAt{setting: c})
		}
		p := &f.settings[at]
		p.rows, p.order, p.forces = append(p.rows, row), append(p.order, i), append(p.forces, *s.Rows[row].Force)
	}
	slices.SortFunc(f.settings, func(a, b forcesAt) int { return cmp.Compare(a.setting, b.setting) })
	measured, entered := 0.0, 0.0
	for i := range f.settings {
		p := &f.settings[i]
		p.mean, p.sd = study.Mean(p.forces), study.SD(p.forces)
		if p.known = onCurve(plan, p.setting); p.known {
			p.curve = forceAt(plan, p.setting)[1] - f.weight
			n := float64(len(p.forces))
			measured += n * (p.mean - f.weight)
			entered += n * p.curve
		}
	}
	if entered > 0 {
		f.rho = measured / entered
	}
	if f.split = f.splitScatter(); f.split != nil {
		f.reach = study.TQuantile(0.975, f.split.DF)
	}
	return f
}

// grows is x: what the proportional part of the variance at a setting grows with, N².
func (f *forces) grows(p *forcesAt) float64 {
	if p.known {
		return square(f.rho * p.curve)
	}
	return square(p.mean - f.weight)
}

// splitScatter tells the share of the force in the scatter from the constant one, beginning
// with the plan's split.
func (f *forces) splitScatter() *study.Split {
	var groups []study.Spread
	df, x := 0.0, 0.0
	for i := range f.settings {
		p := &f.settings[i]
		g := study.Spread{DF: p.df(), SD: orElse(p.sd, 0), X: f.grows(p)}
		df, x = df+g.DF, x+g.DF*g.X
		groups = append(groups, g)
	}
	if df == 0 {
		return nil
	}
	ram := &f.plan.Plan.Ram
	share, constant := square(ram.ForceTolerance/100)*x/df, square(ram.ForceScatter)
	planned := 1.0
	if share+constant > 0 {
		planned = share / (share + constant)
	}
	return study.SplitVariance(groups, planned)
}

// sigma is the standard deviation of one push at a setting, N.
func (f *forces) sigma(p forcesAt) float64 { return f.split.Kappa * math.Sqrt(f.v(&p)) }

// v is the variance at a setting over the mean one.
func (f *forces) v(p *forcesAt) float64 { return f.split.At(f.grows(p)) }

// scatter gives the size of the scatter in the plan's two entries, and holds it against
// the plan.
func (f *forces) scatter() Scatter {
	out := Scatter{Split: SplitPlanned}
	if s := f.split; s != nil {
		out.DF = s.DF
		tolerance, scatter := 0.0, 2*s.Kappa*math.Sqrt(1-s.Share)
		if s.MeanX > 0 {
			tolerance = 200 * s.Kappa * math.Sqrt(s.Share/s.MeanX)
		}
		out.Tolerance, out.Scatter = &tolerance, &scatter
		if s.Fitted {
			out.Split = SplitFitted
		}
	}
	sum, df, seen, exact := 0.0, 0.0, false, false
	for i := range f.settings {
		p := &f.settings[i]
		if !p.known || p.df() == 0 {
			continue
		}
		h := scatterAt(f.plan, p.setting) / 2
		df += p.df()
		seen = seen || *p.sd > 0
		if h == 0 {
			exact = true
			continue
		}
		sum += p.df() * square(*p.sd/h)
	}
	switch {
	case df == 0:
	case exact:
		p := 1.0
		if seen {
			p = 0
		}
		out.P = &p
	default:
		factor := math.Sqrt(sum / df)
		limits, p := study.SDLimits(factor, df), study.SDAgainst(factor, df, 1)
		out.Factor, out.FactorLimits, out.P = &factor, &limits, &p
	}
	return out
}

// oddScatter finds the setting that scatters most beyond the others.
func (f *forces) oddScatter() *OddScatter {
	if f.split == nil {
		return nil
	}
	var all []*forcesAt
	var squares []float64 // ν s²/v of each
	df := 0.0
	for i := range f.settings {
		if p := &f.settings[i]; p.df() > 0 && f.v(p) > 0 {
			all, squares = append(all, p), append(squares, p.df()*square(*p.sd)/f.v(p))
			df += p.df()
		}
	}
	if len(all) < 2 || slices.Max(squares) == 0 {
		return nil
	}
	behind := make([]float64, len(all)+1) // sums of those from a place on
	for i := len(all) - 1; i >= 0; i-- {
		behind[i] = behind[i+1] + squares[i]
	}
	odd, before := &OddScatter{P: math.Inf(1)}, 0.0
	for i, p := range all {
		at := 1.0
		switch rest := before + behind[i+1]; {
		case rest > 0:
			at = study.FUpperP(squares[i]/p.df()/(rest/(df-p.df())), p.df(), df-p.df())
		case squares[i] > 0:
			at = 0
		}
		if at < odd.P {
			odd.Setting, odd.P = p.setting, at
		}
		before += squares[i]
	}
	odd.P = math.Min(1, odd.P*float64(len(all)))
	return odd
}

// outliers are rows that stand apart from the others of their setting.
func (f *forces) outliers() []int {
	v := values{}
	if f.split == nil || f.split.Kappa == 0 {
		return []int{}
	}
	for i := range f.settings {
		p := &f.settings[i]
		n := float64(len(p.forces))
		if n < 2 || f.v(p) == 0 {
			continue
		}
		for k, x := range p.forces {
			v.of = append(v.of, p.rows[k])
			v.x = append(v.x, (x-p.mean)/f.sigma(*p)*math.Sqrt(n/(n-1)))
		}
	}
	if len(v.x) == 0 {
		return []int{}
	}
	return v.outliers()
}

// fewest is the least number of pushes at a setting.
func (f *forces) fewest() int {
	least := math.MaxInt
	for _, p := range f.settings {
		least = min(least, len(p.forces))
	}
	return least
}

// spans tells whether forces were measured on both sides of a setting.
func (f *forces) spans(setting float64) bool {
	return f.settings[0].setting <= setting && setting <= f.settings[len(f.settings)-1].setting
}

// allKnown tells whether all settings lie inside the curve.
func (f *forces) allKnown() bool {
	return !slices.ContainsFunc(f.settings, func(p forcesAt) bool { return !p.known })
}

func square(x float64) float64 { return x * x }
