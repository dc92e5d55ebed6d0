package words

import (
	"slices"
	"strings"

	"ramplan/press"
)

// TwoLooks tells whether the lamps of a plan are looked at twice: a probe comes before
// the push, and its figures are known.
func TwoLooks(r *press.Result) bool {
	q := &r.Probe
	return q.Setting != nil && q.End != nil && q.WatchTime != nil
}

// GoesOn is the one pair with which the press follows the probe.
var GoesOn = Pair{Arrival: true}

// GoOnOnly is the rule of the first look.
const GoOnOnly = "Go on only with arrival on and zone off; everything else: refused, the press does not take place."

// ZoneInProbe says what the first look is counted on to tell of a zone signal that is stuck
// on: of one that is not alive in the probe nothing, though a lamp that shows is refused;
// empty for a plan with one look.
func (say Printer) ZoneInProbe(p *press.Plan, r *press.Result) string {
	switch {
	case !TwoLooks(r):
		return ""
	case p.Probe.ZoneLive:
		return "Zone is alive in the probe: the first look refuses while it is stuck on."
	}
	return "Zone is not alive in the probe: the first look is not counted on to find one that is stuck on, though one that shows there is refused."
}

// stuckOn names the signals that may be stuck on and are found by no look: what the probe
// finds surely is not among them.
func stuckOn(p *press.Plan, r *press.Result) string {
	f, ok := catalogued(r, press.RowZoneStuckOn)
	if ok && AsJudged(f).Detection >= p.Faults.SampleProbability {
		return "arrival"
	}
	return ""
}

// SampledWithout says why master and limit samples are pressed with the probe left out,
// and what that asks for: what is seated already gives the probe nothing to stall in.
const SampledWithout = "Nothing in a finished assembly stalls the probe, so it refuses good ones too: press master and limit samples with the probe left out, which a qualified person sets and writes down. " +
	"Then put the probe back in, and prove that it is back with a loose sample, which must be refused."

// NoPush stands where the picture of a push would, of what the probe refuses.
const NoPush = "No push: refused at the first look."

// RefusedFirst tells whether the probe refuses a row of the fault catalogue, so that no
// push follows.
func RefusedFirst(f press.FaultRow) bool {
	return f.Probe != nil && f.Probe.Passed != nil && !*f.Probe.Passed
}

// AsJudged is a row of the fault catalogue as the whole cycle judges it, by one look or by
// two: what the probe refuses has the lamps, the reading and the time of the first look.
func AsJudged(f press.FaultRow) press.FaultRow {
	q := f.Probe
	if q == nil {
		return f
	}
	f.Verdict, f.Time, f.Detection = q.Verdict, q.Time, q.Detection
	if q.Passed == nil || !*q.Passed {
		f.Arrival, f.Zone, f.Reading, f.Words = q.Arrival, q.Zone, q.Reading, nil
	}
	return f
}

// FirstLook says what the first look makes of a row.
func (say Printer) FirstLook(f press.FaultRow) string {
	switch {
	case f.Probe == nil || f.Probe.Passed == nil:
		return none
	case *f.Probe.Passed:
		return "goes on"
	}
	return "refused: " + say.lamps(f.Probe.Arrival, f.Probe.Zone)
}

// SecondLook says what the lamps show at the end of the push; of what the probe refuses,
// that there is none.
func (say Printer) SecondLook(f press.FaultRow) string {
	if RefusedFirst(f) {
		return "no push"
	}
	return say.lamps(f.Arrival, f.Zone)
}

// missingPasses tells whether a missing insert is left to another check: the push cannot
// tell it, and no probe refuses it either.
func missingPasses(r *press.Result) bool { return r.MissingPasses() && !presenceProbed(r) }

// presenceProbed tells whether the probe alone tells a missing insert.
func presenceProbed(r *press.Result) bool {
	return slices.ContainsFunc(r.Findings, func(f press.Finding) bool { return f.Code == press.PresenceByProbe })
}

// looseRefused says which loose fits the probe refuses, and how surely; without more than
// the result has.
func (say Printer) looseRefused(p *press.Plan, r *press.Result) string {
	if r.Probe.CaughtBelow == nil {
		return "refused by the probe, but at no interference as surely as " + say.TargetShare(p.Faults.SampleProbability)
	}
	return "refused by the probe " + say.TargetShare(p.Faults.SampleProbability) + " of the time below " + say.caughtBelow(r) + " of effective interference"
}

// FirstLookText is what the first look tells of a pair of lamps: the verdict, what it
// means, and what is done with the part.
type FirstLookText struct {
	Pair                 Pair
	GoesOn               bool
	Verdict, Meaning, Do string
	Checks               []string
}

// AtFirstLook says what a pair means in the probe.
func (say Printer) AtFirstLook(p *press.Plan, r *press.Result, on Pair, when Situation) FirstLookText {
	pos := say.Positions(p)
	end := pos.At(*r.Probe.End)
	t := FirstLookText{Pair: on, GoesOn: on == GoesOn, Verdict: "refused at the first look"}
	switch {
	case t.GoesOn:
		t.Verdict = "go on"
		t.Meaning = "Something stopped the ram before the probe end at " + end + ". That judges no part yet: the press follows, and the second look judges it."
		t.Do = "Leave the part where it is: the press follows at once."
		t.Checks = []string{"Keep out: the ram moves on by itself.", "Look at the lamps again at the end of the push."}
		return t
	case on == Pair{}:
		t.Meaning = "Nothing stopped the ram before the probe end at " + end + ": the fit is loose, the insert is missing, or the part was pressed before. The press does not take place."
	case on.Zone && !p.Probe.ZoneLive:
		t.Meaning = "Zone is on in the probe, where by this plan it is not alive: the signal is stuck, or the station is not set as the plan says. A zone that is stuck need not show here. The press must not take place."
	case on.Zone:
		t.Meaning = "Zone is on where the probe must find it off: a signal is stuck, or the station is not set as the plan says. The press does not take place."
	}
	t.Do = say.refusedPart(when)
	probe := "Compare what is set with the plan: probe setting " + say.Setting(*r.Probe.Setting) + ", probe end " + end + ", approach end " + pos.At(r.Travel.ApproachEnd) + "."
	insert := "Look into the nest: is there an insert, and a new one?"
	fit := "Measure hole and insert: a fit that is looser than drawn is the lot, not the station."
	fresh := "Press new parts of measured diameters, in the middle of their fit: they must go on."
	switch {
	case on.Zone && (when == One || when == Run):
		t.Checks = []string{stopBare, probe, call}
	case on.Zone:
		t.Checks = []string{stopBare, probe, fresh}
	case when == Run:
		t.Checks = []string{insert, fit, fresh}
	case when == Change:
		t.Checks = []string{insert, fit, probe, fresh}
	case when == Start:
		t.Checks = []string{probe, fresh, "Test the arrival input: it must come on when the ram is stopped by a sound part in the probe."}
	default:
		t.Checks = []string{insert, fit, lampsOff}
	}
	return t
}

// firstLookRows are the rows of the reaction plan about the first look.
func (say Printer) firstLookRows(p *press.Plan, r *press.Result) [][]string {
	if !TwoLooks(r) {
		return nil
	}
	on := say.AtFirstLook(p, r, GoesOn, One)
	out := [][]string{{"first look: " + on.Pair.String(), on.Verdict, "Every part", on.Do, numbered(on.Checks)}}
	for _, pair := range []Pair{{}, {Zone: true}} {
		shows := "first look: " + pair.String()
		if pair.Zone {
			shows = "first look: zone on, whatever arrival shows"
		}
		for _, when := range Situations {
			t := say.AtFirstLook(p, r, pair, when)
			part := t.Do
			if p.Quality.RejectPlace != "" && strings.HasSuffix(part, apartPart) {
				part += " It goes to: " + p.Quality.RejectPlace + "."
			}
			out = append(out, []string{shows, t.Verdict, when.Title(), part, numbered(t.Checks)})
		}
	}
	return out
}
