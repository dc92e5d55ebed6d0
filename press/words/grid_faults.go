package words

import (
	"slices"

	"ramplan/press"
)

// samplesOfEach is how many of each limit sample are made: one to use and one to
// compare it with. Common practice, no source.
const samplesOfEach = "2"

// faults is the catalogue, and the limit samples to make.
func (m gridMaker) faults() []Grid {
	g := Grid{
		Title: "Faults, and what the signals say",
		Columns: []Column{{Name: "Fault", Share: 34}, {Name: "What it is", Share: 84}, {Name: "Arrival", Share: 14}, {Name: "Zone", Share: 14},
			{Name: "Verdict", Share: 32}, {Name: "Reading", Share: 24}, {Name: "Judged rightly", Share: 24}, {Name: "Remark", Share: 36}},
	}
	for _, f := range m.r.Faults {
		reading := none
		if f.Reading != nil {
			reading = Unit(Fixed(*f.Reading, 3), "mm")
		}
		g.Rows = append(g.Rows, []string{Fault(f).Word, Fault(f).Meaning, lamp(f.Arrival), lamp(f.Zone), f.Verdict, reading, Share(f.Detection), upperFirst(Judged(m.p, f))})
	}
	return []Grid{g, m.samples()}
}

func (m gridMaker) samples() Grid {
	g := Grid{
		Title: "Limit samples to make",
		Columns: []Column{{Name: "Sample", Share: 62}, {Name: "Height above the datum", Share: 40}, {Name: "How many", Share: 20}, {Name: "Arrival", Share: 16}, {Name: "Zone", Share: 16},
			{Name: "Made, measured", Share: 36, ByHand: true}, {Name: "Marked", Share: 24, ByHand: true}, {Name: "Signed", Share: 40, ByHand: true}},
		Lead: []string{"Each is measured by another means than the ram, and marked so that it cannot get among the good parts."},
	}
	s := m.r.Samples
	if s == nil {
		g.Lead = []string{"No height is judged surely: there are no limit samples to make."}
		return g
	}
	g.Lead = append(g.Lead, "Each is judged as said with a probability of "+Share(s.Probability)+" or more.")
	add := func(what, row string, mm *float64, write func(float64) string) {
		if mm == nil {
			return
		}
		arrival, zone := m.lamps(row)
		g.Rows = append(g.Rows, []string{what, write(*mm), samplesOfEach, arrival, zone, "", "", ""})
	}
	add("Refused as too tall: at least", press.RowLong, &s.Long, m.pos.Above)
	add("Accepted as the tallest: at most", press.RowTallest, s.TallestGood, m.pos.Below)
	add("Accepted as the shortest: at least", press.RowShortest, s.ShortestGood, m.pos.Above)
	add("Refused as too low: at most", press.RowShort, &s.Short, m.pos.Below)
	return g
}

// failures are the rows for a failure mode analysis.
func (m gridMaker) failures() []Grid {
	g := Grid{
		Title:   "Failure modes at this station",
		Columns: []Column{{Name: "Failure", Share: 40}, {Name: "What it is", Share: 80}, {Name: "Effect on the signals", Share: 48}, {Name: "How detected", Share: 60}, {Name: "Detection probability", Share: 34}},
		Lead:    []string{"Probabilities come from the entered scatter. Severity and occurrence are for the team to judge."},
	}
	edge := append(slices.Clone(edgeRows), press.RowNominal)
	for _, f := range m.r.Faults {
		if f.Good && f.Name != press.RowNestWorn || !f.Own && slices.Contains(edge, f.Name) {
			continue
		}
		effect := "arrival " + lamp(f.Arrival) + ", zone " + lamp(f.Zone)
		how := "The signals say: " + f.Verdict + "."
		if judged := Judged(m.p, f); judged != "" {
			how = upperFirst(judged) + "."
		}
		g.Rows = append(g.Rows, []string{Fault(f).Word, Fault(f).Meaning, effect, how, Share(f.Detection)})
	}
	for _, s := range Unseen(m.p, m.r) {
		g.Rows = append(g.Rows, []string{"Not seen by these signals", s, "as a good part", "By another check only.", none})
	}
	return []Grid{g}
}
