package draw

import (
	"math"

	"gonum.org/v1/plot/vg"
)

// runDrawing is the run laid out in px.
type runDrawing struct {
	*chart
	m       *runModel
	lanes   []rect
	above   bool // the names of the lanes stand over them
	list    [][]string
	heading float64 // baseline of the numbers of the steps
}

const (
	runPlotHeight = 260
	runNumbers    = 20 // room for the numbers of the steps
	runRight      = 96
	runLeft       = 88
)

var dotted = []vg.Length{1.5, 3}

func layRun(m *runModel, o Options) *runDrawing {
	d := &runDrawing{m: m, chart: newChart(o, m.title, runRight), above: o.Compact}
	if !o.Compact {
		d.plot.x0 = margin + runLeft
	}
	d.raise(runNumbers)
	if !o.Flat {
		d.plot.y1 = d.plot.y0 + runPlotHeight
	}
	d.heading = d.plot.y0 - 6
	pad := 0.04 * (m.high - m.low)
	d.x = newScale(0, 1.01*m.end, d.plot.x0, d.plot.x1)
	d.y = newScale(m.low-pad, m.high+pad, d.plot.y0, d.plot.y1) // downward, as the ram moves
	d.xName, d.yName = "time, s", "ram position, mm, downward"
	for _, l := range m.levels {
		d.ends = append(d.ends, endLabel{d.y.x(l.at), l.name, quiet, false})
	}
	y := d.plot.y1 + 12
	for range m.lanes {
		if d.above {
			y += 15
		}
		d.lanes = append(d.lanes, rect{d.plot.x0, y, d.plot.x1, y + laneHeight})
		y += laneHeight + 8
	}
	y += axisFigures + axisName + 4
	d.listed()
	d.height = math.Ceil(y + float64(len(d.list)+1)*leading*small + margin/2)
	return d
}

// listed lays out the list of the steps under the drawing.
func (d *runDrawing) listed() {
	st := style{black, small, false}
	room, used := d.width-2*margin, 0.0
	var line []string
	for _, s := range d.m.steps {
		text := st.clip(s.number+"  "+s.name, room)
		w := st.width(text)
		if len(line) > 0 && used+runListGap+w > room {
			d.list, line, used = append(d.list, line), nil, 0
		}
		if len(line) > 0 {
			used += runListGap
		}
		line, used = append(line, text), used+w
	}
	if len(line) > 0 {
		d.list = append(d.list, line)
	}
}

const runListGap = 18

func (d *runDrawing) paint(p *pen) {
	m := d.m
	bottom := d.plot.y1 + 4
	if n := len(d.lanes); n > 0 {
		bottom = d.lanes[n-1].y1 + 4
	}
	for i, s := range m.steps {
		if i%2 == 1 {
			p.fill(black.tint(lensTint), rect{d.x.x(s.from), d.plot.y0, d.x.x(s.to), bottom})
		}
	}
	d.chart.paper(p)
	for _, s := range m.steps {
		p.vline(quiet.tint(0.6), d.x.x(s.to), d.plot.y0, bottom)
	}
	d.numbers(p)
	d.spreadBand(p)
	d.otherWay(p)
	d.way(p)
	d.chart.frame(p)
	d.labelEnds(p)
	for i, l := range m.lanes {
		d.lane(p, l, d.lanes[i])
	}
	for _, t := range m.looks {
		x := crisp(d.x.x(t))
		p.line(black, thinLine, centring, [2]float64{x, d.plot.y0}, [2]float64{x, bottom})
	}
	d.figuresX(p, bottom)
	d.nameX(p, bottom)
	d.below(p, bottom+axisFigures+axisName)
}

// numbers stand over the steps that have room for theirs.
func (d *runDrawing) numbers(p *pen) {
	st := style{black, small, true}
	free := math.Inf(-1)
	for _, s := range d.m.steps {
		x0, x1 := d.x.x(s.from), d.x.x(s.to)
		text := s.number
		if long := s.number + " " + s.name; st.width(long) < x1-x0-6 {
			text = long
		}
		mid, half := (x0+x1)/2, st.width(text)/2
		if mid-half < free {
			continue
		}
		p.text(st, mid, d.heading, middle, text)
		free = mid + half + 3
	}
}

// spreadBand shows where parts leave the ram elsewhere, as far as that can be seen.
func (d *runDrawing) spreadBand(p *pen) {
	var run [][3]float64
	flush := func() {
		if len(run) > 1 {
			var shape [][2]float64
			for _, q := range run {
				shape = append(shape, d.at(q[0], q[1]))
			}
			for i := len(run) - 1; i >= 0; i-- {
				shape = append(shape, d.at(run[i][0], run[i][2]))
			}
			p.area(black.tint(bandTint), shape...)
		}
		run = nil
	}
	for i, q := range d.m.band {
		if i > 0 && q[0] < d.m.band[i-1][0]-1e-9 {
			flush()
		}
		run = append(run, q)
	}
	flush()
}

func (d *runDrawing) otherWay(p *pen) {
	p.line(black, outline, d.otherDash(), d.place(sampled(d.m.other, d.m.otherFrom, 12))...)
}

// way is the nominal run, its slow part heavier, with what joins its steps.
func (d *runDrawing) way(p *pen) {
	p.line(black, outline, solid, d.place(sampled(d.m.way, math.Inf(-1), 12))...)
	for _, s := range d.m.steps {
		if !s.pushes {
			continue
		}
		var heavy [][2]float64
		for _, q := range sampled(within2(d.m.way, s.from, s.to), math.Inf(-1), 12) {
			if q[1] >= d.m.slowFrom-1e-9 {
				heavy = append(heavy, q)
			}
		}
		p.line(black, 2*outline, solid, d.place(heavy)...)
	}
	at := func(t float64) [2]float64 {
		for _, q := range sampled(d.m.way, math.Inf(-1), 1) {
			if q[0] >= t-1e-9 {
				return d.at(t, q[1])
			}
		}
		return d.at(t, d.m.low)
	}
	for _, t := range d.m.rests {
		q := at(t)
		p.line(black, outline, solid, [2]float64{crisp(q[0]), q[1] - 4}, [2]float64{crisp(q[0]), q[1] + 4})
	}
	for _, t := range d.m.joins {
		q := at(t)
		p.circle(paper, black, outline, q[0], q[1], 3.5)
	}
}

// lane draws one signal, raised where it is on; what is not the press's is hatched.
func (d *runDrawing) lane(p *pen, l runLane, box rect) {
	main := style{black, small, true}
	high, low := crisp(box.y0+3), crisp(box.y1-2)
	if d.above {
		p.onPaper(main, box.x0, box.y0-3, start, l.name)
	} else {
		p.text(main, margin, (box.y0+box.y1)/2+4, start, l.name)
	}
	line := [][2]float64{{box.x0, low}}
	for _, on := range l.on {
		x0, x1 := d.x.x(on.from), d.x.x(on.to)
		field := rect{x0, high, x1, low}
		p.fill(black.tint(2*quietTint), field)
		if on.elsewhere != "" {
			p.hatch(black, crossHatch, field)
		}
		line = append(line, [2]float64{x0, low}, [2]float64{x0, high}, [2]float64{x1, high}, [2]float64{x1, low})
	}
	line = append(line, [2]float64{d.x.x(d.m.end), low})
	p.line(black, outline, solid, line...)
	for i, on := range l.on {
		d.laneWord(p, l, i, on, (high+low)/2+4)
	}
}

// laneWord names the step of a stretch that is not the press's: in it, or beside it.
func (d *runDrawing) laneWord(p *pen, l runLane, i int, on runOn, y float64) {
	if on.elsewhere == "" {
		return
	}
	st := style{black, small, false}
	x0, x1 := d.x.x(on.from), d.x.x(on.to)
	next := d.plot.x1
	if i+1 < len(l.on) {
		next = d.x.x(l.on[i+1].from)
	}
	for _, text := range []string{on.elsewhere, on.number} {
		w := st.width(text)
		switch {
		case w+10 < x1-x0:
			p.onPaper(st, (x0+x1)/2, y, middle, text)
			return
		case x1+5+w+6 < next:
			p.onPaper(st, x1+6, y, start, text)
			return
		}
	}
}

// below is the list of the steps, and what the lines mean.
func (d *runDrawing) below(p *pen, y float64) {
	st := style{black, small, false}
	for _, line := range d.list {
		y += leading * small
		x := float64(margin)
		for _, text := range line {
			p.text(st, x, y, start, text)
			x += st.width(text) + runListGap
		}
	}
	y += leading * small
	x := float64(margin)
	meant := func(dash []vg.Length, text string) {
		st := style{quiet, small, false}
		p.line(black, outline, dash, [2]float64{x, y - 4}, [2]float64{x + 22, y - 4})
		p.text(st, x+legendLine, y, start, text)
		x += legendLine + st.width(text) + legendGap
	}
	if len(d.m.looks) > 0 {
		meant(centring, "the signals are looked at")
	}
	if d.m.other != nil {
		meant(d.otherDash(), d.m.otherName)
	}
}

func (d *runDrawing) otherDash() []vg.Length {
	if d.m.hold {
		return dotted
	}
	return dashed
}
