package draw

import (
	"fmt"
	"math"

	"ramplan/press"
	"ramplan/press/words"
)

// rightColumn is the width of what stands beside the strip, px.
const rightColumn = 330

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
	s.texts(g, math.Max(strip, below)+8)
}

func (s *sheet) headline(g *sheetPage, inner rect) (bottom float64) {
	q := paragraph{text: words.Headline(s.p, s.r), style: sheetTitle}
	if s.r.Blocked() {
		q.style.ink = alert
	}
	lines := set([]paragraph{q}, inner.width())
	placed, _ := pour(lines, []rect{{inner.x0, inner.y0 - 4, inner.x1, inner.y1}})
	g.add(func(p *pen) { p.write(placed) })
	return inner.y0 - 4 + depth(lines) + 8
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
	y := box.y0
	if why := words.NotTyped(s.r); why != "" {
		lines := set([]paragraph{{text: why, style: style{alert, sheetLeast, true}}}, box.width())
		placed, _ := pour(lines, []rect{{box.x0, y, box.x1, y + 200}})
		g.add(func(p *pen) { p.write(placed) })
		y += depth(lines) + 4
	}
	top := y
	const row = 19
	g.add(func(p *pen) {
		y := top
		p.text(sheetBold, box.x0, y+sheetLeast, start, "Setpoints")
		y += 1.3 * sheetLeast
		p.line(black, sheetThin, solid, [2]float64{box.x0, y}, [2]float64{box.x1, y})
		for _, q := range list {
			p.text(sheetText, box.x0, y+14, start, q.Label)
			p.text(sheetLarge, box.x0+170, y+14, end, q.Value)
			p.text(sheetText, box.x0+175, y+14, start, q.Unit)
			p.text(sheetQuiet, box.x1, y+14, end, q.From)
			y += row
			p.line(faint, sheetThin, solid, [2]float64{box.x0, y}, [2]float64{box.x1, y})
		}
	})
	return top + 1.3*sheetLeast + row*float64(len(list))
}

// requirement writes what the drawing asks for.
func (s *sheet) requirement(g *sheetPage, box rect) (bottom float64) {
	pos, q := words.PositionsOf(s.p), s.p.Requirement
	text := "seated height " + pos.Bare(q.HeightLow) + " to " + pos.At(q.HeightHigh)
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

// texts fills the band under the drawings: cautions in the column that reaches
// down beside the title block, the others over the block. Of the findings as many
// are shown as there is room for; the rest is counted, and goes on behind.
func (s *sheet) texts(g *sheetPage, top float64) {
	f, block := s.paper.frame(), s.block()
	inner := f.inset(sheetPad)
	first := rect{inner.x0, top, block.x0 - sheetGutter, f.y1 - 6}
	half := (inner.x1 - block.x0 - sheetGutter) / 2
	columns := []rect{{block.x0, top, block.x0 + half, block.y0 - 6}, {inner.x1 - half, top, inner.x1, block.y0 - 6}}

	cautions := []paragraph{headed("Cautions")}
	for _, c := range words.Cautions {
		cautions = append(cautions, item(c))
	}
	placed, rest := pour(set(cautions, first.width()), []rect{first})
	always := []paragraph{headed("What these signals cannot detect")}
	for _, u := range words.Unseen(s.p, s.r) {
		always = append(always, item(u))
	}
	if perfect := words.Perfect(s.r); perfect != "" {
		always = append(always, item(perfect))
	}
	always = append(always, paragraph{opening: "Reading rule:", text: words.ReadingRule, style: sheetText, above: 7})

	all := s.findings()
	for n := len(all); n >= 0; n-- {
		ps := []paragraph{headed("Findings")}
		ps = append(ps, all[:n]...)
		if left := len(all) - n; left > 0 {
			ps = append(ps, paragraph{text: andMore(left, n), style: sheetBold, above: 2})
		}
		if len(all) == 0 {
			ps = append(ps, paragraph{text: "None.", style: sheetText})
		}
		lines := set(append(ps, always...), half)
		more, over := pour(lines, columns)
		if len(over) > 0 && n > 0 {
			continue
		}
		placed = append(placed, more...)
		g.add(func(p *pen) { p.write(placed) })
		s.goOn(all[n:], append(rest, over...))
		return
	}
}

func andMore(left, shown int) string {
	if shown == 0 {
		return fmt.Sprintf("%d on page 2.", left)
	}
	return fmt.Sprintf("And %d more on page 2.", left)
}

// findings are the sentences of the findings, each opened by how grave it is.
func (s *sheet) findings() []paragraph {
	var out []paragraph
	for _, f := range s.r.Findings {
		q := paragraph{opening: upper(string(f.Severity)) + ":", text: f.Message, style: sheetText, above: 2}
		if f.Severity == press.Blocker {
			q.inked = alert
		}
		out = append(out, q)
	}
	return out
}

func upper(word string) string { return string(word[0]-'a'+'A') + word[1:] }

// goOn puts what the first page has no room for on pages of three columns.
func (s *sheet) goOn(findings []paragraph, lines []setLine) {
	body := s.body()
	width := (body.width() - 2*sheetGutter) / 3
	if len(findings) > 0 {
		lines = append(lines, set(append([]paragraph{headed("Findings, continued")}, findings...), width)...)
	}
	for len(lines) > 0 {
		g := s.page("Findings")
		var columns []rect
		for i := range 3 {
			x := body.x0 + float64(i)*(width+sheetGutter)
			columns = append(columns, rect{x, body.y0, x + width, body.y1})
		}
		var placed []placedLine
		placed, lines = pour(lines, columns)
		g.add(func(p *pen) { p.write(placed) })
	}
}
