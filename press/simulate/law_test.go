package simulate

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/stat/distuv"
	"pgregory.net/rapid"

	"ramplan/press/stack"
)

func laws(t *rapid.T) law {
	middle := rapid.Float64Range(-50, 50).Draw(t, "middle")
	a := rapid.Float64Range(0.01, 20).Draw(t, "a")
	b := rapid.Float64Range(0, 20).Draw(t, "b")
	switch rapid.IntRange(0, 2).Draw(t, "law") {
	case 0:
		return normal{middle, a}
	case 1:
		return newTrapezoid(middle, a, b)
	}
	return triangle{middle, middle + b, middle + b + a}
}

// The two tails make one, fall and rise, and the way back leads there.
func TestLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := laws(t)
		x := rapid.Float64Range(-100, 150).Draw(t, "x")
		above, below := l.above(x), l.below(x)
		require.InDelta(t, 1, above+below, 1e-12)
		require.True(t, above >= 0 && below >= 0)
		require.LessOrEqual(t, l.above(x+rapid.Float64Range(0, 30).Draw(t, "further")), above+1e-15)
		require.InDelta(t, below, l.upTo(x), 1e-15)
		share := rapid.Float64Range(1e-9, 1-1e-9).Draw(t, "share")
		// Derived: a place of a hundred is kept to 1e-14 of itself, and by how much the share
		// differs there hangs on how narrow the law is.
		place, within := l.upper(share), 1e-12
		require.LessOrEqual(t, l.above(place+within), share*(1+1e-6))
		require.GreaterOrEqual(t, l.above(place-within), share*(1-1e-6))
		require.InDelta(t, l.below(30)-l.below(10), between(l, 10, 30), 1e-12)
		require.Zero(t, between(l, 30, 10))
	})
}

// A trapezoid is what two uniform rows add up to.
func TestTrapezoidIsASum(t *testing.T) {
	sum := stack.NewSum([]stack.Term{{Row: stack.Row{Mean: 30, Half: 9}, Times: 1}, {Row: stack.Row{Half: 5.5}, Times: -1}})
	l := newTrapezoid(30, 5.5, 9)
	for x := 10.0; x < 50; x += 0.37 {
		assert.InDelta(t, sum.CDF(x), l.below(x), 1e-10, x)
	}
	one := newTrapezoid(30, 9, 0)
	assert.InDelta(t, 0.25, one.above(34.5), 1e-15, "by hand: a quarter of the way from the upper end")
	assert.InDelta(t, 34.5, one.upper(0.25), 1e-12)
}

// A triangle is the library's, and tails far out keep their digits.
func TestTriangleAndTails(t *testing.T) {
	library := distuv.NewTriangle(1, 5, 2, nil)
	for x := 0.5; x < 5.5; x += 0.1 {
		assert.InDelta(t, library.CDF(x), triangle{1, 2, 5}.below(x), 1e-14, x)
	}
	assert.InEpsilon(t, 1e-8/(4*3), triangle{1, 2, 5}.above(5-1e-4), 1e-9, "by hand: x² over the width and the longer side")
	assert.InEpsilon(t, 7.6198530241605e-24, normal{0, 1}.above(10), 1e-12, "standard normal tables, from memory")
	always := always(3)
	assert.Equal(t, []float64{0, 0, 1}, []float64{always.above(3), always.below(3), always.upTo(3)})
}

func TestStudent(t *testing.T) {
	assert.InDelta(t, distuv.StudentsT{Sigma: 1, Nu: Replications - 1}.Quantile(0.975), student, 1e-9)
	assert.False(t, math.IsNaN(student))
}
