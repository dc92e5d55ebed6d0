package words

import "ramplan/press"

// faultRows name the rows of the fault catalogue and say what they are.
var faultRows = map[string]Term{
	press.RowNominal:         {"Nominal part", "A part with every length in the middle of its spread."},
	press.RowTallest:         {"Tallest accepted", "A part that reads just inside the window, on the tall side."},
	press.RowShortest:        {"Shortest accepted", "A part that reads just inside the window, on the short side."},
	press.RowLong:            {"Just refused, tall side", "A part that reads 0.001\u202fmm before the window: refused, though perhaps within the drawing."},
	press.RowShort:           {"Just refused, short side", "A part that reads 0.001\u202fmm past the window: refused, though perhaps within the drawing."},
	press.RowMissing:         {"Missing insert", "No insert was put in, and the ram goes on to whatever stops it."},
	press.RowTwoInserts:      {"Two inserts", "A second insert lies on the first."},
	press.RowAlreadyPressed:  {"Pressed before", "A finished part comes round again and is seated already."},
	press.RowTight:           {"Too tight", "A fit so tight that it takes a fifth more than the strongest push: the insert sticks on its way."},
	press.RowLoose:           {"Loose fit", "Hole and insert do not grip each other: the insert slides to its seat, and nothing holds it there."},
	press.RowChip:            {"Chip under the part", "A chip of the thickness in the plan lies on the seat; crushed, it reads thinner."},
	press.RowGap:             {"Not fully seated", "The insert stands off its seat by the gap in the plan."},
	press.RowSettingLow:      {"Setting one step low", "A nominal part, pushed one setting step more weakly than planned."},
	press.RowSettingHigh:     {"Setting one step high", "A nominal part, pushed one setting step harder than planned."},
	press.RowNestWorn:        {"Worn nest", "The nest has given way by the depth in the plan: the part is good, the station is wrong, and every reading is off by as much. The check with the master is there to find it."},
	press.RowArrivalStuckOn:  {"Arrival stuck on, no insert", "The arrival signal is always on while the insert is missing. Only the reading rule finds it: both signals seen off first."},
	press.RowArrivalStuckOff: {"Arrival stuck off", "The arrival signal never comes, on a nominal part."},
	press.RowZoneStuckOn:     {"Zone stuck on", "The zone signal is always on, and a part comes that should just be refused on the tall side. Only the reading rule finds it."},
	press.RowZoneStuckOff:    {"Zone stuck off", "The zone signal never comes, on a nominal part."},
}

// Fault names a row of the fault catalogue and says what it is. The user's own
// rows keep the name they were given.
func Fault(row press.FaultRow) Term {
	if t, ok := faultRows[row.Name]; ok && !row.Own {
		return t
	}
	return Term{row.Name, "A fault of your own."}
}
