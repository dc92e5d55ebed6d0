package words

import (
	"math"
	"strings"

	"ramplan/press"
)

// Unseen lists what this logic cannot detect, for this plan.
func (say Printer) Unseen(p *press.Plan, r *press.Result) []string {
	out := []string{}
	pos := say.Positions(p)
	switch {
	case TwoLooks(r) && Probed(r):
		out = append(out, say.looseUnseen(p, r)...)
	case p.Joint.Kind != press.Touch:
		s := "A loose fit: it rests in the right place."
		if !r.Probe.InUse && r.Probe.Possible && r.Probe.HighestSetting != nil {
			s += " A first push with an end of its own may refuse it: see the findings."
		}
		out = append(out, s,
			"A tight fit that still reaches its seat, and how much force it took.",
			"A part that was pressed before.")
	}
	if gap, ok := passingGap(r, pos); ok {
		out = append(out, "A nominal part that stands less than "+pos.At(gap)+" off its seat mostly passes.")
	}
	if missingPasses(r) {
		s := "A missing insert: the ram stops where a good part would stop it."
		if p.Station.PresenceCheck != "" {
			s = "A missing insert, without the other check: " + p.Station.PresenceCheck + "."
		}
		if none := say.noCheck(p); none != "" {
			s = "A missing insert: " + none + "."
		}
		out = append(out, s)
	}
	if !p.MarksInsert() {
		out = append(out, "A missing insert is not looked at: no row of the parts is marked as insert.")
	}
	if nest := say.nestStops(p, r); nest != "" {
		out = append(out, nest)
	}
	if struckTwice(r) {
		out = append(out, "Two inserts: the approach strikes them.")
	}
	for _, row := range r.Faults {
		if isWear(row) && row.Detection < 0.99 {
			out = append(out, "A nest worn by "+pos.Length(p.Faults.NestWear)+": "+say.noticed(p, r, row)+".")
		}
	}
	stuck := "A signal that is stuck on"
	if name := stuckOn(p, r); name != "" {
		stuck = upperFirst(name) + " stuck on (the probe finds zone stuck on)"
	}
	return append(out,
		stuck+": only a reading rule that wants both signals seen off first finds it.",
		"Tilt, cracks, shaving, galling, dirt inside the joint, and a wrong part of the same height.",
		"Whether the set force was reached: only a load cell tells.",
	)
}

// looseUnseen is what the probe leaves unseen of a fit, and of a part that was pressed
// before.
func (say Printer) looseUnseen(p *press.Plan, r *press.Result) []string {
	surely := say.TargetShare(p.Faults.SampleProbability)
	loose := "Some loose fits: the probe refuses none of them as surely as " + surely
	if c := r.Probe.CaughtBelow; c != nil {
		loose = "A weak fit with more than " + say.caughtBelow(r) + " of effective interference may go on; below that the probe refuses it " + surely + " of the time, and one with just that much holds " + say.Force(c.Holding)
	}
	out := []string{
		loose + ".",
		"A grip that comes from dirt, shaving, a burr or a tilted start: the probe takes it for a good fit. A grip that is lost later.",
		"A tight fit that still reaches its seat, and how much force it took.",
	}
	if f := row(r, press.RowAlreadyPressed); f == nil || AsJudged(*f).Detection < p.Faults.SampleProbability {
		out = append(out, "A part that was pressed before.")
	}
	if presenceProbed(r) {
		out = append(out, "A missing insert, if the probe is left out: the push alone takes it for a good part.")
	}
	return out
}

// nestStops says that the push reaches past the empty nest, and what the lamps show
// there; empty where it ends before, or where that is what a missing insert shows.
func (say Printer) nestStops(p *press.Plan, r *press.Result) string {
	stop, ok := r.NestStops()
	if !ok {
		return ""
	}
	if f := row(r, press.RowMissing); f != nil && f.Reading != nil && math.Abs(*f.Reading-stop.Reading) < 1e-6 {
		return ""
	}
	pos := say.Positions(p)
	at, end := pos.both(stop.Reading, *r.Travel.PushEnd)
	s := "An empty nest: the nest itself stops the ram at " + at + ", before the push ends at " + end + ", with " + Pair{true, stop.Zone}.String()
	switch {
	case !stop.Zone:
		return s + "."
	case p.Station.PresenceCheck != "" && say.noCheck(p) == "":
		return s + ". Only the other check tells it from a good part: " + strings.TrimRight(strings.TrimSpace(p.Station.PresenceCheck), ".") + "."
	}
	return s + ", as a good part does."
}

// noticed says how surely a worn nest is seen on a nominal part, and by what else.
func (say Printer) noticed(p *press.Plan, r *press.Result, row press.FaultRow) string {
	s := "the lamps see it in " + say.OneIn(row.Detection)
	if share, _, ok := say.masterWear(p, r); ok {
		s += ", the check with the master in " + say.OneIn(share)
	}
	return s
}

// Perfect says what was not given and is taken as perfect, the direction of the curve
// included; empty when nothing is.
func (say Printer) Perfect(r *press.Result) string {
	var what []string
	for _, f := range r.Findings {
		if f.Code != press.TakenAsPerfect {
			continue
		}
		if field, ok := press.FieldAt(f.Path); ok {
			what = append(what, lowerFirst(field.Label))
		}
	}
	said := say.WeightDoubt(r)
	if len(what) > 0 {
		said = strings.TrimSuffix("Taken as perfect, because not given: "+and(what)+". "+said, " ")
	}
	return said
}

// WeightDoubt says what a curve taken at the tool leaves open while nobody has said how the
// ram stood; empty where nothing is.
func (say Printer) WeightDoubt(r *press.Result) string {
	if by := r.WeightDoubt(); by > 0 {
		return "It is not said how the ram stood when its curve was taken at the tool: if it pressed down, every push is " + say.Force(by) + " less than here."
	}
	return ""
}
