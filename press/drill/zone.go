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
		return "No good part can be shown: the stretch of good readings is too narrow to write a height in."
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
	return "The push end at " + d.pos.At(d.s.End) + " lies where no zone can tell too tall from too short."
}

func (d *Drill) setZone(task *ZoneTask) Exercise {
	sol := task.Solution
	way := "deeper"
	if task.Shift < 0 {
		way = "higher"
	}
	by := d.pos.Length(math.Abs(task.Shift))
	e := Exercise{
		Question: "A new nest stands " + by + " " + way + " than the one of the plan. Set the zone so that it judges these parts rightly.",
		Facts: []string{
			"The push end was moved along and stands at " + d.typed(task.s.End) + ".",
			"The push end must lie inside the zone, at least " + d.pos.Length(d.pastEnd()) + " before the zone end.",
			"Both lamps must be on for good parts, and for no others. Too tall and too short must show different lamps.",
			d.off(),
			"This is an exercise. At the station only a setter who is allowed to may change the zone.",
		},
		Zone: task,
	}
	zone := d.pos.Set(sol[0]) + " to " + words.Unit(d.pos.Set(sol[1]), "mm")
	if e.Explain = "For example from " + zone + "."; task.isMoved(sol) {
		e.Explain = "From " + zone + ", the zone of the plan moved by " + by + ": every reading stands " + by + " " + way + ", so the zone does too."
	}
	if !task.Told {
		at := d.onGrain(d.r.Nominal())
		e.Facts = append([]string{"On this nest a part of " + d.high(d.heightAt(at)) + " stops the ram at " + d.pos.At(at+task.Shift) + ". A taller part stops it earlier, by as much as it is taller."}, e.Facts...)
	}
	return e
}

// judge tries a zone on the parts.
func (t *ZoneTask) judge(zone *press.Pair) Judged {
	if zone == nil {
		return Judged{Reason: "No zone was given."}
	}
	d := t.d
	if !(zone[0] < zone[1]) {
		return Judged{Reason: "The zone start must stand before the zone end."}
	}
	s := t.s
	s.ZoneStart, s.ZoneEnd = zone[0], zone[1]
	with := &Drill{p: d.p, r: d.r, s: s, pos: d.pos}
	seen := map[words.Pair]map[string]ZonePart{}
	for _, x := range t.Parts {
		ev := event{reading: x.Reading}
		on := with.shows(ev)
		both := on == words.Pair{Arrival: true, Zone: true}
		switch {
		case both && x.Word != press.Good:
			return Judged{Reason: "The part of " + d.high(x.Height) + " is " + orWords([]string{x.Word}) + " by the drawing and would pass as good. " + with.story(ev)}
		case !both && x.Word == press.Good:
			return Judged{Reason: "The part of " + d.high(x.Height) + " is good and would be refused. " + with.story(ev)}
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
			return Judged{Reason: "The part of " + d.high(long.Height) + " is too tall and the one of " + d.high(short.Height) + " too short. Both show " + on.String() +
				", so nobody could tell them apart. " + with.story(event{reading: short.Reading})}
		}
	}
	if why := d.endInside(s); why != "" {
		return Judged{Reason: why}
	}
	if from := math.Max(s.ZoneStart, s.Start); from < t.first()-1e-6 {
		return Judged{Reason: "These parts are judged rightly, but others are not: with this zone a part of " + d.high(d.r.HeightOf(from-t.Shift)) +
			" would pass, and the drawing allows no more than " + d.pos.At(d.p.Requirement.HeightHigh) + "." + d.noTaller()}
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
		return "The push end at " + end + " lies outside this zone. A ram that nothing stops rests at the push end, and zone must be on there: with zone off, a missing insert shows both lamps off, as a fault of the station does."
	case s.End-s.ZoneStart < d.p.Station.PositionStep-slack:
		return "The push end at " + end + " lies at the zone start. A ram that nothing stops rests at the push end, and zone must be on there each time: the zone must start before it."
	case s.ZoneEnd-s.End < d.pastEnd()-slack:
		return "The push end at " + end + " lies only " + d.pos.Length(s.ZoneEnd-s.End) + " before the zone end. It must be " + d.pos.Length(d.pastEnd()) + " at least: a ram that nothing stops does not rest at the same position each time, and zone must be on there."
	}
	return ""
}

// noTaller says what a plan lets pass beyond the drawing, where it does.
func (d *Drill) noTaller() string {
	if by := d.r.Window.GoodRange[0] - d.s.ZoneStart; by > 1e-9 {
		return " The zone of the plan lets no part pass that is taller than " + d.high(d.r.HeightOf(d.s.ZoneStart)) + "."
	}
	return ""
}

// near says how close the zone comes to the nearest part that it judges.
func (t *ZoneTask) near(s press.Signals) string {
	d := t.d
	if t.isMoved(press.Pair{s.ZoneStart, s.ZoneEnd}) {
		return "That is the zone of the plan, moved exactly as far as the nest: it judges every part as the plan does."
	}
	by, name, part := math.Inf(1), "", ZonePart{}
	for _, x := range t.Parts {
		if !s.Arrives(x.Reading) {
			continue
		}
		if room := math.Abs(x.Reading - s.ZoneStart); room < by {
			by, name, part = room, "zone start", x
		}
		if room := math.Abs(x.Reading - s.ZoneEnd); room < by {
			by, name, part = room, "zone end", x
		}
	}
	if by < d.unsure() {
		stands := "stands only " + d.pos.Length(by) + " from"
		if by < finest {
			stands = "stands at the reading of"
		}
		return "It is right for these readings. But the " + name + " " + stands + " the part of " + d.high(part.Height) +
			", and a reading may be off by " + d.pos.Length(d.unsure()) + ". Now and then it would be judged wrongly."
	}
	return "A reading may be off by " + d.pos.Length(d.unsure()) + ", and every part has more room than that."
}
