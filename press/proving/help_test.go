package proving_test

import (
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mathext"

	"ramplan/press"
	"ramplan/press/proving"
)

func of[T any](v T) *T { return &v }

// exampleDraft is the plan of the example as typed text, with entries changed; an empty text
// takes one away.
func exampleDraft(t testing.TB, changes map[string]string) *press.Draft {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/example-plan.json")
	require.NoError(t, err)
	p, ps := press.Decode(data)
	require.Empty(t, ps)
	d := p.Draft()
	for path, text := range changes {
		d.Set(path, text)
	}
	return d
}

// station is the result of the example plan with entries changed.
func station(t testing.TB, changes map[string]string) *press.Result {
	t.Helper()
	p, ps := exampleDraft(t, changes).Check()
	require.Empty(t, ps)
	return press.Evaluate(p)
}

// simple is a station that one can compute by hand: a push of 200 N at 10 % and 40 N more a
// percent, 2200 N at 60 %; ± 80 N; 20 000 N/mm; a nest taught with 200 N at 140 mm, so that
// the push bends it by 0.1 mm.
var simple = map[string]string{
	"ram.curve.interpolation": "linear", "ram.force_tolerance": "0", "ram.force_scatter": "80", "window.setting": "60",
	"ram.curve.points[0][1]": "200", "ram.curve.points[1][1]": "600", "ram.curve.points[2][1]": "1000", "ram.curve.points[3][1]": "1400",
	"ram.curve.points[4][1]": "1800", "ram.curve.points[5][1]": "2200", "ram.curve.points[6][1]": "2600",
	"station.stiffness": "20000", "station.nest_force": "200", "station.nest_drift": "0", "station.reference_uncertainty": "0.006", "station.stiffness_tolerance": "4",
}

// one judges one study.
func one(t testing.TB, plan *press.Result, s *proving.Study) proving.Judged {
	t.Helper()
	return proving.Assess(plan, []*proving.Study{s}, "2026-11-28").Studies[0]
}

func onMaster(readings ...float64) *proving.Study {
	s := &proving.Study{Format: proving.Format, Kind: proving.Master, TakenAt: "2026-11-22", Height: of(40.0)}
	for _, x := range readings {
		s.Rows = append(s.Rows, proving.Row{Reading: of(x)})
	}
	return s
}

func part(reading, height float64, arrival, zone bool) proving.Row {
	return proving.Row{Reading: of(reading), Height: of(height), Arrival: of(arrival), Zone: of(zone)}
}

// answers are the checks of a study by name.
func answers(j proving.Judged) map[string]proving.Answer {
	m := map[string]proving.Answer{}
	for _, c := range j.Checks {
		m[c.Name] = c.Outcome
	}
	return m
}

// found are the codes of its findings in their order.
func found(j proving.Judged) []string {
	list := []string{}
	for _, f := range j.Findings {
		list = append(list, f.Code)
	}
	return list
}

// spread gives n values about a middle with exactly the standard deviation, in an order that
// neither drifts nor clusters: normal scores, mixed.
func spread(n int, middle, sd float64) []float64 {
	out := make([]float64, n)
	step := int(0.618 * float64(n)) // the golden section mixes best
	for gcd(step, n) != 1 {
		step++
	}
	var mean, squares float64
	for i := range out {
		out[i] = score((float64(i*step%n) + 0.5) / float64(n))
		mean += out[i] / float64(n)
	}
	for _, x := range out {
		squares += (x - mean) * (x - mean)
	}
	for i, x := range out {
		out[i] = middle + sd*(x-mean)/root(squares/float64(n-1))
	}
	return out
}

func gcd(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

func root(x float64) float64 { return math.Sqrt(x) }

func score(p float64) float64 { return mathext.NormalQuantile(p) }
