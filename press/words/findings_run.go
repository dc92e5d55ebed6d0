package words

import (
	"math"
	"strings"

	"ramplan/press"
)

// Step names a step in a sentence: its number as in the list, and what it is called.
func Step(p *press.Plan, i int) string {
	s := "step " + Fixed(float64(i+1), 0)
	if p == nil || p.Sequence == nil || i < 0 || i >= len(p.Sequence.Steps) {
		return s
	}
	if name := strings.TrimSpace(p.Sequence.Steps[i].Name); name != "" && len([]rune(name)) <= longName {
		return s + " (“" + name + "”)"
	}
	return s + " (" + p.Sequence.Steps[i].Kind + ")"
}

// step is the step that a finding is about: by its figure, or by where it leads.
func (t *told) step() string {
	i := int(t.f("step"))
	if strings.HasPrefix(t.Path, "sequence.steps[") {
		_, i, _ = rowOf(t.Path)
	}
	return Step(t.r.Plan, i)
}

func probeNoFit(*told) string {
	return "A probe tells a loose part from a sound one by the force that an interference fit demands, and this joint has none that is known: do without the probe, or enter the fit."
}

func probeNotPossible(t *told) string {
	if z := t.r.Window.Zone; t.r.Travel.PushEnd == nil || z == nil || z[0] == nil {
		return "The probe needs a push end and a zone start, and the plan has none: mend the window first."
	}
	return "No step of the setting serves as a probe: where a loose part still moves, the loosest sound part does not stall clear of the probe end; a tighter fit, less drag or a ram that scatters less opens it."
}

func probeCannotTell(t *told) string {
	const s = "The probe cannot tell a loose part from a sound one: "
	switch {
	case t.Figures["press"] > 0:
		return s + "its setting of " + t.say.Setting(t.f("setting")) + " is not below the " + t.say.Setting(t.f("press")) + " of the push; set it lower."
	case t.Path == "probe.setting":
		return s + "at " + t.say.Setting(t.f("setting")) + " a weak ram pushes " + t.say.Force(t.f("low")) + ", which does not move even a part without grip as far as the probe end; set it higher, or reduce the drag."
	case t.Figures["approach_end"] != 0:
		end, from := t.pos.both(t.f("end"), t.f("approach_end"))
		return s + "it would end at " + end + ", and the approach ends at " + from + "; end the approach earlier or the probe later."
	}
	limit, latest := t.pos.both(t.f("limit"), t.f("latest"))
	return s + "it lets a part pass up to " + limit + ", and a part without grip that stands past " + latest + " may look good in the push; end the probe earlier."
}

func probeRefusesNominal(t *told) string {
	s := "The probe refuses the nominal part: at " + t.say.Setting(t.f("setting")) + " "
	if _, stalls := t.Figures["reading"]; !stalls {
		return s + "it does not stall in its fit; set the probe lower."
	}
	reading, end := t.pos.both(t.f("reading"), t.f("end"))
	return s + "it stalls at " + reading + ", past where the probe may let it go on (it ends at " + end + "); set the probe lower, or end it later."
}

func partMetInMove(t *told) string {
	position, part := t.pos.both(t.f("position"), t.f("part"))
	return upperFirst(t.step()) + " moves to " + position + ", where a part may stand from " + part + " less " + t.length("doubt") + " on: a move is not force-limited, so end it earlier."
}

func handOverImpossible(t *told) string {
	return upperFirst(t.step()) + " cannot hand over without rest: the next one waits, turns round, goes nowhere, begins past the approach end or is not there, or a pause lies between; it is planned as a stop."
}

func probeRefusesSound(t *told) string {
	return "The probe refuses " + t.say.ppmOver(t.f("ppm"), t.f("limit")) + " of all parts made to the drawing, " + t.say.TargetPPM(t.f("limit")) + " being the target: set it lower, or end it later."
}

func probeOverrun(t *told) string {
	const refused = ", so the probe may then refuse it"
	if math.IsInf(t.f("over"), 1) {
		return "Nothing bounds how far the moving mass carries the loosest sound part past its stall in the probe, because its demand rises no more there" + refused + ": set the probe lower, and push slower."
	}
	fine := t.pos.Fine()
	s := "At " + t.say.Speed(t.f("speed")) + " the moving mass may carry the loosest sound part up to " + fine.Above(t.f("over")) + " past its stall in the probe, and it has " + fine.Length(t.f("room")) + " to the probe end"
	if clear := t.f("clear"); t.f("over") > clear {
		s += ", " + fine.Length(clear) + " of it beyond the uncertainty" + refused
	}
	return s + ": push slower."
}

func handOverSlowed(t *told) string {
	return upperFirst(t.step()) + " can hand over at " + t.say.about(t.f("speed")) + " only, not at " + t.say.about(t.f("set")) + ", because the next one must brake in time: a controller that does not look ahead overruns; try it, or make the next step longer."
}

// about writes a speed that was computed.
func (say Printer) about(v float64) string { return say.Units.Velocity.trimmed(v, 1, "mm/s") }

func relativeAfterPress(t *told) string {
	return upperFirst(t.step()) + " counts from where the ram is, and that differs by " + t.length("spread") + " from part to part after the push: move to a position first, or count from the last target if the controller can."
}

func sequenceNotClosed(t *told) string {
	return "The sequence ends " + t.length("off") + " from home, and the next cycle starts from there: end it with a move home."
}

func notRetracted(t *told) string {
	end, from := t.pos.both(t.f("end"), t.f("approach_end"))
	return "The sequence may end with the ram at " + end + ", at or past the approach end at " + from + ": a hand goes where the ram stands, so retract it."
}

// lamp names a zone signal.
func (t *told) lamp() string {
	if strings.HasPrefix(t.Path, "sequence.station_zone") {
		return "The signal of the station zone"
	}
	return "The zone signal"
}

func lampSecondMeaning(t *told) string {
	s := t.lamp() + " is on in the push and comes on elsewhere too: in " + Step(t.r.Plan, int(t.f("step"))) + " at " + t.say.Seconds(t.f("from"))
	if more := t.f("times") - 1; more == 1 {
		s += " and once more"
	} else if more > 1 {
		s += " and " + Fixed(more, 0) + " times more"
	}
	return s + ". Read it at the end of the push only, or give that step no zone."
}

func zonePassedFast(t *told) string {
	return t.lamp() + " is on for only " + Milliseconds(t.f("time")) + " in " + Step(t.r.Plan, int(t.f("step"))) + ", less than two scans (" + Milliseconds(t.f("limit")) + "): it may never be seen; make the zone longer or the step slower."
}

// Milliseconds writes a short time.
func Milliseconds(s float64) string { return Unit(Trimmed(1000*s, 1), "ms") }

func zonesAlike(t *told) string {
	return "The station zone and the zone of the push differ by less than " + t.length("uncertainty") + " at both ends, as much as a reading is uncertain: nobody can tell the two signals apart."
}

func holdInPress(t *told) string {
	return "The hold is studied in " + Step(t.r.Plan, int(t.f("step"))) + ", which pushes: what becomes of the force then must be tried at the station; a hold input is no safety function."
}

func holdNotMet(t *told) string {
	return "The ram does not pass " + t.at("at") + " inside " + Step(t.r.Plan, int(t.f("step"))) + ", so the hold is not shown: choose a position on its way."
}

func looseFitProbed(t *told) string {
	const rest = "; grip from dirt, shaving or a tilted start looks like a good fit, and grip lost later is not seen."
	if !catchesFit(t.r) {
		return upperFirst(t.say.refusedAtZero(t.r.Plan, t.r)) + ", and fewer of those with a little" + rest
	}
	return "The probe refuses a fit with less than " + t.say.caughtBelow(t.r) + " of effective interference " + t.say.TargetShare(t.f("chance")) + " of the time; one with just that much holds " + t.say.Force(t.f("holding")) + rest
}

func presenceByProbe(t *told) string {
	s := "A missing insert would stop the ram at " + t.at("reading") + " and give both signals: only the probe refuses it"
	if p := t.f("refused"); p < 1-1e-6 {
		s += ", and only " + t.say.Share(p) + " of the time"
	}
	return s + ", so prove it with an empty nest before every shift."
}

func secondStart(*told) string {
	return "After the probe the part is started a second time, and static friction may ask for more than these figures say: try it, with the force to seat looked at."
}
