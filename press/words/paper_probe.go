package words

import (
	"strings"

	"ramplan/press"
)

// What the pages behind the sheet say of a probe.

// probeSetpoints are what is typed in for the first look; on the page for typing in with
// its confirm time and its watch time. None without a probe.
func (say Printer) probeSetpoints(p *press.Plan, r *press.Result, typed bool) []Setpoint {
	if !TwoLooks(r) {
		return nil
	}
	pos, q := say.Positions(p), &r.Probe
	note := func(s Setpoint, path string) Setpoint {
		s.Path, s.Word, s.Exact = path, "probe", Exact(*s.Number)
		s.Note, s.From = say.SetpointNote(r, p.Given(path)), chosen(r, p.Given(path))
		return s
	}
	out := []Setpoint{
		note(Setpoint{Name: "probe_setting", Label: "Probe setting", Number: q.Setting, Value: Trimmed(*q.Setting, 2), Unit: "%"}, "probe.setting"),
		note(Setpoint{Name: "probe_end", Label: "Probe end", Number: q.End, Value: pos.Set(*q.End), Unit: "mm"}, "probe.end"),
	}
	if !typed {
		return out
	}
	confirm, watch := p.Probe.ConfirmTime, whenOver(*q.WatchTime)
	return append(out,
		Setpoint{Name: "probe_confirm_time", Label: "Probe confirm time", Number: &confirm, Value: Trimmed(confirm, 4), Unit: "s"},
		Setpoint{Name: "probe_watch_time", Label: "Probe watch time, at least", Number: &watch, Value: say.AfterBare(watch), Unit: "s"})
}

// probedPushes are the pushes of the shift check of a plan with a probe: what has nothing
// to stall in is refused at the first look, what is finished is pressed without the probe,
// and a loose sample shows at the end that the probe is back.
func (say Printer) probedPushes(p *press.Plan, r *press.Result, at shown) []shiftPush {
	empty := say.probeAtNest(p, r)
	out := []shiftPush{{what: "Empty nest", brief: "empty nest", why: "Nothing lies in it: a probe that merely ends must give no arrival.", lamps: empty.lamps, reading: empty.reading,
		asked: ShiftPush{Sample: EmptyNest, First: true, Lamps: empty.refused, Where: strings.TrimPrefix(empty.reading, ownNone)}}}
	if f := withoutInsert(p, r); f != nil {
		x := shiftPush{what: "Without an insert", brief: "without an insert", why: "The other parts lie in the nest, the insert is missing: no part may pass.", lamps: say.lamps(f.Arrival, f.Zone), reading: at.readingAt(f.Reading), asked: ShiftPush{Sample: NoInsert}}
		if RefusedFirst(*f) {
			x.lamps, x.reading = say.FirstLook(*f), say.endsProbe(p, r)
			x.asked.First, x.asked.Where = true, strings.TrimPrefix(x.reading, ownNone)
			if a, z := f.Probe.Arrival, f.Probe.Zone; a != nil && z != nil {
				x.asked.Lamps = &Pair{*a, *z}
			}
		}
		out = append(out, x)
	}
	for _, x := range say.samplePushes(p, r, at) {
		x.what += ", probe left out"
		out = append(out, x)
	}
	return append(out, shiftPush{
		what: "A loose sample, probe back in", brief: "loose sample", why: "The probe is back, and still refuses a fit without grip: " + looseSampleFit + ".",
		lamps: "refused: " + Pair{}.String(), reading: say.endsProbe(p, r),
		asked: ShiftPush{Sample: LooseSample, First: true, Lamps: &Pair{}, Bounds: looseSampleFit, Where: strings.TrimPrefix(say.endsProbe(p, r), ownNone)},
	})
}

// looseSampleFit is how a loose sample is made.
const looseSampleFit = "new parts whose insert slides in by hand"

// endsProbe is said where the reading of a push stands that the first look refuses.
func (say Printer) endsProbe(p *press.Plan, r *press.Result) string {
	return ownNone + "the ram ends at " + say.Positions(p).At(*r.Probe.End)
}

// ownNone begins a reading that there is not.
const ownNone = "none; "

// A probedNest is what the probe shows of the empty nest.
type probedNest struct {
	lamps, reading string
	refused        *Pair // nil: not to be told
}

func (say Printer) probeAtNest(p *press.Plan, r *press.Result) probedNest {
	reading := r.PushAt(*r.Probe.Setting).Reading
	if reading > *r.Probe.End {
		return probedNest{"refused: " + Pair{}.String(), say.endsProbe(p, r), &Pair{}}
	}
	return probedNest{"not to be told: the nest itself stops the ram in the probe", say.Positions(p).At(reading), nil}
}

// LooseSampleFit is the effective interference that a loose sample may have, by the result.
func (say Printer) LooseSampleFit(r *press.Result) string {
	if r.Probe.CaughtBelow == nil {
		return "effective interference 0: it slides in by hand"
	}
	return "effective interference under " + say.caughtBelow(r) + ", or 0: it slides in by hand"
}

// LooseSampleNotes say how the loose sample is pressed, and the others.
func (say Printer) LooseSampleNotes(r *press.Result) []string {
	return []string{SampledWithout, say.looseSampleNote(r)}
}

// looseSampleRow is the loose sample among the limit samples, with the effective
// interference that it must stay below.
func (say Printer) looseSampleRow(p *press.Plan, r *press.Result, pressed []shiftPush) []string {
	n := 0
	for _, x := range pressed {
		if x.brief == "loose sample" {
			n++
		}
	}
	return []string{"Loose", say.LooseSampleFit(r), samplesMade(p), allSamples(p), Trimmed(float64(n), 0), "first look: " + Pair{}.String(), "refuse it, no press", "", "", ""}
}

// looseSampleNote says what the loose sample must do, and how surely by the result.
func (say Printer) looseSampleNote(r *press.Result) string {
	s := "The loose sample is no finished assembly but new parts, put in anew each time, with the probe in use: the probe must refuse it. "
	if q := r.Probe.RefusedAtZero; q != nil {
		s += "Without any grip it is refused with a probability of " + say.Share(*q) + ". "
	}
	if c := r.Probe.CaughtBelow; c != nil {
		s += "One with just " + say.caughtBelow(r) + " of effective interference, at most, is refused as surely as the other samples. "
	} else {
		s += "That is less surely than the other samples are judged: no interference is refused as surely. "
	}
	return s + "Effective interference is what is left after smoothing: measured diameters less what the surfaces lose."
}

// unprobed says of a step of set-up that the probe is left out in it.
func (c *checklist) unprobed(what string) string {
	if TwoLooks(c.r) {
		return "Probe left out: " + lowerFirst(what)
	}
	return what
}

// probe enters the first look and proves that what has nothing to stall in is refused.
func (c *checklist) probe() {
	if !TwoLooks(c.r) {
		return
	}
	q, pos := &c.r.Probe, c.at.pos
	c.step("Enter the probe: setting, end, confirm time, rule of the first look and a watch time that outlasts it at reduced speed; read each back.",
		c.say.Setting(*q.Setting)+"; end "+pos.At(*q.End)+"; confirm "+c.say.Seconds(c.p.Probe.ConfirmTime))
	c.step("Run the cycle with an empty nest, with the probe.", c.say.probeAtNest(c.p, c.r).lamps)
	if m := withoutInsert(c.p, c.r); m != nil {
		c.step("Run the cycle with the other parts without an insert, with the probe.", c.say.FirstLook(*m))
	}
}

// probeForce proves the push of the probe on the load cell.
func (c *checklist) probeForce() {
	if q := &c.r.Probe; TwoLooks(c.r) {
		c.step("The load cell at the probe setting "+c.say.Setting(*q.Setting)+", three times.", "at rest "+c.say.Force(*q.Low)+" to "+c.say.Force(*q.High)+", typically "+c.say.Force(*q.Typical))
	}
}

// loose proves the probe with loose parts and with sound new ones.
func (c *checklist) loose() {
	if !TwoLooks(c.r) {
		return
	}
	q, pos := &c.r.Probe, c.at.pos
	c.step("Put the probe back in; press "+allSamples(c.p)+" of the loose samples: "+looseSampleFit+".", "refused: "+Pair{}.String()+"; no press")
	if q.StallLoosest != nil {
		c.step("Probe new parts with the loosest fit of the drawing, by measured diameters.", "go on; at rest in the probe at "+pos.At(pos.up(*q.StallLoosest))+" or before, within the uncertainty of a reading")
	}
	if q.StallNominal != nil {
		c.step("Press new parts in the middle of their fit, with both looks; note where they rest in the probe, and the push that seats them after it: static friction may ask for more.",
			"go on; typically at "+pos.At(*q.StallNominal)+" in the probe")
	}
}

// afterFirst is what an unplugged signal may show with a probe.
func (say Printer) afterFirst(r *press.Result) string {
	if TwoLooks(r) {
		return ", at the first look or the second"
	}
	return ""
}
