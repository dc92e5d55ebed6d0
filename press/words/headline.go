package words

import (
	"math"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"ramplan/press"
)

// Headline says in plain words what the plan catches and what it never sees, and
// first of all whether the blow is too hard and by how much the plan misses its targets. Of a plan with a blocker it says
// that it is not ready, and why; it praises nothing of it. Every figure in it is
// rounded so that the statement stays true.
//
// Too tall and too short mean outside the drawing. A part by that much outside is
// refused with the probability of the limit samples.
func (say Printer) Headline(p *press.Plan, r *press.Result) string {
	return say.headline(p, r, ClosedMarks{})
}

// MarkedHeadline is the headline with marks at its small shares, and the sentences that
// they lead to; none where it has no such share.
func (say Printer) MarkedHeadline(p *press.Plan, r *press.Result) (text string, says []string) {
	marks := say.ClosedMarks(r)
	text = say.headline(p, r, marks)
	if text == say.Headline(p, r) {
		return text, nil
	}
	for _, one := range marks.Says {
		if mark, _, _ := strings.Cut(one, " "); !slices.Contains(noteMarks[:], mark) || strings.Contains(text, mark) {
			says = append(says, one)
		}
	}
	return text, says
}

func (say Printer) headline(p *press.Plan, r *press.Result, marks ClosedMarks) string {
	if r.Blocked() || r.Samples == nil {
		s := say.NotForUse(say.NotReady(r))
		if r.Samples != nil { // else every part is refused, and that was said
			for _, c := range say.offTarget(p, r, marks) {
				s += " " + upperFirst(c) + "."
			}
		}
		return s
	}
	var clauses []string
	if blow := say.hardBlow(r); blow != "" {
		clauses = append(clauses, blow)
	}
	if none := say.noCheck(p); missingPasses(r) && none != "" {
		clauses = append(clauses, "passes a missing insert, and "+none)
	}
	clauses = append(append(clauses, say.offTarget(p, r, marks)...), say.passes(p, r)...)
	clauses = append(clauses, say.catches(p, r)+", "+onAverage)
	clauses = append(clauses, say.misses(p, r)...)
	return upperFirst(strings.Join(clauses, "; ")) + "."
}

// onAverage says of what a share is: systematic and random errors are in one root.
const onAverage = "on average over stations and days"

// offTarget says both shares, what is accepted and what is refused wrongly, of a plan
// that misses the target of either.
func (say Printer) offTarget(p *press.Plan, r *press.Result, marks ClosedMarks) []string {
	accepted, refused := r.Risk.ConsumerPPM, r.Risk.ProducerPPM
	if accepted == nil || refused == nil || *accepted <= p.Targets.FalseAcceptPPM && *refused <= p.Targets.FalseRejectPPM {
		return nil
	}
	share := func(ppm, target float64, what, mark string) string {
		s, of := say.PPM(ppm), say.TargetPPM(target)
		if ppm > target {
			s = say.ppmOver(ppm, target)
		}
		if mark != "" {
			s += thin + mark
		}
		return s + " " + what + " (target " + of + ")"
	}
	return []string{"refuses " + share(*refused, p.Targets.FalseRejectPPM, "of all parts although good", marks.Reject) + ", accepts " +
		share(*accepted, p.Targets.FalseAcceptPPM, "of wrong height", marks.Accept)}
}

// StripTitle is the message of the decision strip. What is accepted is called
// good only where the drawing calls all of it so.
func (say Printer) StripTitle(p *press.Plan, r *press.Result) string {
	s := say.Accepted(p, r)
	switch {
	case r.Window.Overlap == nil || r.Samples == nil:
		return s + ": " + say.cause(r)
	case r.Blocked():
		return s + ", but " + say.cause(r)
	}
	return s + "; " + say.catches(p, r) + ", " + onAverage
}

// Accepted says which readings are accepted, and no more: the message of the
// strip where the headline stands beside it. Nothing is called good of a plan that is
// not ready.
func (say Printer) Accepted(p *press.Plan, r *press.Result) string {
	w := r.Window.Overlap
	if w == nil || r.Samples == nil {
		return "No part is accepted"
	}
	s := "Good"
	if good := r.Window.GoodRange; r.Blocked() || w[0] < good[0]-1e-9 || w[1] > good[1]+1e-9 {
		s = "Accepted"
	}
	pos := say.Positions(p)
	from, to := pos.Bare(w[0]), pos.At(w[1])
	if stop, stops := r.NestStops(); stops && w[1] > stop.Reading {
		return s + " from " + from + " on, down to the nest"
	}
	if from == pos.Bare(w[1]) {
		return s + " only at " + to
	}
	return s + " between " + from + " and " + to
}

// catches says which parts are refused.
func (say Printer) catches(p *press.Plan, r *press.Result) string {
	s, pos := r.Samples, say.Positions(p)
	tall := pos.up(math.Max(0, s.Long-p.Requirement.HeightHigh))
	low := pos.up(math.Max(0, p.Requirement.HeightLow-s.Short))
	if _, stops := r.NestStops(); stops && r.PastNest(r.ReadingOf(s.Short)) {
		return "catches a part " + beyond(pos, tall, "too tall") + " " + say.TargetShare(s.Probability) + " of the time, but none for being too short: the nest itself stops the ram before the window ends"
	}
	return "catches a part " + say.outside(pos, tall, low) + " " + say.TargetShare(s.Probability) + " of the time"
}

// passes says what passes although it is outside the drawing: the overlap reaches
// so far beyond the good readings.
func (say Printer) passes(p *press.Plan, r *press.Result) []string {
	w, good, pos := r.Window.Overlap, r.Window.GoodRange, say.Positions(p)
	var far []string
	if tall := pos.up(math.Max(0, good[0]-w[0])); tall > 0 {
		far = append(far, pos.At(tall)+" too tall")
	}
	switch low := pos.up(math.Max(0, w[1]-good[1])); {
	case r.PastNest(w[1]):
		far = append(far, "any amount too short")
	case low > 0:
		far = append(far, pos.At(low)+" too short")
	}
	if far == nil {
		return nil
	}
	return []string{strings.Replace("passes parts up to "+strings.Join(far, " or "), "up to any", "by any", 1)}
}

// outside names how far outside the drawing a part is caught, on either side.
func (say Printer) outside(pos Positions, tall, low float64) string {
	switch {
	case tall == 0 && low == 0:
		return "just outside the drawing"
	case tall == low:
		return pos.At(tall) + " too tall or too short"
	}
	return beyond(pos, tall, "too tall") + " or " + beyond(pos, low, "too short")
}

// beyond names how far outside the drawing a part is on one side.
func beyond(pos Positions, by float64, word string) string {
	if by == 0 {
		return "just " + word
	}
	return pos.At(by) + " " + word
}

// misses says what passes all the same.
func (say Printer) misses(p *press.Plan, r *press.Result) []string {
	var out []string
	pos := say.Positions(p)
	if gap, ok := passingGap(r, pos); ok {
		out = append(out, "a gap under "+pos.At(gap)+" mostly passes")
	} else if r.Narrow() && say.offTarget(p, r, ClosedMarks{}) == nil {
		out = append(out, "good parts are refused now and then")
	}
	if none := say.noCheck(p); missingPasses(r) && none == "" {
		out = append(out, "a missing insert is left to the other check")
	}
	switch {
	case p.Joint.Kind == press.Touch:
	case !Probed(r):
		out = append(out, "a loose fit is never seen")
	case !catchesFit(r):
		out = append(out, say.refusedAtZero(p, r))
	default:
		out = append(out, "a fit looser than "+say.caughtBelow(r)+" is refused by the probe "+say.TargetShare(p.Faults.SampleProbability)+" of the time")
	}
	return out
}

// Probed tells whether a probe looks at the fit that no blocker speaks against.
func Probed(r *press.Result) bool {
	return slices.ContainsFunc(r.Findings, func(f press.Finding) bool { return f.Code == press.LooseFitProbed })
}

// catchesFit tells whether the probe refuses a fit, one with some grip, as surely as the
// limit samples ask.
func catchesFit(r *press.Result) bool {
	return r.Probe.CaughtBelow != nil && r.Probe.CaughtBelow.Effective >= 0.1
}

// refusedAtZero says what a probe does with parts without grip when that is all that can
// be said.
func (say Printer) refusedAtZero(p *press.Plan, r *press.Result) string {
	share := r.Probe.RefusedAtZero
	if share == nil {
		return "a loose fit is refused by the probe, but not surely"
	}
	only := ""
	if *share < p.Faults.SampleProbability {
		only = "only "
	}
	return "the probe refuses " + only + say.Share(*share) + " of the parts without grip"
}

// caughtBelow is the interference under which the probe refuses surely, rounded down.
func (say Printer) caughtBelow(r *press.Result) string {
	return say.CaughtBelow(r.Probe.CaughtBelow.Effective)
}

// CaughtBelow is an effective interference under which the probe refuses, rounded down, as
// it never catches more than is said; PassedAbove one over which it goes on, rounded up.
func (say Printer) CaughtBelow(x float64) string { return say.Microns(CaughtBelowIn(x)) }

// PassedAbove is the other one.
func (say Printer) PassedAbove(x float64) string { return say.Microns(PassedAboveIn(x)) }

// CaughtBelowIn and PassedAboveIn are the two so rounded, µm.
func CaughtBelowIn(x float64) float64 { return math.Floor(10*x+1e-9) / 10 }

// PassedAboveIn is the other one.
func PassedAboveIn(x float64) float64 { return math.Ceil(10*x-1e-9) / 10 }

// passingGap gives the gap under an otherwise nominal part up to which it is
// accepted more often than not, rounded up, as what passes is never said to be less than it is: the distance from its reading to
// the first accepted one. Where the overlap is narrower than three times the
// uncertainty, or the nominal part is refused itself, there is none.
func passingGap(r *press.Result, pos Positions) (mm float64, ok bool) {
	w := r.Window.Overlap
	if w == nil || r.Narrow() || r.Travel.SeatReading > w[1] {
		return 0, false
	}
	mm = r.Travel.SeatReading - w[0]
	if t := r.Stack.PressInTravel; t > 0 { // no part stands further off its seat than before it was pressed in
		mm = min(mm, t)
	}
	mm = pos.up(mm)
	return mm, mm > 0
}

// causes are the blockers in the words of a headline.
var causes = map[string]string{
	press.NothingStopsIt:      "nothing stops the press-in",
	press.NoSetting:           "no setting seats every part and overloads none",
	press.SettingNotFeasible:  "the setting leaves parts unseated or overloads them",
	press.TravelNegative:      "the heights of the parts contradict each other",
	press.TouchWithTravel:     "the heights of the parts contradict the joint",
	press.EngagementTooLong:   "the engaged length does not fit into the travel",
	press.NoAcceptance:        "the guard bands leave nothing of the requirement",
	press.NeverGood:           "no reading gives both signals",
	press.NominalRejected:     "the nominal part is refused",
	press.MissingLooksGood:    "a missing insert looks good",
	press.FaultLooksGood:      "a faulty part looks good",
	press.OverlapWider:        "parts outside the drawing pass",
	press.ProbeNoFit:          "the probe has no fit to tell by",
	press.ProbeNotPossible:    "no setting serves as a probe",
	press.ProbeCannotTell:     "the probe cannot tell a loose part",
	press.ProbeRefusesNominal: "the probe refuses the nominal part",
	press.PartMetInMove:       "a step meets the part at full force",
	press.HandOverImpossible:  "a step cannot hand over to the next",
	press.EarlyContactBlocked: "parts are met in the fast approach",
	press.BeyondStroke:        "the ram cannot go where it is sent",
	press.SpeedOverRam:        "the ram cannot move as asked",
	press.OverYield:           "the tightest fit yields",
	press.HoldingShort:        "the loosest joint holds too little",
}

// Glance is the shortest verdict on a plan: what it accepts, with what misses a
// target, or that it is not ready and why.
func (say Printer) Glance(p *press.Plan, r *press.Result) string {
	if r.Blocked() {
		return "Not ready: " + say.cause(r)
	}
	s := say.Accepted(p, r)
	if missingPasses(r) && say.noCheck(p) != "" {
		s += ", but a missing insert passes"
	}
	if say.hardBlow(r) != "" {
		s += ", but the blow is more than part and tool may bear"
	}
	if ppm := r.Risk.ProducerPPM; ppm != nil && *ppm > p.Targets.FalseRejectPPM {
		s += ", but " + say.ppmOver(*ppm, p.Targets.FalseRejectPPM) + " are good and refused"
	}
	if ppm := r.Risk.ConsumerPPM; ppm != nil && *ppm > p.Targets.FalseAcceptPPM {
		s += ", but " + say.ppmOver(*ppm, p.Targets.FalseAcceptPPM) + " are wrong and accepted"
	}
	return s
}

// Blocked says in a card's line that a plan is not ready; empty without a blocker.
func (say Printer) Blocked(r *press.Result) string {
	if !r.Blocked() {
		return ""
	}
	return "Not ready: " + say.NotReady(r)
}

// NotForUse says that a plan must not be used, and why, as [NotReady] gives it.
func (say Printer) NotForUse(why string) string { return "Not ready for use: " + why + "." }

// NotReady says why a plan is not ready for use: its gravest blocker, how many
// more there are, and that every part would be refused where that is so. It is
// empty for a plan without a blocker.
func (say Printer) NotReady(r *press.Result) string {
	why := say.blockers(r)
	if r.Samples == nil && r.Verdict != nil {
		why += "; every part would be refused"
	}
	return why
}

// blockers names the gravest one, and how many more there are; empty without one.
func (say Printer) blockers(r *press.Result) string {
	n := r.Count(press.Blocker)
	if n == 0 {
		return ""
	}
	why := say.cause(r)
	switch n {
	case 1:
		return why
	case 2:
		return why + ", and one more blocker"
	}
	return why + ", and " + Fixed(float64(n-1), 0) + " more blockers"
}

// gravest gives the blocker that a headline names.
func gravest(r *press.Result) (f press.Finding, found bool) {
	most := 0
	for _, one := range r.Findings {
		rule, _ := press.RuleOf(one.Code)
		if one.Severity == press.Blocker && (!found || rule.Gravity < most) {
			f, most, found = one, rule.Gravity, true
		}
	}
	return f, found
}

func (say Printer) cause(r *press.Result) string {
	f, found := gravest(r)
	nominal, _ := f.Figures.(press.NominalFigures)
	switch {
	case !found:
		return "a blocker was found"
	case f.Code == press.SettingNotFeasible:
		return say.unfit(r)
	case f.Code == press.NominalRejected && nominal.PPM != nil:
		return "more than a quarter of all parts are good and refused"
	}
	return causes[f.Code]
}

// unfit says what a setting that was chosen by hand does wrong.
func (say Printer) unfit(r *press.Result) string {
	weak, strong := r.Force.Low < r.Force.Need, r.Force.High > r.Force.Cap
	switch {
	case weak && !strong:
		return "the setting leaves parts unseated"
	case strong && !weak:
		return "the setting overloads part or tool"
	}
	return "the setting leaves parts unseated and overloads others"
}

func upperFirst(s string) string { return changeFirst(s, unicode.ToUpper) }
func lowerFirst(s string) string { return changeFirst(s, unicode.ToLower) }

func changeFirst(s string, to func(rune) rune) string {
	first, size := utf8.DecodeRuneInString(s)
	if size == 0 {
		return s
	}
	return string(to(first)) + s[size:]
}

// UpperFirst begins a text with a capital.
func UpperFirst(s string) string { return upperFirst(s) }
