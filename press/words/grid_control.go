package words

import "ramplan/press"

// control are the rows of this station for a control plan, in the column terms of
// common control-plan practice.
func (m gridMaker) control() []Grid {
	g := Grid{
		Title: "Control-plan rows of this station",
		Columns: []Column{{Name: "Characteristic", Share: 34}, {Name: "Specification", Share: 44}, {Name: "Evaluation technique", Share: 50}, {Name: "Sample size", Share: 22},
			{Name: "Frequency", Share: 30}, {Name: "Control method", Share: 38}, {Name: "Reaction plan", Share: 44}},
	}
	add := func(cells ...string) { g.Rows = append(g.Rows, cells) }
	q := m.p.Requirement
	name := m.p.Title.Characteristic
	if name == "" {
		name = "Seated height"
	}
	stop := "Stop, set apart back to the last good check, find the cause."
	add(name, m.pos.between(q.HeightLow, q.HeightHigh), "Two signals of the ram: arrival and zone. A reading is uncertain by ±"+m.pos.Length(2*m.r.Window.Uncertainty)+".", "every part", "continuous", "Automatic verdict, lock at a reject", "Lamp pairs of the reaction plan")
	add("Setting", Setting(m.r.Force.Setting)+", "+Force(m.r.Force.Low)+" to "+Force(m.r.Force.High), "Load cell in the nest", "10 pushes", "at set-up, after a change", "Set-up and proving sheet", stop)
	if z := m.r.Window.Zone; z != nil && z[0] != nil && z[1] != nil && m.r.Travel.PushEnd != nil {
		add("Push end and zone", "push end "+m.pos.At(*m.r.Travel.PushEnd)+", zone "+m.pos.between(*z[0], *z[1]), "Compared with this sheet", "1", "each shift", "Setpoints locked", stop)
	}
	presence := "Two signals, empty nest tried"
	switch {
	case m.p.Station.PresenceCheck != "":
		presence = m.p.Station.PresenceCheck
	case m.r.MissingPasses():
		presence = "Not seen by these signals: another check is needed"
	}
	add("Insert present", "1 insert", presence, "every part", "continuous", "Automatic verdict", "Look into the nest")
	add("Station judges rightly", "Good master passes, samples are refused", "Good master and limit samples", "1 of each", "each shift, after a change", "Shift check sheet", stop)
	if m.p.Joint.Kind != press.Touch {
		add("Joint holds", holding(m.p), "Push-out test: these signals do not see a loose fit", "by the team", "by the team", "Test report", stop)
	}
	return []Grid{g}
}

func holding(p *press.Plan) string {
	if p.Joint.HoldingRequired > 0 {
		return "at least " + Force(p.Joint.HoldingRequired)
	}
	return "as the drawing says"
}
