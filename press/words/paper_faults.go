package words

import (
	"slices"
	"strings"

	"ramplan/press"
)

const noCatalogue = "The window is not known to its end: there is no verdict, and no catalogue."

func (say Printer) faultTable(p *press.Plan, r *press.Result) Table {
	pos := say.Positions(p).Fine()
	t := Table{say: say,
		Lead:    say.CatalogueLead(r),
		Figures: []string{"Reading", "Known after", "Judged rightly"},
		Columns: []Column{{"Fault", 1.4, false}, {"What it is", 4.2, false}, {"Lamps", 1.2, false}, {"Verdict", 1, false}, {"Reading", 0.8, false}, {"Known after", 0.75, false}, {"Judged rightly", 0.85, false}},
	}
	two := TwoLooks(r)
	if two {
		t.Columns = slices.Insert(t.Columns, 2, Column{"First look", 1.2, false})
	}
	for _, raw := range r.Faults {
		f := AsJudged(raw)
		name := say.Fault(f)
		reading, time := none, none
		if f.Reading != nil {
			reading = pos.At(*f.Reading)
		}
		if f.Time != nil {
			time = say.After(*f.Time)
		}
		row := []string{name.Word, say.FaultMeans(p, r, f), say.SecondLook(f), say.SayVerdict(p, f), reading, time, say.Detected(p, r, f)}
		if two {
			row = slices.Insert(row, 2, say.FirstLook(f))
		}
		t.Rows = append(t.Rows, row)
		t.fileWear(p, r, f)
	}
	if len(t.Rows) == 0 {
		t.Lacking = noCatalogue
	}
	t.Over = "What this logic cannot detect"
	t.Notes = say.Unseen(p, r)
	if atOneReading(t) {
		t.Notes = append(t.Notes, "Where two rows have one reading and not one verdict, they lie on either side of a limit of the window, less apart than the last digit.")
	}
	return t
}

// atOneReading tells whether two rows show one reading and are judged differently.
func atOneReading(t Table) bool {
	verdicts := map[string]string{}
	for _, row := range t.Rows {
		if reading := row[4]; reading != none {
			if known, met := verdicts[reading]; met && known != row[2]+row[3] {
				return true
			}
			verdicts[reading] = row[2] + row[3]
		}
	}
	return false
}

func (say Printer) failureTable(p *press.Plan, r *press.Result) Table {
	t := Table{say: say,
		Lead:    "What can go wrong, what it does to the assembly and to the two signals, where it comes from, what keeps it away, and how surely the station finds it. Severity and occurrence are for the team to judge.",
		Figures: []string{"Detection"},
		Columns: []Column{{"Failure", 0.95, false}, {"What it is", 2.8, false}, {"Effect", 2, false}, {"Effect on the signals", 0.9, false}, {"Cause", 1.95, false}, {"Prevention", 2.15, false},
			{"How it is detected", 2.4, false}, {"Detection", 0.75, false}},
	}
	for _, raw := range r.Faults {
		f := AsJudged(raw)
		if f.Good || f.Case().Edge {
			continue // the edge of the window is no failure: the drawing may still allow it
		}
		name := say.Fault(f)
		how := "The station reports: " + say.SayVerdict(p, f) + "."
		switch {
		case NotLookedAt(p, f):
			how = "Not looked at: no row of the parts is marked as insert. Prove it at set-up, with nothing in the nest."
		case f.Case().Stuck.On() && f.Detection < p.Faults.SampleProbability:
			how = "Not by the two signals alone: the reading rule finds it."
		case f.Verdict == press.EarlyContact:
			how = say.struckHow(r)
		case isWear(f):
			how = "The check with the master, at every shift" + say.masterLimits(p, r) + "; the two signals on a part alone mostly do not."
		case f.Detection < leastShare:
			how = "Not by these signals: another check is needed."
		case f.Verdict != press.Good && f.Detection >= 0.5 && f.Detection < p.Faults.SampleProbability:
			how = "These signals find it as often as stands beside this, and otherwise pass it as good: another check is needed."
		case f.Verdict == press.Good || f.Detection < 0.5:
			how = "Mostly not by these signals, which say " + say.SayVerdict(p, f) + ": another check is needed."
		}
		x := failureOf(f)
		signals := say.lamps(f.Arrival, f.Zone)
		if RefusedFirst(f) {
			how, signals = "The station reports: "+press.RefusedByProbe+", and the press does not take place.", say.FirstLook(f)+"; no push"
			switch {
			case NotLookedAt(p, f):
				how = "By this plan the probe refuses it, but no row of the parts is marked as insert. Prove it at set-up, with nothing in the nest."
			case f.Detection < p.Faults.SampleProbability:
				how = "Not always: the station reports " + press.RefusedByProbe + " only as often as the detection says."
			}
			if f.Name == press.RowLoose && !f.Own {
				how += " Not a grip from dirt or a tilted start."
			}
		}
		if f.Case().Absent && p.Station.PresenceCheck != "" {
			how = strings.TrimSuffix(how, ".") + "; " + say.PresenceCheck(p) + " finds it besides."
			x.prevention = upperFirst(say.PresenceCheck(p)) + ", proved before every shift; inserts counted out."
		}
		t.Rows = append(t.Rows, []string{name.Word, name.Meaning, x.effect, signals, x.cause, x.prevention, how, say.Detected(p, r, f)})
		t.fileWear(p, r, f)
	}
	if len(t.Rows) == 0 {
		t.Lacking = noCatalogue
	}
	t.Filed = append(t.Filed, blankColumn("Severity", len(t.Rows)), blankColumn("Occurrence", len(t.Rows)))
	if TwoLooks(r) {
		t.Notes = append(t.Notes, "Two looks, in the probe and in the push: detection is of both together. "+GoOnOnly+" "+say.ZoneInProbe(p, r))
	}
	t.Notes = append(t.Notes,
		"Detection is the probability that a part with this failure is not passed as good, over the uncertainty of the reading at the plan's own setting. What is met in the approach counts as 0.",
		"Parts too tall or too short by the drawing are found as the limit samples are: see there.",
		"Cause and prevention are common practice, no source: the team puts what holds for its own station.",
		"Stuck signals are counted without the reading rule, which finds them; it stands on the sheet and at its step of set-up and proving.",
	)
	return t
}
