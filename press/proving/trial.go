package proving

import (
	"math"

	"ramplan/press/study"
)

// trial judges parts as they come: the shares of the four pairs, what the lamps said of the
// readings, and how the readings lie.
func (j *judging) trial() {
	rows := j.study.Rows
	v := take(rows, func(r *Row) *float64 {
		if !*r.Arrival {
			return nil // the ram rests where the push ends
		}
		return r.Reading
	})
	mean, _ := j.plan.Heights()
	r := &TrialResult{
		N: len(rows), Used: len(v.x), SD: study.SD(v.x), Nominal: j.base() - mean,
		Trend: trendOf(v.x), Serial: serialOf(v.x), Outliers: v.outliers(),
	}
	lamps := j.shares(r)
	r.Truth = j.truth()
	j.shifts(r, v.x, mean)
	r.SDLimits = sdLimits(r.SD, r.Used)
	r.Spread = against(r.SD, r.Used, j.plan.ReadingSD())
	if a := study.AndersonDarling(v.x); a != nil {
		r.Normality = &Normality{A2: a.A2, A2Adjusted: a.A2Adjusted, P: a.P}
	}
	r.Capability = j.capability(v.x)
	r.Correction = j.correction(r)
	j.result = r

	shift := r.decides()
	off := shift != nil && shift.Uncertainty != nil && math.Abs(shift.Value) > math.Hypot(*shift.Uncertainty, *shift.Allowed)
	drift := drifts(r.Trend, r.Serial)
	more := r.Rejects.refuted()
	j.check(CheckSize, passes(r.N >= 30 && r.Used >= 25, Open))
	j.check(CheckLamps, answer(lamps, len(r.LampMismatch) == 0))
	j.check(CheckRejects, answer(r.Rejects.known(), !more))
	j.check(CheckShift, answer(shift != nil && shift.Uncertainty != nil, !off))
	j.check(CheckSpread, answer(r.Spread.P != nil, !r.Spread.over()))
	j.check(CheckDrift, passes(!drift, Open))
	accepted := false
	if r.Truth != nil {
		accepted = r.Truth.FalseAccept.refuted()
		j.check(CheckFalseAccept, answer(r.Truth.FalseAccept.known(), !accepted))
	}
	if c := r.Correction; c != nil {
		j.adopt = &Adopt{Nest: &c.Nest}
	}
	j.say(len(r.LampMismatch) > 0, LampsDiffer)
	j.say(more, MoreRejects)
	j.say(accepted, FalseAccepts)
	j.say(off, NestOff)
	j.say(r.Spread.over(), SpreadOverPlan)
	j.say(drift, Drifting)
	j.say(r.Normality != nil && r.Normality.P < refutes, NotNormal)
	j.say(len(r.Outliers) > 0, Outlying)
	j.say(r.Used < r.N, Censored)
	j.say(r.Capability != nil && r.Capability.N < 100, CapabilityFew)
	j.say(r.Correction != nil, NestCorrection)
}

// base is the reading of a part of no height above the datum, mm.
func (j *judging) base() float64 { return j.plan.Base() }

// decides is the shift that a trial is judged by: that of the station where parts were
// measured, else that of the readings; nil without either.
func (r *TrialResult) decides() *Shift {
	if r.StationShift != nil {
		return r.StationShift
	}
	return r.Shift
}

// fewHeights is under how many measured parts the parts cannot be taken out of a shift.
const fewHeights = 5

// shifts tells by how much the readings lie off the planned ones, and what of that is the
// station's and what the parts'.
func (j *judging) shifts(r *TrialResult, x []float64, mean float64) {
	allowed := allowedAt(j.plan, j.plan.Force.Setting)
	shift := func(x []float64, off, beside float64, allowed *float64) *Shift {
		if len(x) == 0 {
			return nil
		}
		m, u := meanOf(x, beside)
		return &Shift{N: len(x), Value: m - off, Uncertainty: u, Allowed: allowed}
	}
	if r.Shift = shift(x, r.Nominal, 0, &allowed); r.Shift == nil {
		return
	}
	m := study.Mean(x)
	r.Mean = &m
	station, heights := []float64{}, []float64{}
	for _, row := range j.study.Rows {
		if row.Height == nil {
			continue
		}
		heights = append(heights, *row.Height)
		if *row.Arrival {
			station = append(station, *row.Reading+*row.Height)
		}
	}
	if len(station) < fewHeights {
		return
	}
	known := orElse(j.study.HeightUncertainty, 0)
	r.StationShift = shift(station, j.base(), known, &allowed)
	r.PartsShift = shift(heights, mean, known, nil)
}

// manyHeights is from how many measured parts on their own heights tell of the process.
const manyHeights = 25

// capability tells how the heights fill the drawing: as measured, or as read; nil under two
// of them, or where they do not differ.
func (j *judging) capability(read []float64) *Capability {
	c, x := &Capability{Of: OfHeights}, []float64{}
	for _, row := range j.study.Rows {
		if row.Height != nil {
			x = append(x, *row.Height)
		}
	}
	if len(x) < manyHeights {
		c.Of, x = OfReadings, nil
		for _, r := range read {
			x = append(x, j.base()-r)
		}
	}
	q := &j.plan.Plan.Requirement
	p := study.ProcessPerformance(x, q.HeightLow, q.HeightHigh)
	if p == nil {
		return nil
	}
	m := study.Mean(x)
	c.N, c.Mean, c.SD = len(x), &m, study.SD(x)
	c.Pp, c.PpLimits, c.Ppk, c.PpkLimits = &p.Pp, &p.PpLimits, &p.Ppk, &p.PpkLimits
	return c
}
