package draw

import (
	"bytes"
	"encoding/xml"
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
)

// forms are the sizes that the strip is tried at.
var forms = []Options{{}, {Width: 720}, {Width: 1280}, {Compact: true}, {Compact: true, Width: 360}, {Compact: true, Width: 719}}

func modelOf(p *press.Plan) *stripModel {
	r := press.Evaluate(p)
	return newStripModel(p, r, *r.Traces())
}

// TestNoLabelsOverlap looks at every drawing of every kind of plan in every form.
func TestNoLabelsOverlap(t *testing.T) {
	for name, p := range plans(t) {
		r := press.Evaluate(p)
		for what, draw := range pictures {
			for _, o := range forms {
				labelsApart(t, draw(p, r, o), fmt.Sprintf("%s, %s, %+v", what, name, o))
			}
		}
	}
}

// TestNoLabelsOverlapRandom looks at the drawings of 400 random plans.
func TestNoLabelsOverlapRandom(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for drawn := 0; drawn < randomOnes(100, 400); {
		p, ok := randomPlan(t, random)
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
	p := example(t, nil)
	for i := range randomOnes(150, 600) {
		r, traces := randomResult(random)
		m := newStripModel(p, r, traces)
		o := forms[i%len(forms)]
		apartFromOneAnother(t, m, o, fmt.Sprint("result ", i))
		wellFormedSVG(t, m.picture(o).svg())
	}
}

// apartFromOneAnother draws and compares the boxes of all texts.
func apartFromOneAnother(t testing.TB, m *stripModel, o Options, what string) {
	t.Helper()
	labelsApart(t, m.picture(o), what)
}

func labelsApart(t testing.TB, d *Picture, what string) {
	t.Helper()
	width, height := d.Size()
	labels := d.on(newSVG(width, height))
	const touch = 0.5
	for i, a := range labels {
		if a.x0 < -touch || a.y0 < -touch || a.x1 > width+touch || a.y1 > height+touch {
			t.Errorf("%s: %q lies outside: %+v of %v × %v", what, a.text, a, width, height)
		}
		for _, b := range labels[i+1:] {
			if a.x0 < b.x1-touch && b.x0 < a.x1-touch && a.y0 < b.y1-touch && b.y0 < a.y1-touch {
				t.Errorf("%s: %q and %q overlap: %+v %+v", what, a.text, b.text, a, b)
			}
		}
	}
	if t.Failed() {
		t.FailNow()
	}
}

// randomPlan changes the example plan at random; ok is false when the entries
// contradict one another.
func randomPlan(t testing.TB, random *rand.Rand) (*press.Plan, bool) {
	t.Helper()
	d := exampleDraft(t)
	some := func(path string, values ...string) {
		if random.IntN(3) == 0 {
			d.Set(path, values[random.IntN(len(values))])
		}
	}
	number := func(low, high float64, decimals int) string {
		return fmt.Sprintf("%.*f", decimals, low+random.Float64()*(high-low))
	}
	some("ram.stroke", "12", "100", "115.3", "150", "400", "2500")
	some("station.nest", "30", "139.5", "140", "145", "2000", "-20")
	some("station.home", "-40", "0", "50", "110")
	some("station.reference_uncertainty", "0", number(0, 0.3, 3))
	some("station.stiffness", number(500, 60000, 0))
	some("station.position_step", "0.001", "0.1", "1", "0.025", "0.000001")
	some("requirement.height_low", number(22, 24.99, 3))
	some("requirement.height_high", number(25.001, 28, 3))
	some("parts[1].insert", "true", "false")
	some("parts[0].insert", "true", "false")
	some("parts[0].datum", "true", "false")
	some("parts[0].plus", number(0, 0.5, 3))
	some("motion.clearance", "0", number(0, 30, 2))
	some("joint.engagement", number(0.5, 9, 2))
	some("station.presence_check", "light barrier in the nest")
	d.Entries = withoutEntry(d.Entries, "window")
	some("window.setting", number(10, 70, 0))
	some("window.approach_end", number(90, 116, 2))
	some("window.push_stroke", number(0.01, 12, 2), "0.01", "40")
	some("window.zone_start", number(114.8, 115.3, 2), "0", "115.1")
	some("window.zone_end", number(115.1, 115.6, 2), "200")
	some("window.guard_factor", "0", "2", "5")
	some("station.max_force", number(500, 4000, 0), "1000000", "1")
	some("requirement.min_seating_force", number(0, 3000, 0))
	some("ram.force_tolerance", "0", number(0, 99, 1))
	some("ram.moving_mass", "0", number(0, 200, 1))
	some("ram.direction", "up", "level")
	some("ram.setting_step", "0.01", "2.5", "10")
	some("joint.drag", number(0, 2500, 0))
	some("joint.pilot", number(0, 8, 2))
	some("motion.hold_time", "0", number(0, 20, 2))
	some("motion.confirm_time", "0", number(0, 3, 2))
	some("motion.slow_speed", "0.05", "100")
	p, ps := d.Check()
	return p, len(ps) == 0
}

func withoutEntry(entries []press.Entry, path string) []press.Entry {
	out := entries[:0]
	for _, e := range entries {
		if e.Path != path {
			out = append(out, e)
		}
	}
	return out
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

// wellFormedSVG reads the SVG and looks for what a strict page would refuse.
func wellFormedSVG(t testing.TB, svg []byte) {
	t.Helper()
	for _, bad := range []string{"NaN", "Inf", "style=", "<style", "<?xml", "url(", "href"} {
		require.NotContains(t, string(svg), bad)
	}
	titles := 0
	dec := xml.NewDecoder(bytes.NewReader(svg))
	for {
		token, err := dec.Token()
		if err == io.EOF {
			break
		}
		require.NoError(t, err)
		if e, ok := token.(xml.StartElement); ok && e.Name.Local == "title" {
			titles++
		}
	}
	require.Equal(t, 1, titles)
}

// TestSVG: real text, one title, the same bytes every time, every shape with a
// class.
func TestSVG(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	var one, two bytes.Buffer
	require.NoError(t, Strip(&one, p, r))
	require.NoError(t, Strip(&two, p, r))
	assert.Equal(t, one.String(), two.String())
	wellFormedSVG(t, one.Bytes())
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
		p := example(t, kinds[name])
		svg := modelOf(p).picture(Options{}).svg()
		wellFormedSVG(t, svg)
		assert.NotContains(t, string(svg), "<b>")
	}
}

// TestDescription: the text equivalent holds the figures that the drawing shows.
func TestDescription(t *testing.T) {
	m := modelOf(example(t, nil))
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
	p := example(b, nil)
	r := press.Evaluate(p)
	b.ReportAllocs()
	for b.Loop() {
		if err := Strip(io.Discard, p, r); err != nil {
			b.Fatal(err)
		}
	}
}
