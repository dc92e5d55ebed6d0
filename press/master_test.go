package press

import (
	"math"
	"math/rand/v2"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func masterPlan(t *testing.T) (*Plan, *Result) {
	t.Helper()
	data, err := os.ReadFile("../static/examples/example-plan.json")
	require.NoError(t, err)
	p, problems := Decode(data)
	require.Empty(t, problems)
	return p, Evaluate(p)
}

// TestWearFound compares the share with a simulation of the check: a master of the
// nominal height on a nest that is worn, errors of a reading as the model's section 6
// has them (normal and, for the nest's drift, uniform), both signals and the limits.
func TestWearFound(t *testing.T) {
	p, r := masterPlan(t)
	nominal, zone := r.Nominal(), r.Window.Overlap
	sigma := math.Sqrt(r.Window.Uncertainty*r.Window.Uncertainty - p.Station.NestDrift*p.Station.NestDrift/3)
	low, high := nominal-r.MasterWithin(), nominal+r.MasterWithin()
	share, ok := r.WearFound(low, high)
	require.True(t, ok)
	rng := rand.New(rand.NewPCG(1, 2))
	const n = 200000
	found := 0
	for range n {
		x := nominal + p.Faults.NestWear + rng.NormFloat64()*sigma + (2*rng.Float64()-1)*p.Station.NestDrift
		if x < low || x > high || x < zone[0] || x > zone[1] {
			found++
		}
	}
	assert.InDelta(t, float64(found)/n, share, 4*math.Sqrt(share*(1-share)/n))

	// The check finds more than the lamps do, and never less.
	for _, f := range r.Faults {
		if f.Name == RowNestWorn {
			assert.Greater(t, share, f.Detection)
		}
	}
}

// TestSampleRanges: samples are bounded on both sides, at their limit, one uncertainty
// wide, good ones not past their middle, and a tall one never so tall that the approach
// would meet it.
func TestSampleRanges(t *testing.T) {
	p, r := masterPlan(t)
	x, ok := r.SampleRanges()
	require.True(t, ok)
	u := 2 * r.Window.Uncertainty
	assert.Equal(t, SampleRange{From: r.Samples.Long, To: r.Samples.Long + u}, x.Tall)
	assert.Equal(t, SampleRange{From: r.Samples.Short - u, To: r.Samples.Short}, x.Short)
	assert.Equal(t, *r.Samples.TallestGood, x.TallestGood.To)
	assert.Equal(t, *r.Samples.ShortestGood, x.ShortestGood.From)
	assert.LessOrEqual(t, x.ShortestGood.To, x.TallestGood.From)
	// By hand: 26 mm against a limit of 25.1 is a block that proves nothing.
	assert.Less(t, x.Tall.To, 25.2)

	near := *p
	near.Window.ApproachEnd = new(p.Station.Nest - r.Samples.Long - u - 0.005)
	y, ok := Evaluate(&near).SampleRanges()
	require.True(t, ok)
	assert.Less(t, y.Tall.To-y.Tall.From, u/2)
}
