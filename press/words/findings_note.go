package words

import (
	"math"

	"ramplan/press"
)

func presenceByOtherCheck(t *told, f press.ReadingFigures) string {
	if none := t.say.noCheck(t.r.Plan); none != "" {
		return "A missing insert passes as good: it stops the ram at " + t.pos.At(f.Reading) + " and gives both signals, and " + none + ". Name a real check, or leave the field empty: the plan is then not ready."
	}
	return "The other check named in the plan is the only barrier against a missing insert: that stops the ram at " + t.pos.At(f.Reading) + " and gives both signals, so prove the check before every shift."
}

// impactEarly says what the blow in the approach is over, and from which speed down it is
// not. That speed is of the blow alone, and rounded down.
func impactEarly(t *told, f press.EarlyBlowFigures) string {
	force, limit, _ := t.say.forces(f.Force, f.Limit)
	over := "the " + limit + " that part and tool may bear"
	if set := t.r.Force.Typical; f.Force > set {
		over += " and the set force of " + t.say.Force(set)
	}
	s := "The approach is not force-limited: at " + t.say.Speed(f.Speed) + " it strikes a part in its way with at least " + force + ", over " + over + ", and the motor pushes on behind it"
	if within := down(f.Within); within >= f.Slow {
		return s + ". Up to " + t.say.Speed(within) + " the blow alone may be borne: approach no faster, or end it earlier." + t.say.RotorMissing(t.r)
	}
	return s + "; even at the slow speed the blow alone is too much, so end the approach earlier." + t.say.RotorMissing(t.r)
}

// down rounds a speed down to three significant digits, at most to 0.1 mm/s.
func down(v float64) float64 {
	step := math.Pow10(max(-1, int(math.Floor(math.Log10(v)))-2))
	return math.Floor(v/step+1e-9) * step
}

func clampedHot(t *told, f press.LimitFigures) string {
	setting, limit := over(f.Value, f.Limit, 0, "%")
	return "The setting of " + setting + " is over the " + limit + " that the motor may hold without end: never leave a part clamped; limit the time and retract."
}

func takenAsPerfect(t *told) string {
	if t.Path == settlePath {
		return "No settle time was given: every watch time here is of the " + MotionAlone + " (usually 0.04 to 2\u202fs in all)."
	}
	what := t.Path
	if f, ok := press.FieldAt(t.Path); ok {
		what = f.Label
	}
	return what + " was not given and is taken as perfect (0): the station will do worse than these figures; enter what was measured, or 0 if it is known to be none."
}

func freeTravel(t *told, f press.PilotFigures) string {
	return "The insert travels " + t.pos.Length(f.Pilot) + ", more than " + Unit("1", "mm") + ", before the fit takes hold: nothing guides it there, so see that the nest or the tool does."
}

func looseFitUnseen(t *told, f press.UnseenFigures) string {
	s := "A loose fit comes to rest in the right place, and these two signals never see it"
	s += ": sort the parts before pressing, or pull-test samples"
	if f.Highest != nil {
		return s + ". " + t.say.ProbeMay(*f.Highest)
	}
	return s + "."
}

func smoothingLarge(t *told, f press.SmoothingFigures) string {
	if f.Mean <= 0 {
		return "The mean interference is " + t.say.Microns(f.Mean) + ": this is no interference fit on average, so the forces hang on single parts; check the fit."
	}
	return "Smoothing may take " + t.say.Microns(f.Smoothing) + " off a mean interference of " + t.say.Microns(f.Mean) +
		", more than a fifth: the forces then hang on the roughness, so prove them with a load cell."
}

func pressInSpeed(t *told, f press.LimitFigures) string {
	return "The slow speed of " + t.say.Speed(f.Value) + " is over the " + t.say.Speed(f.Limit) + " for which friction values usually hold: expect another press-in force, and prove it with a load cell."
}

func warmUpThin(t *told, f press.WarmUpFigures) string {
	given, growth := t.pos.both(f.Given, f.Growth)
	return "The reference uncertainty of " + given + " is less than the " + growth +
		" by which the steel between home and nest grows when it warms up by 10\u202fK: warm the station up before the first part, or enter more."
}
