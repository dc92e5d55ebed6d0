// Package pushed is for tests: studies that were never taken, of every kind that a drawing has
// to be clear for, with results put together by hand. Their figures are plain ones (means,
// deviations, counts) or made up; what they would be is the business of package proving.
package pushed

import (
	"math"
	"math/rand/v2"

	"ramplan/press"
	"ramplan/press/proving"
)

// A Study is one with what was found in it.
type Study struct {
	Study  *proving.Study
	Judged *proving.Judged
}

func ptr[T any](x T) *T { return &x }

func meanAndSD(list []float64) (mean float64, sd *float64) {
	for _, x := range list {
		mean += x / float64(len(list))
	}
	if len(list) < 2 {
		return mean, nil
	}
	sum := 0.0
	for _, x := range list {
		sum += (x - mean) * (x - mean)
	}
	return mean, ptr(math.Sqrt(sum / float64(len(list)-1)))
}

func study(kind, on string, rows []proving.Row) *proving.Study {
	return &proving.Study{Format: proving.Format, Kind: kind, TakenAt: on, TakenBy: "M. Weber", Rows: rows}
}

func judged(s *proving.Study, verdict proving.Answer, result any, checks ...proving.Check) Study {
	return Study{s, &proving.Judged{Kind: s.Kind, StudyDigest: "sha256:56b3b07ad5d6", Verdict: verdict, Checks: checks, Result: result}}
}

// Forces are pushes on a load cell: each setting so many times, off the plan by a factor.
func Forces(r *press.Result, seed uint64, each int, factor float64) Study {
	random := rand.New(rand.NewPCG(seed, 1))
	curve := r.Traces().Force
	s := study(proving.LoadCell, "2026-11-20", nil)
	out := &proving.LoadCellResult{Outliers: []int{}}
	for i := range 7 {
		b := curve[10+i*(len(curve)-20)/6]
		var list []float64
		for range each {
			f := factor*b.Typical + random.NormFloat64()*(b.High-b.Low)/8
			list = append(list, f)
			s.Rows = append(s.Rows, proving.Row{Setting: ptr(b.At), Force: ptr(f)})
		}
		m := proving.SettingForces{Setting: b.At, N: each, Plan: &[3]float64{b.Low, b.Typical, b.High}}
		m.Mean, m.SD = meanAndSD(list)
		half := (b.High - b.Low) / 3
		m.Predict = &proving.Pair{m.Mean - half, m.Mean + half}
		switch {
		case m.Predict[0] >= b.Low && m.Predict[1] <= b.High:
			m.Place = ptr(proving.Inside)
		case m.Mean < b.Low || m.Mean > b.High:
			m.Place = ptr(proving.Outside)
		default:
			m.Place = ptr(proving.Undecided)
		}
		out.Settings = append(out.Settings, m)
	}
	out.N = len(s.Rows)
	f := r.Force
	out.AtSetting = &proving.AtSetting{Setting: f.Setting, Force: factor * f.Typical, Predict: &proving.Pair{0.97 * factor * f.Typical, 1.03 * factor * f.Typical}, Need: f.Need, Cap: f.Cap}
	return judged(s, proving.Pass, out, proving.Check{Name: "band", Outcome: proving.Pass})
}

// Block are pushes on a block at some forces; those at the lowest lie off the line, as play
// closing does, where startUp says so.
func Block(r *press.Result, seed uint64, levels, each int, startUp bool) Study {
	random := rand.New(rand.NewPCG(seed, 2))
	st := r.Plan.Station
	s := study(proving.Stiffness, "2026-11-21", nil)
	s.Height, s.HeightUncertainty, s.CellUncertainty = ptr(40.0), ptr(0.002), ptr(0.5)
	step := 1.1 * r.Force.Typical / float64(levels)
	for i := range levels {
		for range each {
			f := step * float64(i+1) * (1 + 0.004*random.NormFloat64())
			at := st.Nest + (f-st.NestForce)/st.Stiffness + 0.003*random.NormFloat64() - *s.Height
			if startUp && i == 0 {
				at -= 0.03
			}
			s.Rows = append(s.Rows, proving.Row{Force: ptr(f), Reading: ptr(at)})
		}
	}
	j := proving.Assess(r, []*proving.Study{s}, "2026-11-28").Studies[0]
	return Study{s, &j}
}

// Master are readings of one master, off where the plan puts it.
func Master(r *press.Result, seed uint64, n int, off, sd float64) Study {
	random := rand.New(rand.NewPCG(seed, 3))
	s := study(proving.Master, "2026-11-22", nil)
	s.Height = ptr(40.0)
	predicted := r.Plan.Station.Nest - 40 + (r.Force.Typical-r.Plan.Station.NestForce)/r.Plan.Station.Stiffness
	var list []float64
	for range n {
		x := math.Round(1000*(predicted+off+sd*random.NormFloat64())) / 1000
		list = append(list, x)
		s.Rows = append(s.Rows, proving.Row{Reading: ptr(x)})
	}
	out := &proving.MasterResult{N: n, Setting: r.Force.Setting, Predicted: predicted, Spread: proving.Spread{PlannedSD: 0.006}, Outliers: []int{}}
	out.Mean, out.SD = meanAndSD(list)
	out.Bias = proving.Bias{Value: out.Mean - predicted, Uncertainty: ptr(0.002), Allowed: 0.02}
	if n > 12 {
		out.Outliers = []int{7}
	}
	verdict := proving.Pass
	if math.Abs(out.Bias.Value) > 0.02 {
		verdict = proving.Fail
	}
	return judged(s, verdict, out, proving.Check{Name: "bias", Outcome: verdict})
}

// Starts are pushes on one master after each of several starts, every other one cold.
func Starts(r *press.Result, seed uint64, starts, each int) Study {
	random := rand.New(rand.NewPCG(seed, 4))
	s := study(proving.Restart, "2026-11-23", nil)
	s.Height = ptr(40.0)
	out := &proving.RestartResult{Supported: ptr(0.012), Spread: proving.Spread{PlannedSD: 0.006}, Outliers: []int{}}
	for i := range starts {
		condition, off := proving.Warm, 0.006*random.NormFloat64()
		if i%2 == 0 {
			condition, off = proving.Cold, off-0.004
		}
		var list []float64
		for range each {
			x := r.Plan.Station.Nest - 40 + off + 0.002*random.NormFloat64()
			list = append(list, x)
			s.Rows = append(s.Rows, proving.Row{Reading: ptr(x), Start: ptr(float64(i + 1)), Condition: condition})
		}
		mean, _ := meanAndSD(list)
		out.Starts = append(out.Starts, proving.Start{Start: float64(i + 1), N: each, Mean: mean})
	}
	out.N = len(s.Rows)
	out.ColdWarm = &proving.ColdWarmMean{Difference: -0.004, Limits: &proving.Pair{-0.009, 0.001}}
	return judged(s, proving.Pass, out)
}

// Trial are parts as they come, off where the plan expects them.
func Trial(r *press.Result, seed uint64, n int, off float64, wrong ...int) Study {
	random := rand.New(rand.NewPCG(seed, 5))
	s := study(proving.Trial, "2026-11-24", nil)
	s.PlanDigest = r.PlanDigest()
	out := &proving.TrialResult{N: n, Nominal: r.Travel.SeatReading, LampMismatch: append([]int{}, wrong...), Outliers: []int{}}
	density := r.Traces().Readings
	sd := (density[len(density)-1][0] - density[0][0]) / 8
	end := math.Inf(1)
	if r.Travel.PushEnd != nil {
		end = *r.Travel.PushEnd
	}
	counts, accepts := map[string]int{}, 0
	var list []float64
	for range n {
		x := math.Round(1000*(out.Nominal+off+sd*random.NormFloat64())) / 1000
		arrival := x < end
		x = math.Min(x, end)
		zone := r.Window.Zone != nil && r.Window.Zone[0] != nil && r.Window.Zone[1] != nil && x >= *r.Window.Zone[0] && x <= *r.Window.Zone[1]
		s.Rows = append(s.Rows, proving.Row{Reading: ptr(x), Arrival: ptr(arrival), Zone: ptr(zone), Height: ptr(25 - x + out.Nominal)})
		if arrival {
			list = append(list, x)
		}
		pair := map[bool]string{true: "on", false: "off"}[arrival] + "_" + map[bool]string{true: "on", false: "off"}[zone]
		counts[pair]++
		if arrival && zone {
			accepts++
		}
	}
	if len(list) > 0 {
		mean, sd := meanAndSD(list)
		out.Mean, out.SD, out.Used = &mean, sd, len(list)
	}
	predicted := map[string]float64{"on_on": 0.9971, "on_off": 0.0027, "off_on": 0.0001, "off_off": 0.0001}
	seen := func(k int, predicted float64) proving.SeenShare {
		p := float64(k) / float64(n)
		half := 2*math.Sqrt(p*(1-p)/float64(n)) + 3/float64(n)
		return proving.SeenShare{Seen: k, Of: n, Share: &p, Limits: &proving.Pair{math.Max(0, p-half), math.Min(1, p+half)}, Predicted: &predicted}
	}
	for _, pair := range []string{"on_on", "on_off", "off_on", "off_off"} {
		q := seen(counts[pair], predicted[pair])
		q.Pair = pair
		out.Shares = append(out.Shares, q)
	}
	out.Rejects = seen(n-accepts, 0.0029)
	out.Rejects.Lower = ptr(math.Max(0, out.Rejects.Limits[0]))
	out.Truth = &proving.Truth{N: n, FalseAccept: seen(0, 12e-6), FalseReject: seen(n-accepts, 0.0021)}
	return judged(s, proving.Pass, out)
}

// Samples are limit samples and the empty nest; the rows that are named came with other lamps.
func Samples(r *press.Result, each int, wrong ...int) Study {
	s := study(proving.Samples, "2026-11-25", nil)
	s.PlanDigest = r.PlanDigest()
	out := &proving.SamplesResult{}
	center := (r.Window.GoodRange[0] + r.Window.GoodRange[1]) / 2
	wide := r.Window.GoodRange[1] - r.Window.GoodRange[0]
	add := func(sample, role string, at *float64, arrival, zone bool) {
		row := len(s.Rows) + 1
		given := proving.Row{Sample: sample, Arrival: ptr(arrival), Zone: ptr(zone)}
		q := proving.SampleRow{Row: row, Sample: sample, PredictedReading: at, Arrival: ptr(arrival), Zone: ptr(zone), Lamps: proving.Pass}
		if role != "" {
			q.Role = ptr(role)
		}
		if at != nil {
			given.Reading = ptr(*at + 0.004)
			q.Reading, q.Difference, q.Allowed = ptr(proving.Pass), ptr(0.004), ptr(0.02)
		}
		for _, w := range wrong {
			if w == row {
				given.Zone, q.Lamps = ptr(!zone), proving.Fail
			}
		}
		s.Rows, out.Rows = append(s.Rows, given), append(out.Rows, q)
	}
	for range each {
		add("tall A", "long", ptr(center-wide), true, false)
		add("short B", "short", ptr(center+wide), false, false)
		add("good C", "good", ptr(center), true, true)
		add(proving.NoInsert, "empty", ptr(r.Plan.Station.Nest), false, false)
	}
	add("near D", "", ptr(r.Window.GoodRange[0]), true, true)
	out.N = len(out.Rows)
	out.Roles = proving.Roles{Long: each, Short: each, Good: each, Empty: each}
	out.Offset = &proving.SampleOffset{N: out.N, Value: 0.004, Allowed: 0.02}
	verdict := proving.Pass
	if len(wrong) > 0 {
		verdict = proving.Fail
	}
	return judged(s, verdict, out, proving.Check{Name: "lamps", Outcome: verdict})
}
