package proving

import (
	"math"
	"slices"

	"ramplan/press/study"
)

// startup and stillStartup are the levels at which the lowest forces are held to be those at
// which play still closes: the first of them must be plain, the next no more than likely.
const (
	startup      = refutes
	stillStartup = 0.2
)

// stiffness judges pushes on a hard block: how much the station gives, where its nest stands,
// and whether that is what the plan says.
func (j *judging) stiffness() {
	b, ok := blockPushes(j.plan, j.study)
	if !ok {
		j.check(CheckRange, Open)
		j.say(true, OutsideCurve)
		return
	}
	r := &StiffnessResult{N: len(b.all), Levels: len(b.levels), ForceFrom: FromCell, Outliers: []int{}}
	if b.fromCurve {
		r.ForceFrom = FromCurve
	}
	step := j.plan.Plan.Station.PositionStep
	r.Lowest = b.dropStartup(step)
	used := b.used()
	r.Used = len(used)
	started := r.Used < r.N
	if started {
		low, _ := b.forces(used)
		r.StartupBelow = &low
	}
	bent := false
	r.Curvature, bent = b.curvature(used, step)
	l := b.line(used)
	if l != nil {
		l.tell(r)
	}
	j.result = r
	straight := !started && !bent
	if straight && l != nil {
		j.adopt = l.adopt(r)
	}
	drift := drifts(r.Trend, r.Serial)

	j.check(CheckSize, passes(r.Levels >= 2 && r.Used >= 6, Open))
	j.check(CheckRange, passes(b.covers(used), Open))
	j.check(CheckLinear, passes(straight, Open))
	var stiff, position, sharp *float64
	if r.Agreement != nil {
		stiff, position, sharp = r.Agreement.StiffnessEN, r.Agreement.PositionEN, r.Agreement.PositionUncertainty
	}
	j.check(CheckStiffness, agrees(stiff))
	j.check(CheckPosition, agrees(position))
	j.check(CheckSharp, passes(sharp != nil && *sharp <= 2*j.plan.ReadingUncertainty(), Open))
	j.check(CheckDrift, passes(!drift, Open))

	j.say(started, StartupRange)
	j.say(bent, NotLinear)
	j.say(agrees(stiff) == Fail, StiffnessOff)
	j.say(agrees(position) == Fail, NestOff)
	j.say(drift, Drifting)
	j.say(len(r.Outliers) > 0, Outlying)
	j.say(b.fromCurve, ForceFromCurve)
}

// agrees answers by an E_n number.
func agrees(en *float64) Answer {
	if en == nil {
		return Open
	}
	return passes(*en <= 1, Fail)
}

// covers tells whether the plan's own force lies where was pushed, and whether that is wide
// enough to tell a slope.
func (b *block) covers(used []int) bool {
	at := b.plan.Force.Typical
	low, high := b.forces(used)
	return low <= at && at <= 1.1*high && high-low >= 0.3*at
}

// line is the straight line through the pushes used, and what is known of it.
type line struct {
	*block
	fit        *study.Fit
	used       []int
	systematic float64 // of the forces, as a share
}

// rounding is the share of a position under which a movement is no more than the rounding of its sums.
const rounding = 1e-12

// line fits the straight line; nil where no line goes through the pushes.
func (b *block) line(used []int) *line {
	x, y, w := b.pick(used)
	fit := study.LeastSquares([][]float64{ones(len(x)), x}, y, w)
	if fit == nil {
		return nil
	}
	if math.Abs(fit.Coef[1])*(slices.Max(x)-slices.Min(x)) < rounding*math.Abs(fit.Coef[0]) {
		fit.Coef[1] = 0 // the readings do not move with the force: what is left is rounding
	}
	l := &line{block: b, fit: fit, used: used, systematic: orElse(b.study.CellUncertainty, 0) / 100}
	if b.fromCurve {
		l.systematic = b.plan.Plan.Ram.ForceTolerance / 100
	}
	return l
}

// tell writes what the line says into a result.
func (l *line) tell(r *StiffnessResult) {
	st, at := &l.plan.Plan.Station, l.plan.Force.Typical
	r.Line = &Line{Intercept: l.fit.Coef[0], Slope: l.fit.Coef[1], InterceptSD: l.fit.CoefSD(0), SlopeSD: l.fit.CoefSD(1), DF: l.fit.DF, fit: l.fit}
	r.Stiffness = l.stiff()
	r.Nest, r.Taught = l.under(st.NestForce), l.under(at)
	if l.fit.DF > 0 {
		s := l.fit.ResidualSD
		value, upper := 2*s, 2*study.SDUpper(s, l.fit.DF)
		r.Line.ResidualSD, r.Repeatability = &s, &Supported{Value: &value, Upper: &upper}
	}
	shift, allowed := r.Taught.Value-nestUnder(l.plan, at), allowedUnder(l.plan, at)
	a := &Agreement{PositionShift: &shift, PositionAllowed: &allowed, PositionUncertainty: r.Taught.Uncertainty}
	if u := l.slopeUncertainty(); u != nil {
		planned := 1 / st.Stiffness
		a.StiffnessEN = normalised(l.fit.Coef[1]-planned, *u, planned*st.StiffnessTolerance/100)
		a.PositionEN = normalised(shift, *r.Taught.Uncertainty, allowed)
	}
	r.Agreement = a
	residuals := values{of: l.used, x: l.fit.Residuals}
	if l.fit.ResidualSD > 0 {
		r.Trend, r.Serial, r.Outliers = trendOf(residuals.x), serialOf(residuals.x), residuals.outliers()
	}
}

// normalised is the E_n number of a difference: over the root of the sum of the squares of
// its two uncertainties; nil where there is none.
func normalised(difference, one, other float64) *float64 {
	u := math.Hypot(one, other)
	if u == 0 {
		return nil
	}
	en := math.Abs(difference) / u
	return &en
}

// slopeUncertainty is U_b, mm/N; nil without degrees of freedom.
func (l *line) slopeUncertainty() *float64 {
	s := l.fit.CoefSD(1)
	if s == nil {
		return nil
	}
	u := math.Hypot(study.TQuantile(0.975, l.fit.DF)**s, l.fit.Coef[1]*l.systematic)
	return &u
}

// stiff is what the slope says of the stiffness; nil where the nest does not give way.
func (l *line) stiff() *Stiff {
	b := l.fit.Coef[1]
	if b <= 0 {
		return nil
	}
	k := &Stiff{Value: 1 / b}
	if u := l.slopeUncertainty(); u != nil {
		uncertainty, low := *u/(b*b), 1/(b+*u)
		k.Uncertainty, k.Limits = &uncertainty, &[2]*float64{&low, nil}
		if b > *u {
			high := 1 / (b - *u)
			k.Limits[1] = &high
		}
	}
	return k
}

// under is where the nest stands under a force by the line.
func (l *line) under(force float64) *NestFound {
	slope := l.fit.Coef[1]
	found := &NestFound{Value: l.fit.Coef[0] + slope*force, NestForce: force}
	if s := l.fit.ValueSD([]float64{1, force}); s != nil {
		doubt := 0.0
		if !l.fromCurve {
			doubt = slope * force * l.systematic
		}
		u := math.Hypot(math.Hypot(study.TQuantile(0.975, l.fit.DF)**s, orElse(l.study.HeightUncertainty, 0)), doubt)
		found.Uncertainty = &u
	}
	return found
}

// adopt is what the line offers; nil where it knows the stiffness no better than not at all.
func (l *line) adopt(r *StiffnessResult) *Adopt {
	u, b := l.slopeUncertainty(), l.fit.Coef[1]
	if r.Stiffness == nil || u == nil {
		return nil
	}
	tolerance := upTo(100**u/b, 1)
	if *tolerance >= 100 {
		return nil
	}
	nest, stiffness := nearest(r.Nest.Value, 3), nearest(r.Stiffness.Value, 0)
	return &Adopt{Nest: &nest, Stiffness: &stiffness, StiffnessTolerance: tolerance}
}
