package drill

import (
	"math"
	"math/rand/v2"
	"strconv"

	"ramplan/press"
	"ramplan/press/words"
)

// A ZoneTask is some parts that a zone, set by hand, must judge rightly. The push
// end stays where the plan has it.
type ZoneTask struct {
	Parts    []ZonePart
	Solution press.Pair // one zone that does it
	d        *Drill
}

// A ZonePart is one of the parts.
type ZonePart struct {
	Height  float64 // mm above the datum
	Reading float64 // mm, where it would stop the ram
	Word    string  // Long, Good or Short by the drawing
}

// zoneTasks is how many sets of parts there are.
const zoneTasks = 3

func (d *Drill) zoneItems() {
	for n := range zoneTasks {
		task, why := d.zoneTask(n)
		if why != "" {
			d.why[Zone] = why
			return
		}
		d.add(Zone, 4, "zone/"+strconv.Itoa(n+1), func(*rand.Rand) Exercise { return d.setZone(task) })
	}
}

// zoneTask makes a set of parts, the same whenever it is asked for: good ones
// between the guard bands, long and short ones clearly outside the drawing.
func (d *Drill) zoneTask(n int) (task *ZoneTask, why string) {
	good := d.r.Window.GoodRange
	sure := press.Pair{(good[0] + good[1]) / 2, (good[0] + good[1]) / 2}
	if a := d.r.Window.Acceptance; a != nil {
		sure = *a
	}
	low, high := math.Max(sure[0], d.s.Start), math.Min(sure[1], d.s.End)
	if low > high {
		return nil, "No good part reads between the approach end at " + d.pos.At(d.s.Start) + " and the push end at " + d.pos.At(d.s.End) + ": no zone can be right."
	}
	rng := random(uint64(n), "zone")
	width := good[1] - good[0]
	task = &ZoneTask{d: d}
	add := func(reading float64, word string) {
		h := math.Round(d.r.HeightOf(d.p, reading)*1000) / 1000
		reading = d.r.ReadingOf(d.p, h)
		if d.s.Early(reading) || d.r.Window.Word(reading) != word {
			return
		}
		if word == press.Good && !d.s.Arrives(reading) {
			return
		}
		task.Parts = append(task.Parts, ZonePart{h, reading, word})
	}
	apart := func() float64 { return math.Max(2*d.unsure(), 0.004) + width*(0.1+0.8*rng.Float64()) }
	for range 2 {
		add(low+(high-low)*(0.15+0.7*rng.Float64()), press.Good)
		add(good[0]-apart(), press.Long)
		add(good[1]+apart(), press.Short)
	}
	rng.Shuffle(len(task.Parts), func(i, j int) { task.Parts[i], task.Parts[j] = task.Parts[j], task.Parts[i] })
	return task, d.solve(task)
}

// solve looks for a zone that judges the parts rightly: the plan's own, or one
// around the good parts, with the push end inside or not.
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
	from := first - math.Max(d.unsure(), 0.002)
	if !math.IsInf(tall, 0) {
		from = (tall + first) / 2
	}
	for _, zone := range []press.Pair{
		{d.s.ZoneStart, d.s.ZoneEnd},
		{from, math.Max(last, d.s.End) + math.Max(4*d.unsure(), 0.1)},
		{from, (last + d.r.Window.GoodRange[1]) / 2},
	} {
		if task.judge(&zone).Right {
			task.Solution = zone
			return ""
		}
	}
	return "The push end at " + d.pos.At(d.s.End) + " lies where no zone can tell too tall from too low."
}

func (d *Drill) setZone(task *ZoneTask) Exercise {
	sol := task.Solution
	return Exercise{
		Question: "Set the zone so that these parts are judged rightly. The push end stays at " + d.pos.At(d.s.End) + ".",
		Facts: []string{
			"Good parts must show both lamps, and no other part may.",
			"Too tall and too low must not share a pair of lamps.",
			"A reading may be off by " + d.pos.Length(d.unsure()) + ".",
		},
		Zone:    task,
		Explain: "For example from " + at(sol[0]) + " to " + at(sol[1]) + ".",
	}
}

// judge tries a zone on the parts.
func (t *ZoneTask) judge(zone *press.Pair) Judged {
	if zone == nil {
		return Judged{false, "No zone was given."}
	}
	d := t.d
	if !(zone[0] < zone[1]) {
		return Judged{false, "The zone start must stand before the zone end."}
	}
	s := d.s
	s.ZoneStart, s.ZoneEnd = zone[0], zone[1]
	with := &Drill{p: d.p, r: d.r, s: s, pos: d.pos}
	seen := map[words.Pair]map[string]ZonePart{}
	for _, x := range t.Parts {
		ev := event{reading: x.Reading}
		on := with.shows(ev)
		both := on == words.Pair{Arrival: true, Zone: true}
		switch {
		case both && x.Word != press.Good:
			return Judged{false, "The part of " + at(x.Height) + " is " + orWords([]string{x.Word}) + " by the drawing and would pass as good. " + with.story(ev)}
		case !both && x.Word == press.Good:
			return Judged{false, "The part of " + at(x.Height) + " is good and would be refused. " + with.story(ev)}
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
			return Judged{false, "The part of " + at(long.Height) + " is too tall, the one of " + at(short.Height) + " too low, and both show " + on.String() +
				": nobody could tell them apart. " + with.story(event{reading: short.Reading})}
		}
	}
	return Judged{true, t.near(s)}
}

// near says how close the zone comes to a part that it judges.
func (t *ZoneTask) near(s press.Signals) string {
	d := t.d
	for _, x := range t.Parts {
		for _, e := range []struct {
			at   float64
			name string
		}{{s.ZoneStart, "zone start"}, {s.ZoneEnd, "zone end"}} {
			if by := math.Abs(x.Reading - e.at); d.s.Arrives(x.Reading) && by < d.unsure() {
				return "Right for these readings. But the " + e.name + " stands only " + d.pos.Length(by) + " from the part of " + at(x.Height) +
					", and a reading may be off by " + d.pos.Length(d.unsure()) + ": it would be judged wrongly now and then."
			}
		}
	}
	return "Right, with more room at every part than the " + d.pos.Length(d.unsure()) + " by which a reading may be off."
}
