package words

import (
	"math"
	"slices"

	"ramplan/press"
)

// typedIn are the figures of every setpoint that a plan can name in the
// controller's words.
func typedIn(p *press.Plan, r *press.Result) map[string]struct {
	label, unit string
	value       *float64
} {
	type figure = struct {
		label, unit string
		value       *float64
	}
	t := &r.Travel
	var z1, z2 *float64
	if z := r.Window.Zone; z != nil {
		z1, z2 = z[0], z[1]
	}
	m := p.Motion
	return map[string]figure{
		"setting": {SettingLabel, "%", &r.Force.Setting}, "approach_end": {"Approach end", "mm", &t.ApproachEnd},
		"push_stroke": {"Push stroke", "mm", t.PushStroke}, "push_end": {"Push end", "mm", t.PushEnd},
		"zone_start": {"Zone start", "mm", z1}, "zone_end": {"Zone end", "mm", z2},
		"approach_speed": {"Approach speed", "mm/s", &m.ApproachSpeed}, "slow_speed": {"Slow speed", "mm/s", &m.SlowSpeed},
		"retract_speed": {"Retract speed", "mm/s", &m.RetractSpeed}, "accel": {"Acceleration", "mm/s²", &m.Accel}, "decel": {"Deceleration", "mm/s²", &m.Decel},
		"confirm_time": {"Confirm time", "s", &m.ConfirmTime}, "hold_time": {"Hold time", "s", &m.HoldTime},
	}
}

// setpointTable lists what is typed in, in the words of the user's own controller
// where the plan has them.
func setpointTable(p *press.Plan, r *press.Result) Table {
	own := len(p.Controller.Words) > 0
	t := Table{
		Lead: "What is typed into the controller. Read each figure back after it was entered.",
		Columns: []Column{{"Setpoint", 1.4, false}, {"Figure", 1, false}, {"The controller calls it", 1.8, false}, {"To be entered", 1.2, false},
			{"Read back", 1, true}, {"Signed", 1, true}},
	}
	if !own {
		t.Columns = []Column{{"Setpoint", 1.4, false}, {"To be entered", 1.2, false}, {"Read back", 1, true}, {"Signed", 1, true}}
		t.Notes = append(t.Notes, "The plan holds no words of the controller yet; they are entered in its section Controller.")
	}
	if r.Blocked() {
		t.Notes = append(t.Notes, NotTyped(r))
	}
	figures := typedIn(p, r)
	for _, name := range press.Setpoints {
		f := figures[name]
		plain := none
		if f.value != nil {
			plain = Unit(Trimmed(*f.value, 4), f.unit)
		}
		if !own {
			t.Rows = append(t.Rows, []string{f.label, plain, "", ""})
			continue
		}
		called, entered := inOwnWords(p, name, f.unit, f.value)
		if called == none {
			entered = plain
		}
		t.Rows = append(t.Rows, []string{f.label, plain, called, entered, "", ""})
	}
	return t
}

// inOwnWords gives what the user's controller calls a setpoint, and its figure as
// it is typed in there.
func inOwnWords(p *press.Plan, name, unit string, value *float64) (called, entered string) {
	i := slices.IndexFunc(p.Controller.Words, func(w press.SetpointWord) bool { return w.Setpoint == name })
	if i < 0 {
		return none, none
	}
	w := p.Controller.Words[i]
	if w.Unit != "" || w.Factor != 1 {
		unit = w.Unit
	}
	entered = none
	if value != nil {
		entered = Unit(Exact(math.Round(*value*w.Factor*1e6)/1e6), unit) // to be typed in as it stands: no space in it
	}
	return w.Name, entered
}
