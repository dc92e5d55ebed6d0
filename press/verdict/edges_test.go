package verdict_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/verdict"
)

// Comparisons forgive 1e-9 mm to the last bit, and no more: at the very slack a position
// counts as in, one bit further it does not. Derived: by hand from that rule.
func TestSlackIsForgivenAndNoMore(t *testing.T) {
	further := func(x float64, up bool) float64 {
		return math.Nextafter(x, map[bool]float64{true: 1e9, false: -1e9}[up])
	}
	s := verdict.Signals{Start: 5, End: 12, ZoneStart: 10, ZoneEnd: 11}
	for name, c := range map[string]struct {
		edge float64
		up   bool // out is further up
		in   func(float64) bool
	}{
		"zone start": {s.ZoneStart - verdict.Slack, false, s.InZone},
		"zone end":   {s.ZoneEnd + verdict.Slack, true, s.InZone},
		"push end":   {s.End + verdict.Slack, true, s.Arrives},
		"start":      {s.Start - verdict.Slack, false, func(x float64) bool { return !s.Early(x) }},
	} {
		assert.True(t, c.in(c.edge), name)
		assert.False(t, c.in(further(c.edge, c.up)), name)
	}
	// The accepted readings are a single one where the zone begins where the push ends, give
	// or take the slack.
	edge := 12 + verdict.Slack
	low, high, ok := verdict.Signals{Start: 5, End: 12, ZoneStart: edge, ZoneEnd: 20}.Overlap()
	assert.True(t, ok)
	assert.Equal(t, []float64{edge, edge}, []float64{low, high})
	_, _, ok = verdict.Signals{Start: 5, End: 12, ZoneStart: further(edge, true), ZoneEnd: 20}.Overlap()
	assert.False(t, ok)
	// A stretch as long as the slack gives a word and a longer one does, too.
	none := verdict.Insert{Nowhere: true}
	j := verdict.Judgement{Drawing: verdict.Range{Low: -9, High: 9}, Sure: verdict.Range{Low: -9, High: 9}}
	at := func(end float64) []string {
		return verdict.NewTable(verdict.Signals{Start: 0, End: end, ZoneStart: 0, ZoneEnd: 20}, j, none).OnOn
	}
	assert.Empty(t, at(verdict.Slack))
	assert.Equal(t, []string{verdict.Good}, at(further(verdict.Slack, true)))
}

// The stretches of a push, by hand: cut at the ends of the zone and at the limits of the
// drawing, each with the state of the signals and the word for its middle, and none that
// has no length. A cut that falls on the start or the end makes no piece of its own.
func TestSegmentsByHand(t *testing.T) {
	s := verdict.Signals{Start: 5, End: 12, ZoneStart: 10, ZoneEnd: 11}
	assert.Equal(t, []verdict.Segment{
		{From: 5, To: 9, Arrival: true, Zone: false, Part: verdict.Long},
		{From: 9, To: 10, Arrival: true, Zone: false, Part: verdict.Good},
		{From: 10, To: 11, Arrival: true, Zone: true, Part: verdict.Good},
		{From: 11, To: 11.5, Arrival: true, Zone: false, Part: verdict.Good},
		{From: 11.5, To: 12, Arrival: true, Zone: false, Part: verdict.Short},
	}, verdict.Segments(s, verdict.Range{Low: 9, High: 11.5}))
	whole := []verdict.Segment{{From: 5, To: 12, Arrival: true, Zone: true, Part: verdict.Good}}
	assert.Equal(t, whole, verdict.Segments(verdict.Signals{Start: 5, End: 12, ZoneStart: 5, ZoneEnd: 12}, verdict.Range{Low: 5, High: 12}))
	assert.Equal(t, whole, verdict.Segments(verdict.Signals{Start: 5, End: 12, ZoneStart: 1, ZoneEnd: 20}, verdict.Range{Low: 2, High: 30}))
	assert.Empty(t, verdict.Segments(verdict.Signals{Start: 12, End: 5}, verdict.Range{}))
	point := verdict.Segments(verdict.Signals{Start: 5, End: 5}, verdict.Range{})
	require.NotNil(t, point, "a push of no length has no stretches, and is a push")
	assert.Empty(t, point)
	// Two cuts closer than the slack are one; as far as the slack they are two.
	near := verdict.Signals{Start: 0, End: verdict.Slack / 2, ZoneStart: 0, ZoneEnd: 1}
	assert.Empty(t, verdict.Segments(near, verdict.Range{Low: -1, High: 1}))
	near.End = verdict.Slack
	assert.Len(t, verdict.Segments(near, verdict.Range{Low: -1, High: 1}), 1)
}

// One pair of signals contradicts where it stands for what must be told apart; by hand from
// that rule, each way by itself.
func TestContradictsByHand(t *testing.T) {
	for _, c := range []struct {
		words         []string
		arrival, zone bool
		want, checked bool
	}{
		{[]string{"good"}, true, true, false, false}, {[]string{"long"}, true, true, true, false}, {[]string{"good", "short"}, true, true, true, false},
		{[]string{"good", "missing"}, true, true, true, false}, {[]string{"good", "missing"}, true, true, false, true},
		{[]string{"good"}, true, false, true, false}, {[]string{"long"}, true, false, false, false}, {[]string{"long", "short"}, true, false, true, false},
		{[]string{"long", "missing"}, false, true, true, true}, {[]string{"short", "missing"}, false, true, false, false}, {nil, false, false, false, false},
	} {
		table := verdict.Table{Checked: c.checked}
		switch {
		case c.arrival && c.zone:
			table.OnOn = c.words
		case c.arrival:
			table.OnOff = c.words
		case c.zone:
			table.OffOn = c.words
		default:
			table.OffOff = c.words
		}
		assert.Equal(t, c.want, table.Contradicts(c.arrival, c.zone), "%v", c)
		assert.Equal(t, c.want, table.Ambiguous(), "%v", c)
		assert.Equal(t, c.words, table.Words(c.arrival, c.zone))
	}
}
