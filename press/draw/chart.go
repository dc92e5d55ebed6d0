package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
)

// chart is a frame with two axes that the drawings with curves share.
type chart struct {
	title         []string
	width, height float64
	plot          canvas.Rectangle
	x, y          canvas.Scale
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
	ink  canvas.Ink
	bold bool
}

// Sizes of charts, px.
const (
	chartWide         = 640
	ChartLeast        = 480
	chartCompact      = 390
	ChartCompactLeast = 340
	plotHeight        = 230
	plotHeightFlat    = 112
	axisFigures       = 22 // room for the figures under the x axis
	axisName          = 18
)

// newChart lays out the frame; the room at the right is for the end labels.
func newChart(o Options, title string, right float64) *chart {
	c := &chart{width: o.width(chartWide, ChartLeast), stepY: 42}
	if o.Compact {
		c.width = o.width(chartCompact, ChartCompactLeast)
	}
	top := canvas.Margin + 26.0
	if o.NoTitle {
		top = canvas.Margin + canvas.Small + 8
	} else {
		c.title = canvas.Bold(canvas.Black, canvas.Heading).Wrap(title, c.width-2*canvas.Margin)
		top += float64(len(c.title)) * canvas.Leading * canvas.Heading
	}
	height := float64(plotHeight)
	if o.Flat {
		height, c.stepY = plotHeightFlat, 28
	}
	c.plot = canvas.Rect(canvas.Margin+44, top, c.width-canvas.Margin-right, top+height)
	c.yNameAt = top - 10
	return c
}

// raise makes room for labels over the plot, under the name of the y axis.
func (c *chart) raise(height float64) {
	c.plot.Y0 += height
	c.plot.Y1 += height
}

// scales sets the two scales, by the figures at their ends.
func (c *chart) scales(x0, x1, y0, y1 float64) {
	c.x = canvas.NewScale(x0, x1, c.plot.X0, c.plot.X1)
	c.y = canvas.NewScale(y0, y1, c.plot.Y1, c.plot.Y0)
}

// bottom is the lower edge of the axis with its figures and its name.
func (c *chart) bottom() float64 { return c.plot.Y1 + axisFigures + axisName }

func (c *chart) at(x, y float64) [2]float64 { return [2]float64{c.x.At(x), c.y.At(y)} }

// paper draws title, grid and axes: what lies under the curves.
func (c *chart) paper(p *canvas.Pen) {
	p.Lines(canvas.Bold(canvas.Black, canvas.Heading), canvas.Margin, canvas.Margin+canvas.Heading, canvas.Start, c.title)
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	p.Text(st, canvas.Margin, c.yNameAt, canvas.Start, c.yName)
	c.gridY(p, st)
	c.gridX(p)
}

func (c *chart) gridY(p *canvas.Pen, st canvas.Style) {
	ticks, decimals := c.y.Ticks(int((c.plot.Y1 - c.plot.Y0) / c.stepY))
	for _, v := range ticks {
		y := c.y.At(v)
		p.HLine(canvas.Faint, c.plot.X0, c.plot.X1, y)
		text := figure(v, decimals)
		p.Text(st, c.plot.X0-8, y+4, canvas.End, st.Clip(text, c.plot.X0-8-2))
	}
}

func (c *chart) gridX(p *canvas.Pen) {
	for _, v := range c.ticksX() {
		p.VLine(canvas.Faint, c.x.At(v), c.plot.Y0, c.plot.Y1)
	}
}

func (c *chart) ticksX() []float64 {
	if c.noX {
		return nil
	}
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	widest := math.Max(st.Width(figure(c.x.From, 2)), st.Width(figure(c.x.To, 2)))
	ticks, decimals := c.x.Ticks(int((c.plot.X1 - c.plot.X0) / (widest + 24)))
	c.decimals = decimals
	return ticks
}

// figuresX writes the figures of the x axis, on clear ground.
func (c *chart) figuresX(p *canvas.Pen, top float64) {
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	free := math.Inf(-1)
	for _, v := range c.ticksX() {
		x := c.x.At(v)
		text := figure(v, c.decimals)
		half := st.Width(text) / 2
		if x-half < free || x+half > c.width-2 {
			continue
		}
		p.OnPaper(st, x, top+17, canvas.Middle, text)
		free = x + half + 8
	}
}

// nameX writes the name of the x axis under its figures.
func (c *chart) nameX(p *canvas.Pen, top float64) {
	if !c.noX {
		p.OnPaper(canvas.Plain(canvas.Quiet, canvas.Small), c.plot.X1, top+17+axisName, canvas.End, c.xName)
	}
}

// frame draws the two axis lines: what lies over the curves.
func (c *chart) frame(p *canvas.Pen) {
	p.HLine(canvas.Black, c.plot.X0, c.plot.X1, c.plot.Y1)
	p.VLine(canvas.Black, c.plot.X0, c.plot.Y0, c.plot.Y1)
}

// labelEnds writes the end labels, moved apart where lines lie close.
func (c *chart) labelEnds(p *canvas.Pen) {
	const height = 16
	wish, size := make([]float64, len(c.ends)), make([]float64, len(c.ends))
	sortEnds(c.ends)
	for i, e := range c.ends {
		wish[i], size[i] = e.y, height
	}
	at, _ := typeset.Spread(wish, size, 0, c.plot.Y0-8, c.plot.Y1+8)
	for i, e := range c.ends {
		p.Line(canvas.Quiet, canvas.ThinLine, canvas.Solid, [2]float64{c.plot.X1 + 1, e.y}, [2]float64{c.plot.X1 + 12, at[i]})
		st := canvas.Style{Ink: e.ink, Size: canvas.Small, Bold: e.bold}
		room := c.width - canvas.Margin/2 - c.plot.X1 - 15
		p.Text(st, c.plot.X1+15, at[i]+4, canvas.Start, st.Clip(e.text, room))
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
func (c *chart) band(p *canvas.Pen, k canvas.Ink, low, high [][2]float64) {
	if len(low) < 2 {
		return
	}
	shape := c.place(c.cutTop(low))
	upper := c.place(c.cutTop(high))
	for i := len(upper) - 1; i >= 0; i-- {
		shape = append(shape, upper[i])
	}
	p.Area(k, shape...)
}

// curve draws a line of figures, as far as the plot shows it.
func (c *chart) curve(p *canvas.Pen, k canvas.Ink, width float64, points [][2]float64) {
	points = c.cutTop(points)
	for i := 0; i < len(points); i++ {
		first := i
		for i < len(points) && points[i][1] <= c.y.To {
			i++
		}
		p.Line(k, width, canvas.Solid, c.place(points[first:i])...)
	}
}

// cutTop puts a corner where a line passes the upper end of the scale, so that
// what is cut off there keeps its slope below.
func (c *chart) cutTop(points [][2]float64) [][2]float64 {
	var out [][2]float64
	for i, q := range points {
		if i > 0 {
			a := points[i-1]
			if (a[1] > c.y.To) != (q[1] > c.y.To) {
				share := (c.y.To - a[1]) / (q[1] - a[1])
				out = append(out, [2]float64{a[0] + share*(q[0]-a[0]), c.y.To})
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
func (c *chart) vertical(p *canvas.Pen, k canvas.Ink, dash canvas.Dash, x, from float64) {
	p.Line(k, canvas.ThinLine, dash, [2]float64{canvas.Crisp(x), from}, [2]float64{canvas.Crisp(x), c.plot.Y1})
}
