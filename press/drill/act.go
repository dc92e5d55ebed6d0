package drill

import (
	"math/rand/v2"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
)

// actItems: what happens to the part, and what happens to the station when the same
// lamps refuse again and again.
func (d *Drill) actItems() {
	for _, t := range d.say.PairTexts(d.p, d.r) {
		d.add(Act, 1, "do/"+PairID(t.Pair), func(rng *rand.Rand) Exercise { return d.do(rng, t) })
	}
	for _, t := range d.say.PairTexts(d.p, d.r) {
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
	why := d.say.SeveralInARowWhy(d.says(t.Pair))
	e := d.asked(rng, d.say.SeveralInARow(), why, append([]Choice{
		{ID: "stop", Text: d.say.SeveralInARowStop()},
		{ID: trapGoOn, Text: d.say.SeveralInARowGoOn(), Reason: why, Grave: graveRow},
	}, d.tempting(t)...)...)
	e.Facts = []string{d.say.TheLampsShow(t.Pair), d.say.NthInARow(3 + rng.IntN(4))}
	e.Picture = &Picture{Lamps: &t.Pair}
	return e
}

// atFault asks what to do with lamps to which no part leads.
func (d *Drill) atFault(rng *rand.Rand, t words.PairText) Exercise {
	why := t.Meaning + " " + t.Do
	e := d.asked(rng, d.say.SeveralInARow(), why, append([]Choice{
		{ID: "stop", Text: d.say.AtFaultStop()},
		{ID: trapGoOn, Text: d.say.AtFaultGoOn(), Reason: why, Grave: graveGoOn},
		{ID: "good", Text: d.say.AtFaultGood(), Reason: why, Grave: graveGoOn},
	}, d.tempting(t)...)...)
	e.Facts = []string{d.say.TheLampsShow(t.Pair)}
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
	says := d.say.MeaningAndDeed(d.says(t.Pair), d.orWords(t.Words), t.Do)
	choices := []Choice{{ID: PairID(t.Pair), Text: d.doText(t)}}
	if d.plain(t) {
		choices = append(choices,
			Choice{ID: trapAgain, Text: d.say.DoAgain(), Reason: d.again(), Grave: graveAgain},
			Choice{ID: "back", Text: d.say.DoBack(), Reason: d.say.DoBackWhy(d.again()), Grave: graveAgain},
			Choice{ID: "stay", Text: d.say.DoStay(), Reason: d.say.DoStayWhy(says), Grave: graveStack})
	} else {
		back, grave := d.say.PressedASecondTime(), d.graveAgain(t)
		if slices.Contains(t.Words, press.Missing) { // a part without an insert was not pressed
			back, grave = d.say.EmptyPart()+" ", ""
		}
		choices = append(choices,
			Choice{ID: trapPass, Text: d.say.PassOn(), Reason: says, Grave: d.passes(t.Pair)},
			Choice{ID: "mark", Text: d.say.DoMark(), Reason: d.say.DoMarkWhy(says), Grave: d.passes(t.Pair)},
			Choice{ID: trapAgain, Text: d.say.DoAgainPress(), Reason: d.again(), Grave: d.graveAgain(t)},
			Choice{ID: "back", Text: d.say.DoBack(), Reason: back + d.again(), Grave: grave})
	}
	if len(t.Words) == 0 {
		choices = append(choices, Choice{ID: trapGoOn, Text: d.say.DoGoOn(), Reason: says, Grave: graveGoOn})
	}
	why := t.Meaning + " " + t.Do
	if !d.plain(t) && slices.Contains(t.Words, press.Missing) {
		why += " " + d.say.EmptyPart()
	}
	e := d.asked(rng, d.say.Do(t.Pair), why, choices...)
	e.Facts = []string{d.say.PartsBeforeGood()}
	e.Picture = &Picture{Lamps: &t.Pair}
	return e
}

// doText is what happens to a part, without a word of what it is: that is another
// question.
func (d *Drill) doText(t words.PairText) string {
	refused := t.Clear && len(t.Words) > 0 && !slices.Contains(t.Words, press.Good)
	switch {
	case d.plain(t) && !slices.Contains(t.Words, press.Missing):
		return d.say.PassOn()
	case refused && slices.Contains(t.Words, press.Missing):
		return d.say.PressedIsSetApart()
	case refused:
		return d.say.SetApartMarked()
	}
	return t.Do
}
