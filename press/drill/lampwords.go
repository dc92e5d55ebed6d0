package drill

import (
	"math/rand/v2"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
)

// lampItems: what each lamp says by itself, and what both together do not see.
func (d *Drill) lampItems() {
	d.add(Read, 1, "signal/arrival", d.arrivalSays)
	d.add(Read, 1, "signal/zone", d.zoneSays)
	if blind, seen := d.unseenRows(); len(blind) > 0 && len(seen) >= leastSeen {
		d.add(Read, 1, "unseen/both-on", func(rng *rand.Rand) Exercise { return d.unseen(rng, blind, seen) }, unseenTopic)
	}
}

// unseenTopic is what the lamps do not see, asked for among other things.
const unseenTopic = "unseen"

// leastSeen is how many faults that are always seen stand beside one that is not.
const leastSeen = 2

func (d *Drill) arrivalSays(rng *rand.Rand) Exercise {
	why := d.say.ArrivalSaysWhy(d.s.End)
	return d.asked(rng, d.say.ArrivalSays(), why,
		Choice{ID: "stopped", Text: d.say.ArrivalSaysStopped()},
		Choice{ID: "height", Text: d.say.ArrivalSaysHeight(), Reason: d.say.ArrivalSaysHeightWhy(why)},
		Choice{ID: "home", Text: d.say.ArrivalSaysHome(), Reason: why},
		Choice{ID: "firm", Text: d.say.ArrivalSaysFirm(), Reason: d.say.ArrivalSaysFirmWhy(why)})
}

func (d *Drill) zoneSays(rng *rand.Rand) Exercise {
	why := d.say.ZoneSaysWhy(d.s.ZoneStart, d.s.ZoneEnd)
	return d.asked(rng, d.say.ZoneSays(), why,
		Choice{ID: "inside", Text: d.say.ZoneSaysInside()},
		Choice{ID: "good", Text: d.say.ZoneSaysGood(), Reason: d.say.ZoneSaysGoodWhy(why)},
		Choice{ID: "insert", Text: d.say.ZoneSaysInsert(), Reason: d.say.ZoneSaysInsertWhy(why)},
		Choice{ID: "safe", Text: d.say.ZoneSaysSafe(), Reason: why + " " + d.byHand(), Grave: graveHand})
}

// unseenRows are the faults that show both lamps as a good part does, and those that
// nearly always show others.
func (d *Drill) unseenRows() (blind, seen []int) {
	both := words.Pair{Arrival: true, Zone: true}
	if !slices.Contains(d.r.Verdict.Table.Words(true, true), press.Good) {
		return nil, nil
	}
	for i, f := range d.r.Faults {
		if f.Own || f.Good || f.Verdict == press.EarlyContact || words.NotLookedAt(d.p, f) || !f.Case().Blind || f.Case().Stuck.Any() || f.Name == press.RowNestWorn {
			continue
		}
		shows := d.shows(d.eventOf(i))
		switch d.found(f) {
		case unfoundID:
			if shows == both && f.Detection <= 1-d.p.Faults.SampleProbability {
				blind = append(blind, i)
			}
		case foundID:
			if shows != both {
				seen = append(seen, i)
			}
		}
	}
	return blind, seen
}

func (d *Drill) unseen(rng *rand.Rand, blind, seen []int) Exercise {
	seen = slices.Clone(seen)
	rng.Shuffle(len(seen), func(i, j int) { seen[i], seen[j] = seen[j], seen[i] })
	right := pick(rng, blind)
	choices := []Choice{{ID: d.rowKey(right), Text: d.plainly(right)}}
	for _, i := range seen[:min(3, len(seen))] {
		choices = append(choices, Choice{ID: d.rowKey(i), Text: d.plainly(i), Reason: d.seen(i)})
	}
	return d.asked(rng, d.say.UnseenBoth(), d.seen(right), choices...)
}

// plainly says a fault in a few plain words.
func (d *Drill) plainly(i int) string { return d.say.FaultPlainly(d.p, d.r.Faults[i]) }
