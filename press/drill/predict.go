package drill

import (
	"math"
	"math/rand/v2"
	"slices"
	"strconv"

	"ramplan/press"
	"ramplan/press/words"
)

// rowKey names a row of the catalogue for good: own rows by their number.
func (d *Drill) rowKey(i int) string {
	f := d.r.Faults[i]
	if !f.Own {
		return f.Name
	}
	n := 0
	for _, other := range d.r.Faults[:i+1] {
		if other.Own {
			n++
		}
	}
	return "own-" + strconv.Itoa(n)
}

// clearShare is how likely the lamps must be for an item to ask for them: by the
// error of a reading that the plan's own detection figures rest on. A part that
// may as well show something else is no exercise.
const clearShare = 0.95

func (d *Drill) predictItems() {
	for i, f := range d.r.Faults {
		if f.Case().Edge || words.NotLookedAt(d.p, f) || words.RefusedFirst(f) {
			continue
		}
		c, _ := d.r.ChancesOf(i)
		if !d.clear(d.eventOf(i), c) {
			continue
		}
		level := 3
		if f.Case().First {
			level = 2
		}
		d.add(Predict, level, "predict/"+d.rowKey(i), func(rng *rand.Rand) Exercise { return d.predictRow(rng, i, c) }, d.rowTopics(i)...)
	}
	for n, s := range d.stretches() {
		d.add(Predict, 2, "height/"+strconv.Itoa(n+1), func(rng *rand.Rand) Exercise { return d.predictHeight(rng, s, true) }, "stretch/"+strconv.Itoa(n+1))
		d.add(Predict, 4, "height-alone/"+strconv.Itoa(n+1), func(rng *rand.Rand) Exercise { return d.predictHeight(rng, s, false) }, "stretch/"+strconv.Itoa(n+1))
	}
	if !slices.ContainsFunc(d.items, func(it item) bool { return it.kind == Predict }) {
		d.why[Predict] = d.say.TooUnsureToAsk(d.unsure())
	}
}

// stuckTopic is that of every lamp that is stuck, on or off: who knows one knows the
// others.
const stuckTopic = "stuck"

// rowTopic is what a row of the catalogue is about.
func (d *Drill) rowTopic(i int) string {
	f := d.r.Faults[i]
	if f.Case().Stuck.Any() {
		return stuckTopic
	}
	return "row/" + d.rowKey(i)
}

// rowTopics are those of a row of the catalogue: a missing insert and a good part
// are asked for in other items too.
func (d *Drill) rowTopics(i int) []string {
	out := []string{d.rowTopic(i)}
	if f := d.r.Faults[i]; !f.Own && f.Name == press.RowMissing {
		return append(out, "lamps/"+press.Missing)
	} else if !f.Own && f.Name == press.RowNominal {
		return append(out, "lamps/"+press.Good)
	}
	return out
}

// likely gives the answer that is the most likely, and how likely it is.
func likely(c press.Chances) (id string, share float64) {
	id, share = earlyID, c.Early
	for _, on := range words.AllPairs {
		if p := c.Of(on.Arrival, on.Zone); p > share {
			id, share = PairID(on), p
		}
	}
	return id, share
}

// clear tells whether an event shows one thing as good as always.
func (d *Drill) clear(ev event, c press.Chances) bool {
	id, share := likely(c)
	if ev.early {
		return id == earlyID
	}
	return share >= clearShare && id == PairID(d.shows(ev))
}

// unsure is how far a reading may be off, mm: two standard uncertainties.
func (d *Drill) unsure() float64 { return 2 * d.r.Window.Uncertainty }

func (d *Drill) predictHeight(rng *rand.Rand, s stretch, told bool) Exercise {
	h := d.heightIn(rng, s)
	ev := event{reading: d.r.ReadingOf(h)}
	e := Exercise{
		Question: d.say.PredictHeight(d.high(h), d.p),
		Facts:    []string{d.say.DrawingAsksFor(d.p.Requirement.HeightLow, d.p.Requirement.HeightHigh)},
		Picture:  &Picture{Height: &h},
	}
	if told {
		e.Facts = append(e.Facts, d.say.WouldStopAt(d.at(ev.reading)), d.figures(), d.off())
	} else {
		nominal := d.heightAt(d.r.Nominal())
		e.Facts = append(e.Facts, d.say.PartStopsAt(d.high(nominal), d.at(d.r.ReadingOf(nominal))), d.figures(), d.off())
	}
	c, _ := d.r.ChancesAt(ev.reading)
	d.predict(rng, &e, ev, c)
	return e
}

// figures are the positions that decide.
func (d *Drill) figures() string {
	return d.say.SetPositions(d.s.End, d.s.ZoneStart, d.s.ZoneEnd)
}

func (d *Drill) predictRow(rng *rand.Rand, i int, c press.Chances) Exercise {
	t := d.say.Fault(d.r.Faults[i])
	e := Exercise{Question: d.say.PredictCase(t.Word), Facts: d.rowFacts(i), Picture: &Picture{Row: i}}
	d.predict(rng, &e, d.eventOf(i), c)
	return e
}

// predict fills in the answers: right is what the lamps show as good as always.
// Where the plan does not promise it, the question says so.
func (d *Drill) predict(rng *rand.Rand, e *Exercise, ev event, c press.Chances) {
	is := d.shows(ev)
	right, share := likely(c)
	var choices []Choice
	for _, on := range words.AllPairs {
		c := Choice{ID: PairID(on), Text: upper(on.String())}
		if ev.early {
			c.Reason = d.story(ev)
		} else {
			c.Reason = d.differs(on, is) + " " + d.story(ev)
		}
		choices = append(choices, c)
	}
	early := Choice{ID: earlyID, Text: d.say.PredictEarly()}
	switch {
	case ev.early:
	case ev.nowhere:
		early.Reason = d.say.MeetsNothingBefore(d.s.Start, d.story(ev))
	default:
		early.Reason = d.say.NothingStopsBefore(d.s.Start, d.at(math.Min(ev.reading, d.s.End)), d.story(ev))
	}
	e.Right = []string{right}
	e.Choices = unreasoned(append(shuffled(rng, choices), early), e.Right)
	e.Explain = d.story(ev)
	if share < d.p.Faults.SampleProbability {
		e.Question = d.say.MostLikely(e.Question)
		e.Explain += d.say.ShownInShare(d.unsure(), share)
	}
}
