package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// pastNest is a plan whose window and push end reach past the empty nest: the rows of the
// parts stand 25 mm above it, and nothing short of them is refused. By hand: the push ends at
// 107 + 35 = 142, the nest lies at 140.
var pastNest = changes{"window.approach_end": "107", "window.push_stroke": "35", "ram.stroke": "160"}

// What lies past the empty nest is never reached: neither the headline nor a limit sample nor
// a row of the catalogue names a figure there.
func TestNothingIsSaidOfWhatLiesPastTheNest(t *testing.T) {
	p := example(t, pastNest)
	r := press.Evaluate(p)
	stop, stops := r.NestStops()
	require.True(t, stops)
	require.NotNil(t, r.Samples)
	require.Greater(t, r.Window.Overlap[1], stop.Reading)
	said := plain(strings.Join(append(say.passes(p, r), Printer{}.catches(p, r)), "; "))
	assert.Contains(t, said, "passes parts by any amount too short")
	assert.Contains(t, said, "but none for being too short: the nest itself stops the ram")
	assert.NotRegexp(t, `\d mm too short`, said)
	assert.Contains(t, Accepted(p, r), "on, down to the nest")
	short := say.LimitSamples(p, r)[3]
	assert.Equal(t, "none: the nest stops the ram before", short.Heights(p))
	assert.False(t, short.Pressed())
	for _, push := range say.shiftPushes(p, r) {
		assert.NotContains(t, push.what, "too short")
	}
	for _, name := range []string{press.RowShortest, press.RowShort} {
		assert.Contains(t, say.FaultMeans(p, r, *row(r, name)), "There is no such part: the nest itself stops the ram before")
	}
	p = example(t, nil)
	r = press.Evaluate(p)
	assert.True(t, say.LimitSamples(p, r)[3].Pressed())
	assert.NotContains(t, Headline(p, r)+say.FaultMeans(p, r, *row(r, press.RowShort)), "nest")
}

// A row at the edge of the window says how that edge lies to the drawing: in the guard band
// as proposed, outside, or where parts are certain to be good. By hand: good parts read from
// 115.05 or so, and a zone that starts at 115 lets in what stands 0.05 mm too tall.
func TestTheEdgeIsToldAsItLies(t *testing.T) {
	said := func(c changes, name string) (means, judged string) {
		p := example(t, c)
		r := press.Evaluate(p)
		f := row(r, name)
		require.NotNil(t, f)
		return say.FaultMeans(p, r, *f), Judged(p, r, *f)
	}
	means, judged := said(nil, press.RowLong)
	assert.Contains(t, means, "the guard band is kept on purpose")
	assert.Contains(t, judged, "a toss-up by nature")

	early := changes{"window.zone_start": "115"}
	means, judged = said(early, press.RowLong)
	assert.Contains(t, means, "It lies outside the drawing, and what lies between passes")
	assert.Equal(t, "passes about half the time, though outside the drawing", judged)
	means, judged = said(early, press.RowTallest)
	assert.Contains(t, means, "It is accepted although it lies outside")
	assert.NotContains(t, means+judged, "by nature")

	late := changes{"window.zone_start": "115.34"}
	good := press.Evaluate(example(t, late)).Window.Acceptance
	require.NotNil(t, good)
	late["window.zone_start"] = Fixed((good[0]+good[1])/2, 2)
	means, judged = said(late, press.RowLong)
	assert.Contains(t, means, "although it is certain to be within the drawing")
	assert.Equal(t, "refused about half the time, though good", judged)
}

// What passes on the deep side is not what stands taller, and a zone that starts early says
// how tight a fit still gets through. By hand: at a zone start of 115 the nominal part stands
// the tighter by what the last tenths of its way take.
func TestTheOverlapNamesWhatItLetsIn(t *testing.T) {
	loose := changes{"targets.false_accept_ppm": "1000000"}
	f := found(t, press.OverlapWider, with(loose, changes{"window.zone_start": "115"}))
	require.Equal(t, press.Caution, f.Severity)
	assert.Contains(t, f.Message, "a part that stalls or lies on a chip passes too, and a fit up to")
	assert.NotContains(t, f.Message, "crushed")

	// Held to the row of the tight fit: 1.2 times the strong push is more than that part, so it
	// is refused; a fit as tight as is said stalls at the very start of the overlap.
	p := example(t, with(loose, changes{"window.zone_start": "115"}))
	r := press.Evaluate(p)
	back := r.Travel.SeatReading - r.Window.Overlap[0]
	length := p.Joint.Engagement
	demand := p.Joint.Drag + (r.Force.Typical-p.Joint.Drag)*length/(length-back)
	assert.InDelta(t, 100*(demand/r.Force.Typical-1), *f.Figures.(press.WiderFigures).Tight, 1e-6)

	f = found(t, press.OverlapWider, with(loose, changes{"window.push_stroke": "8.05", "window.approach_end": "107.5"}))
	assert.NotContains(t, f.Message, "stalls")
	assert.Contains(t, f.Message, "one with a crushed row")
	assert.Contains(t, Fault(press.FaultRow{Name: press.RowTight}).Meaning, "One case of many")
}

// What heats is named first: the slow push where it lasts longer than the hold. By hand: 8 mm
// and more at 0.5 mm/s are 16 s, against no hold at all.
func TestHeatingNamesTheSlowPushFirst(t *testing.T) {
	f := found(t, press.HeatingOver, changes{"motion.slow_speed": "0.5", "motion.handling_time": "0.1"})
	assert.Contains(t, f.Message, "the slow push lasts")
	assert.Less(t, strings.Index(f.Message, "slow push"), strings.Index(f.Message, "wait longer"))
	f = found(t, press.HeatingOver, changes{"motion.hold_time": "30", "motion.handling_time": "0.1"})
	assert.NotContains(t, f.Message, "slow push")
}

// A zone end that was proposed follows the push end: nobody is told to move it.
func TestAProposedZoneEndIsNotMoved(t *testing.T) {
	early := changes{"window.push_stroke": "7"}
	f := found(t, press.AmbiguousTable, early)
	assert.NotContains(t, f.Message, "the zone end from")
	assert.Contains(t, f.Message, "the push end from")
	f = found(t, press.AmbiguousTable, with(early, changes{"window.zone_end": "115.06"}))
	assert.Contains(t, f.Message, "the zone end from")
}
