package simulate

import (
	"math"

	"ramplan/press/stack"
)

// SpreadCells is into how many cells the spread of estimated readings is cut.
const SpreadCells = 600

// A Spread is where the parts read, seated ones and stalled ones apart: where the ram
// would come to rest if the stroke were endless. Those that are met early are among them,
// as if the push had begun.
type Spread struct {
	From, Width     float64              // mm, where the first cell begins, and how wide each is
	Seated, Stalled [SpreadCells]float64 // shares of all parts
}

// beyond is how far the spread reaches on both sides of the good readings, in widths of
// them, or of what heights and position errors do to a reading where that is wider.
const beyond = 2.5

// window is what the spread of readings is cut into, and what is integrated of a reading.
type window struct {
	from, width float64    // mm
	shift       *stack.Sum // of heights and position errors, about nothing
}

// newWindow takes the rows that are integrated.
func (s *Station) newWindow(together []row) window {
	terms := s.position()
	for _, r := range together {
		terms = append(terms, r.term(r.of.seat))
	}
	w := window{shift: stack.NewSum(terms)}
	low, high := s.good[0], s.good[1]
	wide := max(high-low, 4*w.shift.SD())
	w.from = low - beyond*wide
	w.width = (high - low + 2*beyond*wide) / SpreadCells
	return w
}

// unshifted are shares of parts by what their reading would be at no shift.
type unshifted struct{ seated, stalled [SpreadCells]float64 }

func (w *window) add(to *[SpreadCells]float64, reading, share float64) {
	if at := (reading - w.from) / w.width; at >= 0 && at < SpreadCells {
		to[int(at)] += share
	}
}

// spread adds the replications up, and what was integrated to each reading.
func (c *conditional) spread(all *[Replications]*replication) *Spread {
	w := &c.window
	out := &Spread{From: w.from, Width: w.width}
	var seated, stalled [SpreadCells]float64
	any := false
	for _, r := range all {
		by := 1 / (Replications * r.sum.weight)
		for i := range seated {
			seated[i] += by * r.may.readings.seated[i]
			stalled[i] += by * r.may.readings.stalled[i]
			any = any || r.may.readings.stalled[i] > 0
		}
	}
	mass := w.masses()
	smear(&out.Seated, &seated, mass)
	if any {
		smear(&out.Stalled, &stalled, mass)
	}
	return out
}

// masses gives what share of the shifts leads so many cells away. The law is symmetric.
func (w *window) masses() []float64 {
	if w.shift.Point() {
		return []float64{1}
	}
	var out []float64
	_, end := w.shift.Support()
	above := 0.5
	for i := range SpreadCells {
		x := (float64(i) + 0.5) * w.width
		further := w.shift.Above(x)
		if i == 0 {
			above = 1 - further // both halves of the first
		}
		out = append(out, above-further)
		above = further
		if x > end || above < tablesGood*tablesGood {
			break
		}
	}
	return out
}

func smear(to, from *[SpreadCells]float64, mass []float64) {
	for i, share := range from {
		if share == 0 {
			continue
		}
		for d, m := range mass {
			if i+d < SpreadCells {
				to[i+d] += share * m
			}
			if d > 0 && i >= d {
				to[i-d] += share * m
			}
		}
	}
}

// MayStall is more than the share of parts that stall: of the narrowest and roughest fit
// against all of its length, and of the greatest measured force.
//
//	share = P(F < drag + counterforce + G·μ·(i − smoothing))
//
// Result: from 0 to 1; no estimate is needed for it, which is why it is there.
// Special cases: nothing but drag and counterforce where the joint has no fit.
// Source: a sum of normal laws is normal (textbook); μ at its high end, smoothing at its
// least, the whole length engaged: each makes the share larger.
func (s *Station) MayStall() float64 {
	q := &s.joint
	left, sd := s.force-q.drag-q.counter, s.scatter
	switch q.kind {
	case measured:
		left -= q.forceHigh
	case interference:
		perMicron := q.grip * q.engagement * q.frictionHigh
		left -= perMicron * (q.middle - q.roughLow)
		sd = math.Hypot(sd, perMicron*math.Hypot(q.hole, q.shaft)/3)
		// A part without interference asks for drag and counterforce alone.
		return min(1, tailUnder(left, sd)+tailUnder(s.force-q.drag-q.counter, s.scatter))
	}
	return tailUnder(left, sd)
}

// tailUnder is the share under 0 of a normal law.
func tailUnder(mean, sd float64) float64 {
	if sd == 0 {
		return indicator(mean < 0)
	}
	return math.Erfc(mean/sd/math.Sqrt2) / 2
}
