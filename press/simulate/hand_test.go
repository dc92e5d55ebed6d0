package simulate

import (
	"context"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/stack"
)

const many = 400_000

func counted(t testing.TB, s *Station, seed uint64) Tally {
	t.Helper()
	tally, complete := s.Count(context.Background(), many, seed, Work{})
	require.True(t, complete)
	require.EqualValues(t, many, tally.Parts)
	return tally
}

func estimated(t testing.TB, s *Station) Estimated {
	t.Helper()
	e, complete := s.Estimate(context.Background(), 1, 0.1, Work{}, nil)
	require.True(t, complete)
	return e
}

// holds wants both ways to agree with a share that is known.
func holds(t *testing.T, what string, share Share, want float64, c *Tally, e *Estimated, within float64) {
	t.Helper()
	assert.InDelta(t, want, float64(c.Count(share))/many, near(want, many), "%s, counted", what)
	assert.InDelta(t, ppmOf(want), ppmOf(e.Named[share].Value), within, "%s, estimated", what)
}

// By hand: one row 10 ± 0.1 uniform, drawing 10 ± 0.05, no error but a nest drift of
// ± 0.02. On each side a part within 0.02 of the limit is judged wrongly with a chance
// that falls evenly from one half: (0.02/4)/0.2 = 25 000 ppm of all parts a side and a
// kind of error.
func TestUniformRowAndDrift(t *testing.T) {
	s := touched(stack.Uniform, 0.1)
	s.drift = 0.02
	c, e := counted(t, s, 1), estimated(t, s)
	holds(t, "false accept", FalseAccept, 0.05, &c, &e, 1e-3)
	holds(t, "false reject", FalseReject, 0.05, &c, &e, 1e-3)
	holds(t, "too tall", LongShare, 0.25, &c, &e, 1e-3)
	assert.InDelta(t, 25000, ppmOf(e.Matrix[Long][OnOn].Value), 1e-3)
	assert.InDelta(t, 25000, ppmOf(e.Matrix[Short][OnOn].Value), 1e-3)
	assert.InDelta(t, 25000, ppmOf(e.Matrix[Conforming][OnOff].Value), 1e-3)
	assert.InDelta(t, 25000, ppmOf(e.Matrix[Conforming][OffOn].Value), 1e-3)
	assert.Equal(t, Figure{}, e.Matrix[Conforming][OffOff], "the push end lies in the zone")
}

// By hand: a force of 150 N stalls on ((200 − 150)/100)² = 250 000 ppm of the triangle
// 100, 100, 200 N. A stalled part reads 4·(1 − 150/f) mm before the seat; it is accepted
// up to 0.4 mm, for f up to 166.67 N: 0.5² − (1/3)² = 138 888.9 ppm.
func TestMeasuredForceThatStalls(t *testing.T) {
	s := closing()
	c, e := counted(t, s, 2), estimated(t, s)
	holds(t, "unseated", UnseatedShare, 0.25, &c, &e, 1e-6)
	holds(t, "false accept", FalseAcceptUnseated, 0.25-1.0/9, &c, &e, 60)
	assert.Equal(t, e.Named[FalseAccept], e.Named[FalseAcceptUnseated])
	f := e.Named[FalseAccept]
	assert.True(t, f.Low <= 0.25-1.0/9 && 0.25-1.0/9 <= f.High, "%v", f)
}

// Without any spread all parts are one.
func TestNoSpread(t *testing.T) {
	s := touched(stack.Uniform, 0)
	s.rows = nil
	c, e := counted(t, s, 3), estimated(t, s)
	assert.EqualValues(t, many, c.Matrix[Conforming][OnOn])
	assert.Equal(t, Figure{1, 1, 1}, e.Matrix[Conforming][OnOn])
	assert.Zero(t, e.Named[FalseReject].Value)
}
