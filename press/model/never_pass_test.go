package model

import (
	"flag"
	"math"
	"math/rand/v2"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// No part without grip gets past both looks, within the guard: in a station that is
// simulated, 2.3 % at most of those of the worst height differ by more than two standard
// uncertainties between their readings (with a guard factor of 1), and none of those of
// the nominal height: in 10,000 plans.
func TestProbeAndPressNeverPassALoosePart(t *testing.T) {
	const plans = 10_000
	often := flag.Lookup("rapid.checks").Value
	usual := often.String()
	require.NoError(t, often.Set(strconv.Itoa(plans)))
	t.Cleanup(func() { _ = often.Set(usual) })
	probed := 0
	rapid.Check(t, func(t *rapid.T) {
		p := randomInput(t)
		if p.Joint.Kind != Interference || rapid.IntRange(0, 2).Draw(t, "the example") == 0 {
			p = example()
		}
		p.Probe = &Probing{Use: true, ConfirmTime: p.Motion.ConfirmTime, ZoneLive: rapid.Bool().Draw(t, "alive")}
		if rapid.Bool().Draw(t, "guarded") {
			p.Window.GuardFactor = 1
		}
		w := EvaluateWithoutRisk(p).work
		if !w.probeWorks() || !w.zone.known || p.Window.GuardFactor < 1 {
			return
		}
		probed++
		r := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 1))
		q, st := w.probed, &p.Station
		const parts = 1000
		// Shoulders at which the probe reads its limit on the mean, or some sd before or past.
		for _, off := range []float64{-3, -1, 0, 1, 3} {
			// Just before it, for where nothing scatters a part at the limit itself stands on
			// the zone's edge in the press, and both ends count as inside.
			shoulder := q.limit - q.deflection + off*p.Ram.Repeatability/2 - 1e-6
			both := 0
			for range parts {
				repeat := func() float64 { return p.Ram.Repeatability / 2 * r.NormFloat64() }
				give := (1 + st.StiffnessTolerance/200*r.NormFloat64()) / st.Stiffness
				first := shoulder + (q.force.typical+q.force.scatter/2*r.NormFloat64()-st.NestForce)*give + repeat()
				second := shoulder + (w.force.now.typical+w.force.now.scatter/2*r.NormFloat64()-st.NestForce)*give + repeat()
				if q.passes(first) && w.zone.at.Arrives(second) && w.zone.at.InZone(second) {
					both++
				}
			}
			require.LessOrEqual(t, float64(both), 0.0228*parts+7*math.Sqrt(0.0228*parts))
		}
		// The nominal height: it runs past the limit.
		loose := push{drag: p.Joint.Drag, counter: p.Joint.Counterforce, travel: w.parts.travel}
		reading, _ := w.rest(0, q.force.typical, loose)
		press, _ := w.rest(0, w.force.now.typical, loose)
		require.False(t, q.passes(reading) && w.zone.at.InZone(press), "a loose part of nominal height looks good")
	})
	assert.Greater(t, probed, plans/20, "too few plans had a probe that works")
}
