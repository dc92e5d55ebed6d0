package simulate

import (
	"context"
	"math"

	"ramplan/press/stack"
)

// Replications is how many independent scramblings an estimate rests on. Points of one
// replication are not independent of each other, their means are.
const Replications = 16

// Student's t for 15 degrees of freedom, 0.975 (tables; a test compares).
const student = 2.131449545559323

// firstDoublings is with how many points a replication begins: 2 to this power.
const firstDoublings = 9

// Streams of the replications stand behind those of all blocks.
const replicationStream = 1 << 32

// Figure is a share with its 95 % limits, from 0 to 1.
type Figure struct{ Value, Low, High float64 }

// spread is a mean with half the width between its limits, before they are cut.
type spread struct{ mean, half float64 }

// An Estimated is what an estimate found.
type Estimated struct {
	Matrix [Truths][Verdicts]Figure
	Named  [Shares]Figure
	Points int  // of one replication
	Met    bool // as precise as was asked for
	Spread *Spread
}

// Estimate estimates all shares: exact integration where there is one, scrambled Sobol
// points for what is left, and limits from independent scramblings.
//
//	estimate = mean of the R means, limits = mean ± t(0.975; R − 1)·s/√R
//
// The weights of the force's draws are one on average; each replication's are made so.
// Arguments: seed; precision, to what share of itself, or of 1 ppm, false accept, false
// reject, unseated and early contact are to be found; refined is told of each answer on
// the way, nil: nobody asks.
// Result: the answer of the most points that were finished, and whether that is all: the
// precision met, or the greatest number of points done. None where ctx ends before the
// first.
// Range: stations whose signals are known.
// Special cases: a cell of which fewer than 30 points tell has no low limit, and a high
// one of 3 in so many points (see below); a truth of which no point tells, or a class of
// sampled heights of which fewer than 30 do, likewise, but for what one exact law allows.
// Source: conditional Monte Carlo, S. Asmussen, P. W. Glynn, Stochastic Simulation, 2007,
// V.4; scrambled nets, A. B. Owen, SIAM J. Numer. Anal. 34 (1997), 1884.
func (s *Station) Estimate(ctx context.Context, seed uint64, precision float64, w Work, refined func(Estimated)) (answer Estimated, complete bool) {
	return s.estimate(ctx, newConditional(s, anyLot), seed, precision, w, refined)
}

// AtMost bounds all further estimates: a replication grows to 2 to this power of points
// and no further. 0: as far as there are points. An estimate begins with 2⁹ whatever the
// bound.
func (s *Station) AtMost(doublings int) { s.doublings = doublings }

// BadLot is what a bad lot makes of the shares, from 0 to 1.
type BadLot struct{ Unseated, Loose, FalseAccept, FalseReject float64 }

// BadLot estimates the shares of a lot in which all has come together: friction at one end
// of its range for all parts, hole and shaft anywhere within their limits.
//
// Arguments, range: as for [Station.Estimate].
// Result: unseated with the friction at its high end, loose at its low end, the other two
// the larger figure of both; false where there is no such lot, since the joint has no fit,
// or where ctx ends before.
// Source: uniform where only limits are known, JCGM 100:2008, 4.3.7; friction of one lot
// at one end: common practice, no source.
func (s *Station) BadLot(ctx context.Context, seed uint64, precision float64, w Work) (BadLot, bool) {
	if s.joint.kind != interference {
		return BadLot{}, false
	}
	tight, done := s.estimate(ctx, newConditional(s, tightLot), seed, precision, w, nil)
	if !done {
		return BadLot{}, false
	}
	slack, done := s.estimate(ctx, newConditional(s, slackLot), seed, precision, w, nil)
	worse := func(share Share) float64 { return max(tight.Named[share].Value, slack.Named[share].Value) }
	return BadLot{tight.Named[UnseatedShare].Value, slack.Named[LooseShare].Value, worse(FalseAccept), worse(FalseReject)}, done
}

func (s *Station) estimate(ctx context.Context, c *conditional, seed uint64, precision float64, w Work, refined func(Estimated)) (answer Estimated, complete bool) {
	if !s.known {
		panic("simulate: an estimate without signals")
	}
	w.Progress = nil // counts parts, and these are none
	var all [Replications]*replication
	w.each(ctx, Replications, func() func(int64) {
		return func(r int64) { all[r] = newReplication(c, newStream(seed, replicationStream+uint64(r))) }
	})
	last := mostDoublings
	if s.doublings > 0 {
		last = min(last, s.doublings)
	}
	for k := firstDoublings; k <= max(last, firstDoublings); k++ {
		w.each(ctx, Replications, func() func(int64) {
			return func(r int64) { all[r].run(ctx, 1<<k, w.between) }
		})
		if ctx.Err() != nil {
			return answer, false
		}
		answer = c.combine(&all, precision)
		if refined != nil {
			refined(answer)
		}
		if answer.Met {
			break
		}
	}
	return answer, true
}

// replication is one scrambling, and what its points add up to.
type replication struct {
	*conditional
	points *points
	n      int
	may    reach
	sum    contribution
	square [Truths][Verdicts]float64 // of the points' contributions
	rows   [Truths]float64           // squares likewise
	class  three                     // likewise
}

func newReplication(c *conditional, g generator) *replication {
	return &replication{conditional: c, points: newPoints(c.dimensions, g)}
}

// run goes on until n points are in.
func (r *replication) run(ctx context.Context, n int, between func()) {
	var one contribution
	for r.n < n {
		if r.n%128 == 0 {
			between()
			if ctx.Err() != nil {
				return
			}
		}
		r.at(r.points.next(), &one, &r.may)
		for t := range one.cells {
			for v, a := range one.cells[t] {
				r.sum.cells[t][v] += a
				r.square[t][v] += a * a
			}
			r.sum.rows[t] += one.rows[t]
			r.rows[t] += one.rows[t] * one.rows[t]
		}
		for i, a := range one.classes {
			r.sum.classes[i] += a
			r.class[i] += a * a
		}
		r.sum.fails += one.fails
		r.sum.weight += one.weight
		r.n++
	}
}

// share is a named share of the replication.
func (r *replication) share(s Share) float64 {
	switch {
	case s == LooseFails:
		return r.sum.fails * r.sum.weight / float64(r.n) // not weighed
	case s <= ConformingShare:
		return r.sum.rows[s]
	}
	var sum float64
	for t := range r.sum.cells {
		for v, a := range r.sum.cells[t] {
			if s.holds(Truth(t), Seen(v)) {
				sum += a
			}
		}
	}
	return sum
}

// combine makes one answer of all replications.
func (c *conditional) combine(all *[Replications]*replication, precision float64) Estimated {
	out := Estimated{Points: all[0].n, Met: true}
	for s := range out.Named {
		f := over(all, func(r *replication) float64 { return r.share(Share(s)) })
		out.Named[s] = f.figure()
		switch Share(s) {
		case FalseAccept, FalseReject, UnseatedShare, EarlyContact:
			out.Met = out.Met && f.half <= precision*max(f.mean, ppm)
		}
	}
	for t := range out.Matrix {
		c.row(&out, all, Truth(t))
	}
	missed := c.missed(&out, all)
	for t := range out.Matrix {
		for v := range out.Matrix[t] {
			c.cell(&out, all, Truth(t), Seen(v))
		}
	}
	out.lower(missed)
	out.Spread = c.spread(all)
	for s := range out.Named {
		out.Named[s].High = min(1, out.Named[s].High)
	}
	return out
}

const ppm = 1e-6

// over gives the mean of a sum over the replications, and half the width of its limits.
func over(all *[Replications]*replication, of func(*replication) float64) spread {
	var mean, square float64
	for _, r := range all {
		mean += of(r) / r.sum.weight
	}
	mean /= Replications
	for _, r := range all {
		d := of(r)/r.sum.weight - mean
		square += d * d
	}
	return spread{mean, student * math.Sqrt(square/(Replications-1)/Replications)}
}

func (f spread) figure() Figure {
	return Figure{min(1, f.mean), min(1, max(0, f.mean-f.half)), min(1, f.mean+f.half)}
}

// Limits of what is seldom found.
const (
	fewPoints  = 30    // with fewer that tell, replications do not know how much they differ
	ruleOf     = 3     // none in n: under 3/n with 95 % confidence
	tablesGood = 1e-10 // the share to which the tables of heights are good
)

// enough tells whether a sum hangs on more than a handful of points.
func enough(sum, square float64) bool { return sum > 0 && sum*sum >= fewPoints*square }

// cell puts in one cell of the matrix. Limits from replications lie where all hangs on a
// handful of points: there the cell is taken as not found. It and each named share that
// holds it may then be larger by as much as none in so many points allows, by no more
// than its whole row, and for early contact by no more than all that could be met early.
func (c *conditional) cell(out *Estimated, all *[Replications]*replication, t Truth, v Seen) {
	var sum, square float64
	may, met := false, false
	for _, r := range all {
		sum += r.sum.cells[t][v]
		square += r.square[t][v]
		at := r.may.of(t)
		may = may || at[v]
		met = met || at != [Verdicts]bool{}
	}
	if met && !may { // else no point tells what is seen of such a part
		return
	}
	f := &out.Matrix[t][v]
	*f = over(all, func(r *replication) float64 { return r.sum.cells[t][v] }).figure()
	if enough(sum, square) {
		if !c.whole && t != Unseated {
			f.High = max(f.High, tablesGood)
		}
		return
	}
	bound := min(ruleOf/float64(Replications*out.Points), out.Named[t].High)
	if v == Early {
		bound = min(bound, c.metEarly())
	}
	f.Low, f.High = 0, max(f.High, bound)
	for s := range out.Named {
		if Share(s) > ConformingShare && Share(s).holds(t, v) {
			out.Named[s].High += bound
		}
	}
}

// metEarly is more than what can be met early by contact, or by a reading with a bend
// eight standard deviations less than usual: of one law, so exactly.
func (c *conditional) metEarly() float64 {
	bend := c.bend(c.force, 0)
	sd := math.Hypot(c.scatter*c.compliance, bend*c.complianceSpread)
	terms := c.position()
	for _, r := range c.rows {
		terms = append(terms, r.term(r.of.contact))
	}
	return min(1, stack.NewSum(terms).Above(c.nest-c.mean.contact+min(0, bend-8*sd)-c.a)+1e-15)
}
