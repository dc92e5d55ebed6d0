package draw

import (
	"strings"

	"ramplan/press"
)

// describe is the text equivalent of the strip: the same figures in sentences.
func (m *stripModel) describe(p *press.Plan, r *press.Result) string {
	pos, t := m.pos, &r.Travel
	between := func(a press.Pair) string { return pos.Bare(a[0]) + " to " + pos.At(a[1]) }
	var s []string
	add := func(sentence string) { s = append(s, sentence+".") }

	add(say.StripHeading(p.Title.Name))
	add(say.StrokeText(pos, p.Ram.Stroke, p.Station.Home, t.ApproachEnd, t.Contact, m.seat))
	switch {
	case m.ruled == "":
		add(say.GoodReadingsText(between(m.requirement), pos, m.guard))
		if m.nothingLeft {
			add(say.NothingBetweenGuardBands())
		} else {
			add(say.InsideTheGuardBands(between(m.acceptance)))
		}
	case m.nothingLeft:
		add(say.GoodButNoWindow(between(m.requirement), m.ruled))
	default:
		add(say.GoodAndWindow(between(m.requirement), m.ruled, between(m.acceptance)))
	}
	if m.zoneStart != nil && m.zoneEnd != nil {
		add("Zone " + between(press.Pair{*m.zoneStart, *m.zoneEnd}))
	}
	if m.end != nil {
		add(say.PushEndStands(pos, *m.end))
	}
	if m.overlap != nil {
		add(say.BothOnText(between(*m.overlap)))
	} else {
		add(say.NeverBothOn())
	}
	if m.missing != nil {
		add(say.MissingRestsAt(pos, *m.missing))
	}
	if f := m.first; f != nil {
		s = append(s, say.FirstLookText(pos, f.end, f.loosest))
	}
	for _, q := range m.pairs {
		s = append(s, "With "+q.Pair.String()+": "+q.Verdict+".")
	}
	return strings.Join(s, " ")
}
