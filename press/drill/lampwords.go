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
	why := "Arrival comes on when something stops the ram, at the push end of " + d.pos.At(d.s.End) + " or before. It does not say what stopped it, nor where."
	return d.asked(rng, "The arrival lamp is on. What does this lamp say?", why,
		Choice{ID: "stopped", Text: "Something has stopped the ram"},
		Choice{ID: "height", Text: "The part has the right height", Reason: "Arrival does not say where the ram stands. " + why},
		Choice{ID: "home", Text: "Home is where the ram stands again", Reason: why},
		Choice{ID: "firm", Text: "The insert sits firmly", Reason: "No lamp says how firmly an insert sits. " + why})
}

func (d *Drill) zoneSays(rng *rand.Rand) Exercise {
	why := "Zone is on while the ram stands between " + d.pos.Bare(d.s.ZoneStart) + " and " + d.pos.At(d.s.ZoneEnd) + ", whatever has brought it there."
	return d.asked(rng, "The zone lamp is on. What does this lamp say?", why,
		Choice{ID: "inside", Text: "The ram stands between the zone start and the zone end"},
		Choice{ID: "good", Text: "The part is good", Reason: "One lamp alone does not judge a part. " + why},
		Choice{ID: "insert", Text: "An insert is in the nest", Reason: "The lamp knows where the ram stands, and not what lies in the nest. " + why},
		Choice{ID: "safe", Text: "A hand may go into the work space", Reason: why + " " + d.byHand(), Grave: graveHand})
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
	return d.asked(rng, "Both lamps are on. Which of these faults can be there even so?", d.seen(right), choices...)
}

// plainly says a fault in a few plain words.
func (d *Drill) plainly(i int) string {
	switch f := d.r.Faults[i]; f.Name {
	case press.RowLoose:
		return "Loose fit: nothing holds the insert at its seat"
	case press.RowAlreadyPressed:
		return "The part was pressed before"
	case press.RowMissing:
		return "There is no insert"
	case press.RowTight:
		return "Too tight: the insert sticks on its way"
	case press.RowChip:
		return "A chip of " + d.pos.Length(d.p.Faults.Chip) + " lies under the part"
	case press.RowGap:
		return "The insert stands " + d.pos.Length(d.p.Faults.Gap) + " off its seat"
	default:
		return words.Fault(f).Word
	}
}
