package drill

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press/words"
)

// Derived by hand: a nominal part of the example is 25 high and reads 115.137.
func TestTypedForTheOther(t *testing.T) {
	p, r := example(t)
	for _, c := range []struct {
		x               float64
		height, reading bool
	}{{24.99, true, false}, {115.14, false, true}, {80, false, false}, {26.5, true, false}, {114.2, false, true}} {
		assert.Equal(t, c.height, ForHeight(p, r, c.x), "%v as a reading", c.x)
		assert.Equal(t, c.reading, ForReading(p, r, c.x), "%v as a height", c.x)
	}
	x := 24.99
	a := advice(t, p, r, words.Pair{Arrival: true, Zone: true}, words.One, &x)
	assert.Contains(t, a.Doubt, "Is 24.99\u202fmm the height of the part?")
	assert.NotContains(t, a.Doubt, "do not fit", "asked first, before any talk of faults")
}
