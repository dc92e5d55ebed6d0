package words

import "ramplan/press"

// DaysPaper is the page of the worst day, which has drawings under its rows.
const DaysPaper = "days"

const daysTitle = "Worst day"

// daysTable is the page of how a plan fares when not all goes as on average.
func (say Printer) daysTable(p *press.Plan, r *press.Result) Table {
	t := Table{
		Lead:    say.WorstDayLead(),
		Columns: []Column{{Head: "Day", Share: 3}, {Head: "What is off", Share: 4}, {Head: "Wrong heights accepted", Share: 2}, {Head: "Good parts refused", Share: 2}},
		Figures: []string{"Wrong heights accepted", "Good parts refused"},
	}
	d := r.WorstDay()
	for _, l := range say.WorstDay(p, d) {
		t.Rows = append(t.Rows, []string{l.Label, l.Note, l.Accept, l.Reject})
	}
	if len(t.Rows) == 0 {
		t.Lacking = say.DaysUnknown() + "."
		return t
	}
	t.Notes = []string{say.WeakDay(d), say.ShiftTitle(p, d) + ".", say.SpreadTitle(p, d) + ".", say.WearTitle(p, d) + ".",
		"Targets: wrong heights accepted at most " + say.TargetPPM(p.Targets.FalseAcceptPPM) + ", good parts refused at most " + say.TargetPPM(p.Targets.FalseRejectPPM) + "."}
	return t
}
