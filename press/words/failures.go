package words

import "ramplan/press"

// A failure says of a row of the fault catalogue what it does to the assembly, where
// it usually comes from and what keeps it away. Common practice, no source.
type failure struct{ effect, cause, prevention string }

var failures = map[string]failure{
	press.RowMissing:         {"The assembly lacks its insert.", "Nobody put one in, or the feeder was empty.", "A sensor in the nest; inserts counted out."},
	press.RowTwoInserts:      {"Part or tool may break; one insert too many.", "Two were picked up, or one was left in the nest.", "Inserts given out one by one; the nest looked at before it is loaded."},
	press.RowAlreadyPressed:  {"The joint is loaded twice and may have been disturbed.", "A finished part was put back among the new ones.", "Finished parts leave by another way, and are marked."},
	press.RowTight:           {"Not on its seat; hub or insert may be overstressed.", "Diameters outside their fit, dirt, an insert askew.", "Diameters inspected on receipt; a lead-in; lubricant as planned."},
	press.RowLoose:           {"The joint does not hold.", "Diameters outside their fit, or a wrong lot.", "Diameters inspected on receipt, or parts sorted; lots kept apart."},
	press.RowChip:            {"The part stands too tall and may sit askew.", "Swarf or a burr on the seat or in the nest.", "Parts washed and deburred; the nest wiped before loading."},
	press.RowGap:             {"Height and hold are not as drawn.", "A weak push, a tight fit, an insert askew.", "Push proved with the load cell; insert guided; a lead-in."},
	press.RowSettingLow:      {"Tight parts may stop before their seat.", "The setting was changed, or not entered as planned.", "Setting kept under access control and read back."},
	press.RowSettingHigh:     {"Part or tool is loaded more than planned.", "The setting was changed, or not entered as planned.", "Setting kept under access control and read back."},
	press.RowNestWorn:        {"Good parts are refused, or wrong ones accepted.", "Wear, a crash, a nest that shifted.", "A hard nest; the master pressed in every shift check."},
	press.RowArrivalStuckOn:  {"A part that was never pressed home may be accepted.", "A short, a relay that sticks, an input that was forced.", "Both signals seen off first; forced inputs removed and signed for."},
	press.RowArrivalStuckOff: {"Every good part is refused.", "A broken cable, or a push that no longer reaches its force.", "Cables held and checked; the push proved with the load cell."},
	press.RowZoneStuckOn:     {"A part that is too tall or too short may be accepted.", "A short, a relay that sticks, an input that was forced.", "Both signals seen off first; forced inputs removed and signed for."},
	press.RowZoneStuckOff:    {"Every good part is refused.", "A broken cable, or a zone that was entered wrongly.", "Cables held and checked; the zone read back."},
}

// failureOf is what a row of the catalogue does, comes from and is kept away by. Of
// the user's own rows the team knows.
func failureOf(f press.FaultRow) failure {
	if x, known := failures[f.Name]; known && !f.Own {
		return x
	}
	return failure{press.ForTheTeam, press.ForTheTeam, press.ForTheTeam}
}
