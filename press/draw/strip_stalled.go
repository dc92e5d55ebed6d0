package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
)

// stalled is where parts read that stall before their seat, as data.
type stalled struct {
	density  []press.Pair // mm, share of all parts a mm
	ppm      float64
	accepted float64 // ppm of all parts: of these, with both signals on
	before   bool    // most of them read less deep than the lens shows
	points   int
	seed     uint64
}

// simulated takes the readings as they were estimated, in place of those of the closed
// form, in which every part is seated.
func (m *stripModel) simulated(s *press.ReadingSpread) {
	if !s.Stalls() {
		return
	}
	m.density = s.Seated
	q := &stalled{density: s.Stalled, ppm: s.StalledPPM, accepted: s.AcceptedPPM, points: s.Points, seed: s.Seed}
	var seen float64
	if n := len(s.Stalled); n > 1 {
		for _, d := range s.Stalled {
			if d[0] >= m.lens[0] && d[0] <= m.lens[1] {
				seen += 1e6 * d[1] * (s.Stalled[1][0] - s.Stalled[0][0])
			}
		}
	}
	q.before = seen < q.ppm/2
	m.stalled = q
	m.desc += " " + say.StalledText(q.ppm, q.accepted, q.before, q.seed)
}

// Heights of the stalled readings, of those of the seated ones: less is drawn higher, but
// no higher than the most.
const (
	stalledLeast = 0.15
	stalledMost  = 0.5 // their label stands over them
)

// stalledTimes is how many times as high as the seated readings the stalled ones are
// drawn, one, two or five of a power of ten, so that they are seen; 0: the lens shows none.
func (l *lens) stalledTimes() float64 {
	top, most := highest(l.m.density, nil), highest(l.m.stalled.density, l.scale.Has)
	if top <= 0 || most <= 0 || most/top < 1e-12 {
		return 0
	}
	if most >= stalledLeast*top {
		return 1
	}
	times := stalledMost * top / most
	power := math.Pow10(int(math.Floor(math.Log10(times))))
	for _, k := range []float64{5, 2} {
		if k*power <= times {
			return k * power
		}
	}
	return power
}

// highest is the greatest density, of those places that count.
func highest(density []press.Pair, counts func(float64) bool) (top float64) {
	for _, q := range density {
		if canvas.Finite(q[0]) && canvas.Finite(q[1]) && (counts == nil || counts(q[0])) {
			top = math.Max(top, q[1])
		}
	}
	return top
}

// stalledReadings draws those of parts that stall, crossed like all that is no good, with
// a dashed edge, and says how many there are and how much higher they are drawn.
func (l *lens) stalledReadings(p *canvas.Pen, r lensRow, base float64) {
	if l.m.stalled != nil {
		p.Group("stalled", false, func() { l.stalledGroup(p, r, base) })
	}
}

func (l *lens) stalledGroup(p *canvas.Pen, r lensRow, base float64) {
	q := l.m.stalled
	times := l.stalledTimes()
	if times > 0 {
		top := highest(l.m.density, nil)
		var curve [][2]float64
		for _, d := range q.density {
			if canvas.Finite(d[0]) && canvas.Finite(d[1]) && l.scale.Has(d[0]) {
				curve = append(curve, [2]float64{l.scale.At(d[0]), base - (base-r.box.Y0)*math.Min(1, times*math.Max(0, d[1])/top)})
			}
		}
		if shape := cut(curve, l.scale.X0, l.scale.X1, base); len(shape) > 2 {
			p.HatchUnder(canvas.Black.Tint(0.5), canvas.CrossHatch, shape)
			p.Line(canvas.Black, canvas.Outline, canvas.Dashed, curve...)
		}
	}
	st := canvas.Plain(canvas.Black, canvas.Small)
	for i, text := range say.StalledLabel(q.ppm, times, q.before) {
		p.OnPaper(st, r.box.X0+6, r.box.Y0+canvas.Small+float64(i)*canvas.Leading*canvas.Small, canvas.Start, text)
	}
}
