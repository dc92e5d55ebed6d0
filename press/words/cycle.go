package words

import (
	"math"
	"slices"

	"ramplan/press"
)

// A CyclePhase is one phase of a cycle, its time as it is written beside the others.
type CyclePhase struct {
	Name    string  // approach
	Seconds float64 // s, unrounded
	Bare    string  // in s, so that all of them add up to the total as it is written
}

// Text writes the time with its unit.
func (x CyclePhase) Text() string { return Unit(x.Bare, "s") }

// CyclePhases are the phases of a cycle in their order. The total is rounded up, as every
// time is; the phases share that out: each is cut off, and what is missing goes to those
// that lost most, so that no phase is off by as much as one digit.
func CyclePhases(c *press.Cycle) []CyclePhase {
	out := []CyclePhase{
		{"approach", c.Approach, ""}, {"probe", c.Probe, ""}, {"press", c.Press, ""}, {"settle", c.Settle, ""}, {"confirm", c.Confirm, ""},
		{"hold", c.Hold, ""}, {"retract", c.Retract, ""}, {"handling", c.Handling, ""},
	}
	parts, decimals := 100.0, 2
	if roundedUp(c.Total, 1000) < 0.1 { // as SecondsBare writes it
		parts, decimals = 1000, 3
	}
	if c.Probe == 0 {
		out = slices.Delete(out, 1, 2)
	}
	left := math.Round(roundedUp(c.Total, parts) * parts)
	units, order := make([]float64, len(out)), make([]int, len(out))
	for i, x := range out {
		units[i], order[i] = math.Floor(x.Seconds*parts+1e-6), i
		left -= units[i]
	}
	lost := func(i int) float64 { return out[i].Seconds*parts - units[i] }
	slices.SortStableFunc(order, func(a, b int) int {
		switch {
		case lost(a) > lost(b)+1e-9:
			return -1
		case lost(b) > lost(a)+1e-9:
			return 1
		}
		return 0
	})
	for _, i := range order {
		if left < 1 {
			break
		}
		units[i]++
		left--
	}
	for i := range out {
		out[i].Bare = Trimmed(units[i]/parts, decimals)
		if decimals == 2 && units[i] > 0 {
			out[i].Bare = Fixed(units[i]/parts, decimals)
		}
	}
	return out
}

// StepsNotDrawn says of a picture of approach, push and return that the plan does more in
// its cycle; empty where it does not.
func (say Printer) StepsNotDrawn(r *press.Result) string {
	switch {
	case r.Sequence != nil:
		return "The steps of this plan are not drawn here: the picture shows approach, push and return alone."
	case TwoLooks(r):
		return "The probe of this plan is not drawn here: the picture shows approach, push and return alone."
	}
	return ""
}

// MissingCycle says what the time of a cycle without an insert runs to, so that nobody
// compares it with the one of the result's file, which counts no waiting.
func (say Printer) MissingCycle(r *press.Result) string {
	if r.Cycle.MissingMet {
		return "the ram is stopped by what stays in the nest"
	}
	return "until a station that watches both lamps gives up"
}
