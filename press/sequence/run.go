package sequence

import (
	"math"

	"ramplan/press/motion"
)

// A Pass is one pass of a step in time.
type Pass struct {
	Leg
	Kind       Kind
	Begins     float64 // s
	Duration   float64 // s, with pause, settle, confirm and hold
	Peak       float64 // mm/s
	StartSpeed float64 // mm/s
	EndSpeed   float64 // mm/s
	link       motion.Link
}

// A Segment is a stretch of time with constant acceleration.
type Segment struct {
	Step, Pass int
	Begin      float64 // s
	Time       float64 // s, above 0
	Position   float64 // mm at its begin
	Speed      float64 // mm/s at its begin, signed
	Accel      float64 // mm/s², signed
	Arrival    bool
	Zone       *[2]float64 // mm, of the command in force
}

// At gives position and speed some time after the segment began.
func (g Segment) At(t float64) (position, speed float64) {
	return g.Position + g.Speed*t + g.Accel*t*t/2, g.Speed + g.Accel*t
}

// A HandOver is a step that is to hand over to the next without rest.
type HandOver struct {
	Step     int
	Possible bool    // else it is done as a stop
	Braked   bool    // braking limits the speed
	Speed    float64 // mm/s
	Set      float64 // mm/s, the lower of the two set speeds
}

// Times are the stages of a run, s.
type Times struct {
	Before    float64 // until the first push begins
	ProbePush float64 // its travel
	ProbeStay float64 // its settling and confirming
	Push      float64 // the travel of the press
	Stay      float64 // its settling, confirming and hold
	After     float64 // all that follows the press
}

// A Run is one cycle in time.
type Run struct {
	Passes    []Pass
	Segments  []Segment
	HandOvers []HandOver
	Times     Times
	PushStart float64 // mm, where the first push begins
	Total     float64 // s
	End       float64 // mm
	Target    float64 // mm, the last command
	Peak      float64 // mm/s
}

// run times the legs of a walk.
type run struct {
	*Run
	station *Station
	steps   []Step
	part    Part
	now     float64
	arrival bool
	zone    *[2]float64
	pushed  bool // a push has begun
	pressed bool
}

func (s *Station) start(steps []Step, part Part) *run {
	return &run{Run: &Run{End: s.Home, Target: s.Home, PushStart: s.Home}, station: s, steps: steps, part: part}
}

// follow times legs, of which the first starts from rest.
func (r *run) follow(legs []Leg) {
	for i := 0; i < len(legs); {
		links, n := r.chain(legs[i:])
		for k := range n {
			var link motion.Link
			if k < len(links) {
				link = links[k]
			}
			r.leg(legs[i+k], link)
		}
		i += n
	}
}

// chain gathers the legs that run on without rest, from the first on, with the speeds
// at which they hand over. A leg that does not move has no link.
func (r *run) chain(legs []Leg) (links []motion.Link, n int) {
	var steps []int
	for n = 0; n < len(legs); n++ {
		link, moves := r.link(legs[n])
		if !moves {
			return r.joined(links, steps), n + 1
		}
		links = append(links, link)
		wants := r.steps[legs[n].Step].moves() && legs[n].last && r.steps[legs[n].Step].HandOver
		if !wants {
			return r.joined(links, steps), n + 1
		}
		if !r.takes(legs, n) {
			r.HandOvers = append(r.HandOvers, HandOver{Step: legs[n].Step})
			return r.joined(links, steps), n + 1
		}
		steps = append(steps, legs[n].Step)
	}
	return r.joined(links, steps), n
}

func (r *run) joined(links []motion.Link, steps []int) []motion.Link {
	out, junctions := motion.Chain(links)
	for i, j := range junctions {
		set := math.Min(links[i].Speed, links[i+1].Speed)
		r.HandOvers = append(r.HandOvers, HandOver{Step: steps[i], Possible: true, Braked: j.Braked, Speed: j.Speed, Set: set})
	}
	return out
}

// takes tells whether the leg after the n-th can take over without rest.
func (r *run) takes(legs []Leg, n int) bool {
	this := legs[n]
	if r.steps[this.Step].Pause > 0 || n+1 >= len(legs) || this.way() == 0 {
		return false
	}
	next := legs[n+1]
	switch step := r.steps[next.Step]; {
	case step.pushes():
		return this.way() > 0 && next.Start < r.station.A-Slack
	case step.Kind == Wait:
		return false
	}
	return next.way() == this.way()
}

// link is the move of a leg: its whole way, or of a push the way to it.
func (r *run) link(leg Leg) (motion.Link, bool) {
	s := r.station
	switch step := r.steps[leg.Step]; {
	case step.pushes():
		p := motion.Profile{Speed: s.ApproachSpeed, Accel: s.Accel, Decel: s.Decel, EndSpeed: s.SlowSpeed}
		return motion.Link{Profile: p, Distance: s.pushStart(leg) - leg.Start}, true
	case step.moves():
		way := leg.length()
		if leg.way() == 0 {
			way = 0
		}
		return motion.Link{Profile: motion.Profile{Speed: step.Speed, Accel: step.Accel, Decel: step.Decel}, Distance: way}, true
	}
	return motion.Link{}, false
}

// leg times one pass.
func (r *run) leg(leg Leg, link motion.Link) {
	step := r.steps[leg.Step]
	p := Pass{Leg: leg, Kind: step.Kind, Begins: r.now, link: link}
	if step.Kind != Wait {
		r.arrival, r.zone = false, step.Zone
	}
	switch {
	case step.moves():
		m := r.along(leg, link, leg.Start, leg.End)
		p.Peak, p.StartSpeed, p.EndSpeed = m.Peak, m.Start, m.End
		p.Duration = m.Time + step.Pause
		r.stay(leg, step.Pause)
	case step.Kind == Wait:
		p.Duration = step.Time
		r.stay(leg, step.Time)
	default:
		r.push(&p, link)
	}
	r.add(p)
}

// add takes a pass that was timed, and counts it to its stage.
func (r *run) add(p Pass) {
	r.Passes = append(r.Passes, p)
	r.now = p.Begins + p.Duration
	r.Total, r.End, r.Target = r.now, p.End, p.Target
	r.Peak = math.Max(r.Peak, p.Peak)
	switch {
	case p.Kind == Press:
		r.pressed = true
	case p.Kind == Probe:
	case r.pressed || r.part.Refused && r.pushed:
		r.Times.After += p.Duration
	case !r.pushed:
		r.Times.Before += p.Duration
	}
}

// along moves from one place to another and gives the move.
func (r *run) along(leg Leg, link motion.Link, from, to float64) motion.Move {
	m := link.Move(link.Distance)
	sign := 1.0
	if to < from {
		sign = -1
	}
	r.segment(leg, m.TAccel, from, sign*m.Start, sign*link.Accel)
	r.segment(leg, m.TCruise, from+sign*m.AccelWay(), sign*m.Peak, 0)
	r.segment(leg, m.TDecel, to-sign*m.DecelWay(), sign*m.Peak, -sign*link.Decel)
	return m
}

// push goes to where the push begins, and pushes.
func (r *run) push(p *Pass, link motion.Link) {
	s, leg := r.station, p.Leg
	rest, confirm, hold := r.part.Press, s.Confirm, s.Hold
	r.zone = s.Zone
	if p.Kind == Probe {
		rest, confirm, hold = r.part.Probe, s.ProbeConfirm, 0
		if !s.ProbeZone {
			r.zone = nil
		}
	}
	begin := s.pushStart(leg)
	m := r.along(leg, link, leg.Start, begin)
	p.StartSpeed, p.Peak = m.Start, m.Peak
	if !r.pushed {
		r.pushed, r.PushStart = true, begin
		r.Times.Before += m.Time
	}
	travel := math.Max(0, leg.End-begin) / s.SlowSpeed
	if travel > 0 {
		p.Peak = math.Max(p.Peak, s.SlowSpeed)
		if m.Time == 0 { // no way to it: slow from its first moment
			p.StartSpeed = s.SlowSpeed
		}
	}
	r.segment(leg, travel, begin, s.SlowSpeed, 0)
	settle := s.Settle
	if !rest.Waits {
		settle, hold = 0, 0
	}
	r.stay(leg, settle)
	r.arrival = rest.Arrives
	r.stay(leg, confirm+hold)
	stay := settle + confirm + hold
	if p.Kind == Probe {
		r.Times.ProbePush, r.Times.ProbeStay = travel, stay
	} else {
		r.Times.Push, r.Times.Stay = travel, stay
	}
	p.Duration = m.Time + travel + stay
}

// shortest is the time under which a stretch of a move is rounding and nothing else, s.
const shortest = 1e-12

func (r *run) segment(leg Leg, time, position, speed, accel float64) {
	if !(time > shortest) {
		return
	}
	r.Segments = append(r.Segments, Segment{
		Step: leg.Step, Pass: leg.Pass, Begin: r.now, Time: time, Position: position, Speed: speed, Accel: accel, Arrival: r.arrival, Zone: r.zone,
	})
	r.now += time
}

// stay is a rest at the end of a leg.
func (r *run) stay(leg Leg, time float64) { r.segment(leg, time, leg.End, 0, 0) }
