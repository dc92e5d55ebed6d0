package proving_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
	"ramplan/press/study"
)

// The figures of the example: the design's, computed by a second implementation, to all
// printed digits.
func TestExampleStiffness(t *testing.T) {
	j := one(t, station(t, nil), exampleStudy(t, "stiffness"))
	r := j.Result.(*proving.StiffnessResult)
	close := func(want, got float64, digits float64) { t.Helper(); assert.InDelta(t, want, got, digits/2) }
	close(16935.913, r.Stiffness.Value, 1e-3)
	close(1219.530, *r.Stiffness.Uncertainty, 1e-3)
	close(140.008143, r.Nest.Value, 1e-6)
	close(0.007380, *r.Nest.Uncertainty, 1e-6)
	assert.InDelta(t, 2467.547, r.Taught.NestForce, 5e-4)
	close(0.0167566, *r.Agreement.PositionShift, 1e-7)
	close(0.954434, *r.Agreement.PositionEN, 1e-6)
	assert.Equal(t, proving.Pass, j.Verdict)
	require.NotNil(t, j.Adopt)
	assert.Equal(t, []float64{140.008, 16936, 7.3}, []float64{*j.Adopt.Nest, *j.Adopt.Stiffness, *j.Adopt.StiffnessTolerance}, "by hand from the figures above: 1219.53/16935.913 is 7.201 %")
}

// block are three pushes on a block of 40 mm at each force, off by −d, d and 0 in turn, at a
// station of some stiffness whose nest stands at some place under 200 N.
func block(nest, stiffness, d float64, forces ...float64) *proving.Study {
	s := &proving.Study{Format: proving.Format, Kind: proving.Stiffness, TakenAt: "2026-11-21", Height: of(40.0), CellUncertainty: of(0.0)}
	for round := range 3 {
		for i, f := range forces {
			off := []float64{-d, d, 0}[(round+i)%3]
			s.Rows = append(s.Rows, proving.Row{Force: of(f), Reading: of(nest + (f-200)/stiffness - 40 + off)})
		}
	}
	return s
}

// By hand: 15 pushes, residuals −d, d, 0 at each of five forces: s² = 10d²/13, the middle at
// 1400 N, Σ(f − f̄)² = 3·2·(800² + 400²); t_0.975,13 = 2.16036866 and
// χ²_0.05,13 = 5.89186434 by SciPy 1.10.1.
func TestStiffnessByHand(t *testing.T) {
	const quantile, chi = 2.16036865646279, 5.89186433770986
	forces := []float64{600, 1000, 1400, 1800, 2200}
	s := block(140.003, 20000, 0.003, forces...)
	s.HeightUncertainty = of(0.002)
	j := one(t, station(t, simple), s)
	r := j.Result.(*proving.StiffnessResult)
	sd := math.Sqrt(10 * 0.003 * 0.003 / 13)
	slope := sd / math.Sqrt(3*(2*800*800+2*400*400))
	at := func(f float64) float64 {
		return math.Hypot(quantile*math.Sqrt(sd*sd/15+slope*slope*(f-1400)*(f-1400)), 0.002)
	}
	assert.Equal(t, []int{15, 5, 15}, []int{r.N, r.Levels, r.Used})
	assert.Equal(t, proving.FromCell, r.ForceFrom)
	assert.Nil(t, r.StartupBelow)
	assert.InEpsilon(t, 1.0/20000, r.Line.Slope, 1e-9)
	assert.InDelta(t, 140.003-0.01, r.Line.Intercept, 1e-9)
	assert.InEpsilon(t, sd, *r.Line.ResidualSD, 1e-9)
	assert.InEpsilon(t, slope, *r.Line.SlopeSD, 1e-9)
	assert.Equal(t, 13.0, r.Line.DF)
	assert.InEpsilon(t, 20000, r.Stiffness.Value, 1e-9)
	assert.InEpsilon(t, 20000*20000*quantile*slope, *r.Stiffness.Uncertainty, 1e-8)
	assert.InEpsilon(t, 1/(1.0/20000+quantile*slope), *r.Stiffness.Limits[0], 1e-8)
	assert.InEpsilon(t, 1/(1.0/20000-quantile*slope), *r.Stiffness.Limits[1], 1e-8)
	assert.InDelta(t, 140.003, r.Nest.Value, 1e-9)
	assert.InEpsilon(t, at(200), *r.Nest.Uncertainty, 1e-8)
	assert.InDelta(t, 140.103, r.Taught.Value, 1e-9)
	assert.InEpsilon(t, at(2200), *r.Taught.Uncertainty, 1e-8)
	assert.Equal(t, []float64{200, 2200}, []float64{r.Nest.NestForce, r.Taught.NestForce})
	assert.InEpsilon(t, 2*sd, *r.Repeatability.Value, 1e-9)
	assert.InEpsilon(t, 2*sd*math.Sqrt(13/chi), *r.Repeatability.Upper, 1e-9)

	// The plan has the nest at 140 mm; 0.1 mm of bending to ± 4 %, the reference to ± 0.006 mm.
	allowed := math.Hypot(0.006, 0.004)
	assert.InDelta(t, 0.003, *r.Agreement.PositionShift, 1e-9)
	assert.InEpsilon(t, allowed, *r.Agreement.PositionAllowed, 1e-9)
	assert.InEpsilon(t, 0.003/math.Hypot(at(2200), allowed), *r.Agreement.PositionEN, 1e-6)
	assert.InDelta(t, 0, *r.Agreement.StiffnessEN, 1e-6)
	assert.Equal(t, map[string]proving.Answer{"size": "pass", "range": "pass", "linear": "pass", "stiffness": "pass", "position": "pass", "sharp": "pass", "drift": "pass"}, answers(j))
	assert.Empty(t, found(j))
}

func TestWrongNest(t *testing.T) {
	j := one(t, station(t, simple), block(140.03, 20000, 0.003, 600, 1000, 1400, 1800, 2200))
	assert.Equal(t, []string{proving.NestOff}, found(j))
	assert.Equal(t, proving.Fail, answers(j)["position"])
	assert.Equal(t, proving.Pass, answers(j)["stiffness"])
	assert.Equal(t, 140.03, *j.Adopt.Nest, "what fails may be adopted")
}

func TestWrongStiffness(t *testing.T) {
	// The nest is right at the plan's own force: a softer frame moves it nowhere there.
	j := one(t, station(t, simple), block(140+2000.0/20000-2000.0/14000, 14000, 0.002, 600, 1000, 1400, 1800, 2200))
	assert.Equal(t, []string{proving.StiffnessOff}, found(j))
	assert.Equal(t, proving.Fail, answers(j)["stiffness"])
	assert.InDelta(t, 14000, *j.Adopt.Stiffness, 1)
}

// Play that closes at the lowest force: that level is left out, and nothing is adopted.
func TestStartup(t *testing.T) {
	s := block(140, 20000, 0.002, 300, 600, 1000, 1400, 1800, 2200)
	for i := range s.Rows {
		if *s.Rows[i].Force == 300 {
			*s.Rows[i].Reading -= 0.03
		}
	}
	j := one(t, station(t, simple), s)
	r := j.Result.(*proving.StiffnessResult)
	assert.InDelta(t, -0.03, r.Lowest.Deviation, 1e-9)
	assert.Equal(t, 15.0, r.Lowest.DF, "by hand: 18 rows, three columns")
	require.NotNil(t, r.StartupBelow)
	assert.Equal(t, 600.0, *r.StartupBelow)
	assert.Equal(t, 15, r.Used)
	assert.InEpsilon(t, 20000, r.Stiffness.Value, 1e-6)
	assert.Equal(t, []string{proving.StartupRange}, found(j))
	assert.Equal(t, proving.Open, answers(j)["linear"])
	assert.Nil(t, j.Adopt)

	// No more than half a step of the position is no start-up, however plain.
	for i := range s.Rows {
		if *s.Rows[i].Force == 300 {
			*s.Rows[i].Reading += 0.03 - 0.0045
		}
	}
	r = one(t, station(t, simple), s).Result.(*proving.StiffnessResult)
	assert.Less(t, *r.Lowest.P, 0.01)
	assert.Nil(t, r.StartupBelow)
}

// Of three levels none is left out: a line through two shows nothing.
func TestStartupOfThree(t *testing.T) {
	s := block(140, 20000, 0.002, 600, 1400, 2200)
	for i := range s.Rows {
		if *s.Rows[i].Force == 600 {
			*s.Rows[i].Reading -= 0.03
		}
	}
	r := one(t, station(t, simple), s).Result.(*proving.StiffnessResult)
	assert.Nil(t, r.StartupBelow)
	assert.Less(t, *r.Lowest.P, 0.01)
	two := one(t, station(t, simple), block(140, 20000, 0.002, 600, 2200))
	r = two.Result.(*proving.StiffnessResult)
	assert.Nil(t, r.Lowest)
	assert.Nil(t, r.Curvature)
	assert.Equal(t, proving.Pass, answers(two)["size"])
}

// Of four levels one may go: three are left.
func TestStartupOfFour(t *testing.T) {
	s := block(140, 20000, 0.002, 600, 1000, 1600, 2200)
	for i := range s.Rows {
		if *s.Rows[i].Force == 600 {
			*s.Rows[i].Reading -= 0.05
		}
	}
	r := one(t, station(t, simple), s).Result.(*proving.StiffnessResult)
	require.NotNil(t, r.StartupBelow)
	assert.Equal(t, 9, r.Used)
}

// Once the first level is plain, the next goes on a milder word.
func TestStartupOfTwoLevels(t *testing.T) {
	s := block(140, 20000, 0.003, 300, 500, 1000, 1400, 1800, 2200)
	for i := range s.Rows {
		switch *s.Rows[i].Force {
		case 300:
			*s.Rows[i].Reading -= 0.08
		case 500:
			*s.Rows[i].Reading -= 0.006
		}
	}
	r := one(t, station(t, simple), s).Result.(*proving.StiffnessResult)
	require.NotNil(t, r.StartupBelow)
	assert.Equal(t, 1000.0, *r.StartupBelow)
	assert.Equal(t, 12, r.Used)
	assert.InDelta(t, -0.08, r.Lowest.Deviation, 0.01, "of the lowest of all")
}

// Bent by so little that the lowest level alone does not show it.
func TestBentLine(t *testing.T) {
	s := block(140, 20000, 0.006, 600, 1000, 1400, 1800, 2200)
	for i := range s.Rows {
		x := (*s.Rows[i].Force - 1400) / 800
		*s.Rows[i].Reading += 0.012 * x * x
	}
	j := one(t, station(t, simple), s)
	r := j.Result.(*proving.StiffnessResult)
	assert.InDelta(t, 0.012, r.Curvature.Sag, 1e-6)
	assert.Equal(t, []string{proving.NotLinear}, found(j))
	assert.Equal(t, proving.Open, answers(j)["linear"])
	assert.Nil(t, j.Adopt)
}

// Forces of the curve: weighted by σ_push, in doubt by the tolerance of the force, which moves
// the slope and not the position at the plan's own setting.
func TestForcesOfTheCurve(t *testing.T) {
	changes := map[string]string{}
	for k, v := range simple {
		changes[k] = v
	}
	changes["ram.force_tolerance"] = "5"
	s := block(140, 20000, 0.003, 600, 1000, 1400, 1800, 2200)
	for i := range s.Rows {
		s.Rows[i].Setting, s.Rows[i].Force = of((*s.Rows[i].Force+200)/40), nil
	}
	j := one(t, station(t, changes), s)
	r := j.Result.(*proving.StiffnessResult)
	assert.Equal(t, proving.FromCurve, r.ForceFrom)
	assert.InEpsilon(t, 20000, r.Stiffness.Value, 0.01)
	assert.Greater(t, *r.Stiffness.Uncertainty, 0.05*20000)
	assert.Less(t, *r.Stiffness.Uncertainty, 0.09*20000)
	assert.Less(t, *r.Taught.Uncertainty, 0.006)
	assert.Less(t, *r.Line.ResidualSD, 0.004, "in mm, whatever the weights")
	assert.Equal(t, []string{proving.ForceFromCurve}, found(j))

	// By hand: the fit with weights of 1/σ_push².
	var x, y, w []float64
	for _, row := range s.Rows {
		f := 40**row.Setting - 200
		h := math.Hypot(0.05*f, 80)
		x, y, w = append(x, f), append(y, *row.Reading+40), append(w, 1/(0.01*0.01+h*h/4/20000/20000))
	}
	constant := make([]float64, len(x))
	for i := range constant {
		constant[i] = 1
	}
	fit := study.LeastSquares([][]float64{constant, x}, y, w)
	assert.InEpsilon(t, fit.Coef[1], r.Line.Slope, 1e-12)
	assert.InEpsilon(t, *fit.CoefSD(1), *r.Line.SlopeSD, 1e-9)

	// Exact readings: what is left of the doubt is the tolerance of the force, 5 %, and at the
	// plan's own force nothing.
	for i := range s.Rows {
		*s.Rows[i].Reading = 100 + (x[i]-200)/20000
	}
	r = one(t, station(t, changes), s).Result.(*proving.StiffnessResult)
	assert.InEpsilon(t, 0.05*20000, *r.Stiffness.Uncertainty, 1e-6)
	assert.InDelta(t, 0, *r.Taught.Uncertainty, 1e-9)

	*s.Rows[3].Setting = 71
	j = one(t, station(t, changes), s)
	assert.Nil(t, j.Result)
	assert.Equal(t, []proving.Check{{Name: "range", Outcome: proving.Open}}, j.Checks)
	assert.Equal(t, proving.Open, j.Verdict)
	assert.Equal(t, []string{proving.OutsideCurve}, found(j))
}

// Levels without settings: a new one begins above 1.05 times the first force of the last.
func TestLevelsByForce(t *testing.T) {
	s := block(140, 20000, 0.003, 1000, 1049, 1051, 1100, 1104, 2200)
	assert.Equal(t, 4, one(t, station(t, simple), s).Result.(*proving.StiffnessResult).Levels, "by hand: 1000, 1051, 1104 and 2200 begin one")
	for i := range s.Rows {
		s.Rows[i].Setting = of(float64(10 + i%2))
	}
	assert.Equal(t, 2, one(t, station(t, simple), s).Result.(*proving.StiffnessResult).Levels, "by setting where every row has one")
}

func TestRangeOfForces(t *testing.T) {
	for _, c := range []struct {
		forces []float64
		want   proving.Answer
	}{
		{[]float64{1550, 1800, 2050}, proving.Open},       // 500 N are under 0.3 of 2200 N
		{[]float64{1400, 1800, 2060}, proving.Pass},       // 660 N, and 2200 is under 1.1·2060
		{[]float64{1300, 1700, 1999}, proving.Open},       // over 1.1·1999
		{[]float64{2201, 2500, 2900, 3300}, proving.Open}, // all above
	} {
		assert.Equal(t, c.want, answers(one(t, station(t, simple), block(140, 20000, 0.003, c.forces...)))["range"], "%v", c.forces)
	}
}

func TestBlockDrift(t *testing.T) {
	s := block(140, 20000, 0.003, 600, 1000, 1400, 1800, 2200)
	for i := range s.Rows {
		*s.Rows[i].Reading += 0.001 * float64(i-7)
	}
	j := one(t, station(t, simple), s)
	assert.Equal(t, []string{proving.Drifting}, found(j))
	assert.Equal(t, proving.Open, answers(j)["drift"])
	require.NotNil(t, j.Result.(*proving.StiffnessResult).Trend)

	s = block(140, 20000, 0.001, 600, 1000, 1400, 1800, 2200)
	*s.Rows[6].Reading += 0.02
	j = one(t, station(t, simple), s)
	assert.Equal(t, []int{7}, j.Result.(*proving.StiffnessResult).Outliers)
	assert.Contains(t, found(j), proving.Outlying)
}

// Few and exact pushes: what cannot be known is nil, never a guess.
func TestFewBlockPushes(t *testing.T) {
	plan := station(t, simple)
	s := block(140, 20000, 0, 600, 2200)
	s.Rows = s.Rows[:2]
	j := one(t, plan, s)
	r := j.Result.(*proving.StiffnessResult)
	assert.InEpsilon(t, 20000, r.Stiffness.Value, 1e-6)
	assert.Nil(t, r.Stiffness.Uncertainty)
	assert.Nil(t, r.Stiffness.Limits)
	assert.Nil(t, r.Nest.Uncertainty)
	assert.Nil(t, r.Repeatability)
	assert.Nil(t, r.Agreement.PositionEN)
	assert.Nil(t, j.Adopt)
	for _, name := range []string{"size", "stiffness", "position", "sharp"} {
		assert.Equal(t, proving.Open, answers(j)[name], name)
	}
	s.Rows = s.Rows[:1]
	j = one(t, plan, s)
	r = j.Result.(*proving.StiffnessResult)
	assert.Nil(t, r.Line)
	assert.Nil(t, r.Stiffness)
	assert.Equal(t, proving.Open, j.Verdict)

	// All at one force: no slope.
	assert.Nil(t, one(t, plan, block(140, 20000, 0.01, 600)).Result.(*proving.StiffnessResult).Line)
	// A nest that comes nearer under force has no stiffness, and is refuted.
	back := one(t, plan, block(140, -20000, 0.003, 600, 1000, 1400, 1800, 2200))
	r = back.Result.(*proving.StiffnessResult)
	assert.Nil(t, r.Stiffness)
	assert.Equal(t, proving.Fail, answers(back)["stiffness"])
	assert.Nil(t, back.Adopt)
	// Hardly any slope: no upper limit, no tolerance under 100 %.
	flat := one(t, plan, block(140, 2e6, 0.05, 600, 1000, 1400, 1800, 2200))
	r = flat.Result.(*proving.StiffnessResult)
	assert.Nil(t, r.Stiffness.Limits[1])
	assert.Nil(t, flat.Adopt)
	for _, j := range []proving.Judged{back, flat} {
		allFinite(t, j)
	}
	exact := one(t, plan, block(140, 20000, 0, 600, 1000, 1400, 1800, 2200))
	r = exact.Result.(*proving.StiffnessResult)
	assert.Zero(t, *r.Line.ResidualSD)
	assert.Nil(t, r.Trend)
	assert.Nil(t, r.Lowest.P)
	assert.Nil(t, r.Curvature.P)
	assert.Equal(t, proving.Pass, exact.Verdict)
	allFinite(t, exact)
}

// A block of its own height in each row.
func TestHeightsOfRows(t *testing.T) {
	s := block(140, 20000, 0.003, 600, 1000, 1400, 1800, 2200)
	want := one(t, station(t, simple), s).Result.(*proving.StiffnessResult).Nest.Value
	s.Height = nil
	for i := range s.Rows {
		h := 30 + float64(i)
		s.Rows[i].Height = of(h)
		*s.Rows[i].Reading += 40 - h
	}
	assert.InDelta(t, want, one(t, station(t, simple), s).Result.(*proving.StiffnessResult).Nest.Value, 1e-9)
}

// Where the parts leave no way to press in, the block still says how sharp the nest is known.
func TestBlockOfBlockedPlan(t *testing.T) {
	changes := map[string]string{"parts[2].contact": "0", "parts[2].seat": "1"}
	for k, v := range simple {
		changes[k] = v
	}
	plan := station(t, changes)
	require.False(t, plan.Pressable())
	j := one(t, plan, block(140, 20000, 0.003, 600, 1000, 1400, 1800, 2200))
	assert.Equal(t, proving.Pass, answers(j)["sharp"])
	assert.InEpsilon(t, station(t, simple).Window.Uncertainty, station(t, simple).ReadingUncertainty(), 1e-15)
}
