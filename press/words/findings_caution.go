package words

import (
	"slices"
	"strings"

	"ramplan/press"
)

func earlyContactWorstCase(t *told, f press.EarlyFigures) string {
	end, earliest := t.pos.both(f.ApproachEnd, f.Earliest)
	return "In the worst case a part is met at " + earliest + " or, with the errors of the position, up to " + t.pos.Length(f.Doubt) + " before; the approach ends at " + end + " (" + t.say.PPM(f.PPM) +
		" of the parts, within the target): end the approach earlier to rule it out."
}

func settingOffStep(t *told, f press.OffStepFigures) string {
	return "The setting of " + Unit(Exact(f.Value), "%") + " is no multiple of the step of " + Unit(Exact(f.Step), "%") + ": choose one that can be set."
}

func gripMayVanish(t *told, f press.GripFigures) string {
	s := "The loosest fit is left with " + t.say.Microns(f.Effective) + " of interference at the worst, below 0: it may hold nothing; take a tighter fit or smoother surfaces."
	if j := t.r.Joint; j != nil && j.Interference != nil && j.Interference[2] <= 0 {
		return "Even the tightest parts fit with clearance (" + t.say.Microns(j.Interference[2]) + " of interference): nothing is pressed and nothing holds; check the fit."
	} else if j != nil && j.Effective != nil && j.Effective[1] <= 0 {
		s = "At the middle of the tolerances nothing is left of the interference, so about half of the joints or more hold nothing; take a tighter fit, or pair the parts."
	}
	if over := func(f press.Finding) bool { return f.Code == press.OverYield }; slices.ContainsFunc(t.r.Findings, over) {
		return s[:strings.Index(s, "; ")] + "; a tighter fit would yield and a looser one hold even less, so narrow both tolerances or pair the parts."
	}
	return s
}

func partlyEngaged(t *told, f press.EngagementFigures) string {
	engaged, length := t.pos.both(f.Has, f.Engagement)
	return "Seated, the joint is engaged over " + engaged + " of " + length + ": shorten the pilot or correct the engaged length."
}

// ambiguousTable names the pair that cannot be trusted, and the change that
// makes the table unambiguous: zone start and push end between the limits of the
// drawing and the readings that are good for certain, the push end in the zone.
func ambiguousTable(t *told, f press.AmbiguousFigures) string {
	s := "The signals do not tell the parts apart"
	if v := t.r.Verdict; v != nil {
		s += doubt(v.Table)
	}
	if f.Stops != nil {
		what := "without an insert the ram is stopped"
		if f.BareNest {
			what = "the empty nest itself stops the ram"
		}
		s += ", and " + what + " at " + t.pos.At(*f.Stops) + " (" + Pair{true, f.StopsInZone}.String() + ")"
	}
	var mend []string
	move := func(off bool, what string, at float64, to string) {
		if off {
			mend = append(mend, "the "+what+" from "+t.pos.At(at)+" to "+to)
		}
	}
	move(f.ZoneStartOff, "zone start", f.ZoneStart, t.pos.At(f.Low))
	move(f.PushEndOff, "push end", f.PushEnd, t.pos.At(f.High))
	if t.r.Plan == nil || t.r.Plan.Given("window.zone_end") { // a proposed one follows the push end
		move(f.ZoneEndOff, "zone end", f.ZoneEnd, "beyond the push end")
	}
	if len(mend) == 0 {
		return s + ": find a missing insert by another check."
	}
	return s + ": move " + and(mend) + "."
}

func insertNotMarked(*told) string {
	return "No row of the parts is marked as insert, so where the ram stops without one is not looked at: mark every row that goes away with the insert, or name another check that finds a missing one."
}

func overlapNarrow(t *told, f press.NarrowFigures) string {
	width, limit := t.pos.both(f.Width, f.Limit)
	s := "The accepted readings are " + width + " wide, less than " + limit + ", three times the ±" + t.pos.Length(f.Limit/3) +
		" by which a reading is uncertain, so even a centred part is refused now and then: "
	if t.byHand() {
		return s + "move the zone and the push end apart, as far as the drawing allows, or make the reading surer."
	}
	return s + "make the reading surer" + t.most(f.Of) + " or widen the requirement."
}

func conformingShareLow(t *told, f press.ShareFigures) string {
	share, limit := shares(f.Share, f.Limit)
	mend := "narrow the parts or widen the requirement"
	switch {
	case strings.HasPrefix(t.Path, "parts["):
		mend = "narrow the parts, " + t.row() + " first, which spreads most, or widen the requirement"
	case t.Path != "parts":
		mend = "bring the mean of the parts to the middle of the requirement"
	}
	return "Only " + share + " of the parts come out inside the drawing, " + limit + " being the target: " + mend + "; no signal can mend that."
}

func falseAccept(t *told, f press.PPMFigures) string {
	return t.say.ppmOver(f.PPM, f.Limit) + " of all parts have a wrong height and are accepted, " + t.say.TargetPPM(f.Limit) + " being the target: " + t.guard("raise the guard factor", "further inside the drawing") + t.surer()
}

// guard offers the guard factor as a cure where it moves something, else what was set
// by hand; nothing where neither would.
func (t *told) guard(factor, hand string) string {
	switch {
	case t.Path == "window.guard_factor":
		return factor + ", or "
	case t.Path == "window.rule":
		return "the rule of the targets has found none better inside the drawing; "
	case t.Path == "window.process_sd":
		return "choose another process width, or "
	case t.byHand():
		return "move what is set by hand " + hand + " (the guard factor does not move it), or "
	}
	return ""
}

// surer is the cure that is left: what was found to be one, else a surer reading.
func (t *told) surer() string {
	if mends := t.mends(); mends != "" && t.Path == "window.rule" {
		return mends + "."
	}
	return "make the reading surer."
}

// blocksReadings tells whether a finding is a blocker that has a say in which parts
// are refused: mending it changes how many good ones are.
func blocksReadings(f press.Finding) bool {
	switch f.Code {
	case press.NoSetting, press.SettingNotFeasible, press.NoAcceptance, press.NeverGood, press.NominalRejected, press.EarlyContactBlocked, press.NothingStopsIt,
		press.TravelNegative, press.TouchWithTravel, press.EngagementTooLong, press.OverlapWider:
		return f.Severity == press.Blocker
	}
	return false
}

func falseReject(t *told, f press.PPMFigures) string {
	s := t.say.ppmOver(f.PPM, f.Limit) + " of all parts are good and are refused, " + t.say.TargetPPM(f.Limit) + " being the target: "
	if slices.ContainsFunc(t.r.Findings, blocksReadings) {
		return s + "mend the blockers first."
	}
	return s + t.guard("lower the guard factor", "further out, as far as the drawing allows") + t.surer()
}

func heatingOver(t *told, f press.LimitFigures) string {
	rms, limit := over(f.Value, f.Limit, 1, "%")
	mend := "hold for less time, or wait longer between parts"
	if t.Path != "motion.hold_time" { // nothing is held
		mend = "wait longer between parts"
	}
	if c := &t.r.Cycle; c.Press > c.Hold {
		mend = "the slow push lasts " + t.say.Seconds(c.Press) + ", so end the approach later or, as far as the blow allows, push faster; or " + mend
	}
	return "The cycle heats the motor like a steady setting of " + rms + ", over the " + limit + " that may be held without end (an estimate): " + mend + "."
}

func zoneTooShort(t *told, f press.TimeFigures) string {
	on, limit := over(f.Time, f.Limit, 3, "s")
	return "A ram that runs through the zone keeps its signal on for " + on + ", less than the " + limit + " of two scans, so it may be missed: widen the zone, push more slowly, or scan more often."
}

func impactContact(t *told, f press.BlowFigures) string {
	force, limit, _ := t.say.forces(f.Force, f.Limit)
	return "The moving mass may strike with " + t.say.atLeastBare(t.r, force) + " at first contact, over the " + limit + " that part and tool may bear: " + t.say.slower(f.Within) + "." + t.say.RotorMissing(t.r)
}

func impactSeat(t *told, f press.SeatBlowFigures) string {
	force, limit, _ := t.say.forces(f.Force, f.Limit)
	mend := t.say.slower(f.Within) + t.say.seatStrongSpeed(f.WithinStrong)
	if t.Path != "motion.slow_speed" {
		mend = "the push alone is over it, so set it lower"
	}
	return "With the blow of the moving mass the force at the seat may reach " + t.say.atLeastBare(t.r, force) + ", with a strong ram " + t.say.Force(f.Strong) + ", over the " + limit + " that part and tool may bear: " + mend + "." + t.say.RotorMissing(t.r)
}

func noForceAsked(*told) string {
	return "No force is asked for (the need is not above 0), so arrival proves nothing about the seat: enter the least seating force."
}

// and joins the members of a list.
func and(list []string) string {
	if len(list) < 3 {
		return strings.Join(list, " and ")
	}
	return strings.Join(list[:len(list)-1], ", ") + " and " + list[len(list)-1]
}

func positionOffStep(t *told, f press.OffStepFigures) string {
	what := "position"
	if f, ok := press.FieldAt(t.Path); ok {
		what = f.Label
	}
	return what + " is set by hand to " + Unit(Exact(f.Value), "mm") + ", no multiple of the position step of " + Unit(Exact(f.Step), "mm") +
		": the controller cannot be given it, so round it, or correct the step."
}

func travelMayVanish(t *told, f press.VanishFigures) string {
	travel, worst := t.pos.both(f.Travel, f.Worst)
	return "The press-in travel is " + travel + " and may fall short by " + worst + ": with some parts nothing is left to press in, so narrow the rows, " + t.row() + " first, or lengthen the travel."
}

func deflectionUntaught(t *told, f press.DeflectionFigures) string {
	return "Under force the ram reads " + t.pos.Length(f.Deflection) + " deeper than on a nest that was only touched, more than the \u00b1" + t.pos.Length(f.Uncertainty) +
		" by which a reading is uncertain, and the plan takes that bend for a straight line: teach the nest through a master at the production force, about " +
		t.say.Force(f.Force) + ", and enter that force."
}
