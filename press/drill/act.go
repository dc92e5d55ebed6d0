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
			d.add(Act, 1, "several/"+PairID(t.Pair), func(rng *rand.Rand) Exercise { return d.atFault(rng, t) }, "do/"+PairID(t.Pair), rowTopicOfAll)
		case !slices.Contains(t.Words, press.Good):
			d.add(Act, 1, "several/"+PairID(t.Pair), func(rng *rand.Rand) Exercise { return d.several(rng, t) }, rowTopicOfAll)
		}
	}
}

// rowTopicOfAll is that of several refused parts in a row: who knows what to do then with
// some lamps knows it with others.
const rowTopicOfAll = "several"

// several asks what to do when the same lamps refuse one part after another.
func (d *Drill) several(rng *rand.Rand, t words.PairText) Exercise {
	why := d.says(t.Pair) + " Several in a row have one cause, and the next part will have it too. Press nothing until the cause is known."
	e := d.asked(rng, "What do you do now?", why, append([]Choice{
		{ID: "stop", Text: "Stop, hold these parts back, and look for the cause, or call somebody who may."},
		{ID: trapGoOn, Text: "Set this part apart as well, and go on with the next one.", Reason: why, Grave: graveRow},
	}, d.tempting(t)...)...)
	e.Facts = []string{"The lamps show " + t.Pair.String() + ".", fmt.Sprintf("It is number %d in a row with these lamps.", 3+rng.IntN(4))}
	e.Picture = &Picture{Lamps: &t.Pair}
	return e
}

// atFault asks what to do with lamps to which no part leads.
func (d *Drill) atFault(rng *rand.Rand, t words.PairText) Exercise {
	why := t.Meaning + " " + t.Do
	e := d.asked(rng, "What do you do now?", why, append([]Choice{
		{ID: "stop", Text: "Stop. Nothing is pressed until the signals have been tested."},
		{ID: trapGoOn, Text: "Set the part apart, and go on with the next one.", Reason: why, Grave: graveGoOn},
		{ID: "good", Text: "Go on, if the next part shows the lamps of a good one.", Reason: why, Grave: graveGoOn},
	}, d.tempting(t)...)...)
	e.Facts = []string{"The lamps show " + t.Pair.String() + "."}
	e.Picture = &Picture{Lamps: &t.Pair}
	return e
}

// tempting are the traps that would have the lamps show something else.
func (d *Drill) tempting(t words.PairText) []Choice {
	return slices.DeleteFunc(d.traps(t, words.Run), func(c Choice) bool { return c.ID == trapGoOn || c.ID == trapPass })
}

// do asks what happens to one part after a run of good ones. What is wrong lets the part
// go on, or presses it again: to hold it back is never wrong.
func (d *Drill) do(rng *rand.Rand, t words.PairText) Exercise {
	says := d.says(t.Pair) + " That is " + d.orWords(t.Words) + ". " + t.Do
	choices := []Choice{{ID: PairID(t.Pair), Text: d.doText(t)}}
	if d.plain(t) {
		choices = append(choices,
			Choice{ID: trapAgain, Text: "Press the part once more, to be sure.", Reason: d.again(), Grave: graveAgain},
			Choice{ID: "back", Text: "Put it back among the parts that are still to be pressed.", Reason: "It would be pressed a second time. " + d.again(), Grave: graveAgain},
			Choice{ID: "stay", Text: "Leave it in the nest, and put the next insert on it.", Reason: "Two inserts would lie in the nest. " + says, Grave: graveStack})
	} else {
		back, grave := "It would be pressed a second time. ", d.graveAgain(t)
		if slices.Contains(t.Words, press.Missing) { // a part without an insert was not pressed
			back, grave = emptyPart+" ", ""
		}
		choices = append(choices,
			Choice{ID: trapPass, Text: passOn, Reason: says, Grave: d.passes(t.Pair)},
			Choice{ID: "mark", Text: "Mark it, and pass it on with the others.", Reason: "A mark makes no part good. " + says, Grave: d.passes(t.Pair)},
			Choice{ID: trapAgain, Text: "Press the part once more.", Reason: d.again(), Grave: d.graveAgain(t)},
			Choice{ID: "back", Text: "Put it back among the parts that are still to be pressed.", Reason: back + d.again(), Grave: grave})
	}
	if len(t.Words) == 0 {
		choices = append(choices, Choice{ID: trapGoOn, Text: "Set it apart, and go on with the next part.", Reason: says, Grave: graveGoOn})
	}
	why := t.Meaning + " " + t.Do
	if !d.plain(t) && slices.Contains(t.Words, press.Missing) {
		why += " " + emptyPart
	}
	e := d.asked(rng, "The lamps show "+t.Pair.String()+". What happens to the part?", why, choices...)
	e.Facts = []string{"The parts before it were good."}
	e.Picture = &Picture{Lamps: &t.Pair}
	return e
}

// emptyPart is the rule for what was in the nest when there was no insert.
const emptyPart = "A part into which nothing was pressed may go back only when somebody who is in charge has seen that it is empty and whole."

// passOn is what happens to a good part.
const passOn = "Pass it on."

// doText is what happens to a part, without a word of what it is: that is another
// question.
func (d *Drill) doText(t words.PairText) string {
	refused := t.Clear && len(t.Words) > 0 && !slices.Contains(t.Words, press.Good)
	switch {
	case d.plain(t) && !slices.Contains(t.Words, press.Missing):
		return passOn
	case refused && slices.Contains(t.Words, press.Missing):
		return "What was pressed is set apart, marked. It is not pressed again."
	case refused:
		return "Set it apart, marked. It is not pressed again."
	}
	return t.Do
}
