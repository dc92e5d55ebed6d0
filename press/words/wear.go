package words

import "ramplan/press"

// masterWear is how surely the check with the master finds the wear of the nest, with
// the limits as they are written; false where nobody knows.
func (say Printer) masterWear(p *press.Plan, r *press.Result) (share float64, limits string, ok bool) {
	at := shown{pos: say.Positions(p), unsure: r.MasterWithin()}
	low, high := at.limits(r.Nominal(), r.Nominal())
	share, ok = r.WearFound(low, high)
	return share, at.pos.between(low, high), ok
}

// Wear says how surely a worn nest is found, by the two signals on a nominal part and
// by the check with the master: the part is good and the station is wrong, so this is
// no judgement of a part.
func (say Printer) Wear(p *press.Plan, r *press.Result, row press.FaultRow) string {
	if row.Verdict == press.EarlyContact {
		return "no part at fault"
	}
	lamps, master := say.wearShares(p, r, row)
	s := "lamps " + lamps
	if master != none {
		s += ", master check " + master
	}
	return s
}

// wearShares are how surely the two find a worn nest; none where nobody knows, or in a
// row that is not about it.
func (say Printer) wearShares(p *press.Plan, r *press.Result, row press.FaultRow) (lamps, master string) {
	lamps, master = none, none
	if !isWear(row) || row.Verdict == press.EarlyContact {
		return lamps, master
	}
	if share, _, ok := say.masterWear(p, r); ok {
		master = say.Rarely(share)
	}
	return say.Rarely(row.Detection), master
}

// fileWear adds to a table's file of rows how surely lamps and master find a worn nest,
// of the row that was added last.
func (t *Table) fileWear(p *press.Plan, r *press.Result, row press.FaultRow) {
	if t.Filed == nil {
		t.Filed = []FiledColumn{{Head: "Found by the lamps", Figure: true}, {Head: "Found by the master check", Figure: true}}
	}
	lamps, master := t.say.wearShares(p, r, row)
	t.Filed[0].Cells, t.Filed[1].Cells = append(t.Filed[0].Cells, lamps), append(t.Filed[1].Cells, master)
}

// isWear tells whether a row is the worn nest.
func isWear(row press.FaultRow) bool { return row.Name == press.RowNestWorn && !row.Own }

// wearFound says what the check with the master is worth; empty where the plan asks
// about no wear.
func (say Printer) wearFound(p *press.Plan, r *press.Result) string {
	f := row(r, press.RowNestWorn)
	share, _, ok := say.masterWear(p, r)
	if f == nil || !ok {
		return ""
	}
	return "Within its limits the push with the master finds a nest worn by " + say.Positions(p).Length(p.Faults.NestWear) + " in " + say.OneIn(share) + "; the lamps on a part find it in " + say.OneIn(f.Detection) + "."
}

// masterLimits says in brackets where the master must read, and how often that finds
// the wear.
func (say Printer) masterLimits(p *press.Plan, r *press.Result) string {
	share, limits, ok := say.masterWear(p, r)
	if !ok {
		return ""
	}
	return " (it must read " + limits + ": finds it in " + say.OneIn(share) + ")"
}
