package drill

import (
	"math/rand/v2"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/press/words/lesson"
)

// An Exercise is one question with its answers.
type Exercise struct {
	Key      string
	Kind     Kind
	Level    int
	Question string
	Facts    []string // what is known, a line each
	Picture  *Picture
	Choices  []Choice  // none where a zone is asked for
	Zone     *ZoneTask // where it is
	Right    []string  // ids of the choices that count as right
	Explain  string    // why they are

	say lesson.Words
}

// A Choice is one answer to choose from.
type Choice struct {
	ID     string
	Text   string
	Reason string       // why it is wrong; empty for a right one
	Grave  lesson.Grave // what it says that fails an exam alone; empty for most
}

// A Picture says what is to be shown beside the question.
type Picture struct {
	Lamps  *words.Pair // the two lamps
	Row    int         // the row of the fault catalogue, when neither of the others is set
	Height *float64    // a part of this height above the datum, mm
}

// An Answer is what a learner gave: a choice, or the ends of a zone.
type Answer struct {
	Choice string
	Zone   *press.Pair
}

// Judged is what an answer is worth.
type Judged struct {
	Right  bool
	Reason string // why it is right or wrong
	Grave  string // what was answered that fails an exam alone
}

// Judge looks at an answer.
func (e Exercise) Judge(a Answer) Judged {
	if e.Zone != nil {
		return e.Zone.judge(a.Zone)
	}
	if slices.Contains(e.Right, a.Choice) {
		return Judged{Right: true, Reason: e.Explain}
	}
	for _, c := range e.Choices {
		if c.ID == a.Choice {
			return Judged{Reason: c.Reason, Grave: e.say.Answered(c.Grave)}
		}
	}
	return Judged{Reason: e.say.NoAnswerBut(e.Explain)}
}

// pairs as choices

var pairIDs = map[words.Pair]string{
	{Arrival: true, Zone: true}:   "on-on",
	{Arrival: true, Zone: false}:  "on-off",
	{Arrival: false, Zone: true}:  "off-on",
	{Arrival: false, Zone: false}: "off-off",
}

// PairID names a pair of lamps in keys and choices.
func PairID(on words.Pair) string { return pairIDs[on] }

const earlyID = "early"

// shuffled puts choices in the order of chance, with what cannot be said at the
// end.
func shuffled(rng *rand.Rand, choices []Choice) []Choice {
	rng.Shuffle(len(choices), func(i, j int) { choices[i], choices[j] = choices[j], choices[i] })
	return choices
}

func pick[T any](rng *rand.Rand, list []T) T { return list[rng.IntN(len(list))] }
