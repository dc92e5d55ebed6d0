package draw

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"math/rand/v2"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
)

// TestNoLabelsOverlap looks at every drawing of every kind of plan in every form.
func TestNoLabelsOverlap(t *testing.T) {
	for name, p := range drawtest.Plans(t) {
		r := press.Evaluate(p)
		for what, draw := range pictures {
			for _, o := range forms {
				labelsApart(t, draw(p, r, o), fmt.Sprintf("%s, %s, %+v", what, name, o))
			}
		}
	}
}

// TestNoLabelsOverlapRandom looks at the drawings of 100 random plans, with RAMPLAN_PLANS=all of 400.
func TestNoLabelsOverlapRandom(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for drawn := 0; drawn < drawtest.RandomOnes(100, 400); {
		p, ok := drawtest.RandomPlan(t, random)
		if !ok {
			continue
		}
		drawn++
		r, o := press.Evaluate(p), forms[drawn%len(forms)]
		for what, draw := range pictures {
			labelsApart(t, draw(p, r, o), fmt.Sprintf("%s of plan %d, %+v", what, drawn, o))
		}
	}
}

// TestAnyResult draws results that no plan leads to: it must not panic, and its
// labels must not overlap.
func TestAnyResult(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	p := drawtest.Example(t, nil)
	for i := range drawtest.RandomOnes(150, 600) {
		r, traces := randomResult(random)
		m := newStripModel(p, r, traces)
		o := forms[i%len(forms)]
		apartFromOneAnother(t, m, o, fmt.Sprint("result ", i))
		drawtest.WellFormedSVG(t, svgOf(m.picture(o)))
	}
}

// apartFromOneAnother draws and compares the boxes of all texts.
func apartFromOneAnother(t testing.TB, m *stripModel, o Options, what string) {
	t.Helper()
	labelsApart(t, m.picture(o), what)
}

// randomResult makes up a result of any size.
func randomResult(random *rand.Rand) (*press.Result, press.Traces) {
	size := math.Pow(10, float64(random.IntN(19)-9))
	about := []float64{0, 115, -3e4, 1e9, -1e9}[random.IntN(5)]
	x := func() float64 {
		switch random.IntN(12) {
		case 0:
			return about
		case 1:
			return 1e9 * (2*random.Float64() - 1)
		}
		return about + size*(2*random.Float64()-1)
	}
	maybe := func() *float64 {
		if random.IntN(4) == 0 {
			return nil
		}
		v := x()
		return &v
	}
	pair := func() press.Pair { a, b := x(), x(); return press.Pair{math.Min(a, b), math.Max(a, b)} }
	list := func() []string {
		var out []string
		for _, w := range []string{press.Long, press.Good, press.Short, press.Missing} {
			if random.IntN(3) == 0 {
				out = append(out, w)
			}
		}
		return out
	}
	r := &press.Result{Outcome: press.Outcome{Findings: []press.Finding{}}}
	r.Travel = press.Travel{ApproachEnd: x(), Contact: x(), SlowContact: x(), PressIn: x(), SeatReading: x(), PushStroke: maybe(), PushEnd: maybe(), Overtravel: maybe()}
	r.Window = press.Readings{GoodRange: pair(), GuardBand: math.Abs(x()), Uncertainty: math.Abs(x())}
	if random.IntN(2) == 0 {
		a := pair()
		r.Window.Acceptance = &a
	}
	if random.IntN(4) > 0 {
		r.Window.Zone = &[2]*float64{maybe(), maybe()}
	}
	if random.IntN(2) == 0 {
		a := pair()
		r.Window.Overlap = &a
		r.Samples = &press.Samples{Probability: 0.999, Long: x(), Short: x()}
	}
	if random.IntN(5) > 0 {
		v := &press.Verdict{End: press.PushEnd{Position: x(), Zone: random.IntN(2) == 0}, Table: press.Table{OnOn: list(), OnOff: list(), OffOn: list(), OffOff: list()}}
		from := r.Travel.ApproachEnd
		for range random.IntN(5) {
			to := from + size*random.Float64()
			v.Segments = append(v.Segments, press.Segment{From: from, To: to, Arrival: true, Zone: random.IntN(2) == 0, Part: press.Good})
			from = to
		}
		r.Verdict = v
	}
	for _, name := range []string{press.RowNominal, press.RowMissing} {
		if random.IntN(2) == 0 {
			r.Faults = append(r.Faults, press.FaultRow{Name: name, Reading: maybe()})
		}
	}
	var traces press.Traces
	for range random.IntN(40) {
		traces.Readings = append(traces.Readings, press.Pair{x(), random.Float64() / size})
	}
	if random.IntN(9) == 0 {
		traces.Readings = append(traces.Readings, press.Pair{math.NaN(), math.Inf(1)})
	}
	return r, traces
}

// TestSVG: real text, one title, the same bytes every time, every shape with a
// class.
func TestSVG(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	var one, two bytes.Buffer
	require.NoError(t, NewStrip(p, r, Options{}).SVG(&one))
	require.NoError(t, NewStrip(p, r, Options{}).SVG(&two))
	assert.Equal(t, one.String(), two.String())
	drawtest.WellFormedSVG(t, one.Bytes())
	s := one.String()
	assert.Contains(t, s, `role="img" aria-labelledby="strip-title strip-desc"`)
	assert.Contains(t, s, ">too short or no insert</text>")
	assert.Less(t, one.Len(), 40_000)
	for _, shape := range regexp.MustCompile(`<(path|text) [^>]*>`).FindAllString(s, -1) {
		assert.Regexp(t, `class="(fill|line)-(paper|ground|ink|quiet|faint|good|long|short|accent|alert)"`, shape)
	}
	var mini bytes.Buffer
	require.NoError(t, NewStrip(p, r, Options{Compact: true, ID: "b"}).SVG(&mini))
	assert.Contains(t, mini.String(), `class="drawing strip compact"`)
	assert.Contains(t, mini.String(), `id="b-title"`)
}

// TestNames: whatever a plan is called, the SVG stays one.
func TestNames(t *testing.T) {
	for _, name := range []string{"long-names", "other-scripts"} {
		p := drawtest.Example(t, drawtest.Kinds[name])
		svg := svgOf(modelOf(p).picture(Options{}))
		drawtest.WellFormedSVG(t, svg)
		assert.NotContains(t, string(svg), "<b>")
	}
}

// TestDescription: the text equivalent holds the figures that the drawing shows.
func TestDescription(t *testing.T) {
	m := modelOf(drawtest.Example(t, nil))
	desc := strings.ReplaceAll(m.desc, "\u202f", " ")
	for _, want := range []string{
		"readings 115.05 to 115.23 mm", "guard bands of 0.028 mm", "Inside the guard bands: 115.07 to 115.20 mm", "Zone 115.08 to 115.35 mm",
		"Push end 115.19 mm", "approach from home 0.00 to 107.46 mm", "slow contact at 108.60 mm", "the nominal part read at 115.14 mm",
		"arrival on, zone on: good.", "arrival on, zone off: too tall.", "arrival off, zone on: too short or no insert.", "arrival off, zone off: fault.",
	} {
		assert.Contains(t, desc, want)
	}
}

func BenchmarkStrip(b *testing.B) {
	p := drawtest.Example(b, nil)
	r := press.Evaluate(p)
	b.ReportAllocs()
	for b.Loop() {
		if err := NewStrip(p, r, Options{}).SVG(io.Discard); err != nil {
			b.Fatal(err)
		}
	}
}
