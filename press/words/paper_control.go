package words

import (
	"strings"

	"ramplan/press"
)

// controlTable gives the rows of this station for a control plan, in the column
// terms of common practice.
func controlTable(p *press.Plan, r *press.Result) Table {
	pos := PositionsOf(p)
	q := p.Requirement
	t := Table{
		Lead:   "The rows of this station for the control plan. The column terms are those of common control-plan practice.",
		Ranges: []string{"Specification"},
		Columns: []Column{{"Characteristic", 1.3, false}, {"Specification", 1.3, false}, {"Evaluation technique", 2.6, false}, {"Sample size", 0.9, false},
			{"Frequency", 1.2, false}, {"Control method", 1.8, false}, {"Reaction plan", 1.4, false}},
	}
	name := p.Title.Characteristic
	if name == "" {
		name = "Seated height"
	}
	reaction := "Reaction plan of this station, by pair of lamps"
	add := func(cells ...string) { t.Rows = append(t.Rows, cells) }
	window := "not known"
	if o := r.Window.Overlap; o != nil {
		window = "accepted readings " + pos.Bare(o[0]) + " to " + pos.At(o[1])
	}
	add(name, pos.Bare(q.HeightLow)+" to "+pos.At(q.HeightHigh), "Arrival and zone signal at the end of the push; "+window,
		p.Quality.SampleSize, p.Quality.Frequency, "Both signals on, read by the reading rule; else the part is set apart", reaction)
	force := "at least " + Force(r.Force.Need) + ", at most " + Force(r.Force.Cap)
	add("Push force", force, "Load cell at the tool, at setting "+Setting(r.Force.Setting), "3 pushes", "at set-up and after a change", "Setting kept under access control", "Stop, call whoever keeps the plan")
	if r.Samples != nil {
		add("Limit samples, all", "Judged as written, every time", "Samples of known height", allSamples(p)+" of each height", "at set-up and after a change", "Set-up and proving", "No release before all are judged as written")
		add("Limit samples, shift check", "Judged as written, every time", "Samples of known height, and a master that is good", "1 too tall, 1 too short, 1 master", p.Quality.LimitCheck, "Shift check", "Quarantine back to the last good check")
	}
	if f := row(r, press.RowMissing); f != nil {
		how := "Arrival and zone signal; without an insert they show " + lamps(f.Arrival, f.Zone)
		if NotLookedAt(p, *f) {
			how = "Not looked at: no row of the parts is marked as insert, and no other check is named"
		}
		if p.Station.PresenceCheck != "" {
			how = p.Station.PresenceCheck
		}
		add("Insert present", "One insert in the nest", strings.TrimRight(how, ".")+twoInserts(p, r), p.Quality.SampleSize, p.Quality.Frequency, "Both signals on, read by the reading rule; else the part is set apart", reaction)
	}
	if p.Joint.Kind != press.Touch {
		add("Fit holds", holds(p), "Not seen by the two signals: sort the parts before pressing, or pull-test samples", "for the team to set", "for the team to set", "Incoming inspection of the diameters", "Quarantine the lot")
	}
	t.Notes = []string{"Sample sizes and frequencies are what the plan says; entries “for the team to set” belong to your own quality planning."}
	return t
}

// twoInserts says in the row of the insert how surely two of them are found; empty
// where the two signals find them.
func twoInserts(p *press.Plan, r *press.Result) string {
	f := row(r, press.RowTwoInserts)
	switch {
	case f == nil || f.Verdict != press.EarlyContact && f.Detection >= p.Faults.SampleProbability:
		return ""
	case f.Verdict == press.EarlyContact:
		return ". Two inserts are not found (the approach strikes them): another check is needed"
	}
	return ". Two inserts are found only " + Share(f.Detection) + " of the time: another check is needed"
}

func holds(p *press.Plan) string {
	if need := p.Joint.HoldingRequired * p.Joint.HoldingSafety; need > 0 {
		return "holds " + Force(need)
	}
	return "no loose fit"
}

func reactionTable(p *press.Plan, r *press.Result) Table {
	t := Table{
		Grouped: true,
		Lead:    "What to do for each pair of lamps. A refused part is acknowledged by name, locked away with the others, and never pressed a second time; only who is named for it says what becomes of it. When a check of the station fails, every part back to the last good check is quarantined.",
		Columns: []Column{{"Lamps", 1.1, false}, {"Verdict", 0.9, false}, {"When", 1.3, false}, {"The part", 1.8, false}, {"Checks, in this order", 4.6, false}},
	}
	verdicts := map[Pair]string{}
	for _, x := range PairTexts(r) {
		verdicts[x.Pair] = x.Verdict
	}
	for _, x := range Reactions(p, r) {
		t.Rows = append(t.Rows, []string{x.Pair.String(), verdicts[x.Pair], x.Situation.Title(), x.Part, numbered(x.Checks)})
	}
	if len(t.Rows) == 0 {
		t.Lacking = "The window is not known to its end: no pair of lamps has a meaning yet."
	}
	t.Notes = []string{ReactionNote, ReadingRule(p, r)}
	return t
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
