package words

import (
	"slices"
	"strings"

	"ramplan/press"
)

// A suspect is something to look for with a pair of lamps.
type suspect struct {
	row  string // of the fault catalogue; empty: it has none
	look string // after: look for
	card string // on the card, as a question
	any  bool   // named too where the catalogue of the plan has no such row
}

// What makes a part stand too tall, or too short: common practice, no source. Which
// of them a pair of lamps may come from is the plan's own catalogue.
var (
	tallSuspects = []suspect{
		{press.RowChip, "a chip", "Chip?", true},
		{press.RowTwoInserts, "a second insert", "Second insert?", false},
		{"", "a tilted insert", "Tilted?", true},
		{press.RowTight, "a tight insert", "Tight?", false},
		{press.RowGap, "an insert off its seat", "Off its seat?", false},
	}
	shortSuspects = []suspect{{press.RowNestWorn, "a worn nest", "Is the nest worn?", true}}
)

// suspectsOf are those that lead to a pair by what the catalogue computes of them.
func suspectsOf(r *press.Result, all []suspect, on Pair) []suspect {
	var out []suspect
	for _, c := range all {
		row, computed := catalogued(r, c.row)
		if computed && shows(row, on) || !computed && c.any {
			out = append(out, c)
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
func isSuspect(all []suspect, row string) bool {
	return slices.ContainsFunc(all, func(c suspect) bool { return c.row == row })
}

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
