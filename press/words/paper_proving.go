package words

import (
	"ramplan/press"
)

// shiftTable is what is pressed before the first part of a shift.
func shiftTable(p *press.Plan, r *press.Result) Table {
	pos := PositionsOf(p)
	t := Table{
		Lead:    "Before the first part, in this order. Any other answer: stop, set no part free, and quarantine back to the last good check.",
		Columns: []Column{{"Push", 1.4, false}, {"Why", 2.6, false}, {"Lamps that must show", 1.6, false}, {"Reading to expect", 1.2, false}, {"Lamps seen", 1.1, true}, {"Reading", 0.9, true}, {"Signed", 0.9, true}},
	}
	add := func(what, why, shows, reading string) {
		t.Rows = append(t.Rows, []string{what, why, shows, reading, "", "", ""})
	}
	sig, ok := r.Signals()
	if !ok {
		t.Lacking = "The window is not known to its end: there is nothing to check against."
		return t
	}
	shows := func(reading float64) string {
		if sig.Early(reading) {
			return "met in the approach: do not press it"
		}
		a, z := sig.At(reading)
		return Pair{a, z}.String()
	}
	ends := "none; the ram ends at " + pos.At(sig.End)
	reads := func(reading *float64, pos Positions) string {
		switch {
		case reading == nil:
			return ends
		case sig.Early(*reading):
			return none
		case !sig.Arrives(*reading):
			return ends
		}
		return "about " + pos.At(*reading)
	}
	if f := row(r, press.RowMissing); f != nil {
		why := "A move that merely ends must give no arrival; both lamps are seen off on the way."
		if f.Arrival != nil && *f.Arrival {
			why = "Without an insert something else stops the ram: another check has to refuse it. Both lamps are seen off on the way."
		}
		add("Empty nest", why, lamps(f.Arrival, f.Zone), reads(f.Reading, pos))
	}
	nominal := r.Nominal()
	add("Master that is good", "The station accepts what is good, where it should stand.", shows(nominal), reads(&nominal, pos))
	if s := r.Samples; s != nil {
		long, short := r.ReadingOf(p, s.Long), r.ReadingOf(p, s.Short)
		add("Sample too tall", "The upper limit still refuses.", shows(long), reads(&long, pos.Fine()))
		add("Sample too short", "The lower limit still refuses.", shows(short), reads(&short, pos.Fine()))
	}
	if f := row(r, press.RowLoose); f != nil {
		add("A loose sample", "It is expected to pass, and teaches why the fit is checked elsewhere: no lamp shows it.", lamps(f.Arrival, f.Zone), reads(f.Reading, pos))
	}
	t.Notes = []string{ReadingRule(p, r)}
	return t
}

// reprovingTable says what a change takes back. Common practice, no source.
func reprovingTable(*press.Plan, *press.Result) Table {
	t := Table{
		Lead:    "What a change takes back, and what is proved again before parts are released. Common practice, no source; your own works' rules go first.",
		Columns: []Column{{"After", 1.8, false}, {"Prove again", 4, false}, {"Done", 0.8, true}, {"Signed", 1, true}},
	}
	for _, x := range [][2]string{
		{"Tool changed", "Approach end and nest position; weight on the ram, and with it the curve when it was taken at the tool; empty nest, master, limit samples."},
		{"Nest changed or reworked", "Nest position and drift; stiffness; empty nest, master, limit samples."},
		{"Ram, motor or drive changed", "Curve with a load cell, at the station's own speed and temperature; scatter; repeatability; then everything below set-up and proving."},
		{"Controller changed", "Every setpoint, read back; scan and confirm time; both signals on and off; reading rule; then master and limit samples."},
		{"Software or program changed", "Every setpoint, read back; reading rule; stuck-signal check; master and limit samples."},
		{"Lubricant or coating changed", "Press-in force with a load cell over a new lot; force window; limit samples."},
		{"Part drawing revised", "Rows of the tolerance stack, fit and requirement in the plan; new revision of the plan; new limit samples where heights moved."},
		{"A crash, or the ram ran into something", "Guarding and stopping by a qualified person first; then nest position, stiffness, straightness of the ram, curve at three points, master, limit samples."},
		{"Maintenance of screw, bearings or frame", "Stiffness; repeatability; curve at three points; master, limit samples."},
		{"A long stop, or a cold start", "Warm up, reference anew; empty nest, master."},
	} {
		t.Rows = append(t.Rows, []string{x[0], x[1], "", ""})
	}
	return t
}

// provingTable is the order in which setpoints are entered and proved.
func provingTable(p *press.Plan, r *press.Result) Table {
	pos := PositionsOf(p)
	t := Table{
		Lead:    "In this order, by qualified people, with guarding and stopping in force. Nobody reaches into the work space to try anything.",
		Columns: []Column{{"Step", 0.5, false}, {"What is done", 4.2, false}, {"Must be", 2, false}, {"Found", 1.2, true}, {"Signed", 1, true}},
	}
	step := func(what, must string) {
		t.Rows = append(t.Rows, []string{Trimmed(float64(len(t.Rows)+1), 0), what, must, "", ""})
	}
	f := r.Force
	step("Guarding, two-hand control, emergency stop and lock-out are proved by whoever may.", "released for set-up")
	step("Load cell in the nest, no parts; push at setting "+Setting(f.Setting)+" at reduced speed, three times.", Force(f.Low)+" to "+Force(f.High)+", typically "+Force(f.Typical))
	step("The same at the plan's slow speed of "+Speed(p.Motion.SlowSpeed)+".", Force(f.Low)+" to "+Force(f.High))
	step("Reference the ram; touch the empty nest at the least force; read the position.", "nest "+pos.At(p.Station.Nest))
	step("Enter the approach end; approach at reduced speed with no parts.", "stops at "+pos.At(r.Travel.ApproachEnd))
	if r.Travel.PushStroke != nil {
		shows := "no arrival"
		if m := row(r, press.RowMissing); m != nil && m.Arrival != nil {
			shows = "arrival " + OnOff(*m.Arrival)
		}
		step("Enter the push stroke; push the empty nest at reduced speed.", pos.At(*r.Travel.PushStroke)+"; "+shows)
	}
	if sig, ok := r.Signals(); ok {
		step("Enter the zone; move through it by hand mode.", "zone lamp on from "+pos.between(sig.ZoneStart, sig.ZoneEnd))
		if m := row(r, press.RowMissing); m != nil {
			step("Push the empty nest at full speed.", lamps(m.Arrival, m.Zone))
		}
		at := func(reading float64) string {
			if sig.Early(reading) {
				return "met in the approach"
			}
			a, z := sig.At(reading)
			return Pair{a, z}.String()
		}
		nominal, reads := r.Nominal(), ""
		if !sig.Early(nominal) && sig.Arrives(nominal) {
			reads = "about " + pos.At(nominal) + "; "
		}
		step("Press a good part at reduced approach speed; read the position at arrival.", reads+at(nominal))
		if s := r.Samples; s != nil {
			step("Press the sample too tall, "+pos.Fine().Above(s.Long)+".", at(r.ReadingOf(p, s.Long)))
			step("Press the sample too short, "+pos.Fine().Below(s.Short)+".", at(r.ReadingOf(p, s.Short)))
		}
		if a, z := sig.At(nominal); reads != "" && a && z {
			step("Press thirty good parts at full speed; note the readings.", "mean about "+pos.At(nominal)+", all accepted")
		}
	}
	if p.Joint.Kind == press.Touch {
		step("Cut or measure samples: seated without a gap.", "no gap")
	} else {
		step("Pull or cut samples: seated without a gap, and held.", "no gap; "+holds(p))
	}
	step("Unplug each signal in turn: the station must not pass a part.", "refused, both signals")
	step("Force each signal on in turn, at the input: the cycle must be refused, because the signal was not seen off.", "refused, both signals")
	t.Notes = []string{"The figures are predictions from the data entered; what is found counts. Where they differ, find out why before parts are released."}
	return t
}
