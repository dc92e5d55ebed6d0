package risk_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/risk"
	"ramplan/press/stack"
)

// population draws parts and an error of any kind: normal, uniform, without spread, with
// rows beside.
func population(t *rapid.T) (risk.Population, *stack.Sum) {
	length := func(most float64, name string) float64 {
		return math.Round(rapid.Float64Range(0, most).Draw(t, name)*1e5) / 1e5
	}
	shape := func(name string) stack.Shape { return stack.Shape(rapid.IntRange(0, 2).Draw(t, name)) }
	var product, beside, noise []stack.Term
	for range rapid.IntRange(1, 4).Draw(t, "rows") {
		product = append(product, row(length(5, "mean"), length(0.08, "half"), shape("shape")))
	}
	if rapid.IntRange(0, 2).Draw(t, "beside") == 0 {
		beside = []stack.Term{row(0, length(0.03, "beside half"), shape("beside shape"))}
	}
	for range rapid.IntRange(0, 2).Draw(t, "noise") {
		noise = append(noise, row(0, length(0.02, "noise half"), shape("noise shape")))
	}
	sigma := 0.0
	if rapid.IntRange(0, 3).Draw(t, "normal") > 0 {
		sigma = length(0.02, "sigma")
	}
	p := risk.Population{Height: stack.NewSum(product), Base: 100}
	p.Low, p.High = p.Height.Mean()-0.002-length(0.08, "below"), p.Height.Mean()+0.002+length(0.08, "above")
	if beside != nil {
		p.Beside, p.Whole = stack.NewSum(beside), stack.NewSum(append(product, beside...))
	}
	return p, stack.NewError(sigma, noise)
}

// doubt is by how much two ways to one integral may differ: both are exact to 1e-9, less
// where widths of very different size and nothing normal are added up, and where nothing
// blurs a reading, what lies within the slack of an edge goes to either side.
func doubt(p risk.Population, e *stack.Sum) float64 {
	d := 2e-9
	if e.Normal() == 0 || p.Height.Normal() == 0 {
		d = 3e-8
	}
	if e.Point() {
		d += 4e-9 * p.Height.PDF(p.Height.Mean())
	}
	return d
}

// The ends of a window, each by itself, give the risks that the integrals over the whole
// window give.
func TestEdgesAddUpToTheWindow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, e := population(t)
		edges := p.Edges(e)
		mid := 100 - p.Height.Mean()
		for range 4 {
			at := func(name string) float64 { return mid + rapid.Float64Range(-0.12, 0.12).Draw(t, name) }
			low, high := at("low"), at("high")
			if low > high {
				low, high = high, low
			}
			consumer, producer := p.Global(risk.Window{Low: low, High: high, Error: e})
			c, q := edges.Global(edges.Lower(low), edges.Upper(high))
			if d := doubt(p, e); math.Abs(c-consumer) > d || math.Abs(q-producer) > d {
				t.Fatalf("%v to %v: consumer %v and %v, producer %v and %v", low, high, c, consumer, q, producer)
			}
		}
	})
}

// With uniform heights and no error the shares are lengths. By hand: heights 24.9 to 25.1,
// drawing 24.95 to 25.05, base 140, so readings 114.9 to 115.1, good 114.95 to 115.05.
func TestEdgesWithoutErrorByHand(t *testing.T) {
	p := risk.Population{Height: stack.NewSum([]stack.Term{row(25, 0.1, stack.Uniform)}), Low: 24.95, High: 25.05, Base: 140}
	edges := p.Edges(stack.NewError(0, nil))
	low := edges.Lower(114.93)
	assert.InDelta(t, 0.02/0.2, low.LongAbove, 1e-12)
	assert.InDelta(t, 0, low.GoodBelow, 1e-12)
	high := edges.Upper(115.02)
	assert.InDelta(t, 0, high.LongAbove, 1e-12)
	assert.InDelta(t, 0.07/0.2, high.GoodBelow, 1e-12)
	consumer, producer := edges.Global(low, high)
	assert.InDelta(t, 0.1, consumer, 1e-12)
	assert.InDelta(t, 0.03/0.2, producer, 1e-12)
}

// Parts that are all alike, read without error, are within a window that ends on them.
func TestEdgesOnAPoint(t *testing.T) {
	p := risk.Population{Height: stack.NewSum([]stack.Term{row(25, 0, stack.Uniform)}), Low: 24.95, High: 25.05, Base: 140}
	edges := p.Edges(stack.NewError(0, nil))
	require.False(t, edges.Alike())
	for _, w := range [][2]float64{{115, 115.1}, {114.9, 115}, {115, 115}} {
		_, producer := edges.Global(edges.Lower(w[0]), edges.Upper(w[1]))
		assert.Zero(t, producer, w)
	}
	_, producer := edges.Global(edges.Lower(115.01), edges.Upper(115.1))
	assert.Equal(t, 1.0, producer)
}

// The best window of a search is the best of all pairs, each judged by the integrals over
// the whole window.
func TestBestIsTheBestOfAllPairs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, e := population(t)
		mid := 100 - p.Height.Mean()
		step := rapid.SampledFrom([]float64{0.005, 0.01, 0.02}).Draw(t, "step")
		var places []risk.Place
		for k := math.Ceil((mid - 0.06) / step); k*step <= mid+0.06; k++ {
			places = append(places, risk.Place{At: k * step, End: k * step})
		}
		goal := risk.Goal{Days: []*risk.Edges{p.Edges(e)},
			Accept: math.Pow(10, rapid.Float64Range(-7, -1).Draw(t, "accept")),
			Reject: math.Pow(10, rapid.Float64Range(-7, 0).Draw(t, "reject"))}
		got, ok := goal.Best(places, places)
		if !ok {
			t.Fatalf("nothing found among %d places", len(places))
		}
		judge := func(i, j int) float64 {
			c, q := p.Global(risk.Window{Low: places[i].End, High: places[j].End, Error: e})
			return max(c/goal.Accept, q/goal.Reject)
		}
		// What both ways of integrating may differ by, in terms of the targets.
		doubt := 2 * doubt(p, e) / min(goal.Accept, goal.Reject)
		least, narrowest := math.Inf(1), math.Inf(1)
		for i := range places {
			for j := i + 1; j < len(places); j++ {
				m := judge(i, j)
				least = min(least, m)
				if m <= 0.1-doubt {
					narrowest = min(narrowest, places[j].End-places[i].End)
				}
			}
		}
		m := judge(got.Low, got.High)
		if math.Abs(m-got.Measure()) > doubt {
			t.Fatalf("judged %v, found with %v", m, got.Measure())
		}
		width := places[got.High].End - places[got.Low].End
		switch {
		case !math.IsInf(narrowest, 1):
			if width > narrowest+1e-9 || m > 0.1+doubt {
				t.Fatalf("width %v with %v, the narrowest with a tenth is %v", width, m, narrowest)
			}
		case m > least*(1+2e-6)+2*doubt:
			t.Fatalf("measure %v, the least is %v", m, least)
		}
	})
}

// Three places, by hand: heights uniform 24.9 to 25.1, drawing 24.95 to 25.05, no error.
// Readings of good parts are 114.95 to 115.05.
func TestBestByHand(t *testing.T) {
	p := risk.Population{Height: stack.NewSum([]stack.Term{row(25, 0.1, stack.Uniform)}), Low: 24.95, High: 25.05, Base: 140}
	day := []*risk.Edges{p.Edges(stack.NewError(0, nil))}
	at := func(xs ...float64) (out []risk.Place) {
		for _, x := range xs {
			out = append(out, risk.Place{At: x, End: x})
		}
		return out
	}
	places := at(114.93, 114.95, 115, 115.05, 115.06)
	// Rejecting a quarter of all parts costs nothing here: a tenth of the target of 1 is
	// reached by no half window (0.25) but by the whole good range (0), which is narrower
	// than any with wrong parts.
	best, ok := risk.Goal{Accept: 0.5, Reject: 1, Days: day}.Best(places, places)
	require.True(t, ok)
	assert.Equal(t, [2]int{1, 3}, [2]int{best.Low, best.High})
	assert.InDelta(t, 0, best.Measure(), 1e-9)

	// Only a narrow pair is left, whatever the targets: rejects 0.25 of 0.1.
	best, ok = risk.Goal{Accept: 0.1, Reject: 0.1, Days: day}.Best(at(115), at(115.05))
	require.True(t, ok)
	assert.InDelta(t, 2.5, best.Measure(), 1e-9)
	assert.True(t, best.CanAccept)
	assert.False(t, best.CanReject)

	_, ok = risk.Goal{Accept: 0.1, Reject: 0.1, Days: day}.Best(at(115), at(115))
	assert.False(t, ok, "a window of no width is none")
}

func BenchmarkBest(b *testing.B) {
	p := risk.Population{Height: stack.NewSum([]stack.Term{row(22, 0.02, stack.Normal), row(3, 0.015, stack.Uniform)}), Low: 24.91, High: 25.09, Base: 140.13}
	e := stack.NewError(0.0126, []stack.Term{row(0, 0.01, stack.Uniform)})
	var places []risk.Place
	for k := range 18 {
		x := 115.05 + 0.01*float64(k)
		places = append(places, risk.Place{At: x, End: x})
	}
	b.ReportAllocs()
	for b.Loop() {
		risk.Goal{Accept: 1e-4, Reject: 1e-3, Days: []*risk.Edges{p.Edges(e)}}.Best(places, places)
	}
}
