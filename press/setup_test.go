package press

import (
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func setupPlan(t *testing.T) (*Plan, *Result) {
	t.Helper()
	data, err := os.ReadFile("../static/examples/example-plan.json")
	require.NoError(t, err)
	p, faults := Decode(data)
	require.Empty(t, faults)
	return p, Evaluate(p)
}

// TestPushAt: derived by hand from the plan. At the setting in force the push is the
// one of the result; on the nest the ram reads deeper by push over stiffness.
func TestPushAt(t *testing.T) {
	p, r := setupPlan(t)
	now := r.PushAt(r.Force.Setting)
	assert.InDelta(t, r.Force.Low, now.Low, 1e-9)
	assert.InDelta(t, r.Force.High, now.High, 1e-9)
	assert.InDelta(t, 140+r.Force.Typical/18000, now.Reading, 1e-9)
	// No row lies under a datum face: the error on the nest is the one of any reading.
	assert.InDelta(t, 2*r.Window.Uncertainty, now.Within, 1e-12)

	least := r.PushAt(10)
	assert.Less(t, least.High, now.Low)
	assert.InDelta(t, 140+least.Typical/18000, least.Reading, 1e-9)
	assert.Less(t, least.Within, now.Within)
	assert.Greater(t, least.Within, 0.02, "the repeatability alone is ± 0.02 mm")
	assert.Equal(t, now, Evaluate(p).PushAt(66))
}

// TestRising: the settings rise to the one in force, all of them settable.
func TestRising(t *testing.T) {
	_, r := setupPlan(t)
	assert.Equal(t, []float64{10, 38, 66}, r.Rising())
	for _, c := range []struct {
		setting float64
		want    []float64
	}{{10, []float64{10}}, {11, []float64{10, 11}}, {12, []float64{10, 11, 12}}, {10.5, []float64{10, 10.5}}} {
		r.Force.Setting = c.setting
		assert.Equal(t, c.want, r.Rising(), "%v", c.setting)
	}
}

// TestMeanWithin: derived by hand; the mean of many parts keeps the error of a
// reading.
func TestMeanWithin(t *testing.T) {
	_, r := setupPlan(t)
	assert.InDelta(t, 2*r.Window.Uncertainty, r.MeanWithin(1e9), 1e-6)
	assert.InDelta(t, 2*math.Hypot(r.Window.Uncertainty, r.Stack.Seat.SD), r.MeanWithin(1), 1e-12)
}
