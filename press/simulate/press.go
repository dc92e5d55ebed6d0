package simulate

import (
	"math"

	"ramplan/press/stack"
)

// lot is how many parts are drawn side by side: their numbers stay near the processor.
const lot = 256

// group is rows that move contact, seat and height in the same proportion, so that only
// their sum matters.
type group struct {
	of   sums
	rows []row // each half-width times what the row counts of the group
}

// groups sorts rows by the proportion of what they move.
func groups(rows []row) []group {
	var out []group
	for _, r := range rows {
		of, times := r.of.unit()
		r.half *= math.Abs(times)
		i := 0
		for i < len(out) && out[i].of != of {
			i++
		}
		if i == len(out) {
			out = append(out, group{of: of})
		}
		out[i].rows = append(out[i].rows, r)
	}
	return out
}

// unit gives the coefficients divided by the first of them that is not nothing. Every
// shape is symmetric about its mean, so a sign makes no difference.
func (s sums) unit() (sums, float64) {
	by := s.contact
	if by == 0 {
		by = s.seat
	}
	if by == 0 {
		by = s.height
	}
	return sums{s.contact / by, s.seat / by, s.height / by, s.travel / by}, by
}

// drawn are the numbers of one lot.
type drawn struct {
	group                            [lot]float64
	contact, seat, height, travel    [lot]float64 // mm, what the rows add up to
	position                         [lot]float64 // mm, error of every position
	force, compliance                [lot]float64 // standard normal
	interference, smoothed, friction [lot]float64 // µm, µm, –
}

// press draws parts and presses them in. Every one that it is asked for has draws of its
// own, in blocks of their own streams.
type press struct {
	*Station
	groups []group
	drawn  drawn
}

func newPress(s *Station) *press {
	return &press{Station: s, groups: groups(s.rows)}
}

// draw fills the numbers of n parts.
func (p *press) draw(g *generator, n int) {
	d := &p.drawn
	set(d.contact[:n], p.mean.contact)
	set(d.seat[:n], p.mean.seat)
	set(d.height[:n], p.mean.height)
	set(d.travel[:n], p.mean.travel)
	for i := range p.groups {
		to := d.group[:n]
		clear(to)
		for _, r := range p.groups[i].rows {
			switch r.shape {
			case stack.Normal:
				g.addNormal(to, r.half)
			case stack.Triangular:
				g.addTriangular(to, r.half)
			default:
				g.addUniform(to, r.half)
			}
		}
		of := &p.groups[i].of
		add(d.contact[:n], to, of.contact)
		add(d.seat[:n], to, of.seat)
		add(d.height[:n], to, of.height)
		add(d.travel[:n], to, of.travel)
	}
	spread := func(to []float64, of float64, by func([]float64, float64)) {
		if of > 0 {
			by(to, of)
		}
	}
	to := d.position[:n]
	clear(to)
	spread(to, math.Hypot(p.repeatability, p.reference), g.addNormal) // both are normal, and so is their sum
	spread(to, p.drift, g.addUniform)

	clear(d.force[:n])
	spread(d.force[:n], p.scatter, g.addNormal)
	clear(d.compliance[:n])
	spread(d.compliance[:n], p.complianceSpread, g.addNormal)

	switch q := &p.joint; q.kind {
	case interference:
		set(d.interference[:n], q.middle)
		spread(d.interference[:n], math.Hypot(q.hole, q.shaft)/3, g.addNormal) // of two normal laws
		set(d.smoothed[:n], (q.roughLow+q.roughHigh)/2)
		spread(d.smoothed[:n], (q.roughHigh-q.roughLow)/2, g.addUniform)
		set(d.friction[:n], (q.frictionLow+q.frictionHigh)/2)
		spread(d.friction[:n], (q.frictionHigh-q.frictionLow)/2, g.addUniform)
	case measured:
		set(d.friction[:n], q.forceLow)
		if q.forceHigh > q.forceLow {
			g.fillOpen(d.friction[:n])
			for j, u := range d.friction[:n] {
				d.friction[j] = q.measured(u)
			}
		}
	}
}

// add adds numbers so many times.
func add(to, what []float64, times float64) {
	if times == 0 {
		return
	}
	for j, x := range what {
		to[j] += times * x
	}
}

func set(to []float64, x float64) {
	for j := range to {
		to[j] = x
	}
}

// measured gives the measured force that a share u of all parts stays under.
func (q *joint) measured(u float64) float64 {
	low, mode, high := q.forceLow, q.forceMode, q.forceHigh
	if u*(high-low) < mode-low {
		return low + math.Sqrt(u*(high-low)*(mode-low))
	}
	return high - math.Sqrt((1-u)*(high-low)*(high-mode))
}

// block presses n parts in with one stream, and counts them.
func (p *press) block(g generator, n int, t *Tally, between func()) {
	for n > 0 {
		m := min(n, lot)
		p.draw(&g, m)
		p.judge(m, t)
		n -= m
		between()
	}
}

// judge tells of n drawn parts what they are and what is seen.
func (p *press) judge(n int, t *Tally) {
	d, q := &p.drawn, &p.joint
	t.Parts += int64(n)
	perCell := 1 / p.width
	for j := range n {
		force := p.force + d.force[j]
		// The force was drawn in newtons, the compliance as a share.
		bend := (force - p.nestForce) * p.compliance * (1 + d.compliance[j])
		shift := p.nest + d.position[j]
		w := way{drag: q.drag, seat: q.counter, travel: max(0, d.travel[j])}

		truth := Conforming
		demand, fails := w.drag+w.seat, false
		switch q.kind {
		case interference:
			effective := max(0, d.interference[j]-d.smoothed[j])
			engaged := q.engaged(w.travel)
			w.slope = q.grip * effective * d.friction[j]
			demand += w.slope * engaged
			if q.grip*effective*q.holding*engaged < q.withSafe {
				truth = Loose
			}
			fails = w.slope*engaged < q.required
		case measured:
			w.seat += d.friction[j]
			demand += d.friction[j]
		}
		contact, reading := shift-d.contact[j], shift+bend
		density := &t.Seated
		switch {
		case demand > force:
			truth = Unseated
			reading += q.stall(w, force) - d.contact[j]
			density = &t.Stalled
		default:
			reading -= d.seat[j]
			if d.height[j] > p.high {
				truth = Long
			} else if d.height[j] < p.low {
				truth = Short
			}
		}
		seen := p.see(contact, reading)
		if fails {
			t.Fails++
		}
		t.Matrix[truth][seen]++
		if seen != Early {
			switch at := (reading - p.first) * perCell; {
			case at < 0:
				t.Below++
			case at < Cells:
				density[int(at)]++
			default:
				t.Above++
			}
		}
	}
}
