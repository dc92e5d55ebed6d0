package words

import (
	"slices"
	"strings"

	"ramplan/press"
)

// everyPart and everyCycle are what the two signals judge, in every plan.
const (
	everyPart  = "every part"
	everyCycle = "every cycle"
)

// atSetUp is when everything is proved; which change asks for what is said in one
// place.
const atSetUp = "at set-up, and after a change as on its own page"

// controlTable gives the rows of this station for a control plan, in the column
// terms of common practice.
func (say Printer) controlTable(p *press.Plan, r *press.Result) Table {
	pos := say.Positions(p)
	q := p.Requirement
	t := Table{say: say,
		Grouped: true,
		Lead:    "The rows of this station for the control plan. The column terms are those of common control-plan practice.",
		Ranges:  []string{"Specification", "Evaluation technique"},
		Columns: []Column{{"Operation", 0.9, false}, {"Machine", 0.8, false}, {"Characteristic", 1.2, false}, {"No.", 0.5, false}, {"Class", 0.5, false}, {"Specification", 1.2, false},
			{"Evaluation technique", 2.3, false}, {"Sample size", 0.85, false}, {"Frequency", 0.95, false}, {"Control method", 1.6, false}, {"Reaction plan", 1.35, false}, {"Responsible", 1, false}},
	}
	name := p.Title.Characteristic
	if name == "" {
		name = "Seated height"
	}
	reaction := "Reaction plan of this station, by pair of lamps"
	number, class := none, none // of the characteristic that is being added
	add := func(characteristic string, cells ...string) {
		row := []string{orNone(p.Quality.Operation), orNone(p.Quality.Machine), characteristic, number, class}
		t.Rows = append(t.Rows, append(append(row, cells...), orNone(p.Quality.Responsible)))
	}
	window := "not known"
	if o := r.Window.Overlap; o != nil {
		window = "accepted readings " + pos.Bare(o[0]) + " to " + pos.At(o[1])
	}
	height := pos.Bare(q.HeightLow) + " to " + pos.At(q.HeightHigh)
	number, class = orNone(p.Quality.CharacteristicNumber), orNone(p.Quality.CharacteristicClass)
	add(name, height, "Arrival and zone signal at the end of the push"+say.afterProbe(r)+"; "+window, everyPart, everyCycle, "Both signals on, read by the reading rule; else the part is set apart", reaction)
	add(name+", periodic measurement", height, "A calibrated instrument, apart from the two signals: "+say.SeatedHeight(p), p.Quality.SampleSize, p.Quality.Frequency,
		"Within the drawing; the mean stands where the plan has it", "Stop; quarantine back to the last good measurement")
	number, class = none, none
	force := "at least " + say.Force(r.Force.Need) + ", at most " + say.Force(r.Force.Cap) + "; a sound ram gives " + say.Force(r.Force.Low) + " to " + say.Force(r.Force.High) + ": between the two, find out why"
	add("Push force", force, "Load cell at the tool, at setting "+say.Setting(r.Force.Setting), "3 pushes", atSetUp, "Setting kept under access control", "Stop, call whoever keeps the plan")
	if r.Samples != nil {
		add("Limit samples, all", "Judged as written, every time", "Samples of known height", allSamples(p)+" of each height", atSetUp, "Set-up and proving", "No release before all are judged as written")
		shift := say.shiftPushes(p, r)
		briefs := make([]string, len(shift))
		for i, x := range shift {
			briefs[i] = x.brief
		}
		add("Shift check", "Judged as written, every time", "One push of each: "+strings.Join(briefs, ", "), say.pushes(len(shift)), p.Quality.LimitCheck, "Shift check", "Quarantine back to the last good check")
	}
	if f := row(r, press.RowMissing); f != nil {
		how := "Arrival and zone signal; without an insert they show " + say.lamps(f.Arrival, f.Zone)
		if RefusedFirst(*f) {
			how = "The probe: without an insert the first look shows " + say.lamps(f.Probe.Arrival, f.Probe.Zone) + ", and the press does not take place"
		}
		if NotLookedAt(p, *f) {
			how = "Not looked at: no row of the parts is marked as insert, and no other check is named"
		}
		if p.Station.PresenceCheck != "" {
			how = p.Station.PresenceCheck
		}
		add("Insert present", "One insert in the nest", strings.TrimRight(how, ".")+say.twoInserts(p, r), everyPart, everyCycle, "Both signals on, read by the reading rule; else the part is set apart", reaction)
	}
	switch {
	case TwoLooks(r) && Probed(r):
		add("Fit grips", "arrival on and zone off in the probe", "The probe, at setting "+say.Setting(*r.Probe.Setting)+" to "+pos.At(*r.Probe.End)+": a loose fit is "+say.looseRefused(p, r), everyPart, everyCycle,
			"First look: "+lowerFirst(GoOnOnly), reaction)
		add("Fit holds", say.holds(p), "Not measured: the probe sees that the fit grips, and not what it holds; nor a grip from dirt or a tilted start. Pull-test samples", press.ForTheTeam, press.ForTheTeam, "Incoming inspection of the diameters", "Quarantine the lot")
	case p.Joint.Kind != press.Touch:
		add("Fit holds", say.holds(p), "Not seen by the two signals: sort the parts before pressing, or pull-test samples", press.ForTheTeam, press.ForTheTeam, "Incoming inspection of the diameters", "Quarantine the lot")
	}
	t.Notes = []string{
		"The two lamps judge every part in every cycle: they take no sample. Sample size and frequency of the plan belong to the periodic measurement, which has a row of its own and sees what the lamps cannot: a station that has shifted.",
		"Entries “" + press.ForTheTeam + "” belong to your own quality planning.",
	}
	return t
}

// afterProbe says that the push is the second look.
func (say Printer) afterProbe(r *press.Result) string {
	if TwoLooks(r) {
		return ", after the probe went on"
	}
	return ""
}

// orNone is a text of the plan; what stands for no figure where it is empty.
func orNone(text string) string {
	if strings.TrimSpace(text) == "" {
		return none
	}
	return text
}

// twoInserts says in the row of the insert how surely two of them are found; empty
// where the two signals find them.
func (say Printer) twoInserts(p *press.Plan, r *press.Result) string {
	f := row(r, press.RowTwoInserts)
	switch {
	case f == nil || f.Verdict != press.EarlyContact && AsJudged(*f).Detection >= p.Faults.SampleProbability:
		return ""
	case f.Verdict == press.EarlyContact:
		return ". Two inserts are not found (the approach strikes them): another check is needed"
	}
	return ". Two inserts are found only " + say.Share(AsJudged(*f).Detection) + " of the time: another check is needed"
}

func (say Printer) holds(p *press.Plan) string {
	if need := p.Joint.HoldingRequired * p.Joint.HoldingSafety; need > 0 {
		return "holds " + say.Force(need)
	}
	return "no loose fit"
}

func (say Printer) reactionTable(p *press.Plan, r *press.Result) Table {
	t := Table{say: say,
		Grouped: true,
		Lead:    "What to do for each pair of lamps. A refused part is acknowledged by name, locked away with the others, and never pressed a second time; " + say.whoDecides(p) + " When a check of the station fails, every part back to the last good check is quarantined.",
		Columns: []Column{{"Lamps", 1.1, false}, {"Verdict", 0.9, false}, {"When", 1.3, false}, {"The part", 1.8, false}, {"Checks, in this order", 4.6, false}},
	}
	t.Rows = say.firstLookRows(p, r)
	second := ""
	if t.Rows != nil {
		second = "second look: "
		t.Lead = "What to do for each pair of lamps, at the first look in the probe and at the second at the end of the push. " + strings.TrimPrefix(t.Lead, "What to do for each pair of lamps. ")
	}
	verdicts := map[Pair]string{}
	for _, x := range say.PairTexts(p, r) {
		verdicts[x.Pair] = x.Verdict
	}
	for _, x := range say.Reactions(p, r) {
		t.Rows = append(t.Rows, []string{second + x.Pair.String(), verdicts[x.Pair], say.whenOn(x), x.Part, numbered(x.Checks)})
	}
	if len(t.Rows) == 0 {
		t.Lacking = "The window is not known to its end: no pair of lamps has a meaning yet."
	}
	t.Notes = []string{ReactionNote, say.ReadingRule(p, r), "A change takes back more than the lamps show: " + provedAgain + "."}
	if slices.ContainsFunc(say.Reactions(p, r), Reaction.passedOn) {
		t.Notes = append(t.Notes, "Good parts have one row at a time: until the checks of a shift or a change have passed, the row of these holds; normal running begins after them.")
	}
	if TwoLooks(r) {
		t.Notes = append(t.Notes, say.ZoneInProbe(p, r), SampledWithout)
	}
	return t
}

// whoDecides names who says what becomes of refused parts.
func (say Printer) whoDecides(p *press.Plan) string {
	if who := strings.TrimRight(strings.TrimSpace(p.Quality.Decides), "."); who != "" {
		return "only " + who + " says what becomes of it, and is called when a check fails."
	}
	return "only who is named for it says what becomes of it. The plan names nobody yet: its section Quality plan has room for it."
}

// numbered puts steps into one text, each with its number.
func numbered(steps []string) string {
	s := ""
	for i, step := range steps {
		if i > 0 {
			s += "\n"
		}
		s += Trimmed(float64(i+1), 0) + ". " + step
	}
	return s
}
