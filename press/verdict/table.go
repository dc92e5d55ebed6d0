package verdict

import (
	"math"
	"slices"
)

// Table holds the words behind each signal pair, arrival first, each list in the
// order long, good, short, missing.
type Table struct {
	OnOn, OnOff, OffOn, OffOff []string
	Checked                    bool // another check finds a missing insert
}

// Insert tells where the ram stops when there is no insert.
type Insert struct {
	Nowhere bool    // nothing stops it
	Reading float64 // mm, otherwise
	Checked bool    // another check finds that it is missing
}

// Judgement is what the drawing says of a reading: Drawing holds the limits of
// the requirement, Sure what is inside the guard bands too. A reading between
// the two counts as good where both signals are on and is given to its own
// side's word elsewhere.
type Judgement struct {
	Drawing Range
	Sure    Range
}

// NewTable collects every word whose readings lead to each pair. A stretch of no
// length gives no word; a missing insert before A is early contact and stands in
// no pair.
func NewTable(s Signals, j Judgement, missing Insert) Table {
	var cells [4]words
	low, high := math.Max(s.Start, s.ZoneStart), math.Min(s.End, s.ZoneEnd)
	cells[pair(true, true)].add(j.Drawing, low, high)
	off := &cells[pair(true, false)]
	off.add(j.Sure, s.Start, math.Min(s.ZoneStart, s.End))
	off.add(j.Sure, math.Max(s.Start, s.ZoneEnd), s.End)
	cells[pair(false, s.InZone(s.End))].add(j.Sure, math.Max(s.Start, s.End), math.Inf(1))
	switch {
	case missing.Nowhere:
		cells[pair(false, s.InZone(s.End))].missing = true
	case !s.Early(missing.Reading):
		cells[pair(s.At(missing.Reading))].missing = true
	}
	return Table{OnOn: cells[3].list(), OnOff: cells[2].list(), OffOn: cells[1].list(), OffOff: cells[0].list(), Checked: missing.Checked}
}

func pair(arrival, zone bool) int {
	n := 0
	if arrival {
		n += 2
	}
	if zone {
		n++
	}
	return n
}

// words says which words lead to a pair.
type words struct{ long, good, short, missing bool }

// add puts in the words of a stretch of readings.
func (w *words) add(g Range, from, to float64) {
	has := func(low, high float64) bool { return math.Min(to, high)-math.Max(from, low) > Slack }
	w.long = w.long || has(math.Inf(-1), g.Low)
	w.good = w.good || has(g.Low, g.High)
	w.short = w.short || has(g.High, math.Inf(1))
}

func (w words) list() []string {
	out := []string{}
	for _, x := range []struct {
		in   bool
		word string
	}{{w.long, Long}, {w.good, Good}, {w.short, Short}, {w.missing, Missing}} {
		if x.in {
			out = append(out, x.word)
		}
	}
	return out
}

// Ambiguous tells whether the table cannot be trusted: some pair of it
// contradicts.
func (t Table) Ambiguous() bool {
	for _, arrival := range []bool{true, false} {
		for _, zone := range []bool{true, false} {
			if t.Contradicts(arrival, zone) {
				return true
			}
		}
	}
	return false
}

// Words returns the words behind a signal pair.
func (t Table) Words(arrival, zone bool) []string {
	switch {
	case arrival && zone:
		return t.OnOn
	case arrival:
		return t.OnOff
	case zone:
		return t.OffOn
	}
	return t.OffOff
}

// Contradicts tells whether a signal pair cannot be trusted: both signals on for
// anything but good, good under another pair, or one pair for parts that are too
// tall and for parts that are too short or missing. Under both signals a missing
// insert does not count where another check finds it.
func (t Table) Contradicts(arrival, zone bool) bool {
	list := t.Words(arrival, zone)
	has := func(word string) bool { return slices.Contains(list, word) }
	if arrival && zone {
		return has(Long) || has(Short) || has(Missing) && !t.Checked
	}
	return has(Good) || has(Long) && (has(Short) || has(Missing))
}
