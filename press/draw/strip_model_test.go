package draw

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
	"ramplan/press/words"
)

// made is a result made up by hand: the push stroke runs from 10 to 20.2, the
// zone from 20 to 20.5, the drawing allows readings from 19.9 to 20.3.
func made() *press.Result {
	e, z1, z2, seat := 20.2, 20.0, 20.5, 20.1
	return &press.Result{Outcome: press.Outcome{
		Travel: press.Travel{ApproachEnd: 10, Contact: 15, SlowContact: 5, PressIn: 5, SeatReading: 20.1, PushEnd: &e},
		Window: press.Readings{GoodRange: press.Pair{19.9, 20.3}, GuardBand: 0.1, Acceptance: &press.Pair{20, 20.2}, Zone: &[2]*float64{&z1, &z2}, Overlap: &press.Pair{20, 20.2}, Uncertainty: 0.05},
		Verdict: &press.Verdict{
			Segments: []press.Segment{{From: 10, To: 19.9, Arrival: true, Part: press.Long}, {From: 19.9, To: 20, Arrival: true, Part: press.Good}, {From: 20, To: 20.2, Arrival: true, Zone: true, Part: press.Good}},
			End:      press.PushEnd{Position: 20.2, Zone: true},
			Table:    press.Table{OnOn: []string{press.Good}, OnOff: []string{press.Long}, OffOn: []string{press.Short, press.Missing}},
		},
		Faults:  []press.FaultRow{{Name: press.RowNominal, Reading: &seat}},
		Samples: &press.Samples{Probability: 0.999, Long: 5.3, Short: 4.8},
	}}
}

// TestStripModel checks what is drawn against the made-up result.
func TestStripModel(t *testing.T) {
	p := drawtest.Example(t, nil) // stroke 150, home 0
	m := newStripModel(p, made(), press.Traces{})
	assert.Equal(t, []stop{
		{at: 0, name: "approach 10.00\u202fmm", note: "from home 0.00"},
		{at: 10, name: "slow contact 5.00\u202fmm", note: "from 10.00"},
		{at: 15, name: "press-in 5.00\u202fmm", note: "from 15.00"},
		{at: 20.2, name: "push end", note: "20.20"},
		{at: 150, name: "end of stroke", note: "150.00"},
	}, m.stops)
	assert.Equal(t, press.Pair{0, 150}, m.stroke)
	inf := math.Inf(1)
	assert.Equal(t, []field{
		{from: -inf, to: 10, early: true, verdict: "early contact", fate: fateFault},
		{from: 10, to: 20, arrival: true, verdict: "too tall", fate: fateLong},
		{from: 20, to: 20.2, arrival: true, zone: true, verdict: "good", fate: fateGood},
		{from: 20.2, to: inf, past: true, zone: true, verdict: "too short or no insert", fate: fateShort},
	}, m.fields)
	assert.Equal(t, 20.1, m.rest)
	assert.Nil(t, m.never)
	assert.Nil(t, m.missing)
	// From the first good reading, 19.9, to the zone's end, 20.5, and 17 % and 12 %
	// of the 0.6 mm between them more.
	assert.InDelta(t, 19.9-0.102, m.lens[0], 1e-12)
	assert.InDelta(t, 20.5+0.072, m.lens[1], 1e-12)
	assert.Len(t, m.pairs, 4)
}

// TestStripModelWhenWrong: what the strip shows where something is wrong.
func TestStripModelWhenWrong(t *testing.T) {
	p := drawtest.Example(t, nil)

	r := made() // a stop that comes before the seat
	*r.Travel.PushEnd, r.Faults = 20.05, nil
	m := newStripModel(p, r, press.Traces{})
	assert.Equal(t, 20.05, m.rest)
	assert.Equal(t, 20.1, m.seat)

	r = made() // a zone that begins past the push end
	*r.Window.Zone[0], r.Window.Overlap = 20.4, nil
	m = newStripModel(p, r, press.Traces{})
	require.NotNil(t, m.never)
	assert.Equal(t, press.Pair{20.4, 20.2}, *m.never)

	r = made() // a missing insert that looks good
	at := 20.12
	r.Faults = append(r.Faults, press.FaultRow{Name: press.RowMissing, Reading: &at})
	r.Verdict.Table.OnOn = []string{press.Good, press.Missing}
	m = newStripModel(p, r, press.Traces{})
	assert.True(t, m.looks)
	assert.Equal(t, &at, m.missing)
	assert.Equal(t, fateFault, m.fields[2].fate)

	r = made() // guard bands that leave nothing
	r.Window.GuardBand, r.Window.Acceptance = 0.3, nil
	m = newStripModel(p, r, press.Traces{})
	assert.True(t, m.nothingLeft)
	assert.InDeltaSlice(t, []float64{20.2, 20}, m.acceptance[:], 1e-12)

	r = made() // a push end beyond the stroke
	*r.Travel.PushEnd = 160
	m = newStripModel(p, r, press.Traces{})
	assert.True(t, m.stops[3].wrong)
	assert.Equal(t, press.Pair{0, 160}, m.stroke)
	assert.InDelta(t, 20.5+0.072, m.lens[1], 1e-12, "what is far away does not stretch the lens")

	r = made() // nothing known
	r.Verdict, r.Window.Zone, r.Travel.PushEnd, r.Window.Overlap, r.Samples = nil, nil, nil, nil, nil
	m = newStripModel(p, r, press.Traces{})
	assert.Empty(t, m.fields)
	assert.Empty(t, m.pairs)
	assert.Len(t, m.stops, 4)
}

// TestFieldsJoin: a stretch that the drawing divides is one field of the signals.
func TestFieldsJoin(t *testing.T) {
	r := press.Evaluate(drawtest.Example(t, nil))
	assert.Len(t, r.Verdict.Segments, 3)
	fields := fieldsOf(r)
	require.Len(t, fields, 4)
	for i := 1; i < len(fields); i++ {
		assert.Equal(t, fields[i-1].to, fields[i].from)
	}
}

// TestSwatchesAgree: the table and the lane draw a pair in the same way.
func TestSwatchesAgree(t *testing.T) {
	for _, name := range drawtest.KindNames() {
		m := modelOf(drawtest.Example(t, drawtest.Kinds[name]))
		for _, f := range m.fields {
			for _, q := range m.pairs {
				if !f.early && q.Pair == (words.Pair{Arrival: f.arrival, Zone: f.zone}) {
					assert.Equal(t, fateOf(q), f.fate, name)
					assert.Equal(t, q.Verdict, f.verdict, name)
				}
			}
		}
	}
}

// TestNamedCheckSettlesTheStrip: where another check finds a missing insert, the pair
// that it gives too is good under that condition, and nothing alarms.
func TestNamedCheckSettlesTheStrip(t *testing.T) {
	p := drawtest.Example(t, drawtest.Changes{"parts[1].insert": "false", "station.presence_check": "light barrier"})
	r := press.Evaluate(p)
	m := newStripModel(p, r, *r.Traces())
	require.True(t, m.looks)
	assert.True(t, m.checked)
	for _, f := range m.fields {
		if f.arrival && f.zone {
			assert.Equal(t, fateGood, f.fate)
			assert.Equal(t, words.GoodIfThere, f.verdict)
		}
	}
	for _, l := range NewStrip(p, r, Options{}).Texts() {
		assert.NotContains(t, l.Text, "looks good")
	}
}

// TestPushPastTheSeat: a push that ends far past the seat is drawn as push as far as it
// goes, or as the ram does, and where the nest is that it runs on; one that ends at the
// seat as ever.
func TestPushPastTheSeat(t *testing.T) {
	p := drawtest.Example(t, nil) // stroke 150, nest 140
	stretch := func(end float64) (from, to float64, seen bool, stops []stop) {
		r := made()
		r.Travel.PushEnd = &end
		m := newStripModel(p, r, press.Traces{})
		k := layStrokeRuler(m, 0, 1000, 0)
		from, to, seen = k.passed()
		mm := (k.scale.To - k.scale.From) / 1000
		return k.scale.From + from*mm, k.scale.From + to*mm, seen, m.stops
	}
	nest := stop{at: 140, name: "nest", note: "140.00"}
	from, to, seen, stops := stretch(145)
	assert.True(t, seen)
	assert.InDelta(t, 20.1, from, 1e-9)
	assert.InDelta(t, 145, to, 1e-9)
	assert.Contains(t, stops, nest)
	_, to, _, _ = stretch(167)
	assert.InDelta(t, 150, to, 1e-9)
	_, _, seen, stops = stretch(20.2)
	assert.False(t, seen)
	assert.NotContains(t, stops, nest)
}
