package words

import "ramplan/press"

// samplesMade says how many samples of each height are made, and allSamples that
// all of these are pressed.
func samplesMade(p *press.Plan) string { return Trimmed(p.Quality.SamplesEach, 0) }

func allSamples(p *press.Plan) string {
	if p.Quality.SamplesEach == 1 {
		return "1"
	}
	return "all " + samplesMade(p)
}

// otherAnswer is what follows when a sample or the master is judged in another way.
const otherAnswer = "Any other answer counts: stop, set no part free, quarantine back to the last good check, and find out why."

// samplesPressed says which samples are pressed when, and what is asked of them.
func samplesPressed(p *press.Plan) string {
	return "All are pressed at set-up and after a change, one too tall and one too short in the shift check, " + p.Quality.LimitCheck + ". Each must be judged as written every time."
}

// SamplesMade says how many limit samples are made and what becomes of them.
func SamplesMade(p *press.Plan) string {
	are := " of each height are made. "
	if p.Quality.SamplesEach == 1 {
		are = " of each height is made. "
	}
	return samplesMade(p) + are + samplesPressed(p)
}

func sampleTable(p *press.Plan, r *press.Result) Table {
	pos := PositionsOf(p).Fine()
	t := Table{
		Lead: "Complete assemblies of known height, measured, marked and kept at the station. A height is the " + SeatedHeight(p) + ", and no reading of the ram. " +
			samplesPressed(p) + " " + otherAnswer,
		Columns: []Column{{"Sample", 1.1, false}, {"Seated height", 1.6, false}, {"Made", 0.5, false}, {"Pressed at set-up", 0.8, false}, {"In the shift check", 0.8, false}, {"Lamps", 1.5, false},
			{"The station must", 0.9, false}, {"Measured heights", 1, true}, {"Lamps seen", 1, true}, {"Signed", 0.8, true}},
		Fill: []string{"Date", "Station", "Instrument"},
	}
	s := r.Samples
	if s == nil {
		t.Lacking = "No reading is accepted: there are no limit samples."
		t.Fill = nil
		return t
	}
	add := func(name, height string, at float64, shift, must string) {
		t.Rows = append(t.Rows, []string{name, height, samplesMade(p), allSamples(p), shift, lampsOf(p, r, at), must, "", "", ""})
	}
	add("Too tall", pos.Above(s.Long)+" or taller", s.Long, "1", "refuse it")
	if s.TallestGood != nil {
		add("Tallest good", pos.Below(*s.TallestGood)+", no taller", *s.TallestGood, none, "accept it")
	}
	if s.ShortestGood != nil {
		add("Shortest good", pos.Above(*s.ShortestGood)+", no shorter", *s.ShortestGood, none, "accept it")
	}
	add("Too short", pos.Below(s.Short)+" or shorter", s.Short, "1", "refuse it")
	t.Notes = []string{
		"What to expect of a sound station: a sample of the very height is judged as written with a probability of at least " + TargetShare(s.Probability) + ", one that lies further off more surely. Chance is no excuse for another answer.",
		"Have the heights measured by a calibrated instrument, and measure them again when a sample was dropped or is worn.",
	}
	if p.Joint.Kind != press.Touch {
		t.Notes = append(t.Notes, "One more sample teaches: a loose fit of the right height is accepted, because no lamp shows it.")
	}
	return t
}
