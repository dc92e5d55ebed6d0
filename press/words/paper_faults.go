package words

import (
	"strconv"

	"ramplan/press"
)

const noCatalogue = "The window is not known to its end: there is no verdict, and no catalogue."

func faultTable(p *press.Plan, r *press.Result) Table {
	pos := PositionsOf(p).Fine()
	t := Table{
		Lead:    CatalogueLead(r),
		Columns: []Column{{"Fault", 1.4, false}, {"What it is", 4.2, false}, {"Lamps", 1.2, false}, {"Verdict", 1, false}, {"Reading", 0.8, false}, {"Known after", 0.75, false}, {"Judged rightly", 0.85, false}},
	}
	for _, f := range r.Faults {
		name := Fault(f)
		reading, time := none, none
		if f.Reading != nil {
			reading = pos.At(*f.Reading)
		}
		if f.Time != nil {
			time = After(*f.Time)
		}
		t.Rows = append(t.Rows, []string{name.Word, name.Meaning, lamps(f.Arrival, f.Zone), SayVerdict(f.Verdict), reading, time, Detected(p, f)})
	}
	if len(t.Rows) == 0 {
		t.Lacking = noCatalogue
	}
	t.Over = "What this logic cannot detect"
	t.Notes = Unseen(p, r)
	return t
}

func sampleTable(p *press.Plan, r *press.Result) Table {
	pos := PositionsOf(p).Fine()
	t := Table{
		Lead: "Complete assemblies of known height, measured, marked and kept at the station. A height is the " + SeatedHeight(p) + ", and no reading of the ram. Each must be judged as written, every time. They are pressed " + p.Quality.LimitCheck + ".",
		Columns: []Column{{"Sample", 1.2, false}, {"Seated height", 1.6, false}, {"How many", 0.7, false}, {"Lamps", 1.6, false}, {"The station must", 1, false},
			{"Measured height", 1, true}, {"Lamps seen", 1, true}, {"Signed", 0.9, true}},
	}
	s := r.Samples
	if s == nil {
		t.Lacking = "No reading is accepted: there are no limit samples."
		return t
	}
	many := strconv.Itoa(int(p.Quality.SamplesEach))
	shows := func(height float64) string {
		sig, ok := r.Signals()
		reading := r.ReadingOf(p, height)
		if !ok || sig.Early(reading) {
			return "not known"
		}
		arrival, zone := sig.At(reading)
		return Pair{arrival, zone}.String()
	}
	add := func(name, height string, at float64, must string) {
		t.Rows = append(t.Rows, []string{name, height, many, shows(at), must, "", "", ""})
	}
	add("Too tall", pos.Above(s.Long)+" or taller", s.Long, "refuse it")
	if s.TallestGood != nil {
		add("Tallest good", pos.Below(*s.TallestGood)+", no taller", *s.TallestGood, "accept it")
	}
	if s.ShortestGood != nil {
		add("Shortest good", pos.Above(*s.ShortestGood)+", no shorter", *s.ShortestGood, "accept it")
	}
	add("Too short", pos.Below(s.Short)+" or shorter", s.Short, "refuse it")
	t.Notes = []string{
		"Judged as written with a probability of at least " + TargetShare(s.Probability) + ".",
		"Have the heights measured by a calibrated instrument, and measure them again when a sample was dropped or is worn.",
	}
	if p.Joint.Kind != press.Touch {
		t.Notes = append(t.Notes, "One more sample teaches: a loose fit of the right height is accepted, because no lamp shows it.")
	}
	return t
}

func failureTable(p *press.Plan, r *press.Result) Table {
	t := Table{
		Lead:    "What can go wrong, what it does to the two signals, and how surely the station finds it. Severity and occurrence are for the team to judge.",
		Columns: []Column{{"Failure", 1.3, false}, {"What it is", 3.2, false}, {"Effect on the signals", 1.3, false}, {"How it is detected", 2.5, false}, {"Detection", 0.7, false}},
	}
	for _, f := range r.Faults {
		if f.Good || !f.Own && (f.Name == press.RowLong || f.Name == press.RowShort) {
			continue // the edge of the window is no failure: the drawing may still allow it
		}
		name := Fault(f)
		how := "The station reports: " + SayVerdict(f.Verdict) + "."
		switch {
		case NotLookedAt(p, f):
			how = "Not looked at: no row of the parts is marked as insert. Prove it at set-up, with nothing in the nest."
		case f.Verdict == press.EarlyContact:
			how = struckHow(r)
		case f.Detection < leastShare:
			how = "Not by these signals: another check is needed."
		case f.Verdict == press.Good || f.Detection < 0.5:
			how = "Mostly not by these signals, which say " + f.Verdict + ": another check is needed."
		}
		t.Rows = append(t.Rows, []string{name.Word, name.Meaning, lamps(f.Arrival, f.Zone), how, Detected(p, f)})
	}
	if len(t.Rows) == 0 {
		t.Lacking = noCatalogue
	}
	t.Notes = []string{
		"Detection is the probability that a part with this failure is not passed as good, over the uncertainty of the reading at the plan's own setting.",
		"Parts too tall or too short by the drawing are found as the limit samples are: see there.",
		"Stuck signals are counted without the reading rule, which finds them: " + lowerFirst(ReadingRule(p, r)),
	}
	return t
}
