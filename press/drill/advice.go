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
	Edge    string   // they do, by less than half a step; empty where it is clear
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
	d := &Drill{p: p, r: judged(r), s: s, pos: words.PositionsOf(p)}
	a := Advice{Pair: on, Why: d.says(on), Note: words.ReactionNote}
	for _, t := range words.PairTexts(p, r) {
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

// AtFirstLook says what two lamps mean in the probe of a plan that has one; false for a
// plan with one look.
func AtFirstLook(p *press.Plan, r *press.Result, on words.Pair, when words.Situation) (Advice, bool) {
	if !words.TwoLooks(r) {
		return Advice{}, false
	}
	t := words.AtFirstLook(p, r, on, when)
	return Advice{Pair: on, Verdict: t.Verdict, Clear: true, Meaning: t.Meaning, Part: t.Do, Checks: t.Checks[:min(3, len(t.Checks))], Note: words.ReactionNote}, true
}

// against holds a reading against the lamps.
func (d *Drill) against(a *Advice, x float64) {
	a.Height = d.heightBy(a, x)
	if d.fits(a.Pair, x) {
		if d.shows(event{reading: x}) != a.Pair && a.Pair.Arrival {
			a.Edge = "It reads at the edge: at " + d.typed(x) + " itself this plan shows " + d.shows(event{reading: x}).String() + ", but the position is shown in steps of " + d.pos.Length(d.p.Station.PositionStep) + ". " + d.agree()
			a.Why = "By the lamps the ram rests on the other side of the edge, less than half a step away."
		}
		return
	}
	a.Why = "" // it would tell of a ram that rests elsewhere
	if len(a.words) == 0 {
		a.Why = "No part of this plan leads to these lamps."
	}
	if ForHeight(d.p, d.r, x) {
		a.Height = ""
		a.Doubt = "Is " + d.typed(x) + " the height of the part? The reading is the position of the ram, near " + d.pos.At(d.r.Nominal()) + "."
		if len(a.words) > 0 {
			a.Checks = []string{"Read the ram position again, and type it in here.", "If it does read so: " + lower(d.setpoints()), "Test each lamp by itself: both must be off before the push."}
			if part := "Set the part apart until the reading is clear."; strings.HasPrefix(a.Part, "Stop") {
				a.Part = "Stop. " + part
			} else {
				a.Part = part
			}
		}
		return
	}
	a.Doubt = "Lamps and reading do not fit: "
	switch {
	case d.s.Early(x):
		a.Doubt += lower(d.story(event{early: true}))
	case a.Pair.Arrival && !d.s.Arrives(x):
		a.Doubt += "the push ends at " + d.pos.At(d.s.End) + ", and no ram can be stopped at " + d.typed(x) + "."
	case !a.Pair.Arrival:
		a.Doubt += "without arrival the ram must stand at the push end, " + d.pos.At(d.s.End) + ", with zone " + words.OnOff(d.s.InZone(d.s.End)) + "."
		if low, high, ok := d.s.Overlap(); ok && a.Pair.Zone && x >= low && x <= high {
			a.Doubt += " It may be a part that is seated, whose force was not reported in time."
		}
	default:
		a.Doubt += "at " + d.typed(x) + " this plan shows " + d.shows(event{reading: x}).String() + "."
	}
	a.Doubt += " " + d.agree() + " Either the station is not set as the plan says, or a signal is at fault."
	if len(a.words) == 0 {
		return // no reading makes a fault of the station less than that
	}
	// What the lamps alone would advise does not hold here.
	a.Checks = []string{d.setpoints(), "Test each lamp by itself: both must be off before the push.", words.FreshGood + " before the next one counts."}
	if part := "Set the part apart: do not judge it by these lamps."; strings.HasPrefix(a.Part, "Stop") {
		a.Part = "Stop. " + part
	} else {
		a.Part = part
	}
}

// setpoints asks for a look at what is set.
func (d *Drill) setpoints() string { return "Compare what is set with the plan: " + lower(d.figures()) }

// agree says why lamps and reading must agree, and how closely.
func (d *Drill) agree() string {
	return "Lamps and reading tell of one and the same position of the ram, so they must agree within half a step of the reading, " + d.pos.Length(d.p.Station.PositionStep/2) + "."
}

// heightBy says what a reading makes of the part. By the drawing it is good, or not,
// only where all that the height may be lies on one side of its limits.
func (d *Drill) heightBy(a *Advice, x float64) string {
	switch {
	case a.Pair.Arrival && (d.s.Early(x) || !d.s.Arrives(x) && !d.fits(a.Pair, x)):
		return "" // no part stops the ram there
	case !a.Pair.Arrival:
		return "At " + d.typed(x) + " the ram was not stopped by a part, so the reading says nothing of its height."
	}
	h, u, q := d.r.HeightOf(x), d.unsure(), d.p.Requirement
	s := "A part that stops the ram at " + d.typed(x) + " is about " + d.pos.At(h) + " high, ± " + d.pos.Length(u)
	told := true
	switch {
	case h-u > q.HeightHigh:
		s += "; by the drawing that is " + words.Say(press.Long)
	case h+u < q.HeightLow:
		s += "; by the drawing that is " + words.Say(press.Short)
	case h-u >= q.HeightLow-1e-9 && h+u <= q.HeightHigh+1e-9:
		s += "; by the drawing that is " + words.Say(press.Good)
	default:
		s, told = s+"; whether it is good by the drawing cannot be told from the reading", false
	}
	if d.r.Window.Word(x) == press.Good && !a.Pair.Zone && d.fits(a.Pair, x) {
		ruled := (words.Printer{}).Ruled(d.p) != ""
		switch {
		case told && ruled:
			s += ", yet it is refused: the window stays inside the drawing"
		case told:
			s += ", yet it is refused: it lies within the guard band"
		default:
			s += ", and it is refused: it lies so near to a limit"
		}
		a.Meaning = "Refused within the guard band: measure it."
		if ruled {
			a.Meaning = "Refused near a limit of the drawing: measure it."
		}
		if a.Clear {
			a.Checks = append([]string{d.measure()}, slices.DeleteFunc(a.Checks, func(c string) bool { return strings.HasPrefix(c, "Measure its height") })...)
			a.Checks = a.Checks[:min(3, len(a.Checks))]
		}
	}
	return s + "."
}

// measure is the check of a part that only a measurement tells.
func (d *Drill) measure() string {
	return "Measure its height: from " + d.pos.Bare(d.p.Requirement.HeightLow) + " to " + d.pos.At(d.p.Requirement.HeightHigh) + " it is good by the drawing."
}

// fits tells whether a reading can go with a pair. Zone and push end are compared
// with the same position of the ram that is read, at rest: only half the step in which
// a position is shown lies between them, and not the uncertainty of the part's height.
func (d *Drill) fits(on words.Pair, x float64) bool {
	u := d.p.Station.PositionStep / 2
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
