package drill

import (
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/press/words/lesson"
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
func AtStation(say words.Printer, p *press.Plan, r *press.Result, list []words.Reaction, on words.Pair, when words.Situation, reading *float64) (Advice, error) {
	s, ok := r.Signals()
	if !ok {
		return Advice{}, ErrNoSignals
	}
	d := &Drill{p: p, r: judged(r), s: s, say: lesson.Of(say, p)}
	a := Advice{Pair: on, Why: d.says(on), Note: words.ReactionNote}
	for _, t := range say.PairTexts(p, r) {
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
func AtFirstLook(say words.Printer, p *press.Plan, r *press.Result, on words.Pair, when words.Situation) (Advice, bool) {
	if !words.TwoLooks(r) {
		return Advice{}, false
	}
	t := say.AtFirstLook(p, r, on, when)
	return Advice{Pair: on, Verdict: t.Verdict, Clear: true, Meaning: t.Meaning, Part: t.Do, Checks: t.Checks[:min(3, len(t.Checks))], Note: words.ReactionNote}, true
}

// against holds a reading against the lamps.
func (d *Drill) against(a *Advice, x float64) {
	a.Height = d.heightBy(a, x)
	if d.fits(a.Pair, x) {
		if d.shows(event{reading: x}) != a.Pair && a.Pair.Arrival {
			a.Edge = d.say.ReadsAtAnEdge(d.typed(x), d.shows(event{reading: x}), d.p.Station.PositionStep, d.agree())
			a.Why = d.say.BeyondTheEdge()
		}
		return
	}
	a.Why = "" // it would tell of a ram that rests elsewhere
	if len(a.words) == 0 {
		a.Why = d.say.NoPartOfPlanShowsThese()
	}
	if ForHeight(d.p, d.r, x) {
		a.Height = ""
		a.Doubt = d.say.HeightTypedForReading(d.typed(x), d.r.Nominal())
		if len(a.words) > 0 {
			a.Checks = []string{d.say.ReadPositionAgain(), d.say.IfReadSo(lower(d.setpoints())), d.say.TestEachLamp()}
			if part := d.say.SetApartUntilClear(); strings.HasPrefix(a.Part, "Stop") {
				a.Part = "Stop. " + part
			} else {
				a.Part = part
			}
		}
		return
	}
	a.Doubt = d.say.ReadingDoesNotFit()
	switch {
	case d.s.Early(x):
		a.Doubt += lower(d.story(event{early: true}))
	case a.Pair.Arrival && !d.s.Arrives(x):
		a.Doubt += d.say.BeyondThePushEnd(d.s.End, d.typed(x))
	case !a.Pair.Arrival:
		a.Doubt += d.say.MustStandAtPushEnd(d.s.End, d.s.InZone(d.s.End))
		if low, high, ok := d.s.Overlap(); ok && a.Pair.Zone && x >= low && x <= high {
			a.Doubt += d.say.MayBeSeatedLate()
		}
	default:
		a.Doubt += d.say.PlanShowsAt(d.typed(x), d.shows(event{reading: x}))
	}
	a.Doubt += d.say.StationOrSignal(d.agree())
	if len(a.words) == 0 {
		return // no reading makes a fault of the station less than that
	}
	// What the lamps alone would advise does not hold here.
	a.Checks = []string{d.setpoints(), d.say.TestEachLamp(), d.say.BeforeTheNextCounts(words.FreshGood)}
	if part := d.say.SetApartUnjudged(); strings.HasPrefix(a.Part, "Stop") {
		a.Part = "Stop. " + part
	} else {
		a.Part = part
	}
}

// setpoints asks for a look at what is set.
func (d *Drill) setpoints() string { return d.say.CompareWithPlan(lower(d.figures())) }

// agree says why lamps and reading must agree, and how closely.
func (d *Drill) agree() string {
	return d.say.ReadingMustAgree(d.p.Station.PositionStep / 2)
}

// heightBy says what a reading makes of the part. By the drawing it is good, or not,
// only where all that the height may be lies on one side of its limits.
func (d *Drill) heightBy(a *Advice, x float64) string {
	switch {
	case a.Pair.Arrival && (d.s.Early(x) || !d.s.Arrives(x) && !d.fits(a.Pair, x)):
		return "" // no part stops the ram there
	case !a.Pair.Arrival:
		return d.say.NoHeightInReading(d.typed(x))
	}
	h, u, q := d.r.HeightOf(x), d.unsure(), d.p.Requirement
	s := d.say.HeightByReading(d.typed(x), h, u)
	told := true
	switch {
	case h-u > q.HeightHigh:
		s += d.say.HeightVerdict(press.Long)
	case h+u < q.HeightLow:
		s += d.say.HeightVerdict(press.Short)
	case h-u >= q.HeightLow-1e-9 && h+u <= q.HeightHigh+1e-9:
		s += d.say.HeightVerdict(press.Good)
	default:
		s, told = d.say.VerdictUnknown(s), false
	}
	if d.r.Window.Word(x) == press.Good && !a.Pair.Zone && d.fits(a.Pair, x) {
		ruled := d.say.Ruled(d.p) != ""
		s += d.say.YetRefused(told, ruled)
		a.Meaning = d.say.RefusedNear(ruled)
		if a.Clear {
			a.Checks = append([]string{d.measure()}, slices.DeleteFunc(a.Checks, d.say.IsMeasure)...)
			a.Checks = a.Checks[:min(3, len(a.Checks))]
		}
	}
	return s + "."
}

// measure is the check of a part that only a measurement tells.
func (d *Drill) measure() string {
	return d.say.MeasureHeight(d.p.Requirement.HeightLow, d.p.Requirement.HeightHigh)
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
