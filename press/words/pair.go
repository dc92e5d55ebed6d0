package words

import (
	"slices"
	"strings"

	"ramplan/press"
)

// PairText is what one pair of signals means for a plan.
type PairText struct {
	Pair     Pair
	Words    []string  // of the verdict table; empty: no part leads here
	Verdict  string    // the words in one, "fault" where there are none
	Clear    bool      // the words do not contradict each other
	Meaning  string    // one sentence
	Do       string    // one sentence
	Brief    string    // the meaning in a few words, beside the verdict
	Act      string    // what to do in a few words
	suspects []suspect // what to look for, by the plan's own catalogue
}

// PairTexts gives the four pairs of a plan, both signals on first; nothing
// without a verdict.
func (say Printer) PairTexts(p *press.Plan, r *press.Result) []PairText {
	if r.Verdict == nil {
		return nil
	}
	out := make([]PairText, len(AllPairs))
	for i, on := range AllPairs {
		out[i] = say.pairText(on, p, r)
	}
	return out
}

func (say Printer) pairText(on Pair, p *press.Plan, r *press.Result) PairText {
	words := r.Verdict.Table.Words(on.Arrival, on.Zone)
	clear := !r.Verdict.Table.Contradicts(on.Arrival, on.Zone)
	if on == (Pair{true, true}) && presenceProbed(r) { // what the probe refuses does not come to this
		words = slices.DeleteFunc(slices.Clone(words), func(w string) bool { return w == press.Missing })
		clear = slices.Equal(words, []string{press.Good})
	}
	t := PairText{Pair: on, Words: words, Verdict: say.SayWords(p, words), Clear: clear}
	has := func(w string) bool { return slices.Contains(words, w) }
	t.Meaning, t.Brief = say.meaning(words)
	late := !on.Arrival && on.Zone
	if late {
		t.Meaning = strings.TrimSuffix(t.Meaning, ".") + "; or " + tooLate + "."
		t.Brief += ", or no arrival in time"
	}
	switch {
	case len(words) == 0:
		t.Verdict = press.FaultWord
		t.Meaning, t.Brief = say.nothingLeads(on)
		t.Do, t.Act = "Stop, set the part apart, and find the fault before the next cycle.", "stop and find the fault"
	case on.Arrival && on.Zone && !has(press.Good):
		t.Meaning, t.Brief = "Both signals are on for parts that are not good: "+t.Verdict+".", "passes, but is not good"
		t.Do, t.Act = "Judge no part by these signals; whoever keeps the plan changes the window first.", "set apart, have the window changed"
	case !t.Clear:
		t.Meaning, t.Brief = "These signals do not say which it is: "+t.Verdict+".", "cannot be told apart"
		t.Do, t.Act = "Set the part apart and measure it; whoever keeps the plan changes the window before parts are judged by it.", "set apart, have the window changed"
	case has(press.Good) && has(press.Missing):
		name := say.PresenceCheck(p)
		t.Meaning, t.Brief = "Seated where the drawing wants it, if "+name+" says that an insert is there: without one both signals are on as well.", "seated as drawn, or no insert"
		t.Do, t.Act = "See that "+name+" says that an insert is there; only then take the part out and pass it on.", "see that an insert is there, pass it on"
	case has(press.Good):
		t.Do, t.Act = "Take the part out and pass it on.", "pass it on"
	case has(press.Long):
		t.suspects = suspectsOf(r, tallSuspects, on)
		t.Do, t.Act = "Set the part apart; look for "+lookFor(t.suspects)+". Do not press it again.", "set apart, do not press again"
	case has(press.Short) && has(press.Missing):
		t.Do, t.Act = "Look into the nest: no insert, or a part that stands too short"+say.tooLateToo(late)+". Set the part apart.", "look into the nest, set apart"
	case has(press.Missing):
		t.Do, t.Act = "Look into the nest: without an insert, put one in and start anew; with one, set the part apart.", "look into the nest"
	default:
		t.suspects = suspectsOf(r, shortSuspects, on)
		t.Do, t.Act = "Set the part apart and measure it.", "set apart and measure"
		if look := lookFor(t.suspects); look != "" {
			t.Do = "Set the part apart and measure it; look for " + look + "."
		}
	}
	return t
}

// meaning joins the meanings of verdict words, as a sentence and in a few words.
func (say Printer) meaning(words []string) (sentence, brief string) {
	few := map[string]string{press.Good: "seated as drawn", press.Long: "stands too tall", press.Short: "stands too short", press.Missing: "no insert"}
	long, short := make([]string, len(words)), make([]string, len(words))
	for i, w := range words {
		long[i], short[i] = lowerFirst(strings.TrimSuffix(Verdict(w), ".")), few[w]
	}
	return upperFirst(strings.Join(long, "; or ")) + ".", strings.Join(short, ", or ")
}

// tooLate is what arrival off and zone on means beside what the table says: nothing
// about the part.
const tooLate = "seated, but the force was not reported in time"

func (say Printer) tooLateToo(late bool) string {
	if late {
		return ", or one that is seated, whose force was not reported in time"
	}
	return ""
}

// nothingLeads says what a pair is where by plan no part leads to it, as a sentence
// and in a few words.
func (say Printer) nothingLeads(on Pair) (sentence, brief string) {
	why := "a signal, a cable or the drive"
	switch on {
	case Pair{}:
		why = "weak drive, stick-slip, a lost signal"
	case Pair{Zone: true}:
		why = tooLate + ", or a lost signal"
	}
	return "No part leads here by plan: " + why + ".", "no part leads here by plan: " + why
}

// doubt names the first pair that cannot be trusted.
func doubt(table press.Table) string {
	for _, on := range AllPairs {
		if table.Contradicts(on.Arrival, on.Zone) {
			return " (" + on.String() + ": " + SayAll(table.Words(on.Arrival, on.Zone)) + ")"
		}
	}
	return ""
}
