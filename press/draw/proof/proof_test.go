package proof

import (
	"bytes"
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/draw/drawtest/grey"
	"ramplan/press/draw/drawtest/pushed"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// everyDrawing calls for each drawing of each study of a plan.
func everyDrawing(p *press.Plan, call func(what, name string, s Subject)) {
	for what, list := range subjects(p) {
		for name, s := range list {
			call(what, name, s)
		}
	}
}

// TestDrawingsAreClear: in every form no label lies over another or outside, nothing but
// marks of the paper lies outside, and the SVG is sound.
func TestDrawingsAreClear(t *testing.T) {
	for kind, changes := range drawtest.Kinds {
		if !drawtest.AllPlans() && kind != "example" && kind != "never-good" && kind != "touch" && kind != "long-stroke" {
			continue
		}
		everyDrawing(drawtest.Example(t, changes), func(what, name string, s Subject) {
			if strings.HasPrefix(name, "many") && kind != "example" {
				return
			}
			for _, o := range forms {
				d := named(t, what).New(s, o)
				said := fmt.Sprintf("%s, %s of %s, %+v", what, name, kind, o)
				labelsApart(t, d, said)
				width, height := d.Size()
				list, _ := grey.Of(d)
				for _, q := range list {
					b := q.Box()
					require.True(t, b.X0 >= -0.5 && b.Y0 >= -0.5 && b.X1 <= width+0.5 && b.Y1 <= height+0.5, "%s: %+v lies outside %v × %v", said, b, width, height)
				}
			}
			drawtest.WellFormedSVG(t, svgOf(named(t, what).New(s, draw.Options{})))
		})
	}
}

// TestNothingIsLostInGrey takes the colour away.
func TestNothingIsLostInGrey(t *testing.T) {
	everyDrawing(drawtest.Example(t, nil), func(what, name string, s Subject) {
		for _, o := range forms {
			list, texts := grey.Of(named(t, what).New(s, o))
			if lost := grey.Lost(list, texts); len(lost) > 0 {
				t.Errorf("%s, %s, %+v: %d pairs, such as %s", what, name, o, len(lost), strings.Join(lost[:min(3, len(lost))], "; "))
			}
		}
	})
}

// TestManyRowsAreLight: ten thousand rows make no heavy drawing, and it says that they are
// not drawn one by one.
func TestManyRowsAreLight(t *testing.T) {
	for what, list := range subjects(drawtest.Example(t, nil)) {
		s, ok := list["many"]
		if !ok {
			continue
		}
		svg := svgOf(named(t, what).New(s, draw.Options{}))
		assert.Less(t, len(svg), 150_000, what)
		assert.GreaterOrEqual(t, len(s.Study.Rows), 9000, what)
	}
	r := press.Evaluate(drawtest.Example(t, nil))
	many := pushed.Trial(r, 3, 10000, 0)
	texts := strings.Join(textsOf(named(t, "trial").New(Subject{r, many.Study, many.Judged}, draw.Options{})), " ")
	assert.Contains(t, texts, "10\u202f000, first on top, as 75 stretches")
}

func textsOf(d *canvas.Picture) []string {
	var out []string
	for _, l := range d.Texts() {
		out = append(out, l.Text)
	}
	return out
}

// TestWithoutResult: a study of which nothing was found, or nothing that fits, is a sentence.
func TestWithoutResult(t *testing.T) {
	r := press.Evaluate(drawtest.Example(t, nil))
	for _, d := range drawings {
		for _, s := range []Subject{
			{}, {Plan: r}, {Plan: r, Study: &proving.Study{}}, {r, &proving.Study{}, &proving.Judged{}},
			{r, &proving.Study{}, &proving.Judged{Result: &proving.TrialResult{}}},
			{r, &proving.Study{}, &proving.Judged{Result: &proving.LoadCellResult{}}},
			{r, &proving.Study{Rows: []proving.Row{{}}}, &proving.Judged{Result: &proving.TrialResult{Shares: []proving.SeenShare{{}}}}},
			{r, &proving.Study{}, &proving.Judged{Result: &proving.StiffnessResult{Line: &proving.Line{}}}},
			{r, &proving.Study{}, &proving.Judged{Result: &proving.MasterResult{}}},
			{r, &proving.Study{}, &proving.Judged{Result: (*proving.MasterResult)(nil)}},
		} {
			picture := d.New(s, draw.Options{Compact: true})
			labelsApart(t, picture, d.Name)
			assert.Contains(t, picture.Description(), "nothing that could be drawn", d.Name)
		}
	}
}

// TestNoFigureIsKnown: results of which hardly anything could be computed are drawn without
// a figure that is none.
func TestNoFigureIsKnown(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	row := proving.Row{Reading: ptr(100.0), Force: ptr(500.0), Setting: ptr(20.0), Start: ptr(1.0), Sample: "a"}
	study := &proving.Study{Rows: []proving.Row{row}}
	for what, result := range map[string]any{
		"forces": &proving.LoadCellResult{N: 1, Settings: []proving.SettingForces{{Setting: 200, N: 1, Mean: 500}}},
		"block":  &proving.StiffnessResult{N: 1, Used: 1, Levels: 1, ForceFrom: proving.FromCell, Line: &proving.Line{Intercept: 100}},
		"master": &proving.MasterResult{N: 1, Mean: 100, Predicted: 100},
		"starts": &proving.RestartResult{N: 1, Starts: []proving.Start{{Start: 1, N: 1, Mean: 100}}},
		"trial":  &proving.TrialResult{N: 1},
		"seen":   &proving.TrialResult{N: 1, Shares: []proving.SeenShare{{Pair: "on_on", Of: 1}}},
		"lamps":  &proving.SamplesResult{N: 1, Rows: []proving.SampleRow{{Row: 1, Sample: "a", Lamps: proving.Open}, {Row: 9, Lamps: proving.Open}}},
	} {
		for _, o := range forms {
			d := named(t, what).New(Subject{r, study, &proving.Judged{Result: result}}, o)
			labelsApart(t, d, what)
			drawtest.WellFormedSVG(t, svgOf(d))
			assert.NotContains(t, d.Description(), "NaN", what)
		}
	}
}

func ptr[T any](x T) *T { return &x }

// TestMarksStandRight: marks lie where the scale of the drawing puts their figures; the
// scale is read off two ticks of the axis. Figures of the studies made up.
func TestMarksStandRight(t *testing.T) {
	r := press.Evaluate(drawtest.Example(t, nil))
	s := pushed.Master(r, 1, 25, 0.004, 0.005)
	d := named(t, "master").New(Subject{r, s.Study, s.Judged}, draw.Options{})
	of := scaleOf(t, d)
	dots := discs(d, small)
	require.Len(t, dots, 25+1, "each reading, and the mark in the key")
	for i, row := range s.Study.Rows {
		assert.InDelta(t, *row.Reading, of(dots[i][1]), 1e-4, "reading %d: a tenth of a px", i+1)
	}
}

// scaleOf reads the scale of the y axis off its figures.
func scaleOf(t *testing.T, d *canvas.Picture) func(y float64) float64 {
	t.Helper()
	type tick struct{ y, v float64 }
	var ticks []tick
	for _, l := range d.Texts() {
		var v float64
		if n, err := fmt.Sscanf(l.Text, "%f", &v); err == nil && n == 1 && l.X1 < 66 && fmt.Sprintf("%.2f", v) == l.Text {
			ticks = append(ticks, tick{l.Y0 + 0.76*l.Style.Size - 4, v})
		}
	}
	require.GreaterOrEqual(t, len(ticks), 3)
	a, b := ticks[0], ticks[len(ticks)-1]
	for _, m := range ticks[1 : len(ticks)-1] {
		require.InDelta(t, (m.y-a.y)/(b.y-a.y), (m.v-a.v)/(b.v-a.v), 1e-9, "a scale is straight")
	}
	return func(y float64) float64 { return a.v + (y-a.y)*(b.v-a.v)/(b.y-a.y) }
}

// discs are the middles of the round marks of a size, in the order in which they are drawn.
func discs(d *canvas.Picture, radius float64) [][2]float64 {
	w := &rounds{radius: radius}
	_, w.high = d.Size()
	d.On(w)
	return w.at
}

// TestShareIsWhereItIs: a share stands between the powers of ten that hold it, and one under
// the scale at its edge. By hand.
func TestShareIsWhereItIs(t *testing.T) {
	d := &seen{frame: &frame{}, least: 1e-5, plot: canvas.Rect(100, 0, 600, 100)}
	d.x = canvas.NewScale(-5, 0, 100, 600)
	for share, want := range map[float64]float64{1: 600, 0.1: 500, 0.01: 400, math.Sqrt(0.1) / 10: 450, 1e-5: 100} {
		x, edge := d.place(share)
		assert.InDelta(t, want, x, 1e-9, "%v", share)
		assert.False(t, edge)
	}
	x, edge := d.place(0)
	assert.Equal(t, 100.0, x)
	assert.True(t, edge)
}

// TestStretches: every reading is in one stretch, which reaches from the lowest to the
// highest of its own. By hand.
func TestStretches(t *testing.T) {
	assert.Equal(t, []stretch{{0, 2, 1, 3, 2}, {3, 5, 4, 9, 6}, {6, 6, -7, -7, -7}}, stretches([]float64{2, 1, 3, 5, 9, 4, -7}, 3))
	assert.Nil(t, stretches(nil, 5))
	assert.Len(t, stretches(make([]float64, 10000), 200), 200)
}

// TestRound125. By hand.
func TestRound125(t *testing.T) {
	for x, want := range map[float64]float64{1: 1, 1.9: 1, 2: 2, 4.9: 2, 5: 5, 9.9: 5, 0.012: 0.01, 37: 20} {
		assert.InDelta(t, want, round125(x), 1e-12*want, "%v", x)
	}
}

// TestBarsHoldEveryReading: the bars of a trial count each reading once, and what lies
// beyond the lens is said.
func TestBarsHoldEveryReading(t *testing.T) {
	r := press.Evaluate(drawtest.Example(t, nil))
	for _, off := range []float64{0, 0.03, -0.2} {
		s := pushed.Trial(r, 9, 700, off)
		d := &trial{r: s.Judged.Result.(*proving.TrialResult), pos: say.Positions(r.Plan).Fine()}
		for _, row := range s.Study.Rows {
			d.parts = append(d.parts, trialPart{at: *row.Reading, arrived: *row.Arrival})
			if *row.Arrival {
				d.used = append(d.used, *row.Reading)
			}
		}
		d.lay(Subject{r, s.Study, s.Judged}, draw.Options{})
		n := d.left + d.right
		for _, b := range d.bars {
			n += b.n
		}
		assert.Equal(t, len(d.used), n, "off by %v", off)
	}
}

// TestSameFigures: what is lettered stands in the text equivalent as well.
func TestSameFigures(t *testing.T) {
	r := press.Evaluate(drawtest.Example(t, nil))
	s := pushed.Master(r, 1, 25, 0.004, 0.005)
	q := s.Judged.Result.(*proving.MasterResult)
	pos := words.Printer{}.Positions(r.Plan).Fine()
	d := named(t, "master").New(Subject{r, s.Study, s.Judged}, draw.Options{})
	for _, want := range []string{pos.At(q.Mean), pos.At(q.Predicted), pos.At(q.Bias.Value), pos.At(q.Bias.Allowed), "row 7"} {
		assert.Contains(t, d.Description(), want)
	}
	l := pushed.Samples(r, 3, 2)
	d = named(t, "lamps").New(Subject{r, l.Study, l.Judged}, draw.Options{})
	assert.Contains(t, d.Description(), "2. short B, short, rests at")
	assert.Contains(t, d.Description(), "predicted off · off, came off · on")
	assert.Contains(t, d.Description(), "lamps differ")
	assert.Equal(t, 1, strings.Count(d.Description(), "lamps differ"))
}

// TestByKind: every kind of study has its drawings, an event none; every drawing has a
// title and can be written in every format.
func TestByKind(t *testing.T) {
	for _, kind := range proving.Kinds {
		if kind == proving.Event {
			assert.Empty(t, Drawings(kind))
		} else {
			assert.NotEmpty(t, Drawings(kind), kind)
		}
	}
	list := subjects(drawtest.Example(t, nil))
	for _, name := range Names() {
		d := named(t, name)
		assert.NotEqual(t, name, d.Title())
		for _, format := range canvas.Formats() {
			var b bytes.Buffer
			require.NoError(t, d.Write(&b, format, list[name]["example"], draw.Options{}))
			assert.Greater(t, b.Len(), 1000)
		}
		assert.Error(t, d.Write(&bytes.Buffer{}, "bmp", Subject{}, draw.Options{}))
	}
	_, err := Named("nothing")
	assert.ErrorContains(t, err, "forces")
}

// TestGoldenProof holds regression values: two drawings as they were looked at.
func TestGoldenProof(t *testing.T) {
	list := subjects(drawtest.Example(t, nil))
	for _, name := range []string{"forces", "trial"} {
		drawtest.Golden(t, "proof-"+name+".svg", svgOf(named(t, name).New(list[name]["example"], draw.Options{})))
	}
}

// BenchmarkTrial draws a trial of ten thousand rows.
func BenchmarkTrial(b *testing.B) {
	r := press.Evaluate(drawtest.Example(b, nil))
	s := pushed.Trial(r, 3, 10000, 0)
	r.Traces()
	for b.Loop() {
		_ = svgOf(named(b, "trial").New(Subject{r, s.Study, s.Judged}, draw.Options{}))
	}
}
