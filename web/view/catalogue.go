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
			Verdict:   verdictWords(f.Verdict),
			Reading:   none,
			Time:      none,
			Detection: words.Share(f.Detection),
		}
		if f.Reading != nil {
			row.Reading = w.pos.Bare(*f.Reading)
		}
		if f.Time != nil {
			row.Time = words.Fixed(*f.Time, 2)
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

// verdictWords takes a verdict such as "short or missing" apart.
func verdictWords(verdict string) []page.Word {
	var out []page.Word
	for _, word := range strings.Split(verdict, " or ") {
		kind := word
		if word == press.EarlyContact {
			kind = press.FaultWord
		}
		out = append(out, page.Word{Kind: kind, Text: word})
	}
	return out
}

// samples are the limit samples to make.
func (w writer) samples() []page.Figure {
	s := w.r.Samples
	if s == nil {
		return nil
	}
	return []page.Figure{
		w.position("Refused as too tall from", &s.Long),
		w.position("Tallest surely accepted", s.TallestGood),
		w.position("Shortest surely accepted", s.ShortestGood),
		w.position("Refused as too short from", &s.Short),
		{Label: "Surely", Value: words.Share(s.Probability)},
	}
}
