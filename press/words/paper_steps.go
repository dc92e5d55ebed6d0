package words

import (
	"slices"

	"ramplan/press"
)

// PapersOf lists the pages beside the sheet of a plan: the steps only where it has some.
func PapersOf(p *press.Plan) []string {
	return slices.DeleteFunc(PaperNames(), func(name string) bool { return name == stepsPaper && p.Sequence == nil })
}

const stepsPaper = "steps"

// stepTable lists each step with its figures, as they are typed in: with the unit and the
// factor of the user's own controller where the plan has them.
func (say Printer) stepTable(p *press.Plan, r *press.Result) Table {
	t := Table{say: say,
		Lead:    "What the ram does in one cycle, step by step. Read each figure back after it was entered.",
		Fill:    []string{"Date", "Station", "Controller program"},
		Columns: []Column{{"Step", 1.6, false}, {"Entry", 1.1, false}, {"Figure", 0.9, false}, {"To be entered", 0.9, false}, {"In its unit", 0.8, false}, {"Read back", 0.9, true}, {"Signed", 0.9, true}},
		Figures: []string{"Figure"}, Typed: []string{"In its unit"}, Bare: []string{"To be entered"}, Grouped: true,
	}
	if p.Sequence == nil {
		t.Lacking = NoSteps
		return t
	}
	if r.Blocked() {
		t.Lead = "Not ready to be typed in: these are only the figures that the plan leads to so far."
	}
	for i := range p.Sequence.Steps {
		for _, s := range say.stepFigures(p, r, &p.Sequence.Steps[i]) {
			cells := []string{UpperFirst(Step(p, i)), s.Label, s.Value, none, none, "", ""}
			if s.Unit != "" {
				cells[2] = Unit(s.Value, s.Unit)
			}
			if s.Number != nil {
				cells[3], cells[4] = Exact(*s.Number), s.Unit
				if w, own := InOwnWords(p, s); own {
					cells[3], cells[4] = w.Entered, w.Unit
				}
			}
			t.Rows = append(t.Rows, cells)
		}
	}
	t.Notes = []string{"A hold input is no safety function: prove where the ram stops, and what follows, at the station."}
	return t
}

// stepFigures are the entries of one step. Each goes by the controller's word for the
// setpoint of the same kind: a position by that of the push end, a speed by that of the
// approach.
func (say Printer) stepFigures(p *press.Plan, r *press.Result, s *press.Step) []Setpoint {
	var out []Setpoint
	pos := say.Positions(p)
	add := func(name, label, unit string, x *float64) {
		v := Setpoint{Name: name, Label: label, Number: x, Value: none}
		if x != nil {
			v.Value, v.Unit = Trimmed(*x, 4), unit
			if unit == "mm" {
				v.Value = pos.Set(*x)
			}
		}
		out = append(out, v)
	}
	tell := func(label, text string) { out = append(out, Setpoint{Label: label, Value: text}) }
	or := func(x *float64, otherwise float64) *float64 {
		if x == nil {
			return &otherwise
		}
		return x
	}
	switch s.Kind {
	case press.StepMove, press.StepShift:
		if s.Kind == press.StepMove {
			add("push_end", "To", "mm", &s.To)
		} else {
			add("push_end", "By", "mm", &s.By)
			tell("Times", Trimmed(s.Times, 0))
			add("confirm_time", "Pause", "s", &s.Pause)
		}
		m := &p.Motion
		add("approach_speed", "Speed", "mm/s", or(s.Speed, m.ApproachSpeed))
		add("accel", "Acceleration", "mm/s²", or(s.Accel, m.Accel))
		add("decel", "Deceleration", "mm/s²", or(s.Decel, m.Decel))
		if s.Zone != nil {
			add("zone_start", "Zone start", "mm", &s.Zone[0])
			add("zone_end", "Zone end", "mm", &s.Zone[1])
		}
		tell("At its end", map[bool]string{true: "goes on without rest", false: "comes to rest"}[s.HandOver])
		tell("On hold", map[bool]string{true: "the next step begins", false: "goes on to its target"}[s.OnHold == press.Cancel])
	case press.StepWait:
		add("confirm_time", "Wait", "s", &s.Time)
	case press.StepProbe:
		add("approach_end", "Fast approach to", "mm", &r.Travel.ApproachEnd)
		add("approach_speed", "Approach speed", "mm/s", &p.Motion.ApproachSpeed)
		add("slow_speed", "Slow from there, at", "mm/s", &p.Motion.SlowSpeed)
		add("probe_setting", "Probe setting", "%", r.Probe.Setting)
		add("probe_end", "Probe end", "mm", r.Probe.End)
		if q := p.Probe; q != nil {
			add("probe_confirm_time", "Probe confirm time", "s", &q.ConfirmTime)
		}
	case press.StepPress:
		tell("All of it", "see the setpoint list")
	}
	return out
}
