package simulate

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mathext"

	"ramplan/press/stack"
)

// lotOf says of which parts a share is estimated: of all that are made, or of a bad lot.
type lotOf int

const (
	anyLot   lotOf = iota
	tightLot       // friction at its high end, hole and shaft anywhere within their limits
	slackLot       // friction at its low end, likewise
)

// plan of the integration: what is integrated exactly for each point, and what the
// coordinates of a point stand for.
//
//	heights, errors of the position   exactly, by shift: a verdict is an interval of it
//	interference or measured force    exactly: stalled above a threshold, loose below one
//	force                             sampled 1.6 times as wide, weighed by the densities
//	friction, smoothing, stiffness    sampled
//	rows that move contact and seat differently   sampled
//
// Where such a row moves the height too, a point stands for one part of each class of
// heights (see stratum), and the errors of the position and the rows under the datum are
// integrated.
//
// Source: conditional Monte Carlo, S. Asmussen, P. W. Glynn, Stochastic Simulation, 2007,
// V.4, and stratification, V.7.
type conditional struct {
	*Station
	*split
	tightness law // interference, or measured force
	friction  [2]float64

	// Which coordinate of a point is what; −1: no spread.
	onForce, onHeight, onFriction, onTail, onSmoothing, onStiffness int
	firstRow, dimensions                                            int

	most [Truths]float64 // what the share of each truth is under, of one law each
}

// drawnGroup are rows that move everything in one proportion; normal ones are one.
type drawnGroup struct {
	of   sums
	sd   float64
	rows []row
}

func newConditional(s *Station, lot lotOf) *conditional {
	s.once.Do(func() { s.split = s.newSplit() })
	c := &conditional{Station: s, split: s.split, onForce: -1, onHeight: -1, onFriction: -1, onTail: -1, onSmoothing: -1, onStiffness: -1}
	q := &s.joint
	next := func(spread bool) int {
		if !spread {
			return -1
		}
		c.dimensions++
		return c.dimensions - 1
	}
	c.onForce = next(s.scatter > 0)
	c.onHeight = next(c.rest != nil)
	c.friction = [2]float64{q.frictionLow, q.frictionHigh}
	switch q.kind {
	case interference:
		switch sd := math.Hypot(q.hole, q.shaft) / 3; {
		case sd == 0:
			c.tightness = always(q.middle)
		case lot == anyLot:
			c.tightness = normal{q.middle, sd}
		default:
			c.tightness = newTrapezoid(q.middle, q.hole, q.shaft)
		}
		switch lot {
		case tightLot:
			c.friction[0] = c.friction[1]
		case slackLot:
			c.friction[1] = c.friction[0]
		}
		c.onFriction = next(c.friction[1] > c.friction[0])
		c.onTail = next(q.hole > 0 || q.shaft > 0)
		c.onSmoothing = next(q.roughHigh > q.roughLow)
	case measured:
		c.tightness = triangle{q.forceLow, q.forceMode, q.forceHigh}
		if q.forceHigh == q.forceLow {
			c.tightness = always(q.forceMode)
		}
		c.onTail = next(q.forceHigh > q.forceLow)
	}
	c.onStiffness = next(s.complianceSpread > 0)
	c.firstRow = c.dimensions

	for i := range c.drawn {
		c.dimensions += c.drawn[i].dimensions()
	}
	c.most = c.atMost()
	return c
}

// split is which rows are integrated and which are sampled: the same for every lot.
type split struct {
	shift   *shift
	drawn   []drawnGroup // rows that are sampled
	whole   bool         // some of these move the height: it is sampled by strata
	rest    *stratum     // of the other rows that move it; nil: there are none
	classes three        // the share of each class of heights, of all parts that are made
	window  window       // of the spread of readings
}

func (s *Station) newSplit() *split {
	out := &split{}
	var drawn, together []row
	for _, r := range s.rows {
		switch {
		case r.of.travel == 0:
			together = append(together, r)
		default:
			drawn = append(drawn, r)
			out.whole = out.whole || r.of.height != 0
		}
	}
	if out.whole {
		var integrated []row
		var rest, all []stack.Term
		for _, r := range together {
			switch {
			case r.of.height == 0:
				integrated = append(integrated, r)
			case r.of.seat == 0: // beside the insert
				drawn = append(drawn, r)
			default:
				rest = append(rest, r.term(r.of.height))
			}
		}
		for _, r := range s.rows {
			all = append(all, r.term(r.of.height))
		}
		out.rest = newStratum(rest)
		out.classes = shares(stack.NewSum(all), s.low-s.mean.height, s.high-s.mean.height)
		together = integrated
	}
	out.drawn = sampled(drawn)
	out.shift = newShift(together, s.mean, s.position(), s.low, s.high)
	out.window = s.newWindow(together)
	if !out.whole {
		out.classes = out.shift.total
	}
	return out
}

// sampled sorts rows that are sampled, the widest of each proportion first.
func sampled(rows []row) []drawnGroup {
	var out []drawnGroup
	for _, g := range groups(rows) {
		d := drawnGroup{of: g.of}
		for _, r := range g.rows {
			if r.shape == stack.Normal {
				d.sd = math.Hypot(d.sd, r.half)
			} else {
				d.rows = append(d.rows, r)
			}
		}
		slices.SortStableFunc(d.rows, func(a, b row) int {
			switch {
			case a.half > b.half:
				return -1
			case a.half < b.half:
				return 1
			}
			return 0
		})
		out = append(out, d)
	}
	return out
}

// position are the errors of every position as terms about nothing.
func (s *Station) position() []stack.Term {
	n := func(sd float64) stack.Term {
		return stack.Term{Row: stack.Row{Half: sd, Shape: stack.Normal, Sigmas: 1}, Times: 1}
	}
	return []stack.Term{n(s.repeatability), n(s.reference), {Row: stack.Row{Half: s.drift}, Times: 1}}
}

// wider is by how much the force is sampled wider than it scatters: stalls live in its
// lower tail.
const wider = 1.6

// contribution is what one point says of each cell.
type contribution struct {
	cells [Truths][Verdicts]float64
	rows  [Truths]float64

	// Without the weight, since neither hangs on the force.
	fails   float64
	classes three // of heights

	weight float64 // of the point, one on average
}

// reach is what all points so far lead to: the verdicts that some shift would bring, and
// the readings.
type reach struct {
	seated, stalled [Verdicts]bool
	readings        unshifted // of all points so far
}

// of are those of a truth.
func (r *reach) of(t Truth) [Verdicts]bool {
	if t == Unseated {
		return r.stalled
	}
	return r.seated
}

// at evaluates one point.
func (c *conditional) at(u []float64, out *contribution, may *reach) {
	*out = contribution{}
	weight, force := 1.0, c.force
	if c.onForce >= 0 {
		z := mathext.NormalQuantile(u[c.onForce])
		y := wider * z
		weight = wider * math.Exp((z*z-y*y)/2)
		force += c.scatter * y
	}
	out.weight = weight
	stiffness := 0.0
	if c.onStiffness >= 0 {
		stiffness = mathext.NormalQuantile(u[c.onStiffness])
	}
	bend := c.bend(force, stiffness)
	h := c.mean
	at := c.firstRow
	for i := range c.drawn {
		d := &c.drawn[i]
		h.add(d.of, d.sum(u[at:]))
		at += d.dimensions()
	}

	p := c.press(force, max(0, h.travel), u)
	out.fails = p.fails
	switch {
	case !c.whole:
		c.look(out, may, &p, force, bend, h, c.shift.total)
	case c.rest == nil:
		c.look(out, may, &p, force, bend, h, classOf(h.height, c.low, c.high))
	default: // one part of each class, which counts for as many as there are of it
		limits := [...]float64{right: c.low - h.height, tall: c.high - h.height, squat: math.Inf(-1)}
		ends := [...]float64{right: c.high - h.height, tall: math.Inf(1), squat: c.low - h.height}
		for class := range limits {
			share, x := c.rest.within(limits[class], ends[class], u[c.onHeight])
			if share <= 0 {
				continue
			}
			one := h
			one.add(sums{contact: 1, seat: 1, height: 1}, x)
			var total three
			total[class] = share
			c.look(out, may, &p, force, bend, one, total)
		}
	}
}

// look adds what is seen of the parts at one point that rows add up to, as many of each
// class of heights as total says.
func (c *conditional) look(out *contribution, may *reach, p *pressed, force, bend float64, h sums, total three) {
	contact, reading, weight := c.nest-h.contact, c.nest+bend, out.weight
	for i, share := range total {
		out.classes[i] += share
	}
	if seated := p.sound + p.loose; seated > 0 {
		var seen [Verdicts]three
		c.verdicts(contact, reading-h.seat, total, &seen, &may.seated)
		c.window.add(&may.readings.seated, reading-h.seat, weight*seated*total.all())
		for v, share := range seen {
			out.cells[Long][v] += weight * seated * share[tall]
			out.cells[Short][v] += weight * seated * share[squat]
			out.cells[Loose][v] += weight * p.loose * share[right]
			out.cells[Conforming][v] += weight * p.sound * share[right]
		}
		out.rows[Long] += weight * seated * total[tall]
		out.rows[Short] += weight * seated * total[squat]
		out.rows[Loose] += weight * p.loose * total[right]
		out.rows[Conforming] += weight * p.sound * total[right]
	}
	if p.stalled > 0 {
		var seen [Verdicts]three
		stalls := reading - h.contact + c.joint.stall(p.way, force)
		c.verdicts(contact, stalls, total, &seen, &may.stalled)
		c.window.add(&may.readings.stalled, stalls, weight*p.stalled*total.all())
		for v, share := range seen {
			out.cells[Unseated][v] += weight * p.stalled * share.all()
		}
		out.rows[Unseated] += weight * p.stalled * total.all()
	}
}

// pressed are the shares of the parts at one point that end in one way, and the way of one
// that stalls.
type pressed struct {
	stalled, loose, sound float64
	fails                 float64 // of all, seated or not
	way                   way
}

// press integrates over the interference, or the measured force: stalled above one
// threshold, loose below another.
func (c *conditional) press(force, travel float64, u []float64) (p pressed) {
	q := &c.joint
	p.way = way{drag: q.drag, seat: q.counter, travel: travel}
	free := force - q.drag - q.counter // N that are left for the fit
	switch q.kind {
	case touch:
		p.stalled = indicator(free < 0)
		p.sound = 1 - p.stalled
	case measured:
		p.stalled, p.sound = c.tightness.above(free), c.tightness.upTo(free)
		if p.stalled > 0 {
			p.way.seat += c.stalledAt(p.stalled, u)
		}
	case interference:
		friction := amid(c.friction, c.onFriction, u)
		smoothed := amid([2]float64{q.roughLow, q.roughHigh}, c.onSmoothing, u)
		perMicron := q.grip * q.engaged(travel) // N at a friction of 1
		p.fails = c.tightness.below(under(q.required, friction*perMicron) + smoothed)
		loose := under(q.withSafe, q.holding*perMicron) + smoothed
		switch {
		case free < 0:
			p.stalled = 1
		case friction*perMicron == 0:
			c.seated(&p, math.Inf(1), loose)
		default:
			c.seated(&p, free/(friction*perMicron)+smoothed, loose)
		}
		if p.stalled > 0 {
			p.way.slope = q.grip * friction * max(0, c.stalledAt(p.stalled, u)-smoothed)
		}
	}
	return p
}

// seated takes the shares on both sides of the thresholds: stalled above the first, loose
// below the second.
func (c *conditional) seated(p *pressed, stalls, loose float64) {
	p.stalled, p.loose = c.tightness.above(stalls), c.tightness.upTo(stalls)
	if loose <= stalls {
		p.loose = c.tightness.below(loose)
	}
	if _, fixed := c.tightness.(always); fixed {
		p.sound = 1 - p.stalled - p.loose
	} else {
		p.sound = between(c.tightness, loose, stalls)
	}
}

// under gives the interference under which a joint grips less than is required, each µm
// gripping with so many newtons.
func under(required, perMicron float64) float64 {
	switch {
	case required <= 0:
		return math.Inf(-1)
	case perMicron == 0:
		return math.Inf(1)
	}
	return required / perMicron
}

// stalledAt draws among the parts that stall.
func (c *conditional) stalledAt(stalled float64, u []float64) float64 {
	if c.onTail < 0 {
		return c.tightness.upper(stalled)
	}
	return c.tightness.upper(stalled * u[c.onTail])
}

// amid is a uniform draw from a range, by a coordinate if it has one.
func amid(of [2]float64, on int, u []float64) float64 {
	if on < 0 {
		return (of[0] + of[1]) / 2
	}
	return of[0] + u[on]*(of[1]-of[0])
}

func (d *drawnGroup) dimensions() int { return len(d.rows) + int(indicator(d.sd > 0)) }

// sum draws the rows by the first coordinates.
func (d *drawnGroup) sum(u []float64) float64 {
	var x float64
	if d.sd > 0 {
		x, u = d.sd*mathext.NormalQuantile(u[0]), u[1:]
	}
	for i, r := range d.rows {
		if r.shape == stack.Triangular {
			x += triangle{-r.half, 0, r.half}.upper(u[i])
		} else {
			x += r.half * (2*u[i] - 1)
		}
	}
	return x
}

// verdicts gives the share of each class that each verdict is seen of: contact and
// reading are what they would be at no shift, and each verdict is an interval of it. The
// cells that some shift would reach are marked.
func (c *conditional) verdicts(contact, reading float64, total three, seen *[Verdicts]three, may *[Verdicts]bool) {
	if c.shift.fixed {
		seen[c.see(contact, reading)] = total
	}
	z := &c.signals
	// A shift over the first is met early, one under the second brings no arrival, and
	// between the last two lies the zone.
	early, end := edge{at: min(contact, reading) - c.a}, edge{at: reading - z.End}
	first, last := edge{at: reading - z.ZoneStart}, edge{at: reading - z.ZoneEnd}
	least, most := edge{at: math.Inf(-1)}, edge{at: math.Inf(1)}
	off := OffOff
	if z.End >= z.ZoneStart && z.End <= z.ZoneEnd {
		off = OffOn
	}
	may[Early], may[off] = true, true
	share := func(v Seen, a, b *edge) {
		if !(a.at < b.at) && !(c.shift.fixed && a.at == b.at) {
			return
		}
		may[v] = true
		if c.shift.fixed {
			return
		}
		low, high := a.below(c.shift), b.below(c.shift)
		if c.whole { // the table is of one class, whichever the part is
			seen[v].add(total, max(0, high.all()-low.all()))
			return
		}
		for i := range low {
			seen[v][i] += max(0, high[i]-low[i])
		}
	}
	share(Early, &early, &most)
	share(off, &least, lower(&early, &end))
	if z.ZoneStart > z.ZoneEnd { // never in the zone
		share(OnOff, &end, &early)
		return
	}
	share(OnOn, upper(&end, &last), lower(&early, &first))
	share(OnOff, upper(&end, &first), &early)
	share(OnOff, &end, lower(&early, &last))
}

// edge is an end of an interval of shifts; it is looked up once.
type edge struct {
	at     float64
	looked bool
	under  three
}

func (e *edge) below(h *shift) *three {
	if !e.looked {
		e.looked, e.under = true, h.below(e.at)
	}
	return &e.under
}

func lower(a, b *edge) *edge {
	if a.at < b.at {
		return a
	}
	return b
}

func upper(a, b *edge) *edge {
	if a.at > b.at {
		return a
	}
	return b
}
