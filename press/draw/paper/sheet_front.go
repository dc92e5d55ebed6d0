package paper

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
)

// rightColumn is the width of what stands beside the strip, px.
const rightColumn = 334

// front lays out the first page: the message, the strip and what is set beside
// it, then in three columns what has to be known.
func (s *sheet) front() {
	g := s.page("Plan")
	inner := s.paper.frame().Inset(sheetPad)
	y := s.headline(g, inner)
	left := canvas.Rect(inner.X0, y, inner.X1-rightColumn-sheetGutter, 0)
	right := canvas.Rect(inner.X1-rightColumn, y, inner.X1, 0)
	strip := s.drawing(g, draw.NewStrip, draw.Options{NoTitle: true, Flat: true, Spread: s.r.PaperSpread()}, left, draw.StripLeast)
	below := s.setpoints(g, right)
	below = s.requirement(g, canvas.Rect(right.X0, below+8, right.X1, 0))
	below = s.drawing(g, draw.NewForce, draw.Options{NoTitle: true, Flat: true, Compact: true}, canvas.Rect(right.X0, below+8, right.X1, 0), draw.ChartCompactLeast)
	s.texts(g, strip+5, below+7)
}

func (s *sheet) headline(g *sheetPage, inner canvas.Rectangle) (bottom float64) {
	text, _ := say.MarkedHeadline(s.p, s.r)
	q := typeset.Paragraph{Text: text, Style: typeset.Title}
	box := canvas.Rect(inner.X0, inner.Y0-4, inner.X1, inner.Y1)
	if s.r.Blocked() {
		q.Style.Ink = canvas.Alert
		box.X0 += 1.4 * q.Style.Size
		g.add(func(p *canvas.Pen) { warningSign(p, canvas.Alert, inner.X0, box.Y0+0.2*q.Style.Size, q.Style.Size) })
	}
	if fits := sheetTitleLeast; q.Style.Width(q.Text) > box.Width() && q.Style.Width(q.Text)*fits/q.Style.Size <= box.Width() {
		q.Style.Size *= box.Width() / q.Style.Width(q.Text)
	}
	lines := typeset.Set([]typeset.Paragraph{q}, box.Width())
	if len(lines) > 2 { // a long one leaves the room to what follows
		q.Style.Size = min(q.Style.Size, sheetTitleLeast)
		lines = typeset.Set([]typeset.Paragraph{q}, box.Width())
	}
	placed, _ := typeset.Pour(lines, []canvas.Rectangle{box})
	g.add(func(p *canvas.Pen) { typeset.Write(p, placed) })
	return box.Y0 + typeset.Depth(lines) + 8
}

// warningSign draws a warning triangle into a square by its upper left corner: what is
// wrong is not said by an ink alone.
func warningSign(p *canvas.Pen, k canvas.Ink, x, y, size float64) {
	middle, foot := x+size/2, y+0.9*size
	p.Area(k, [2]float64{middle, y}, [2]float64{x + size, foot}, [2]float64{x, foot})
	bar := size / 12
	p.Fill(canvas.Paper, canvas.Rect(middle-bar, y+0.32*size, middle+bar, y+0.62*size))
	p.Fill(canvas.Paper, canvas.Rect(middle-bar, y+0.68*size, middle+bar, y+0.8*size))
}

// drawing puts a drawing into a box by its upper edge, its own margins cut off.
func (s *sheet) drawing(g *sheetPage, draw func(*press.Plan, *press.Result, draw.Options) *canvas.Picture, o draw.Options, box canvas.Rectangle, least float64) (bottom float64) {
	k := sheetScale
	o.Width = math.Max(box.Width()/k+2*canvas.Margin, least)
	d := draw(s.p, s.r, o)
	k = canvas.Fit(d.Width-2*canvas.Margin, box.Width(), k)
	g.add(func(p *canvas.Pen) { p.Within(box.X0-k*canvas.Margin, box.Y0-k*canvas.Margin, k, d.Paint) })
	return box.Y0 + k*(d.Height-2*canvas.Margin)
}

// setpoints writes what is typed into the controller.
func (s *sheet) setpoints(g *sheetPage, box canvas.Rectangle) (bottom float64) {
	list := say.Setpoints(s.p, s.r)
	heading, top := typeset.Strong, box.Y0
	title := "Setpoints"
	if s.r.Blocked() {
		heading.Ink = canvas.Alert
		title = say.SetpointsNotReady()
	}
	const row = 16
	g.add(func(p *canvas.Pen) {
		y := top
		p.Text(heading, box.X0, y+typeset.Least, canvas.Start, title)
		y += 1.3 * typeset.Least
		p.Line(canvas.Black, typeset.Thin, canvas.Solid, [2]float64{box.X0, y}, [2]float64{box.X1, y})
		for _, q := range list {
			p.Text(typeset.Text, box.X0, y+12.5, canvas.Start, q.Label)
			p.Text(typeset.Large, box.X0+170, y+12.5, canvas.End, q.Value)
			p.Text(typeset.Text, box.X0+175, y+12.5, canvas.Start, q.Unit)
			p.Text(typeset.Quiet, box.X1, y+12.5, canvas.End, q.Source(s.o.Issue != nil))
			y += row
			p.Line(canvas.Faint, typeset.Thin, canvas.Solid, [2]float64{box.X0, y}, [2]float64{box.X1, y})
		}
	})
	return top + 1.3*typeset.Least + row*float64(len(list))
}

// requirement writes what the drawing asks for.
func (s *sheet) requirement(g *sheetPage, box canvas.Rectangle) (bottom float64) {
	pos, q := say.Positions(s.p), s.p.Requirement
	text := say.SeatedHeight(s.p) + " " + pos.Bare(q.HeightLow) + " to " + pos.At(q.HeightHigh)
	if q.MinSeatingForce > 0 {
		text += say.LeftOnTheSeat(q.MinSeatingForce)
	}
	ps := []typeset.Paragraph{
		{Opening: "Requirement:", Text: text + ". " + say.WindowStands(s.p) + ".", Style: typeset.Text},
		{Opening: "Force:", Text: say.ForceTitle(s.r) + ".", Style: typeset.Text, Above: 3},
	}
	if s := say.StrokeAfterProbe(s.p, s.r); s != "" {
		ps = append(ps, typeset.Paragraph{Opening: say.PushStrokeHead(), Text: s, Style: typeset.Text, Above: 3})
	}
	lines := typeset.Set(ps, box.Width())
	placed, _ := typeset.Pour(lines, []canvas.Rectangle{canvas.Rect(box.X0, box.Y0, box.X1, box.Y0+1000)})
	g.add(func(p *canvas.Pen) { typeset.Write(p, placed) })
	return box.Y0 + typeset.Depth(lines)
}
