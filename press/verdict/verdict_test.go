package verdict_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/verdict"
)

// The table of model section 8: what each place of the push end leads to.
// Derived: from the definitions, for a drawing that is good from 10.0 to 10.4
// and surely good from 10.1 to 10.3.
func TestTableByPushEnd(t *testing.T) {
	j := verdict.Judgement{Drawing: verdict.Range{Low: 10, High: 10.4}, Sure: verdict.Range{Low: 10.1, High: 10.3}}
	past := verdict.Insert{Reading: 20}
	list := func(words ...string) []string { return append([]string{}, words...) }
	for _, c := range []struct {
		name      string
		signals   verdict.Signals
		want      verdict.Table
		ambiguous bool
	}{
		{"inside the zone", verdict.Signals{Start: 5, End: 10.3, ZoneStart: 10.1, ZoneEnd: 10.5},
			verdict.Table{OnOn: list("good"), OnOff: list("long"), OffOn: list("short", "missing"), OffOff: list()}, false},
		{"past the zone", verdict.Signals{Start: 5, End: 11, ZoneStart: 10.1, ZoneEnd: 10.3},
			verdict.Table{OnOn: list("good"), OnOff: list("long", "short"), OffOn: list(), OffOff: list("short", "missing")}, true},
		{"before the zone", verdict.Signals{Start: 5, End: 10.05, ZoneStart: 10.1, ZoneEnd: 10.3},
			verdict.Table{OnOn: list(), OnOff: list("long"), OffOn: list(), OffOff: list("long", "good", "short", "missing")}, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := verdict.NewTable(c.signals, j, past)
			assert.Equal(t, c.want, got)
			assert.Equal(t, c.ambiguous, got.Ambiguous())
		})
	}
}

// Common practice, no source: good means arrival and zone together, one alone
// means too tall or too short.
func TestGoodMeansBoth(t *testing.T) {
	s := verdict.Signals{Start: 5, End: 10.3, ZoneStart: 10.1, ZoneEnd: 10.5}
	for _, c := range []struct {
		reading       float64
		arrival, zone bool
	}{{9.9, true, false}, {10.1, true, true}, {10.3, true, true}, {10.35, false, true}} {
		arrival, zone := s.At(c.reading)
		assert.Equal(t, [2]bool{c.arrival, c.zone}, [2]bool{arrival, zone}, "reading %v", c.reading)
	}
}

// The table made of stretches holds the words that a walk along 10,000 readings
// meets.
func TestTableIsWhatAWalkMeets(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 3))
	hundredth := func() float64 { return math.Round(r.Float64()*400) / 100 }
	for range 300 {
		s := verdict.Signals{Start: hundredth(), End: hundredth(), ZoneStart: hundredth(), ZoneEnd: hundredth()}
		edges := []float64{hundredth(), hundredth(), hundredth(), hundredth()}
		slices.Sort(edges)
		if edges[0] == edges[3] {
			continue
		}
		j := verdict.Judgement{Drawing: verdict.Range{Low: edges[0], High: edges[3]}, Sure: verdict.Range{Low: edges[1], High: edges[2]}}
		got := verdict.NewTable(s, j, verdict.Insert{Nowhere: true})
		walk := map[[2]bool]map[string]bool{}
		// Steps of 0.00051 mm never fall on an edge for long and pass between all.
		for i := range 10000 {
			reading := s.Start + 0.00051*(float64(i)+0.37)
			arrival, zone := reading <= s.End, reading >= s.ZoneStart && reading <= s.ZoneEnd
			if !arrival {
				zone = s.End >= s.ZoneStart && s.End <= s.ZoneEnd
			}
			limits := j.Sure
			if arrival && zone {
				limits = j.Drawing
			}
			word := verdict.Good
			if reading < limits.Low {
				word = verdict.Long
			} else if reading > limits.High {
				word = verdict.Short
			}
			pair := [2]bool{arrival, zone}
			if walk[pair] == nil {
				walk[pair] = map[string]bool{}
			}
			walk[pair][word] = true
		}
		for pair, list := range map[[2]bool][]string{{true, true}: got.OnOn, {true, false}: got.OnOff, {false, true}: got.OffOn, {false, false}: got.OffOff} {
			words := 0
			for _, word := range list {
				if word != verdict.Missing {
					words++
					require.True(t, walk[pair][word], "%+v %+v: %v holds %q, the walk met %v", s, j, pair, word, walk[pair])
				}
			}
			require.Len(t, walk[pair], words, "%+v %+v: %v is %v, the walk met %v", s, j, pair, list, walk[pair])
		}
	}
}

func TestSegmentsCoverThePushStroke(t *testing.T) {
	s := verdict.Signals{Start: 5, End: 10.3, ZoneStart: 10.1, ZoneEnd: 10.5}
	got := verdict.Segments(s, verdict.Range{Low: 10, High: 10.4})
	// Derived by hand.
	assert.Equal(t, []verdict.Segment{
		{From: 5, To: 10, Arrival: true, Part: "long"},
		{From: 10, To: 10.1, Arrival: true, Part: "good"},
		{From: 10.1, To: 10.3, Arrival: true, Zone: true, Part: "good"},
	}, got)
	assert.Empty(t, verdict.Segments(verdict.Signals{Start: 6, End: 5}, verdict.Range{Low: 1, High: 2}))
}

func TestMissingInsert(t *testing.T) {
	s := verdict.Signals{Start: 5, End: 10.3, ZoneStart: 10.1, ZoneEnd: 10.5}
	j := verdict.Judgement{Drawing: verdict.Range{Low: 10, High: 10.4}, Sure: verdict.Range{Low: 10.1, High: 10.3}}
	has := func(list []string) bool { return slices.Contains(list, verdict.Missing) }
	in := verdict.NewTable(s, j, verdict.Insert{Reading: 10.2})
	assert.True(t, has(in.OnOn))
	assert.True(t, in.Ambiguous())
	early := verdict.NewTable(s, j, verdict.Insert{Reading: 4.9})
	assert.False(t, has(early.OnOn) || has(early.OnOff) || has(early.OffOn) || has(early.OffOff))
	assert.True(t, has(verdict.NewTable(s, j, verdict.Insert{Nowhere: true}).OffOn))
}

// Common practice, no source: a zone may be as narrow as the repeatability and
// as wide as the stroke.
func TestZoneWidths(t *testing.T) {
	for _, s := range []verdict.Signals{
		{Start: 5, End: 10.3, ZoneStart: 10.19, ZoneEnd: 10.21},
		{Start: 5, End: 10.3, ZoneStart: 0, ZoneEnd: 150},
	} {
		low, high, ok := s.Overlap()
		assert.True(t, ok)
		assert.LessOrEqual(t, low, high)
	}
}
