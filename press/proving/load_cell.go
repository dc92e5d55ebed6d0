package proving

import (
	"math"
	"time"
)

// forceSlack is what comparisons of forces forgive, N.
const forceSlack = 0.1

// loadCell judges forces that a cell measured at the tool: whether they are what the plan
// says at each setting, by what the entered curve is to be multiplied and whether it is bent.
func (j *judging) loadCell() {
	f := groupForces(j.plan, j.study)
	r := &LoadCellResult{
		N: len(j.study.Rows), Scatter: f.scatter(), Fit: f.fit(), Drift: f.drift(), ColdWarm: f.coldWarm(),
		OddScatter: f.oddScatter(), Outliers: f.outliers(),
	}
	for _, at := range f.settings {
		r.Settings = append(r.Settings, f.predict(at))
	}
	points, pooled := f.points()
	j.adopt = f.adopt(points, &r.Scatter)
	if j.adopt != nil {
		r.AtSetting = f.atSetting(points)
	}
	j.result = r

	j.check(CheckSize, passes(len(f.settings) >= 3 && f.fewest() >= 3 && r.Scatter.DF >= 10, Open))
	j.check(CheckRange, passes(f.spans(j.plan.Force.Setting) && f.allKnown(), Open))
	j.check(CheckCalibration, passes(calibrated(j.study), Open))
	j.check(CheckBand, bandOf(r.Settings))
	j.check(CheckScatter, likely(r.Scatter.P))
	j.check(CheckDrift, passes(r.Drift == nil || r.Drift.P >= refutes, Open))
	j.check(CheckForce, forceFits(r.AtSetting))

	j.say(r.Fit.Scale != nil && refuted(r.Fit.Scale.P), CurveScaled)
	j.say(r.Fit.Bend != nil && refuted(r.Fit.Bend.P), CurveBent)
	j.say(r.Drift != nil && r.Drift.P < refutes, Drifting)
	j.say(r.ColdWarm != nil && r.ColdWarm.P < refutes, ColdAndWarm)
	j.say(r.OddScatter != nil && r.OddScatter.P < refutes, OddlyScattered)
	j.say(pooled, NotRising)
	j.say(j.adopt == nil, NothingToAdopt)
	j.say(otherSpeed(j.study, j.plan.Plan.Motion.SlowSpeed), OtherSpeed)
	j.say(len(r.Outliers) > 0, Outlying)
	j.say(r.Scatter.Split == SplitPlanned, SplitAsPlanned)
	j.say(j.study.CellUncertainty == nil, CellTakenAsPerfect)
}

// predict gives the mean at a setting, where one further push there is expected, and how
// that lies to what the plan expects.
func (f *forces) predict(at forcesAt) SettingForces {
	s := SettingForces{Setting: at.setting, N: len(at.forces), Mean: at.mean, SD: at.sd}
	n := float64(len(at.forces))
	if f.split != nil {
		s.Predict = f.around(at.mean, f.sigma(at), 1+1/n)
	}
	if !at.known {
		return s
	}
	band := forceAt(f.plan, at.setting)
	s.Plan = &band
	if s.Predict == nil {
		return s
	}
	place := Undecided
	mean := f.around(at.mean, f.sigma(at), 1/n)
	switch {
	case s.Predict[0] >= band[0]-forceSlack && s.Predict[1] <= band[2]+forceSlack:
		place = Inside
	case mean[0] > band[2]+forceSlack || mean[1] < band[0]-forceSlack:
		place = Outside
	}
	s.Place = &place
	return s
}

// around is the interval of a force whose variance is so many times that of one push, with
// the doubt about the cell.
func (f *forces) around(force, sigma, times float64) *Pair {
	half := math.Hypot(f.reach*sigma*math.Sqrt(times), f.cell*force)
	return &Pair{force - half, force + half}
}

// bandOf tells whether all predictions lie inside the plan's band.
func bandOf(settings []SettingForces) Answer {
	a := Pass
	for _, s := range settings {
		switch {
		case s.Place != nil && *s.Place == Outside:
			return Fail
		case s.Place == nil || *s.Place != Inside:
			a = Open
		}
	}
	return a
}

// forceFits tells whether the force at the plan's own setting seats every part and
// overloads none.
func forceFits(at *AtSetting) Answer {
	if at == nil {
		return Open
	}
	within := func(low, high float64) bool { return low >= at.Need-forceSlack && high <= at.Cap+forceSlack }
	switch {
	case !within(at.Force, at.Force):
		return Fail
	case at.Predict != nil && within(at.Predict[0], at.Predict[1]):
		return Pass
	}
	return Open
}

// calibrated tells whether the cell was within its calibration on the day of the study.
func calibrated(s *Study) bool {
	if s.CalibratedAt == "" {
		return false
	}
	from, taken := theDay(s.CalibratedAt), theDay(s.TakenAt)
	return !taken.Before(from) && taken.Sub(from) <= time.Duration(orElse(s.CalibrationDays, 365)*24)*time.Hour
}

// otherSpeed tells whether a push went at a speed that is more than a fifth off the plan's.
func otherSpeed(s *Study, slow float64) bool {
	for _, r := range s.Rows {
		if r.Speed != nil && math.Abs(*r.Speed-slow) > 0.2*slow+slack {
			return true
		}
	}
	return false
}

// likely answers whether a test refutes the plan.
func likely(p *float64) Answer {
	if p == nil {
		return Open
	}
	return passes(*p >= refutes, Fail)
}

// refuted tells whether a test refutes what it was asked for.
func refuted(p *float64) bool { return p != nil && *p < refutes }
