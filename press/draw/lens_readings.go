package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/words"
)

// figure writes a figure of a ruler.
func figure(v float64, decimals int) string { return words.Fixed(v, decimals) }

// requirement draws what the drawing allows as a dimension line, with its guard
// bands; crossed edges where the bands leave nothing.
func (l *lens) requirement(p *pen, r lensRow) {
	m := l.m
	x0, x1 := l.scale.x(m.requirement[0]), l.scale.x(m.requirement[1])
	y := crisp(r.box.y0 + 23)
	for _, x := range []float64{x0, x1} {
		p.vline(black, x, y-7, r.box.y1)
	}
	p.line(black, thinLine, solid, [2]float64{x0, y}, [2]float64{x1, y})
	if x1-x0 > 24 {
		p.arrow(black, x0, y, -9)
		p.arrow(black, x1, y, 9)
	}
	a0, a1 := l.scale.x(m.acceptance[0]), l.scale.x(m.acceptance[1])
	band := rect{x0, y + 5, x1, y + 15}
	if m.nothingLeft {
		l.crossed(p, a1, a0, y+10)
	} else {
		p.fill(good.tint(fillTint), band)
		p.guard(rect{x0, band.y0, a0, band.y1})
		p.guard(rect{a1, band.y0, x1, band.y1})
	}
	l.requirementWords(p, r, x0, x1)
}

// guard draws one guard band.
func (p *pen) guard(r rect) {
	if r.x1-r.x0 < 1 {
		return
	}
	p.fill(paper, r)
	p.fill(good.tint(fillTint), r)
	p.hatch(good.tint(0.8), hatch{rising: true, falling: true, gap: 3}, r)
	p.frame(good, thinLine, solid, r)
}

// crossed draws two edges that have passed one another, and what lies between.
// The thick lines tell it from the zone in grey.
func (l *lens) crossed(p *pen, from, to, y float64) {
	p.hatch(alert, crossHatch, rect{from, y - 6, to, y + 6})
	for _, e := range []struct{ x, to float64 }{{to, 12}, {from, -12}} {
		p.line(alert, 2*outline, solid, [2]float64{e.x, y - 11}, [2]float64{e.x, y + 11})
		p.line(alert, 2*outline, solid, [2]float64{e.x, y}, [2]float64{e.x + e.to, y})
		p.arrow(alert, e.x+e.to+math.Copysign(3, e.to), y, math.Copysign(7, e.to))
	}
}

// requirementWords says where good, long and short begin.
func (l *lens) requirementWords(p *pen, r lensRow, x0, x1 float64) {
	m := l.m
	y := r.box.y0 + 12
	st := style{good, small, true}
	text := "required " + m.pos.Bare(m.requirement[0]) + " to " + m.pos.Bare(m.requirement[1])
	if m.nothingLeft {
		st = style{alert, small, true}
		text = "the guard bands overlap by " + m.pos.Length(m.acceptance[0]-m.acceptance[1])
	}
	half := st.width(text) / 2
	at := math.Max(r.box.x0+half+6, math.Min((x0+x1)/2, r.box.x1-half-6))
	p.onPaper(st, at, y, middle, text)
	sides := []sideWord{{words.Say(press.Long), long, math.Min(x0, at-half) - 12, end}, {words.Say(press.Short), short, math.Max(x1, at+half) + 12, start}}
	if !sides[0].fits(r.box) || !sides[1].fits(r.box) { // too tall is tall, where there is no room, and then on both sides
		sides[0].text, sides[1].text = briefly(press.Long), briefly(press.Short)
	}
	for _, s := range sides {
		if !s.fits(r.box) {
			continue
		}
		if w := s.style().width(s.text); l.guided(s.x-w, s.x+w) {
			p.onPaper(s.style(), s.x, y, s.side, s.text)
		} else {
			p.text(s.style(), s.x, y, s.side, s.text)
		}
	}
}

// A sideWord is the word for what lies on one side of the requirement.
type sideWord struct {
	text string
	ink  ink
	x    float64
	side anchor
}

func (s sideWord) style() style { return style{s.ink, small, true} }

func (s sideWord) fits(box rect) bool {
	w := s.style().width(s.text)
	return s.side == end && s.x-w > box.x0+4 || s.side == start && s.x+w < box.x1-4
}

// density draws the spread of seated readings, standing on the ruler. What lies
// outside the window is hatched like the fate it meets.
func (l *lens) density(p *pen, r lensRow) {
	base := r.box.y1 + 8
	top := 0.0
	for _, q := range l.m.density {
		if finite(q[0]) && finite(q[1]) {
			top = math.Max(top, q[1])
		}
	}
	var curve [][2]float64
	for _, q := range l.m.density {
		if top <= 0 || !finite(q[0]) || !finite(q[1]) || !l.scale.has(q[0]) {
			continue
		}
		curve = append(curve, [2]float64{l.scale.x(q[0]), base - (base-r.box.y0)*math.Max(0, q[1])/top})
	}
	if len(curve) > 1 {
		l.under(p, curve, base)
		p.line(black, outline, solid, curve...)
	}
	x := l.scale.x(l.m.seat)
	if l.scale.has(l.m.seat) {
		p.line(quiet, thinLine, centring, [2]float64{crisp(x), r.box.y0}, [2]float64{crisp(x), base})
	}
}

// under fills what lies under the curve, in the colour of the fate it meets.
func (l *lens) under(p *pen, curve [][2]float64, base float64) {
	fields := l.visible()
	if len(fields) == 0 {
		p.area(black.tint(fillTint), cut(curve, l.scale.x0, l.scale.x1, base)...)
		return
	}
	for _, f := range fields {
		if shape := cut(curve, l.scale.x(f.from), l.scale.x(f.to), base); len(shape) > 2 {
			p.area(f.fate.ink().tint(2*f.fate.tint()), shape...)
			p.hatchUnder(f.fate.hatchInk(), f.fate.hatch(), shape)
		}
	}
}

// cut gives the shape between a curve and its base, from x0 to x1.
func cut(curve [][2]float64, x0, x1, base float64) [][2]float64 {
	var shape [][2]float64
	add := func(x, y float64) {
		if len(shape) == 0 {
			shape = append(shape, [2]float64{x, base})
		}
		shape = append(shape, [2]float64{x, y})
	}
	for i, q := range curve {
		if i > 0 && curve[i-1][0] < q[0] {
			a := curve[i-1]
			for _, x := range []float64{x0, x1} {
				if x > a[0] && x < q[0] {
					add(x, a[1]+(q[1]-a[1])*(x-a[0])/(q[0]-a[0]))
				}
			}
		}
		if q[0] >= x0 && q[0] <= x1 {
			add(q[0], q[1])
		}
	}
	if n := len(shape); n > 0 {
		shape = append(shape, [2]float64{shape[n-1][0], base})
	}
	return shape
}

// ruler of the lens.
func (l *lens) ruler(p *pen, r lensRow) {
	p.hline(black, r.box.x0, r.box.x1, r.box.y0)
	st := style{black, small, false}
	probe := st.width(figure(l.scale.to, 2)) + 14
	ticks, decimals := l.scale.ticks(int((r.box.x1 - r.box.x0) / probe))
	for _, v := range l.scale.minor(ticks) {
		p.vline(quiet, l.scale.x(v), r.box.y0, r.box.y0+3)
	}
	free := r.box.x0 + 4
	for _, v := range ticks {
		x := l.scale.x(v)
		p.vline(black, x, r.box.y0, r.box.y0+6)
		text := figure(v, decimals)
		half := st.width(text) / 2
		if x-half < free || x+half > r.box.x1-4 {
			continue
		}
		p.onPaper(st, x, r.box.y0+19, middle, text)
		free = x + half + 8
	}
}
