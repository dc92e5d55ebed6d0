package proving_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
)

// starts are pushes after restarts with these means, two each, 1 µm on either side of it.
func starts(means ...float64) *proving.Study {
	s := onMaster()
	s.Kind = proving.Restart
	for i, m := range means {
		for _, off := range []float64{-0.001, 0.001} {
			s.Rows = append(s.Rows, proving.Row{Reading: of(m + off), Start: of(float64(i + 1))})
		}
	}
	return s
}

// Five starts of two pushes, by hand: MSW = 5·2/5 = 2 µm²; means 0, 4, 8, 2, 6 µm about 4, s_m² =
// 40/4 = 10 µm², MSB = 20 µm²; F = 10 on 4 and 5, p = x^2.5(3.5 − 2.5x) at x = 5/45; between = √((20 − 2)/2).
func TestRestartByHand(t *testing.T) {
	s := starts(100.100, 100.104, 100.108, 100.102, 100.106)
	j := one(t, station(t, simple), s)
	r := j.Result.(*proving.RestartResult)
	near := func(want, got float64) { t.Helper(); assert.InDelta(t, want, got, 3e-9) }
	assert.Equal(t, 10, r.N)
	require.Len(t, r.Starts, 5)
	near(100.108, r.Starts[2].Mean)
	near(0.001*math.Sqrt2, *r.Within)
	near(0.003, *r.Between)
	assert.InDelta(t, 10, *r.Anova.F, 1e-6)
	assert.Equal(t, []float64{4, 5}, []float64{*r.Anova.DF1, *r.Anova.DF2})
	assert.InDelta(t, math.Pow(1.0/9, 2.5)*(3.5-2.5/9), *r.Anova.P, 1e-8)
	sm := 0.001 * math.Sqrt(10)
	near(sm, *r.SD)
	// χ²_0.05,4 = 0.710723021, from memory.
	near(2*sm*math.Sqrt(4/0.710723021), *r.Supported)
	// σ_0² = 0.003² + σ_push²/2.
	near(math.Sqrt(9e-6+1.04e-4/2), r.Spread.PlannedSD)
	assert.Equal(t, 0.016, *j.Adopt.Reference) // 0.015004 up to 0.001; no drift to take off
	assert.Equal(t, proving.Pass, j.Verdict)
	assert.Empty(t, found(j)) // p = 0.013
	assert.Nil(t, r.ColdWarm)
	assert.Nil(t, r.Trend) // five are too few

	// The plan's drift is paid for already: 0.015004² − (2·0.01/√3)² = 0.009577².
	changes := map[string]string{"station.nest_drift": "0.01"}
	for path, text := range simple {
		if changes[path] == "" {
			changes[path] = text
		}
	}
	assert.Equal(t, 0.010, *one(t, station(t, changes), s).Adopt.Reference)
}

// Starts are told apart by number wherever their rows stand, and by how warm they are where
// every row of them says the same. By hand: cold 100.100 and 100.102, warm 100.110 and
// 100.114: −0.011.
func TestRestartColdAndWarm(t *testing.T) {
	s := starts(100.100, 100.110, 100.102, 100.114, 100.105)
	for i, c := range []string{"cold", "cold", "warm", "warm", "cold", "cold", "warm", "warm", "cold", "warm"} {
		s.Rows[i].Condition = c
	}
	s.Rows[0], s.Rows[9] = s.Rows[9], s.Rows[0]
	j := one(t, station(t, simple), s)
	r := j.Result.(*proving.RestartResult)
	require.NotNil(t, r.ColdWarm)
	assert.InDelta(t, -0.011, r.ColdWarm.Difference, 1e-9)
	assert.Equal(t, 1.0, r.Starts[0].Start)
	assert.InDelta(t, 100.100, r.Starts[0].Mean, 1e-9)
	assert.Contains(t, found(j), proving.WarmUp) // 0.011 over 0.006
	s.Rows[2].Condition = ""
	assert.Nil(t, one(t, station(t, simple), s).Result.(*proving.RestartResult).ColdWarm)
}

func TestRestartNulls(t *testing.T) {
	plan := station(t, simple)
	j := one(t, plan, starts(100.1))
	r := j.Result.(*proving.RestartResult)
	assert.Nil(t, r.SD)
	assert.Nil(t, r.Supported)
	assert.Nil(t, r.Anova)
	assert.Nil(t, r.Between)
	assert.Nil(t, j.Adopt)
	assert.Equal(t, proving.Open, answers(j)["spread"])

	single := starts(100.1, 100.102, 100.104)
	for i := range single.Rows {
		single.Rows[i].Start = of(float64(i + 1))
	}
	r = one(t, plan, single).Result.(*proving.RestartResult)
	assert.Nil(t, r.Anova) // N = a
	assert.Nil(t, r.Within)
	require.NotNil(t, r.SD)
	assert.Equal(t, proving.Open, answers(one(t, plan, single))["size"]) // one push each
}

// Starts of the same readings are tied, in whatever order these were: by hand, 0.1 + 0.2 + 0.3 and
// 0.3 + 0.2 + 0.1 are not the same number. Ten starts that are all alike have no trend.
func TestEqualStartsAreTied(t *testing.T) {
	s := onMaster()
	s.Kind = proving.Restart
	for i := range 10 {
		list := []float64{100.1, 100.2, 100.3}
		if i%2 == 1 {
			list = []float64{100.3, 100.2, 100.1}
		}
		for _, x := range list {
			s.Rows = append(s.Rows, proving.Row{Reading: of(x), Start: of(float64(i + 1))})
		}
	}
	r := one(t, station(t, simple), s).Result.(*proving.RestartResult)
	assert.Nil(t, r.Trend)
	assert.Nil(t, r.Serial)

	// Two cold and two warm starts that do not scatter: a difference, and no limits.
	s = starts(100.1, 100.1, 100.102, 100.102)
	for i := range s.Rows {
		s.Rows[i].Condition = []string{proving.Cold, proving.Warm}[i/4]
	}
	c := one(t, station(t, simple), s).Result.(*proving.RestartResult).ColdWarm
	require.NotNil(t, c)
	assert.InDelta(t, -0.002, c.Difference, 1e-9)
	assert.Nil(t, c.Limits)
}

// Cold starts that differ by just what the plan leaves for a new start are no finding: 0.006.
func TestWarmUpByJustWhatIsAllowed(t *testing.T) {
	for by, is := range map[float64]bool{0.006: false, 0.00601: true} {
		s := starts(100.1, 100.1, 100.1+by, 100.1+by)
		for i := range s.Rows {
			s.Rows[i].Condition = []string{proving.Cold, proving.Warm}[i/4]
		}
		assert.Equal(t, is, slices.Contains(found(one(t, station(t, simple), s)), proving.WarmUp), by)
	}
}
