package draw

import (
	"math"

	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
)

// strokeRuler is the whole stroke to scale, with what begins where.
type strokeRuler struct {
	m       *stripModel
	scale   canvas.Scale
	labels  typeset.Callouts
	bar     canvas.Rectangle
	numbers float64 // baseline of the figures under the bar
	bottom  float64
}

const barHeight = 12

// passedLeast is the least width, in px, of the push past the seat that is drawn: less
// lies under the lens.
const passedLeast = 3

func layStrokeRuler(m *stripModel, left, right, top float64) strokeRuler {
	r := strokeRuler{m: m, scale: canvas.NewScale(m.stroke[0], m.stroke[1], left, right)}
	var items []typeset.Callout
	for _, s := range m.stops {
		k := canvas.Plain(canvas.Black, canvas.Small)
		if s.wrong {
			k = canvas.Bold(canvas.Alert, canvas.Small)
		}
		items = append(items, typeset.Callout{X: r.scale.At(s.at), Lines: []string{s.name, s.note}, Style: k})
	}
	r.labels = typeset.LayCallouts(items, left, right)
	y := top + r.labels.Height()
	r.bar = canvas.Rect(left, y, right, y+barHeight)
	r.numbers = r.bar.Y1 + 8 + canvas.Small
	r.bottom = r.numbers + 4
	return r
}

// glass gives the edges, in px, of the piece that the lens shows: never so narrow
// that it cannot be seen.
func (r strokeRuler) glass() (x0, x1 float64) {
	x0, x1 = r.scale.At(r.m.lens[0]), r.scale.At(r.m.lens[1])
	if x1-x0 < 3 {
		mid := math.Max(r.scale.X0+1.5, math.Min((x0+x1)/2, r.scale.X1-1.5))
		x0, x1 = mid-1.5, mid+1.5
	}
	return x0, x1
}

func (r strokeRuler) paint(p *canvas.Pen) {
	p.Fill(canvas.Paper, r.bar)
	r.stretches(p)
	if x := r.scale.At(r.m.reach); x < r.bar.X1-0.5 {
		p.Hatch(canvas.Alert, canvas.CrossHatch, canvas.Rect(x, r.bar.Y0, r.bar.X1, r.bar.Y1))
		p.Line(canvas.Alert, canvas.Outline, canvas.Solid, [2]float64{x, r.bar.Y0 - 3}, [2]float64{x, r.bar.Y1 + 3})
	}
	p.Frame(canvas.Black, canvas.ThinLine, canvas.Solid, canvas.Rect(canvas.Crisp(r.bar.X0), canvas.Crisp(r.bar.Y0), canvas.Crisp(r.bar.X1), canvas.Crisp(r.bar.Y1)))
	x0, x1 := r.glass()
	p.Fill(canvas.Black, canvas.Rect(x0, r.bar.Y0-3, x1, r.bar.Y1+3))
	r.figures(p)
	r.labels.Above(p, r.bar.Y0)
}

// stretches of the stroke: the fast approach with arrows, slow contact, press-in, and
// with arrows where a push goes on past the seat.
func (r strokeRuler) stretches(p *canvas.Pen) {
	s := r.m.stops
	at := func(i int) float64 { return r.scale.At(s[i].at) }
	mid := (r.bar.Y0 + r.bar.Y1) / 2
	if from, to := at(0), at(1); to > from {
		p.Fill(canvas.Black.Tint(canvas.QuietTint), canvas.Rect(from, r.bar.Y0, to, r.bar.Y1))
		for x := from + 20; x < to-4; x += 36 {
			p.Arrow(canvas.Quiet.Tint(0.55), x, mid, 8)
		}
	}
	if from, to := at(1), at(2); to > from {
		p.Fill(canvas.Black.Tint(2*canvas.QuietTint), canvas.Rect(from, r.bar.Y0, to, r.bar.Y1))
	}
	if end := r.m.rest; end > s[2].at {
		p.Fill(canvas.Black.Tint(0.45), canvas.Rect(at(2), r.bar.Y0, r.scale.At(end), r.bar.Y1))
	}
	if from, to, ok := r.passed(); ok {
		p.Fill(canvas.Black.Tint(0.22), canvas.Rect(from, r.bar.Y0, to, r.bar.Y1))
		for x := from + 10; x < to-4; x += 18 {
			p.Arrow(canvas.Quiet, x, mid, 8)
		}
	}
}

// passed gives the stretch, in px, that the push goes on through where no part stops the
// ram, as far as the ram can go; not ok where it is too narrow to be seen.
func (r strokeRuler) passed() (from, to float64, ok bool) {
	if r.m.end == nil {
		return 0, 0, false
	}
	from, to = r.scale.At(r.m.rest), r.scale.At(math.Min(*r.m.end, r.m.reach))
	return from, to, to > from+passedLeast
}

// figures under the bar, left out where the projection lines pass.
func (r strokeRuler) figures(p *canvas.Pen) {
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	g0, g1 := r.glass()
	ticks, decimals := r.scale.Ticks(int((r.scale.X1 - r.scale.X0) / 90))
	free := math.Inf(-1)
	for _, v := range ticks {
		x := r.scale.At(v)
		p.VLine(canvas.Quiet, x, r.bar.Y1, r.bar.Y1+4)
		text := figure(v, decimals)
		half := st.Width(text) / 2
		at := math.Max(r.scale.X0+half, math.Min(x, r.scale.X1-half))
		if at-half < free || at+half > g0-4 && at-half < g1+4 {
			continue
		}
		p.Text(st, at, r.numbers, canvas.Middle, text)
		free = at + half + 8
	}
}
