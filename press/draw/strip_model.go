package draw

import (
	"math"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
)

// stripModel is what the decision strip shows, as data: no colour, no px.
type stripModel struct {
	title  string
	brief  string // the title where the headline stands beside it
	desc   string
	pos    words.Positions
	stroke press.Pair // the whole ruler, mm
	reach  float64    // the end of the ram's stroke, mm
	stops  []stop     // along it
	lens   press.Pair // the magnified stretch, mm

	requirement press.Pair // good readings
	guard       float64
	acceptance  press.Pair // its edges; crossed when nothing is left
	nothingLeft bool
	ruled       string // by what the window was proposed; empty: by the guard bands
	uncertainty float64
	density     []press.Pair
	stalled     *stalled // nil: not known, or none that are worth speaking of

	seat    float64  // where the ram would rest on the nominal part
	rest    float64  // and where it does: at the push end when it ends before
	missing *float64 // where it rests without an insert, when that is at or before the push end
	looks   bool     // a missing insert gives both signals
	checked bool     // another check finds one

	end       *float64 // push end
	zoneStart *float64
	zoneEnd   *float64
	overlap   *press.Pair
	never     *press.Pair // the edges that are crossed when no reading gives both signals

	fields []field
	pairs  []words.PairText
	first  *firstLook // nil: there is one look
}

// stop is a place of the stroke at which something begins.
type stop struct {
	at    float64 // mm
	name  string
	note  string
	wrong bool
}

// fate is how a field is drawn.
type fate int

const (
	fateGood fate = iota
	fateLong
	fateShort
	fateFault // contradictory, nothing, missing alone, early
)

// field is a stretch of readings with one state of the signals.
type field struct {
	from, to      float64 // mm; infinite at the ends
	early         bool    // before the push begins
	past          bool    // beyond the push end, where the ram rests at the end
	arrival, zone bool
	verdict       string
	fate          fate
}

func newStripModel(p *press.Plan, r *press.Result, t press.Traces) *stripModel {
	m := &stripModel{
		title:       say.StripTitle(p, r),
		brief:       say.Accepted(p, r),
		pos:         say.Positions(p),
		requirement: r.Window.GoodRange,
		guard:       r.Window.GuardBand,
		acceptance:  press.Pair{r.Window.GoodRange[0] + r.Window.GuardBand, r.Window.GoodRange[1] - r.Window.GuardBand},
		nothingLeft: r.Window.Acceptance == nil,
		uncertainty: 2 * r.Window.Uncertainty,
		density:     t.Readings,
		reach:       p.Ram.Stroke,
		seat:        nominalReading(r),
		end:         r.Travel.PushEnd,
		overlap:     r.Window.Overlap,
		pairs:       say.PairTexts(p, r),
	}
	if z := r.Window.Zone; z != nil {
		m.zoneStart, m.zoneEnd = z[0], z[1]
	}
	if a := r.Window.Acceptance; a != nil {
		m.acceptance = *a
	}
	m.ruled = say.Ruled(p)
	m.rest = m.seat
	if m.end != nil && *m.end < m.seat {
		m.rest = *m.end
	}
	m.withoutInsert(r)
	m.stops, m.stroke = stopsOf(p, r, m.pos)
	m.fields = fieldsOf(r)
	m.first = firstLookOf(r)
	m.neverGood(r)
	m.lens = m.magnified()
	m.desc = m.describe(p, r)
	return m
}

// nominalReading is where the nominal part stops the ram, stalled or seated.
func nominalReading(r *press.Result) float64 {
	if row := faultRow(r, press.RowNominal); row != nil && row.Reading != nil {
		return *row.Reading
	}
	return r.Travel.SeatReading
}

func faultRow(r *press.Result, name string) *press.FaultRow {
	for i := range r.Faults {
		if r.Faults[i].Name == name && !r.Faults[i].Own {
			return &r.Faults[i]
		}
	}
	return nil
}

func (m *stripModel) withoutInsert(r *press.Result) {
	if row := faultRow(r, press.RowMissing); row != nil {
		m.missing = row.Reading
	}
	m.looks = r.Verdict != nil && slices.Contains(r.Verdict.Table.OnOn, press.Missing)
	m.checked = m.looks && r.Verdict.Table.Checked
}

// neverGood keeps the two edges that are crossed.
func (m *stripModel) neverGood(r *press.Result) {
	if r.Verdict == nil || m.overlap != nil || m.end == nil || m.zoneStart == nil || m.zoneEnd == nil {
		return
	}
	m.never = &press.Pair{math.Max(r.Travel.ApproachEnd, *m.zoneStart), math.Min(*m.end, *m.zoneEnd)}
}

// stopsOf lists what begins where along the stroke.
func stopsOf(p *press.Plan, r *press.Result, pos words.Positions) ([]stop, press.Pair) {
	t := &r.Travel
	home, stroke := p.Station.Home, p.Ram.Stroke
	stops := []stop{
		{at: home, name: "approach " + pos.At(t.ApproachEnd-home), note: say.FromHome(pos, home), wrong: home > t.ApproachEnd+1e-9},
		{at: t.ApproachEnd, name: say.SlowContact(pos, t.SlowContact), note: "from " + pos.Bare(t.ApproachEnd)},
	}
	if t.PressIn == 0 {
		stops = append(stops, stop{at: t.Contact, name: "contact", note: "at " + pos.Bare(t.Contact)})
	} else {
		stops = append(stops, stop{at: t.Contact, name: "press-in " + pos.At(t.PressIn), note: "from " + pos.Bare(t.Contact)})
	}
	last := stroke
	if t.PushEnd != nil {
		beyond := *t.PushEnd > stroke+1e-9
		note := pos.Bare(*t.PushEnd)
		if beyond {
			note += say.BeyondTheStroke()
		}
		stops = append(stops, stop{at: *t.PushEnd, name: say.PushEnd(), note: note, wrong: beyond})
		if nest := p.Station.Nest; *t.PushEnd > nest && nest > t.Contact {
			stops = append(stops, stop{at: nest, name: "nest", note: pos.Bare(nest)})
		}
		last = math.Max(last, *t.PushEnd)
	}
	stops = append(stops, stop{at: stroke, name: say.EndOfStroke(), note: pos.Bare(stroke)})
	first := math.Min(home, t.ApproachEnd)
	return stops, press.Pair{math.Min(first, stroke), math.Max(last, math.Max(home, t.Contact))}
}

// Room before and after what the lens has to show, in widths of it: the words
// long and short stand there.
const (
	padBefore = 0.17
	padAfter  = 0.12
)

// goesOnRoom is the same before the probe end, for the words there, in widths of the good
// readings.
const goesOnRoom = 0.15

// magnified chooses the stretch of the lens: the good readings, and of the rest
// what lies near enough to be seen beside them.
func (m *stripModel) magnified() press.Pair {
	low, high := m.requirement[0], m.requirement[1]
	width := math.Max(high-low, m.uncertainty)
	near := press.Pair{low - 1.6*width, high + 1.6*width}
	take := func(x float64) {
		if x >= near[0] && x <= near[1] {
			low, high = math.Min(low, x), math.Max(high, x)
		}
	}
	for _, x := range []*float64{m.end, m.zoneStart, m.zoneEnd, m.missing} {
		if x != nil {
			take(*x)
		}
	}
	if m.first != nil {
		take(m.first.end - goesOnRoom*width)
	}
	take(m.seat)
	take(m.acceptance[0])
	take(m.acceptance[1])
	take(m.seat - 1.5*m.uncertainty)
	take(m.seat + 1.5*m.uncertainty)
	return press.Pair{low - padBefore*(high-low), high + padAfter*(high-low)}
}
