package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Where the force is used up on the way. By hand: drag 100 N, a fit of 300 N over
// 4 mm after a pilot of 2 mm, a counterforce of 60 N over 6 mm, that is 10 N/mm: at
// 2 mm 120 N, then 85 N/mm.
func TestStallAgainstACounterforce(t *testing.T) {
	d := push{drag: 100, counter: 60, rise: 300, pilot: 2, length: 4, travel: 6}
	assert.InDelta(t, 460, d.seat(), 1e-12)
	for force, want := range map[float64]float64{90: 0, 100: 0, 110: 1, 120: 2, 205: 3, 459: 2 + 339.0/85} {
		z, stalled := d.stall(force)
		assert.True(t, stalled, force)
		assert.InDelta(t, want, z, 1e-9, force)
		assert.InDelta(t, max(force, 100), d.at(z), 1e-9, force)
	}
	_, stalled := d.stall(460)
	assert.False(t, stalled)
	at := push{counter: 60}
	assert.InDelta(t, 60, at.seat(), 1e-12, "without a way all of it comes at the seat")
	_, stalled = at.stall(50)
	assert.False(t, stalled, "a part without a way cannot stand tall")
}
