package model

import (
	"math"

	"ramplan/press/motion"
)

// A timeline is one cycle of the ram, leg after leg, from home and back. The times of
// the cycle, its drawing and the course at the station are all read from it.
type timeline struct {
	legs []leg
	met  bool    // something stops the ram where it rests
	rest float64 // mm, where it comes to rest
}

// leg is one stretch of a timeline: a move along a profile, the travel at slow speed,
// or a rest.
type leg struct {
	phase            Phase
	begin, time, end float64         // s
	from, to         float64         // mm
	profile          *motion.Profile // of a move; nil: straight on, or at rest
}

// stop is what ends the push: where the ram comes to rest, and on what.
type stop struct {
	rest  float64  // mm
	met   bool     // something stops the ram there
	hold  bool     // it holds
	touch *float64 // mm, where the tool first meets the part; nil: nowhere on the way
}

// timeline follows the ram from home to the approach end, on at slow speed to its
// stop, through settling, confirming and holding, and home again.
func (in *Input) timeline(a float64, s stop) timeline {
	m := &in.Motion
	t := timeline{legs: make([]leg, 0, 8), met: s.met, rest: s.rest}
	now, at := 0.0, in.Station.Home
	add := func(phase Phase, time, to float64, along *motion.Profile) {
		t.legs = append(t.legs, leg{phase, now, time, now + time, at, to, along})
		now, at = now+time, to
	}
	approach, retract := in.approach(), in.retract()
	if way := a - at; way > 0 {
		add(PhaseApproach, approach.Move(way).Time, a, &approach)
	} else {
		add(PhaseApproach, 0, at, nil)
	}
	begin := now
	at = math.Max(at, a)
	before := 0.0 // s, of the travel at slow speed
	on := func(phase Phase, to float64) {
		whole := in.slow(to - a)
		t.legs = append(t.legs, leg{phase, now, whole - before, begin + whole, at, to, nil})
		now, at, before = begin+whole, to, whole
	}
	if s.touch == nil || !(*s.touch < s.rest-slack) {
		on(PhaseSlow, s.rest)
	} else {
		if *s.touch > at {
			on(PhaseSlow, *s.touch)
		}
		on(PhasePress, s.rest)
	}
	if m.SettleTime > 0 {
		add(PhaseSettle, m.SettleTime, at, nil)
	}
	add(PhaseConfirm, m.ConfirmTime, at, nil)
	hold := 0.0
	if s.hold {
		hold = m.HoldTime
	}
	add(PhaseRead, hold, at, nil)
	if way := at - in.Station.Home; way > 0 {
		add(PhaseRetract, retract.Move(way).Time, in.Station.Home, &retract)
	} else {
		add(PhaseRetract, 0, at, nil)
	}
	add(PhaseHome, 0, at, nil)
	return t
}

// nominalTimeline is the cycle with the nominal part, which is held wherever it ends.
func (w *work) nominalTimeline() timeline {
	s := stop{rest: w.seated.nominal, met: true, hold: true}
	if e := w.zone.e; e != nil && *e < s.rest {
		s.rest, s.met = *e, false
	}
	return w.p.timeline(w.zone.a, s)
}

// missingTimeline is the cycle without an insert: the ram runs on to where something
// stops it, at the most to a push end.
func (w *work) missingTimeline(e float64) timeline {
	s := stop{rest: e}
	if insert := w.withoutInsert(); !insert.Nowhere {
		s.met = insert.Reading <= e+slack
		s.hold = s.met
		s.rest = math.Min(math.Max(insert.Reading, w.zone.a), e)
	}
	return w.p.timeline(w.zone.a, s)
}

// of gives the time of a phase, s.
func (t *timeline) of(phase Phase) float64 {
	sum := 0.0
	for _, l := range t.legs {
		if l.phase == phase {
			sum += l.time
		}
	}
	return sum
}

// A Stage is one phase of a cycle in time.
type Stage struct {
	Phase    Phase
	From, To float64 // s
}

// stages lists the phases, also those that take no time.
func (t *timeline) stages() []Stage {
	out := make([]Stage, len(t.legs))
	for i, l := range t.legs {
		out[i] = Stage{l.phase, l.begin, l.end}
	}
	return out
}

// frames writes the legs down as what is seen at the station, without the signals.
func (t *timeline) frames() []Frame {
	const pieces = 24 // of a move
	out := make([]Frame, 0, 2*pieces+len(t.legs))
	for _, l := range t.legs {
		if l.profile == nil {
			out = append(out, Frame{Time: l.begin, Position: l.from, Phase: l.phase})
			continue
		}
		for i := range pieces {
			time := l.time * float64(i) / pieces
			out = append(out, Frame{Time: l.begin + time, Position: l.at(time), Phase: l.phase})
		}
	}
	return out
}

// moments writes the legs down as corners of a line that is smooth in print.
func (t *timeline) moments() []Moment {
	const bends = 12 // of a ramp
	out := []Moment{{0, t.legs[0].from}}
	for _, l := range t.legs {
		switch {
		case l.profile != nil:
			m, begin := l.profile.Move(math.Abs(l.to-l.from)), 0.0
			for _, part := range []struct {
				time  float64
				steps int
			}{{m.TAccel, bends}, {m.TCruise, 1}, {m.TDecel, bends}} {
				for i := range part.steps {
					time := begin + part.time*float64(i+1)/float64(part.steps)
					out = append(out, Moment{l.begin + time, l.at(time)})
				}
				begin += part.time
			}
		case l.phase == PhaseSlow, l.phase == PhasePress, l.phase == PhaseRead:
			out = append(out, Moment{l.end, l.to})
		}
	}
	return out
}

// at gives where the ram is some time after a move began.
func (l leg) at(time float64) float64 {
	x, _ := l.profile.At(math.Abs(l.to-l.from), time)
	if l.to < l.from {
		x = -x
	}
	return l.from + x
}
