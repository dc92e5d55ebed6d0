package model

import (
	"math"
)

// A Phase is a stage of one cycle.
type Phase string

// The phases of a cycle, in their order. A cycle that meets its part in the
// approach ends with Struck.
const (
	PhaseApproach Phase = "approach" // fast, not limited in force
	PhaseSlow     Phase = "slow"     // at limited force, nothing met yet
	PhasePress    Phase = "press"    // the part is met and pressed in
	PhaseSettle   Phase = "settle"   // at rest, the set force builds up
	PhaseConfirm  Phase = "confirm"  // at rest, arrival is on and must stay
	PhaseRead     Phase = "read"     // the signals are read and latched; then the hold
	PhaseRetract  Phase = "retract"
	PhaseHome     Phase = "home"
	PhaseStruck   Phase = "struck" // what happens now nobody knows
)

// A Course is one cycle as it is seen at the station.
type Course struct {
	Frames        []Frame
	Touch         *float64 // mm, where the tool first meets the part; nil: it meets none
	Rest          float64  // mm, where the ram comes to rest
	Met           bool     // something stops it there
	Early         bool     // the part is met before the push begins, and the course ends
	Arrival, Zone bool     // as they are read
}

// A Frame is the state from its time on until the next frame; positions between
// two frames run straight.
type Frame struct {
	Time     float64 // s
	Position float64 // mm
	Phase    Phase
	Arrival  bool
	Zone     bool
}

// visit is what comes to the station in one cycle.
type visit struct {
	occasion
	stuck Stuck
	touch float64 // mm, where the tool first meets the part; the catalogue leaves it to the course
}

// CourseOf follows the ram through a row of the fault catalogue. It is false for
// a result without signals.
func (r *Outcome) CourseOf(row int) (Course, bool) {
	w := r.inside()
	if row < 0 || row >= len(w.visits) {
		return Course{}, false
	}
	return w.course(w.visitOf(row)), true
}

// CourseAt follows the ram onto a part of a height above the datum, whose insert
// is taller or lower than the nominal one by as much.
func (r *Outcome) CourseAt(height float64) (Course, bool) {
	w := r.inside()
	if !w.zone.known {
		return Course{}, false
	}
	at := w.seated.base - height
	touch := w.parts.xContact + at - w.seated.nominal
	return w.course(visit{occasion: occasion{reading: at, contact: touch}, touch: touch}), true
}

// visitOf is what comes to the station in a row of the catalogue, and where the
// tool first meets it.
func (w *work) visitOf(row int) visit {
	v := w.visits[row]
	switch w.r.Faults[row].Case().meets {
	case meetsItself:
		v.touch = v.contact
	case meetsSeated:
		v.touch = w.parts.xSeat
	case meetsNominal:
		v.touch = w.parts.xContact
	default:
		v.touch = w.parts.xContact + (v.reading - w.seated.nominal)
	}
	return v
}

// course follows the ram from home and back.
func (w *work) course(v visit) Course {
	z := w.zone.at
	c := Course{Rest: z.End}
	if !v.nowhere {
		c.Touch = ptr(v.touch)
		if z.Early(v.reading) || z.Early(v.contact) {
			return w.struck(c, v)
		}
		if c.Met = z.Arrives(v.reading); c.Met {
			c.Rest = v.reading
		}
	}
	t := w.p.timeline(z.Start, stop{rest: c.Rest, met: c.Met, hold: c.Met, touch: c.Touch})
	c.Frames = signalled(t.frames(), z, c.Met, v.stuck)
	for _, f := range c.Frames {
		if f.Phase == PhaseRead {
			c.Arrival, c.Zone = f.Arrival, f.Zone
		}
	}
	return c
}

// struck is the course onto a part that stands in the approach.
func (w *work) struck(c Course, v visit) Course {
	z := w.zone.at
	at := math.Min(math.Max(math.Min(v.touch, v.contact), w.p.Station.Home), z.Start)
	c.Early, c.Met, c.Rest = true, true, at
	t := w.p.timeline(z.Start, stop{rest: z.Start})
	frames := t.frames()
	last := frames[0]
	for i, f := range frames {
		if last = f; f.Phase != PhaseApproach || f.Position >= at {
			frames = frames[:i]
			break
		}
	}
	frames = append(frames, Frame{Time: last.Time, Position: at, Phase: PhaseStruck})
	c.Frames = signalled(frames, z, false, v.stuck)
	return c
}

// signalled puts the signals on the frames, with a frame more wherever the zone
// begins or ends between two.
func signalled(frames []Frame, z Signals, met bool, s Stuck) []Frame {
	out := make([]Frame, 0, len(frames)+4)
	for i, f := range frames {
		out = append(out, f)
		if i+1 == len(frames) {
			break
		}
		next := frames[i+1]
		// Half set by hand, a zone may end before it starts.
		edges := Pair{math.Min(z.ZoneStart, z.ZoneEnd), math.Max(z.ZoneStart, z.ZoneEnd)}
		if next.Position < f.Position {
			edges[0], edges[1] = edges[1], edges[0]
		}
		for _, x := range edges {
			if share := (x - f.Position) / (next.Position - f.Position); share > 0 && share < 1 {
				out = append(out, Frame{Time: f.Time + share*(next.Time-f.Time), Position: x, Phase: f.Phase})
			}
		}
	}
	for i := range out {
		f := &out[i]
		middle := f.Position
		if i+1 < len(out) {
			middle = (f.Position + out[i+1].Position) / 2
		}
		f.Zone = z.InZone(middle)
		f.Arrival = met && (f.Phase == PhaseConfirm || f.Phase == PhaseRead)
		if s.Arrival != nil {
			f.Arrival = *s.Arrival
		}
		if s.Zone != nil {
			f.Zone = *s.Zone
		}
	}
	return out
}
