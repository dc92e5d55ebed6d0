package view

import (
	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// catalogue is what the station would say, fault by fault.
func (w writer) catalogue() []page.FaultRow {
	var out []page.FaultRow
	for _, raw := range w.r.Faults {
		f := words.AsJudged(raw)
		row := page.FaultRow{
			Name:      say.Fault(f).Word,
			Means:     say.FaultMeans(w.p, w.r, f),
			Arrival:   onOff(f.Arrival),
			Zone:      onOff(f.Zone),
			Verdict:   verdictWords(w.p, f),
			Reading:   none,
			Time:      none,
			Detection: say.Detected(w.p, w.r, f),
		}
		if f.Reading != nil {
			row.Reading = w.pos.Fine().Bare(*f.Reading)
		}
		if f.Time != nil {
			row.Time = say.AfterBare(*f.Time)
		}
		out = append(out, row)
	}
	return out
}

func onOff(b *bool) string {
	if b == nil {
		return none
	}
	return words.OnOff(*b)
}

// verdictWords are the words of a row one by one. What a named check tells apart is
// one.
func verdictWords(p *press.Plan, row press.FaultRow) []page.Word {
	switch {
	case len(row.Words) == 0:
		return []page.Word{{Kind: press.FaultWord, Text: words.Say(row.Verdict)}}
	case words.Settled(p, row.Words):
		return []page.Word{{Kind: press.Good, Text: say.GoodIf(p)}}
	}
	var out []page.Word
	for _, word := range row.Words {
		out = append(out, page.Word{Kind: word, Text: words.Say(word)})
	}
	return out
}

// samples are the limit samples to make.
func (w writer) samples() []page.Figure {
	s := w.r.Samples
	if s == nil {
		return nil
	}
	var out []page.Figure
	for _, x := range say.LimitSamples(w.p, w.r) {
		f := page.Figure{Label: x.Name, Value: x.Heights(w.p), Note: "refused"}
		if x.Good {
			f.Note = "accepted"
		}
		if !x.Pressed() {
			f.Note = ""
		}
		out = append(out, f)
	}
	return append(out, page.Figure{Label: say.EachWithProbability(), Value: say.Share(s.Probability)})
}
