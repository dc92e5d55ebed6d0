package draw

import (
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// NewPressIn makes the press-in force: what the fit demands on the way in, what
// the ram gives, and where a tight fit stalls.
func NewPressIn(p *press.Plan, r *press.Result, o Options) *canvas.Picture {
	m := newPressInModel(p, r, *r.Traces())
	d := layPressIn(m, o)
	return canvas.NewPicture(canvas.Layout{Kind: "pressin", Compact: o.Compact, ID: o.ID, Title: m.title, Desc: m.desc, Width: d.width, Height: d.height, Paint: d.paint})
}

// pressInModel is what the press-in force shows, as data.
type pressInModel struct {
	title, desc string
	demand      []press.Band // mm, N; empty for touch
	travel      float64      // mm
	force       press.Force
	tight       *float64 // mm, where the tightest fit stalls a weak ram
	stall       *float64 // mm, where the typical fit stalls a typical ram
	top, bottom float64  // N
	pos         words.Positions
}

func newPressInModel(p *press.Plan, r *press.Result, t press.Traces) *pressInModel {
	m := &pressInModel{
		title: say.PressInTitle(p, r, t.Tight, t.Stall), demand: t.Demand, travel: math.Max(r.Travel.PressIn, 0),
		force: r.Force, tight: t.Tight, stall: t.Stall, pos: say.Positions(p),
	}
	m.top, m.bottom = math.Max(0, r.Force.High), math.Min(0, r.Force.Low)
	reach := 3 * math.Max(m.top, -m.bottom)
	for _, b := range m.demand {
		m.top, m.bottom = math.Max(m.top, math.Min(b.High, reach)), math.Min(m.bottom, b.Low)
	}
	m.top *= 1.08
	if !(m.top > m.bottom) {
		m.top = m.bottom + 1
	}
	m.desc = m.describe(r)
	return m
}

func (m *pressInModel) describe(r *press.Result) string {
	s := []string{m.title + "."}
	if r.Joint != nil {
		d := r.Joint.Demand
		s = append(s, say.DemandAtSeat(m.pos, m.travel, d[0], d[2], d[1]))
	}
	f := m.force
	s = append(s, say.RamGives(f.Low, f.High, f.Typical))
	return strings.Join(s, " ")
}

type pressInDrawing struct {
	*chart
	m     *pressInModel
	marks typeset.Callouts
}

func layPressIn(m *pressInModel, o Options) *pressInDrawing {
	d := &pressInDrawing{m: m, chart: newChart(o, m.title, 132)}
	if o.Compact {
		d.plot.X1 = d.width - canvas.Margin - 100
	}
	reach := m.travel
	if reach <= 0 {
		reach = 1
	}
	d.x = canvas.NewScale(0, 1.04*reach, d.plot.X0, d.plot.X1)
	d.marks = typeset.LayCallouts(d.depthLabels(), canvas.Margin, d.width-canvas.Margin)
	d.raise(d.marks.Height())
	d.scales(0, 1.04*reach, m.bottom, m.top)
	d.xName, d.yName = say.DepthAxis(), say.ForceAxis()
	if len(m.demand) == 0 {
		d.noX = true
	}
	d.ends = append(d.ends,
		endLabel{d.y.At(m.force.High), say.StrongRam(), canvas.Quiet, false},
		endLabel{d.y.At(m.force.Typical), "ram " + say.Force(m.force.Typical), canvas.Black, true},
		endLabel{d.y.At(m.force.Low), say.WeakRam(), canvas.Quiet, false})
	if n := len(m.demand); n > 0 {
		b := m.demand[n-1]
		for _, e := range []struct {
			v    float64
			text string
			bold bool
		}{{b.High, say.TightestFit(beyond(b.High, m.top)), false}, {b.Typical, "fit " + say.Force(b.Typical) + beyond(b.Typical, m.top), true}, {b.Low, say.LoosestFit(), false}} {
			k := canvas.Quiet
			if e.bold {
				k = canvas.Accent
			}
			d.ends = append(d.ends, endLabel{d.y.At(e.v), e.text, k, e.bold})
		}
	}
	d.height = math.Ceil(d.bottom() + canvas.Margin/2)
	return d
}

func (d *pressInDrawing) depthLabels() []typeset.Callout {
	m := d.m
	var out []typeset.Callout
	if len(m.demand) == 0 {
		return out
	}
	out = append(out, typeset.Callout{X: d.x.At(m.travel), Lines: []string{"seat", m.pos.Bare(m.travel)}, Style: canvas.Bold(canvas.Black, canvas.Small)})
	if m.tight != nil {
		out = append(out, typeset.Callout{X: d.x.At(*m.tight), Lines: []string{say.TightestStallsWeak(), m.pos.Bare(*m.tight)}, Style: canvas.Bold(canvas.Alert, canvas.Small)})
	}
	if m.stall != nil {
		out = append(out, typeset.Callout{X: d.x.At(*m.stall), Lines: []string{say.TypicalFitStalls(), m.pos.Bare(*m.stall)}, Style: canvas.Bold(canvas.Alert, canvas.Small)})
	}
	return out
}

func (d *pressInDrawing) paint(p *canvas.Pen) {
	m, f := d.m, d.m.force
	d.paper(p)
	p.Fill(canvas.Black.Tint(0.1), canvas.Rect(d.plot.X0, d.y.At(f.High), d.plot.X1, d.y.At(f.Low)))
	for _, v := range []float64{f.High, f.Low} {
		p.HLine(canvas.Quiet, d.plot.X0, d.plot.X1, d.y.At(v))
	}
	p.Line(canvas.Black, canvas.Outline, canvas.Dashed, [2]float64{d.plot.X0, d.y.At(f.Typical)}, [2]float64{d.plot.X1, d.y.At(f.Typical)})
	low, mid, high := bands(m.demand)
	d.band(p, canvas.Accent.Tint(canvas.FillTint), low, high)
	d.curve(p, canvas.Accent, canvas.ThinLine, low)
	d.curve(p, canvas.Accent, canvas.ThinLine, high)
	d.curve(p, canvas.Accent, canvas.Outline, mid)
	if n := len(m.demand); n > 0 {
		x := d.x.At(m.travel)
		b := m.demand[n-1]
		for _, v := range []float64{b.Low, b.Typical, b.High} {
			if v > m.top {
				continue
			}
			p.Line(canvas.Accent, canvas.ThinLine, canvas.Dashed, [2]float64{x, d.y.At(v)}, [2]float64{d.plot.X1, d.y.At(v)})
		}
		d.vertical(p, canvas.Black, canvas.Solid, x, d.plot.Y0)
	}
	for _, s := range []struct {
		depth *float64
		force float64
	}{{m.tight, f.Low}, {m.stall, f.Typical}} {
		if s.depth != nil {
			x, y := d.x.At(*s.depth), d.y.At(s.force)
			p.Line(canvas.Alert, canvas.ThinLine, canvas.Dashed, [2]float64{canvas.Crisp(x), d.plot.Y0}, [2]float64{canvas.Crisp(x), y})
			p.Circle(canvas.Paper, canvas.Alert, canvas.Outline, canvas.Crisp(x), y, 4)
		}
	}
	d.chart.frame(p)
	d.labelEnds(p)
	d.figuresX(p, d.plot.Y1)
	d.nameX(p, d.plot.Y1)
	d.marks.Above(p, d.plot.Y0)
	if len(m.demand) == 0 {
		d.nothing(p)
	}
}

// nothing says why there is no curve.
func (d *pressInDrawing) nothing(p *canvas.Pen) {
	st := canvas.Plain(canvas.Quiet, canvas.Body)
	lines := canvas.Plain(canvas.Black, canvas.Body).Wrap(say.OnlyTouch(), d.plot.X1-d.plot.X0-20)
	y := (math.Max(d.y.At(d.m.force.Low), d.plot.Y0) + d.plot.Y1) / 2
	y = math.Min(y, d.plot.Y1-6-canvas.Leading*canvas.Body*float64(len(lines)-1))
	for i, l := range lines {
		p.OnPaper(st, (d.plot.X0+d.plot.X1)/2, y+float64(i)*canvas.Leading*canvas.Body, canvas.Middle, l)
	}
}
