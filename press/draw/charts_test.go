package draw

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

// TestForceModel: the axis holds everything that can be seen beside the curve,
// and no more.
func TestForceModel(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	m := newForceModel(p, r, *r.Traces())
	assert.Equal(t, r.Force.Need, m.need)
	assert.Equal(t, 2900.0, m.most) // station.max_force of the plan
	assert.Equal(t, press.Pair{10, 70}, m.settable)
	assert.InDelta(t, 2900*1.06, m.top, 1e-9)
	assert.Zero(t, m.bottom)
	assert.Equal(t, &press.Pair{61, 70}, m.steps)

	p = drawtest.Example(t, drawtest.Changes{"station.max_force": "1000000"})
	far := newForceModel(p, press.Evaluate(p), *press.Evaluate(p).Traces())
	assert.Less(t, far.top, 4000.0, "a cap out of reach does not flatten the curve")
}

// TestPressInModel: corners of the demand, and where a fit stalls.
func TestPressInModel(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	m := newPressInModel(p, r, *r.Traces())
	last := m.demand[len(m.demand)-1]
	assert.InDelta(t, r.Travel.PressIn, last.At, 1e-9)
	assert.InDelta(t, r.Joint.Demand[0], last.Low, 1e-6)
	assert.InDelta(t, r.Joint.Demand[2], last.High, 1e-6)
	assert.Nil(t, m.tight)

	p = drawtest.Example(t, drawtest.Changes{"window.setting": "12"})
	m = newPressInModel(p, press.Evaluate(p), *press.Evaluate(p).Traces())
	require.NotNil(t, m.tight)
	require.NotNil(t, m.stall)
	assert.Less(t, *m.tight, *m.stall)

	p = drawtest.Example(t, drawtest.Kinds["touch"])
	m = newPressInModel(p, press.Evaluate(p), *press.Evaluate(p).Traces())
	assert.Empty(t, m.demand)
}

// TestCutTop: what is cut off at the top keeps its slope below. Derived by hand:
// the line from (0, 0) to (10, 200) passes 100 at 5.
func TestCutTop(t *testing.T) {
	c := &chart{plot: canvas.Rect(0, 0, 100, 100)}
	c.scales(0, 10, 0, 100)
	assert.Equal(t, [][2]float64{{0, 0}, {5, 100}, {10, 200}}, c.cutTop([][2]float64{{0, 0}, {10, 200}}))
	assert.Equal(t, [][2]float64{{0, 200}, {5, 100}, {10, 0}}, c.cutTop([][2]float64{{0, 200}, {10, 0}}))
	assert.Equal(t, [][2]float64{{0, 50}, {10, 100}}, c.cutTop([][2]float64{{0, 50}, {10, 100}}))
}

// TestWithin: when the ram is between two positions. Derived by hand.
func TestWithin(t *testing.T) {
	way := []press.Moment{{Time: 0, Position: 0}, {Time: 1, Position: 10}, {Time: 2, Position: 10}, {Time: 3, Position: 0}}
	for _, c := range []struct {
		low, high float64
		want      []press.Pair
	}{
		{5, 20, []press.Pair{{0.5, 2.5}}},
		{5, 8, []press.Pair{{0.5, 0.8}, {2.2, 2.5}}},
		{10, 12, []press.Pair{{1, 2}}},
		{11, 12, nil},
		{-5, 20, []press.Pair{{0, 3}}},
	} {
		got := within(way, c.low, c.high)
		require.Len(t, got, len(c.want), "%v to %v", c.low, c.high)
		for i := range got {
			assert.InDeltaSlice(t, c.want[i][:], got[i][:], 1e-9)
		}
	}
}

// TestCycleModel: phases follow one another and sum up to the cycle without
// handling; signals agree with the catalogue.
func TestCycleModel(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	m := newCycleModel(p, r, *r.Traces())
	require.Len(t, m.phases, 5)
	for i := 1; i < len(m.phases); i++ {
		assert.Equal(t, m.phases[i-1].to, m.phases[i].from)
	}
	assert.InDelta(t, r.Cycle.Total-r.Cycle.Handling, m.phases[4].to, 1e-9)
	assert.InDelta(t, m.end, m.part[len(m.part)-1].Time, 1e-9)

	require.Len(t, m.lanes, 4)
	arrival, zone, without, passed := m.lanes[0], m.lanes[1], m.lanes[2], m.lanes[3]
	require.Len(t, arrival.on, 1)
	assert.InDelta(t, r.Cycle.Approach+r.Cycle.Press, arrival.on[0][0], 1e-9)
	assert.InDelta(t, m.phases[4].from, arrival.on[0][1], 1e-9)
	require.Len(t, zone.on, 1)
	assert.Less(t, zone.on[0][0], arrival.on[0][0], "the ram enters the zone before it rests")
	assert.Greater(t, zone.on[0][1], arrival.on[0][1], "and leaves it on its way back")
	assert.Empty(t, without.on)
	assert.Len(t, passed.on, 1)
	assert.True(t, passed.dashed)
}

// TestChartsAreSVG of every kind.
func TestChartsAreSVG(t *testing.T) {
	for _, name := range drawtest.KindNames() {
		p := drawtest.Example(t, drawtest.Kinds[name])
		r := press.Evaluate(p)
		for what, draw := range pictures {
			d := draw(p, r, Options{})
			drawtest.WellFormedSVG(t, svgOf(d))
			assert.NotContains(t, d.Description(), "–", what)
			assert.NotEmpty(t, d.Title())
		}
	}
}

// TestForceTicks: every settable step has a tick while they can be told apart; else
// a round number of steps lies between ticks, and the drawing says so. Derived: the
// curve from 10 to 70 % is drawn some 460 px wide, or 220 in the narrow form.
func TestForceTicks(t *testing.T) {
	for _, c := range []struct {
		step    string
		compact bool
		ticks   int
		said    string
	}{
		{"1", false, 61, ""},
		{"0.1", false, 61, "to be set every 0.1 %, a tick every 1 %"},
		{"1", true, 31, "to be set every 1 %, a tick every 2 %"},
		{"0.1", true, 31, "to be set every 0.1 %, a tick every 2 %"},
		{"0.25", false, 49, "to be set every 0.25 %, a tick every 1.25 %"},
		{"0.01", true, 31, "to be set every 0.01 %, a tick every 2 %"},
	} {
		p := drawtest.Example(t, drawtest.Changes{"ram.setting_step": c.step})
		r := press.Evaluate(p)
		d := layForce(newForceModel(p, r, *r.Traces()), Options{Compact: c.compact})
		ticks := d.ticks()
		assert.Len(t, ticks, c.ticks, "step %s", c.step)
		for i := 1; i < len(ticks); i++ {
			assert.GreaterOrEqual(t, d.x.At(ticks[i])-d.x.At(ticks[i-1]), tickApart-1e-6)
		}
		said := strings.ReplaceAll(d.xName, "\u202f", " ")
		assert.Equal(t, c.said != "", strings.Contains(said, "a tick every"), "step %s", c.step)
		assert.Contains(t, said, c.said)
	}
}
