package drill

import (
	"fmt"
	"math/rand/v2"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
)

// actItems: what happens to the part, and what happens to the station when the same
// lamps refuse again and again.
func (d *Drill) actItems() {
	for _, t := range words.PairTexts(d.p, d.r) {
		d.add(Act, 1, "do/"+PairID(t.Pair), func(rng *rand.Rand) Exercise { return d.do(rng, t) })
	}
	for _, t := range words.PairTexts(d.p, d.r) {
		switch {
		case len(t.Words) == 0: // to stop is what happens to the part, too
			d.add(Act, 1, "several/"+PairID(t.Pair), func(rng *rand.Rand) Exercise { return d.atFault(rng, t) }, "do/"+PairID(t.Pair))
		case !slices.Contains(t.Words, press.Good):
			d.add(Act, 1, "several/"+PairID(t.Pair), func(rng *rand.Rand) Exercise { return d.several(rng, t) })
		}
	}
}

// several asks what to do when the same lamps refuse one part after another.
func (d *Drill) several(rng *rand.Rand, t words.PairText) Exercise {
	why := d.says(t.Pair) + " Several in a row have one cause, and it makes the next part what it made these: nothing is pressed until it is known."
	e := d.asked(rng, "What do you do before the next push?", why, append([]Choice{
		{ID: "stop", Text: "Stop, hold these parts back, and look for the cause or call whoever may."},
		{ID: trapGoOn, Text: "Set this part apart as well, and go on with the next one.", Reason: why, Grave: graveRow},
	}, d.tempting(t)...)...)
	e.Facts = []string{"The lamps show " + t.Pair.String() + ".", fmt.Sprintf("It is number %d in a row with these lamps.", 3+rng.IntN(4))}
	e.Picture = &Picture{Lamps: &t.Pair}
	return e
}

// atFault asks what to do with lamps to which no part leads.
func (d *Drill) atFault(rng *rand.Rand, t words.PairText) Exercise {
	why := t.Meaning + " " + t.Do
	e := d.asked(rng, "What do you do before the next push?", why, append([]Choice{
		{ID: "stop", Text: "Stop: nothing is pressed until the signals were tested."},
		{ID: trapGoOn, Text: "Set the part apart, and go on with the next one.", Reason: why, Grave: graveGoOn},
		{ID: "good", Text: "Go on, as long as the next part shows the lamps of a good one.", Reason: why, Grave: graveGoOn},
	}, d.tempting(t)...)...)
	e.Facts = []string{"The lamps show " + t.Pair.String() + "."}
	e.Picture = &Picture{Lamps: &t.Pair}
	return e
}

// tempting are the traps that would have the lamps show something else.
func (d *Drill) tempting(t words.PairText) []Choice {
	return slices.DeleteFunc(d.traps(t, words.Run), func(c Choice) bool { return c.ID == trapGoOn || c.ID == trapPass })
}

// do asks what happens to the part. Pairs with the same order share the answer.
func (d *Drill) do(rng *rand.Rand, t words.PairText) Exercise {
	e := Exercise{
		Question: "The lamps show " + t.Pair.String() + ". What happens to the part?",
		Picture:  &Picture{Lamps: &t.Pair},
		Explain:  t.Meaning + " " + t.Do,
		Right:    []string{PairID(t.Pair)},
	}
	var choices []Choice
	seen := map[string]bool{t.Do: true}
	choices = append(choices, Choice{ID: PairID(t.Pair), Text: t.Do})
	for _, other := range words.PairTexts(d.p, d.r) {
		if seen[other.Do] {
			continue
		}
		seen[other.Do] = true
		choices = append(choices, Choice{ID: PairID(other.Pair), Text: other.Do, Grave: d.treatedAs(t, other),
			Reason: "That belongs to " + other.Pair.String() + ", which is " + d.orWords(other.Words) + ". " + d.says(t.Pair) + " That is " + d.orWords(t.Words) + "."})
	}
	for _, trap := range d.traps(t, words.One) {
		if trap.ID == trapAgain {
			choices = append(choices, trap)
		}
	}
	e.Choices = shuffled(rng, choices)
	return e
}

// treatedAs says what it does to a part of some lamps to treat it as one of others.
func (d *Drill) treatedAs(t, as words.PairText) string {
	switch {
	case d.plain(as):
		return d.passes(t.Pair)
	case slices.Equal(as.Words, []string{press.Missing}) && len(t.Words) == 0:
		return graveGoOn
	case slices.Equal(as.Words, []string{press.Missing}):
		return graveAgain
	}
	return ""
}
