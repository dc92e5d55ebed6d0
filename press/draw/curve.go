package draw

import (
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/words"
)

// Curve is the drawing of a ram's curve, for the page on which its points are
// entered: it tells where each point lies, so that they can be moved there.
type Curve struct {
	*canvas.Picture
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
	title := say.CurveTitle(t, d.setting, d.force)
	return &Curve{canvas.NewPicture(canvas.Layout{Kind: "curve", ID: o.ID, Title: title, Desc: d.describe(title), Width: d.width, Height: d.height, Paint: d.paint}), d}
}

// Axis says which figures stand where along one axis of a drawing.
type Axis struct {
	From, To float64 // figures at the ends
	At, End  float64 // px of the ends
	Step     float64 // the least change that can be seen, a round figure
}

// Axes are those of the settings, %, and of the forces, N.
func (c *Curve) Axes() (setting, force Axis) {
	axis := func(s canvas.Scale) Axis { return Axis{s.From, s.To, s.X0, s.X1, roundStep((s.To - s.From) / 300)} }
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
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	left := canvas.Margin/2 + widestForce(st, y1) + 8
	top := canvas.Margin/2 + float64(curveAxisNames)
	if d.setting != nil {
		top += curveSettingLabel
	}
	d.yNameAt = canvas.Margin/2 + canvas.Small
	d.plot = canvas.Rect(left, top, d.width-canvas.Margin, top+curvePlot)
	d.scales(x0, x1, 0, y1)
	d.xName, d.yName = say.SettingAxis(), say.CurveForceAxis()
	d.height = math.Ceil(d.bottom() + canvas.Margin/2)
	return d
}

// widestForce is the width of the widest figure along the forces.
func widestForce(st canvas.Style, most float64) float64 {
	ticks, decimals := canvas.NewScale(0, most, curvePlot, 0).Ticks(curvePlot / curveStepY)
	widest := 0.0
	for _, v := range ticks {
		widest = math.Max(widest, st.Width(figure(v, decimals)))
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
		s = append(s[:most], say.AndMorePoints(len(s)-most))
	}
	return s[0] + " " + strings.Join(s[1:], "; ") + "."
}

func (d *curveDrawing) paint(p *canvas.Pen) {
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	p.Text(st, canvas.Margin/2, d.yNameAt, canvas.Start, st.Clip(d.yName, d.width-canvas.Margin))
	d.gridY(p, st)
	d.gridX(p)
	d.chosen(p)
	line := make([][2]float64, len(d.t.Line))
	for i, q := range d.t.Line {
		line[i] = [2]float64{q[0], q[1]}
	}
	d.curve(p, canvas.Black, canvas.Outline, line)
	if len(d.t.Points) <= 60 { // more would cover the line
		for _, q := range d.points() {
			p.Circle(canvas.Paper, canvas.Black, canvas.Outline, q[0], q[1], 3)
		}
	}
	d.frame(p)
	d.figuresX(p, d.plot.Y1)
	d.nameX(p, d.plot.Y1)
}

func (d *curveDrawing) points() [][2]float64 { return d.place(d.t.Points) }

// chosen shows where the plan's setting falls.
func (d *curveDrawing) chosen(p *canvas.Pen) {
	if d.setting == nil {
		return
	}
	x, y := d.x.At(*d.setting), d.y.At(d.force)
	p.Line(canvas.Accent, canvas.ThinLine, canvas.Dashed, [2]float64{d.plot.X0, canvas.Crisp(y)}, [2]float64{canvas.Crisp(x), canvas.Crisp(y)})
	p.Line(canvas.Accent, canvas.ThinLine, canvas.Solid, [2]float64{canvas.Crisp(x), d.plot.Y0 - 2}, [2]float64{canvas.Crisp(x), d.plot.Y1})
	st := canvas.Bold(canvas.Accent, canvas.Small)
	text := say.CurveSetting(*d.setting, d.force)
	half := st.Width(text) / 2
	p.Text(st, math.Max(d.plot.X0+half, math.Min(x, d.plot.X1-half)), d.plot.Y0-6, canvas.Middle, text)
}
