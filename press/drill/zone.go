package drill

import (
	"math"
	"math/rand/v2"
	"strconv"

	"ramplan/press"
	"ramplan/press/words"
)

// A ZoneTask is some parts that a zone, set by hand, must judge rightly, on a nest
// that was moved: the push end has moved along.
type ZoneTask struct {
	Parts    []ZonePart
	Told     bool       // the readings of the parts are told, not only their heights
	Shift    float64    // mm, by how much deeper the nest stands than in the plan
	Solution press.Pair // one zone that does it
	d        *Drill
	s        press.Signals // the plan's, moved
}

// A ZonePart is one of the parts.
type ZonePart struct {
	Height  float64 // mm above the datum
	Reading float64 // mm, where it would stop the ram on the moved nest
	Word    string  // Long, Good or Short by the drawing
}

// zoneItems ask for a zone where every set of parts can be judged rightly: what
// decides that are the push end and the drawing, not the parts that are drawn.
func (d *Drill) zoneItems() {
	for n := range zoneTasks {
		sure, why := d.zoneTask(random(uint64(n), "zone"), n)
		if why != "" {
			d.why[Zone] = why
			return
		}
		d.add(Zone, 4, "zone/"+strconv.Itoa(n+1), func(rng *rand.Rand) Exercise {
			if task, why := d.zoneTask(rng, n); why == "" {
				return d.setZone(task)
			}
			return d.setZone(sure)
		})
	}
}

// moved is the plan's own zone, moved with the nest.
func (t *ZoneTask) moved() press.Pair {
	at := func(mm float64) float64 { return math.Round(mm*1e6) / 1e6 } // no dust of a sum
	return press.Pair{at(t.s.ZoneStart), at(t.s.ZoneEnd)}
}

// isMoved tells whether a zone is that, as finely as it is written.
func (t *ZoneTask) isMoved(zone press.Pair) bool {
	own := t.moved()
	return math.Abs(zone[0]-own[0]) < finest/2 && math.Abs(zone[1]-own[1]) < finest/2
}

// first is the earliest start of a zone that passes no part taller than the drawing
// allows, or none taller than the plan's own zone does.
func (t *ZoneTask) first() float64 {
	return math.Min(t.d.r.Window.GoodRange[0], t.d.s.ZoneStart) + t.Shift
}

// solve looks for a zone that judges the parts rightly: the plan's own, moved, or one
// around the good parts and the push end.
func (d *Drill) solve(task *ZoneTask) (why string) {
	tall, first, last := math.Inf(-1), math.Inf(1), math.Inf(-1)
	for _, x := range task.Parts {
		switch x.Word {
		case press.Long:
			tall = math.Max(tall, x.Reading)
		case press.Good:
			first, last = math.Min(first, x.Reading), math.Max(last, x.Reading)
		}
	}
	if math.IsInf(first, 0) {
		return d.say.NoGoodPartToShow()
	}
	if own := task.moved(); task.judge(&own).Right {
		task.Solution = own
		return ""
	}
	from := first - math.Max(d.unsure(), 0.002)
	if !math.IsInf(tall, 0) {
		from = (tall + first) / 2
	}
	from = math.Max(from, task.first())
	end := task.s.End
	room := math.Max(math.Max(4*d.unsure(), 0.1), d.pastEnd()+d.p.Station.PositionStep)
	for _, step := range []float64{d.p.Station.PositionStep, finest} { // as it can be set, where that does
		zone := press.Pair{math.Round(from/step) * step, math.Round((math.Max(last, end)+room)/step) * step}
		if zone[0] < task.first()-1e-9 {
			zone[0] = math.Ceil(task.first()/step) * step
		}
		if task.judge(&zone).Right {
			task.Solution = zone
			return ""
		}
	}
	return d.say.NoZoneAroundPushEnd(d.s.End)
}

func (d *Drill) setZone(task *ZoneTask) Exercise {
	sol := task.Solution
	way := "deeper"
	if task.Shift < 0 {
		way = "higher"
	}
	by := d.say.Length(math.Abs(task.Shift))
	e := Exercise{
		Question: d.say.NewNest(by, way),
		Facts: []string{
			d.say.PushEndMoved(d.typed(task.s.End)),
			d.say.PushEndInsideZone(d.pastEnd()),
			d.say.ZoneIsToDo(),
			d.off(),
			d.say.OnlyASetter(),
		},
		Zone: task,
	}
	zone := d.say.Set(sol[0]) + " to " + d.say.SetAt(sol[1])
	if e.Explain = d.say.ZoneExample(zone); task.isMoved(sol) {
		e.Explain = d.say.ZoneMovedAlong(zone, by, way)
	}
	if !task.Told {
		at := d.onGrain(d.r.Nominal())
		e.Facts = append([]string{d.say.StopsOnThisNest(d.high(d.heightAt(at)), at+task.Shift)}, e.Facts...)
	}
	return e
}

// judge tries a zone on the parts.
func (t *ZoneTask) judge(zone *press.Pair) Judged {
	if zone == nil {
		return Judged{Reason: t.d.say.NoZone()}
	}
	d := t.d
	if !(zone[0] < zone[1]) {
		return Judged{Reason: t.d.say.StartBeforeEnd()}
	}
	s := t.s
	s.ZoneStart, s.ZoneEnd = zone[0], zone[1]
	with := &Drill{p: d.p, r: d.r, s: s, say: d.say}
	seen := map[words.Pair]map[string]ZonePart{}
	for _, x := range t.Parts {
		ev := event{reading: x.Reading}
		on := with.shows(ev)
		both := on == words.Pair{Arrival: true, Zone: true}
		switch {
		case both && x.Word != press.Good:
			return Judged{Reason: t.d.say.WrongWouldPass(d.high(x.Height), d.wordsOf([]string{x.Word}), with.story(ev))}
		case !both && x.Word == press.Good:
			return Judged{Reason: t.d.say.GoodWouldBeRefused(d.high(x.Height), with.story(ev))}
		}
		if seen[on] == nil {
			seen[on] = map[string]ZonePart{}
		}
		seen[on][x.Word] = x
	}
	for _, on := range words.AllPairs {
		long, isLong := seen[on][press.Long]
		short, isShort := seen[on][press.Short]
		if isLong && isShort {
			return Judged{Reason: t.d.say.TallAndShortAlike(d.high(long.Height), d.high(short.Height), on, with.story(event{reading: short.Reading}))}
		}
	}
	if why := d.endInside(s); why != "" {
		return Judged{Reason: why}
	}
	if from := math.Max(s.ZoneStart, s.Start); from < t.first()-1e-6 {
		return Judged{Reason: t.d.say.OthersJudgedWrongly(d.high(d.r.HeightOf(from-t.Shift)), d.p.Requirement.HeightHigh, d.noTaller())}
	}
	return Judged{Right: true, Reason: t.near(s)}
}

// pastEnd is how far a zone must at least reach past the push end, mm: as far as the
// plan wants it, and no less than can be set.
func (d *Drill) pastEnd() float64 { return math.Max(d.p.EdgeMargin(), d.p.Station.PositionStep) }

// endInside says why a zone is wrong that has the push end outside, or at an edge;
// empty where it lies inside as far as the plan wants it.
func (d *Drill) endInside(s press.Signals) string {
	const slack = 1e-9
	switch end := d.typed(s.End); {
	case !s.InZone(s.End):
		return d.say.PushEndOutside(end)
	case s.End-s.ZoneStart < d.p.Station.PositionStep-slack:
		return d.say.PushEndAtStart(end)
	case s.ZoneEnd-s.End < d.pastEnd()-slack:
		return d.say.PushEndTooNearEnd(end, s.ZoneEnd-s.End, d.pastEnd())
	}
	return ""
}

// noTaller says what a plan lets pass beyond the drawing, where it does.
func (d *Drill) noTaller() string {
	if by := d.r.Window.GoodRange[0] - d.s.ZoneStart; by > 1e-9 {
		return d.say.PlanPassesNoTaller(d.high(d.r.HeightOf(d.s.ZoneStart)))
	}
	return ""
}

// near says how close the zone comes to the nearest part that it judges.
func (t *ZoneTask) near(s press.Signals) string {
	d := t.d
	if t.isMoved(press.Pair{s.ZoneStart, s.ZoneEnd}) {
		return t.d.say.ZoneMovedAsTheNest()
	}
	by, name, part := math.Inf(1), "", ZonePart{}
	for _, x := range t.Parts {
		if !s.Arrives(x.Reading) {
			continue
		}
		if room := math.Abs(x.Reading - s.ZoneStart); room < by {
			by, name, part = room, t.d.say.ZoneStart(), x
		}
		if room := math.Abs(x.Reading - s.ZoneEnd); room < by {
			by, name, part = room, t.d.say.ZoneEnd(), x
		}
	}
	if by < d.unsure() {
		stands := t.d.say.OnlyFrom(by)
		if by < finest {
			stands = t.d.say.AtTheReadingOf()
		}
		return t.d.say.RightButUnsure(name, stands, d.high(part.Height), d.unsure())
	}
	return t.d.say.RoomEnough(d.unsure())
}
