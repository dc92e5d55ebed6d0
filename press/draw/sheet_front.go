package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/words"
)

// rightColumn is the width of what stands beside the strip, px.
const rightColumn = 334

// front lays out the first page: the message, the strip and what is set beside
// it, then in three columns what has to be known.
func (s *sheet) front() {
	g := s.page("Plan")
	inner := s.paper.frame().inset(sheetPad)
	y := s.headline(g, inner)
	left := rect{inner.x0, y, inner.x1 - rightColumn - sheetGutter, 0}
	right := rect{inner.x1 - rightColumn, y, inner.x1, 0}
	strip := s.drawing(g, NewStrip, Options{NoTitle: true, Flat: true}, left, stripWideLeast)
	below := s.setpoints(g, right)
	below = s.requirement(g, rect{right.x0, below + 8, right.x1, 0})
	below = s.drawing(g, NewForce, Options{NoTitle: true, Flat: true, Compact: true}, rect{right.x0, below + 8, right.x1, 0}, chartCompactLeast)
	s.texts(g, strip+5, below+7)
}

func (s *sheet) headline(g *sheetPage, inner rect) (bottom float64) {
	q := paragraph{text: words.Headline(s.p, s.r), style: sheetTitle}
	box := rect{inner.x0, inner.y0 - 4, inner.x1, inner.y1}
	if s.r.Blocked() {
		q.style.ink = alert
		box.x0 += 1.4 * q.style.size
		g.add(func(p *pen) { p.warning(alert, inner.x0, box.y0+0.2*q.style.size, q.style.size) })
	}
	if fits := sheetTitleLeast; q.style.width(q.text) > box.width() && q.style.width(q.text)*fits/q.style.size <= box.width() {
		q.style.size *= box.width() / q.style.width(q.text)
	}
	lines := set([]paragraph{q}, box.width())
	if len(lines) > 2 { // a long one leaves the room to what follows
		q.style.size = min(q.style.size, sheetTitleLeast)
		lines = set([]paragraph{q}, box.width())
	}
	placed, _ := pour(lines, []rect{box})
	g.add(func(p *pen) { p.write(placed) })
	return box.y0 + depth(lines) + 8
}

// warning draws a warning triangle into a square by its upper left corner: what is
// wrong is not said by an ink alone.
func (p *pen) warning(k ink, x, y, size float64) {
	middle, foot := x+size/2, y+0.9*size
	p.area(k, [2]float64{middle, y}, [2]float64{x + size, foot}, [2]float64{x, foot})
	bar := size / 12
	p.fill(paper, rect{middle - bar, y + 0.32*size, middle + bar, y + 0.62*size})
	p.fill(paper, rect{middle - bar, y + 0.68*size, middle + bar, y + 0.8*size})
}

// drawing puts a drawing into a box by its upper edge, its own margins cut off.
func (s *sheet) drawing(g *sheetPage, draw func(*press.Plan, *press.Result, Options) *Picture, o Options, box rect, least float64) (bottom float64) {
	k := sheetScale
	o.Width = math.Max(box.width()/k+2*margin, least)
	d := draw(s.p, s.r, o)
	k = fit(d.width-2*margin, box.width(), k)
	g.add(func(p *pen) { p.within(box.x0-k*margin, box.y0-k*margin, k, d.paint) })
	return box.y0 + k*(d.height-2*margin)
}

// setpoints writes what is typed into the controller.
func (s *sheet) setpoints(g *sheetPage, box rect) (bottom float64) {
	list := words.Setpoints(s.p, s.r)
	heading, top := sheetBold, box.y0
	title := "Setpoints"
	if s.r.Blocked() {
		heading.ink = alert
		title = "Setpoints, not ready to be typed in"
	}
	const row = 16
	g.add(func(p *pen) {
		y := top
		p.text(heading, box.x0, y+sheetLeast, start, title)
		y += 1.3 * sheetLeast
		p.line(black, sheetThin, solid, [2]float64{box.x0, y}, [2]float64{box.x1, y})
		for _, q := range list {
			p.text(sheetText, box.x0, y+12.5, start, q.Label)
			p.text(sheetLarge, box.x0+170, y+12.5, end, q.Value)
			p.text(sheetText, box.x0+175, y+12.5, start, q.Unit)
			p.text(sheetQuiet, box.x1, y+12.5, end, q.Source(s.o.Issue != nil))
			y += row
			p.line(faint, sheetThin, solid, [2]float64{box.x0, y}, [2]float64{box.x1, y})
		}
	})
	return top + 1.3*sheetLeast + row*float64(len(list))
}

// requirement writes what the drawing asks for.
func (s *sheet) requirement(g *sheetPage, box rect) (bottom float64) {
	pos, q := words.PositionsOf(s.p), s.p.Requirement
	text := words.SeatedHeight(s.p) + " " + pos.Bare(q.HeightLow) + " to " + pos.At(q.HeightHigh)
	if q.MinSeatingForce > 0 {
		text += ", at least " + words.Force(q.MinSeatingForce) + " left on the seat"
	}
	ps := []paragraph{
		{opening: "Requirement:", text: text + ".", style: sheetText},
		{opening: "Force:", text: words.ForceTitle(s.r) + ".", style: sheetText, above: 3},
	}
	lines := set(ps, box.width())
	placed, _ := pour(lines, []rect{{box.x0, box.y0, box.x1, box.y0 + 1000}})
	g.add(func(p *pen) { p.write(placed) })
	return box.y0 + depth(lines)
}
