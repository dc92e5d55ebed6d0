package words

import "ramplan/press"

// quarantine is what a failed check leads to. Common practice, no source.
const quarantine = "A check that fails stops the station: set apart every part back to the last check that passed, and find the cause before the next part."

// shift is the check at the start of every shift. Common practice, no source.
func (m gridMaker) shift() []Grid {
	g := Grid{
		Title: "Shift check",
		Lead:  append(m.blocked(), "At the start of each shift, after each stop and after each change, in this order.", quarantine),
		Columns: []Column{{Name: "No.", Share: 10}, {Name: "Put in", Share: 66}, {Name: "Expected reading", Share: 32}, {Name: "Arrival", Share: 16}, {Name: "Zone", Share: 16},
			{Name: "Reading seen", Share: 30, ByHand: true}, {Name: "Arrival seen", Share: 26, ByHand: true}, {Name: "Zone seen", Share: 26, ByHand: true}, {Name: "Date, initials", Share: 38, ByHand: true}},
	}
	add := func(what, row string) {
		if _, ok := m.row(row); !ok {
			return
		}
		arrival, zone := m.lamps(row)
		reading := m.reading(row)
		if row == press.RowLong || row == press.RowShort {
			reading = none // of a sample, which lies further out than the row
		}
		g.Rows = append(g.Rows, []string{Trimmed(float64(len(g.Rows)+1), 0), what, reading, arrival, zone, "", "", "", ""})
	}
	empty := "Nothing: the nest without an insert."
	if arrival, _ := m.lamps(press.RowMissing); arrival == OnOff(false) {
		empty += " The ram runs on and gives no arrival, so arrival is not stuck on."
	}
	add(empty, press.RowMissing)
	add("The good master.", press.RowNominal)
	add("The sample that is too tall.", press.RowLong)
	add("The sample that is too low.", press.RowShort)
	add("The loose sample. It is expected to look like a good part: it shows what these signals cannot see.", press.RowLoose)
	return []Grid{g}
}

// setup is the order in which setpoints are entered and proved. Common practice,
// no source.
func (m gridMaker) setup() []Grid {
	g := Grid{
		Title: "Set-up and proving",
		Lead:  append(m.blocked(), "In this order; a step is signed before the next begins. Nobody's hand is in the work space, and guarding is in place and proved, at every step."),
		Columns: []Column{{Name: "No.", Share: 10}, {Name: "Step", Share: 120}, {Name: "Planned", Share: 44}, {Name: "Found", Share: 36, ByHand: true},
			{Name: "Good", Share: 16, ByHand: true}, {Name: "Date, signed", Share: 36, ByHand: true}},
	}
	add := func(step, planned string) {
		g.Rows = append(g.Rows, []string{Trimmed(float64(len(g.Rows)+1), 0), step, planned, "", "", ""})
	}
	add("Guarding, two-hand control and stop are proved by a qualified person.", none)
	enter := func(s Setpoint) {
		planned := s.Value
		if s.Unit != "" {
			planned = Unit(s.Value, s.Unit)
		}
		add("Enter: "+lowerFirst(s.Label)+".", planned)
	}
	points := Setpoints(m.p, m.r)
	enter(points[0])
	add("A load cell stands in the nest. Push at half the slow speed, then at the slow speed, ten times each, warmed up: typical force at the setting.", Force(m.r.Force.Typical))
	add("The weakest and the strongest of these pushes lie inside.", Force(m.r.Force.Low)+" to "+Force(m.r.Force.High))
	for _, s := range points[1:] {
		if s.Path != "" {
			enter(s)
		}
	}
	lamps := func(row string) string {
		arrival, zone := m.lamps(row)
		return "arrival " + arrival + ", zone " + zone
	}
	add("Reduced speed, nothing in the nest: watch the whole stroke, then read the lamps.", lamps(press.RowMissing))
	add("Reduced speed, the good master: reading.", m.reading(press.RowNominal))
	add("The same: lamps.", lamps(press.RowNominal))
	add("Planned speed, the good master, ten times: reading.", m.reading(press.RowNominal))
	add("The sample that is too tall, five times: lamps.", lamps(press.RowLong))
	add("The sample that is too low, five times: lamps.", lamps(press.RowShort))
	if _, ok := m.row(press.RowLoose); ok {
		add("The loose sample: lamps. These signals do not see it.", lamps(press.RowLoose))
	}
	add("Time of one cycle, mean of ten.", Seconds(m.r.Cycle.Total))
	add("The setpoints are locked, this sheet hangs at the station, the plan is issued.", none)
	return []Grid{g}
}

// reaction says what is done at each pair of lamps, and how a reject is kept from
// coming back. Common practice, no source.
func (m gridMaker) reaction() []Grid {
	g := Grid{
		Title:   "Reaction plan",
		Columns: []Column{{Name: "Arrival", Share: 16}, {Name: "Zone", Share: 16}, {Name: "Verdict", Share: 34}, {Name: "What it means", Share: 66}, {Name: "What to do", Share: 72}, {Name: "How a reject is kept from coming back", Share: 58}},
		Lead:    append(m.blocked(), quarantine),
	}
	for _, t := range PairTexts(m.r) {
		keep := "The station locks. A person who may do so acknowledges; the part goes into the locked bin and is not pressed again; whoever decides on it writes down what became of it."
		if t.Pair.Arrival && t.Pair.Zone && t.Clear && len(t.Words) > 0 {
			keep = "Goes on; no lock."
		}
		g.Rows = append(g.Rows, []string{OnOff(t.Pair.Arrival), OnOff(t.Pair.Zone), t.Verdict, t.Meaning, t.Do, keep})
	}
	return []Grid{g}
}

// proving says what is proved again after a change. Common practice, no source.
func (m gridMaker) proving() []Grid {
	const yes, no = "again", ""
	g := Grid{
		Title: "What to prove again after a change",
		Lead:  []string{"Whoever is not sure proves everything. A change of figures of the plan is a new revision."},
		Columns: []Column{{Name: "After a change of", Share: 74}, {Name: "Force, load cell", Share: 30}, {Name: "Reference, good master", Share: 36}, {Name: "Empty nest", Share: 26},
			{Name: "Limit samples", Share: 28}, {Name: "Cycle time", Share: 26}, {Name: "Plan itself", Share: 40}},
	}
	for _, r := range [][]string{
		{"tool", yes, yes, yes, yes, no, "if masses or heights change"},
		{"nest", no, yes, yes, yes, no, "if its height or stiffness changes"},
		{"ram or motor", yes, yes, yes, yes, yes, "new curve"},
		{"controller", yes, yes, yes, yes, yes, "if what can be set changes"},
		{"software or its settings", yes, yes, yes, yes, yes, no},
		{"lubricant, or a long stand", yes, yes, no, no, no, "if friction of the joint changes"},
		{"revision of a part", no, yes, yes, yes, no, "new figures, new revision"},
		{"a crash, or a foreign body in the nest", yes, yes, yes, yes, no, no},
		{"maintenance of ram, frame or sensors", yes, yes, yes, yes, no, no},
	} {
		r[0] = upperFirst(r[0])
		g.Rows = append(g.Rows, r)
	}
	return []Grid{g}
}
