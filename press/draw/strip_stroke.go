package draw

import "math"

// strokeRuler is the whole stroke to scale, with what begins where.
type strokeRuler struct {
	m       *stripModel
	scale   scale
	labels  callouts
	bar     rect
	numbers float64 // baseline of the figures under the bar
	bottom  float64
}

const barHeight = 12

// passedLeast is the least width, in px, of the push past the seat that is drawn: less
// lies under the lens.
const passedLeast = 3

func layStrokeRuler(m *stripModel, left, right, top float64) strokeRuler {
	r := strokeRuler{m: m, scale: newScale(m.stroke[0], m.stroke[1], left, right)}
	var items []callout
	for _, s := range m.stops {
		k := style{black, small, false}
		if s.wrong {
			k = style{alert, small, true}
		}
		items = append(items, callout{x: r.scale.x(s.at), lines: []string{s.name, s.note}, style: k})
	}
	r.labels = layCallouts(items, left, right)
	y := top + r.labels.height()
	r.bar = rect{left, y, right, y + barHeight}
	r.numbers = r.bar.y1 + 8 + small
	r.bottom = r.numbers + 4
	return r
}

// glass gives the edges, in px, of the piece that the lens shows: never so narrow
// that it cannot be seen.
func (r strokeRuler) glass() (x0, x1 float64) {
	x0, x1 = r.scale.x(r.m.lens[0]), r.scale.x(r.m.lens[1])
	if x1-x0 < 3 {
		mid := math.Max(r.scale.x0+1.5, math.Min((x0+x1)/2, r.scale.x1-1.5))
		x0, x1 = mid-1.5, mid+1.5
	}
	return x0, x1
}

func (r strokeRuler) paint(p *pen) {
	p.fill(paper, r.bar)
	r.stretches(p)
	if x := r.scale.x(r.m.reach); x < r.bar.x1-0.5 {
		p.hatch(alert, crossHatch, rect{x, r.bar.y0, r.bar.x1, r.bar.y1})
		p.line(alert, outline, solid, [2]float64{x, r.bar.y0 - 3}, [2]float64{x, r.bar.y1 + 3})
	}
	p.frame(black, thinLine, solid, rect{crisp(r.bar.x0), crisp(r.bar.y0), crisp(r.bar.x1), crisp(r.bar.y1)})
	x0, x1 := r.glass()
	p.fill(black, rect{x0, r.bar.y0 - 3, x1, r.bar.y1 + 3})
	r.figures(p)
	r.labels.above(p, r.bar.y0)
}

// stretches of the stroke: the fast approach with arrows, slow contact, press-in, and
// with arrows where a push goes on past the seat.
func (r strokeRuler) stretches(p *pen) {
	s := r.m.stops
	at := func(i int) float64 { return r.scale.x(s[i].at) }
	mid := (r.bar.y0 + r.bar.y1) / 2
	if from, to := at(0), at(1); to > from {
		p.fill(black.tint(quietTint), rect{from, r.bar.y0, to, r.bar.y1})
		for x := from + 20; x < to-4; x += 36 {
			p.arrow(quiet.tint(0.55), x, mid, 8)
		}
	}
	if from, to := at(1), at(2); to > from {
		p.fill(black.tint(2*quietTint), rect{from, r.bar.y0, to, r.bar.y1})
	}
	if end := r.m.rest; end > s[2].at {
		p.fill(black.tint(0.45), rect{at(2), r.bar.y0, r.scale.x(end), r.bar.y1})
	}
	if from, to, ok := r.passed(); ok {
		p.fill(black.tint(0.22), rect{from, r.bar.y0, to, r.bar.y1})
		for x := from + 10; x < to-4; x += 18 {
			p.arrow(quiet, x, mid, 8)
		}
	}
}

// passed gives the stretch, in px, that the push goes on through where no part stops the
// ram, as far as the ram can go; not ok where it is too narrow to be seen.
func (r strokeRuler) passed() (from, to float64, ok bool) {
	if r.m.end == nil {
		return 0, 0, false
	}
	from, to = r.scale.x(r.m.rest), r.scale.x(math.Min(*r.m.end, r.m.reach))
	return from, to, to > from+passedLeast
}

// figures under the bar, left out where the projection lines pass.
func (r strokeRuler) figures(p *pen) {
	st := style{quiet, small, false}
	g0, g1 := r.glass()
	ticks, decimals := r.scale.ticks(int((r.scale.x1 - r.scale.x0) / 90))
	free := math.Inf(-1)
	for _, v := range ticks {
		x := r.scale.x(v)
		p.vline(quiet, x, r.bar.y1, r.bar.y1+4)
		text := figure(v, decimals)
		half := st.width(text) / 2
		at := math.Max(r.scale.x0+half, math.Min(x, r.scale.x1-half))
		if at-half < free || at+half > g0-4 && at-half < g1+4 {
			continue
		}
		p.text(st, at, r.numbers, middle, text)
		free = at + half + 8
	}
}
