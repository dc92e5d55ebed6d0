package words

import (
	"slices"
	"strings"

	"ramplan/press"
)

// Situation is what happened at the station before.
type Situation string

// The situations that a reaction plan tells apart.
const (
	One    Situation = "one"    // one part, after a run of good ones
	Run    Situation = "run"    // several in a row with the same lamps
	Change Situation = "change" // the first after a change of tool, nest or lot
	Start  Situation = "start"  // every part since the shift began
)

// Situations are all of them, in the order in which they are listed.
var Situations = []Situation{One, Run, Change, Start}

// Title says the situation in a few words.
func (s Situation) Title() string {
	return map[Situation]string{
		One:    "One part, after a run of good ones",
		Run:    "Several in a row",
		Change: "The first after a change of tool, nest or lot",
		Start:  "Every part since the shift began",
	}[s]
}

// whenOn says when a row of the reaction plan holds. The rows of good lamps that pass a part
// on and those that keep it back exclude each other, and say so.
func (say Printer) whenOn(x Reaction) string {
	if !x.passed {
		return x.Situation.Title()
	}
	return map[Situation]string{
		One:    "Normal running, a single part",
		Run:    "Normal running, several in a row",
		Change: "The first after a change of tool, nest or lot, until its checks have passed",
		Start:  "From the start of the shift, until its checks have passed",
	}[x.Situation]
}

// passedOn tells whether these lamps mean a good part and nothing else.
func (x Reaction) passedOn() bool { return x.passed }

// A Reaction is what to do with a pair of lamps in a situation. A plan's own
// reaction list has the same form and takes the place of the one made here.
type Reaction struct {
	Pair      Pair
	Situation Situation
	Part      string   // what happens to the part at hand
	Checks    []string // what to look at, in this order
	Asked     []string // the same without what will be seen then, for who is to say it
	Own       bool     // the checks are the plan's own, in an order that its works want
	passed    bool     // the lamps mean a good part and nothing else
	First     int      // how many of the checks stop or hold back: these come before the others, whatever the order of those
}

// InAnyOrder tells whether a check may come before another one, both by their place in
// the list. A list that is common practice wants what stops or holds back first, and
// nothing else.
func (x Reaction) InAnyOrder(one, other int) bool {
	return !x.Own && one >= x.First && other >= x.First
}

// ReactionNote stands under every list that is made here.
const ReactionNote = "Common practice, no source. What your own works instruct goes before this list."

// Reactions are the lists of a plan for every pair and situation, with the plan's
// own figures. There are none without a verdict.
func (say Printer) Reactions(p *press.Plan, r *press.Result) []Reaction {
	s, ok := r.Signals()
	if !ok {
		return nil
	}
	m := reactions{say: say, p: p, r: r, s: s, pos: say.Positions(p)}
	bare := m
	bare.bare = true
	var out []Reaction
	for _, t := range say.PairTexts(p, r) {
		for _, when := range Situations {
			x := Reaction{Pair: t.Pair, Situation: when, passed: t.Clear && slices.Contains(t.Words, press.Good)}
			x.Part, x.Checks = m.list(t, when)
			_, x.Asked = bare.list(t, when)
			if own := ownChecks(p, t.Pair, when); len(own) > 0 {
				x.Checks, x.Asked, x.Own = own, own, true
			} else if slices.Contains(beforeOthers, x.Asked[0]) {
				x.First = 1
			}
			if p.Quality.RejectPlace != "" && strings.HasSuffix(x.Part, apartPart) {
				x.Part += " It goes to: " + p.Quality.RejectPlace + "."
			}
			out = append(out, x)
		}
	}
	return out
}

// ownChecks are those that a plan gives itself for a pair in a situation.
func ownChecks(p *press.Plan, on Pair, when Situation) []string {
	var out []string
	for _, own := range p.Quality.Reactions {
		if own.Lamps == OnOff(on.Arrival)+"-"+OnOff(on.Zone) && own.When == string(when) {
			out = append(out, own.Check)
		}
	}
	return out
}

// ReactionTo picks the list of a pair in a situation.
func ReactionTo(all []Reaction, on Pair, when Situation) (Reaction, bool) {
	i := slices.IndexFunc(all, func(x Reaction) bool { return x.Pair == on && x.Situation == when })
	if i < 0 {
		return Reaction{}, false
	}
	return all[i], true
}

// reactions makes the lists of one plan.
type reactions struct {
	say  Printer
	p    *press.Plan
	r    *press.Result
	s    press.Signals
	pos  Positions
	bare bool // say what to do, and not what it will show
}

// showing adds what will be seen to what is done.
func (m reactions) showing(do, seen string) string {
	if m.bare {
		return do + "."
	}
	return do + seen
}

// beforeOthers stop, hold back, or have to be seen before the next push.
var beforeOthers = []string{stopBare, newest, lampsOff}

const apartPart = "Set the part apart, marked, and do not press it again."

// refusedPart is what becomes of a refused part; several in a row stop the work, and so
// does a shift that has had no other.
func (say Printer) refusedPart(when Situation) string {
	if when == Run || when == Start {
		return "Stop, and hold these parts back. " + apartPart
	}
	return apartPart
}

func (m reactions) list(t PairText, when Situation) (part string, checks []string) {
	has := func(w string) bool { return slices.Contains(t.Words, w) }
	switch {
	case len(t.Words) == 0:
		return "Stop: nothing is pressed until the fault is found. " + apartPart, m.fault(t.Pair, when)
	case !t.Clear && (when == Run || when == Start):
		return "Stop, and hold these parts back. Measure them: the lamps do not tell which they are.", m.unclear(t, when)
	case !t.Clear:
		return "Set the part apart and measure it: the lamps do not tell which it is.", m.unclear(t, when)
	case has(press.Good) && when == Start:
		return "Keep the part back until these checks have passed. Then pass it on.", m.good(when)
	case has(press.Good) && when == Change:
		return "Take the part out and keep it back until these checks have passed.", m.good(when)
	case has(press.Good):
		return "Take the part out and pass it on.", m.good(when)
	case has(press.Long):
		return m.say.refusedPart(when), m.tall(t, when)
	}
	return m.say.refusedPart(when), m.short(t, when)
}

// master says what a part known to be good must show.
func (m reactions) master() string {
	at := m.r.Nominal()
	if m.s.Early(at) {
		return m.showing(FreshGood, ", and compare its reading with the plan's "+m.pos.At(at)+".")
	}
	a, z := m.s.At(at)
	seen := ": it must show " + Pair{a, z}.String()
	if a {
		seen += " and read " + shown{pos: m.pos, unsure: m.r.MasterWithin()}.within(at)
	}
	return m.showing(FreshGood, seen+".")
}

// unprobed says of a finished assembly that the probe is left out when it is pressed.
func (m reactions) unprobed(do string) string {
	if TwoLooks(m.r) {
		return "With the probe left out, " + lowerFirst(do)
	}
	return do
}

// setpoints says what must be set.
func (m reactions) setpoints() string {
	if m.bare {
		return "Compare what is set with the plan."
	}
	first := ""
	if TwoLooks(m.r) {
		first = "probe setting " + m.say.Setting(*m.r.Probe.Setting) + ", probe end " + m.pos.At(*m.r.Probe.End) + ", "
	}
	return "Compare what is set with the plan: " + first + "setting " + m.say.Setting(m.r.Force.Setting) + ", approach end " + m.pos.At(m.s.Start) +
		", push end " + m.pos.At(m.s.End) + ", zone " + m.pos.Bare(m.s.ZoneStart) + " to " + m.pos.At(m.s.ZoneEnd) + "."
}

// empty says what the push without an insert must show.
func (m reactions) empty() string {
	for _, f := range m.r.Faults {
		if f.Name == press.RowMissing && !f.Own && RefusedFirst(f) {
			return m.showing("Run the cycle once without an insert", ": the first look must refuse it, with "+m.say.lamps(f.Probe.Arrival, f.Probe.Zone)+".")
		}
		if f.Name == press.RowMissing && !f.Own && f.Arrival != nil {
			return m.showing("Push once without an insert", ": the lamps must show "+Pair{*f.Arrival, *f.Zone}.String()+".")
		}
	}
	return m.showing("Push once with an empty nest", ": "+m.say.emptyPush(m.r)+".")
}

func (m reactions) limits() string {
	s := m.r.Samples
	if s == nil {
		return m.showing(m.unprobed("Press limit samples on either side of the drawing's limits"), ": they must be refused.")
	}
	if m.bare {
		return m.unprobed("Press the limit samples.")
	}
	var out []string
	for _, x := range made(m.say.LimitSamples(m.p, m.r)) {
		if !x.Good {
			out = append(out, x.Heights(m.p)+" ("+lowerFirst(x.Name)+")")
		}
	}
	if len(out) == 0 {
		return m.unprobed("Press the limit samples.")
	}
	return m.unprobed("Press the limit samples: ") + and(out) + " must be refused."
}

const (
	fixture  = "Look at tool and nest: the right ones, firmly fixed, clean, not worn?"
	home     = "Reference the ram anew and compare the position at home with the plan."
	call     = "Call whoever keeps the plan; change no setting yourself."
	stopBare = "Stop. Test each lamp and its input by itself."
	// the first step with good lamps, whatever happened before
	lampsOff = "See both lamps off before the next push: a lamp that never goes off says nothing."
	interval = "Measure a part at the interval that your instructions ask for."
	newLot   = "After a new lot: measure one of its parts before it is pressed, and compare it with one of the lot before."
	newest   = "Quarantine every part back to the last one that is known to be good."
)

// OfNewLot tells whether a check has a meaning only where a lot was changed.
func OfNewLot(check string) bool { return check == newLot }

// FreshGood is the part by which the station is judged, and who presses it: nothing else
// is pressed until the cause is known.
const FreshGood = "Let the setter press a fresh part that was measured and is good"

// Anywhere tells whether a check that stands in one list is a sound one with other lamps
// too: to look into the nest always, tool and empty push after a change.
func (say Printer) Anywhere(check string, when Situation) bool {
	if strings.HasPrefix(check, "Look into the nest") || strings.HasPrefix(check, "Look at the part:") {
		return true
	}
	return when == Change && (check == fixture || strings.HasPrefix(check, "Push once"))
}

// LampsOff tells whether a check of these lists is that both lamps are off before a push.
func LampsOff(check string) bool { return check == lampsOff }

// ChangesNothing tells whether a check of these lists says that no setting is changed.
func ChangesNothing(check string) bool { return check == call }

func (m reactions) good(when Situation) []string {
	if missingPasses(m.r) {
		return append([]string{"See that " + m.say.PresenceCheck(m.p) + " says that an insert is there: these lamps do not."}, m.seated(when)...)
	}
	return m.seated(when)
}

func (m reactions) seated(when Situation) []string {
	switch when {
	case Change:
		return []string{m.empty(), m.limits(), "Measure the first good part: " + m.pos.Bare(m.p.Requirement.HeightLow) + " to " + m.pos.At(m.p.Requirement.HeightHigh) + "."}
	case Start:
		return []string{lampsOff, m.empty(), m.limits()}
	case Run:
		return []string{lampsOff, interval, m.empty()}
	}
	return []string{lampsOff, interval, "Nothing more: the part is good as far as these two lamps can tell."}
}

func (m reactions) tall(t PairText, when Situation) []string {
	under := []string{"a burr"}
	if isSuspect(t.suspects, press.RowChip) {
		under = []string{"a chip", "a burr"}
	}
	if isSuspect(t.suspects, press.RowTwoInserts) {
		under = append(under, "a second insert")
	}
	look := "Look for " + or(under) + " under the part and in the nest."
	straight := "Look whether the insert stands straight."
	if isSuspect(t.suspects, press.RowTight) || isSuspect(t.suspects, press.RowGap) {
		straight = "Look whether the insert stands straight and has reached its seat."
	}
	measure := m.showing("Measure its height", ": over "+m.pos.At(m.p.Requirement.HeightHigh)+" it is too tall by the drawing.")
	switch when {
	case Run:
		lot := ": parts that are too tall are the lot, not the station."
		if isSuspect(t.suspects, press.RowTight) {
			lot = ": parts that are too tall or too tight are the lot, not the station."
		}
		return []string{look, m.master(), m.showing("Measure three parts of this lot before they are pressed", lot)}
	case Change:
		return []string{fixture, newLot, m.setpoints(), m.master()}
	case Start:
		return []string{m.setpoints(), m.master(), home}
	}
	return []string{look, straight, measure}
}

// short is for parts that are too short, missing inserts, or both.
func (m reactions) short(t PairText, when Situation) []string {
	missing, short := slices.Contains(t.Words, press.Missing), slices.Contains(t.Words, press.Short)
	look := "Look at the part: is it the right insert, and whole?"
	if missing {
		look = "Look into the nest: is there an insert, and the right one?"
	}
	measure := m.showing("Measure its height", ": under "+m.pos.At(m.p.Requirement.HeightLow)+" it is too short by the drawing.")
	if !short {
		measure = "Look where the insert went: in the feeder, in the tool, on the floor."
	}
	ran := m.showing("Watch where the ram ends", ": at "+m.pos.At(m.s.End)+" nothing stopped it. Before that, something did: the force was not reported in time, or the arrival signal is at fault.")
	if t.Pair.Arrival {
		ran = m.showing("Watch where the ram stops", ": past the zone end at "+m.pos.At(m.s.ZoneEnd)+" the part lies deeper than the drawing allows.")
	}
	switch when {
	case Run:
		return []string{look, ran, m.master()}
	case Change: // a new lot first of all: what was put in is looked at before what holds it
		return []string{look, measure, fixture, m.setpoints()}
	case Start:
		last := home
		if stuck, ok := catalogued(m.r, press.RowArrivalStuckOff); ok && shows(stuck, t.Pair) {
			last = "Test the arrival input: it must come on when the ram is stopped by a good part."
		}
		return []string{m.setpoints(), m.master(), last}
	}
	return []string{look, measure, ran}
}

func (m reactions) fault(on Pair, when Situation) []string {
	stop := "Stop: no part of this plan leads to " + on.String() + ". Test each lamp and its input by itself."
	if m.bare {
		stop = stopBare
	}
	if when == Change || when == Start {
		return []string{stop, m.setpoints(), m.empty()}
	}
	return []string{stop, m.empty(), call}
}

func (m reactions) unclear(t PairText, when Situation) []string {
	measure := m.showing("Measure the part", ": these lamps stand for "+SayAll(t.Words)+".")
	if when == Change || when == Start {
		return []string{m.setpoints(), measure, call}
	}
	if when == Run {
		return []string{newest, measure, call}
	}
	return []string{measure, m.master(), call}
}
