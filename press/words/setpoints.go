package words

import (
	"slices"

	"ramplan/press"
)

// A Setpoint is one figure that is typed into the controller, or read off it.
type Setpoint struct {
	Name               string // as a plan names it among [press.Setpoints]; empty for what is only read
	Label, Value, Unit string
	Number             *float64 // the figure; nil where it is not known
	Note               string   // where it comes from, and whether it may be used
	From               string   // where it comes from, in a word or two
	Exact              string   // to the last digit; empty without a figure
	Path               string   // of the field that sets it; empty for what is only read
	Word               string   // of the glossary that tells what it is
}

// SettingLabel names the first setpoint.
const SettingLabel = "Setting"

// Setpoints lists what is typed into the controller, and the reading to expect.
func (say Printer) Setpoints(p *press.Plan, r *press.Result) []Setpoint {
	t := &r.Travel
	var z1, z2 *float64
	if z := r.Window.Zone; z != nil {
		z1, z2 = z[0], z[1]
	}
	a, seat := &t.ApproachEnd, &t.SeatReading
	if !r.Pressable() {
		a, seat = nil, nil
	}
	pos := say.Positions(p)
	at := func(name, label, path, word string, mm *float64) Setpoint {
		s := Setpoint{Name: name, Label: label, Number: mm, Value: none, Note: "not known", From: "not known", Path: path, Word: word}
		if mm != nil {
			s.Value, s.Unit, s.Exact = pos.Set(*mm), "mm", Exact(*mm)
			s.Note, s.From = say.SetpointNote(r, p.Given(path)), chosen(r, p.Given(path))
		}
		return s
	}
	const seated = "nominal part, seated"
	reading := Setpoint{Label: "Expected reading", Value: none, Note: "not known", From: "not known", Word: "reading"}
	if seat != nil {
		reading.Number, reading.Value, reading.Unit, reading.Exact = seat, pos.Bare(*seat), "mm", Exact(*seat)
		reading.Note, reading.From = seated, seated
	}
	out := []Setpoint{
		say.setting(p, r),
		at("approach_end", "Approach end", "window.approach_end", "approach", a),
		at("push_stroke", "Push stroke", "window.push_stroke", "push stroke", t.PushStroke),
		at("push_end", "Push end", "window.push_stroke", "push end", t.PushEnd),
		at("zone_start", "Zone start", "window.zone_start", "zone", z1),
		at("zone_end", "Zone end", "window.zone_end", "zone", z2),
	}
	if TwoLooks(r) && t.PushStroke != nil {
		s := &out[slices.IndexFunc(out, func(s Setpoint) bool { return s.Name == "push_stroke" })]
		s.Note += "; from the approach end, also after the probe"
	}
	return append(append(out, say.probeSetpoints(p, r, false)...), reading)
}

// StrokeAfterProbe says from where the push stroke counts where the press starts at the place
// in which the part stalled in the probe; empty without a probe, and where there is no stroke.
func (say Printer) StrokeAfterProbe(p *press.Plan, r *press.Result) string {
	t := &r.Travel
	if !TwoLooks(r) || !r.Pressable() || t.PushStroke == nil || t.PushEnd == nil {
		return ""
	}
	pos := say.Positions(p)
	return "Counted from the approach end at " + pos.SetAt(t.ApproachEnd) + ", also after the probe. " +
		"A controller that counts from where the press starts is given the push end, " + pos.SetAt(*t.PushEnd) + ": this stroke would run past it."
}

// setting is the first setpoint; it says so where it lies outside the force
// window.
func (say Printer) setting(p *press.Plan, r *press.Result) Setpoint {
	const path = "window.setting"
	hand := p.Given(path)
	s := Setpoint{
		Name: "setting", Number: &r.Force.Setting, Label: SettingLabel, Value: Trimmed(r.Force.Setting, 2), Unit: "%", Exact: Exact(r.Force.Setting),
		Note: say.SetpointNote(r, hand), From: chosen(r, hand), Path: path, Word: "setting",
	}
	switch {
	case r.Force.SettingFeasible:
	case hand:
		s.Note = byHand + ", " + say.misfit(r.Force)
	default:
		s.Note = "nearest, " + say.misfit(r.Force)
	}
	if !r.Force.SettingFeasible {
		s.From = s.Note
	}
	return s
}

// misfit says why a setting lies outside the force window.
func (say Printer) misfit(f press.Force) string {
	switch weak, strong := f.Low < f.Need, f.High > f.Cap; {
	case strong && !weak:
		return "too much"
	case weak && !strong:
		return "not enough"
	}
	return "will not do" // neither, or by the noise of the last digit
}

// NotTyped says why the setpoints of a blocked plan must not be typed in; empty
// without a blocker.
func (say Printer) NotTyped(r *press.Result) string {
	if !r.Blocked() {
		return ""
	}
	return "Not ready to be typed in: " + say.NotReady(r) + "."
}
