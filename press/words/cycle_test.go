package words

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press"
)

// The phases of a cycle add up to the total as it is written beside them, and none is off
// by as much as one digit.
func TestPhasesAddUpToTheTotal(t *testing.T) {
	check := func(t require.TestingT, c press.Cycle) {
		c.Total = c.Approach + c.Press + c.Settle + c.Confirm + c.Hold + c.Retract + c.Handling
		sum, digit := 0.0, 0.01
		for _, x := range CyclePhases(&c) {
			written, err := strconv.ParseFloat(plainText(x.Bare), 64)
			require.NoError(t, err)
			if c.Total < 0.1-0.001 {
				digit = 0.001
			}
			assert.Less(t, math.Abs(written-x.Seconds), digit, "%s of %v", x.Name, c)
			sum += written
		}
		total, err := strconv.ParseFloat(plainText(SecondsBare(c.Total)), 64)
		require.NoError(t, err)
		assert.InDelta(t, total, sum, 1e-9, "%v", c)
	}
	rapid.Check(t, func(t *rapid.T) {
		most := rapid.SampledFrom([]float64{0.02, 0.5, 3, 500}).Draw(t, "most")
		time := rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0, most))
		draw := func(name string) float64 { return time.Draw(t, name) }
		check(t, press.Cycle{Approach: draw("approach"), Press: draw("press"), Settle: draw("settle"), Confirm: draw("confirm"), Hold: draw("hold"), Retract: draw("retract"), Handling: draw("handling")})
	})

	// By hand: 0.334 three times and 0.1 typed in are 1.102, written as 1.11; what was cut
	// off, 0.004 each, is shared out as two digits to the first two of them. What was typed in
	// stays as it was typed.
	c := press.Cycle{Approach: 0.334, Press: 0.334, Retract: 0.334, Confirm: 0.1, Total: 1.102}
	var got []string
	for _, x := range CyclePhases(&c) {
		got = append(got, x.Bare)
	}
	assert.Equal(t, []string{"0.34", "0.34", "0", "0.10", "0", "0.33", "0"}, got)
	assert.Equal(t, "1.11", SecondsBare(c.Total))

	// And so it is in the plans that come along.
	for _, name := range []string{"example-plan", "pivot-pin", "rain-gauge-lid"} {
		check(t, press.Evaluate(fromExample(t, name)).Cycle)
	}
}

// What the time of a cycle without an insert runs to stands beside it. Derived by hand: the
// example's push ends before the hub at 118.14 mm, so that nothing is met; a push of 12 mm
// reaches it.
func TestMissingCycleSaysWhatItRunsTo(t *testing.T) {
	assert.Equal(t, "until a station that watches both lamps gives up", MissingCycle(press.Evaluate(example(t, nil))))
	assert.Equal(t, "the ram is stopped by what stays in the nest", MissingCycle(press.Evaluate(example(t, changes{"window.push_stroke": "12"}))))
	settled := press.Evaluate(example(t, changes{"motion.settle_time": "0.4"}))
	assert.Greater(t, *settled.Cycle.MissingWatched, *settled.Cycle.MissingTotal)
	assert.False(t, strings.Contains(MissingCycle(settled), "stopped"))
}
