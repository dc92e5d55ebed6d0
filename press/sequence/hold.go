package sequence

import (
	"math"

	"ramplan/press/motion"
)

// A HoldCase is one time that the hold input goes off.
type HoldCase struct {
	Step, Pass int     // in which pass of which step: index from 0, pass from 1
	At         float64 // mm
	Time       float64 // s until it is on again
}

// Held is the run in which the ram had to hold.
type Held struct {
	*Run
	Speed     float64 // mm/s, where the input goes off
	Stop      motion.Stop
	Rest      float64 // mm, where the ram stands
	Toward    bool    // it ran toward the work
	Resumes   float64 // s from the start of the cycle
	Cancelled bool
}

// hold is the nominal run with one hold in it: the ram brakes with the step's own
// deceleration, stands, and starts again when the hold is over. It goes on to the same
// target, or the next step begins from there; braked past the end of the step, after a
// hand-over, the step counts as done. There is none in a probe or a press, and none
// where the ram does not pass the place in that step.
func (s *Station) hold(steps []Step, nominal *Run, part Part, h HoldCase) *Held {
	k := -1
	for i, p := range nominal.Passes {
		if p.Step == h.Step && p.Leg.Pass == h.Pass && steps[p.Step].moves() {
			k = i
		}
	}
	if k < 0 {
		return nil
	}
	p := nominal.Passes[k]
	step, sign := steps[p.Step], p.way()
	if sign == 0 || sign*(h.At-p.Start) <= Slack || sign*(p.End-h.At) <= Slack {
		return nil
	}
	t, speed := p.link.When(p.link.Distance, sign*(h.At-p.Start))
	held := &Held{Speed: speed, Stop: motion.Brake(speed, step.Decel), Toward: sign > 0}
	held.Rest = h.At + sign*held.Stop.Way
	past := sign * (held.Rest - p.End)
	if math.Abs(past) <= Slack {
		held.Rest = p.End
	}
	held.Cancelled = step.Cancel && past <= Slack
	off := p.Begins + t
	held.Resumes = off + held.Stop.Resume(h.Time)

	r := s.before(steps, nominal, part, k, off)
	held.Run = r.Run
	leg := p.Leg
	leg.End = held.Rest
	r.arrival, r.zone, r.now = false, step.Zone, off
	r.segment(leg, held.Stop.Time, h.At, sign*speed, -sign*step.Decel)
	r.stay(leg, held.Resumes-r.now)
	pause, todo := 0.0, passes(steps, spot{p.Step, p.Leg.Pass + 1})
	rest := []Leg(nil)
	switch {
	case held.Cancelled:
		todo = passes(steps, spot{p.Step + 1, 1})
	case past >= -Slack:
		pause = step.Pause
	default:
		rest = []Leg{{Step: p.Step, Pass: p.Leg.Pass, Start: held.Rest, End: p.End, Target: p.Target, last: p.last}}
	}
	r.stay(leg, pause)
	r.add(Pass{Leg: leg, Kind: p.Kind, Begins: p.Begins, Duration: held.Resumes + pause - p.Begins, Peak: math.Max(p.StartSpeed, speed), StartSpeed: p.StartSpeed})
	rest = append(rest, s.walk(steps, todo, after(rest, place{leg.End, p.Target}), part)...)
	r.follow(rest)
	return held
}

// before is the run up to a moment in its k-th pass.
func (s *Station) before(steps []Step, whole *Run, part Part, k int, until float64) *run {
	r := s.start(steps, part)
	for _, p := range whole.Passes[:k] {
		r.pushed = r.pushed || steps[p.Step].pushes()
		r.add(p)
	}
	for _, g := range whole.Segments {
		if g.Begin >= until {
			break
		}
		g.Time = math.Min(g.Time, until-g.Begin)
		r.Segments = append(r.Segments, g)
	}
	return r
}
