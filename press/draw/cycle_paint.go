package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
)

// cycleDrawing is the cycle laid out in px.
type cycleDrawing struct {
	*chart
	m      *cycleModel
	phases typeset.Callouts
	lanes  []canvas.Rectangle
	names  float64 // left edge of the names of the lanes; compact: over the lanes
	above  bool    // names stand over the lanes
	marks  typeset.Callouts
	lines  float64 // of the legend, which stands beside the name of the axis where there is room
}

const laneHeight = 22

func layCycle(m *cycleModel, o Options) *cycleDrawing {
	d := &cycleDrawing{m: m, chart: newChart(o, m.title, 0), above: o.Compact}
	left := d.plot.X0
	if !o.Compact {
		left = canvas.Margin + 156
	}
	d.names = canvas.Margin
	d.plot.X0 = left
	d.x = canvas.NewScale(0, 1.02*m.end, d.plot.X0, d.plot.X1)
	var items []typeset.Callout
	for _, f := range m.phases {
		items = append(items, typeset.Callout{X: d.x.At((f.from + f.to) / 2), Lines: []string{f.name, f.lasts}, Style: canvas.Plain(canvas.Black, canvas.Small)})
	}
	if m.handling.Seconds > 0 {
		items = append(items, typeset.Callout{X: d.plot.X1, Lines: []string{"handling", m.handling.Text() + " →"}, Style: canvas.Plain(canvas.Black, canvas.Small)})
	}
	d.phases = typeset.LayCallouts(items, canvas.Margin, d.plot.X1)
	d.raise(d.phases.Height())
	d.plot.Y1 -= 40
	pad := 0.04 * (m.high - m.low)
	d.scales(0, 1.02*m.end, m.low-pad, m.high+pad)
	d.xName, d.yName = say.TimeAxis(), say.RamPositionAxis()
	y := d.plot.Y1 + 12
	for range m.lanes {
		if d.above {
			y += 15
		}
		d.lanes = append(d.lanes, canvas.Rect(d.plot.X0, y, d.plot.X1, y+laneHeight))
		y += laneHeight + 8
	}
	d.marks = typeset.LayCallouts(d.readMarks(), canvas.Margin, d.width-canvas.Margin)
	d.lines = 1
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	if d.plot.X0+legendLine+st.Width(withPart)+legendGap+legendLine+st.Width(withoutPart)+legendGap > d.plot.X1-st.Width(d.xName) {
		d.lines = 2
	}
	d.height = math.Ceil(y + axisFigures + d.lines*axisName + d.marks.Height() + canvas.Margin/2)
	return d
}

// readMarks say when the signals are read.
func (d *cycleDrawing) readMarks() []typeset.Callout {
	var out []typeset.Callout
	for _, q := range d.m.reads {
		x, at := d.x.At(q.at), say.After(q.at)
		if q.beyond {
			x, at = d.plot.X1, at+" →"
		}
		out = append(out, typeset.Callout{X: x, Lines: []string{at, q.when}, Style: canvas.Bold(canvas.Black, canvas.Small)})
	}
	return out
}

func (d *cycleDrawing) paint(p *canvas.Pen) {
	d.chart.paper(p)
	bottom := d.plot.Y1
	if n := len(d.lanes); n > 0 {
		bottom = d.lanes[n-1].Y1 + 4
	}
	for _, f := range d.m.phases {
		p.VLine(canvas.Quiet.Tint(0.6), d.x.At(f.to), d.plot.Y0, bottom)
	}
	d.way(p, d.m.missing, true)
	d.way(p, d.m.part, false)
	d.chart.frame(p)
	d.phases.Above(p, d.plot.Y0)
	for i, l := range d.m.lanes {
		d.signal(p, l, d.lanes[i])
	}
	if w := d.m.watch; w != nil && *w <= d.m.end {
		p.Line(canvas.Black, canvas.ThinLine, canvas.Dashed, [2]float64{canvas.Crisp(d.x.At(*w)), d.plot.Y0}, [2]float64{canvas.Crisp(d.x.At(*w)), bottom})
	}
	d.figuresX(p, bottom)
	d.nameX(p, bottom)
	d.legend(p, bottom+17+axisName)
	d.marks.Below(p, bottom+axisFigures+d.lines*axisName)
}

func (d *cycleDrawing) way(p *canvas.Pen, moments []press.Moment, missing bool) {
	var line [][2]float64
	for _, q := range moments {
		line = append(line, d.at(q.Time, q.Position))
	}
	if missing {
		p.Line(canvas.Quiet, canvas.Outline, canvas.Dashed, line...)
		return
	}
	p.Line(canvas.Black, 2, canvas.Solid, line...)
}

// The legend of the two lines, and its sizes, px.
var (
	withPart    = say.WithThePart()
	withoutPart = say.WithoutAnInsert()
)

const (
	legendLine = 28 // up to its text
	legendGap  = 16
)

// legend says which line is which.
func (d *cycleDrawing) legend(p *canvas.Pen, y float64) {
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	x := d.plot.X0
	p.Line(canvas.Black, 2, canvas.Solid, [2]float64{x, y - 4}, [2]float64{x + 22, y - 4})
	p.Text(st, x+legendLine, y, canvas.Start, withPart)
	if len(d.m.missing) == 0 {
		return
	}
	if d.lines > 1 {
		y += axisName
	} else {
		x += legendLine + st.Width(withPart) + legendGap
	}
	p.Line(canvas.Quiet, canvas.Outline, canvas.Dashed, [2]float64{x, y - 4}, [2]float64{x + 22, y - 4})
	p.Text(st, x+legendLine, y, canvas.Start, withoutPart)
}

// signal draws one lane, raised where the signal is on.
func (d *cycleDrawing) signal(p *canvas.Pen, l signalLane, box canvas.Rectangle) {
	main, side := canvas.Bold(canvas.Black, canvas.Small), canvas.Plain(canvas.Quiet, canvas.Small)
	high, low := canvas.Crisp(box.Y0+3), canvas.Crisp(box.Y1-2)
	if d.above {
		p.OnPaper(main, box.X0, box.Y0-3, canvas.Start, l.name)
		p.OnPaper(side, box.X0+main.Width(l.name)+8, box.Y0-3, canvas.Start, l.note)
	} else {
		y := (box.Y0+box.Y1)/2 + 4
		p.Text(main, d.names, y, canvas.Start, l.name)
		p.Text(side, d.names+48, y, canvas.Start, side.Clip(l.note, box.X0-d.names-52))
	}
	dash := canvas.Solid
	if l.dashed {
		dash = canvas.Dashed
	}
	line := [][2]float64{{box.X0, low}}
	for _, on := range l.on {
		x0, x1 := d.x.At(on[0]), d.x.At(on[1])
		p.Fill(canvas.Black.Tint(2*canvas.QuietTint), canvas.Rect(x0, high, x1, low))
		line = append(line, [2]float64{x0, low}, [2]float64{x0, high}, [2]float64{x1, high}, [2]float64{x1, low})
	}
	line = append(line, [2]float64{d.x.At(d.m.end), low})
	p.Line(canvas.Black, canvas.Outline, dash, line...)
}
