package draw

import (
	"io"
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// PressIn draws the press-in force of a plan as SVG.
func PressIn(w io.Writer, p *press.Plan, r *press.Result) error {
	return NewPressIn(p, r, Options{}).SVG(w)
}

// NewPressIn makes the press-in force: what the fit demands on the way in, what
// the ram gives, and where a tight fit stalls.
func NewPressIn(p *press.Plan, r *press.Result, o Options) *Picture {
	m := newPressInModel(p, r, *r.Traces())
	d := layPressIn(m, o)
	return newPicture(layout{kind: "pressin", compact: o.Compact, id: o.ID, title: m.title, desc: m.desc, width: d.width, height: d.height, paint: d.paint})
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
		title: words.PressInTitle(p, r, t.Tight, t.Stall), demand: t.Demand, travel: math.Max(r.Travel.PressIn, 0),
		force: r.Force, tight: t.Tight, stall: t.Stall, pos: words.PositionsOf(p),
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
		s = append(s, "At the seat, "+m.pos.At(m.travel)+" from first contact, the fit demands "+words.Force(d[0])+" to "+words.Force(d[2])+", typically "+words.Force(d[1])+".")
	}
	f := m.force
	s = append(s, "The ram gives "+words.Force(f.Low)+" to "+words.Force(f.High)+", typically "+words.Force(f.Typical)+".")
	return strings.Join(s, " ")
}

type pressInDrawing struct {
	*chart
	m     *pressInModel
	marks callouts
}

func layPressIn(m *pressInModel, o Options) *pressInDrawing {
	d := &pressInDrawing{m: m, chart: newChart(o, m.title, 132)}
	if o.Compact {
		d.plot.x1 = d.width - margin - 100
	}
	reach := m.travel
	if reach <= 0 {
		reach = 1
	}
	d.x = newScale(0, 1.04*reach, d.plot.x0, d.plot.x1)
	d.marks = layCallouts(d.depthLabels(), margin, d.width-margin)
	d.raise(d.marks.height())
	d.scales(0, 1.04*reach, m.bottom, m.top)
	d.xName, d.yName = "depth from first contact, mm", "force, N"
	if len(m.demand) == 0 {
		d.noX = true
	}
	d.ends = append(d.ends,
		endLabel{d.y.x(m.force.High), "strong ram", quiet, false},
		endLabel{d.y.x(m.force.Typical), "ram " + words.Force(m.force.Typical), black, true},
		endLabel{d.y.x(m.force.Low), "weak ram", quiet, false})
	if n := len(m.demand); n > 0 {
		b := m.demand[n-1]
		for _, e := range []struct {
			v    float64
			text string
			bold bool
		}{{b.High, "tightest fit" + beyond(b.High, m.top), false}, {b.Typical, "fit " + words.Force(b.Typical) + beyond(b.Typical, m.top), true}, {b.Low, "loosest fit", false}} {
			k := quiet
			if e.bold {
				k = accent
			}
			d.ends = append(d.ends, endLabel{d.y.x(e.v), e.text, k, e.bold})
		}
	}
	d.height = math.Ceil(d.bottom() + margin/2)
	return d
}

func (d *pressInDrawing) depthLabels() []callout {
	m := d.m
	var out []callout
	if len(m.demand) == 0 {
		return out
	}
	out = append(out, callout{x: d.x.x(m.travel), lines: []string{"seat", m.pos.Bare(m.travel)}, style: style{black, small, true}})
	if m.tight != nil {
		out = append(out, callout{x: d.x.x(*m.tight), lines: []string{"tightest fit stalls a weak ram", m.pos.Bare(*m.tight)}, style: style{alert, small, true}})
	}
	if m.stall != nil {
		out = append(out, callout{x: d.x.x(*m.stall), lines: []string{"typical fit stalls", m.pos.Bare(*m.stall)}, style: style{alert, small, true}})
	}
	return out
}

func (d *pressInDrawing) paint(p *pen) {
	m, f := d.m, d.m.force
	d.paper(p)
	p.fill(black.tint(0.1), rect{d.plot.x0, d.y.x(f.High), d.plot.x1, d.y.x(f.Low)})
	for _, v := range []float64{f.High, f.Low} {
		p.hline(quiet, d.plot.x0, d.plot.x1, d.y.x(v))
	}
	p.line(black, outline, dashed, [2]float64{d.plot.x0, d.y.x(f.Typical)}, [2]float64{d.plot.x1, d.y.x(f.Typical)})
	low, mid, high := bands(m.demand)
	d.band(p, accent.tint(fillTint), low, high)
	d.curve(p, accent, thinLine, low)
	d.curve(p, accent, thinLine, high)
	d.curve(p, accent, outline, mid)
	if n := len(m.demand); n > 0 {
		x := d.x.x(m.travel)
		b := m.demand[n-1]
		for _, v := range []float64{b.Low, b.Typical, b.High} {
			if v > m.top {
				continue
			}
			p.line(accent, thinLine, dashed, [2]float64{x, d.y.x(v)}, [2]float64{d.plot.x1, d.y.x(v)})
		}
		d.vertical(p, black, solid, x, d.plot.y0)
	}
	for _, s := range []struct {
		depth *float64
		force float64
	}{{m.tight, f.Low}, {m.stall, f.Typical}} {
		if s.depth != nil {
			x, y := d.x.x(*s.depth), d.y.x(s.force)
			p.line(alert, thinLine, dashed, [2]float64{crisp(x), d.plot.y0}, [2]float64{crisp(x), y})
			p.circle(paper, alert, outline, crisp(x), y, 4)
		}
	}
	d.chart.frame(p)
	d.labelEnds(p)
	d.figuresX(p, d.plot.y1)
	d.nameX(p, d.plot.y1)
	d.marks.above(p, d.plot.y0)
	if len(m.demand) == 0 {
		d.nothing(p)
	}
}

// nothing says why there is no curve.
func (d *pressInDrawing) nothing(p *pen) {
	st := style{quiet, body, false}
	lines := style{black, body, false}.wrap("The parts only touch: no depth, no press-in force.", d.plot.x1-d.plot.x0-20)
	y := (math.Max(d.y.x(d.m.force.Low), d.plot.y0) + d.plot.y1) / 2
	y = math.Min(y, d.plot.y1-6-leading*body*float64(len(lines)-1))
	for i, l := range lines {
		p.onPaper(st, (d.plot.x0+d.plot.x1)/2, y+float64(i)*leading*body, middle, l)
	}
}
