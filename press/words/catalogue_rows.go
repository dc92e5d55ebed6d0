package words

import "ramplan/press"

// A rowText is all that is said of a row of the fault catalogue by itself. What stands fixed
// for it beside words is its [press.Case].
type rowText struct {
	Term
	probed  string                                    // what it means where the probe refuses it; empty: no more
	failure                                           // empty where nobody asks for it
	suspect *suspect                                  // nil: nobody looks for it with a pair of lamps
	plainly func(pos Positions, p *press.Plan) string // in a few words for an exercise; nil: by its name
	size    func(pos Positions, p *press.Plan) string // how large it is in a plan; nil: the meaning says it
}

// A failure says of a row of the fault catalogue what it does to the assembly, where
// it usually comes from and what keeps it away. Common practice, no source.
type failure struct{ effect, cause, prevention string }

// rowTexts are the rows of the catalogue, in their order.
var rowTexts = map[string]rowText{
	press.RowNominal: {
		Term: Term{"Nominal part", "A part with every length in the middle of its spread."},
	},
	press.RowTallest: {
		Term: Term{"Tallest accepted", "A part that reads just inside the window, on the tall side."},
	},
	press.RowShortest: {
		Term: Term{"Shortest accepted", "A part that reads just inside the window, on the short side."},
	},
	press.RowLong: {
		Term: Term{"Just refused, tall side", "A part that reads 0.001\u202fmm before the window, and is refused."},
	},
	press.RowShort: {
		Term: Term{"Just refused, short side", "A part that reads 0.001\u202fmm past the window, and is refused."},
	},
	press.RowMissing: {
		Term:    Term{"Missing insert", "No insert was put in, and the ram goes on to whatever stops it."},
		failure: failure{"The assembly lacks its insert.", "Nobody put one in, or the feeder was empty.", "A sensor in the nest; inserts counted out."},
		plainly: func(Positions, *press.Plan) string { return "There is no insert" },
	},
	press.RowTwoInserts: {
		Term:    Term{"Two inserts", "A second insert lies on the first."},
		failure: failure{"Part or tool may break; one insert too many.", "Two were picked up, or one was left in the nest.", "Inserts given out one by one; the nest looked at before it is loaded."},
		suspect: &suspect{"a second insert", "Second insert?", false},
	},
	press.RowAlreadyPressed: {
		Term:    Term{"Pressed before", "A finished part comes round again and is seated already."},
		failure: failure{"The joint is loaded twice and may have been disturbed.", "A finished part was put back among the new ones.", "Finished parts leave by another way, and are marked."},
		plainly: func(Positions, *press.Plan) string { return "The part was pressed before" },
	},
	press.RowTight: {
		Term:    Term{"Too tight", "One case of many, a fit that takes a fifth more than the strongest push: the insert sticks on its way. A fit that is only just too tight sticks close to its seat, and passes where the window reaches so far."},
		failure: failure{"Not on its seat; hub or insert may be overstressed.", "Diameters outside their fit, dirt, an insert askew.", "Diameters inspected on receipt; a lead-in; lubricant as planned."},
		suspect: &suspect{"a tight insert", "Tight?", false},
		plainly: func(Positions, *press.Plan) string { return "Too tight: the insert sticks on its way" },
	},
	press.RowLoose: {
		Term:    Term{"Loose fit", "Hole and insert do not grip each other: the insert slides to its seat, and nothing holds it there."},
		failure: failure{"The joint does not hold.", "Diameters outside their fit, or a wrong lot.", "Diameters inspected on receipt, or parts sorted; lots kept apart."},
		plainly: func(Positions, *press.Plan) string { return "Loose fit: nothing holds the insert at its seat" },
	},
	press.RowChip: {
		Term:    Term{"Chip under the part", "A chip of the thickness in the plan lies on the seat; crushed, it reads thinner."},
		failure: failure{"The part stands too tall and may sit askew.", "Swarf or a burr on the seat or in the nest.", "Parts washed and deburred; the nest wiped before loading."},
		suspect: &suspect{"a chip", "Chip?", true},
		plainly: func(pos Positions, p *press.Plan) string {
			return "A chip of " + pos.Length(p.Faults.Chip) + " lies under the part"
		},
		size: func(pos Positions, p *press.Plan) string {
			return "The chip is " + pos.Length(p.Faults.Chip) + " thick."
		},
	},
	press.RowGap: {
		Term:    Term{"Not fully seated", "The insert stands off its seat by the gap in the plan."},
		failure: failure{"Height and hold are not as drawn.", "A weak push, a tight fit, an insert askew.", "Push proved with the load cell; insert guided; a lead-in."},
		suspect: &suspect{"an insert off its seat", "Off its seat?", false},
		plainly: func(pos Positions, p *press.Plan) string {
			return "The insert stands " + pos.Length(p.Faults.Gap) + " off its seat"
		},
		size: func(pos Positions, p *press.Plan) string { return "The gap is " + pos.Length(p.Faults.Gap) + "." },
	},
	press.RowSettingLow: {
		Term:    Term{"Setting one step low", "A nominal part, pushed one setting step more weakly than planned."},
		failure: failure{"Tight parts may stop before their seat.", "The setting was changed, or not entered as planned.", "Setting kept under access control and read back."},
	},
	press.RowSettingHigh: {
		Term:    Term{"Setting one step high", "A nominal part, pushed one setting step harder than planned."},
		failure: failure{"Part or tool is loaded more than planned.", "The setting was changed, or not entered as planned.", "Setting kept under access control and read back."},
	},
	press.RowNestWorn: {
		Term:    Term{"Worn nest", "The nest has given way by the depth in the plan: the part is good, the station is wrong, and every reading is off by as much. The check with the master is there to find it."},
		failure: failure{"Good parts are refused, or wrong ones accepted.", "Wear, a crash, a nest that shifted.", "A hard nest; the master pressed in every shift check."},
		suspect: &suspect{"a worn nest", "Is the nest worn?", true},
		size: func(pos Positions, p *press.Plan) string {
			return "The nest has given way by " + pos.Length(p.Faults.NestWear) + "."
		},
	},
	press.RowArrivalStuckOn: {
		Term:    Term{"Arrival stuck on, no insert", "The arrival signal is always on while the insert is missing. Only the reading rule finds it: both signals seen off first."},
		failure: failure{"A part that was never pressed home may be accepted.", "A short, a relay that sticks, an input that was forced.", "Both signals seen off first; forced inputs removed and signed for."},
	},
	press.RowArrivalStuckOff: {
		Term:    Term{"Arrival stuck off", "The arrival signal never comes, on a nominal part."},
		failure: failure{"Every good part is refused.", "A broken cable, or a push that no longer reaches its force.", "Cables held and checked; the push proved with the load cell."},
	},
	press.RowZoneStuckOn: {
		Term:    Term{"Zone stuck on", "The zone signal is always on, and a part comes that should just be refused on the tall side. Only the reading rule finds it."},
		probed:  "The zone signal is always on, and a part comes that should just be refused on the tall side. The probe finds it, where zone must be off.",
		failure: failure{"A part that is too tall or too short may be accepted.", "A short, a relay that sticks, an input that was forced.", "Both signals seen off first; forced inputs removed and signed for."},
	},
	press.RowZoneStuckOff: {
		Term:    Term{"Zone stuck off", "The zone signal never comes, on a nominal part."},
		failure: failure{"Every good part is refused.", "A broken cable, or a zone that was entered wrongly.", "Cables held and checked; the zone read back."},
	},
}

// textOf is what is said of a row; nothing of one of the user's own.
func textOf(f press.FaultRow) (rowText, bool) {
	if f.Own {
		return rowText{}, false
	}
	t, known := rowTexts[f.Name]
	return t, known
}

// Fault names a row of the fault catalogue and says what it is. The user's own
// rows keep the name they were given.
func (say Printer) Fault(row press.FaultRow) Term {
	if t, known := textOf(row); known {
		if t.probed != "" && RefusedFirst(row) {
			t.Meaning = t.probed
		}
		return t.Term
	}
	return Term{row.Name, "A fault of your own."}
}

// FaultPlainly says a row of the catalogue of a plan in a few plain words.
func (say Printer) FaultPlainly(p *press.Plan, row press.FaultRow) string {
	if t, _ := textOf(row); t.plainly != nil {
		return t.plainly(say.Positions(p), p)
	}
	return say.Fault(row).Word
}

// FaultSize says how large a row of the catalogue is in a plan; empty where its meaning says it.
func (say Printer) FaultSize(p *press.Plan, row press.FaultRow) string {
	if t, _ := textOf(row); t.size != nil {
		return t.size(say.Positions(p), p)
	}
	return ""
}

// failureOf is what a row of the catalogue does, comes from and is kept away by. Of
// the user's own rows the team knows.
func failureOf(f press.FaultRow) failure {
	if t, _ := textOf(f); t.failure != (failure{}) {
		return t.failure
	}
	return failure{press.ForTheTeam, press.ForTheTeam, press.ForTheTeam}
}
