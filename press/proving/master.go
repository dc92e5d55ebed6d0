package proving

import (
	"math"

	"ramplan/press/study"
)

// master judges many pushes on one master: whether the nest is where the plan has it, and
// whether the station repeats as it says.
func (j *judging) master() {
	setting, ok := j.pushedAt()
	if !ok {
		return
	}
	s, st := j.study, &j.plan.Plan.Station
	v := readings(s.Rows)
	n := len(v.x)
	at := j.plan.PushAt(setting)
	r := &MasterResult{
		N: n, Setting: setting, Mean: study.Mean(v.x), SD: study.SD(v.x),
		Predicted: st.Nest - *s.Height + (at.Typical-st.NestForce)/st.Stiffness,
		Trend:     trendOf(v.x), Serial: serialOf(v.x), Outliers: v.outliers(),
	}
	known := orElse(s.HeightUncertainty, 0)
	_, uncertainty := meanOf(v.x, known)
	r.Bias = Bias{Value: r.Mean - r.Predicted, Uncertainty: uncertainty, Allowed: allowedAt(j.plan, setting), DF: float64(n - 1)}
	if r.SD != nil && *r.SD > 0 {
		t := r.Bias.Value * math.Sqrt(float64(n)) / *r.SD
		p := study.TwoSidedP(t, r.Bias.DF)
		r.Bias.T, r.Bias.P = &t, &p
	}
	r.SDLimits, r.Repeatability = sdLimits(r.SD, n), supports(r.SD, n)
	r.Spread = against(r.SD, n, pushSD(j.plan, setting))
	r.Gauge = j.gauge(r, known)
	j.result = r

	off := uncertainty != nil && math.Abs(r.Bias.Value) > math.Hypot(*uncertainty, r.Bias.Allowed)
	drift := drifts(r.Trend, r.Serial)
	j.check(CheckSize, passes(n >= 25, Open))
	j.check(CheckBias, answer(uncertainty != nil, !off))
	j.check(CheckSpread, answer(r.Spread.P != nil, !r.Spread.over()))
	j.check(CheckDrift, passes(!drift, Open))

	if r.Repeatability.Upper != nil {
		j.adopt = &Adopt{Repeatability: upTo(*r.Repeatability.Upper, 3)}
	}
	weak := func(x *float64) bool { return x != nil && *x < gaugeLeast }
	j.say(off, NestOff)
	j.say(r.Spread.over(), SpreadOverPlan)
	j.say(drift, Drifting)
	j.say(weak(r.Gauge.Cg) || weak(r.Gauge.Cgk), GaugeWeak)
	j.say(len(r.Outliers) > 0, Outlying)
	j.say(!off && r.Bias.P != nil && *r.Bias.P < refutes, Biased)
	j.say(r.Repeatability.Upper != nil && *r.Repeatability.Upper > 2*r.Spread.PlannedSD, RepeatabilityNotShown)
}

// pushedAt is the setting of a study on one master. Where the curve says nothing of it the
// study cannot be judged: its range is open.
func (j *judging) pushedAt() (setting float64, ok bool) {
	setting = orElse(j.study.Setting, j.plan.Force.Setting)
	if !onCurve(j.plan, setting) {
		j.check(CheckRange, Open)
		j.say(true, OutsideCurve)
		return setting, false
	}
	return setting, true
}

// gaugeLeast is what the two indices of a gauge are usually asked to reach. Common practice,
// no source.
const gaugeLeast = 1.33

// gauge is a gauge study of type 1 over the tolerance of the height.
func (j *judging) gauge(r *MasterResult, known float64) Gauge {
	q := &j.plan.Plan.Requirement
	g := Gauge{Tolerance: q.HeightHigh - q.HeightLow}
	for _, rule := range study.GaugeRules {
		v := GaugeVariant{Name: rule.Name}
		if r.SD != nil {
			v.Cg, v.Cgk = rule.Indices(g.Tolerance, *r.SD, r.Bias.Value)
		}
		if rule == study.ChosenGaugeRule {
			g.Cg, g.Cgk = v.Cg, v.Cgk
		}
		g.Variants = append(g.Variants, v)
	}
	if r.SD != nil {
		system := study.MeasuringSystem{Calibration: known, Resolution: orElse(j.study.Resolution, 0), SD: *r.SD, Bias: r.Bias.Value}
		g.QMS, g.CMS = system.Performance(g.Tolerance)
	}
	return g
}
