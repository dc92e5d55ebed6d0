package words

import (
	"slices"
	"strings"

	"ramplan/press"
)

// A suspect is something to look for with a pair of lamps.
type suspect struct {
	look string // after: look for
	card string // on the card, as a question
	any  bool   // named too where the catalogue of the plan has no such row
}

// tilted is a suspect that no row of the catalogue is.
var tilted = suspect{"a tilted insert", "Tilted?", true}

// What makes a part stand too tall, or too short, by rows of the catalogue and in the order in
// which it is looked for: common practice, no source. No row: [tilted]. Which of them a pair
// of lamps may come from is the plan's own catalogue.
var (
	tallSuspects  = []string{press.RowChip, press.RowTwoInserts, "", press.RowTight, press.RowGap}
	shortSuspects = []string{press.RowNestWorn}
)

// suspectsOf are those that lead to a pair by what the catalogue computes of them.
func suspectsOf(r *press.Result, rows []string, on Pair) []suspect {
	var out []suspect
	for _, name := range rows {
		one := tilted
		if name != "" {
			one = *rowTexts[name].suspect
		}
		row, computed := catalogued(r, name)
		if computed && shows(row, on) || !computed && one.any {
			out = append(out, one)
		}
	}
	return out
}

// catalogued finds a row of the catalogue that is not the user's own.
func catalogued(r *press.Result, name string) (press.FaultRow, bool) {
	i := slices.IndexFunc(r.Faults, func(f press.FaultRow) bool { return f.Name == name && !f.Own })
	if i < 0 {
		return press.FaultRow{}, false
	}
	return r.Faults[i], true
}

func shows(f press.FaultRow, on Pair) bool {
	return !RefusedFirst(f) && f.Arrival != nil && f.Zone != nil && *f.Arrival == on.Arrival && *f.Zone == on.Zone
}

// isSuspect tells whether a row is among suspects.
func isSuspect(all []suspect, row string) bool { return slices.Contains(all, *rowTexts[row].suspect) }

// lookFor names suspects in a sentence; empty for none.
func lookFor(all []suspect) string {
	var out []string
	for _, c := range all {
		out = append(out, c.look)
	}
	return or(out)
}

// or joins a list: a, b or c.
func or(list []string) string {
	if len(list) < 2 {
		return strings.Join(list, "")
	}
	return strings.Join(list[:len(list)-1], ", ") + " or " + list[len(list)-1]
}
