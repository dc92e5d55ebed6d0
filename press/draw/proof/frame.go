package proof

import (
	"math"

	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// A frame is a drawing of one or more panels over one another that share the axis below.
type frame struct {
	kind, title, desc string
	o                 draw.Options
	lines             []string // of the title
	width, y          float64  // y: lower edge of what is laid out
	left, right       float64  // px of the panels
	x                 canvas.Scale
	xName             string
	xWhole            bool // the figures of the x axis are whole numbers
	panels            []*panel
	key               []keyItem
	keyAt             [][2]float64
}

// A panel is one plot of a frame.
type panel struct {
	box  canvas.Rectangle
	y    canvas.Scale
	name string // of the y axis
	ends []endLabel
}

// endLabel names a line at its right end.
type endLabel struct {
	y    float64 // px of the line
	text string
	ink  canvas.Ink
	bold bool
}

// keyItem says what a mark means: under the drawing, where it cannot stand at the mark.
type keyItem struct {
	mark func(p *canvas.Pen, x, y float64)
	text string
}

// Sizes, px.
const (
	usualWidth   = 640
	compactWidth = 390
	figuresBelow = 22
	nameBelow    = 18
	nameAbove    = 22 // for the name of a y axis
	keyLine      = 20
	endHeight    = 16
)

// newFrame begins a drawing: its title, and the room at the right for the names of lines.
func newFrame(kind, title, desc string, o draw.Options, left, right float64) *frame {
	f := &frame{kind: kind, title: title, desc: title + ". " + desc, o: o, width: o.Fitting(usualWidth, draw.ChartLeast)}
	if o.Compact {
		f.width = o.Fitting(compactWidth, draw.ChartCompactLeast)
	}
	f.y = canvas.Margin
	if !o.NoTitle {
		f.lines = canvas.Bold(canvas.Black, canvas.Heading).Wrap(title, f.width-2*canvas.Margin)
		f.y += float64(len(f.lines))*canvas.Leading*canvas.Heading + 6
	}
	f.left, f.right = canvas.Margin+left, f.width-canvas.Margin-right
	return f
}

// across sets the scale of the axis below.
func (f *frame) across(from, to float64, name string) {
	f.x, f.xName = canvas.NewScale(from, to, f.left, f.right), name
}

// add adds a panel under those there are.
func (f *frame) add(height, from, to float64, name string) *panel {
	if f.o.Flat {
		height *= 0.6
	}
	top := f.y + nameAbove
	q := &panel{box: canvas.Rect(f.left, top, f.right, top+height), name: name}
	q.y = canvas.NewScale(from, to, q.box.Y1, q.box.Y0)
	f.panels = append(f.panels, q)
	f.y = q.box.Y1 + 14
	return q
}

// axis ends the panels: figures and name of the axis below, and what the marks mean.
func (f *frame) axis(key ...keyItem) {
	f.y += figuresBelow + nameBelow - 14
	f.explain(key)
}

// explain lays out what the marks mean, under what is laid out.
func (f *frame) explain(key []keyItem) {
	f.key = key
	if len(key) == 0 {
		return
	}
	st := keyStyle()
	x, y := float64(canvas.Margin), f.y+16
	for i := range key {
		f.key[i].text = st.Clip(key[i].text, f.width-2*canvas.Margin-24)
		w := 24 + st.Width(f.key[i].text)
		if x > canvas.Margin && x+w > f.width-canvas.Margin {
			x, y = canvas.Margin, y+keyLine
		}
		f.keyAt = append(f.keyAt, [2]float64{x, y})
		x += w + 20
	}
	f.y = y + 6
}

func keyStyle() canvas.Style { return canvas.Plain(canvas.Quiet, canvas.Small) }

// picture ends the layout.
func (f *frame) picture(paint func(*canvas.Pen)) *canvas.Picture {
	return canvas.NewPicture(canvas.Layout{
		Kind: f.kind, Compact: f.o.Compact, ID: f.o.ID, Title: f.title, Desc: f.desc, Width: f.width, Height: math.Ceil(f.y + canvas.Margin/2),
		Paint: func(p *canvas.Pen) {
			p.Lines(canvas.Bold(canvas.Black, canvas.Heading), canvas.Margin, canvas.Margin+canvas.Heading, canvas.Start, f.lines)
			paint(p)
			for i, k := range f.key {
				at := f.keyAt[i]
				k.mark(p, at[0]+8, at[1]-4)
				p.Text(keyStyle(), at[0]+24, at[1], canvas.Start, k.text)
			}
		},
	})
}

// grid draws what lies under the marks of a panel.
func (f *frame) grid(p *canvas.Pen, q *panel) {
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	p.Text(st, canvas.Margin, q.box.Y0-9, canvas.Start, st.Clip(q.name, f.width-2*canvas.Margin))
	ticks, decimals := q.y.Ticks(int(q.box.Height() / 30))
	for _, v := range ticks {
		y := q.y.At(v)
		p.HLine(canvas.Faint, q.box.X0, q.box.X1, y)
		p.Text(st, q.box.X0-8, y+4, canvas.End, st.Clip(words.Fixed(v, decimals), q.box.X0-10))
	}
	at, _ := f.ticks()
	for _, v := range at {
		p.VLine(canvas.Faint, f.x.At(v), q.box.Y0, q.box.Y1)
	}
}

// ticks of the axis below.
func (f *frame) ticks() ([]float64, int) {
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	widest := math.Max(st.Width(words.Fixed(f.x.From, 1)), st.Width(words.Fixed(f.x.To, 1)))
	n := int((f.x.X1 - f.x.X0) / (widest + 24))
	if f.xWhole {
		n = min(n, int(f.x.To-f.x.From)+1)
	}
	at, decimals := f.x.Ticks(n)
	if f.xWhole && decimals > 0 {
		return nil, 0
	}
	return at, decimals
}

// over draws what lies over the marks of a panel: its two axes and the names of its lines.
func (f *frame) over(p *canvas.Pen, q *panel) {
	p.HLine(canvas.Black, q.box.X0, q.box.X1, q.box.Y1)
	p.VLine(canvas.Black, q.box.X0, q.box.Y0, q.box.Y1)
	for i := 1; i < len(q.ends); i++ {
		for k := i; k > 0 && q.ends[k].y < q.ends[k-1].y; k-- {
			q.ends[k], q.ends[k-1] = q.ends[k-1], q.ends[k]
		}
	}
	wish, size := make([]float64, len(q.ends)), make([]float64, len(q.ends))
	for i, e := range q.ends {
		wish[i], size[i] = e.y, endHeight
	}
	at, _ := typeset.Spread(wish, size, 0, q.box.Y0-8, q.box.Y1+8)
	for i, e := range q.ends {
		p.Line(canvas.Quiet, canvas.ThinLine, canvas.Solid, [2]float64{q.box.X1 + 1, e.y}, [2]float64{q.box.X1 + 10, at[i]})
		st := canvas.Style{Ink: e.ink, Size: canvas.Small, Bold: e.bold}
		p.Text(st, q.box.X1+13, at[i]+4, canvas.Start, st.Clip(e.text, f.width-canvas.Margin/2-q.box.X1-13))
	}
}

// end names a line of a panel that stands at a figure.
func (q *panel) end(v float64, text string, k canvas.Ink, bold bool) {
	mark := ""
	switch {
	case v > q.y.To:
		mark = " ↑"
	case v < q.y.From:
		mark = " ↓"
	}
	q.ends = append(q.ends, endLabel{q.y.At(v), text + mark, k, bold})
}

// below writes figures and name of the axis under the lowest panel.
func (f *frame) below(p *canvas.Pen) {
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	bottom := f.panels[len(f.panels)-1].box.Y1
	at, decimals := f.ticks()
	free := math.Inf(-1)
	for _, v := range at {
		x, text := f.x.At(v), words.Fixed(v, decimals)
		half := st.Width(text) / 2
		if x-half < free || x+half > f.width-2 {
			continue
		}
		p.Text(st, x, bottom+17, canvas.Middle, text)
		free = x + half + 8
	}
	p.Text(st, f.right, bottom+17+nameBelow, canvas.End, st.Clip(f.xName, f.right-canvas.Margin))
}

// at is the place of two figures in a panel.
func (f *frame) at(q *panel, x, y float64) [2]float64 { return [2]float64{f.x.At(x), q.y.At(y)} }

// level draws a line through a panel at a figure, where the panel shows it.
func (q *panel) level(p *canvas.Pen, k canvas.Ink, width float64, dash canvas.Dash, v float64) {
	if q.y.Has(v) {
		y := canvas.Crisp(q.y.At(v))
		p.Line(k, width, dash, [2]float64{q.box.X0, y}, [2]float64{q.box.X1, y})
	}
}

// inside tells whether a figure can be drawn.
func inside(x float64) bool { return canvas.Finite(x) }

// reach widens an interval so that it holds figures, the odd one that is no number left out.
type reach struct{ from, to float64 }

func newReach() *reach { return &reach{math.Inf(1), math.Inf(-1)} }

func (r *reach) take(list ...float64) {
	for _, x := range list {
		if inside(x) {
			r.from, r.to = math.Min(r.from, x), math.Max(r.to, x)
		}
	}
}

// padded is the interval with a share of room at both ends.
func (r *reach) padded(share float64) (from, to float64) {
	if !(r.from <= r.to) {
		return 0, 1
	}
	room := share * (r.to - r.from)
	if room == 0 {
		room = math.Max(1e-9, 1e-3*math.Abs(r.to))
	}
	return r.from - room, r.to + room
}
