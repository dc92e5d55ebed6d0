package drill

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// reactItems ask what to check first, and what next, by the reaction list.
func (d *Drill) reactItems() {
	n := 0
	for _, t := range words.PairTexts(d.p, d.r) {
		for _, when := range words.Situations {
			x, ok := words.ReactionTo(d.list, t.Pair, when)
			if !ok || len(x.Checks) == 0 || d.plain(t) && when == words.One {
				continue
			}
			key := "react/" + PairID(t.Pair) + "/" + string(when)
			// The second step prints the first, whatever the situation is.
			first := "step/" + PairID(t.Pair) + "/" + x.Asked[0]
			d.add(React, 3, key+"/first", func(rng *rand.Rand) Exercise { return d.react(rng, t, x, 0) }, key, first)
			if len(x.Asked) > 1 {
				d.add(React, 3, key+"/next", func(rng *rand.Rand) Exercise { return d.react(rng, t, x, 1) }, d.tells(t, key, first, "step/"+PairID(t.Pair)+"/"+x.Asked[1])...)
			}
			n++
		}
	}
	if n == 0 {
		d.why[React] = "The plan has no reaction list."
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

// plain tells whether a pair means good and nothing that no named check tells apart.
func (d *Drill) plain(t words.PairText) bool {
	return t.Clear && len(t.Words) > 0 && t.Words[0] == press.Good
}

// react asks for a step of a list.
func (d *Drill) react(rng *rand.Rand, t words.PairText, x words.Reaction, step int) Exercise {
	e := Exercise{
		Question: "What do you check first?",
		Facts:    []string{"The lamps show " + t.Pair.String() + ".", d.history(rng, t, x.Situation)},
		Picture:  &Picture{Lamps: &t.Pair},
		Right:    []string{fmt.Sprintf("step-%d", step+1)},
		Explain:  x.Part + " " + inOrder(x.Checks),
	}
	if step > 0 {
		e.Question = "What do you check next?"
		e.Facts = append(e.Facts, "You did what is first on the list and found nothing wrong: "+x.Asked[step-1])
	}
	var choices []Choice
	used := map[string]bool{}
	for i, c := range x.Asked {
		if i < step || used[c] {
			used[c] = true
			continue
		}
		used[c] = true
		reason := ""
		if i > step {
			reason = "It is on the list, but later. " + inOrder(x.Checks)
		}
		choices = append(choices, Choice{ID: fmt.Sprintf("step-%d", i+1), Text: c, Reason: reason})
	}
	choices = append(choices, d.strangers(rng, x, used)...)
	traps := d.traps(t, x.Situation)
	rng.Shuffle(len(traps), func(i, j int) { traps[i], traps[j] = traps[j], traps[i] })
	e.Choices = shuffled(rng, append(choices, traps[:2]...))
	return e
}

// strangers are first checks of other pairs, one at the most: they are not wrong
// in themselves, but they do not belong here.
func (d *Drill) strangers(rng *rand.Rand, x words.Reaction, used map[string]bool) []Choice {
	var out []Choice
	for _, other := range d.list {
		if other.Pair == x.Pair || other.Situation != x.Situation || len(other.Asked) == 0 || used[other.Asked[0]] {
			continue
		}
		used[other.Asked[0]] = true
		out = append(out, Choice{
			ID:     "other-" + PairID(other.Pair),
			Text:   other.Asked[0],
			Reason: "That is first with " + other.Pair.String() + ". " + d.says(x.Pair) + " Here it is, in this order:" + strings.TrimPrefix(inOrder(x.Checks), "In this order:"),
		})
	}
	if len(out) > 1 {
		out = []Choice{pick(rng, out)}
	}
	return slices.Clip(out)
}

// history tells what happened before, as the situation wants it.
func (d *Drill) history(rng *rand.Rand, t words.PairText, when words.Situation) string {
	good := 20 + rng.IntN(200)
	switch when {
	case words.Run:
		if d.plain(t) {
			return fmt.Sprintf("It is number %d in a row with these lamps.", good)
		}
		return fmt.Sprintf("It is number %d in a row with these lamps; the %d parts before them were good.", 3+rng.IntN(3), good)
	case words.Change:
		return pick(rng, []string{
			"The tool was changed a moment ago; this is the first part since.",
			"The nest was taken out and put back; this is the first part since.",
			"A new lot of parts was opened; this is its first.",
		})
	case words.Start:
		return fmt.Sprintf("The shift began %d minutes ago, and all %d parts since showed these lamps.", 10+5*rng.IntN(5), 4+rng.IntN(8))
	}
	return fmt.Sprintf("The %d parts before it were good.", good)
}

func inOrder(checks []string) string {
	s := "In this order:"
	for i, c := range checks {
		s += fmt.Sprintf(" %d. %s", i+1, c)
	}
	return s
}
