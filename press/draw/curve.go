package draw

import (
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// Curve is the drawing of a ram's curve, for the page on which its points are
// entered: it tells where each point lies, so that they can be moved there.
type Curve struct {
	*Picture
	d *curveDrawing
}

// Sizes of the curve, px: it stands in the column of the entries, which is narrow.
const (
	curveWidth        = 280
	curveLeast        = 200
	curvePlot         = 160
	curveAxisNames    = 26
	curveSettingLabel = 20
	curveStepY        = 26 // from figure to figure of the forces, about
)

// NewCurve makes the drawing of a curve; setting is the plan's, %, or nil while
// it is not known.
func NewCurve(t *press.CurveTrace, setting *float64, o Options) *Curve {
	d := layCurve(t, setting, o)
	title := words.CurveTitle(t, d.setting, d.force)
	return &Curve{newPicture(layout{kind: "curve", id: o.ID, title: title, desc: d.describe(title), width: d.width, height: d.height, paint: d.paint}), d}
}

// Axis says which figures stand where along one axis of a drawing.
type Axis struct {
	From, To float64 // figures at the ends
	At, End  float64 // px of the ends
	Step     float64 // the least change that can be seen, a round figure
}

// Axes are those of the settings, %, and of the forces, N.
func (c *Curve) Axes() (setting, force Axis) {
	axis := func(s scale) Axis { return Axis{s.from, s.to, s.x0, s.x1, roundStep((s.to - s.from) / 300)} }
	return axis(c.d.x), axis(c.d.y)
}

// Points are the places of the curve's points, px.
func (c *Curve) Points() [][2]float64 { return c.d.points() }

// roundStep is the least of 1, 2 and 5 times a power of ten that is not below x.
func roundStep(x float64) float64 {
	power := math.Pow10(int(math.Floor(math.Log10(x))))
	for _, m := range []float64{1, 2, 5} {
		if m*power >= x*(1-1e-9) {
			return m * power
		}
	}
	return 10 * power
}

type curveDrawing struct {
	*chart
	t       *press.CurveTrace
	setting *float64 // %
	force   float64  // N, of the curve at the setting
}

func layCurve(t *press.CurveTrace, setting *float64, o Options) *curveDrawing {
	d := &curveDrawing{chart: &chart{width: o.width(curveWidth, curveLeast), stepY: curveStepY}, t: t}
	if setting != nil {
		d.setting, d.force = setting, forceAt(t.Line, *setting)
	}
	n := len(t.Points) - 1
	x0, x1 := roundEnds(t.Points[0][0], t.Points[n][0])
	_, y1 := roundEnds(0, t.Points[n][1])
	st := style{quiet, small, false}
	left := margin/2 + widestForce(st, y1) + 8
	top := margin/2 + float64(curveAxisNames)
	if d.setting != nil {
		top += curveSettingLabel
	}
	d.yNameAt = margin/2 + small
	d.plot = rect{left, top, d.width - margin, top + curvePlot}
	d.scales(x0, x1, 0, y1)
	d.xName, d.yName = "setting, %", "force of the curve, N"
	d.height = math.Ceil(d.bottom() + margin/2)
	return d
}

// widestForce is the width of the widest figure along the forces.
func widestForce(st style, most float64) float64 {
	ticks, decimals := newScale(0, most, curvePlot, 0).ticks(curvePlot / curveStepY)
	widest := 0.0
	for _, v := range ticks {
		widest = math.Max(widest, st.width(figure(v, decimals)))
	}
	return widest
}

// roundEnds are the ends of an axis: round figures that leave room to move a
// point, and that stay where they are while it moves a little.
func roundEnds(from, to float64) (lo, hi float64) {
	step := roundStep((to - from) / 10)
	lo, hi = math.Floor((from-step/4)/step)*step, math.Ceil((to+step/4)/step)*step
	if from >= 0 {
		lo = math.Max(lo, 0)
	}
	return lo, hi
}

// forceAt is the force of a line at a setting.
func forceAt(line []press.Pair, setting float64) float64 {
	for i, b := range line {
		if setting > b[0] && i < len(line)-1 {
			continue
		}
		a := line[max(i-1, 0)]
		if b[0] == a[0] {
			return b[1]
		}
		return a[1] + (b[1]-a[1])*(setting-a[0])/(b[0]-a[0])
	}
	return 0
}

func (d *curveDrawing) describe(title string) string {
	s := []string{title + "."}
	for _, p := range d.t.Points {
		s = append(s, words.CurvePoint(p))
	}
	const most = 40
	if len(s) > most {
		s = append(s[:most], "and "+words.Fixed(float64(len(s)-most), 0)+" more points")
	}
	return s[0] + " " + strings.Join(s[1:], "; ") + "."
}

func (d *curveDrawing) paint(p *pen) {
	st := style{quiet, small, false}
	p.text(st, margin/2, d.yNameAt, start, st.clip(d.yName, d.width-margin))
	d.gridY(p, st)
	d.gridX(p)
	d.chosen(p)
	line := make([][2]float64, len(d.t.Line))
	for i, q := range d.t.Line {
		line[i] = [2]float64{q[0], q[1]}
	}
	d.curve(p, black, outline, line)
	if len(d.t.Points) <= 60 { // more would cover the line
		for _, q := range d.points() {
			p.circle(paper, black, outline, q[0], q[1], 3)
		}
	}
	d.frame(p)
	d.figuresX(p, d.plot.y1)
	d.nameX(p, d.plot.y1)
}

func (d *curveDrawing) points() [][2]float64 { return d.place(d.t.Points) }

// chosen shows where the plan's setting falls.
func (d *curveDrawing) chosen(p *pen) {
	if d.setting == nil {
		return
	}
	x, y := d.x.x(*d.setting), d.y.x(d.force)
	p.line(accent, thinLine, dashed, [2]float64{d.plot.x0, crisp(y)}, [2]float64{crisp(x), crisp(y)})
	p.line(accent, thinLine, solid, [2]float64{crisp(x), d.plot.y0 - 2}, [2]float64{crisp(x), d.plot.y1})
	st := style{accent, small, true}
	text := words.CurveSetting(*d.setting, d.force)
	half := st.width(text) / 2
	p.text(st, math.Max(d.plot.x0+half, math.Min(x, d.plot.x1-half)), d.plot.y0-6, middle, text)
}
