package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/words"
)

// figure writes a figure of a ruler.
func figure(v float64, decimals int) string { return words.Fixed(v, decimals) }

// requirement draws what the drawing allows as a dimension line, with its guard
// bands; crossed edges where the bands leave nothing.
func (l *lens) requirement(p *canvas.Pen, r lensRow) {
	m := l.m
	x0, x1 := l.scale.At(m.requirement[0]), l.scale.At(m.requirement[1])
	y := canvas.Crisp(r.box.Y0 + 23)
	for _, x := range []float64{x0, x1} {
		p.VLine(canvas.Black, x, y-7, r.box.Y1)
	}
	p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{x0, y}, [2]float64{x1, y})
	if x1-x0 > 24 {
		p.Arrow(canvas.Black, x0, y, -9)
		p.Arrow(canvas.Black, x1, y, 9)
	}
	a0, a1 := l.scale.At(m.acceptance[0]), l.scale.At(m.acceptance[1])
	band := canvas.Rect(x0, y+5, x1, y+15)
	switch {
	case m.nothingLeft && m.ruled != "":
		p.Hatch(canvas.Alert, canvas.CrossHatch, band)
	case m.nothingLeft:
		l.crossed(p, a1, a0, y+10)
	default:
		p.Fill(canvas.Good.Tint(canvas.FillTint), band)
		drawGuard(p, canvas.Rect(x0, band.Y0, a0, band.Y1))
		drawGuard(p, canvas.Rect(a1, band.Y0, x1, band.Y1))
	}
	l.requirementWords(p, r, x0, x1)
}

// left says what the window leaves out of the requirement.
func (m *stripModel) left() string {
	if m.ruled != "" {
		return "window " + m.ruled
	}
	return say.GuardBands(m.pos, m.guard)
}

// drawGuard draws one guard band.
func drawGuard(p *canvas.Pen, r canvas.Rectangle) {
	if r.X1-r.X0 < 1 {
		return
	}
	p.Fill(canvas.Paper, r)
	p.Fill(canvas.Good.Tint(canvas.FillTint), r)
	p.Hatch(canvas.Good.Tint(0.8), canvas.Hatch{Rising: true, Falling: true, Gap: 3}, r)
	p.Frame(canvas.Good, canvas.ThinLine, canvas.Solid, r)
}

// crossed draws two edges that have passed one another, and what lies between.
// The thick lines tell it from the zone in grey.
func (l *lens) crossed(p *canvas.Pen, from, to, y float64) {
	p.Hatch(canvas.Alert, canvas.CrossHatch, canvas.Rect(from, y-6, to, y+6))
	for _, e := range []struct{ x, to float64 }{{to, 12}, {from, -12}} {
		p.Line(canvas.Alert, 2*canvas.Outline, canvas.Solid, [2]float64{e.x, y - 11}, [2]float64{e.x, y + 11})
		p.Line(canvas.Alert, 2*canvas.Outline, canvas.Solid, [2]float64{e.x, y}, [2]float64{e.x + e.to, y})
		p.Arrow(canvas.Alert, e.x+e.to+math.Copysign(3, e.to), y, math.Copysign(7, e.to))
	}
}

// requirementWords says where good, long and short begin.
func (l *lens) requirementWords(p *canvas.Pen, r lensRow, x0, x1 float64) {
	m := l.m
	y := r.box.Y0 + 12
	st := canvas.Bold(canvas.Good, canvas.Small)
	text := "required " + m.pos.Bare(m.requirement[0]) + " to " + m.pos.Bare(m.requirement[1])
	if m.nothingLeft {
		st = canvas.Bold(canvas.Alert, canvas.Small)
		text = say.GuardBandsOverlap(m.pos, m.acceptance[0]-m.acceptance[1])
		if m.ruled != "" {
			text = say.NoWindow(m.ruled)
		}
	}
	half := st.Width(text) / 2
	at := math.Max(r.box.X0+half+6, math.Min((x0+x1)/2, r.box.X1-half-6))
	p.OnPaper(st, at, y, canvas.Middle, text)
	sides := []sideWord{{words.Say(press.Long), canvas.Long, math.Min(x0, at-half) - 12, canvas.End}, {words.Say(press.Short), canvas.Short, math.Max(x1, at+half) + 12, canvas.Start}}
	if !sides[0].fits(r.box) || !sides[1].fits(r.box) { // too tall is tall, where there is no room, and then on both sides
		sides[0].text, sides[1].text = briefly(press.Long), briefly(press.Short)
	}
	for _, s := range sides {
		if !s.fits(r.box) {
			continue
		}
		if w := s.style().Width(s.text); l.guided(s.x-w, s.x+w) {
			p.OnPaper(s.style(), s.x, y, s.side, s.text)
		} else {
			p.Text(s.style(), s.x, y, s.side, s.text)
		}
	}
}

// A sideWord is the word for what lies on one side of the requirement.
type sideWord struct {
	text string
	ink  canvas.Ink
	x    float64
	side canvas.Anchor
}

func (s sideWord) style() canvas.Style { return canvas.Bold(s.ink, canvas.Small) }

func (s sideWord) fits(box canvas.Rectangle) bool {
	w := s.style().Width(s.text)
	return s.side == canvas.End && s.x-w > box.X0+4 || s.side == canvas.Start && s.x+w < box.X1-4
}

// density draws the spread of seated readings, standing on the ruler. What lies
// outside the window is hatched like the fate it meets.
func (l *lens) density(p *canvas.Pen, r lensRow) {
	base := r.box.Y1 + 8
	top := highest(l.m.density, nil)
	var curve [][2]float64
	for _, q := range l.m.density {
		if top <= 0 || !canvas.Finite(q[0]) || !canvas.Finite(q[1]) || !l.scale.Has(q[0]) {
			continue
		}
		curve = append(curve, [2]float64{l.scale.At(q[0]), base - (base-r.box.Y0)*math.Max(0, q[1])/top})
	}
	if len(curve) > 1 {
		l.under(p, curve, base)
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, curve...)
	}
	l.stalledReadings(p, r, base)
	x := l.scale.At(l.m.seat)
	if l.scale.Has(l.m.seat) {
		p.Line(canvas.Quiet, canvas.ThinLine, canvas.Centring, [2]float64{canvas.Crisp(x), r.box.Y0}, [2]float64{canvas.Crisp(x), base})
	}
}

// under fills what lies under the curve, in the colour of the fate it meets.
func (l *lens) under(p *canvas.Pen, curve [][2]float64, base float64) {
	fields := l.visible()
	if len(fields) == 0 {
		p.Area(canvas.Black.Tint(canvas.FillTint), cut(curve, l.scale.X0, l.scale.X1, base)...)
		return
	}
	for _, f := range fields {
		if shape := cut(curve, l.scale.At(f.from), l.scale.At(f.to), base); len(shape) > 2 {
			p.Area(f.fate.ink().Tint(2*f.fate.tint()), shape...)
			p.HatchUnder(f.fate.hatchInk(), f.fate.hatch(), shape)
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
func (l *lens) ruler(p *canvas.Pen, r lensRow) {
	p.HLine(canvas.Black, r.box.X0, r.box.X1, r.box.Y0)
	st := canvas.Plain(canvas.Black, canvas.Small)
	probe := st.Width(figure(l.scale.To, 2)) + 14
	ticks, decimals := l.scale.Ticks(int((r.box.X1 - r.box.X0) / probe))
	for _, v := range l.scale.Minor(ticks) {
		p.VLine(canvas.Quiet, l.scale.At(v), r.box.Y0, r.box.Y0+3)
	}
	free := r.box.X0 + 4
	for _, v := range ticks {
		x := l.scale.At(v)
		p.VLine(canvas.Black, x, r.box.Y0, r.box.Y0+6)
		text := figure(v, decimals)
		half := st.Width(text) / 2
		if x-half < free || x+half > r.box.X1-4 {
			continue
		}
		p.OnPaper(st, x, r.box.Y0+19, canvas.Middle, text)
		free = x + half + 8
	}
}
