package simulate

import (
	"math"

	"ramplan/press/stack"
)

// atMost bounds the share of each truth by one law each, exactly: of the heights of all
// parts, and of the force against the least and the greatest demand. It is nothing where
// no part can be so.
func (c *conditional) atMost() (most [Truths]float64) {
	least, greatest := c.demands()
	seats, stalls := indicator(c.force >= least), indicator(c.force < greatest)
	if c.scatter > 0 {
		seats, stalls = upperTail((least-c.force)/c.scatter), upperTail((c.force-greatest)/c.scatter)
	}
	if math.IsInf(greatest, 1) {
		stalls = 1
	}
	most[Unseated] = stalls
	beyond := c.beyond(func(of sums) float64 { return of.height })
	for t, class := range map[Truth]int{Long: tall, Short: squat, Conforming: right} {
		most[t] = min(seats, c.classes[class]+beyond)
	}
	if c.joint.kind == interference && c.joint.withSafe > 0 {
		most[Loose] = min(most[Conforming], c.loose())
	}
	return most
}

// beyond is what a law of rows may have past its ends, and past any place: normal rows
// are cut where less is left.
func (c *conditional) beyond(times func(sums) float64) float64 {
	for _, r := range c.rows {
		if r.shape == stack.Normal && times(r.of) != 0 {
			return 1e-13
		}
	}
	return 0
}

// loose is more than what is loose: of parts with the least travel and all smoothing.
func (c *conditional) loose() float64 {
	q := &c.joint
	var travel []stack.Term
	for _, r := range c.rows {
		travel = append(travel, r.term(r.of.travel))
	}
	least, _ := stack.NewSum(travel).Support()
	perMicron := q.grip * q.engaged(max(0, c.mean.travel+least))
	return c.tightness.below(under(q.withSafe, q.holding*perMicron)+q.roughHigh) + c.beyond(func(of sums) float64 { return of.travel })
}

// demands are the least and the greatest demand at the seat, N. An interference without
// an end is taken to eleven standard deviations: beyond lie 2e-28 of all parts.
func (c *conditional) demands() (least, greatest float64) {
	q := &c.joint
	least = q.drag + q.counter
	switch q.kind {
	case measured:
		return least + q.forceLow, least + q.forceHigh
	case interference:
		end := q.middle + q.hole + q.shaft
		if n, is := c.tightness.(normal); is {
			end = n.mean + 11*n.sd
		}
		return least, least + q.grip*q.engagement*c.friction[1]*max(0, end-q.roughLow)
	}
	return least, least
}

// nothing is a share that is lost beside all parts.
const nothing = 1e-15

// row raises the high limit of a truth of which no point tells, or, where each point is
// so or not, fewer than 30 do: the force is sampled, and reaches only so far. No truth
// that can be is stated as nothing.
func (c *conditional) row(out *Estimated, all *[Replications]*replication, t Truth) {
	var sum, square float64
	for _, r := range all {
		sum += r.sum.rows[t]
		square += r.rows[t]
	}
	_, fixed := c.tightness.(always)
	f := &out.Named[t]
	if sum == 0 || (fixed || c.tightness == nil) && !enough(sum, square) {
		f.Low, f.High = 0, max(f.High, min(ruleOf/float64(Replications*out.Points), c.most[t]))
	}
	if c.most[t] > nothing {
		f.High = max(f.High, tablesGood)
	}
	f.High = max(f.High, min(tablesGood, c.most[t]))
}

// missed is for heights that are sampled: a class that hangs on a handful of points may
// hold as much as none in so many points allows, but no more than its exact share. The
// high limits of its truths are raised by that, and the low limits of all else fall by
// what is returned.
func (c *conditional) missed(out *Estimated, all *[Replications]*replication) (missed float64) {
	if !c.whole {
		return 0
	}
	for class, truths := range [...][]Truth{right: {Loose, Conforming}, tall: {Long}, squat: {Short}} {
		var sum, square float64
		for _, r := range all {
			sum += r.sum.classes[class]
			square += r.class[class]
		}
		if enough(sum, square) {
			continue
		}
		bound := min(ruleOf/float64(Replications*out.Points), c.classes[class])
		for _, t := range truths {
			f := &out.Named[t]
			f.Low, f.High = 0, max(f.High, min(f.High+bound, c.most[t]))
		}
		missed += bound
	}
	return missed
}

// lower takes so much off all low limits.
func (out *Estimated) lower(by float64) {
	for s := range out.Named {
		out.Named[s].Low = max(0, out.Named[s].Low-by)
	}
	for t := range out.Matrix {
		for v := range out.Matrix[t] {
			out.Matrix[t][v].Low = max(0, out.Matrix[t][v].Low-by)
		}
	}
}
