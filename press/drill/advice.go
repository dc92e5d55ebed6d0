package drill

import (
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// Advice is what a plan says of two lamps at the station.
type Advice struct {
	Pair    words.Pair
	Verdict string // the words of the pair, "fault" where there are none
	Clear   bool   // the words do not contradict each other
	Meaning string
	Why     string   // what the lamps say about the ram, with the plan's positions
	Height  string   // what the reading makes of the part; empty without one
	Doubt   string   // lamps and reading do not fit each other; empty where they do
	Part    string   // what happens to the part
	Checks  []string // three, in order
	Note    string   // whose list it is
	words   []string // behind the lamps
}

// AtStation says what two lamps mean, and the reading if there is one. A reading
// that cannot go with the lamps is told, and then the station is looked at first.
func AtStation(p *press.Plan, r *press.Result, list []words.Reaction, on words.Pair, when words.Situation, reading *float64) (Advice, error) {
	s, ok := r.Signals()
	if !ok {
		return Advice{}, ErrNoSignals
	}
	d := &Drill{p: p, r: r, s: s, pos: words.PositionsOf(p)}
	a := Advice{Pair: on, Why: d.says(on), Note: words.ReactionNote}
	for _, t := range words.PairTexts(r) {
		if t.Pair == on {
			a.Verdict, a.Clear, a.Meaning, a.words = t.Verdict, t.Clear, t.Meaning, t.Words
		}
	}
	if x, ok := words.ReactionTo(list, on, when); ok {
		a.Part = x.Part
		a.Checks = slices.Clone(x.Checks[:min(3, len(x.Checks))])
	}
	if reading != nil {
		d.against(&a, *reading)
	}
	return a, nil
}

// against holds a reading against the lamps.
func (d *Drill) against(a *Advice, x float64) {
	h := d.r.HeightOf(d.p, x)
	word := d.r.Window.Word(x)
	switch {
	case a.Pair.Arrival && (d.s.Early(x) || !d.s.Arrives(x) && !d.fits(a.Pair, x)):
		// No part stops the ram there: nothing is said of its height.
	case !a.Pair.Arrival:
		a.Height = "At " + at(x) + " the ram was not stopped by a part, so the reading says nothing of its height."
	default:
		a.Height = "A part that stops the ram at " + at(x) + " is about " + at(h) + " high, give or take " + d.pos.Length(d.unsure()) + "; by the drawing that is " + orWords([]string{word}) + "."
		if word == press.Good && !a.Pair.Zone && d.fits(a.Pair, x) {
			a.Height = strings.TrimSuffix(a.Height, ".") + ", yet it is refused: so near to a limit of the drawing a reading cannot be sure."
			a.Meaning = "Refused within the guard band: measure it."
			if measure := d.measure(); a.Clear {
				a.Checks = append([]string{measure}, slices.DeleteFunc(a.Checks, func(c string) bool { return strings.HasPrefix(c, "Measure its height") })...)
				a.Checks = a.Checks[:min(3, len(a.Checks))]
			}
		}
	}
	if d.fits(a.Pair, x) {
		return
	}
	a.Doubt = "Lamps and reading do not fit: "
	switch ev := (event{reading: x}); {
	case d.s.Early(x):
		a.Doubt += lower(d.story(event{early: true}))
	case a.Pair.Arrival && !d.s.Arrives(x):
		a.Doubt += "the push ends at " + d.pos.At(d.s.End) + ", and no ram can be stopped at " + at(x) + "."
	case !a.Pair.Arrival:
		a.Doubt += "without arrival the ram must stand at the push end, " + d.pos.At(d.s.End) + ", with zone " + words.OnOff(d.s.InZone(d.s.End)) + "."
	default:
		a.Doubt += "at " + at(x) + " this plan shows " + d.shows(ev).String() + "."
	}
	a.Doubt += " Either the station is not set as the plan says, or a signal is at fault."
	if ForHeight(d.p, d.r, x) {
		a.Doubt += " Is " + at(x) + " the height of the part? The reading is the position of the ram, near " + d.pos.At(d.r.Nominal()) + "."
	}
	if len(a.words) == 0 {
		return // no reading makes a fault of the station less than that
	}
	m := "Compare what is set with the plan: " + lower(d.figures())
	// What the lamps alone would advise does not hold here.
	a.Checks = []string{m, "Test each lamp by itself: both must be off before the push.", "Press a part that is known to be good before the next one counts."}
	a.Part = "Set the part apart: do not judge it by these lamps."
}

// measure is the check of a part that only a measurement tells.
func (d *Drill) measure() string {
	return "Measure its height: from " + d.pos.Bare(d.p.Requirement.HeightLow) + " to " + d.pos.At(d.p.Requirement.HeightHigh) + " it is good by the drawing."
}

// fits tells whether a reading can go with a pair. Zone and push end are compared
// with the same position of the ram that is read, at rest: only the step in which a
// position is shown lies between them, and not the uncertainty of the part's height.
func (d *Drill) fits(on words.Pair, x float64) bool {
	u := d.p.Station.PositionStep
	near := func(a, b float64) bool { return x >= a-u-1e-9 && x <= b+u+1e-9 }
	if !on.Arrival {
		return on.Zone == d.s.InZone(d.s.End) && near(d.s.End, d.s.End)
	}
	if !near(d.s.Start, d.s.End) {
		return false
	}
	if on.Zone {
		low, high, ok := d.s.Overlap()
		return ok && near(low, high)
	}
	before := d.s.ZoneStart > d.s.Start && near(d.s.Start, min(d.s.ZoneStart, d.s.End))
	past := d.s.ZoneEnd < d.s.End && near(max(d.s.Start, d.s.ZoneEnd), d.s.End)
	return before || past
}

func lower(s string) string {
	return string(s[0]|0x20) + s[1:]
}
