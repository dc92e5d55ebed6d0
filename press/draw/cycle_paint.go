package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/words"
)

// cycleDrawing is the cycle laid out in px.
type cycleDrawing struct {
	*chart
	m      *cycleModel
	phases callouts
	lanes  []rect
	names  float64 // left edge of the names of the lanes; compact: over the lanes
	above  bool    // names stand over the lanes
	marks  callouts
	lines  float64 // of the legend, which stands beside the name of the axis where there is room
}

const laneHeight = 22

func layCycle(m *cycleModel, o Options) *cycleDrawing {
	d := &cycleDrawing{m: m, chart: newChart(o, m.title, 0), above: o.Compact}
	left := d.plot.x0
	if !o.Compact {
		left = margin + 156
	}
	d.names = margin
	d.plot.x0 = left
	d.x = newScale(0, 1.02*m.end, d.plot.x0, d.plot.x1)
	var items []callout
	for _, f := range m.phases {
		items = append(items, callout{x: d.x.x((f.from + f.to) / 2), lines: []string{f.name, f.lasts}, style: style{black, small, false}})
	}
	if m.handling.Seconds > 0 {
		items = append(items, callout{x: d.plot.x1, lines: []string{"handling", m.handling.Text() + " →"}, style: style{black, small, false}})
	}
	d.phases = layCallouts(items, margin, d.plot.x1)
	d.raise(d.phases.height())
	d.plot.y1 -= 40
	pad := 0.04 * (m.high - m.low)
	d.scales(0, 1.02*m.end, m.low-pad, m.high+pad)
	d.xName, d.yName = "time, s", "ram position, mm"
	y := d.plot.y1 + 12
	for range m.lanes {
		if d.above {
			y += 15
		}
		d.lanes = append(d.lanes, rect{d.plot.x0, y, d.plot.x1, y + laneHeight})
		y += laneHeight + 8
	}
	d.marks = layCallouts(d.readMarks(), margin, d.width-margin)
	d.lines = 1
	st := style{quiet, small, false}
	if d.plot.x0+legendLine+st.width(withPart)+legendGap+legendLine+st.width(withoutPart)+legendGap > d.plot.x1-st.width(d.xName) {
		d.lines = 2
	}
	d.height = math.Ceil(y + axisFigures + d.lines*axisName + d.marks.height() + margin/2)
	return d
}

// readMarks say when the signals are read.
func (d *cycleDrawing) readMarks() []callout {
	var out []callout
	for _, q := range d.m.reads {
		x, at := d.x.x(q.at), words.After(q.at)
		if q.beyond {
			x, at = d.plot.x1, at+" →"
		}
		out = append(out, callout{x: x, lines: []string{at, q.when}, style: style{black, small, true}})
	}
	return out
}

func (d *cycleDrawing) paint(p *pen) {
	d.chart.paper(p)
	bottom := d.plot.y1
	if n := len(d.lanes); n > 0 {
		bottom = d.lanes[n-1].y1 + 4
	}
	for _, f := range d.m.phases {
		p.vline(quiet.tint(0.6), d.x.x(f.to), d.plot.y0, bottom)
	}
	d.way(p, d.m.missing, true)
	d.way(p, d.m.part, false)
	d.chart.frame(p)
	d.phases.above(p, d.plot.y0)
	for i, l := range d.m.lanes {
		d.signal(p, l, d.lanes[i])
	}
	if w := d.m.watch; w != nil && *w <= d.m.end {
		p.line(black, thinLine, dashed, [2]float64{crisp(d.x.x(*w)), d.plot.y0}, [2]float64{crisp(d.x.x(*w)), bottom})
	}
	d.figuresX(p, bottom)
	d.nameX(p, bottom)
	d.legend(p, bottom+17+axisName)
	d.marks.below(p, bottom+axisFigures+d.lines*axisName)
}

func (d *cycleDrawing) way(p *pen, moments []press.Moment, missing bool) {
	var line [][2]float64
	for _, q := range moments {
		line = append(line, d.at(q.Time, q.Position))
	}
	if missing {
		p.line(quiet, outline, dashed, line...)
		return
	}
	p.line(black, 2, solid, line...)
}

// The legend of the two lines, and its sizes, px.
const (
	withPart    = "with the part"
	withoutPart = "without an insert"
	legendLine  = 28 // up to its text
	legendGap   = 16
)

// legend says which line is which.
func (d *cycleDrawing) legend(p *pen, y float64) {
	st := style{quiet, small, false}
	x := d.plot.x0
	p.line(black, 2, solid, [2]float64{x, y - 4}, [2]float64{x + 22, y - 4})
	p.text(st, x+legendLine, y, start, withPart)
	if len(d.m.missing) == 0 {
		return
	}
	if d.lines > 1 {
		y += axisName
	} else {
		x += legendLine + st.width(withPart) + legendGap
	}
	p.line(quiet, outline, dashed, [2]float64{x, y - 4}, [2]float64{x + 22, y - 4})
	p.text(st, x+legendLine, y, start, withoutPart)
}

// signal draws one lane, raised where the signal is on.
func (d *cycleDrawing) signal(p *pen, l signalLane, box rect) {
	main, side := style{black, small, true}, style{quiet, small, false}
	high, low := crisp(box.y0+3), crisp(box.y1-2)
	if d.above {
		p.onPaper(main, box.x0, box.y0-3, start, l.name)
		p.onPaper(side, box.x0+main.width(l.name)+8, box.y0-3, start, l.note)
	} else {
		y := (box.y0+box.y1)/2 + 4
		p.text(main, d.names, y, start, l.name)
		p.text(side, d.names+48, y, start, side.clip(l.note, box.x0-d.names-52))
	}
	dash := solid
	if l.dashed {
		dash = dashed
	}
	line := [][2]float64{{box.x0, low}}
	for _, on := range l.on {
		x0, x1 := d.x.x(on[0]), d.x.x(on[1])
		p.fill(black.tint(2*quietTint), rect{x0, high, x1, low})
		line = append(line, [2]float64{x0, low}, [2]float64{x0, high}, [2]float64{x1, high}, [2]float64{x1, low})
	}
	line = append(line, [2]float64{d.x.x(d.m.end), low})
	p.line(black, outline, dash, line...)
}
