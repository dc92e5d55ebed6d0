package words

import "ramplan/press"

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

// Verdicts are the words of the verdict table and of the fault catalogue.
var Verdicts = []Term{
	{press.Good, "Seated where the drawing wants it."},
	{press.Long, "Stands too tall: the ram was stopped too early."},
	{press.Short, "Sits too low: the ram went too deep."},
	{press.Missing, "No insert in the nest."},
	{press.FaultWord, "No part leads to this pair of signals: something at the station is wrong."},
	{press.EarlyContact, "Met before the push began, while the ram still approached fast: the push limit was not in force."},
}

// Verdict gives the meaning of a verdict word, empty for an unknown one.
func Verdict(word string) string {
	for _, t := range Verdicts {
		if t.Word == word {
			return t.Meaning
		}
	}
	return ""
}
