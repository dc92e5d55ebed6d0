package words

import (
	"math"

	"ramplan/press"
)

// A shown is what the station shows of what stops the ram at a reading.
type shown struct {
	sig    press.Signals
	pos    Positions
	unsure float64 // mm, ± of a reading
}

// lampsAt is the pair of lamps.
func (s shown) lampsAt(reading float64) string {
	if s.sig.Early(reading) {
		return "met in the approach: do not press it"
	}
	a, z := s.sig.At(reading)
	return Pair{a, z}.String()
}

// readingAt is where the ram comes to rest; nil: on nothing.
func (s shown) readingAt(reading *float64) string {
	switch {
	case reading == nil || !s.sig.Early(*reading) && !s.sig.Arrives(*reading):
		return "none; the ram ends at " + s.pos.At(s.sig.End)
	case s.sig.Early(*reading):
		return none
	}
	return s.within(*reading)
}

// within are the limits of a reading: what is expected, and its uncertainty to both sides.
func (s shown) within(reading float64) string {
	low, high := s.limits(reading, reading)
	return s.pos.between(low, high)
}

// limits of what is expected to read from one position to another, rounded inward.
func (s shown) limits(from, to float64) (low, high float64) {
	low, high = s.pos.up(from-s.unsure), s.pos.down(to+s.unsure)
	return min(low, high), max(low, high)
}

// sampleAt is where a sample may read, whichever height between its bounds it has.
func (s shown) sampleAt(p *press.Plan, r *press.Result, x LimitSample) string {
	from, to := r.ReadingOf(x.To), r.ReadingOf(x.From)
	if !s.sig.Arrives(r.ReadingOf(x.near)) {
		return s.readingAt(nil)
	}
	low, high := s.limits(from, to)
	return s.pos.between(low, high)
}

// stops tells whether what stops the ram at a reading shows one.
func (s shown) stops(reading float64) bool { return !s.sig.Early(reading) && s.sig.Arrives(reading) }

// lampsOf is the pair of lamps of a part of a height.
func (say Printer) lampsOf(p *press.Plan, r *press.Result, height float64) string {
	sig, ok := r.Signals()
	reading := r.ReadingOf(height)
	if !ok || sig.Early(reading) {
		return "not known"
	}
	arrival, zone := sig.At(reading)
	return Pair{arrival, zone}.String()
}

// emptyNest is where the ram would come to rest with nothing in the nest at all.
func emptyNest(p *press.Plan, r *press.Result) float64 {
	return r.PushAt(r.Force.Setting).Reading
}

// withoutInsert is the row of the missing insert where parts stay in the nest
// without it, so that this is another push than the one of the empty nest.
func withoutInsert(p *press.Plan, r *press.Result) *press.FaultRow {
	at := r.Traces().NoInsert
	if !p.MarksInsert() || at == nil || math.Abs(*at-emptyNest(p, r)) < 1e-6 {
		return nil
	}
	return row(r, press.RowMissing)
}

// A shiftPush is one push of the shift check.
type shiftPush struct {
	what, brief         string // as it stands in its row, and in a list of all
	why, lamps, reading string
	sample              string // the name of the limit sample that is pressed; empty where none is
	asked               ShiftPush
}

// shiftPushes are all of them in their order: every page that says what the shift check
// is, or how much of it, goes by these. There are none where the signals are not known.
func (say Printer) shiftPushes(p *press.Plan, r *press.Result) []shiftPush {
	sig, ok := r.Signals()
	if !ok {
		return nil
	}
	at := shown{sig, say.Positions(p), r.MasterWithin()}
	if TwoLooks(r) {
		return say.probedPushes(p, r, at)
	}
	nest := emptyNest(p, r)
	why := "Nothing lies in it: a move that merely ends must give no arrival."
	if sig.Arrives(nest) {
		why = "Nothing lies in it: the nest itself stops the ram before the push ends."
	}
	out := []shiftPush{{what: "Empty nest", brief: "empty nest", why: why, lamps: at.lampsAt(nest), reading: at.readingAt(&nest), asked: ShiftPush{Sample: EmptyNest}}}
	if f := withoutInsert(p, r); f != nil {
		why := "The other parts lie in the nest, the insert is missing: no part may pass."
		if missingPasses(r) {
			why = "What stays in the nest stops the ram where a good part would: another check has to refuse it."
		}
		out = append(out, shiftPush{what: "Without an insert", brief: "without an insert", why: why, lamps: say.lamps(f.Arrival, f.Zone), reading: at.readingAt(f.Reading), asked: ShiftPush{Sample: NoInsert}})
	}
	out = append(out, say.samplePushes(p, r, at)...)
	if f := row(r, press.RowLoose); f != nil && f.Verdict == press.Good {
		out = append(out, shiftPush{
			what: "A loose sample", brief: "loose sample", why: "It is expected to pass, and teaches why the fit is checked elsewhere: no lamp shows it.",
			lamps: say.lamps(f.Arrival, f.Zone), reading: at.readingAt(f.Reading), asked: say.masterPush(p, r, at, LooseSample),
		})
	}
	return out
}

// masterPush is what a page asks for of a part as good as the master.
func (say Printer) masterPush(p *press.Plan, r *press.Result, at shown, name string) ShiftPush {
	x := ShiftPush{Sample: name, Height: new(r.HeightOf(r.Nominal())), Reads: at.stops(r.Nominal())}
	if say.mastered(p, r) {
		x.Bounds = say.masterHeight(p, r)
	}
	return x
}

// samplePushes are those of master and limit samples.
func (say Printer) samplePushes(p *press.Plan, r *press.Result, at shown) []shiftPush {
	var out []shiftPush
	nominal := r.Nominal()
	out = append(out, shiftPush{
		what: "Master that is good, " + at.pos.At(r.HeightOf(nominal)), brief: "master that is good",
		why: "The station accepts what is good, where it should stand. A taller master reads as much less.", lamps: at.lampsAt(nominal), reading: at.readingAt(&nominal),
		asked: say.masterPush(p, r, at, Master),
	})
	for _, x := range made(say.LimitSamples(p, r)) {
		if x.Good {
			continue
		}
		why, reading := "The upper limit still refuses.", r.ReadingOf(x.near)
		if reading > nominal {
			why = "The lower limit still refuses."
		}
		name := lowerFirst(x.Name)
		out = append(out, shiftPush{what: "One sample " + name, brief: "sample " + name, why: why, lamps: at.lampsAt(reading), reading: at.sampleAt(p, r, x), sample: x.Name,
			asked: ShiftPush{Sample: x.Name, Bounds: x.Heights(p), Height: new((x.From + x.To) / 2), Reads: at.stops(reading)}})
	}
	return out
}

// pushes counts the pushes of a check.
func (say Printer) pushes(n int) string {
	if n == 1 {
		return "1 push"
	}
	return Trimmed(float64(n), 0) + " pushes"
}

// inShiftCheck counts how many of the limit samples of a name are pressed in it.
func inShiftCheck(list []shiftPush, name string) (n int) {
	for _, x := range list {
		if x.sample == name {
			n++
		}
	}
	return n
}

// shiftTable is what is pressed before the first part of a shift.
func (say Printer) shiftTable(p *press.Plan, r *press.Result) Table {
	t := Table{say: say,
		Lead:    "Pressed " + p.Quality.LimitCheck + ", before any other part: one of each, in this order. " + otherAnswer + " One page holds a week of one shift: into each box go the lamps seen and the reading.",
		Ranges:  []string{"Reading must lie in"},
		Columns: []Column{{"Push", 1.1, false}, {"Why", 2.3, false}, {"Lamps that must show", 1.1, false}, {"Reading must lie in", 1.35, false}},
	}
	for _, day := range weekdays {
		t.Columns = append(t.Columns, Column{day, 0.85, true})
	}
	pushes := say.shiftPushes(p, r)
	if pushes == nil {
		t.Lacking = "The window is not known to its end: there is nothing to check against."
		return t
	}
	t.Fill = []string{"Week", "Shift", "Station"}
	add := func(cells ...string) { t.Rows = append(t.Rows, append(cells, make([]string, len(weekdays))...)) }
	for _, x := range pushes {
		add(x.what, x.why, x.lamps, x.reading)
	}
	add("Name, signed", "Whoever pressed them; nothing is signed that was not seen.", none, none)
	t.Notes = []string{say.ReadingRule(p, r)}
	if TwoLooks(r) {
		t.Notes = append(t.Notes, SampledWithout)
	}
	if found := say.wearFound(p, r); found != "" {
		t.Notes = append(t.Notes, found)
	}
	return t
}

// weekdays head the boxes of a week.
var weekdays = []string{"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"}
