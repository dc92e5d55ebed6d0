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

// A limitSample is one height to make.
type limitSample struct {
	name, height string
	at           float64 // mm, the height as it is written, a hair to its own side
	good         bool
}

// hair keeps a sample that stands at the very edge of the window on its own side.
const hair = 1e-6

// samplesOf are the limit samples of a plan with their heights as they are written.
func samplesOf(p *press.Plan, r *press.Result) []limitSample {
	s, pos := r.Samples, PositionsOf(p).Fine()
	if s == nil {
		return nil
	}
	out := []limitSample{{"Too tall", pos.Above(s.Long) + " or taller", pos.up(s.Long) + hair, false}}
	if x := s.TallestGood; x != nil {
		out = append(out, limitSample{"Tallest good", pos.Below(*x) + ", no taller", pos.down(*x) - hair, true})
	}
	if x := s.ShortestGood; x != nil {
		out = append(out, limitSample{"Shortest good", pos.Above(*x) + ", no shorter", pos.up(*x) + hair, true})
	}
	return append(out, limitSample{"Too short", pos.Below(s.Short) + " or shorter", pos.down(s.Short) - hair, false})
}

func sampleTable(p *press.Plan, r *press.Result) Table {
	t := Table{
		Lead: "Complete assemblies of known height, measured, marked and kept at the station. A height is the " + SeatedHeight(p) + ", and no reading of the ram. " +
			samplesPressed(p) + " " + otherAnswer,
		Ranges: []string{"Seated height"},
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
	for _, x := range samplesOf(p, r) {
		shift, must := "1", "refuse it"
		if x.good {
			shift, must = none, "accept it"
		}
		t.Rows = append(t.Rows, []string{x.name, x.height, samplesMade(p), allSamples(p), shift, lampsOf(p, r, x.at), must, "", "", ""})
	}
	t.Notes = []string{
		"What to expect of a sound station: a sample of the very height is judged as written with a probability of at least " + TargetShare(s.Probability) + ", one that lies further off more surely. Chance is no excuse for another answer.",
		"Have the heights measured by a calibrated instrument, and measure them again when a sample was dropped or is worn.",
	}
	if p.Joint.Kind != press.Touch {
		t.Notes = append(t.Notes, "One more sample teaches: a loose fit of the right height is accepted, because no lamp shows it.")
	}
	return t
}
