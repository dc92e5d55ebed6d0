package simulate

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// found makes replications of so many points each, in which a cell has these
// contributions, one point each, the first ones of the first replication.
func found(c *conditional, points int, truth Truth, seen Seen, contributions ...float64) *[Replications]*replication {
	var all [Replications]*replication
	for i := range all {
		all[i] = &replication{conditional: c, n: points}
		all[i].sum.weight = float64(points)
		all[i].sum.rows[truth] = 0.01 * float64(points)
		for v := range all[i].may.seated {
			all[i].may.seated[v], all[i].may.stalled[v] = true, true
		}
	}
	for k, a := range contributions {
		r := all[k%Replications]
		r.sum.cells[truth][seen] += a
		r.square[truth][seen] += a * a
	}
	return &all
}

func equal(n int, a float64) []float64 {
	out := make([]float64, n)
	for i := range out {
		out[i] = a
	}
	return out
}

// A cell of which fewer than thirty points tell is taken as not found: nothing says that
// it is not as large as three in all points, or its whole row. By hand.
func TestSeldomFound(t *testing.T) {
	c := newConditional(closing(), anyLot)
	const points = 512
	bound := 3.0 / (Replications * points)

	few := c.combine(found(c, points, Unseated, OnOn, equal(29, 1e-9)...), 1)
	cell := few.Matrix[Unseated][OnOn]
	assert.Zero(t, cell.Low)
	assert.InDelta(t, bound, cell.High, 1e-9)
	assert.InDelta(t, 29e-9/(Replications*points), cell.Value, 1e-18)
	for _, s := range []Share{Accepted, FalseAccept, FalseAcceptUnseated} {
		assert.GreaterOrEqual(t, few.Named[s].High, bound, "share %d holds the cell", s)
	}
	assert.Less(t, few.Named[UnseatedShare].High, 0.0101, "rows are safe")
	assert.Zero(t, few.Named[FalseAcceptHeight].High)

	// The spread of 30 points over 16 replications is two each but for two that have one.
	enough := c.combine(found(c, points, Unseated, OnOn, equal(30, 1e-9)...), 1)
	assert.Less(t, enough.Matrix[Unseated][OnOn].High, 1e-10)
	assert.Positive(t, enough.Matrix[Unseated][OnOn].Low)

	// One large point among many small ones is a handful.
	one := c.combine(found(c, points, Unseated, OnOn, append(equal(1000, 1e-9), 1e-3)...), 1)
	assert.GreaterOrEqual(t, one.Matrix[Unseated][OnOn].High, bound)

	// No point at all, and a row that is smaller than the rule.
	all := found(c, points, Unseated, OnOn)
	for _, r := range all {
		r.sum.rows[Unseated] = 1e-9 * points
	}
	none := c.combine(all, 1)
	assert.InDelta(t, 1e-9, none.Matrix[Unseated][OnOn].High, 1e-12)
	assert.InDelta(t, 1e-9, none.Named[FalseAccept].High, 1e-12)

	// A cell that no reading can reach is nothing, and known to be.
	for _, r := range all {
		r.may = reach{}
	}
	assert.Equal(t, Figure{}, c.combine(all, 1).Matrix[Unseated][OnOn])

	// Found through the tables of heights alone: no better than these are.
	tables := c.combine(found(c, points, Long, OnOn, equal(1000, 1e-13)...), 1)
	assert.Equal(t, tablesGood, tables.Matrix[Long][OnOn].High)
}

// What can be met early is bounded by the exact law of contacts, whatever the points say.
func TestEarlyIsBounded(t *testing.T) {
	s, out := evaluated(t, busy())
	c := newConditional(s, anyLot)
	require.GreaterOrEqual(t, c.metEarly()*1e6, out.Risk.EarlyContactPPM)
	far := busy()
	far.Motion.Clearance = 5
	assert.Less(t, newConditional(station(t, far), anyLot).metEarly(), 1e-12)
	e := estimated(t, station(t, far))
	assert.Less(t, e.Named[EarlyContact].High, 1e-11)
	for truth := range e.Matrix {
		assert.Less(t, e.Matrix[truth][Early].High, 1e-9)
	}
}

// Precision is asked of four shares, and doubling ends when all of them have it.
func TestPrecision(t *testing.T) {
	s := closing()
	points := 0
	for _, precision := range []float64{1, 0.001, 0.0001} {
		var all []int
		e, complete := s.Estimate(ctx(), 1, precision, Work{}, func(e Estimated) { all = append(all, e.Points) })
		require.True(t, complete)
		f := e.Named[FalseAccept]
		assert.Equal(t, e.Met, (f.High-f.Low)/2 <= precision*f.Value, "%v", precision)
		assert.GreaterOrEqual(t, e.Points, points)
		points = e.Points
		assert.Equal(t, e.Points, all[len(all)-1])
		for i, n := range all {
			assert.Equal(t, 512<<i, n)
		}
	}
	assert.Greater(t, points, 512)
}

// In a bad lot friction stands at one end and the sizes reach their limits as often as
// their middle. By hand, from the example with its force set to what half of the lot's
// interference asks for: half of it stalls.
func TestBadLot(t *testing.T) {
	in := busy()
	in.Joint.SmoothingLeast, in.Joint.SmoothingMost = 0.5, 0.5
	in.Parts[2].Minus, in.Parts[2].Plus = 0, 0
	s := station(t, in)
	q := &s.joint
	s.scatter = 0
	s.force = q.grip * q.engaged(s.mean.travel) * q.frictionHigh * (q.middle - (q.roughLow+q.roughHigh)/2)
	lot, is := s.BadLot(ctx(), 1, 0.1, Work{})
	require.True(t, is)
	assert.InDelta(t, 0.5, lot.Unseated, 1e-6)
	average := estimated(t, s)
	assert.Less(t, average.Named[UnseatedShare].Value, 0.1, "not every lot is so")
	assert.Greater(t, lot.Unseated, average.Named[UnseatedShare].Value)
	assert.Positive(t, lot.Loose)

	_, is = closing().BadLot(ctx(), 1, 0.1, Work{})
	assert.False(t, is, "a measured joint has no lots")
}
