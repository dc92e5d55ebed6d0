package drill

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// guessed is how many questions of the technician's exam are right by a rule that knows
// nothing, with the count of all.
func guessed(d *Drill, rule func(e Exercise) string) (right, all int) {
	for _, key := range d.keysFor(Technician, Levels) {
		e, _ := d.Exercise(key, 1)
		all++
		if slices.Contains(e.Right, rule(e)) {
			right++
		}
	}
	return right, all
}

// Who picks the longest answer, or the one whose first word stands alone among "Yes" and
// "No", is right in no more than two of five. By chance it is one of four.
func TestGuessingDoesNotPay(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	longest := func(e Exercise) string {
		return slices.MaxFunc(e.Choices, func(a, b Choice) int { return len(a.Text) - len(b.Text) }).ID
	}
	odd := func(e Exercise) string {
		first := func(c Choice) string { return strings.Trim(strings.Fields(c.Text)[0], ":,.") }
		n := map[string]int{}
		for _, c := range e.Choices {
			n[first(c)]++
		}
		var alone []Choice
		for _, c := range e.Choices {
			if n[first(c)] == 1 {
				alone = append(alone, c)
			}
		}
		if len(alone) != 1 {
			return ""
		}
		return alone[0].ID
	}
	right, all := guessed(d, longest)
	assert.LessOrEqual(t, float64(right), 0.4*float64(all), "the longest: %d of %d", right, all)
	met, ok := 0, 0
	for _, key := range d.keysFor(Technician, Levels) {
		e, _ := d.Exercise(key, 1)
		if id := odd(e); id != "" {
			met++
			if slices.Contains(e.Right, id) {
				ok++
			}
		}
	}
	assert.LessOrEqual(t, float64(ok), 0.4*float64(met), "the odd first word: %d of %d where there is one", ok, met)
}
