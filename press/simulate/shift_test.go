package simulate

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/risk"
	"ramplan/press/stack"
)

func randomTerms(t *rapid.T, name string, most int) []stack.Term {
	var out []stack.Term
	for range rapid.IntRange(0, most).Draw(t, name) {
		half := rapid.Float64Range(0, 0.1).Draw(t, name+" half")
		if half < 1e-4 {
			half = 0 // widths of nothing, and none that the exact sums themselves round away
		}
		out = append(out, stack.Term{
			Row:   stack.Row{Half: half, Shape: stack.Shape(rapid.IntRange(0, 2).Draw(t, name+" shape")), Sigmas: 3},
			Times: rapid.SampledFrom([]float64{1, -1, 2}).Draw(t, name+" times"),
		})
	}
	return out
}

// The table of shifts is the exact distribution: V alone, heights alone, and both together
// as the risks of all parts, which integrate in another way.
func TestShiftIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		product, other, beside := randomTerms(t, "product", 4), randomTerms(t, "other", 3), randomTerms(t, "beside", 2)
		p, w, b := stack.NewSum(product), stack.NewSum(other), stack.NewSum(beside)
		low, high := rapid.Float64Range(-0.2, 0).Draw(t, "low"), rapid.Float64Range(0.001, 0.2).Draw(t, "high")
		h := makeShift(p, w, b, low, high)
		height := stack.NewSum(append(product, beside...))
		if height.Point() || h.fixed {
			return
		}
		// Derived: the exact sums are good to 1e-10, and the tables add 1e-11.
		require.InDelta(t, height.Above(high), h.total[tall], 1e-9)
		require.InDelta(t, height.CDF(low), h.total[squat], 1e-9)
		shift := stack.NewSum(append(product, other...))
		for _, s := range []float64{-0.3, -0.05, 0, 0.011, 0.2} {
			s += rapid.Float64Range(-0.01, 0.01).Draw(t, "s")
			require.InDelta(t, shift.CDF(s), h.below(s).all(), 1e-9, "V under %v", s)
		}
		from := rapid.Float64Range(-0.3, 0.2).Draw(t, "from")
		to := from + rapid.Float64Range(0, 0.3).Draw(t, "wide")
		all := risk.Population{Height: p, Low: low, High: high}
		if !b.Point() {
			all.Beside, all.Whole = b, height
		}
		// A reading is −V: the window of readings is the interval of V turned round.
		consumer, producer := all.Global(risk.Window{Low: -to, High: -from, Error: w})
		a, z := h.below(from), h.below(to)
		within := 2e-9
		if w.Point() { // the closed form then forgives 1e-9 mm at both ends
			within += 2e-9 / p.SD()
		}
		require.InDelta(t, consumer, z[tall]-a[tall]+z[squat]-a[squat], within, "consumer")
		require.InDelta(t, producer, h.total[right]-(z[right]-a[right]), within, "producer")
	})
}

// Far from where V is there is nothing, and all of it.
func TestShiftEnds(t *testing.T) {
	p := stack.NewSum([]stack.Term{{Row: stack.Row{Half: 0.1, Shape: stack.Normal, Sigmas: 3}, Times: 1}})
	w := stack.NewError(0.01, nil)
	h := makeShift(p, w, stack.NewSum(nil), -0.05, 0.05)
	for _, far := range []float64{1, 1e6, math.Inf(1)} {
		require.Equal(t, three{}, h.below(-far))
		require.Equal(t, h.total, h.below(far))
	}
}
