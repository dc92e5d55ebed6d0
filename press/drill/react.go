package drill

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
)

// reactItems ask what to check first, and what next, by the reaction list.
func (d *Drill) reactItems() {
	n := 0
	for _, t := range d.say.PairTexts(d.p, d.r) {
		for _, when := range words.Situations {
			x, ok := words.ReactionTo(d.list, t.Pair, when)
			if !ok || len(x.Checks) == 0 || d.plain(t) && when == words.One {
				continue
			}
			key := "react/" + PairID(t.Pair) + "/" + string(when)
			// A second step prints the first, whatever the situation is.
			d.add(React, 3, key+"/first", func(rng *rand.Rand) Exercise { return d.react(rng, t, x, 0) }, d.steps(t, key, x, 0)...)
			if len(x.Asked) > 1 {
				d.add(React, 3, key+"/next", func(rng *rand.Rand) Exercise { return d.react(rng, t, x, 1) }, d.tells(t, d.steps(t, key, x, 1)...)...)
			}
			n++
		}
	}
	if n == 0 {
		d.why[React] = d.say.NoReactionList()
	}
}

// tells are the topics of a second step. By the first one, which it prints, it tells
// what the lamps mean and what happens to the part.
func (d *Drill) tells(t words.PairText, topics ...string) []string {
	topics = append(topics, "read/"+PairID(t.Pair), "do/"+PairID(t.Pair))
	for _, w := range t.Words {
		topics = append(topics, "lamps/"+w)
	}
	return topics
}

// steps are the topics of what comes at a place of a list: what was done before, and
// every check that is right then.
func (d *Drill) steps(t words.PairText, key string, x words.Reaction, step int) []string {
	out := []string{key}
	for i, c := range x.Asked {
		if i <= step || slices.Contains(mayCome(x, step), i) {
			out = append(out, "step/"+PairID(t.Pair)+"/"+c)
			if words.LampsOff(c) {
				out = append(out, homeTopic)
			}
			if words.ChangesNothing(c) {
				out = append(out, changeTopic)
			}
		}
	}
	return out
}

// mostRight is how many right checks are shown: with all of them there would be little
// left to choose.
const mostRight = 2

// mayCome are the checks that may come at a place of a list, those before it done.
func mayCome(x words.Reaction, step int) []int {
	out := []int{step}
	for i := step + 1; i < len(x.Asked) && len(out) < mostRight; i++ {
		if x.InAnyOrder(step, i) && !slices.Contains(x.Asked[:i], x.Asked[i]) {
			out = append(out, i)
		}
	}
	return out
}

// plain tells whether a pair means good and nothing that no named check tells apart.
func (d *Drill) plain(t words.PairText) bool {
	return t.Clear && len(t.Words) > 0 && t.Words[0] == press.Good
}

// react asks for a step of a list. Of a list that is common practice every step is
// right that may come now; of the works' own, the next one.
func (d *Drill) react(rng *rand.Rand, t words.PairText, x words.Reaction, step int) Exercise {
	e := Exercise{
		Question: d.say.CheckFirst(),
		Facts:    []string{d.say.TheLampsShow(t.Pair), d.history(rng, t, x)},
		Picture:  &Picture{Lamps: &t.Pair},
		Explain:  x.Part + " " + d.order(x, x.Checks),
	}
	if step > 0 {
		e.Question = d.say.CheckNext()
		e.Facts = append(e.Facts, d.say.FirstFoundNothing(x.Asked[step-1]))
		if !x.Own && x.First < step {
			e.Facts[2] = d.say.ThisFoundNothing(x.Asked[step-1])
		}
	}
	switch {
	case x.Own:
	case step < x.First:
		e.Facts = append(e.Facts, d.say.OneFirst())
	default:
		e.Facts = append(e.Facts, d.say.AnyOrder())
	}
	var choices []Choice
	used, may := map[string]bool{}, mayCome(x, step)
	for i, c := range x.Asked {
		seen := used[c]
		used[c] = true
		switch {
		case i < step || seen:
		case slices.Contains(may, i):
			choices = append(choices, Choice{ID: fmt.Sprintf("step-%d", i+1), Text: c})
			e.Right = append(e.Right, fmt.Sprintf("step-%d", i+1))
		case words.ChangesNothing(c): // to call somebody is never wrong
		case !x.InAnyOrder(step, i):
			choices = append(choices, Choice{ID: fmt.Sprintf("step-%d", i+1), Text: c, Reason: d.say.ComesLater(d.order(x, x.Checks))})
		}
	}
	choices = append(choices, d.strangers(rng, x, used)...)
	traps := d.traps(t, x.Situation)
	rng.Shuffle(len(traps), func(i, j int) { traps[i], traps[j] = traps[j], traps[i] })
	e.Choices = shuffled(rng, append(choices, traps[:min(len(traps), 1+len(e.Right))]...))
	return e
}

// strangers are first checks of other pairs, one at the most, that stand in no list of
// this one: they are not wrong in themselves, but they do not belong
// here. To stop, or to hold back, belongs everywhere, and so do a
// few others: they are none of them.
func (d *Drill) strangers(rng *rand.Rand, x words.Reaction, used map[string]bool) []Choice {
	var out []Choice
	used = maps.Clone(used)
	for _, same := range d.list {
		if same.Pair == x.Pair {
			for _, c := range same.Asked {
				used[c] = true
			}
		}
	}
	for _, other := range d.list {
		if other.First > 0 || other.Pair == x.Pair || other.Situation != x.Situation || len(other.Asked) == 0 || d.say.Anywhere(other.Asked[0], x.Situation) || used[other.Asked[0]] {
			continue
		}
		used[other.Asked[0]] = true
		out = append(out, Choice{
			ID:     "other-" + PairID(other.Pair),
			Text:   other.Asked[0],
			Reason: d.say.FirstWithOtherLamps(other.Pair, d.says(x.Pair), d.order(x, x.Checks)),
		})
	}
	if len(out) > 1 {
		out = []Choice{pick(rng, out)}
	}
	return slices.Clip(out)
}

// history tells what happened before, as the situation wants it: a new lot, where one of
// the checks is about that.
func (d *Drill) history(rng *rand.Rand, t words.PairText, x words.Reaction) string {
	good := 20 + rng.IntN(200)
	switch x.Situation {
	case words.Run:
		if d.plain(t) {
			return d.say.NumberInARow(good)
		}
		return d.say.NumberInARowAfterGood(3+rng.IntN(3), good)
	case words.Change:
		if slices.ContainsFunc(x.Asked, words.OfNewLot) {
			return d.say.NewLot()
		}
		return pick(rng, []string{
			d.say.ToolWasChanged(),
			d.say.NestWasOut(),
			d.say.NewLot(),
		})
	case words.Start:
		return d.say.SinceTheShiftBegan(10+5*rng.IntN(5), 4+rng.IntN(8))
	}
	return d.say.SoManyGoodBefore(good)
}

// order says a list, and how much of its order counts.
func (d *Drill) order(x words.Reaction, checks []string) string {
	free := max(0, len(checks)-x.First)
	switch {
	case x.Own || len(checks) < 2 || free == 0:
		return d.numbered(d.say.InThisOrder(), checks, 1)
	case x.First == 0:
		return d.numbered(d.say.AllInAnyOrder(), checks, 1)
	}
	return d.numbered(d.say.FirstOfAll(), checks[:x.First], 1) + d.numbered(d.say.ThenInAnyOrder(), checks[x.First:], x.First+1)
}

func (d *Drill) numbered(before string, checks []string, from int) string {
	for i, c := range checks {
		before += d.say.Numbered(from+i, c)
	}
	return before
}
