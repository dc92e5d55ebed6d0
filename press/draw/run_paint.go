package draw

import (
	"math"

	"ramplan/press/draw/canvas"
)

// runDrawing is the run laid out in px.
type runDrawing struct {
	*chart
	m       *runModel
	lanes   []canvas.Rectangle
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

var dotted = canvas.Dash{1.5, 3}

func layRun(m *runModel, o Options) *runDrawing {
	d := &runDrawing{m: m, chart: newChart(o, m.title, runRight), above: o.Compact}
	if !o.Compact {
		d.plot.X0 = canvas.Margin + runLeft
	}
	d.raise(runNumbers)
	if !o.Flat {
		d.plot.Y1 = d.plot.Y0 + runPlotHeight
	}
	d.heading = d.plot.Y0 - 6
	pad := 0.04 * (m.high - m.low)
	d.x = canvas.NewScale(0, 1.01*m.end, d.plot.X0, d.plot.X1)
	d.y = canvas.NewScale(m.low-pad, m.high+pad, d.plot.Y0, d.plot.Y1) // downward, as the ram moves
	d.xName, d.yName = say.TimeAxis(), say.RamPositionDownAxis()
	for _, l := range m.levels {
		d.ends = append(d.ends, endLabel{d.y.At(l.at), l.name, canvas.Quiet, false})
	}
	y := d.plot.Y1 + 12
	for range m.lanes {
		if d.above {
			y += 15
		}
		d.lanes = append(d.lanes, canvas.Rect(d.plot.X0, y, d.plot.X1, y+laneHeight))
		y += laneHeight + 8
	}
	y += axisFigures + axisName + 4
	d.listed()
	d.height = math.Ceil(y + float64(len(d.list)+1)*canvas.Leading*canvas.Small + canvas.Margin/2)
	return d
}

// listed lays out the list of the steps under the drawing.
func (d *runDrawing) listed() {
	st := canvas.Plain(canvas.Black, canvas.Small)
	room, used := d.width-2*canvas.Margin, 0.0
	var line []string
	for _, s := range d.m.steps {
		text := st.Clip(s.number+"  "+s.name, room)
		w := st.Width(text)
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

func (d *runDrawing) paint(p *canvas.Pen) {
	m := d.m
	bottom := d.plot.Y1 + 4
	if n := len(d.lanes); n > 0 {
		bottom = d.lanes[n-1].Y1 + 4
	}
	for i, s := range m.steps {
		if i%2 == 1 {
			p.Fill(canvas.Black.Tint(canvas.LensTint), canvas.Rect(d.x.At(s.from), d.plot.Y0, d.x.At(s.to), bottom))
		}
	}
	d.chart.paper(p)
	for _, s := range m.steps {
		p.VLine(canvas.Quiet.Tint(0.6), d.x.At(s.to), d.plot.Y0, bottom)
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
		x := canvas.Crisp(d.x.At(t))
		p.Line(canvas.Black, canvas.ThinLine, canvas.Centring, [2]float64{x, d.plot.Y0}, [2]float64{x, bottom})
	}
	d.figuresX(p, bottom)
	d.nameX(p, bottom)
	d.below(p, bottom+axisFigures+axisName)
}

// numbers stand over the steps that have room for theirs.
func (d *runDrawing) numbers(p *canvas.Pen) {
	st := canvas.Bold(canvas.Black, canvas.Small)
	free := math.Inf(-1)
	for _, s := range d.m.steps {
		x0, x1 := d.x.At(s.from), d.x.At(s.to)
		text := s.number
		if long := s.number + " " + s.name; st.Width(long) < x1-x0-6 {
			text = long
		}
		mid, half := (x0+x1)/2, st.Width(text)/2
		if mid-half < free {
			continue
		}
		p.Text(st, mid, d.heading, canvas.Middle, text)
		free = mid + half + 3
	}
}

// spreadBand shows where parts leave the ram elsewhere, as far as that can be seen.
func (d *runDrawing) spreadBand(p *canvas.Pen) {
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
			p.Area(canvas.Black.Tint(canvas.BandTint), shape...)
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

func (d *runDrawing) otherWay(p *canvas.Pen) {
	p.Line(canvas.Black, canvas.Outline, d.otherDash(), d.place(sampled(d.m.other, d.m.otherFrom, 12))...)
}

// way is the nominal run, its slow part heavier, with what joins its steps.
func (d *runDrawing) way(p *canvas.Pen) {
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, d.place(sampled(d.m.way, math.Inf(-1), 12))...)
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
		p.Line(canvas.Black, 2*canvas.Outline, canvas.Solid, d.place(heavy)...)
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
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{canvas.Crisp(q[0]), q[1] - 4}, [2]float64{canvas.Crisp(q[0]), q[1] + 4})
	}
	for _, t := range d.m.joins {
		q := at(t)
		p.Circle(canvas.Paper, canvas.Black, canvas.Outline, q[0], q[1], 3.5)
	}
}

// lane draws one signal, raised where it is on; what is not the press's is hatched.
func (d *runDrawing) lane(p *canvas.Pen, l runLane, box canvas.Rectangle) {
	main := canvas.Bold(canvas.Black, canvas.Small)
	high, low := canvas.Crisp(box.Y0+3), canvas.Crisp(box.Y1-2)
	if d.above {
		p.OnPaper(main, box.X0, box.Y0-3, canvas.Start, l.name)
	} else {
		p.Text(main, canvas.Margin, (box.Y0+box.Y1)/2+4, canvas.Start, l.name)
	}
	line := [][2]float64{{box.X0, low}}
	for _, on := range l.on {
		x0, x1 := d.x.At(on.from), d.x.At(on.to)
		field := canvas.Rect(x0, high, x1, low)
		p.Fill(canvas.Black.Tint(2*canvas.QuietTint), field)
		if on.elsewhere != "" {
			p.Hatch(canvas.Black, canvas.CrossHatch, field)
		}
		line = append(line, [2]float64{x0, low}, [2]float64{x0, high}, [2]float64{x1, high}, [2]float64{x1, low})
	}
	line = append(line, [2]float64{d.x.At(d.m.end), low})
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, line...)
	for i, on := range l.on {
		d.laneWord(p, l, i, on, (high+low)/2+4)
	}
}

// laneWord names the step of a stretch that is not the press's: in it, or beside it.
func (d *runDrawing) laneWord(p *canvas.Pen, l runLane, i int, on runOn, y float64) {
	if on.elsewhere == "" {
		return
	}
	st := canvas.Plain(canvas.Black, canvas.Small)
	x0, x1 := d.x.At(on.from), d.x.At(on.to)
	next := d.plot.X1
	if i+1 < len(l.on) {
		next = d.x.At(l.on[i+1].from)
	}
	for _, text := range []string{on.elsewhere, on.number} {
		w := st.Width(text)
		switch {
		case w+10 < x1-x0:
			p.OnPaper(st, (x0+x1)/2, y, canvas.Middle, text)
			return
		case x1+5+w+6 < next:
			p.OnPaper(st, x1+6, y, canvas.Start, text)
			return
		}
	}
}

// below is the list of the steps, and what the lines mean.
func (d *runDrawing) below(p *canvas.Pen, y float64) {
	st := canvas.Plain(canvas.Black, canvas.Small)
	for _, line := range d.list {
		y += canvas.Leading * canvas.Small
		x := float64(canvas.Margin)
		for _, text := range line {
			p.Text(st, x, y, canvas.Start, text)
			x += st.Width(text) + runListGap
		}
	}
	y += canvas.Leading * canvas.Small
	x := float64(canvas.Margin)
	meant := func(dash canvas.Dash, text string) {
		st := canvas.Plain(canvas.Quiet, canvas.Small)
		p.Line(canvas.Black, canvas.Outline, dash, [2]float64{x, y - 4}, [2]float64{x + 22, y - 4})
		p.Text(st, x+legendLine, y, canvas.Start, text)
		x += legendLine + st.Width(text) + legendGap
	}
	if len(d.m.looks) > 0 {
		meant(canvas.Centring, say.SignalsLookedAt())
	}
	if d.m.other != nil {
		meant(d.otherDash(), d.m.otherName)
	}
}

func (d *runDrawing) otherDash() canvas.Dash {
	if d.m.hold {
		return dotted
	}
	return canvas.Dashed
}
