package view

import (
	"ramplan/press"
	"ramplan/press/words"
)

// copied writes the setpoints as lines of text, columns apart by tabs, with what
// the plan is to its revisions. What the user's own controller calls a setpoint, and
// what is typed in there, stand in columns of their own. What must not be typed into
// a controller says so on top.
func copied(p *press.Plan, r *press.Result, setpoints []words.Setpoint, standing string, older bool) string {
	var rows [][]string
	if r.Blocked() {
		rows = append(rows, []string{say.NotReadyLoud(r)})
	}
	if check := say.OnlyGoodWith(p, r); check != "" {
		rows = append(rows, []string{check})
	}
	if older {
		rows = append(rows, []string{say.OlderThanEntries()})
	}
	rows = append(rows, []string{p.Title.Name, p.Title.Number, standing})
	own := len(p.Controller.Words) > 0
	head := []string{"Setpoint", "Figure", "Unit"}
	if own {
		head = append(head, say.ControllerCallsIt(), say.ToBeEntered(), say.InItsUnit())
	}
	rows = append(rows, append(head, "Note"))
	for _, s := range setpoints {
		row := []string{s.Label, words.Plain(s.Value), s.Unit}
		if own {
			w, _ := words.InOwnWords(p, s)
			row = append(row, w.Called, w.Entered, w.Unit)
		}
		note := ""
		if s.Label == words.SettingLabel && !r.Force.SettingFeasible {
			note = s.Note
		}
		rows = append(rows, append(row, note))
	}
	rows = append(rows, []string{"Plan", "sha256:" + words.ShortDigest(r.PlanDigest())})
	return words.Tabbed(rows)
}
