package proof

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// CheckSaid is what came out of a check, with the figures that decided it.
func (say Words) CheckSaid(r *press.Result, s *proving.Study, j *proving.Judged, c proving.Check) string {
	t := say.about(r, s, j)
	if c.Name == proving.CheckDrift {
		return t.driftSaid(c)
	}
	if c.Name == proving.CheckRange && (s.Kind == proving.Master || s.Kind == proving.Restart || j.Result == nil) {
		return outsideCurve(t)
	}
	switch s.Kind {
	case proving.LoadCell:
		return t.loadCellSaid(c)
	case proving.Stiffness:
		return t.stiffnessSaid(c)
	case proving.Master:
		return t.masterSaid(c)
	case proving.Restart:
		return t.restartSaid(c)
	case proving.Trial:
		return t.trialSaid(c)
	case proving.Samples:
		return t.samplesSaid(c)
	}
	return ""
}

// notKnown is said where the figures of a check could not be computed.
const notKnown = "Too little to say."

// driftSaid tells of both tests, or why neither was made.
func (t *told) driftSaid(c proving.Check) string {
	if c.Outcome != proving.Pass {
		return drifting(t)
	}
	if t.s.Kind == proving.LoadCell {
		if d := t.loadCell().Drift; d != nil {
			return words.Fixed(d.ChangeSD, 1) + " standard deviations from the first push to the last: no more than chance makes."
		}
		return "Too few pushes to look for drift; none is held against the station."
	}
	if _, trend, serial := t.series(); trend == nil && serial == nil {
		return "Too few to look for drift; none is held against the station."
	}
	return "No more than chance makes."
}

func (t *told) loadCellSaid(c proving.Check) string {
	x := t.loadCell()
	switch c.Name {
	case proving.CheckSize:
		return strconv.Itoa(x.N) + " pushes at " + strconv.Itoa(len(x.Settings)) + " settings."
	case proving.CheckRange:
		if len(x.Settings) == 0 {
			return notKnown
		}
		return "Pushed from " + t.say.Setting(x.Settings[0].Setting) + " to " + t.say.Setting(x.Settings[len(x.Settings)-1].Setting) + "; the plan's setting is " + t.say.Setting(t.r.Force.Setting) + "."
	case proving.CheckCalibration:
		if t.s.CalibratedAt == "" {
			return "The day of its calibration is not given."
		}
		days := 365.0
		if t.s.CalibrationDays != nil {
			days = *t.s.CalibrationDays
		}
		return "Calibrated on " + t.s.CalibratedAt + " for " + words.Trimmed(days, 0) + " days, used on " + dayOf(t.s.TakenAt) + "."
	case proving.CheckBand:
		return t.bandSaid(x)
	case proving.CheckScatter:
		if x.Scatter.P == nil {
			return notKnown
		}
		s := "They scatter"
		if x.Scatter.Factor != nil {
			s += " " + words.Fixed(*x.Scatter.Factor, 2) + " times as much as planned"
			if l := x.Scatter.FactorLimits; l != nil {
				s += " (" + words.Fixed(l[0], 2) + " to " + words.Fixed(l[1], 2) + ")"
			}
		} else if *x.Scatter.P < 0.5 {
			s += ", and the plan says that they do not"
		} else {
			s += " no more than the plan says, which is not at all"
		}
		return s + "."
	case proving.CheckForce:
		at := x.AtSetting
		if at == nil || at.Predict == nil {
			return notKnown
		}
		return "At " + t.say.Setting(at.Setting) + " one push gives " + t.say.Force(at.Force) + ", " + t.say.Force(at.Predict[0]) + " to " + t.say.Force(at.Predict[1]) + "; " +
			t.say.Force(at.Need) + " are needed and " + t.say.Force(at.Cap) + " allowed."
	}
	return ""
}

// bandSaid names the settings at which one further push may leave the band.
func (t *told) bandSaid(x *proving.LoadCellResult) string {
	var outside, open []string
	for _, s := range x.Settings {
		switch {
		case s.Place == nil || *s.Place == proving.Undecided:
			open = append(open, t.say.Setting(s.Setting))
		case *s.Place == proving.Outside:
			outside = append(outside, t.say.Setting(s.Setting))
		}
	}
	switch {
	case len(outside) > 0:
		return "Outside the plan's band at " + strings.Join(outside, ", ") + "."
	case len(open) > 0:
		return "Inside the plan's band, but not for certain at " + strings.Join(open, ", ") + "."
	}
	return "Inside the plan's band at all " + strconv.Itoa(len(x.Settings)) + " settings."
}

func (t *told) stiffnessSaid(c proving.Check) string {
	x := t.stiffness()
	switch c.Name {
	case proving.CheckSize:
		return strconv.Itoa(x.Used) + " of " + strconv.Itoa(x.N) + " pushes used, at " + strconv.Itoa(x.Levels) + " levels of force."
	case proving.CheckRange:
		if low, high, ok := t.forces(); ok {
			return "Pushed with " + t.say.Force(low) + " to " + t.say.Force(high) + "; the plan's force is " + t.say.Force(t.r.Force.Typical) + "."
		}
		return "The plan's force is " + t.say.Force(t.r.Force.Typical) + "."
	case proving.CheckLinear:
		switch {
		case x.StartupBelow != nil:
			return startupRange(t)
		case c.Outcome != proving.Pass && x.Curvature != nil:
			return notLinear(t)
		case x.Curvature == nil:
			return "Too few pushes to tell a bent line from a straight one."
		}
		return "A bent line would sag by " + t.pos.Length(abs(x.Curvature.Sag)) + ": no more than chance makes."
	case proving.CheckStiffness:
		if x.Stiffness == nil || x.Agreement == nil || x.Agreement.StiffnessEN == nil {
			return notKnown
		}
		found := t.say.Stiffness(x.Stiffness.Value)
		if u := x.Stiffness.Uncertainty; u != nil {
			found = t.say.Stiffness(x.Stiffness.Value, *u)
		}
		plan := &t.r.Plan.Station
		return found + " found, " + t.say.Stiffness(plan.Stiffness) + " ±" + thin + words.Unit(words.Trimmed(plan.StiffnessTolerance, 2), "%") + " planned: " + t.together(*x.Agreement.StiffnessEN)
	case proving.CheckPosition:
		a := x.Agreement
		if a == nil || a.PositionShift == nil || a.PositionEN == nil {
			return notKnown
		}
		return "It stands " + t.beside(*a.PositionShift) + " the planned place" + t.sure(a.PositionUncertainty) + ": " + t.together(*a.PositionEN)
	case proving.CheckSharp:
		if x.Agreement == nil || x.Agreement.PositionUncertainty == nil {
			return notKnown
		}
		return "Known to " + t.within(*x.Agreement.PositionUncertainty) + "; the plan counts on " + t.within(t.r.MasterWithin()) + "."
	}
	return ""
}

// together says what an E_n number means.
func (t *told) together(en float64) string {
	return words.Fixed(abs(en), 2) + " of what both together allow."
}

// forces are the least and the greatest force of a study whose rows have them.
func (t *told) forces() (low, high float64, ok bool) {
	for _, row := range t.s.Rows {
		f := row.Force
		if f == nil {
			return 0, 0, false
		}
		if !ok {
			low, high, ok = *f, *f, true
		}
		low, high = min(low, *f), max(high, *f)
	}
	return low, high, ok
}

func abs(x float64) float64 { return max(x, -x) }

func (t *told) masterSaid(c proving.Check) string {
	x := t.master()
	switch c.Name {
	case proving.CheckSize:
		return strconv.Itoa(x.N) + several(x.N, " push.", " pushes.")
	case proving.CheckBias:
		if x.Bias.Uncertainty == nil {
			return notKnown
		}
		return "It reads " + t.beside(x.Bias.Value) + " the predicted " + t.pos.At(x.Predicted) + t.sure(x.Bias.Uncertainty) + t.allows(&x.Bias.Allowed)
	case proving.CheckSpread:
		return t.spreadSaid(x.SD, x.Spread)
	}
	return ""
}

// spreadSaid holds a standard deviation against the planned one.
func (t *told) spreadSaid(sd *float64, s proving.Spread) string {
	if sd == nil || s.P == nil {
		return notKnown
	}
	if *sd == 0 {
		return "All the same: the step of the reading hides how they scatter; " + t.pos.Length(s.PlannedSD) + " is planned, one standard deviation."
	}
	out := t.pos.Length(*sd) + " found, " + t.pos.Length(s.PlannedSD) + " planned, one standard deviation"
	if *s.P < 0.01 {
		return out + "; " + t.byChance(*s.P) + "."
	}
	return out + ": no more than chance makes."
}

func (t *told) restartSaid(c proving.Check) string {
	x := t.restart()
	switch c.Name {
	case proving.CheckSize:
		least := 0
		for i, s := range x.Starts {
			if i == 0 || s.N < least {
				least = s.N
			}
		}
		return strconv.Itoa(len(x.Starts)) + several(len(x.Starts), " start", " starts") + ", " + strconv.Itoa(least) + several(least, " push", " pushes") + " at least after each."
	case proving.CheckSpread:
		return t.spreadSaid(x.SD, x.Spread)
	}
	return ""
}

func (t *told) trialSaid(c proving.Check) string {
	x := t.trial()
	switch c.Name {
	case proving.CheckSize:
		return strconv.Itoa(x.N) + several(x.N, " part, ", " parts, ") + strconv.Itoa(x.Used) + " with arrival."
	case proving.CheckLamps:
		switch {
		case c.Outcome == proving.Open:
			return "The plan has no window to hold the lamps against."
		case len(x.LampMismatch) == 0:
			return "They follow the reading in all " + strconv.Itoa(x.N) + several(x.N, " row.", " rows.")
		}
		return rowsNamed(x.LampMismatch) + several(len(x.LampMismatch), " differs.", " differ.")
	case proving.CheckRejects:
		if x.Rejects.Predicted == nil {
			return "The plan predicts no share of refused parts."
		}
		return t.ofAll(x.Rejects, "parts") + " refused, " + t.say.Rarely(*x.Rejects.Predicted) + " predicted."
	case proving.CheckShift:
		s := x.StationShift
		from := "With the parts taken out they lie "
		if s == nil {
			s, from = x.Shift, "They lie "
		}
		if s == nil || s.Uncertainty == nil {
			return notKnown
		}
		return from + t.beside(s.Value) + " the planned places" + t.sure(s.Uncertainty) + t.allows(s.Allowed)
	case proving.CheckSpread:
		return t.spreadSaid(x.SD, x.Spread)
	case proving.CheckFalseAccept:
		if x.Truth == nil || x.Truth.FalseAccept.Predicted == nil || x.Truth.N == 0 {
			return "No part was measured so finely that it could be counted."
		}
		return t.ofAll(x.Truth.FalseAccept, "measured parts") + " were wrong and accepted, " + t.say.Rarely(*x.Truth.FalseAccept.Predicted) + " predicted."
	}
	return ""
}

func (t *told) samplesSaid(c proving.Check) string {
	x := t.samples()
	pushes := func(n int) string { return strconv.Itoa(n) + several(n, " push.", " pushes.") }
	switch c.Name {
	case proving.CheckLamps:
		judged, right := 0, 0
		for _, row := range x.Rows {
			if row.Lamps != proving.Open {
				judged++
			}
			if row.Lamps == proving.Pass {
				right++
			}
		}
		return strconv.Itoa(right) + " of " + strconv.Itoa(judged) + " that prove something gave the predicted lamps."
	case proving.CheckReadings:
		if c.Outcome == proving.Open {
			return "No reading was written down."
		}
		n, right := 0, 0
		for _, row := range x.Rows {
			if row.Reading == nil {
				continue
			}
			if n++; *row.Reading == proving.Pass {
				right++
			}
		}
		s := strconv.Itoa(right) + " of " + strconv.Itoa(n) + " read where predicted"
		if o := x.Offset; o != nil {
			return s + "; on average " + t.beside(o.Value) + t.allows(&o.Allowed)
		}
		return s + "."
	case proving.CheckLong:
		return pushes(x.Roles.Long)
	case proving.CheckShort:
		return pushes(x.Roles.Short)
	case proving.CheckGood:
		return pushes(x.Roles.Good)
	case proving.CheckEmpty:
		return pushes(x.Roles.Empty)
	}
	return ""
}
