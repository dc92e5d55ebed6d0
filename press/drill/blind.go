package drill

import (
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// How surely a fault is found.
const (
	foundID   = "found"
	luckID    = "luck"
	unfoundID = "unfound"
	vagueID   = "" // between two of them: not asked
)

// found says how surely a row is detected: as surely as the plan wants its limit
// samples judged, hardly ever by the same measure, or by luck, which is neither
// likely nor unlikely. What is refused no more often than a good part is not found
// either.
func (d *Drill) found(f press.FaultRow) string {
	switch p := d.p.Faults.SampleProbability; {
	case f.Detection >= p:
		return foundID
	case f.Detection <= 1-p || d.likeGood(f):
		return unfoundID
	case f.Detection >= 1-clearShare && f.Detection <= clearShare:
		return luckID
	}
	return vagueID
}

// likeGood tells whether a row is refused no more often than the nominal part.
func (d *Drill) likeGood(f press.FaultRow) bool {
	const slack = 1e-6 // of the computed probabilities
	i := slices.IndexFunc(d.r.Faults, func(x press.FaultRow) bool { return x.Name == press.RowNominal && !x.Own })
	return i >= 0 && f.Detection <= 1-d.r.Faults[i].Detection+slack
}

// blindItems ask whether the lamps find a fault at all.
func (d *Drill) blindItems() {
	var rows, never, found []int
	for i, f := range d.r.Faults {
		if f.Good || f.Verdict == press.EarlyContact || words.NotLookedAt(d.p, f) || d.found(f) == vagueID || !f.Own && !f.Case().Blind {
			continue
		}
		rows = append(rows, i)
		switch d.found(f) {
		case unfoundID:
			never = append(never, i)
		case foundID:
			found = append(found, i)
		}
		d.add(Blind, 3, "blind/"+d.rowKey(i), func(rng *rand.Rand) Exercise { return d.blind(rng, i) }, d.rowTopic(i))
	}
	if len(rows) == 0 {
		d.why[Blind] = d.say.NoFaultIsJudged()
	}
	if len(never) > 0 && len(found) > 1 {
		d.add(Blind, 3, "blind/which", func(rng *rand.Rand) Exercise { return d.which(rng, never, found) }, unseenTopic)
	}
}

func (d *Drill) blind(rng *rand.Rand, i int) Exercise {
	f := d.r.Faults[i]
	t := d.say.Fault(f)
	e := Exercise{
		Question: d.say.WouldLampsFind(t.Word),
		Facts:    d.rowFacts(i),
		Picture:  &Picture{Row: i},
		Right:    []string{d.found(f)},
		Explain:  d.seen(i),
	}
	if f.Case().Stuck.Any() {
		e.Question = d.say.WouldLampsRefuse(t.Word)
	}
	e.Choices = unreasoned([]Choice{
		{ID: foundID, Text: d.say.BlindFound(), Reason: d.seen(i)},
		{ID: luckID, Text: d.say.BlindLuck(), Reason: d.seen(i)},
		{ID: unfoundID, Text: d.say.BlindUnfound(), Reason: d.seen(i)},
	}, e.Right)
	return e
}

// seen says what the lamps show of a row, and how often that finds it.
func (d *Drill) seen(i int) string {
	f := d.r.Faults[i]
	s := d.story(d.eventOf(i)) + " " + d.say.Found(f.Detection) + "."
	if how := d.say.Judged(d.p, d.r, f); how != "" && d.found(f) == luckID {
		s = strings.TrimSuffix(s, ".") + ": " + how + "."
	}
	if f.Detection > 1-d.p.Faults.SampleProbability && d.likeGood(f) {
		s = d.say.RefusedAsOftenAsGood(d.story(d.eventOf(i)), f.Detection)
	}
	switch {
	case f.Own:
		return s
	case words.RefusedFirst(f):
		return s
	case f.Name == press.RowLoose:
		s += d.say.LooseRestsAsTight()
		if probe := d.r.Probe; probe.Possible && probe.HighestSetting != nil {
			return d.say.AlikeButProbeMay(s, *probe.HighestSetting)
		}
		return d.say.AlikeToTheLamps(s)
	case f.Case().Stuck.On():
		s += d.say.StuckLampIsSeenBefore()
	case f.Name == press.RowGap && d.found(f) != foundID:
		s += d.say.GapIsSmall(d.p.Faults.Gap)
	}
	return s
}

// which shows one row that is hardly ever found and some that always are: what is
// found now and then would be no clear answer beside it.
func (d *Drill) which(rng *rand.Rand, never, found []int) Exercise {
	found = slices.Clone(found)
	rng.Shuffle(len(found), func(i, j int) { found[i], found[j] = found[j], found[i] })
	shown := append([]int{pick(rng, never)}, found[:min(3, len(found))]...)
	e := Exercise{Question: d.say.WhichAreNeverFound(), Facts: []string{d.figures(), d.off()}}
	for _, i := range shown {
		c := Choice{ID: strconv.Itoa(i), Text: d.named(i), Reason: d.seen(i)}
		if d.found(d.r.Faults[i]) == unfoundID {
			e.Right = append(e.Right, c.ID)
			e.Explain = d.say.Fault(d.r.Faults[i]).Word + ". " + d.seen(i)
		}
		e.Choices = append(e.Choices, c)
	}
	e.Choices = unreasoned(shuffled(rng, e.Choices), e.Right)
	return e
}

// named is a row with where the ram would be stopped.
func (d *Drill) named(i int) string {
	f := d.r.Faults[i]
	if f.Reading == nil {
		return d.say.Fault(f).Word
	}
	return d.say.StoppedRamAt(d.say.Fault(f).Word, d.at(*f.Reading))
}
