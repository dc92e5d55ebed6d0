package words

import (
	"math"
	"strconv"
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

// step is the step that a finding leads to.
func (t *told) step() string {
	_, i, _ := rowOf(t.Path)
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

func probeCannotTell(t *told, f press.CannotTellFigures) string {
	const s = "The probe cannot tell a loose part from a sound one: "
	switch f.Why {
	case press.ProbeTooStrong:
		return s + "its setting of " + t.say.Setting(f.Setting) + " is not below the " + t.say.Setting(f.Press) + " of the push; set it lower."
	case press.ProbeTooWeak:
		return s + "at " + t.say.Setting(f.Setting) + " a weak ram pushes " + t.say.Force(f.Low) + ", which does not move even a part without grip as far as the probe end; set it higher, or reduce the drag."
	case press.ProbeEndsEarly:
		end, from := t.pos.both(f.End, f.ApproachEnd)
		return s + "it would end at " + end + ", and the approach ends at " + from + "; end the approach earlier or the probe later."
	}
	limit, latest := t.pos.both(f.Limit, f.Latest)
	return s + "it lets a part pass up to " + limit + ", and a part without grip that stands past " + latest + " may look good in the push; end the probe earlier."
}

func probeRefusesNominal(t *told, f press.RefusesNominalFigures) string {
	s := "The probe refuses the nominal part: at " + t.say.Setting(f.Setting) + " "
	if f.Reading == nil {
		return s + "it does not stall in its fit; set the probe lower."
	}
	reading, end := t.pos.both(*f.Reading, f.End)
	return s + "it stalls at " + reading + ", past where the probe may let it go on (it ends at " + end + "); set the probe lower, or end it later."
}

func partMetInMove(t *told, f press.MetFigures) string {
	position, part := t.pos.both(f.Position, f.Part)
	return upperFirst(t.step()) + " moves to " + position + ", where a part may stand from " + part + " less " + t.pos.Length(f.Doubt) + " on: a move is not force-limited, so end it earlier."
}

func handOverImpossible(t *told) string {
	return upperFirst(t.step()) + " cannot hand over without rest: the next one waits, turns round, goes nowhere, begins past the approach end or is not there, or a pause lies between; it is planned as a stop."
}

func probeRefusesSound(t *told, f press.PPMFigures) string {
	return "The probe refuses " + t.say.ppmOver(f.PPM, f.Limit) + " of all parts made to the drawing, " + t.say.TargetPPM(f.Limit) + " being the target: set it lower, or end it later."
}

func probeOverrun(t *told, f press.OverrunFigures) string {
	const refused = ", so the probe may then refuse it"
	if math.IsInf(f.Over, 1) {
		return "Nothing bounds how far the moving mass carries the loosest sound part past its stall in the probe, because its demand rises no more there" + refused + ": set the probe lower, and push slower."
	}
	fine := t.pos.Fine()
	s := "At " + t.say.Speed(f.Speed) + " the moving mass may carry the loosest sound part up to " + fine.Above(f.Over) + " past its stall in the probe, and it has " + fine.Length(f.Room) + " to the probe end"
	if clear := f.Clear; f.Over > clear {
		s += ", " + fine.Length(clear) + " of it beyond the uncertainty" + refused
	}
	return s + ": push slower."
}

func handOverSlowed(t *told, f press.SlowedFigures) string {
	return upperFirst(t.step()) + " can hand over at " + t.say.about(f.Speed) + " only, not at " + t.say.about(f.Set) + ", because the next one must brake in time: a controller that does not look ahead overruns; try it, or make the next step longer."
}

// about writes a speed that was computed.
func (say Printer) about(v float64) string { return say.Units.Velocity.trimmed(v, 1, "mm/s") }

func relativeAfterPress(t *told, f press.SpreadFigures) string {
	return upperFirst(t.step()) + " counts from where the ram is, and that differs by " + t.pos.Length(f.Spread) + " from part to part after the push: move to a position first, or count from the last target if the controller can."
}

func sequenceNotClosed(t *told, f press.OffFigures) string {
	return "The sequence ends " + t.pos.Length(f.Off) + " from home, and the next cycle starts from there: end it with a move home."
}

func notRetracted(t *told, f press.EndFigures) string {
	end, from := t.pos.both(f.End, f.ApproachEnd)
	return "The sequence may end with the ram at " + end + ", at or past the approach end at " + from + ": a hand goes where the ram stands, so retract it."
}

// lamp names a zone signal.
func (t *told) lamp() string {
	if strings.HasPrefix(t.Path, "sequence.station_zone") {
		return "The signal of the station zone"
	}
	return "The zone signal"
}

func lampSecondMeaning(t *told, f press.SecondLampFigures) string {
	s := t.lamp() + " is on in the push and comes on elsewhere too: in " + Step(t.r.Plan, f.Step) + " at " + t.say.Seconds(f.From)
	if more := f.Times - 1; more == 1 {
		s += " and once more"
	} else if more > 1 {
		s += " and " + strconv.Itoa(more) + " times more"
	}
	return s + ". Read it at the end of the push only, or give that step no zone."
}

func zonePassedFast(t *told, f press.PassedFigures) string {
	return t.lamp() + " is on for only " + Milliseconds(f.Time) + " in " + Step(t.r.Plan, f.Step) + ", less than two scans (" + Milliseconds(f.Limit) + "): it may never be seen; make the zone longer or the step slower."
}

// Milliseconds writes a short time.
func Milliseconds(s float64) string { return Unit(Trimmed(1000*s, 1), "ms") }

func zonesAlike(t *told, f press.AlikeFigures) string {
	return "The station zone and the zone of the push differ by less than " + t.pos.Length(f.Uncertainty) + " at both ends, as much as a reading is uncertain: nobody can tell the two signals apart."
}

func holdInPress(t *told, f press.HoldFigures) string {
	return "The hold is studied in " + Step(t.r.Plan, f.Step) + ", which pushes: what becomes of the force then must be tried at the station; a hold input is no safety function."
}

func holdNotMet(t *told, f press.HoldFigures) string {
	return "The ram does not pass " + t.pos.At(f.At) + " inside " + Step(t.r.Plan, f.Step) + ", so the hold is not shown: choose a position on its way."
}

func looseFitProbed(t *told, f press.ProbedFigures) string {
	const rest = "; grip from dirt, shaving or a tilted start looks like a good fit, and grip lost later is not seen."
	if !catchesFit(t.r) {
		return upperFirst(t.say.refusedAtZero(t.r.Plan, t.r)) + ", and fewer of those with a little" + rest
	}
	return "The probe refuses a fit with less than " + t.say.caughtBelow(t.r) + " of effective interference " + t.say.TargetShare(f.Chance) + " of the time; one with just that much holds " + t.say.Force(*f.Holding) + rest
}

func presenceByProbe(t *told, f press.PresenceFigures) string {
	s := "A missing insert would stop the ram at " + t.pos.At(f.Reading) + " and give both signals: only the probe refuses it"
	if p := f.Refused; p < 1-1e-6 {
		s += ", and only " + t.say.Share(p) + " of the time"
	}
	return s + ", so prove it with an empty nest before every shift."
}

func secondStart(*told) string {
	return "After the probe the part is started a second time, and static friction may ask for more than these figures say: try it, with the force to seat looked at."
}
