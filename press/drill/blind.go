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
		d.why[Blind] = "The fault catalogue of this plan has nothing that the lamps judge."
	}
	if len(never) > 0 && len(found) > 1 {
		d.add(Blind, 3, "blind/which", func(rng *rand.Rand) Exercise { return d.which(rng, never, found) }, unseenTopic)
	}
}

func (d *Drill) blind(rng *rand.Rand, i int) Exercise {
	f := d.r.Faults[i]
	t := words.Fault(f)
	e := Exercise{
		Question: "Would the two lamps find this fault: " + t.Word + "?",
		Facts:    d.rowFacts(i),
		Picture:  &Picture{Row: i},
		Right:    []string{d.found(f)},
		Explain:  d.seen(i),
	}
	if f.Case().Stuck.Any() {
		e.Question = "Fault: " + t.Word + ". Would the lamps refuse what is in the nest, and so show that something is wrong?"
	}
	e.Choices = unreasoned([]Choice{
		{ID: foundID, Text: "Yes, always or nearly always", Reason: d.seen(i)},
		{ID: luckID, Text: "Now and then: some are found, and some pass", Reason: d.seen(i)},
		{ID: unfoundID, Text: "Never, or nearly never", Reason: d.seen(i)},
	}, e.Right)
	return e
}

// seen says what the lamps show of a row, and how often that finds it.
func (d *Drill) seen(i int) string {
	f := d.r.Faults[i]
	s := d.story(d.eventOf(i)) + " " + words.Found(f.Detection) + "."
	if how := words.Judged(d.p, d.r, f); how != "" && d.found(f) == luckID {
		s = strings.TrimSuffix(s, ".") + ": " + how + "."
	}
	if f.Detection > 1-d.p.Faults.SampleProbability && d.likeGood(f) {
		s = d.story(d.eventOf(i)) + " It is refused in " + words.OneIn(f.Detection) + ". A good part is refused as often, so that does not find the fault."
	}
	switch {
	case f.Own:
		return s
	case words.RefusedFirst(f):
		return s
	case f.Name == press.RowLoose:
		s += " A loose insert comes to rest where a tight one does"
		if probe := d.r.Probe; probe.Possible && probe.HighestSetting != nil {
			return s + ": these lamps cannot tell them apart. " + words.ProbeMay(*probe.HighestSetting)
		}
		return s + ": these lamps cannot tell them apart."
	case f.Case().Stuck.On():
		s += " A lamp that is stuck on is found by looking before the push: it must be off then."
	case f.Name == press.RowGap && d.found(f) != foundID:
		s += " A gap of " + d.pos.Length(d.p.Faults.Gap) + " is small beside what the window lets pass."
	}
	return s
}

// which shows one row that is hardly ever found and some that always are: what is
// found now and then would be no clear answer beside it.
func (d *Drill) which(rng *rand.Rand, never, found []int) Exercise {
	found = slices.Clone(found)
	rng.Shuffle(len(found), func(i, j int) { found[i], found[j] = found[j], found[i] })
	shown := append([]int{pick(rng, never)}, found[:min(3, len(found))]...)
	e := Exercise{Question: "Which of these do the two lamps never find, or nearly never?", Facts: []string{d.figures(), d.off()}}
	for _, i := range shown {
		c := Choice{ID: strconv.Itoa(i), Text: d.named(i), Reason: d.seen(i)}
		if d.found(d.r.Faults[i]) == unfoundID {
			e.Right = append(e.Right, c.ID)
			e.Explain = words.Fault(d.r.Faults[i]).Word + ". " + d.seen(i)
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
		return words.Fault(f).Word
	}
	return words.Fault(f).Word + ", the ram stopped at " + d.at(*f.Reading)
}
