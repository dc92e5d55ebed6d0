package proving

import (
	"math"

	"ramplan/press/study"
)

// fit tells by what the entered curve must be multiplied, and whether it has another shape.
func (f *forces) fit() CurveFit {
	if f.split == nil || f.split.Kappa == 0 {
		return CurveFit{}
	}
	kappa, df := f.split.Kappa, f.split.DF
	products, squares, m := 0.0, 0.0, 0.0
	known := func(do func(w, mean, entered float64)) {
		for i := range f.settings {
			if p := &f.settings[i]; p.known {
				do(f.pull(p), p.mean, p.curve+f.weight)
			}
		}
	}
	known(func(w, mean, entered float64) {
		products, squares, m = products+w*mean*entered, squares+w*entered*entered, m+1
	})
	if !(squares > 0) || math.IsInf(squares, 1) {
		return CurveFit{}
	}
	rho, se := products/squares, kappa/math.Sqrt(squares)
	half := math.Hypot(f.reach*se, rho*f.cell)
	t := (rho - 1) / math.Hypot(se, rho*f.cell/2)
	p := study.TwoSidedP(t, df)
	out := CurveFit{Scale: &Scale{Factor: rho, Limits: &Pair{rho - half, rho + half}, T: &t, DF: df, P: &p}}
	if m > 1 {
		lack := 0.0
		known(func(w, mean, entered float64) { lack += w * square(mean-rho*entered) })
		ratio, above, below := lack/(m-1)/square(kappa), m-1, df
		p := study.FUpperP(ratio, above, below)
		out.Bend = &F{F: &ratio, DF1: &above, DF2: &below, P: &p}
	}
	return out
}

// pull is the weight of the mean at a setting, W = n/v.
func (f *forces) pull(p *forcesAt) float64 { return float64(len(p.forces)) / f.v(p) }

// drift tells how far forces moved over the study.
func (f *forces) drift() *ForceDrift {
	slope, t, df, p, ok := f.regress(func(p *forcesAt, i int) float64 { return float64(p.order[i]) })
	if !ok {
		return nil
	}
	return &ForceDrift{ChangeSD: slope * float64(len(f.study.Rows)-1), T: t, DF: df, P: p}
}

// coldWarm tells by how much warm pushes differ from cold ones; nil unless each row says
// what it was.
func (f *forces) coldWarm() *ColdWarm {
	for _, r := range f.study.Rows {
		if r.Condition == "" {
			return nil
		}
	}
	slope, t, df, p, ok := f.regress(func(p *forcesAt, i int) float64 {
		if f.study.Rows[p.rows[i]].Condition == Warm {
			return 1
		}
		return 0
	})
	if !ok {
		return nil
	}
	return &ColdWarm{DifferenceSD: slope, T: t, DF: df, P: p}
}

// regress holds the forces, in standard deviations from the mean of their setting, against
// something else, centred within each setting as well.
func (f *forces) regress(against func(p *forcesAt, i int) float64) (slope, t, df, p float64, ok bool) {
	if f.split == nil || f.split.Kappa == 0 {
		return
	}
	df = float64(len(f.study.Rows) - len(f.settings) - 1)
	if df < 3 {
		return
	}
	var x, z []float64
	for i := range f.settings {
		at := &f.settings[i]
		sigma := f.sigma(*at)
		if sigma == 0 {
			return
		}
		a := make([]float64, len(at.forces))
		for k := range a {
			a[k] = against(at, k)
		}
		middle := study.Mean(a)
		for k := range a {
			x, z = append(x, a[k]-middle), append(z, (at.forces[k]-at.mean)/sigma)
		}
	}
	xx, xz := 0.0, 0.0
	for i := range x {
		xx, xz = xx+x[i]*x[i], xz+x[i]*z[i]
	}
	if !(xx > 0) {
		return
	}
	slope = xz / xx
	left, all := 0.0, 0.0
	for i := range x {
		left, all = left+square(z[i]-slope*x[i]), all+z[i]*z[i]
	}
	if !(left > 1e-24*all) {
		return
	}
	t = slope / math.Sqrt(left/df/xx)
	return slope, t, df, study.TwoSidedP(t, df), true
}

// points are the curve that the forces themselves say: the means at their settings, made to
// rise, and what the plan has beyond them. None without scatter or two settings.
func (f *forces) points() (points [][2]float64, pooled bool) {
	if f.split == nil || len(f.settings) < 2 {
		return nil, false
	}
	var c, y, w []float64
	for i := range f.settings {
		p := &f.settings[i]
		pull := f.pull(p)
		if math.IsInf(pull, 0) {
			return nil, false
		}
		c, y, w = append(c, p.setting), append(y, p.mean-f.weight), append(w, pull)
	}
	entered := f.plan.Plan.Ram.Curve.Points
	for _, p := range entered {
		if p[0] < c[0] {
			points = append(points, p)
		}
	}
	for _, pool := range study.Isotonic(c, y, w) {
		at := pool.X
		if pool.Points > 1 {
			at, pooled = nearest(at, 1), true
		}
		points = append(points, [2]float64{at, nearest(pool.Y, 1)})
	}
	for _, p := range entered {
		if p[0] > c[len(c)-1] {
			points = append(points, p)
		}
	}
	return points, pooled
}

// adopt is what the study offers: a curve, and a band in which the next push lies.
func (f *forces) adopt(points [][2]float64, s *Scatter) *Adopt {
	ram := &f.plan.Plan.Ram
	for _, end := range []float64{ram.SettingMin, ram.SettingMax} {
		// No curve goes through points that do not rise strictly, or are not above zero.
		if _, err := f.plan.ForceThrough(points, end); err != nil {
			return nil
		}
	}
	g := study.TQuantile(0.97725, s.DF) / 2 * math.Sqrt(1+1/float64(f.fewest()))
	tolerance := upTo(math.Hypot(g**s.Tolerance, 100*f.cell), 2)
	if *tolerance >= 100 {
		return nil
	}
	return &Adopt{CurvePoints: points, ForceTolerance: tolerance, ForceScatter: upTo(g**s.Scatter, 1)}
}

// atSetting is the force of the adopted curve at the plan's setting, and where one further
// push there is expected; nil where forces were not measured on both sides of it.
func (f *forces) atSetting(points [][2]float64) *AtSetting {
	c := f.plan.Force.Setting
	if !f.spans(c) {
		return nil
	}
	force, err := f.plan.ForceThrough(points, c)
	if err != nil {
		return nil
	}
	at := &AtSetting{Setting: c, Force: force, Need: f.plan.Force.Need, Cap: f.plan.Force.Cap}
	sigma := f.split.Kappa * math.Sqrt(f.split.At(square(force-f.weight)))
	at.Predict = f.around(force, sigma, 1+1/float64(f.fewest()))
	return at
}

// nearest rounds to a number of decimals.
func nearest(x float64, decimals int) float64 {
	scale := math.Pow10(decimals)
	return math.Round(x*scale) / scale
}
