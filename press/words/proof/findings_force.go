package proof

import (
	"math"
	"strconv"

	"ramplan/press/proving"
	"ramplan/press/words"
)

func curveScaled(t *told) string {
	s := t.loadCell().Fit.Scale
	limits := ""
	if s.Limits != nil {
		limits = " (" + words.Fixed(s.Limits[0], 3) + " to " + words.Fixed(s.Limits[1], 3) + ")"
	}
	way := "weaker"
	if s.Factor > 1 {
		way = "stronger"
	}
	return "The ram is " + words.Unit(words.Fixed(100*math.Abs(s.Factor-1), 1), "%") + " " + way + " than the entered curve: the forces are " +
		words.Fixed(s.Factor, 3) + " times it" + limits + ". Take the measured points over."
}

func curveBent(t *told) string {
	return "The measured forces do not follow the shape of the entered curve, whatever it is multiplied by (" + t.byChance(*t.loadCell().Fit.Bend.P) + "). Take the measured points over."
}

func coldAndWarm(t *told) string {
	d := t.loadCell().ColdWarm
	way := "stronger"
	if d.DifferenceSD < 0 {
		way = "weaker"
	}
	return "Warm pushes are " + words.Fixed(math.Abs(d.DifferenceSD), 1) + " standard deviations of a push " + way + " than cold ones (" + t.byChance(d.P) +
		"): warm the station up before it presses, or let the tolerance hold both."
}

func oddlyScattered(t *told) string {
	o := t.loadCell().OddScatter
	return "At " + t.say.Setting(o.Setting) + " the forces scatter more than at the other settings (" + t.byChance(o.P) + "): look whether the cell sat square, and push there again."
}

// notRising names the first setting at which the mean force is not over that before.
func notRising(t *told) string {
	all := t.loadCell().Settings
	for i := 1; i < len(all); i++ {
		if was, is := all[i-1], all[i]; is.Mean <= was.Mean {
			return "At " + t.say.Setting(is.Setting) + " the mean force is " + t.say.ForceFine(is.Mean) + ", not over the " + t.say.ForceFine(was.Mean) + " at " + t.say.Setting(was.Setting) +
				": such settings are joined to one point of the curve. Push there again, more often."
		}
	}
	return "Measured forces do not rise from setting to setting: such settings are joined to one point of the curve. Push there again, more often."
}

func nothingToAdopt(t *told) string {
	ram := &t.r.Plan.Ram
	return "The study offers no curve: that needs forces at two settings or more, one of them pushed twice, that rise and reach from " +
		t.say.Setting(ram.SettingMin) + " to " + t.say.Setting(ram.SettingMax) + " with the plan's own points beyond them."
}

// speedOff is by which share a push may be faster or slower than planned.
const speedOff = 0.2

func otherSpeed(t *told) string {
	slow := t.r.Plan.Motion.SlowSpeed
	i := firstRow(t.s, func(r *proving.Row) bool { return r.Speed != nil && math.Abs(*r.Speed-slow) > speedOff*slow })
	if i < 0 {
		return "Some rows were not pushed at the plan's " + t.say.Speed(slow) + ": friction changes with speed."
	}
	return "Row " + strconv.Itoa(i+1) + " was pushed at " + t.say.Speed(*t.s.Rows[i].Speed) + ", the plan pushes at " + t.say.Speed(slow) + ": friction changes with speed. Push at the plan's own."
}

func splitAsPlanned(t *told) string {
	x := t.loadCell().Scatter
	s := "These pushes cannot tell scatter that grows with the force from scatter that is the same everywhere: it is shared out as in the plan"
	if x.Tolerance != nil && x.Scatter != nil {
		s += ", ±" + thin + words.Unit(words.Fixed(*x.Tolerance, 2), "%") + " and ±" + thin + t.say.ForceFine(*x.Scatter)
	}
	return s + "."
}

func cellTakenAsPerfect(t *told) string {
	return "No uncertainty of the load cell is given, so it is taken as perfect: enter it from the cell's certificate."
}

// outsideCurve names the setting, or the first of them, of which the curve says nothing.
func outsideCurve(t *told) string {
	points := t.r.Plan.Ram.Curve.Points
	from, to := points[0][0], points[len(points)-1][0]
	setting := t.r.Force.Setting
	if t.s.Setting != nil {
		setting = *t.s.Setting
	}
	if i := firstRow(t.s, func(r *proving.Row) bool { return r.Setting != nil && (*r.Setting < from || *r.Setting > to) }); i >= 0 {
		setting = *t.s.Rows[i].Setting
	}
	return "The plan's curve says nothing of the setting " + t.say.Setting(setting) + ": it holds " + t.say.Setting(from) + " to " + t.say.Setting(to) + ". Push within it, or measure the force."
}

func startupRange(t *told) string {
	x := t.stiffness()
	s := "At the lowest forces the readings do not lie on the line of the others"
	if x.Lowest != nil {
		s = "At the lowest force the readings lie " + t.pos.Length(math.Abs(x.Lowest.Deviation)) + " off the line of the others"
	}
	if x.StartupBelow != nil {
		s += ": play closes there, and what lies under " + t.say.Force(*x.StartupBelow) + " was left out"
	}
	return s + ". Nothing is offered from such a line: push again above the play."
}

func notLinear(t *told) string {
	c := t.stiffness().Curvature
	return "The line is bent: it sags by " + t.pos.Length(math.Abs(c.Sag)) + " over the forces used, so no one stiffness fits. Push again above the play, or nearer to the plan's force."
}

func stiffnessOff(t *told) string {
	k, plan := t.stiffness().Stiffness, &t.r.Plan.Station
	if k == nil {
		return "The readings do not grow with the force, so the station would not give way at all; the plan says " + t.say.Stiffness(plan.Stiffness) + ". Look whether forces and readings belong together."
	}
	found := t.say.Stiffness(k.Value)
	if k.Uncertainty != nil {
		found = t.say.Stiffness(k.Value, *k.Uncertainty)
	}
	return "The station gives way with " + found + ", the plan says " + t.say.Stiffness(plan.Stiffness) + " ±" + thin + words.Unit(words.Trimmed(plan.StiffnessTolerance, 2), "%") + ": more apart than both allow."
}

func forceFromCurve(t *told) string {
	return "No force was measured: the plan's curve stands in for it, with its tolerance of ±" + thin + words.Unit(words.Trimmed(t.r.Plan.Ram.ForceTolerance, 2), "%") + ". Measure with a cell to know more."
}

// nestOff tells it of the three kinds that find it.
func nestOff(t *told) string {
	const mend = " Correct the nest, and find out why it moved."
	switch t.s.Kind {
	case proving.Stiffness:
		a := t.stiffness().Agreement
		if a == nil || a.PositionShift == nil {
			return "The line lies off the planned one by more than the plan allows." + mend
		}
		return "Under " + t.say.Force(t.r.Force.Typical) + " the nest stands " + t.beside(*a.PositionShift) + " the planned place" + t.sure(a.PositionUncertainty) + t.allows(a.PositionAllowed) + mend
	case proving.Trial:
		x := t.trial()
		if s := x.StationShift; s != nil {
			return "With the parts taken out the station reads " + t.beside(s.Value) + " the planned places" + t.sure(s.Uncertainty) + t.allows(s.Allowed) + mend
		}
		if s := x.Shift; s != nil {
			return "The readings lie " + t.beside(s.Value) + " the planned ones on average" + t.sure(s.Uncertainty) + t.allows(s.Allowed) + " Measure parts to tell whether the nest or the parts are off."
		}
		return "The readings lie off the planned ones by more than the plan allows." + mend
	}
	b := t.master().Bias
	return "The master reads " + t.beside(b.Value) + " the planned place on average" + t.sure(b.Uncertainty) + t.allows(&b.Allowed) + mend
}

func (t *told) allows(mm *float64) string {
	if mm == nil {
		return "."
	}
	return "; the plan allows " + t.within(*mm) + "."
}

func spreadOverPlan(t *told) string {
	tell := func(what string, sd *float64, s proving.Spread, mend string) string {
		return what + " scatter by " + t.pos.Length(*sd) + ", one standard deviation; the plan counts on " + t.pos.Length(s.PlannedSD) + " (" + t.byChance(*s.P) + "): " + mend
	}
	switch t.s.Kind {
	case proving.Restart:
		x := t.restart()
		return tell("The means of the starts", x.SD, x.Spread, "mend what a new start moves, or enter what the station keeps.")
	case proving.Trial:
		x := t.trial()
		return tell("The readings", x.SD, x.Spread, "the parts or the station differ more than the plan says. Measure parts to tell which.")
	}
	x := t.master()
	return tell("The readings", x.SD, x.Spread, "mend the station, or enter what it keeps.")
}
