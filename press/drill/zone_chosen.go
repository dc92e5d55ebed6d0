package drill

import (
	"strconv"

	"ramplan/press"
)

// mostZones is how many zones there are to choose from.
const mostZones = 4

// chosen is an exercise whose answer is chosen: a zone that is asked for becomes one
// of several, each judged as if it had been typed. It is false where too few wrong ones
// come to mind.
func (e Exercise) chosen() (Exercise, bool) {
	t := e.Zone
	if t == nil {
		return e, len(e.Choices) > 0
	}
	right, wide := t.Solution, t.Solution[1]-t.Solution[0]
	own := press.Pair{t.d.s.ZoneStart, t.d.s.ZoneEnd}
	choices := []Choice{{ID: "zone-1", Text: t.d.zoneText(right)}}
	used := map[string]bool{choices[0].Text: true}
	for _, zone := range []press.Pair{
		own,                 // as if the nest had not moved
		{right[0], t.s.End}, // the push end at its edge
		{right[0] - 2*t.Shift, right[1] - 2*t.Shift}, // moved the wrong way
		{right[0] - wide, right[1]},
		{right[0] + wide/2, right[1] + wide/2},
		{right[0] - wide/2, right[1] - wide/2},
	} {
		j, text := t.judge(&zone), t.d.zoneText(zone)
		if j.Right || used[text] || len(choices) == mostZones {
			continue
		}
		used[text] = true
		choices = append(choices, Choice{ID: "zone-" + strconv.Itoa(len(choices)+1), Text: text, Reason: j.Reason})
	}
	e.Question += t.d.say.WhichZone()
	e.Right = []string{choices[0].ID}
	e.Choices = shuffled(random(0, e.mark()), choices)
	e.Explain = t.judge(&right).Reason
	return e, len(choices) > 2
}

// zoneText writes a zone as it is set.
func (d *Drill) zoneText(zone press.Pair) string {
	return "From " + d.say.Set(zone[0]) + " to " + d.say.SetAt(zone[1])
}

// JudgeChosen looks at a choice, also where a zone was asked for.
func (e Exercise) JudgeChosen(id string) Judged {
	e.Zone = nil
	return e.Judge(Answer{Choice: id})
}
