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
	add := func(parts ...string) { s = append(s, strings.Join(parts, "")+".") }

	add("Decision strip of ", p.Title.Name)
	add("Stroke of ", pos.At(p.Ram.Stroke), ": approach from home ", pos.Bare(p.Station.Home), " to ", pos.At(t.ApproachEnd),
		", slow contact at ", pos.At(t.Contact), ", the nominal part read at ", pos.At(m.seat))
	switch {
	case m.ruled == "":
		add("Good by the drawing: readings ", between(m.requirement), "; guard bands of ", pos.Length(m.guard))
		if m.nothingLeft {
			add("Nothing is left between the guard bands")
		} else {
			add("Inside the guard bands: ", between(m.acceptance))
		}
	case m.nothingLeft:
		add("Good by the drawing: readings ", between(m.requirement), "; no window ", m.ruled)
	default:
		add("Good by the drawing: readings ", between(m.requirement), "; window ", m.ruled, ": ", between(m.acceptance))
	}
	if m.zoneStart != nil && m.zoneEnd != nil {
		add("Zone ", between(press.Pair{*m.zoneStart, *m.zoneEnd}))
	}
	if m.end != nil {
		add("Push end ", pos.At(*m.end))
	}
	if m.overlap != nil {
		add("Both signals are on from ", between(*m.overlap))
	} else {
		add("No reading gives both signals")
	}
	if m.missing != nil {
		add("Without an insert the ram rests at ", pos.At(*m.missing))
	}
	for _, q := range m.pairs {
		s = append(s, "With "+q.Pair.String()+": "+q.Verdict+".")
	}
	return strings.Join(s, " ")
}
