package draw

import (
	"fmt"
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
	s.texts(g, strip+5, below+5)
}

func (s *sheet) headline(g *sheetPage, inner rect) (bottom float64) {
	q := paragraph{text: words.Headline(s.p, s.r), style: sheetTitle}
	if s.r.Blocked() {
		q.style.ink = alert
	}
	if fits := sheetTitleLeast; q.style.width(q.text) > inner.width() && q.style.width(q.text)*fits/q.style.size <= inner.width() {
		q.style.size *= inner.width() / q.style.width(q.text)
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
	heading, top := sheetBold, box.y0
	title := "Setpoints"
	if s.r.Blocked() {
		heading.ink = alert
		title = "Setpoints, not ready to be typed in"
	}
	const row = 17
	g.add(func(p *pen) {
		y := top
		p.text(heading, box.x0, y+sheetLeast, start, title)
		y += 1.3 * sheetLeast
		p.line(black, sheetThin, solid, [2]float64{box.x0, y}, [2]float64{box.x1, y})
		for _, q := range list {
			p.text(sheetText, box.x0, y+13, start, q.Label)
			p.text(sheetLarge, box.x0+170, y+13, end, q.Value)
			p.text(sheetText, box.x0+175, y+13, start, q.Unit)
			p.text(sheetQuiet, box.x1, y+13, end, q.From)
			y += row
			p.line(faint, sheetThin, solid, [2]float64{box.x0, y}, [2]float64{box.x1, y})
		}
	})
	return top + 1.3*sheetLeast + row*float64(len(list))
}

// requirement writes what the drawing asks for.
func (s *sheet) requirement(g *sheetPage, box rect) (bottom float64) {
	pos, q := words.PositionsOf(s.p), s.p.Requirement
	text := "seated " + pos.Bare(q.HeightLow) + " to " + pos.At(q.HeightHigh)
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

// texts fills what the drawings leave free: cautions in the column that reaches
// down beside the title block, under the strip, and the others over the block. Of
// the findings as many are shown as there is room for; the rest is counted, and
// goes on behind.
func (s *sheet) texts(g *sheetPage, underStrip, underForce float64) {
	f, block := s.paper.frame(), s.block()
	inner := f.inset(sheetPad)
	first := rect{inner.x0, underStrip, block.x0 - sheetGutter, f.y1 - 6}
	bottom := block.y0 - 4
	last := rect{inner.x1 - rightColumn, underForce, inner.x1, bottom}
	columns := []rect{{block.x0, underStrip, last.x0 - sheetGutter, bottom}, last}
	width := math.Min(columns[0].width(), last.width())

	beside, rest := s.beside(first)
	always := append(rest, s.unseen()...)
	all := s.findings()
	for _, c := range choices(len(all), s.r.Count(press.Blocker), len(always)) {
		placed, over := twoColumns(headedFindings(all, c.findings), headedFew(always, c.others), width, columns)
		if len(over) > 0 {
			continue
		}
		g.add(func(p *pen) { p.write(append(beside, placed...)) })
		s.goOn(all[c.findings:], always[c.others:])
		return
	}
	g.add(func(p *pen) { p.write(beside) })
	s.goOn(all, always)
}

// choice is how many of the findings and of the other texts stand on the first
// page.
type choice struct{ findings, others int }

// choices lists what may stand there, the best first: fewer findings, then fewer
// other texts, and the blockers go last.
func choices(findings, blockers, others int) []choice {
	var out []choice
	for n := findings; n >= blockers; n-- {
		out = append(out, choice{n, others})
	}
	for m := others - 1; m > 0; m-- {
		out = append(out, choice{blockers, m})
	}
	for n := blockers; n >= 0; n-- {
		out = append(out, choice{n, 0})
	}
	return out
}

// twoColumns gives each of two texts a column where they fit, else lets the second
// begin under the first.
func twoColumns(one, two []paragraph, width float64, columns []rect) (placed []placedLine, over []setLine) {
	left, overLeft := pour(set(one, columns[0].width()), columns[:1])
	right, overRight := pour(set(two, columns[1].width()), columns[1:])
	if len(overLeft)+len(overRight) == 0 {
		return append(left, right...), nil
	}
	return pour(set(append(one, two...), width), columns)
}

// beside places cautions, and the reading rule under them, as far as there is room
// for them; the rest goes elsewhere.
func (s *sheet) beside(box rect) (placed []placedLine, rest []paragraph) {
	rule := paragraph{opening: "Reading rule:", text: words.ReadingRule, style: sheetText, above: 7}
	all := []paragraph{headed("Cautions")}
	for _, c := range words.Cautions {
		all = append(all, item(c))
	}
	all = append(all, rule)
	for n := len(all); n > 1; n-- {
		if placed, over := pour(set(all[:n], box.width()), []rect{box}); len(over) == 0 {
			if n < len(all)-1 {
				rest = append(rest, rule, headed("More cautions"))
				return placed, append(rest, all[n:len(all)-1]...)
			}
			return placed, all[n:]
		}
	}
	return nil, append([]paragraph{rule}, all[:len(all)-1]...)
}

// unseen is what has to be known whatever the findings are.
func (s *sheet) unseen() []paragraph {
	out := []paragraph{headed("What these signals cannot detect")}
	for _, u := range words.Unseen(s.p, s.r) {
		out = append(out, item(u))
	}
	if perfect := words.Perfect(s.r); perfect != "" {
		out = append(out, item(perfect))
	}
	return out
}

// headedFew are the first n of the other texts, and how many more there are.
func headedFew(all []paragraph, n int) []paragraph {
	if n == len(all) {
		return all
	}
	return append(all[:n:n], paragraph{text: andMore(len(all)-n, n), style: sheetBold, above: 2})
}

// headedFindings are the first n findings under their heading, and how many more
// there are.
func headedFindings(all []paragraph, n int) []paragraph {
	ps := append([]paragraph{headed("Findings")}, all[:n]...)
	switch left := len(all) - n; {
	case len(all) == 0:
		ps = append(ps, paragraph{text: "None.", style: sheetText})
	case left > 0:
		ps = append(ps, paragraph{text: andMore(left, n), style: sheetBold, above: 2})
	}
	return ps
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
func (s *sheet) goOn(findings, others []paragraph) {
	body := s.body()
	width := (body.width() - 2*sheetGutter) / 3
	var ps []paragraph
	if len(findings) > 0 {
		ps = append(append(ps, headed("Findings, continued")), findings...)
	}
	if len(others) > 0 {
		ps = append(append(ps, headed("Continued from page 1")), others...)
	}
	if cut := s.title.cut(); len(cut) > 0 {
		ps = append(append(ps, headed("Fields of the title block, whole")), cut...)
	}
	lines := set(ps, width)
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
