package proving_test

import (
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
	"ramplan/press/study"
)

// exampleStudy is a study of the example station.
func exampleStudy(t testing.TB, name string) *proving.Study {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/studies/" + name + ".csv")
	require.NoError(t, err)
	s, lines := proving.ReadCSV(data)
	require.Empty(t, lines.Faults)
	return s
}

// The figures of the example: the design's, computed by a second implementation, to all
// printed digits.
func TestExampleLoadCell(t *testing.T) {
	j := one(t, station(t, nil), exampleStudy(t, "load-cell"))
	r := j.Result.(*proving.LoadCellResult)
	close := func(want, got float64, digits float64) { t.Helper(); assert.InDelta(t, want, got, digits/2) }
	close(0.979945, r.Fit.Scale.Factor, 1e-6)
	close(0.973597, r.Fit.Scale.Limits[0], 1e-6)
	close(0.986294, r.Fit.Scale.Limits[1], 1e-6)
	close(2415.609, r.AtSetting.Force, 1e-3)
	close(2353.397, r.AtSetting.Predict[0], 1e-3)
	close(2477.821, r.AtSetting.Predict[1], 1e-3)
	close(2.242999, *r.Scatter.Tolerance, 2e-6) // printed cut: 2.24299903
	close(4.806427, *r.Scatter.Scatter, 1e-6)
	assert.Equal(t, 2.62, *j.Adopt.ForceTolerance)
	assert.Equal(t, 5.6, *j.Adopt.ForceScatter)
	assert.Equal(t, [][2]float64{{10, 197.7}, {20, 546.2}, {30, 941.4}, {40, 1352}, {50, 1775.7}, {60, 2179.7}, {70, 2570.2}}, j.Adopt.CurvePoints)
	assert.Equal(t, proving.Pass, j.Verdict)
	assert.Equal(t, []string{proving.CurveScaled, proving.SplitAsPlanned}, found(j))
}

// fives are five pushes at each setting of the simple station, −2d to 2d about a multiple of
// the entered curve, the settings in turn, each round beginning with another of the five.
func fives(times, d float64, settings ...float64) *proving.Study {
	s := &proving.Study{Format: proving.Format, Kind: proving.LoadCell, TakenAt: "2026-11-20", CalibratedAt: "2026-05-11", CellUncertainty: of(0.0)}
	for round := range 5 {
		for i, c := range settings {
			off := float64((round*2+i)%5-2) * d
			s.Rows = append(s.Rows, proving.Row{Setting: of(c), Force: of(times*(40*c-200) + off)})
		}
	}
	return s
}

// By hand: h = 80 N everywhere, so the plan's split has no part that grows; s² = 2.5d² at each
// setting, 12 degrees of freedom, t_0.975 = 2.17881283 (SciPy 1.10.1, t.ppf).
func TestLoadCellByHand(t *testing.T) {
	const quantile = 2.1788128296634177
	j := one(t, station(t, simple), fives(1, 10, 20, 40, 60))
	r := j.Result.(*proving.LoadCellResult)
	kappa := math.Sqrt(250)
	assert.Equal(t, 15, r.N)
	assert.Equal(t, 12.0, r.Scatter.DF)
	assert.Equal(t, proving.SplitPlanned, r.Scatter.Split)
	assert.Zero(t, *r.Scatter.Tolerance)
	assert.InEpsilon(t, 2*kappa, *r.Scatter.Scatter, 1e-12)
	assert.InEpsilon(t, kappa/40, *r.Scatter.Factor, 1e-12)
	assert.InEpsilon(t, 0.999574813001056, *r.Scatter.P, 1e-9, "SciPy 1.10.1, chi2.sf(12*250/1600, 12)")
	for i, c := range []float64{20, 40, 60} {
		s := r.Settings[i]
		mean := 40*c - 200
		assert.Equal(t, [3]float64{mean - 80, mean, mean + 80}, *s.Plan)
		assert.InDelta(t, mean, s.Mean, 1e-12)
		assert.InEpsilon(t, kappa, *s.SD, 1e-12)
		half := quantile * kappa * math.Sqrt(1.2)
		assert.InDelta(t, mean-half, s.Predict[0], 1e-6)
		assert.InDelta(t, mean+half, s.Predict[1], 1e-6)
		assert.Equal(t, proving.Inside, *s.Place)
	}
	assert.InEpsilon(t, 1, r.Fit.Scale.Factor, 1e-14)
	se := kappa / math.Sqrt(5*(600*600+1400*1400+2200*2200))
	assert.InDelta(t, 1+quantile*se, r.Fit.Scale.Limits[1], 1e-9)
	assert.InDelta(t, 0, *r.Fit.Bend.F, 1e-12)
	assert.Equal(t, []float64{2, 12}, []float64{*r.Fit.Bend.DF1, *r.Fit.Bend.DF2})
	assert.Empty(t, r.Outliers)
	assert.Equal(t, 2200.0, r.AtSetting.Force)
	assert.Equal(t, map[string]proving.Answer{"size": "pass", "range": "pass", "calibration": "pass", "band": "pass", "scatter": "pass", "drift": "pass", "force": "pass"}, answers(j))

	// By hand: t_0.97725,12 = 2.23135132 (SciPy 1.10.1) times √1.2 and the scatter; up to 0.1 N.
	require.NotNil(t, j.Adopt)
	assert.Equal(t, math.Ceil(10*2.23135131707774/2*math.Sqrt(1.2)*2*kappa)/10, *j.Adopt.ForceScatter)
	assert.Zero(t, *j.Adopt.ForceTolerance)
	assert.Equal(t, [][2]float64{{10, 200}, {20, 600}, {40, 1400}, {60, 2200}, {70, 2600}}, j.Adopt.CurvePoints, "what the plan has beyond stays")
	assert.Equal(t, []string{proving.SplitAsPlanned}, found(j))
}

// The doubt about the cell widens predictions and limits, and what is adopted.
func TestCellUncertainty(t *testing.T) {
	s := fives(1, 10, 20, 40, 60)
	narrow := one(t, station(t, simple), s).Result.(*proving.LoadCellResult)
	s.CellUncertainty = of(4.0)
	j := one(t, station(t, simple), s)
	wide := j.Result.(*proving.LoadCellResult)
	half := func(p *proving.Pair) float64 { return (p[1] - p[0]) / 2 }
	for i, mean := range []float64{600, 1400, 2200} {
		assert.InDelta(t, math.Hypot(half(narrow.Settings[i].Predict), 0.04*mean), half(wide.Settings[i].Predict), 1e-9)
	}
	assert.InDelta(t, math.Hypot(half(narrow.Fit.Scale.Limits), 0.04), half(wide.Fit.Scale.Limits), 1e-9)
	assert.Equal(t, 4.0, *j.Adopt.ForceTolerance)
	assert.Equal(t, proving.Undecided, *wide.Settings[2].Place, "by hand: 4 % of 2200 N are over 80 N")
	assert.Equal(t, proving.Open, answers(j)["band"])

	s.CellUncertainty = nil
	assert.Contains(t, found(one(t, station(t, simple), s)), proving.CellTakenAsPerfect)
}

// A strong ram: told as scaled, not as bent; the band fails only where the mean itself is out.
func TestScaled(t *testing.T) {
	j := one(t, station(t, simple), fives(1.06, 5, 20, 40, 60))
	r := j.Result.(*proving.LoadCellResult)
	assert.InEpsilon(t, 1.06, r.Fit.Scale.Factor, 1e-12)
	assert.Contains(t, found(j), proving.CurveScaled)
	assert.NotContains(t, found(j), proving.CurveBent)
	assert.Equal(t, []string{proving.Inside, proving.Undecided, proving.Outside},
		[]string{*r.Settings[0].Place, *r.Settings[1].Place, *r.Settings[2].Place}, "by hand: 36, 84 and 132 N off, ± 80 and a mean to ± 7.7 N")
	assert.Equal(t, proving.Fail, answers(j)["band"])

	weak := one(t, station(t, simple), fives(0.7, 1, 20, 40, 60))
	assert.Equal(t, proving.Fail, answers(weak)["force"], "1540 N seats nothing that needs more")
}

// What a setting may miss by without being called outside is the same 0.1 N by which it may miss
// and still be called inside: the limits of the band are the same in both questions. By hand: a ram
// without scatter and tolerance has no band but its curve, and pairs of pushes 0.002 N apart leave
// the mean known to 0.0045 N (t_0.975,3 = 3.182, from memory, times 0.001414/√2 N); pairs 0.08 N
// apart one further push to ±0.22 N, too wide to be inside.
func TestPlaceForgivesBothWays(t *testing.T) {
	sure := map[string]string{"ram.force_tolerance": "0", "ram.force_scatter": "0"}
	for k, v := range simple {
		if _, given := sure[k]; !given {
			sure[k] = v
		}
	}
	plan := station(t, sure)
	placed := func(off, apart float64) (string, proving.Answer) {
		s := fives(1, 0, 20, 40, 60)
		s.Rows = nil
		for _, c := range []float64{20, 40, 60} {
			for _, d := range []float64{-apart / 2, apart / 2} {
				s.Rows = append(s.Rows, proving.Row{Setting: of(c), Force: of(40*c - 200 + off + d)})
			}
		}
		j := one(t, plan, s)
		return *j.Result.(*proving.LoadCellResult).Settings[1].Place, answers(j)["band"]
	}
	for _, q := range []struct {
		off, apart float64
		place      string
		band       proving.Answer
	}{
		{0.05, 0.002, proving.Inside, proving.Pass}, {-0.05, 0.002, proving.Inside, proving.Pass},
		{0.099, 0.08, proving.Undecided, proving.Open}, {-0.099, 0.08, proving.Undecided, proving.Open},
		{0.1, 0.002, proving.Undecided, proving.Open}, {-0.1, 0.002, proving.Undecided, proving.Open},
		{0.11, 0.002, proving.Outside, proving.Fail}, {-0.11, 0.002, proving.Outside, proving.Fail},
		{0.3, 0.08, proving.Outside, proving.Fail}, {-0.3, 0.08, proving.Outside, proving.Fail},
	} {
		place, band := placed(q.off, q.apart)
		assert.Equal(t, q.place, place, "%v", q)
		assert.Equal(t, q.band, band, "%v", q)
	}
}

// A middle that lies 30 N up is bent, and the scale stays close to 1.
func TestBent(t *testing.T) {
	s := fives(1, 10, 20, 30, 40, 50, 60)
	for i := range s.Rows {
		if c := *s.Rows[i].Setting; c == 40 {
			*s.Rows[i].Force += 40
		}
	}
	j := one(t, station(t, simple), s)
	assert.Contains(t, found(j), proving.CurveBent)
	assert.NotContains(t, found(j), proving.CurveScaled)
}

// Rows in the order of their times, not as given, drift.
func TestForcesDrift(t *testing.T) {
	s := fives(1, 10, 20, 40, 60)
	for i := range s.Rows {
		*s.Rows[i].Force += 6 * float64(i)
		s.Rows[i].Time = of(float64(i))
	}
	j := one(t, station(t, simple), s)
	r := j.Result.(*proving.LoadCellResult)
	assert.Contains(t, found(j), proving.Drifting)
	assert.Equal(t, proving.Open, answers(j)["drift"])
	assert.Greater(t, r.Drift.ChangeSD, 1.0)
	assert.Equal(t, 11.0, r.Drift.DF, "by hand: 15 rows, 3 settings, a slope")

	// The same rows turned round, each with its time.
	for i, k := 0, len(s.Rows)-1; i < k; i, k = i+1, k-1 {
		s.Rows[i], s.Rows[k] = s.Rows[k], s.Rows[i]
	}
	assert.InEpsilon(t, r.Drift.ChangeSD, one(t, station(t, simple), s).Result.(*proving.LoadCellResult).Drift.ChangeSD, 1e-9)
	for i := range s.Rows {
		s.Rows[i].Time = nil
	}
	assert.InEpsilon(t, -r.Drift.ChangeSD, one(t, station(t, simple), s).Result.(*proving.LoadCellResult).Drift.ChangeSD, 1e-9, "without times as given")
}

func TestColdWarm(t *testing.T) {
	s := fives(1, 10, 20, 40, 60)
	for i := range s.Rows {
		s.Rows[i].Condition = proving.Cold
		if i%2 == 1 {
			s.Rows[i].Condition = proving.Warm
			*s.Rows[i].Force += 45
		}
	}
	j := one(t, station(t, simple), s)
	r := j.Result.(*proving.LoadCellResult)
	assert.Contains(t, found(j), proving.ColdAndWarm)
	assert.Greater(t, r.ColdWarm.DifferenceSD, 1.0)
	s.Rows[3].Condition = ""
	assert.Nil(t, one(t, station(t, simple), s).Result.(*proving.LoadCellResult).ColdWarm, "one row says nothing")
	for i := range s.Rows {
		s.Rows[i].Condition = proving.Warm
	}
	assert.Nil(t, one(t, station(t, simple), s).Result.(*proving.LoadCellResult).ColdWarm, "all alike")
}

// By hand: s² of 30² against 1 pooled of the two others, (4, 8) degrees of freedom, the
// smallest of three.
func TestOddScatter(t *testing.T) {
	s := fives(1, 1, 20, 40, 60)
	for i := range s.Rows {
		if *s.Rows[i].Setting == 40 {
			*s.Rows[i].Force = 1400 + 30*(*s.Rows[i].Force-1400)
		}
	}
	j := one(t, station(t, simple), s)
	r := j.Result.(*proving.LoadCellResult)
	assert.Equal(t, 40.0, r.OddScatter.Setting)
	assert.Less(t, r.OddScatter.P, 1e-6)
	assert.Contains(t, found(j), proving.OddlyScattered)
	// By hand: 45 N over h/2 = 40 N is no more than planned.
	assert.Equal(t, proving.Pass, answers(j)["scatter"])
}

func TestForceOutlier(t *testing.T) {
	s := fives(1, 5, 20, 30, 40, 50, 60)
	*s.Rows[7].Force += 150
	j := one(t, station(t, simple), s)
	assert.Equal(t, []int{8}, j.Result.(*proving.LoadCellResult).Outliers)
	assert.Contains(t, found(j), proving.Outlying)
	assert.Equal(t, 25, j.Result.(*proving.LoadCellResult).N, "nothing is left out")
}

// Two settings whose means fall become one point, and the study says so.
func TestNotRising(t *testing.T) {
	s := fives(1, 10, 20, 40, 60)
	for i := range s.Rows {
		switch *s.Rows[i].Setting {
		case 40:
			*s.Rows[i].Setting = 41
		case 60:
			*s.Rows[i].Force -= 820 // 1380 under 1400
			*s.Rows[i].Setting = 44
		}
	}
	j := one(t, station(t, simple), s)
	require.NotNil(t, j.Adopt)
	assert.Equal(t, [][2]float64{{10, 200}, {20, 600}, {42.5, 1390}, {50, 1800}, {60, 2200}, {70, 2600}}, j.Adopt.CurvePoints, "by hand: equal weights")
	assert.Contains(t, found(j), proving.NotRising)
}

func TestNothingToAdopt(t *testing.T) {
	wild := fives(1, 0, 20, 40, 60)
	for i := range wild.Rows {
		*wild.Rows[i].Force *= 1 + 0.45*float64(i/3-2)
	}
	for name, s := range map[string]*proving.Study{
		"falls under what the plan has below": fives(0.3, 1, 20, 40, 60),
		"one setting":                         fives(1, 10, 60),
		"scatters by more than all of it":     wild,
		"no row twice": {Kind: proving.LoadCell, TakenAt: "2026-11-20", Rows: []proving.Row{
			{Setting: of(20.0), Force: of(600.0)}, {Setting: of(60.0), Force: of(2200.0)}}},
	} {
		j := one(t, station(t, nil), s)
		assert.Nil(t, j.Adopt, name)
		assert.Contains(t, found(j), proving.NothingToAdopt, name)
		assert.Nil(t, j.Result.(*proving.LoadCellResult).AtSetting, name)
		assert.Equal(t, proving.Open, answers(j)["force"], name)
		allFinite(t, j)
	}
}

// Settings beyond the curve are shown, judged by nothing, and leave the range open.
func TestBeyondTheCurve(t *testing.T) {
	j := one(t, station(t, simple), fives(1, 10, 20, 60, 80))
	r := j.Result.(*proving.LoadCellResult)
	last := r.Settings[2]
	assert.Equal(t, 80.0, last.Setting)
	assert.Nil(t, last.Plan)
	assert.Nil(t, last.Place)
	assert.NotNil(t, last.Predict)
	assert.Equal(t, proving.Open, answers(j)["range"])
	assert.Equal(t, proving.Open, answers(j)["band"])
	assert.Equal(t, 1.0, *r.Fit.Bend.DF1, "only the two inside count")
}

func TestCalibration(t *testing.T) {
	for _, c := range []struct {
		at   string
		days *float64
		want proving.Answer
	}{
		{"2026-11-20", nil, proving.Pass}, {"2026-11-21", nil, proving.Open}, {"2025-11-20", nil, proving.Pass},
		{"2025-11-19", nil, proving.Open}, {"2026-11-10", of(10.0), proving.Pass}, {"2026-11-09", of(10.0), proving.Open}, {"", nil, proving.Open},
	} {
		s := fives(1, 10, 20, 40, 60)
		s.TakenAt, s.CalibratedAt, s.CalibrationDays = "2026-11-20T23:30:00+01:00", c.at, c.days
		assert.Equal(t, c.want, answers(one(t, station(t, simple), s))["calibration"], "%v", c)
	}
}

// A fifth off the slow speed is not yet another speed.
func TestOtherSpeed(t *testing.T) {
	for speed, want := range map[float64]bool{8: false, 9.6: false, 9.7: true, 6.4: false, 6.3: true} {
		s := fives(1, 10, 20, 40, 60)
		s.Rows[4].Speed = of(speed)
		assert.Equal(t, want, assert.ObjectsAreEqual([]string{proving.OtherSpeed, proving.SplitAsPlanned}, found(one(t, station(t, simple), s))), "%v mm/s", speed)
	}
}

// Nothing scatters: the plan promised some, so that is no fault; there is nothing to test with.
func TestStillForces(t *testing.T) {
	j := one(t, station(t, simple), fives(1, 0, 20, 40, 60))
	r := j.Result.(*proving.LoadCellResult)
	assert.Zero(t, *r.Scatter.Scatter)
	assert.Zero(t, *r.Scatter.Factor)
	assert.Equal(t, 1.0, *r.Scatter.P)
	assert.Nil(t, r.Fit.Scale)
	assert.Nil(t, r.Fit.Bend)
	assert.Nil(t, r.Drift)
	assert.Nil(t, r.OddScatter)
	allFinite(t, j)
	perfect := map[string]string{}
	for k, v := range simple {
		perfect[k] = v
	}
	perfect["ram.force_scatter"] = "0"
	r = one(t, station(t, perfect), fives(1, 0, 20, 40, 60)).Result.(*proving.LoadCellResult)
	assert.Nil(t, r.Scatter.Factor)
	assert.Equal(t, 1.0, *r.Scatter.P, "nothing promised, nothing seen")
	r = one(t, station(t, perfect), fives(1, 1, 20, 40, 60)).Result.(*proving.LoadCellResult)
	assert.Nil(t, r.Scatter.Factor)
	assert.Zero(t, *r.Scatter.P, "nothing promised, something seen")
}

// A curve of the drive's own figures holds no weight: what is adopted holds none either.
func TestWeightOfTheRam(t *testing.T) {
	changes := map[string]string{"ram.curve.measured": "drive"}
	for k, v := range simple {
		changes[k] = v
	}
	const weight = 2.4 * 9.80665 // by hand: 2.4 kg pressing down
	s := fives(1, 10, 20, 40, 60)
	for i := range s.Rows {
		*s.Rows[i].Force += weight
	}
	j := one(t, station(t, changes), s)
	r := j.Result.(*proving.LoadCellResult)
	assert.InDelta(t, 600+weight, r.Settings[0].Plan[1], 1e-9)
	assert.InEpsilon(t, 1, r.Fit.Scale.Factor, 1e-12)
	assert.Equal(t, [][2]float64{{10, 200}, {20, 600}, {40, 1400}, {60, 2200}, {70, 2600}}, j.Adopt.CurvePoints)
	assert.InDelta(t, 2200+weight, r.AtSetting.Force, 1e-9)
}

// Size asks for three settings, three pushes at each, ten degrees of freedom.
func TestLoadCellSize(t *testing.T) {
	for _, c := range []struct {
		pushes []int
		want   proving.Answer
	}{
		{[]int{5, 5, 3}, proving.Pass}, {[]int{4, 4, 4}, proving.Open}, {[]int{6, 6, 2}, proving.Open}, {[]int{6, 6}, proving.Open}, {[]int{4, 4, 4, 4}, proving.Pass},
	} {
		s := &proving.Study{Kind: proving.LoadCell, TakenAt: "2026-11-20"}
		for i, n := range c.pushes {
			for k := range n {
				s.Rows = append(s.Rows, proving.Row{Setting: of(float64(20 + 10*i)), Force: of(float64(600+400*i) + 10*float64(k%3-1))})
			}
		}
		assert.Equal(t, c.want, answers(one(t, station(t, simple), s))["size"], "%v", c.pushes)
	}
}

// By hand: a middle that lies 20 N up, weights of 5 each and κ² = 2.5d².
func TestBend(t *testing.T) {
	s := fives(1, 10, 20, 40, 60)
	for i := range s.Rows {
		if *s.Rows[i].Setting == 40 {
			*s.Rows[i].Force += 20
		}
	}
	r := one(t, station(t, simple), s).Result.(*proving.LoadCellResult)
	entered, mean := []float64{600, 1400, 2200}, []float64{600, 1420, 2200}
	products, squares, lack := 0.0, 0.0, 0.0
	for i, f := range entered {
		products, squares = products+mean[i]*f, squares+f*f
	}
	for i, f := range entered {
		lack += 5 * (mean[i] - products/squares*f) * (mean[i] - products/squares*f)
	}
	assert.InEpsilon(t, products/squares, r.Fit.Scale.Factor, 1e-12)
	assert.InEpsilon(t, lack/2/250, *r.Fit.Bend.F, 1e-9)
	assert.InEpsilon(t, study.FUpperP(lack/2/250, 2, 12), *r.Fit.Bend.P, 1e-9)
}

// Drift and cold against warm by another way: all settings and the slope in one fit.
func TestDriftAsOneFit(t *testing.T) {
	s := fives(1, 10, 20, 40, 60)
	columns, z := make([][]float64, 4), []float64(nil)
	r := one(t, station(t, simple), s).Result.(*proving.LoadCellResult)
	sigma := *r.Scatter.Scatter / 2
	for i := range s.Rows {
		s.Rows[i].Condition = []string{proving.Cold, proving.Warm, proving.Warm, proving.Cold}[i%4]
		for j, c := range []float64{20, 40, 60} {
			there := 0.0
			if *s.Rows[i].Setting == c {
				there = 1
			}
			columns[j] = append(columns[j], there)
		}
		columns[3] = append(columns[3], float64(i))
		z = append(z, *s.Rows[i].Force/sigma)
	}
	fit := study.LeastSquares(columns, z, nil)
	tt, p := fit.CoefT(3)
	assert.InEpsilon(t, 14*fit.Coef[3], r.Drift.ChangeSD, 1e-9)
	assert.InEpsilon(t, *tt, r.Drift.T, 1e-9)
	assert.InEpsilon(t, *p, r.Drift.P, 1e-9)

	for i := range s.Rows {
		columns[3][i] = 0
		if s.Rows[i].Condition == proving.Warm {
			columns[3][i] = 1
		}
	}
	fit = study.LeastSquares(columns, z, nil)
	tt, _ = fit.CoefT(3)
	r = one(t, station(t, simple), s).Result.(*proving.LoadCellResult)
	assert.InEpsilon(t, fit.Coef[3], r.ColdWarm.DifferenceSD, 1e-9)
	assert.InEpsilon(t, *tt, r.ColdWarm.T, 1e-9)

	// Two settings, five rows: two degrees of freedom are too few.
	s.Rows = s.Rows[:6]
	for i := range s.Rows {
		*s.Rows[i].Setting = float64(20 + 20*(i%2))
	}
	assert.NotNil(t, one(t, station(t, simple), s).Result.(*proving.LoadCellResult).Drift)
	s.Rows = s.Rows[:5]
	assert.Nil(t, one(t, station(t, simple), s).Result.(*proving.LoadCellResult).Drift)
}

// A pair of pushes is held to what a pair can show: each lies 1/√2 of their distance from its
// own mean in standard deviations, so that it weighs as much as one of many.
func TestOutlierOfAPair(t *testing.T) {
	s := &proving.Study{Kind: proving.LoadCell, TakenAt: "2026-11-20"}
	for i := range 40 {
		s.Rows = append(s.Rows, proving.Row{Setting: of(40.0), Force: of(1400 + 10*float64(i%5-2))})
	}
	z := []float64{}
	for _, r := range s.Rows {
		z = append(z, (*r.Force-1400)*math.Sqrt(40.0/39))
	}
	for half := 20.0; half < 80; half += 1 {
		pair := &proving.Study{Kind: s.Kind, TakenAt: s.TakenAt, Rows: append(s.Rows[:40:40],
			proving.Row{Setting: of(20.0), Force: of(600 - half)}, proving.Row{Setting: of(20.0), Force: of(600 + half)})}
		want := []int{}
		for _, at := range study.Outliers(append(z[:40:40], -half*math.Sqrt2, half*math.Sqrt2)) {
			want = append(want, at+1)
		}
		assert.Equal(t, want, one(t, station(t, simple), pair).Result.(*proving.LoadCellResult).Outliers, "± %v N", half)
	}
}

// Two lowest settings that pool leave the least setting of the plan outside: nothing to adopt.
func TestPooledAtTheEnd(t *testing.T) {
	s := fives(1, 1, 10, 20, 60)
	for i := range s.Rows {
		if *s.Rows[i].Setting == 10 {
			*s.Rows[i].Force += 500
		}
	}
	j := one(t, station(t, simple), s)
	assert.Nil(t, j.Adopt)
	assert.Equal(t, []string{proving.CurveScaled, proving.CurveBent, proving.NotRising, proving.NothingToAdopt, proving.SplitAsPlanned}, found(j))
}

// A proportional scatter grows with the curve's own part of the force, not with the weight: by
// hand, 1 % of it times −2 to 2 has the standard deviation √2.5 %.
func TestProportionalScatter(t *testing.T) {
	changes := map[string]string{}
	for k, v := range simple {
		changes[k] = v
	}
	changes["ram.curve.measured"], changes["ram.force_tolerance"], changes["ram.force_scatter"], changes["ram.moving_mass"] = "drive", "8", "0", "20"
	s := fives(1, 1, 20, 40, 60)
	for i := range s.Rows {
		curve := 40**s.Rows[i].Setting - 200
		*s.Rows[i].Force = curve + 0.01*curve*(*s.Rows[i].Force-curve) + 20*9.80665
	}
	r := one(t, station(t, changes), s).Result.(*proving.LoadCellResult)
	require.Equal(t, proving.SplitPlanned, r.Scatter.Split)
	assert.InEpsilon(t, 2*math.Sqrt(2.5), *r.Scatter.Tolerance, 1e-9)
	assert.Zero(t, *r.Scatter.Scatter)
}
