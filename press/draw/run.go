package draw

import (
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/words"
)

// NewRun makes the run: the position of the ram against time, step by step, with the
// signals under it.
func NewRun(p *press.Plan, r *press.Result, o Options) *canvas.Picture {
	switch {
	case p.Sequence == nil:
		return stated("run", words.NoSteps, o, StripLeast, stripCompactLeast)
	case r.Sequence == nil:
		return stated("run", words.NoStepFigures, o, StripLeast, stripCompactLeast)
	}
	m := newRunModel(p, r)
	d := layRun(m, o)
	return canvas.NewPicture(canvas.Layout{Kind: "run", Compact: o.Compact, ID: o.ID, Title: m.title, Desc: m.desc, Width: d.width, Height: d.height, Paint: d.paint})
}

// runModel is what the run shows, as data.
type runModel struct {
	title, desc string
	steps       []runStep
	way         []press.Instant
	slowFrom    float64      // mm, the approach end
	band        [][3]float64 // s; mm less and more than nominal: where parts differ
	other       []press.Instant
	otherFrom   float64 // s, where it departs from the nominal way
	otherName   string
	hold        bool // the other way is that of the hold case
	joins       []float64
	rests       []float64
	looks       []float64
	lanes       []runLane
	levels      []runLevel
	end         float64 // s
	low, high   float64 // mm
}

// runStep is one step, all its passes together.
type runStep struct {
	step         int // counted from 0
	number, name string
	pushes       bool
	from, to     float64 // s
}

// runLane is one signal of the run.
type runLane struct {
	name string
	on   []runOn
}

// runOn is a stretch in which a signal is on.
type runOn struct {
	from, to  float64
	elsewhere string // what is written on one that is not the press's
	number    string // in less room
}

// runLevel is a position that is named at the right.
type runLevel struct {
	at   float64
	name string
}

func newRunModel(p *press.Plan, r *press.Result) *runModel {
	s := r.Sequence
	m := &runModel{title: say.RunTitle(r), way: s.Nominal.Timeline, end: s.Nominal.Total, slowFrom: r.Travel.ApproachEnd}
	for i, x := range s.Steps {
		m.step(p, r, i, x)
	}
	m.otherWay(r)
	m.lanes = runLanes(p, s)
	m.levels = []runLevel{{p.Station.Home, "home"}, {p.Station.Nest, "nest"}, {r.Travel.ApproachEnd, say.ApproachEnd()}}
	if e := r.Travel.PushEnd; e != nil {
		m.levels = append(m.levels, runLevel{*e, say.PushEnd()})
	}
	m.low, m.high = p.Station.Home, p.Station.Home
	for _, l := range m.levels {
		m.reach(l.at)
	}
	for _, way := range [][]press.Instant{m.way, m.other} {
		for _, q := range sampled(way, math.Inf(-1), 8) {
			m.reach(q[1])
		}
	}
	m.desc = m.describe(p, r)
	return m
}

func (m *runModel) reach(at float64) { m.low, m.high = math.Min(m.low, at), math.Max(m.high, at) }

func (m *runModel) step(p *press.Plan, r *press.Result, i int, x press.StepRun) {
	ends := x.Begins + x.Duration
	if n := len(m.steps); x.Pass > 1 && n > 0 {
		m.steps[n-1].to = ends
	} else {
		m.steps = append(m.steps, runStep{x.Step, words.Fixed(float64(x.Step+1), 0), words.StepName(p, x.Step), x.Kind == press.StepProbe || x.Kind == press.StepPress, x.Begins, ends})
	}
	switch {
	case i > 0 && x.StartSpeed > 0 && r.Sequence.Steps[i-1].Kind != press.StepProbe: // after a probe the ram stands
		m.joins = append(m.joins, x.Begins)
	case i > 0:
		m.rests = append(m.rests, x.Begins)
	}
	switch x.Kind {
	case press.StepProbe:
		m.looks = append(m.looks, ends)
	case press.StepPress:
		m.looks = append(m.looks, ends-r.Cycle.Hold)
	}
	m.spreadOf(x)
}

// spreadOf adds where the ram may be instead, in a step. A push ends earlier or later on
// the same way; any other step starts and ends elsewhere, in proportion to the way done.
func (m *runModel) spreadOf(x press.StepRun) {
	if x.Start[0] == x.Start[2] && x.End[0] == x.End[2] {
		return
	}
	push := x.Kind == press.StepProbe || x.Kind == press.StepPress
	way := x.End[1] - x.Start[1]
	for _, q := range sampled(within2(m.way, x.Begins, x.Begins+x.Duration), math.Inf(-1), 12) {
		share := 1.0
		if way != 0 {
			share = math.Max(0, math.Min(1, (q[1]-x.Start[1])/way))
		}
		mix := func(k int) float64 {
			return q[1] + (1-share)*(x.Start[k]-x.Start[1]) + share*(x.End[k]-x.End[1])
		}
		low, high := mix(0), mix(2)
		if push {
			low, high = math.Min(q[1]+x.Start[0]-x.Start[1], x.End[0]), math.Min(q[1]+x.Start[2]-x.Start[1], x.End[2])
			if q[1] >= x.End[1]-1e-9 {
				high = x.End[2]
			}
		}
		m.band = append(m.band, [3]float64{q[0], low, high})
	}
}

// within2 is the part of a timeline from one time to another.
func within2(way []press.Instant, from, to float64) []press.Instant {
	var out []press.Instant
	for i, q := range way {
		next := math.Inf(1)
		if i+1 < len(way) {
			next = way[i+1].Time
		}
		switch {
		case q.Time >= to-1e-12:
		case next <= from+1e-12:
			continue
		case q.Time < from:
			t := from - q.Time
			q.Position += t * (q.Speed + q.Acceleration*t/2)
			q.Speed += q.Acceleration * t
			q.Time = from
		}
		if q.Time >= to-1e-12 {
			break
		}
		out = append(out, q)
	}
	if n := len(out); n > 0 {
		q := out[n-1]
		t := to - q.Time
		out = append(out, press.Instant{Time: to, Position: q.Position + t*(q.Speed+q.Acceleration*t/2)})
	}
	return out
}

// sampled gives points of a timeline from a time on: the ends of straight stretches, and
// n pieces of each curved one.
func sampled(way []press.Instant, from float64, n int) [][2]float64 {
	var out [][2]float64
	for i, q := range way {
		if i+1 == len(way) {
			if q.Time >= from {
				out = append(out, [2]float64{q.Time, q.Position})
			}
			break
		}
		pieces := 1
		if q.Acceleration != 0 {
			pieces = n
		}
		lasts := way[i+1].Time - q.Time
		for k := range pieces {
			t := lasts * float64(k) / float64(pieces)
			if q.Time+t >= from-1e-12 {
				out = append(out, [2]float64{q.Time + t, q.Position + t*(q.Speed+q.Acceleration*t/2)})
			}
		}
		if q.Acceleration == 0 && q.Time+lasts >= from { // where the ram stops at once
			out = append(out, [2]float64{q.Time + lasts, q.Position + lasts*q.Speed})
		}
	}
	return out
}

// otherWay is the hold case where the plan has one, else the run without an insert, from
// where it departs.
func (m *runModel) otherWay(r *press.Result) {
	s := r.Sequence
	if s.Hold != nil {
		m.other, m.otherName, m.hold = s.Hold.Timeline, say.WhenItHasToHold(), true
		m.end = math.Max(m.end, s.Hold.Total)
	} else {
		m.other, m.otherName = s.Missing.Timeline, withoutPart
		m.end = math.Max(m.end, s.Missing.Total)
	}
	m.otherFrom = departs(m.way, m.other)
	if math.IsInf(m.otherFrom, 1) {
		m.other = nil
	}
}

// departs is the time from which two ways differ.
func departs(a, b []press.Instant) float64 {
	for i := range min(len(a), len(b)) {
		same := math.Abs(a[i].Time-b[i].Time) < 1e-9 && math.Abs(a[i].Position-b[i].Position) < 1e-9
		if same && a[i].Speed == b[i].Speed && a[i].Acceleration == b[i].Acceleration {
			continue
		}
		return math.Min(a[i].Time, b[i].Time)
	}
	if len(a) == len(b) {
		return math.Inf(1)
	}
	return math.Min(a[len(a)-1].Time, b[len(b)-1].Time)
}

func runLanes(p *press.Plan, s *press.SequenceRun) []runLane {
	lanes := []runLane{
		{"arrival", litOf(s.Nominal.Signals.Arrival, s.Nominal.Total)},
		{say.OwnZone(), litOf(s.Nominal.Signals.StepZone, s.Nominal.Total)},
	}
	byName := map[string]int{"step_zone": 1}
	if z := s.Nominal.Signals.StationZone; z != nil {
		lanes = append(lanes, runLane{say.StationZone(), litOf(*z, s.Nominal.Total)})
		byName["station_zone"] = 2
	}
	for _, e := range s.Elsewhere {
		lane, known := byName[e.Signal]
		if !known {
			continue
		}
		for i := range lanes[lane].on {
			if q := &lanes[lane].on[i]; math.Abs(q.from-e.From) < 1e-9 {
				q.elsewhere, q.number = words.StepName(p, e.Step), words.Fixed(float64(e.Step+1), 0)
			}
		}
	}
	return lanes
}

func litOf(c press.Changes, end float64) []runOn {
	var out []runOn
	on, since := c.First, 0.0
	for _, t := range c.Changes {
		if on {
			out = append(out, runOn{from: since, to: t})
		}
		on, since = !on, t
	}
	if on && end > since {
		out = append(out, runOn{from: since, to: end})
	}
	return out
}

func (m *runModel) describe(p *press.Plan, r *press.Result) string {
	s := []string{say.RunText()}
	pos := say.Positions(p)
	for _, x := range r.Sequence.Steps {
		pass := ""
		if x.Pass > 1 {
			pass = say.Pass(x.Pass)
		}
		s = append(s, say.StepText(words.Step(p, x.Step), pass, x.Begins, x.Begins+x.Duration, pos, x.End[1]))
	}
	for _, l := range m.lanes {
		var when []string
		for _, q := range l.on {
			t := say.OnFrom(q.from, q.to)
			if q.elsewhere != "" {
				t += " (step " + q.number + ")"
			}
			when = append(when, t)
		}
		if len(when) == 0 {
			when = []string{say.NeverOn()}
		}
		s = append(s, words.UpperFirst(l.name)+": "+strings.Join(when, ", ")+".")
	}
	for _, t := range m.looks {
		s = append(s, say.LookedAtText(t))
	}
	return strings.Join(s, " ")
}
