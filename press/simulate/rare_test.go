package simulate

import (
	"context"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/stack"
)

// first is the first answer, of the fewest points.
func first(s *Station, seed uint64) (out Estimated) {
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	s.Estimate(ctx, seed, 1, Work{}, func(e Estimated) {
		if out.Points == 0 {
			out = e
		}
		stop()
	})
	return out
}

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
		r.may.stalled[OnOn] = false // but others are
	}
	assert.Equal(t, Figure{}, c.combine(all, 1).Matrix[Unseated][OnOn])
	assert.Positive(t, c.combine(all, 1).Matrix[Unseated][OffOff].High)

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

// bent is a station on which a row of the insert moves the height by a quarter of what it
// moves the contact, beside a normal row, and a touch joint that any force seats.
func bent() *Station {
	s := touched(stack.Normal, 0.01)
	quarter := sums{contact: 1, seat: 0.25, height: 0.25, travel: 0.75}
	s.mean.add(quarter, 4)
	s.rows = append(s.rows, row{of: quarter, shape: stack.Uniform, half: 0.06})
	s.low, s.high = 10.95, 11.05
	s.signals.End, s.signals.ZoneStart, s.signals.ZoneEnd = 9.05, 8.95, 11
	s.repeatability = 0.004
	return s
}

// Heights that a sampled row moves are one law all the same, by hand: the mean of a normal
// tail over the quarter of the uniform row, ∫ Φc(z) dz = φ(z) − z·Φc(z) between its ends.
// Rare classes are found as well as frequent ones, and each limit holds.
func TestRareHeightsOfSampledRows(t *testing.T) {
	for _, half := range []float64{0.03, 0.05, 0.07} {
		s := bent()
		s.low, s.high = 11-half, 11+half
		rest := func(z float64) float64 {
			return math.Exp(-z*z/2)/math.Sqrt(2*math.Pi) - z*math.Erfc(z/math.Sqrt2)/2
		}
		const quarter, sd = 0.06 / 4, 0.01
		want := sd * (rest((half-quarter)/sd) - rest((half+quarter)/sd)) / (2 * quarter)
		e := first(s, 1)
		for _, share := range []Share{LongShare, ShortShare} {
			f := e.Named[share]
			assert.InEpsilon(t, want, f.Value, 0.02, "± %v", half)
			assert.True(t, f.Low-1e-5*want <= want && want <= f.High+1e-5*want, "%v in %v", want, f)
		}
		assert.InDelta(t, 1-2*want, e.Named[ConformingShare].Value, 0.04*want)
		sum := 0.0
		for truth := range e.Matrix {
			for _, f := range e.Matrix[truth] {
				sum += f.Value
			}
		}
		assert.InDelta(t, 1, sum, 1e-12)
	}
}

// Where sampled rows alone make the heights, a class that hangs on a few points is bounded
// by its exact share, and all else may lack as much. By hand: a normal row of 0.01 mm
// leaves a drawing of ± 0.045 with 6.8 parts in a million, half of them on each side.
func TestRareHeightsAreBounded(t *testing.T) {
	s := bent()
	s.rows = []row{{of: s.rows[1].of, shape: stack.Normal, half: 0.04}}
	s.low, s.high = 11-0.045, 11+0.045
	want := math.Erfc(4.5/math.Sqrt2) / 2
	for seed := range uint64(20) {
		e := first(s, seed)
		for _, share := range []Share{LongShare, ShortShare} {
			f := e.Named[share]
			assert.True(t, f.Low <= want && want <= f.High && f.High < 100*want, "seed %d: %v in %v", seed, want, f)
		}
		f := e.Named[ConformingShare]
		assert.True(t, f.Low <= 1-2*want && 1-2*want <= f.High, "seed %d: %v", seed, f)
	}
}

// A truth that needs a force beyond what points reach is never stated as nothing, unless it
// cannot be. By hand: a touch joint seats the force over 7.1 standard deviations only.
func TestBeyondTheForcesReach(t *testing.T) {
	s := touched(stack.Normal, 0.01)
	s.force, s.scatter, s.joint.counter = 1000, 10, 1071
	e := estimated(t, s)
	want := math.Erfc(7.1/math.Sqrt2) / 2
	f := e.Named[ConformingShare]
	assert.True(t, want < f.High && f.High <= 1.1*tablesGood, "%v in %v", want, f)
	assert.Positive(t, e.Matrix[Conforming][OnOn].High)
	assert.Positive(t, e.Named[FalseReject].High)
	assert.Zero(t, e.Named[LooseShare].High, "no joint that could be loose")

	s.joint.counter = 1052 // 5.2: more than the tables are good for, and a point or two at most
	want = math.Erfc(5.2/math.Sqrt2) / 2
	for seed := range uint64(20) {
		e := first(s, seed)
		f := e.Named[ConformingShare]
		assert.True(t, f.Low <= want && want <= f.High && f.High < 100*want, "seed %d: %v in %v", seed, want, f)
	}

	s.joint.counter, s.scatter = 0, 0
	assert.Zero(t, estimated(t, s).Named[UnseatedShare].High, "a fixed force seats")
}

// What lets go is of all parts. By hand: all stand too low, or are pressed with too little
// force, and grip with half of what is required.
func TestFailsAreOfAllParts(t *testing.T) {
	in := example()
	in.Joint.Hole, in.Joint.Shaft = [2]float64{10, 10}, [2]float64{40, 40}
	in.Joint.SmoothingLeast, in.Joint.SmoothingMost = 0.5, 0.5
	in.Joint.FrictionLow, in.Joint.FrictionHigh = 0.1, 0.1
	in.Parts[2].Minus, in.Parts[2].Plus = 0, 0
	for _, required := range []float64{2, 0.5} {
		want := indicator(required > 1)
		s := station(t, in)
		s.joint.required = required * s.joint.grip * 0.1 * (30 - 0.5*6.5) * 5.5
		for _, truth := range []Share{ShortShare, UnseatedShare} {
			s.low, s.high = 30, 31
			if truth == UnseatedShare {
				s.force = 10
			}
			const parts = 10_000
			e := first(s, 1)
			tally, _ := s.Count(ctx(), parts, 1, Work{})
			assert.InDelta(t, 1, e.Named[truth].Value, 1e-9)
			assert.InDelta(t, want, e.Named[LooseFails].Value, 1e-12)
			assert.EqualValues(t, want*parts, tally.Count(LooseFails))
		}
	}
}

// A draw from a stretch of a law lies at its share: by the library's normal law.
func TestStratum(t *testing.T) {
	s := newStratum([]stack.Term{{Row: stack.Row{Half: 2, Shape: stack.Normal, Sigmas: 1}, Times: 1}})
	under := func(x float64) float64 { return math.Erfc(-x/2/math.Sqrt2) / 2 }
	for _, c := range [][2]float64{{-1, 3}, {8, math.Inf(1)}, {math.Inf(-1), -9}, {-3, -2}, {1, 1.5}, {math.Inf(-1), math.Inf(1)}} {
		whole := under(c[1]) - under(c[0])
		if c[0] > 0 {
			whole = under(-c[0]) - under(-c[1])
		}
		for _, u := range []float64{1e-6, 0.1, 0.5, 0.9, 1 - 1e-6} {
			share, x := s.within(c[0], c[1], u)
			assert.InEpsilon(t, whole, share, 1e-9, "%v", c)
			part := under(x) - under(c[0])
			if x > 0 && c[0] > 0 {
				part = under(-c[0]) - under(-x)
			}
			assert.InDelta(t, u, part/share, 1e-7, "%v at %v", c, u)
		}
	}
	share, _ := s.within(3, 3, 0.5)
	assert.Zero(t, share)
	assert.Nil(t, newStratum(nil))
}
