package view

import (
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// catalogue is what the station would say, fault by fault.
func (w writer) catalogue() []page.FaultRow {
	var out []page.FaultRow
	for _, f := range w.r.Faults {
		row := page.FaultRow{
			Name:      words.Fault(f).Word,
			Means:     words.Fault(f).Meaning,
			Arrival:   onOff(f.Arrival),
			Zone:      onOff(f.Zone),
			Verdict:   verdictWords(w.p, f.Verdict),
			Reading:   none,
			Time:      none,
			Detection: words.Detected(w.p, w.r, f),
		}
		if f.Reading != nil {
			row.Reading = w.pos.Fine().Bare(*f.Reading)
		}
		if f.Time != nil {
			row.Time = words.AfterBare(*f.Time)
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

// verdictWords takes a verdict such as "short or missing" apart. What a named check
// tells apart is one.
func verdictWords(p *press.Plan, verdict string) []page.Word {
	var out []page.Word
	if words.Settled(p, strings.Split(verdict, " or ")) {
		return append(out, page.Word{Kind: press.Good, Text: words.GoodIf(p)})
	}
	for _, word := range strings.Split(verdict, " or ") {
		kind := word
		if word == press.EarlyContact {
			kind = press.FaultWord
		}
		out = append(out, page.Word{Kind: kind, Text: words.Say(word)})
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
	for _, x := range words.LimitSamples(w.p, w.r) {
		f := page.Figure{Label: x.Name, Value: x.Heights(w.p), Note: "refused"}
		if x.Good {
			f.Note = "accepted"
		}
		if x.Missing || x.Early {
			f.Note = ""
		}
		out = append(out, f)
	}
	return append(out, page.Figure{Label: "Each with a probability of", Value: words.Share(s.Probability)})
}
