package words

import (
	"math"
	"slices"

	"ramplan/press"
)

// typedIn are all setpoints that a plan can name in the controller's words, in
// the order in which they are typed in.
func (say Printer) typedIn(p *press.Plan, r *press.Result) []Setpoint {
	var out []Setpoint
	looks := say.probeSetpoints(p, r, false)
	for _, s := range say.Setpoints(p, r) {
		first := slices.ContainsFunc(looks, func(q Setpoint) bool { return q.Name == s.Name })
		if s.Name != "" && !first {
			out = append(out, s)
		}
	}
	out = append(out, say.probeSetpoints(p, r, true)...)
	out = append(out, say.stationZone(p)...)
	m := &p.Motion
	for _, s := range []Setpoint{
		{Name: "approach_speed", Label: "Approach speed", Unit: "mm/s", Number: &m.ApproachSpeed}, {Name: "slow_speed", Label: "Slow speed", Unit: "mm/s", Number: &m.SlowSpeed},
		{Name: "retract_speed", Label: "Retract speed", Unit: "mm/s", Number: &m.RetractSpeed}, {Name: "accel", Label: "Acceleration", Unit: "mm/s²", Number: &m.Accel},
		{Name: "decel", Label: "Deceleration", Unit: "mm/s²", Number: &m.Decel}, {Name: "confirm_time", Label: "Confirm time", Unit: "s", Number: &m.ConfirmTime},
		{Name: "hold_time", Label: "Hold time", Unit: "s", Number: &m.HoldTime},
	} {
		if s.Name == "retract_speed" && r.Sequence != nil {
			continue // the steps bring the ram home, each at its own speed
		}
		s.Value = Trimmed(*s.Number, 4)
		out = append(out, s)
	}
	watch := Setpoint{Name: "watch_time", Label: "Watch time, at least", Value: none}
	if least := r.Cycle.WatchTime; least != nil {
		up := whenOver(*least)
		watch.Number, watch.Value, watch.Unit = &up, say.AfterBare(up), "s"
	}
	return append(out, watch)
}

// stationZone is the zone that no step asks for; none where there is none.
func (say Printer) stationZone(p *press.Plan) []Setpoint {
	if p.Sequence == nil || p.Sequence.StationZone == nil {
		return nil
	}
	pos, z := say.Positions(p), p.Sequence.StationZone
	at := func(name, label string, mm *float64) Setpoint {
		return Setpoint{Name: name, Label: label, Number: mm, Value: pos.Set(*mm), Unit: "mm", Exact: Exact(*mm)}
	}
	return []Setpoint{at("station_zone_start", "Station zone start", &z[0]), at("station_zone_end", "Station zone end", &z[1])}
}

// An OwnWord is a setpoint as the user's own controller has it.
type OwnWord struct {
	Called        string // its name there
	Entered, Unit string // its figure, to be typed in as it stands; empty where it is not known
}

// unitLike are setpoints that a controller takes in the unit of others, where it has no word
// of its own for them.
var unitLike = map[string]string{
	"probe_setting": "setting", "probe_end": "push_end", "probe_confirm_time": "confirm_time", "probe_watch_time": "watch_time",
	"station_zone_start": "zone_start", "station_zone_end": "zone_end",
}

// InOwnWords gives a setpoint as the user's controller has it, where the plan says so; one
// without a name of its own goes by the unit and the factor of its like.
func InOwnWords(p *press.Plan, s Setpoint) (OwnWord, bool) {
	named := func(name string) int {
		return slices.IndexFunc(p.Controller.Words, func(w press.SetpointWord) bool { return name != "" && w.Setpoint == name })
	}
	i, own := named(s.Name), true
	if i < 0 {
		i, own = named(unitLike[s.Name]), false
	}
	if i < 0 {
		return OwnWord{}, false
	}
	w := p.Controller.Words[i]
	out := OwnWord{Called: w.Name, Unit: s.Unit}
	if !own {
		out.Called = ""
	}
	if w.Unit != "" || w.Factor != 1 {
		out.Unit = w.Unit
	}
	if s.Number != nil {
		out.Entered = Exact(math.Round(*s.Number*w.Factor*1e6) / 1e6)
	}
	return out, true
}

// String writes it in a line: I limit: 660 (1/10 %).
func (w OwnWord) String() string {
	s := ""
	if w.Called != "" {
		s = w.Called + ": "
	}
	if w.Entered == "" {
		return s + none
	}
	s += w.Entered
	if w.Unit != "" {
		s += " (" + w.Unit + ")"
	}
	return s
}

// setpointTable lists what is typed in, in the words of the user's own controller
// where the plan has them.
func (say Printer) setpointTable(p *press.Plan, r *press.Result) Table {
	own := len(p.Controller.Words) > 0
	t := Table{say: say,
		Lead: "What is typed into the controller. Read each figure back after it was entered.",
		Fill: []string{"Date", "Station", "Controller program"},
		Columns: []Column{{"Setpoint", 1.4, false}, {"Figure", 1, false}, {"The controller calls it", 1.8, false}, {"To be entered", 0.9, false}, {"In its unit", 0.9, false},
			{"Read back", 1, true}, {"Signed", 1, true}},
		Figures: []string{"Figure"}, Typed: []string{"The controller calls it", "In its unit"},
	}
	if !own {
		t.Figures, t.Typed = []string{"To be entered"}, nil
		t.Columns = []Column{{"Setpoint", 1.4, false}, {"To be entered", 1.2, false}, {"Read back", 1, true}, {"Signed", 1, true}}
		t.Notes = append(t.Notes, "The plan holds no words of the controller yet; they are entered in its section Controller.")
	}
	t.Notes = append(t.Notes, say.WatchNote(r), "Zone start and push end: "+say.WindowBy(p)+".")
	if s := say.StrokeAfterProbe(p, r); s != "" {
		t.Notes = append(t.Notes, "Push stroke: "+lowerFirst(s))
	}
	if r.Sequence != nil {
		t.Notes = append(t.Notes, "The steps bring the ram home: their positions and speeds are on the page “"+stepsPaper+"”.")
	}
	if r.Blocked() {
		t.Lead = "Not ready to be typed in: these are only the figures that the plan leads to so far."
	}
	for _, s := range say.typedIn(p, r) {
		plain, has := none, s.Number != nil
		if has {
			plain = Unit(s.Value, s.Unit)
		}
		if !own {
			t.Rows = append(t.Rows, []string{s.Label, plain, "", ""})
			continue
		}
		row := []string{s.Label, plain, none, none, none, "", ""}
		if w, named := InOwnWords(p, s); named {
			row[4] = w.Unit
			if w.Called != "" {
				row[2] = w.Called
			}
			if has {
				row[3] = w.Entered
			}
		} else if has {
			row[3], row[4] = s.Value, s.Unit
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
