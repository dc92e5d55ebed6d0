package draw

import (
	"math"

	"gonum.org/v1/plot/vg"

	"ramplan/press"
)

// chart is a frame with two axes that the drawings with curves share.
type chart struct {
	title         []string
	width, height float64
	plot          rect
	x, y          scale
	xName, yName  string
	yNameAt       float64    // baseline of the name of the y axis
	ends          []endLabel // at the right, for the lines that reach it
	decimals      int        // of the figures of the x axis
	noX           bool       // nothing is measured along the x axis
	stepY         float64    // px from figure to figure of the y axis, about
}

// endLabel names a line at its right end.
type endLabel struct {
	y    float64 // px of the line
	text string
	ink  ink
	bold bool
}

// Sizes of charts, px.
const (
	chartWide         = 640
	chartWideLeast    = 480
	chartCompact      = 390
	chartCompactLeast = 340
	plotHeight        = 230
	plotHeightFlat    = 112
	axisFigures       = 22 // room for the figures under the x axis
	axisName          = 18
)

// newChart lays out the frame; the room at the right is for the end labels.
func newChart(o Options, title string, right float64) *chart {
	c := &chart{width: o.width(chartWide, chartWideLeast), stepY: 42}
	if o.Compact {
		c.width = o.width(chartCompact, chartCompactLeast)
	}
	top := margin + 26.0
	if o.NoTitle {
		top = margin + small + 8
	} else {
		c.title = style{black, heading, true}.wrap(title, c.width-2*margin)
		top += float64(len(c.title)) * leading * heading
	}
	height := float64(plotHeight)
	if o.Flat {
		height, c.stepY = plotHeightFlat, 28
	}
	c.plot = rect{margin + 44, top, c.width - margin - right, top + height}
	c.yNameAt = top - 10
	return c
}

// raise makes room for labels over the plot, under the name of the y axis.
func (c *chart) raise(height float64) {
	c.plot.y0 += height
	c.plot.y1 += height
}

// scales sets the two scales, by the figures at their ends.
func (c *chart) scales(x0, x1, y0, y1 float64) {
	c.x = newScale(x0, x1, c.plot.x0, c.plot.x1)
	c.y = newScale(y0, y1, c.plot.y1, c.plot.y0)
}

// bottom is the lower edge of the axis with its figures and its name.
func (c *chart) bottom() float64 { return c.plot.y1 + axisFigures + axisName }

func (c *chart) at(x, y float64) [2]float64 { return [2]float64{c.x.x(x), c.y.x(y)} }

// paper draws title, grid and axes: what lies under the curves.
func (c *chart) paper(p *pen) {
	p.lines(style{black, heading, true}, margin, margin+heading, start, c.title)
	st := style{quiet, small, false}
	p.text(st, margin, c.yNameAt, start, c.yName)
	c.gridY(p, st)
	c.gridX(p)
}

func (c *chart) gridY(p *pen, st style) {
	ticks, decimals := c.y.ticks(int((c.plot.y1 - c.plot.y0) / c.stepY))
	for _, v := range ticks {
		y := c.y.x(v)
		p.hline(faint, c.plot.x0, c.plot.x1, y)
		text := figure(v, decimals)
		p.text(st, c.plot.x0-8, y+4, end, st.clip(text, c.plot.x0-8-2))
	}
}

func (c *chart) gridX(p *pen) {
	for _, v := range c.ticksX() {
		p.vline(faint, c.x.x(v), c.plot.y0, c.plot.y1)
	}
}

func (c *chart) ticksX() []float64 {
	if c.noX {
		return nil
	}
	st := style{quiet, small, false}
	widest := math.Max(st.width(figure(c.x.from, 2)), st.width(figure(c.x.to, 2)))
	ticks, decimals := c.x.ticks(int((c.plot.x1 - c.plot.x0) / (widest + 24)))
	c.decimals = decimals
	return ticks
}

// figuresX writes the figures of the x axis, on clear ground.
func (c *chart) figuresX(p *pen, top float64) {
	st := style{quiet, small, false}
	free := math.Inf(-1)
	for _, v := range c.ticksX() {
		x := c.x.x(v)
		text := figure(v, c.decimals)
		half := st.width(text) / 2
		if x-half < free || x+half > c.width-2 {
			continue
		}
		p.onPaper(st, x, top+17, middle, text)
		free = x + half + 8
	}
}

// nameX writes the name of the x axis under its figures.
func (c *chart) nameX(p *pen, top float64) {
	if !c.noX {
		p.onPaper(style{quiet, small, false}, c.plot.x1, top+17+axisName, end, c.xName)
	}
}

// frame draws the two axis lines: what lies over the curves.
func (c *chart) frame(p *pen) {
	p.hline(black, c.plot.x0, c.plot.x1, c.plot.y1)
	p.vline(black, c.plot.x0, c.plot.y0, c.plot.y1)
}

// labelEnds writes the end labels, moved apart where lines lie close.
func (c *chart) labelEnds(p *pen) {
	const height = 16
	wish, size := make([]float64, len(c.ends)), make([]float64, len(c.ends))
	sortEnds(c.ends)
	for i, e := range c.ends {
		wish[i], size[i] = e.y, height
	}
	at, _ := spread(wish, size, 0, c.plot.y0-8, c.plot.y1+8)
	for i, e := range c.ends {
		p.line(quiet, thinLine, solid, [2]float64{c.plot.x1 + 1, e.y}, [2]float64{c.plot.x1 + 12, at[i]})
		st := style{e.ink, small, e.bold}
		room := c.width - margin/2 - c.plot.x1 - 15
		p.text(st, c.plot.x1+15, at[i]+4, start, st.clip(e.text, room))
	}
}

func sortEnds(ends []endLabel) {
	for i := 1; i < len(ends); i++ {
		for k := i; k > 0 && ends[k].y < ends[k-1].y; k-- {
			ends[k], ends[k-1] = ends[k-1], ends[k]
		}
	}
}

// band fills between two lines over the same places.
func (c *chart) band(p *pen, k ink, low, high [][2]float64) {
	if len(low) < 2 {
		return
	}
	shape := c.place(c.cutTop(low))
	upper := c.place(c.cutTop(high))
	for i := len(upper) - 1; i >= 0; i-- {
		shape = append(shape, upper[i])
	}
	p.area(k, shape...)
}

// curve draws a line of figures, as far as the plot shows it.
func (c *chart) curve(p *pen, k ink, width float64, points [][2]float64) {
	points = c.cutTop(points)
	for i := 0; i < len(points); i++ {
		first := i
		for i < len(points) && points[i][1] <= c.y.to {
			i++
		}
		p.line(k, width, solid, c.place(points[first:i])...)
	}
}

// cutTop puts a corner where a line passes the upper end of the scale, so that
// what is cut off there keeps its slope below.
func (c *chart) cutTop(points [][2]float64) [][2]float64 {
	var out [][2]float64
	for i, q := range points {
		if i > 0 {
			a := points[i-1]
			if (a[1] > c.y.to) != (q[1] > c.y.to) {
				share := (c.y.to - a[1]) / (q[1] - a[1])
				out = append(out, [2]float64{a[0] + share*(q[0]-a[0]), c.y.to})
			}
		}
		out = append(out, q)
	}
	return out
}

func (c *chart) place(points [][2]float64) [][2]float64 {
	out := make([][2]float64, len(points))
	for i, q := range points {
		out[i] = c.at(q[0], q[1])
	}
	return out
}

// bands takes the three lines of a band apart.
func bands(list []press.Band) (low, mid, high [][2]float64) {
	for _, b := range list {
		low, mid, high = append(low, [2]float64{b.At, b.Low}), append(mid, [2]float64{b.At, b.Typical}), append(high, [2]float64{b.At, b.High})
	}
	return low, mid, high
}

// vertical draws a line through the plot.
func (c *chart) vertical(p *pen, k ink, dash []vg.Length, x, from float64) {
	p.line(k, thinLine, dash, [2]float64{crisp(x), from}, [2]float64{crisp(x), c.plot.y1})
}
