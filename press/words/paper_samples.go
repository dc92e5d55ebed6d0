package words

import (
	"slices"

	"ramplan/press"
)

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
const otherAnswer = "One wrong answer is enough: stop, set no part free, quarantine back to the last good check, and find out why."

// samplesPressed says which samples are pressed when, and what is asked of them.
func (say Printer) samplesPressed(p *press.Plan, r *press.Result) string {
	list := say.shiftPushes(p, r)
	var among []string
	for _, x := range list {
		if x.sample != "" {
			among = append(among, "one "+lowerFirst(x.sample))
		}
	}
	s := "All are pressed at set-up, and after each change for which “" + reprovingTitle + "” asks for them"
	if among != nil {
		s += "; " + and(among) + " are among the " + say.pushes(len(list)) + " of the shift check, " + p.Quality.LimitCheck
	}
	return s + ". Each must be judged as written every time."
}

// SamplesMade says how many limit samples are made and what becomes of them.
func (say Printer) SamplesMade(p *press.Plan, r *press.Result) string {
	are := " of each height are made. "
	if p.Quality.SamplesEach == 1 {
		are = " of each height is made. "
	}
	return samplesMade(p) + are + say.samplesPressed(p, r)
}

// A LimitSample is one sample to make: from where to where it may lie.
type LimitSample struct {
	say      Printer
	Name     string
	Good     bool
	Missing  bool    // no height is accepted so surely
	Early    bool    // it cannot be pressed: the approach would meet it
	PastNest bool    // it cannot be pressed: the nest itself stops the ram before
	From, To float64 // mm, rounded inward to the decimals that are written
	near     float64 // mm, the end beside its limit, a hair to its own side
}

// hair keeps a sample that stands at the very edge of the window on its own side.
const hair = 1e-6

// LimitSamples are the limit samples of a plan, from the tallest down; nil where it has
// none. They are bounded on both sides: what lies far off its limit says nothing of it.
func (say Printer) LimitSamples(p *press.Plan, r *press.Result) []LimitSample {
	s, ok := r.SampleRanges()
	if !ok {
		return nil
	}
	pos := say.Positions(p).Fine()
	between := func(name string, good, up bool, x *press.SampleRange) LimitSample {
		out := LimitSample{say: say, Name: name, Good: good, Missing: x == nil}
		if x == nil {
			return out
		}
		if q := p.Requirement; good && (x.From > q.HeightHigh+hair || x.To < q.HeightLow-hair) {
			return LimitSample{say: say, Name: name, Good: good, Missing: true} // accepted, and wrong all the same
		}
		out.PastNest = !good && !up && r.PastNest(r.ReadingOf(x.To))
		out.Early = x.To < x.From-hair
		if up { // the limit is the lower end
			out.From = pos.up(x.From)
			out.To, out.near = max(out.From, pos.down(x.To)), out.From+hair
		} else {
			out.To = pos.down(x.To)
			out.From, out.near = min(out.To, pos.up(x.From)), out.To-hair
		}
		return out
	}
	return []LimitSample{
		between("Too tall", false, true, &s.Tall), between("Tallest good", true, false, s.TallestGood),
		between("Shortest good", true, true, s.ShortestGood), between("Too short", false, false, &s.Short),
	}
}

// Heights writes from where to where a sample may lie.
func (x LimitSample) Heights(p *press.Plan) string {
	pos := x.say.Positions(p).Fine()
	switch {
	case x.Missing:
		return none
	case x.Early:
		return "none: the approach would meet it"
	case x.PastNest:
		return "none: the nest stops the ram before"
	case pos.Bare(x.From) == pos.Bare(x.To):
		return pos.At(x.From)
	}
	return pos.between(x.From, x.To)
}

// Pressed tells whether there is such a sample, and one that can be pressed.
func (x LimitSample) Pressed() bool { return !x.Missing && !x.Early && !x.PastNest }

// made leaves out the samples that there are not.
func made(all []LimitSample) []LimitSample {
	return slices.DeleteFunc(all, func(x LimitSample) bool { return !x.Pressed() })
}

// SampleNotes say how samples are made and what they prove. Common practice, no source.
func (say Printer) SampleNotes(p *press.Plan, r *press.Result) []string {
	out := []string{
		"Made between its two bounds, a sample tells whether the station still judges rightly at the limit. One that lies far outside, such as a block a millimetre too tall, is refused by any station and proves nothing.",
	}
	if datum, rows := r.Datum(); rows {
		height := say.Positions(p).Fine().Length(datum)
		out = append(out, "The ram feels the height above the nest, not that above the datum. Each sample holds its bounds only on a datum that lies "+height+" above the nest, as measured: "+
			"one that lies 0.01\u202fmm higher or lower moves the reading by as much. On another datum, make the sample so that it stands its height and "+height+" above the nest.")
	}
	if p.Joint.Kind != press.Touch {
		out = append(out, "A sample that is too tall is solid, or locked by a pin, a weld or glue that bears more than the push: an insert that merely stands off its seat would be pushed home, and then be accepted.")
	}
	return out
}

func (say Printer) sampleTable(p *press.Plan, r *press.Result) Table {
	t := Table{say: say,
		Lead: "Complete assemblies of known height, measured, marked and kept at the station. A height is the " + say.SeatedHeight(p) + ", and no reading of the ram. " +
			say.samplesPressed(p, r) + " " + otherAnswer,
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
	pressed := say.shiftPushes(p, r)
	for _, x := range made(say.LimitSamples(p, r)) {
		shift, must := none, "refuse it"
		if n := inShiftCheck(pressed, x.Name); n > 0 {
			shift = Trimmed(float64(n), 0)
		}
		if x.Good {
			must = "accept it"
		}
		t.Rows = append(t.Rows, []string{x.Name, x.Heights(p), samplesMade(p), allSamples(p), shift, say.lampsOf(p, r, x.near), must, "", "", ""})
	}
	if say.mastered(p, r) {
		accept := say.lampsOf(p, r, r.HeightOf(r.Nominal()))
		t.Rows = append(t.Rows, []string{"Master", say.masterHeight(p, r), "1", "1", "1", accept, "accept it", "", "", ""})
		if loose := row(r, press.RowLoose); loose != nil && loose.Verdict == press.Good && !TwoLooks(r) { // by one look it passes
			t.Rows = append(t.Rows, []string{"Loose sample", say.masterHeight(p, r), "1", "1", "1", say.lamps(loose.Arrival, loose.Zone), "accept it", "", "", ""})
		}
		t.Notes = append(t.Notes, say.masterNote(p))
	}
	if w, good := r.Window.Overlap, r.Window.GoodRange; w != nil && (w[0] < good[0]-1e-9 || w[1] > good[1]+1e-9) {
		t.Notes = append(t.Notes, "The window lets in heights that the drawing refuses: no sample can be made where it does. Change the window before any sample is made.")
	}
	t.Notes = append(append(t.Notes, say.SampleNotes(p, r)...),
		"What to expect of a sound station: a sample of the very height is judged as written with a probability of at least "+say.TargetShare(s.Probability)+", one that lies further off more surely. Chance is no excuse for another answer.",
		"Have the heights measured by a calibrated instrument, and measure them again when a sample was dropped or is worn.",
	)
	t.Notes = append(t.Notes, say.bandNotes(p, r)...)
	switch {
	case TwoLooks(r):
		t.Rows = append(t.Rows, say.looseSampleRow(p, r, pressed))
		t.Notes = append(t.Notes, SampledWithout, say.looseSampleNote(r))
	case p.Joint.Kind != press.Touch:
		t.Notes = append(t.Notes, "The loose sample teaches: a loose fit of the right height is accepted, because no lamp shows it.")
	}
	return t
}
