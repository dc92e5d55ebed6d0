package draw

import (
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/words"
)

// NewCycle makes the cycle: position against time with the two signals under it,
// with the part and without an insert. Of a plan with steps it is the run: there is one
// picture of what the ram does.
func NewCycle(p *press.Plan, r *press.Result, o Options) *canvas.Picture {
	if !r.Pressable() {
		return statement("cycle", o, StripLeast, stripCompactLeast)
	}
	if Applies("run", r) {
		return NewRun(p, r, o)
	}
	m := newCycleModel(p, r, *r.Traces())
	d := layCycle(m, o)
	return canvas.NewPicture(canvas.Layout{Kind: "cycle", Compact: o.Compact, ID: o.ID, Title: m.title, Desc: m.desc, Width: d.width, Height: d.height, Paint: d.paint})
}

// cycleModel is what the cycle shows, as data.
type cycleModel struct {
	title, desc string
	part        []press.Moment
	missing     []press.Moment
	lanes       []signalLane
	phases      []phase
	watch       *float64 // s, when a missing arrival means something
	reads       []reading
	end         float64          // s, when the ram is home again and both signals were read
	handling    words.CyclePhase // after that
	low, high   float64          // mm
}

// signalLane is one signal over the time of one cycle.
type signalLane struct {
	name, note string
	on         []press.Pair // s, from and to
	dashed     bool
}

// phase is a stretch of the cycle with the part.
type phase struct {
	name, lasts string
	from, to    float64 // s
}

// reading is a time at which the two signals are read.
type reading struct {
	at     float64 // s
	when   string
	beyond bool // the axis ends before
}

func newCycleModel(p *press.Plan, r *press.Result, t press.Traces) *cycleModel {
	c := &r.Cycle
	m := &cycleModel{title: say.CycleTitle(r), part: t.Part, missing: t.Missing, watch: c.WatchTime, low: p.Station.Home, high: p.Station.Home}
	if note := say.StepsNotDrawn(r); note != "" {
		return m.alone(r, t, note)
	}
	now := 0.0
	for _, x := range words.CyclePhases(c) {
		if x.Name == "handling" {
			m.handling = x
			continue
		}
		if x.Seconds > 0 {
			m.phases = append(m.phases, phase{x.Name, x.Text(), now, now + x.Seconds})
		}
		now += math.Max(x.Seconds, 0)
	}
	m.end = now
	m.spans(t)
	if r.Verdict != nil {
		m.signals(r, t)
	}
	m.readings(r)
	m.reach()
	m.desc = m.describe(r)
	return m
}

// alone is the picture of approach, push and return of a plan that does more in a cycle:
// their own times, and none of the whole cycle's but in the title.
func (m *cycleModel) alone(r *press.Result, t press.Traces, note string) *cycleModel {
	m.watch = nil
	if row := faultRow(r, press.RowMissing); row != nil && words.RefusedFirst(*row) {
		m.missing, t.Missing = nil, nil // the push shown never comes
	}
	for _, s := range t.PartStages {
		name := map[press.Phase]string{press.PhaseApproach: "approach", press.PhaseSlow: "press", press.PhasePress: "press", press.PhaseRetract: "retract"}[s.Phase]
		n := len(m.phases)
		switch {
		case name == "" || s.To <= s.From:
		case n > 0 && m.phases[n-1].name == name:
			m.phases[n-1].to = s.To
		default:
			m.phases = append(m.phases, phase{name: name, from: s.From, to: s.To})
		}
	}
	for i, x := range m.phases {
		m.phases[i].lasts = say.Seconds(x.to - x.from)
	}
	m.handling = words.CyclePhase{Name: "handling", Seconds: r.Cycle.Handling, Bare: say.SecondsBare(r.Cycle.Handling)}
	m.spans(t)
	if r.Verdict != nil {
		m.signals(r, t)
	}
	m.title = note
	m.desc = note + " " + say.CycleTitle(r) + "."
	return m
}

// spans finds how long the ram moves, and from where to where.
func (m *cycleModel) spans(t press.Traces) {
	for _, list := range [][]press.Moment{t.Part, t.Missing} {
		for _, q := range list {
			m.end = math.Max(m.end, q.Time)
			m.low, m.high = math.Min(m.low, q.Position), math.Max(m.high, q.Position)
		}
	}
}

// signals finds when each signal is on: arrival from when the set force stands on a
// part until the ram moves back, the zone while the ram is inside.
func (m *cycleModel) signals(r *press.Result, t press.Traces) {
	z := *r.Window.Zone
	for _, s := range []struct {
		row, note string
		moments   []press.Moment
		stages    []press.Stage
		dashed    bool
	}{{press.RowNominal, say.WithThePart(), t.Part, t.PartStages, false}, {press.RowMissing, say.WithoutAnInsert(), t.Missing, t.MissingStages, true}} {
		row := faultRow(r, s.row)
		if row == nil || s.row == press.RowMissing && words.RefusedFirst(*row) {
			continue
		}
		arrival := signalLane{name: "arrival", note: s.note, dashed: s.dashed}
		if row.Arrival != nil && *row.Arrival {
			arrival.on = confirmed(s.stages)
		}
		zone := signalLane{name: "zone", note: s.note, dashed: s.dashed, on: within(s.moments, *z[0], *z[1])}
		m.lanes = append(m.lanes, arrival, zone)
	}
}

// readings finds when the signals are read: with arrival where the nominal part
// gives it, without it at the watch time.
func (m *cycleModel) readings(r *press.Result) {
	if row := faultRow(r, press.RowNominal); row != nil && row.Time != nil && row.Arrival != nil && *row.Arrival {
		m.reads = append(m.reads, reading{at: *row.Time, when: say.ReadWithArrival()})
	}
	if m.watch == nil {
		return
	}
	if len(m.reads) > 0 && say.After(m.reads[0].at) == say.After(*m.watch) {
		m.reads = []reading{{at: *m.watch, when: say.ReadWithOrWithoutArrival()}}
		return
	}
	m.reads = append(m.reads, reading{at: *m.watch, when: say.ReadWithout()})
}

// reach takes the axis as far as the signals are read, which may be after the ram is home:
// nothing is waited for where something is met. What is read far behind that is marked at
// the edge as lying beyond, so that the cycle itself can still be seen.
func (m *cycleModel) reach() {
	home := m.end
	for i, q := range m.reads {
		if q.at > 2*home {
			m.reads[i].beyond = true
			continue
		}
		m.end = math.Max(m.end, q.at)
	}
}

// confirmed is the time from when arrival is confirmed until the ram leaves.
func confirmed(stages []press.Stage) []press.Pair {
	var out []press.Pair
	for _, s := range stages {
		switch {
		case s.Phase == press.PhaseConfirm:
			out = []press.Pair{{s.From, s.To}}
		case s.Phase == press.PhaseRead && out != nil:
			out[0][1] = s.To
		}
	}
	return out
}

// within gives the stretches of time in which the ram is between two positions.
func within(moments []press.Moment, low, high float64) []press.Pair {
	var out []press.Pair
	for i := 1; i < len(moments); i++ {
		a, b := moments[i-1], moments[i]
		t0, t1 := crossing(a, b, low, high)
		if t1 < t0 {
			continue
		}
		if n := len(out); n > 0 && t0 <= out[n-1][1]+1e-9 {
			out[n-1][1] = t1
			continue
		}
		out = append(out, press.Pair{t0, t1})
	}
	return out
}

// crossing gives the part of the time from a to b that is spent between two
// positions; t1 < t0 when there is none.
func crossing(a, b press.Moment, low, high float64) (t0, t1 float64) {
	if a.Position == b.Position {
		if a.Position < low || a.Position > high {
			return 1, 0
		}
		return a.Time, b.Time
	}
	at := func(x float64) float64 {
		return (x - a.Position) / (b.Position - a.Position)
	}
	enter, leave := at(low), at(high)
	if enter > leave {
		enter, leave = leave, enter
	}
	enter, leave = math.Max(enter, 0), math.Min(leave, 1)
	if enter > leave {
		return 1, 0
	}
	return a.Time + enter*(b.Time-a.Time), a.Time + leave*(b.Time-a.Time)
}

func (m *cycleModel) describe(r *press.Result) string {
	c := &r.Cycle
	var phases []string
	for _, x := range words.CyclePhases(c) {
		if x.Seconds > 0 || x.Name != "settle" {
			phases = append(phases, x.Name+" "+x.Text())
		}
	}
	s := []string{say.CycleText(strings.Join(phases, ", "), c.Total)}
	if c.MissingWatched != nil {
		s = append(s, say.TimeWithoutAnInsert(*c.MissingWatched, r))
	}
	if c.WatchTime != nil {
		s = append(s, say.WatchText(*c.WatchTime, r))
	}
	for _, q := range m.reads {
		s = append(s, "At "+say.After(q.at)+": "+q.when+".")
	}
	for _, l := range m.lanes {
		var when []string
		for _, q := range l.on {
			when = append(when, "from "+say.Seconds(q[0])+" to "+say.Seconds(q[1]))
		}
		if len(when) == 0 {
			when = []string{say.NeverOn()}
		}
		s = append(s, strings.ToUpper(l.name[:1])+l.name[1:]+" "+l.note+": "+strings.Join(when, ", ")+".")
	}
	return strings.Join(s, " ")
}
