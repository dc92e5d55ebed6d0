package drill

import (
	"math/rand/v2"
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/press/words/lesson"
)

// unclearID is the answer that the lamps do not tell.
const unclearID = "unclear"

// verdictWords are the answers to what a part is, in the order of the table.
var verdictWords = []string{press.Good, press.Long, press.Short, press.Missing}

// verdictText says an answer in full.
func (d *Drill) verdictText(id string) string {
	switch id {
	case press.FaultWord:
		return d.say.ReadFault()
	case unclearID:
		return d.say.ReadUntold()
	case press.Long:
		return d.say.ReadTall()
	case press.Short:
		return d.say.ReadShort()
	case press.Missing:
		return d.say.ReadMissing()
	}
	if list := strings.Split(id, andID); len(list) > 1 {
		return upper(d.wordsOf(list))
	}
	return d.say.ReadGood()
}

// andID joins the words of an answer that is right for several parts at once.
const andID = "+"

// together are the words that some lamps mean at once and that are treated the same
// way, such as too short and no insert; nil where there are none.
func (d *Drill) together() []string {
	for _, on := range words.AllPairs {
		list := d.r.Verdict.Table.Words(on.Arrival, on.Zone)
		if len(list) > 1 && !d.r.Verdict.Table.Contradicts(on.Arrival, on.Zone) {
			return list
		}
	}
	return nil
}

// answersTo are the ids of the answers to what a pair means. Words that stand together
// are one answer, wherever this pair does not mean one of them by itself.
func (d *Drill) answersTo(list []string, unclear bool) []string {
	both := d.together()
	if len(both) == 0 || unclear || !slices.Equal(list, both) && slices.ContainsFunc(list, func(w string) bool { return slices.Contains(both, w) }) {
		return verdictWords
	}
	out := slices.DeleteFunc(slices.Clone(verdictWords), func(w string) bool { return slices.Contains(both, w) })
	return append(out, strings.Join(both, andID))
}

// partOf names a part by its verdict word inside a sentence.
func (d *Drill) partOf(word string) string {
	return map[string]string{
		press.Good: d.say.GoodPart(), press.Long: d.say.TallPart(), press.Short: d.say.ShortPart(), press.Missing: d.say.MissingInsert(),
	}[word]
}

// readItems: from the lamps to the part, and from the part to the lamps.
func (d *Drill) readItems() {
	for _, on := range words.AllPairs {
		d.add(Read, 1, "read/"+PairID(on), func(rng *rand.Rand) Exercise { return d.read(rng, on) })
	}
	for _, word := range verdictWords {
		if len(d.pairsOf(word)) > 0 {
			d.add(Read, 1, "lamps/"+word, func(rng *rand.Rand) Exercise { return d.lampsOf(rng, word) })
		}
	}
}

// pairsOf are the pairs that a word leads to.
func (d *Drill) pairsOf(word string) []words.Pair {
	var out []words.Pair
	for _, on := range words.AllPairs {
		if slices.Contains(d.r.Verdict.Table.Words(on.Arrival, on.Zone), word) {
			out = append(out, on)
		}
	}
	return out
}

func (d *Drill) read(rng *rand.Rand, on words.Pair) Exercise {
	list := d.r.Verdict.Table.Words(on.Arrival, on.Zone)
	unclear := d.r.Verdict.Table.Contradicts(on.Arrival, on.Zone)
	e := Exercise{
		Question: d.say.ReadPair(on),
		Picture:  &Picture{Lamps: &on},
		Explain:  d.say.InThisPlan(d.says(on), d.orWords(list), d.late(on)),
	}
	answers := d.answersTo(list, unclear)
	switch joined := strings.Join(list, andID); {
	case len(list) == 0:
		e.Right = []string{press.FaultWord}
	case slices.Contains(answers, joined):
		e.Right = []string{joined}
	default:
		e.Right = slices.Clone(list)
	}
	if slices.Equal(list, []string{press.Good}) {
		e.Explain = d.says(on) + " " + d.onlyThat(list)
	}
	if unclear {
		e.Right = append(e.Right, unclearID)
		e.Explain += d.say.UntoldWhich()
	}
	var choices []Choice
	for _, id := range answers {
		word, _, _ := strings.Cut(id, andID)
		c := Choice{ID: id, Text: d.verdictText(id), Reason: d.notThat(word, on, list)}
		if word == press.Good {
			c.Grave = d.passes(on)
		}
		choices = append(choices, c)
	}
	choices = shuffled(rng, choices)
	choices = append(choices,
		Choice{ID: press.FaultWord, Text: d.verdictText(press.FaultWord), Reason: d.say.ReadFaultWhy(d.says(on), upper(d.orParts(list)))},
		Choice{ID: unclearID, Text: d.verdictText(unclearID), Reason: d.says(on) + " " + d.onlyThat(list)})
	e.Choices = unreasoned(choices, e.Right)
	return e
}

// late says what zone alone may come from beside what the part is.
func (d *Drill) late(on words.Pair) string {
	if on == (words.Pair{Zone: true}) {
		return d.say.OrSeatedLate()
	}
	return ""
}

// notThat says why a word does not stand behind a pair.
func (d *Drill) notThat(word string, on words.Pair, list []string) string {
	s := d.says(on)
	if at := d.pairsOf(word); len(at) > 0 {
		s += " " + upper(d.partOf(word)) + " shows " + d.orPairs(at) + "."
	} else {
		s += d.say.ShowsNoPair(d.partOf(word))
	}
	if len(list) == 0 {
		return d.say.NoPartShowsThese(s)
	}
	return d.say.LampsMean(s, d.orWords(list))
}

func (d *Drill) lampsOf(rng *rand.Rand, word string) Exercise {
	right := d.pairsOf(word)
	e := Exercise{
		Question: d.say.WhichLampsShows(d.partOf(word)),
		Explain:  upper(d.partOf(word)) + " shows " + d.orPairs(right) + ". " + d.says(right[0]),
	}
	if on := d.shows(event{reading: d.r.Nominal()}); word == press.Good && len(right) == 1 && on == right[0] {
		e.Question = d.say.WhichLampsShowsTheMiddle()
		e.Explain = d.say.MiddleShows(d.orPairs(right), d.says(on))
	}
	if word == press.Short || word == press.Long {
		limit := d.p.Requirement.HeightHigh
		side := "taller"
		if word == press.Short {
			limit, side = d.p.Requirement.HeightLow, "shorter"
		}
		e.Facts = []string{d.say.BeyondTheLimit(side, limit)}
	}
	for _, on := range right {
		e.Right = append(e.Right, PairID(on))
	}
	var choices []Choice
	for _, on := range words.AllPairs {
		list := d.r.Verdict.Table.Words(on.Arrival, on.Zone)
		reason := d.say.MeansOtherThan(d.says(on), d.orWords(list), d.partOf(word), d.orPairs(right))
		choices = append(choices, Choice{ID: PairID(on), Text: upper(on.String()), Reason: reason, Grave: d.mirrors(word, list)})
	}
	e.Choices = unreasoned(shuffled(rng, choices), e.Right)
	return e
}

// mirrors says whether it is as grave to see some lamps behind a part as it is to see
// a good part behind lamps that refuse: who takes a good part for what shows lamps that
// mean something else, or a part that is not good for what shows lamps that mean good
// and nothing else.
func (d *Drill) mirrors(word string, list []string) lesson.Grave {
	switch {
	case word == press.Good && !slices.Contains(list, press.Good):
		return graveRefuse
	case word != press.Good && slices.Equal(list, []string{press.Good}):
		return graveAsGood
	}
	return ""
}

// onlyThat says of a pair that its words do not contradict each other: what the
// lamps cannot tell is no contradiction.
func (d *Drill) onlyThat(list []string) string {
	if len(list) == 0 {
		return d.say.NoPartForLamps()
	}
	if slices.Equal(list, []string{press.Good}) {
		return d.say.GoodAndPassedOn()
	}
	if len(list) == 1 {
		return d.say.NoOtherPart(d.orWords(list))
	}
	return d.say.TreatedTheSame(d.orWords(list))
}

// unreasoned takes the reasons of the right answers away.
func unreasoned(choices []Choice, right []string) []Choice {
	for i := range choices {
		if slices.Contains(right, choices[i].ID) {
			choices[i].Reason, choices[i].Grave = "", ""
		}
	}
	return choices
}

// orWords says the words behind a pair as they are said for this plan.
func (d *Drill) orWords(list []string) string {
	if words.Settled(d.p, list) {
		return d.say.GoodIf(d.p)
	}
	return d.wordsOf(list)
}

func (d *Drill) wordsOf(list []string) string {
	if len(list) == 0 {
		return d.say.FaultOfStation()
	}
	return words.SayAll(list)
}

func (d *Drill) orParts(list []string) string {
	out := make([]string, len(list))
	for i, w := range list {
		out[i] = d.partOf(w)
	}
	return strings.Join(out, d.say.Or())
}

func (d *Drill) orPairs(list []words.Pair) string {
	out := make([]string, len(list))
	for i, on := range list {
		out[i] = on.String()
	}
	return strings.Join(out, d.say.Or())
}

func upper(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
