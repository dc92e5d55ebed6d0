package drill

import (
	"slices"
	"strings"

	"ramplan/press/training"
)

// Misses gives what was missed in an exam, in the order of its score.
func (x *Exam) Misses(answers map[string]Answer, s Score) []training.Miss {
	var out []training.Miss
	for i, key := range x.Keys {
		if slices.Contains(s.Missed, key) {
			e := x.Exercise(i)
			out = append(out, training.Miss{
				Question: e.InWords(), Given: e.Said(answers[key]), Right: e.RightInWords(), Number: i + 1, Alone: e.Judge(answers[key]).Grave != "",
			})
		}
	}
	return out
}

// InWords is what was asked, with its situation.
func (e Exercise) InWords() string {
	switch {
	case e.Kind == React: // what happened stands before what is asked
		return strings.Join(append(slices.Clone(e.Facts), e.Question), " ")
	case e.Zone != nil:
		var parts []string
		for _, x := range e.Zone.Parts {
			parts = append(parts, e.Zone.d.high(x.Height)+" "+e.Zone.d.wordsOf([]string{x.Word}))
		}
		return e.say.AskedOfParts(e.Question, strings.Join(parts, ", "))
	}
	return strings.Join(append([]string{e.Question}, e.Facts...), " ")
}

// Said is an answer in words.
func (e Exercise) Said(a Answer) string {
	if e.Zone != nil && a.Zone != nil {
		return e.say.ZoneFromTo(e.Zone.d.typed(a.Zone[0]), e.Zone.d.typed(a.Zone[1]))
	}
	for _, c := range e.Choices {
		if c.ID == a.Choice {
			return c.Text
		}
	}
	return e.say.NoAnswer()
}

// RightInWords is the right answer in words, or all of them.
func (e Exercise) RightInWords() string {
	if e.Zone != nil {
		return e.say.ZoneForExample(e.Zone.Solution[0], e.Zone.Solution[1])
	}
	var out []string
	for _, c := range e.Choices {
		if slices.Contains(e.Right, c.ID) {
			out = append(out, c.Text)
		}
	}
	return strings.Join(out, " Or: ")
}

// kindsOfKeys are the kinds of items by what their keys begin with, of this plan
// or another.
var kindsOfKeys = map[string]Kind{"when": Read, "signal": Read, "unseen": Read, "part": Act, "first": Act, "change": Act, "rule": Act, "hands": Safe, "read": Read, "lamps": Read, "do": Act, "several": Act, "predict": Predict, "height": Predict, "height-alone": Predict, "react": React, "blind": Blind, "zone": Zone}

// KindOfKey gives the kind of an item of any plan; empty for an unknown one.
func KindOfKey(key string) Kind {
	first, _, _ := strings.Cut(key, "/")
	return kindsOfKeys[first]
}
