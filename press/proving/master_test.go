package proving_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
)

// Four pushes, by hand: predicted 140 − 40 + (2200 − 200)/20000 = 100.1; mean 100.101; squares
// about it 9 + 1 + 1 + 9 = 20 µm², s = √(20/3) µm = 2.581989 µm.
func TestMasterByHand(t *testing.T) {
	j := one(t, station(t, simple), onMaster(100.098, 100.104, 100.100, 100.102))
	r := j.Result.(*proving.MasterResult)
	near := func(want, got float64) { t.Helper(); assert.InDelta(t, want, got, 2e-9) }
	near(100.1, r.Predicted)
	near(100.101, r.Mean)
	near(0.001, r.Bias.Value)
	s := 0.001 * math.Sqrt(20.0/3)
	near(s, *r.SD)
	// t_0.975,3 = 3.182446305, χ²_0.05,3 = 0.351846318, both from memory.
	near(3.182446305*s/2, *r.Bias.Uncertainty)
	near(2*s*math.Sqrt(3/0.351846318), *r.Repeatability.Upper)
	near(2*s, *r.Repeatability.Value)
	// σ_push = √(0.01² + (80/40000)²); allowed: 2√(0.003² + (0.1·0.04/2)² + 0.002²).
	near(math.Sqrt(1.04e-4), r.Spread.PlannedSD)
	near(2*math.Sqrt(17e-6), r.Bias.Allowed)
	// t = 0.001·√4/s on 3: p = 1 − (θ + sin θ cos θ)·2/π, θ = atan(t/√3).
	tt := 0.002 / s
	near(tt, *r.Bias.T)
	theta := math.Atan(tt / math.Sqrt(3))
	near(1-(theta+math.Sin(theta)*math.Cos(theta))*2/math.Pi, *r.Bias.P)
	// T = 0.18: Cg = 0.2T/6s, Cgk = (0.1T − |bias|)/3s.
	assert.InDelta(t, 0.036/(6*s), *r.Gauge.Cg, 1e-6)
	assert.InDelta(t, 0.017/(3*s), *r.Gauge.Cgk, 1e-6)
	assert.Len(t, r.Gauge.Variants, 5)
	// u_MS = √(s² + bias²/3).
	u := math.Sqrt(s*s + 1e-6/3)
	assert.InDelta(t, 400*u/0.18, *r.Gauge.QMS, 1e-6)
	assert.InDelta(t, 0.3*0.18/(6*u), *r.Gauge.CMS, 1e-6)
	assert.Equal(t, 0.016, *j.Adopt.Repeatability) // 0.015079 up to 0.001
	assert.Equal(t, map[string]proving.Answer{"size": proving.Open, "bias": proving.Pass, "spread": proving.Pass, "drift": proving.Pass}, answers(j))
	assert.Equal(t, proving.Open, j.Verdict)
	assert.Empty(t, found(j))
}

// At a setting of its own the force, its scatter and the bend are those of that setting. By
// hand: 10 % pushes 200 N, the nest's own force, so 100 is predicted and nothing is bent.
func TestMasterAtAnotherSetting(t *testing.T) {
	s := onMaster(100.001, 99.999, 100.001, 99.999)
	s.Setting = of(10.0)
	r := one(t, station(t, simple), s).Result.(*proving.MasterResult)
	assert.InDelta(t, 100, r.Predicted, 1e-9)
	assert.InDelta(t, 2*math.Sqrt(0.003*0.003+0.002*0.002), r.Bias.Allowed, 1e-9)

	s.Setting = of(5.0) // the curve begins at 10 %
	j := one(t, station(t, simple), s)
	assert.Nil(t, j.Result)
	assert.Equal(t, map[string]proving.Answer{"range": proving.Open}, answers(j))
	assert.Equal(t, []string{proving.OutsideCurve}, found(j))
	assert.Nil(t, j.Adopt)
}

// What cannot be computed of one push, and of pushes that do not differ.
func TestMasterNulls(t *testing.T) {
	plan := station(t, simple)
	j := one(t, plan, onMaster(100.1))
	r := j.Result.(*proving.MasterResult)
	assert.Nil(t, r.SD)
	assert.Nil(t, r.SDLimits)
	assert.Nil(t, r.Repeatability.Upper)
	assert.Nil(t, r.Bias.Uncertainty)
	assert.Nil(t, r.Bias.P)
	assert.Nil(t, r.Spread.P)
	assert.Nil(t, r.Gauge.Cg)
	assert.Nil(t, r.Gauge.QMS)
	assert.Nil(t, r.Trend)
	assert.Nil(t, r.Serial)
	assert.Empty(t, r.Outliers)
	assert.Nil(t, j.Adopt)
	assert.Equal(t, proving.Open, answers(j)["bias"])
	assert.Equal(t, proving.Open, answers(j)["spread"])

	j = one(t, plan, onMaster(100.1, 100.1, 100.1))
	r = j.Result.(*proving.MasterResult)
	assert.Equal(t, 0.0, *r.SD)
	assert.Nil(t, r.Bias.T)
	assert.Nil(t, r.Bias.P)
	assert.Nil(t, r.Gauge.Cg)
	assert.Equal(t, 1.0, *r.Spread.P)
}

// A station that does what the plan says passes; a wrong nest, a wide spread and a drift are
// each told by their own check. Differences of a size that no chance makes.
func TestMasterTells(t *testing.T) {
	plan := station(t, simple)
	sound := spread(30, 100.1, 0.003)
	j := one(t, plan, onMaster(sound...))
	assert.Equal(t, proving.Pass, j.Verdict)
	assert.Empty(t, found(j))

	moved := make([]float64, len(sound))
	wide := spread(30, 100.1, 0.020)
	drifting := make([]float64, len(sound))
	for i := range sound {
		moved[i] = sound[i] + 0.05
		drifting[i] = sound[i] + 0.001*(float64(i)-14.5)
	}
	for code, x := range map[string][]float64{proving.NestOff: moved, proving.SpreadOverPlan: wide, proving.Drifting: drifting} {
		assert.Contains(t, found(one(t, plan, onMaster(x...))), code)
	}
	assert.Equal(t, proving.Fail, one(t, plan, onMaster(moved...)).Verdict)
	assert.Equal(t, proving.Fail, one(t, plan, onMaster(wide...)).Verdict)
	j = one(t, plan, onMaster(drifting...))
	assert.Equal(t, proving.Open, answers(j)["drift"])
	assert.Equal(t, proving.Open, j.Verdict)
}

// Rows that have times count in their order; numbers of rows follow the document.
func TestRowsCountInTheOrderOfTime(t *testing.T) {
	s := onMaster(spread(20, 100.1, 0.004)...)
	for i := range s.Rows {
		s.Rows[i].Reading = of(100.1 + 0.0001*float64(i)) // rising as given
		s.Rows[i].Time = of(float64((i*7)%20) * 60)       // pushed in another order
	}
	s.Rows[3].Reading = of(100.2)
	plan := station(t, simple)
	j := one(t, plan, s)
	assert.Equal(t, []int{4}, j.Result.(*proving.MasterResult).Outliers)
	for i := range s.Rows {
		s.Rows[i].Time = nil
	}
	untimed := one(t, plan, s).Result.(*proving.MasterResult)
	require.NotNil(t, untimed.Trend)
	assert.Less(t, untimed.Trend.P, 0.01)
	assert.Greater(t, j.Result.(*proving.MasterResult).Trend.P, 0.01)
}
