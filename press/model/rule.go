package model

import (
	"math"

	"ramplan/press/risk"
	"ramplan/press/stack"
)

// edges are the two positions that a rule proposes, and by which rule each.
type edges struct {
	low, high     *float64 // mm, zone start and push end; nil: none
	lowBy, highBy *string
	few           bool // by target: too few positions lie within the drawing, or none after the approach
	outside       bool // by process: what the process makes lies beside the drawing
}

// propose finds zone start and push end by the rule in force, and puts what it accepts
// into the window of readings. An edge by hand is taken into account by the target alone:
// the other edge has to go with it.
func (in *Input) propose(q *parts, s *reading, win *Readings) edges {
	if !q.pressable() {
		return edges{}
	}
	switch in.Window.Rule {
	case ByTarget:
		return in.byTarget(q, s, win)
	case ByProcess:
		return in.byProcess(q, s, win)
	}
	return in.byGuard(win)
}

// byGuard stays inside the drawing by the guard band (model section 7).
func (in *Input) byGuard(win *Readings) edges {
	a := win.Acceptance
	if a == nil {
		return edges{}
	}
	step := in.Station.PositionStep
	return edges{low: ptr(roundUp(a[0], step)), high: ptr(roundDown(a[1], step)), lowBy: &named.guard, highBy: &named.guard}
}

// byProcess reaches so many standard deviations of the readings to both sides of the
// nominal one, rounded outward, and never past the guard's edges.
func (in *Input) byProcess(q *parts, s *reading, win *Readings) edges {
	out := in.byGuard(win)
	if out.low == nil {
		return out
	}
	step, nominal := in.Station.PositionStep, q.xSeat+s.deflection
	reach := in.Window.ProcessSD * in.readingSpread(q, s)
	low, high := roundDown(nominal-reach, step), roundUp(nominal+reach, step)
	guard := out
	if low >= *guard.low-slack {
		out.low, out.lowBy = ptr(max(low, *guard.low)), &named.process
	}
	if high <= *guard.high+slack {
		out.high, out.highBy = ptr(min(high, *guard.high)), &named.process
	}
	if *out.low >= *out.high-slack {
		guard.outside = *guard.low < *guard.high-slack
		out = guard
	}
	win.Acceptance = &Pair{*out.low, *out.high}
	return out
}

// readingSpread is the standard deviation of the readings of all parts, mm.
func (in *Input) readingSpread(q *parts, s *reading) float64 {
	return math.Sqrt(square(stack.Add(q.product).SD) + square(stack.Add(q.beside).SD) + square(s.u))
}

// byTarget looks for the window that meets the targets, or comes closest.
func (in *Input) byTarget(q *parts, s *reading, win *Readings) edges {
	lows, highs := in.places(q, win)
	win.Acceptance, win.Target = nil, &Target{}
	goal := in.goal(q, s)
	pick, ok := goal.Best(lows, highs)
	if !ok {
		return edges{few: true}
	}
	low, high := lows[pick.Low].At, highs[pick.High].At
	if hand := in.Window.ZoneStart; hand != nil {
		low = *hand
	}
	win.Target.tell(pick)
	if good := win.GoodRange; min(high, good[1]) >= max(low, good[0])-slack {
		win.Acceptance = &Pair{max(low, good[0]), min(high, good[1])}
	}
	return edges{low: &low, high: &high, lowBy: &named.target, highBy: &named.target}
}

// tell puts down how the best window stands to the targets.
func (t *Target) tell(pick risk.Pick) {
	m := pick.Measure()
	t.Measure, t.Met = &m, m <= 1
	binds := BindBoth
	switch {
	case t.Met && pick.Accept >= pick.Reject:
		binds = BindsAccept
	case t.Met:
		binds = BindsReject
	case pick.CanAccept && !pick.CanReject:
		binds = BindsReject
	case pick.CanReject && !pick.CanAccept:
		binds = BindsAccept
	}
	t.Binding = &binds
}

// goal is what the targets ask of a window at a setting.
func (in *Input) goal(q *parts, s *reading) risk.Goal {
	all := in.population(q, s)
	g := risk.Goal{Accept: share(in.Targets.FalseAcceptPPM), Reject: share(in.Targets.FalseRejectPPM)}
	if in.Window.TargetsFor == OnWorstDay {
		off, e := in.worstDay(q, s)
		for _, day := range []float64{off, -off} {
			at := all
			at.Base += day
			g.Days = append(g.Days, at.Edges(e))
		}
		return g
	}
	g.Days = []*risk.Edges{all.Edges(in.wholeError(q, s))}
	return g
}

// finest is the least share that a target can ask for, ppm: what the integrals are good for.
const finest = 0.01

func share(ppm float64) float64 { return max(ppm, finest) / million64 }

// places are where zone start and push end may stand: where they are set by hand, or on
// the position steps within the drawing and after the approach.
func (in *Input) places(q *parts, win *Readings) (lows, highs []risk.Place) {
	a, hand := in.approachEnd(q), &in.Window
	end := func(e float64) risk.Place { // the zone's end may come before it
		if hand.ZoneEnd != nil {
			return risk.Place{At: e, End: min(e, *hand.ZoneEnd)}
		}
		return risk.Place{At: e, End: e}
	}
	if hand.ZoneStart != nil {
		lows = []risk.Place{{At: *hand.ZoneStart, End: max(a, *hand.ZoneStart)}}
	}
	if hand.PushStroke != nil {
		highs = []risk.Place{end(tidy(a + *hand.PushStroke))}
	}
	if lows != nil && highs != nil {
		lows[0].At = math.Inf(-1) // both are what they are, in whatever order
		return lows, highs
	}
	grid := positions(win.GoodRange, in.Station.PositionStep)
	for _, x := range grid {
		if hand.ZoneStart == nil && x >= a-slack {
			lows = append(lows, risk.Place{At: x, End: x})
		}
		if hand.PushStroke == nil {
			highs = append(highs, end(x))
		}
	}
	return lows, highs
}

// mostPositions is how many positions within the drawing are looked at: of more, every
// second, third or so on.
const mostPositions = 4096

// positions lists the multiples of the position step within a range.
func positions(within Pair, step float64) []float64 {
	first, last := math.Ceil((within[0]-slack)/step), math.Floor((within[1]+slack)/step)
	every := max(1, math.Ceil((last-first+1)/mostPositions))
	var out []float64
	for k := first; k <= last; k += every {
		out = append(out, multiple(k, step))
	}
	return out
}

// origins tells by what each figure of the window was found.
func (in *Input) origins(rule *edges, z *signals, moved bool) Origins {
	hand := &in.Window
	by := Origins{Setting: ForForce, ApproachEnd: ByClearance}
	if moved {
		by.Setting = ForTarget
	}
	if hand.Setting != nil {
		by.Setting = ByHand
	}
	if hand.ApproachEnd != nil {
		by.ApproachEnd = ByHand
	}
	name := func(exists, byHand bool, word *string) *string {
		switch {
		case !exists:
			return nil
		case byHand:
			return &named.hand
		}
		return word
	}
	by.ZoneStart = name(z.z1 != nil, hand.ZoneStart != nil, rule.lowBy)
	by.PushEnd = name(z.e != nil, hand.PushStroke != nil, rule.highBy)
	by.ZoneEnd = name(z.z2 != nil, hand.ZoneEnd != nil, &named.margin)
	return by
}

// named are the words of origins where they may be missing.
var named = struct{ hand, margin, guard, target, process string }{ByHand, ByMargin, ByGuard, ByTarget, ByProcess}
