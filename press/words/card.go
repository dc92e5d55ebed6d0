package words

import (
	"slices"
	"strings"

	"ramplan/press"
)

// CardCautions stand on the card at the station: few words, to be read from two
// metres.
var CardCautions = []string{
	"Never a hand in the work space.",
	"Every move crushes, going back too.",
	"The lamps are no safety function.",
}

// CardCheck is the first thing to look at with a pair of lamps, in few words.
func (say Printer) CardCheck(t PairText) string {
	has := func(w string) bool { return slices.Contains(t.Words, w) }
	switch {
	case t.Pair == Pair{} && len(t.Words) == 0:
		return "Weak drive? Stick-slip? Lost signal?"
	case len(t.Words) == 0:
		return "Test each lamp and its cable."
	case !t.Clear:
		return "Measure it. Ask who keeps the plan."
	case has(press.Good) && has(press.Missing):
		return "Insert there? Both lamps off before?"
	case has(press.Good):
		return "Were both lamps off before?"
	case has(press.Missing) && t.Pair.Zone:
		return "Insert in the nest? Arrival in time?"
	case has(press.Missing):
		return "Is there an insert in the nest?"
	}
	var out []string
	if !has(press.Long) {
		out = append(out, "Measure it.")
	}
	for _, c := range t.suspects {
		out = append(out, c.card)
	}
	return strings.Join(out[:min(3, len(out))], " ")
}

// CardAct is what happens to the part, in few words.
func (say Printer) CardAct(t PairText) string {
	has := func(w string) bool { return slices.Contains(t.Words, w) }
	switch {
	case len(t.Words) == 0:
		return "Stop. No part leads to this."
	case !t.Clear:
		return "Set apart: the lamps do not tell."
	case has(press.Good) && has(press.Missing):
		return "Only then pass it on."
	case has(press.Good):
		return "Pass it on."
	}
	return "Set apart. Do not press again."
}

// CardVerdict is the verdict of a pair for the card.
func CardVerdict(t PairText) string {
	if len(t.Words) == 0 {
		return "FAULT"
	}
	if t.Clear && len(t.Words) == 2 && t.Words[0] == press.Good { // the other check tells
		return strings.Replace(t.Verdict, Say(press.Good), "GOOD", 1)
	}
	out := make([]string, len(t.Words))
	for i, w := range t.Words {
		out[i] = strings.ToUpper(Say(w))
	}
	return strings.Join(out, " or ")
}

// CardFirst is a row of the first look on the card: what the lamps show, what comes of it,
// and what is done. A lamp without a state may show either.
type CardFirst struct{ Arrival, Zone, Verdict, Do string }

// CardFirstHead stands over them.
const CardFirstHead = "First look, in the probe. It judges no part yet."

// CardFirsts are the rows of the first look on the card; none for a plan with one look.
func (say Printer) CardFirsts(r *press.Result) []CardFirst {
	if !TwoLooks(r) {
		return nil
	}
	on, off := OnOff(true), OnOff(false)
	return []CardFirst{
		{on, off, "GO ON", "The press follows by itself. Keep out."},
		{off, off, "REFUSED", "No press. Set apart. Loose fit? No insert? Pressed before?"},
		{"", on, "REFUSED", "No press. Set apart. Stop: is a signal stuck?"},
	}
}

// String says a row in a sentence.
func (c CardFirst) String() string {
	lamps := "arrival " + c.Arrival + ", zone " + c.Zone
	if c.Arrival == "" {
		lamps = "zone " + c.Zone + ", whatever arrival shows"
	}
	return "With " + lamps + ": " + strings.ToLower(c.Verdict) + ". " + c.Do
}

// CardSamplesHead says of what the heights of the samples are.
func (say Printer) CardSamplesHead(p *press.Plan) string {
	return "Limit samples: " + say.SeatedHeight(p) + ", mm"
}

// CardSamples says what the limit samples must do, a line each; nothing where the
// plan has none.
func (say Printer) CardSamples(p *press.Plan, r *press.Result) []string {
	s := r.Samples
	if s == nil {
		return nil
	}
	var refused []string
	for _, x := range made(say.LimitSamples(p, r)) {
		if !x.Good {
			refused = append(refused, bareHeights(p, x))
		}
	}
	out := []string{"Refused: " + and(refused) + "."}
	if s.TallestGood != nil && s.ShortestGood != nil {
		pos := say.Positions(p).Fine()
		out = append(out, "Passed: "+pos.Bare(pos.up(*s.ShortestGood))+" to "+pos.Bare(pos.down(*s.TallestGood))+". Between: either way.")
	}
	if TwoLooks(r) {
		out = append(out, "Samples are pressed with the probe left out; then a loose sample with the probe: refused.")
	}
	return out
}

// bareHeights writes the heights of a sample without their unit.
func bareHeights(p *press.Plan, x LimitSample) string {
	return strings.TrimSuffix(x.Heights(p), Unit("", "mm"))
}

// CardUnseen lists what the lamps do not find, in few words.
func (say Printer) CardUnseen(p *press.Plan, r *press.Result) []string {
	var out []string
	pos := say.Positions(p)
	if missingPasses(r) {
		out = append(out, "a missing insert")
	}
	if p.Joint.Kind != press.Touch {
		for _, x := range []struct{ row, text string }{{press.RowLoose, "a loose fit"}, {press.RowAlreadyPressed, "a part pressed twice"}} {
			if row, ok := catalogued(r, x.row); !ok || row.Verdict != press.EarlyContact && AsJudged(row).Detection < p.Faults.SampleProbability {
				out = append(out, x.text)
			}
		}
	}
	if TwoLooks(r) {
		out = append(out, "a grip from dirt or a burr")
	}
	if row, ok := catalogued(r, press.RowTwoInserts); ok && row.Verdict == press.EarlyContact {
		out = append(out, "two inserts")
	}
	if gap, ok := passingGap(r, pos); ok {
		out = append(out, "a gap under "+pos.At(gap))
	}
	stuck := "a lamp stuck on"
	if name := stuckOn(p, r); name != "" {
		stuck = name + " stuck on"
	}
	return append(out, stuck, "a cracked part")
}

// Sentence makes one of a list.
func Sentence(list []string) string {
	if len(list) == 0 {
		return ""
	}
	return upperFirst(and(list)) + "."
}
