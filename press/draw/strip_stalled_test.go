package draw

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
)

// spreadOf makes up a spread of 0.01 mm wide cells: seated ones about the nominal reading,
// and stalled ones about at, as many of a million.
func spreadOf(r *press.Result, at, ppm float64) *press.ReadingSpread {
	s := &press.ReadingSpread{StalledPPM: ppm, AcceptedPPM: ppm / 4, Points: 512, Seed: 1}
	bell := func(x float64) float64 { return math.Exp(-x*x/2/0.02/0.02) / 0.02 / math.Sqrt(2*math.Pi) }
	for i := -200; i <= 200; i++ {
		x := nominalReading(r) + 0.01*float64(i)
		s.Seated = append(s.Seated, press.Pair{x, (1 - ppm/1e6) * bell(x-nominalReading(r))})
		s.Stalled = append(s.Stalled, press.Pair{x, ppm / 1e6 * bell(x-at)})
	}
	return s
}

// TestStalledReadings: parts that stall have a density of their own on the strip, drawn
// higher where it would not be seen, and the text equivalent says how many there are.
// Heights by hand: both are bells of one width, so that their peaks are as their shares.
func TestStalledReadings(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	seat := nominalReading(r)
	for _, c := range []struct {
		at, ppm, times float64
		label, desc    string
	}{
		{seat - 0.08, 400_000, 1, "stalled 400\u202f000\u202fppm", "400\u202f000 in a million parts stall before their seat; of all parts 100\u202f000\u202fppm stall and yet"}, // 0.67 of the peak
		{seat - 0.08, 80, 5000, "stalled 80.0\u202fppm", "80.0 in a million parts stall"},                                                                                       // 8e-5 of it; 0.5 at 6250
		{seat - 0.08, 5e4, 5, "stalled 50\u202f000\u202fppm", "50\u202f000 in a million"},                                                                                       // 1/19 of it; 0.5 at 9.5
		{seat - 1.9, 100, 0, "← stalled 100\u202fppm", "most of them further up than the magnified stretch"},
	} {
		spread := spreadOf(r, c.at, c.ppm)
		m := newStripModel(p, r, *r.Traces())
		m.simulated(spread)
		require.NotNil(t, m.stalled)
		d := newStripDrawing(m, Options{})
		assert.Equal(t, c.times, d.lens.stalledTimes())
		assert.Contains(t, m.desc, c.desc)
		for _, o := range forms {
			o.Spread = spread
			picture := NewStrip(p, r, o)
			labelsApart(t, picture, c.label)
			var all []string
			for _, l := range picture.Texts() {
				all = append(all, l.Text)
			}
			assert.Contains(t, strings.Join(all, "\n"), c.label[:strings.Index(c.label, "\u202fppm")], "%+v", o)
		}
	}
}

// TestNothingStalls: where hardly any part stalls, or nobody knows, the strip is as ever.
func TestNothingStalls(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	usual := svgOf(NewStrip(p, r, Options{}))
	assert.Equal(t, usual, svgOf(NewStrip(p, r, Options{Spread: spreadOf(r, nominalReading(r)-0.08, 0.05)})))
	assert.NotEqual(t, usual, svgOf(NewStrip(p, r, Options{Spread: spreadOf(r, nominalReading(r)-0.08, 0.5)})))
}
