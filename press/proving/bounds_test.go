package proving_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
)

// How much of each is enough: one more than too little. The counts are the design's.
func TestHowMuchIsEnough(t *testing.T) {
	plan := station(t, nil)
	enough := func(s *proving.Study) bool { return answers(one(t, plan, s))["size"] == proving.Pass }
	assert.False(t, enough(onMaster(spread(24, 100.137, 0.004)...)))
	assert.True(t, enough(onMaster(spread(25, 100.137, 0.004)...)))

	assert.False(t, enough(starts(100.1, 100.101, 100.1, 100.101)))
	assert.True(t, enough(starts(100.1, 100.101, 100.1, 100.101, 100.1)))
	single := starts(100.1, 100.101, 100.1, 100.101, 100.1)
	single.Rows = single.Rows[:9] // one push after the last
	assert.False(t, enough(single))

	trial := func(on, off int) *proving.Study {
		s := onTrial()
		for _, x := range spread(on, 115.137, 0.005) {
			s.Rows = append(s.Rows, read(x, true, true))
		}
		for range off {
			s.Rows = append(s.Rows, read(115.19, false, true))
		}
		return s
	}
	assert.False(t, enough(trial(29, 0)))
	assert.True(t, enough(trial(30, 0)))
	assert.True(t, enough(trial(25, 5)))
	assert.False(t, enough(trial(24, 6)))

	// Capability is of the heights from 25 on, and told to be of few under 100 parts.
	of24, of25 := trial(40, 0), trial(40, 0)
	for i, x := range spread(25, 25, 0.01) {
		of25.Rows[i].Height = of(x)
		if i < 24 {
			of24.Rows[i].Height = of(x)
		}
	}
	assert.Equal(t, proving.OfReadings, one(t, plan, of24).Result.(*proving.TrialResult).Capability.Of)
	assert.Equal(t, proving.OfHeights, one(t, plan, of25).Result.(*proving.TrialResult).Capability.Of)
	assert.Contains(t, found(one(t, plan, trial(99, 0))), proving.CapabilityFew)
	assert.NotContains(t, found(one(t, plan, trial(100, 0))), proving.CapabilityFew)
}

// A master that reads beside its place by just what its uncertainty and the plan allow together
// passes, and by a hair more fails; what is sure and allowed is a note. By hand: allowed
// √(68e-6), see above; s = 4 µm of 25 pushes, t_0.975,24 = 2.063898562 (from memory).
func TestHowFarTheNestMayBeOff(t *testing.T) {
	plan := station(t, simple)
	most := root(68e-6 + (2.063898562*0.004/5)*(2.063898562*0.004/5))
	inside := one(t, plan, onMaster(spread(25, 100.1+most-1e-6, 0.004)...))
	assert.Equal(t, proving.Pass, answers(inside)["bias"])
	assert.Contains(t, found(inside), proving.Biased)
	outside := one(t, plan, onMaster(spread(25, 100.1-most-1e-6, 0.004)...))
	assert.Equal(t, proving.Fail, answers(outside)["bias"])
	assert.Contains(t, found(outside), proving.NestOff)
	assert.NotContains(t, found(outside), proving.Biased)
	// Cg = 0.036/6s is 1.33 at s = 4.511 µm, Cgk there by the bias under it.
	assert.Contains(t, found(one(t, plan, onMaster(spread(25, 100.1, 0.00452)...))), proving.GaugeWeak)
	assert.NotContains(t, found(one(t, plan, onMaster(spread(25, 100.1, 0.00450)...))), proving.GaugeWeak)
	assert.Contains(t, found(one(t, plan, onMaster(spread(25, 100.102, 0.00450)...))), proving.GaugeWeak)
	// ± supported is 2s√(24/χ²_0.05,24), χ² = 13.848425 (from memory), against 2·10.198 µm: s = 7.7465 µm.
	assert.Contains(t, found(one(t, plan, onMaster(spread(25, 100.1, 0.00776)...))), proving.RepeatabilityNotShown)
	assert.NotContains(t, found(one(t, plan, onMaster(spread(25, 100.1, 0.00773)...))), proving.RepeatabilityNotShown)
}

// A sample is too easy more than 3U beyond its limit sample, U = 2u, on its own side only.
func TestTooEasyByHowMuch(t *testing.T) {
	plan := station(t, nil)
	far := 6 * plan.ReadingUncertainty()
	easy := func(row proving.Row) bool {
		list := found(one(t, plan, onSamples(row)))
		for _, code := range list {
			if code == proving.SampleTooEasy {
				return true
			}
		}
		return false
	}
	assert.False(t, easy(sample("T", plan.Samples.Long+far-1e-6, true, false)))
	assert.True(t, easy(sample("T", plan.Samples.Long+far+1e-6, true, false)))
	assert.False(t, easy(sample("S", plan.Samples.Short-far+1e-6, false, true)))
	assert.True(t, easy(sample("S", plan.Samples.Short-far-1e-6, false, true)))
	assert.False(t, easy(sample("G", 25, true, true)))
	assert.False(t, easy(nothing(proving.BareNest, false, true)))
}

// The limit samples themselves are judged with just the probability that they are made for.
func TestLimitSamplesHaveTheirRoles(t *testing.T) {
	plan := station(t, nil)
	role := func(height float64) *string {
		return one(t, plan, onSamples(sample("x", height, true, true))).Result.(*proving.SamplesResult).Rows[0].Role
	}
	s := plan.Samples
	const hair = 1e-6
	for height, want := range map[float64]string{s.Long + hair: "long", s.Short - hair: "short", *s.TallestGood - hair: "good", *s.ShortestGood + hair: "good"} {
		got := role(height)
		require.NotNil(t, got, want)
		assert.Equal(t, want, *got)
	}
	for _, height := range []float64{s.Long - hair, s.Short + hair, *s.TallestGood + hair, *s.ShortestGood - hair} {
		assert.Nil(t, role(height), height)
	}
}
