package words

import (
	"strings"

	"ramplan/press"
)

// Term is a word and what it means, in one line.
type Term struct{ Word, Meaning string }

// Signals are the two signals.
var Signals = []Term{
	{"arrival", "The ram has been stopped by a part with the set force, at or before the push end."},
	{"zone", "The ram stands between zone start and zone end."},
}

// Pair is one state of the two signals.
type Pair struct{ Arrival, Zone bool }

// AllPairs are the four states, in the order in which tables show them.
var AllPairs = []Pair{{true, true}, {true, false}, {false, true}, {false, false}}

// String names the state: arrival on, zone off.
func (p Pair) String() string { return "arrival " + OnOff(p.Arrival) + ", zone " + OnOff(p.Zone) }

// OnOff is the state of a signal in a word.
func OnOff(on bool) string {
	if on {
		return "on"
	}
	return "off"
}

// verdicts are the words of the verdict table and of the fault catalogue as they are
// said, and what they mean. The same words stand on every page, sheet and card; the
// short keys are for files.
var verdicts = []struct {
	key string
	Term
}{
	{press.Good, Term{"good", "Seated where the drawing wants it."}},
	{press.Long, Term{"too tall", "Stands too tall: the ram was stopped too early."}},
	{press.Short, Term{"too short", "Stands too short: the ram went too deep."}},
	{press.Missing, Term{"no insert", "No insert in the nest."}},
	{press.FaultWord, Term{"fault", "No part leads to this pair of signals: something at the station is wrong."}},
	{press.EarlyContact, Term{"early contact", "Met before the push began, while the ram still approached fast: the push limit was not in force."}},
}

// Verdicts are those words for the glossary.
func Verdicts() []Term {
	var out []Term
	for _, v := range verdicts {
		out = append(out, v.Term)
	}
	return out
}

// Verdict gives the meaning of a verdict word, empty for an unknown one.
func Verdict(key string) string { return said(key).Meaning }

// Say gives a verdict word as it is said; an unknown one stays as it is.
func Say(key string) string {
	if t := said(key); t.Word != "" {
		return t.Word
	}
	return key
}

// SayAll joins verdict words as they are said: too short or no insert.
func SayAll(keys []string) string {
	out := make([]string, len(keys))
	for i, key := range keys {
		out[i] = Say(key)
	}
	return strings.Join(out, " or ")
}

func said(key string) Term {
	for _, v := range verdicts {
		if v.key == key {
			return v.Term
		}
	}
	return Term{}
}
