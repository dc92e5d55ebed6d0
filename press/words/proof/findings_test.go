package proof

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words"
)

func of[T any](v T) *T { return &v }

// station is the result of the example plan with entries changed.
func station(t testing.TB, changes map[string]string) *press.Result {
	t.Helper()
	data, err := os.ReadFile("../../../static/examples/example-plan.json")
	require.NoError(t, err)
	p, ps := press.Decode(data)
	require.Empty(t, ps)
	d := p.Draft()
	for path, text := range changes {
		d.Set(path, text)
	}
	p, ps = d.Check()
	require.Empty(t, ps)
	return press.Evaluate(p)
}

// studied is a study and what was found in it: judged where the figures are left to the
// program, else put together by hand so that the sentence has something to say.
type studied struct {
	study  *proving.Study
	result any // nil: judged
}

func master(readings ...float64) *proving.Study {
	s := &proving.Study{Format: proving.Format, Kind: proving.Master, TakenAt: "2026-11-22", Height: of(40.0)}
	for _, x := range readings {
		s.Rows = append(s.Rows, proving.Row{Reading: of(x)})
	}
	return s
}

// restarts are starts of two pushes each.
func restarts(means ...float64) *proving.Study {
	s := master()
	s.Kind = proving.Restart
	for i, m := range means {
		for _, off := range []float64{-0.0005, 0.0005} {
			condition := proving.Cold
			if i >= len(means)/2 {
				condition = proving.Warm
			}
			s.Rows = append(s.Rows, proving.Row{Reading: of(m + off), Start: of(float64(i + 1)), Condition: condition})
		}
	}
	return s
}

// parts are rows of a trial: reading, height, both lamps on unless the reading is past the end.
func parts(n int, row func(i int) proving.Row) *proving.Study {
	s := &proving.Study{Format: proving.Format, Kind: proving.Trial, TakenAt: "2026-11-24"}
	for i := range n {
		s.Rows = append(s.Rows, row(i))
	}
	return s
}

func part(reading, height float64, arrival, zone bool) proving.Row {
	return proving.Row{Reading: of(reading), Height: of(height), Arrival: of(arrival), Zone: of(zone)}
}

func samples(rows ...proving.Row) *proving.Study {
	return &proving.Study{Format: proving.Format, Kind: proving.Samples, TakenAt: "2026-11-25", Rows: rows}
}

func sample(name string, height, reading float64, arrival, zone bool) proving.Row {
	row := part(reading, height, arrival, zone)
	row.Sample = name
	return row
}

// alternating gives n readings on both sides of one, by sd.
func alternating(n int, middle, by float64) []float64 {
	var out []float64
	for i := range n {
		x := middle + by
		if i%4 == 1 || i%4 == 2 {
			x = middle - by
		}
		out = append(out, x)
	}
	return out
}

// met is each code with a study in which it is found.
func met(t testing.TB, r *press.Result) map[string][]studied {
	predicted := r.Plan.Station.Nest - 40 + (r.Force.Typical-r.Plan.Station.NestForce)/r.Plan.Station.Stiffness
	wide := alternating(30, predicted, 0.03)
	apart := append(alternating(29, predicted, 0.004), predicted+0.05)
	var rising []float64
	for i := range 30 {
		rising = append(rising, predicted+0.001*float64(i-15))
	}
	named := master(predicted)
	named.Ram, named.PlanDigest = "another ram", "sha256:0123456789abcdef"
	elsewhere := master(predicted)
	elsewhere.Setting = of(5.0)

	cell := &proving.Study{Format: proving.Format, Kind: proving.LoadCell, TakenAt: "2026-11-20", Rows: []proving.Row{{Setting: of(40.0), Force: of(1300.0), Speed: of(12.0)}}}
	forces := &proving.LoadCellResult{
		N: 35, Settings: []proving.SettingForces{{Setting: 30, N: 5, Mean: 1360}, {Setting: 40, N: 5, Mean: 1352.3}},
		Scatter: proving.Scatter{DF: 28, Tolerance: of(2.243), Scatter: of(4.81), Split: proving.SplitPlanned},
		Fit:     proving.CurveFit{Scale: &proving.Scale{Factor: 0.98, Limits: &proving.Pair{0.974, 0.986}, P: of(1e-5)}, Bend: &proving.F{F: of(7.1), P: of(0.002)}},
		Drift:   &proving.ForceDrift{ChangeSD: -2.1, P: 0.004}, ColdWarm: &proving.ColdWarm{DifferenceSD: 1.8, P: 0.003},
		OddScatter: &proving.OddScatter{Setting: 40, P: 0.006}, Outliers: []int{3, 12},
	}
	block := &proving.Study{Format: proving.Format, Kind: proving.Stiffness, TakenAt: "2026-11-21"}
	line := &proving.StiffnessResult{
		N: 18, Used: 15, Levels: 5, StartupBelow: of(940.0), Lowest: &proving.Lowest{Deviation: 0.016},
		Curvature: &proving.Curvature{Sag: 0.012}, Stiffness: &proving.Stiff{Value: 14036, Uncertainty: of(980.0)},
		Agreement: &proving.Agreement{PositionShift: of(0.031), PositionUncertainty: of(0.007), PositionAllowed: of(0.019)},
		Trend:     &proving.Trend{S: 40, P: 0.0004}, Serial: &proving.Serial{Ratio: 0.6, P: 0.001}, Outliers: []int{7},
	}
	one := func(kind *proving.Study, result any) []studied { return []studied{{kind, result}} }
	judged := func(s ...*proving.Study) (out []studied) {
		for _, x := range s {
			out = append(out, studied{x, nil})
		}
		return out
	}

	right := func(i int) proving.Row {
		off := []float64{0.004, -0.004, -0.004, 0.004}[i%4]
		return part(115.137+off, 25-off/4, true, true)
	}
	bad := parts(40, func(i int) proving.Row {
		switch {
		case i%4 == 0:
			return part(115.19, 25.15, false, true) // refused
		case i < 6:
			return part(115.02, 25.15, true, true) // accepted, too tall, and the lamps do not go with it
		}
		return right(i)
	})
	moved := parts(40, func(i int) proving.Row { x := right(i); *x.Reading += 0.04; return x })
	unmeasured := parts(40, func(i int) proving.Row { x := right(i); *x.Reading += 0.04; x.Height = nil; return x })
	lumps := parts(40, func(i int) proving.Row {
		x := right(i)
		*x.Reading += 0.0001 * float64(i)
		if i%2 == 0 {
			*x.Reading += 0.05
		}
		return x
	})
	trialRising := parts(40, func(i int) proving.Row { x := right(i); *x.Reading += 0.001 * float64(i); return x })
	trialApart := parts(40, func(i int) proving.Row {
		x := right(i)
		if i == 20 {
			*x.Reading = 115.09
		}
		return x
	})
	trialWide := parts(40, func(i int) proving.Row { x := right(i); *x.Reading += 9 * (*x.Reading - 115.137); return x })
	startsRising := restarts(alternating(12, predicted, 0.0001)...)
	for i := range startsRising.Rows {
		*startsRising.Rows[i].Reading += 0.002 * float64(i/2)
	}
	startApart := restarts(alternating(12, predicted, 0.002)...)
	*startApart.Rows[0].Reading += 0.03
	fell := *line
	fell.Trend = nil

	return map[string][]studied{
		proving.OtherRam:              judged(named),
		proving.OtherPlan:             judged(named, func() *proving.Study { s := parts(1, right); s.PlanDigest = "sha256:0123456789abcdef"; return s }()),
		proving.Drifting:              append(append(judged(master(rising...), trialRising, startsRising), one(cell, forces)...), studied{block, line}, studied{block, &fell}),
		proving.Outlying:              append(judged(master(apart...), trialApart, startApart), studied{cell, forces}, studied{block, line}),
		proving.CurveScaled:           one(cell, forces),
		proving.CurveBent:             one(cell, forces),
		proving.ColdAndWarm:           one(cell, forces),
		proving.OddlyScattered:        one(cell, forces),
		proving.NotRising:             one(cell, forces),
		proving.NothingToAdopt:        one(cell, forces),
		proving.OtherSpeed:            one(cell, forces),
		proving.SplitAsPlanned:        one(cell, forces),
		proving.CellTakenAsPerfect:    one(cell, forces),
		proving.OutsideCurve:          judged(elsewhere),
		proving.StartupRange:          one(block, line),
		proving.NotLinear:             one(block, line),
		proving.StiffnessOff:          one(block, line),
		proving.NestOff:               append(judged(master(alternating(30, predicted+0.05, 0.003)...), moved, unmeasured), studied{block, line}),
		proving.ForceFromCurve:        one(block, line),
		proving.SpreadOverPlan:        judged(master(wide...), trialWide, restarts(alternating(12, predicted, 0.05)...)),
		proving.GaugeWeak:             judged(master(wide...)),
		proving.Biased:                judged(master(alternating(30, predicted+0.01, 0.003)...)),
		proving.RepeatabilityNotShown: judged(master(alternating(30, predicted, 0.012)...)),
		proving.WarmUp:                judged(restarts(predicted, predicted+0.001, predicted, predicted+0.03, predicted+0.031, predicted+0.03)),
		proving.StartsDiffer:          judged(restarts(alternating(12, predicted, 0.01)...)),
		proving.LampsDiffer:           judged(bad, samples(sample("T1", 25.11, 115.02, true, true), sample("T1", 25.11, 115.02, true, true))),
		proving.MoreRejects:           judged(bad),
		proving.FalseAccepts:          judged(bad),
		proving.NotNormal:             judged(lumps),
		proving.Censored:              judged(bad),
		proving.CapabilityFew:         judged(parts(40, right)),
		proving.NestCorrection:        judged(moved),
		proving.ReadingsDiffer:        judged(samples(sample("T1", 25.11, 115.2, true, false)), samples(sample("G", 25, 115.165, true, true), sample("G", 25, 115.165, true, true), sample("G", 25, 115.165, true, true))),
		proving.SampleUndecided:       judged(samples(sample("X", 25.06, 115.077, true, false))),
		proving.SampleTooEasy:         judged(samples(sample("T9", 25.4, 114.73, true, false))),
	}
}

// inches is another reader: 1 in = 25.4 mm, 1 lbf = 4.448 221 615 260 5 N (international yard
// and pound agreement, 1959; standard gravity).
var inches = Words{words.Printer{Units: words.Units{
	Length:   words.Scale{Unit: "in", PerOne: 1 / 25.4, Digits: 2},
	Velocity: words.Scale{Unit: "in/s", PerOne: 1 / 25.4, Digits: 2},
	Force:    words.Scale{Unit: "lbf", PerOne: 1 / 4.4482216152605},
}}}

var metricUnit = regexp.MustCompile(`\d\x{202f}(mm|mm/s|N|N/mm)(\s|[.,;:)]|$)`)

// Every code is found in a study and has a sentence for each of its kinds, with the figures that
// it names, in the units of the reader.
func TestEveryFindingHasItsSentence(t *testing.T) {
	var say Words
	r := station(t, nil)
	all := met(t, r)
	for _, c := range proving.Codes {
		require.NotEmpty(t, all[c.Code], "%s is met in no study", c.Code)
		for _, x := range all[c.Code] {
			var j proving.Judged
			if x.result != nil {
				j = proving.Judged{Kind: x.study.Kind, Result: x.result}
			} else {
				a := proving.Assess(r, []*proving.Study{x.study}, "2026-11-28")
				j = a.Studies[0]
				say.Explain(r, []*proving.Study{x.study}, a)
				found := false
				for _, f := range j.Findings {
					assert.NotEmpty(t, f.Message)
					found = found || f.Code == c.Code
				}
				require.True(t, found, "%s of %s: %v", c.Code, x.study.Kind, j.Findings)
			}
			f := proving.Finding{Code: c.Code}
			sentence := say.FindingSaid(r, x.study, &j, f)
			t.Logf("%s: %s", c.Code, sentence)
			holds(t, sentence)
			assert.NotRegexp(t, metricUnit, inches.FindingSaid(r, x.study, &j, f))
		}
	}
	assert.Len(t, sentences, len(proving.Codes))
	assert.Panics(t, func() { say.FindingSaid(r, master(), &proving.Judged{}, proving.Finding{Code: "none"}) })
}

// holds tells what every sentence keeps to: it ends, and misses no figure.
func holds(t testing.TB, s string) {
	t.Helper()
	assert.Regexp(t, `^\S.*[.?]$`, s)
	for _, bad := range []string{"–", "NaN", "Inf", "  ", "..", "%!"} {
		assert.NotContains(t, s, bad)
	}
	assert.Less(t, len(s), 400, s)
	assert.NotContains(t, strings.ToLower(s), "null")
}
