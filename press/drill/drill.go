package drill

import (
	"errors"
	"hash/fnv"
	"math/rand/v2"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/press/words/lesson"
)

// A Kind is a kind of exercise.
type Kind string

// The kinds of exercise.
const (
	Read    Kind = "read"    // the lamps are shown: what is the part?
	Act     Kind = "act"     // the lamps are shown: what is to be done?
	Predict Kind = "predict" // the part is shown: what will the lamps be?
	React   Kind = "react"   // lamps and recent history: what to check first, and next
	Zone    Kind = "zone"    // set the zone so that some parts are judged rightly
	Blind   Kind = "blind"   // what the lamps cannot find
	Safe    Kind = "safe"    // what no lamp makes safe
)

// Kinds are all kinds, in the order in which they are learned.
var Kinds = []Kind{Read, Act, Safe, Predict, React, Blind, Zone}

// Levels: 1 has the lamps only, Levels has everything.
const Levels = 4

// A Drill is the exercises of one plan.
type Drill struct {
	p    *press.Plan
	r    *press.Result
	s    press.Signals
	say  lesson.Words
	list []words.Reaction

	items []item
	why   map[Kind]string // why a kind is not possible
	known map[string]int
}

// item is an exercise that can be made: its key, and how.
type item struct {
	key    string
	kind   Kind
	level  int
	topics []string // what it asks or tells; no two items of a set share one
	make   func(rng *rand.Rand) Exercise
}

// ErrNoSignals is the refusal of a plan whose lamps have no meaning yet.
var ErrNoSignals = errors.New("drill: this plan has no push end or no zone yet, so its lamps mean nothing that could be practised")

// New makes the drill of a plan, in the words of this printer. The reactions are those of [words.Reactions], or
// the plan's own list in their form. It is refused with one sentence where the
// plan has no signals.
func New(say words.Printer, p *press.Plan, r *press.Result, reactions []words.Reaction) (*Drill, error) {
	s, ok := r.Signals()
	if !ok {
		return nil, ErrNoSignals
	}
	r = judged(r)
	d := &Drill{p: p, r: r, s: s, say: lesson.Of(say, p), list: withAsked(reactions), why: map[Kind]string{}, known: map[string]int{}}
	d.readItems()
	d.actItems()
	d.lampItems()
	d.upkeepItems()
	d.handlingItems()
	d.firstLookItems()
	d.handsItems()
	d.predictItems()
	d.reactItems()
	d.blindItems()
	d.zoneItems()
	for i, it := range d.items {
		d.known[it.key] = i
	}
	return d, nil
}

// withAsked fills in how a list is asked for where it does not say.
func withAsked(list []words.Reaction) []words.Reaction {
	list = slices.Clone(list)
	for i := range list {
		if len(list[i].Asked) != len(list[i].Checks) {
			list[i].Asked = list[i].Checks
		}
	}
	return list
}

func (d *Drill) add(kind Kind, level int, key string, how func(*rand.Rand) Exercise, topics ...string) {
	d.items = append(d.items, item{key, kind, level, append(topics, key), how})
}

// Impossible says which kinds of exercise this plan does not allow, and why.
func (d *Drill) Impossible() map[Kind]string { return d.why }

// Keys are the items of a level and of those below it.
func (d *Drill) Keys(level int) []string {
	var out []string
	for _, it := range d.items {
		if it.level <= level {
			out = append(out, it.key)
		}
	}
	return out
}

// topicsOf gives what an item asks or tells.
func (d *Drill) topicsOf(key string) []string { return d.items[d.known[key]].topics }

// KindOf gives the kind of an item; it is empty for an unknown one.
func (d *Drill) KindOf(key string) Kind {
	if i, ok := d.known[key]; ok {
		return d.items[i].kind
	}
	return ""
}

// Exercise makes an item. It is false for a key that this plan does not have,
// such as one of an older revision.
func (d *Drill) Exercise(key string, seed uint64) (Exercise, bool) {
	i, ok := d.known[key]
	if !ok {
		return Exercise{}, false
	}
	it := d.items[i]
	e := it.make(random(seed, key))
	e.Key, e.Kind, e.Level, e.say = it.key, it.kind, it.level, d.say
	return e, true
}

// random is the source of chance of one thing in one seed.
func random(seed uint64, what string) *rand.Rand {
	h := fnv.New64a()
	_, _ = h.Write([]byte(what))
	return rand.New(rand.NewPCG(seed, h.Sum64()))
}

// hands says why no hand goes into the work space.
func (d *Drill) hands() string {
	return d.say.HandsOut(d.r, d.r.Force.High)
}

// Notices are what a learner must be told before the first exercise.
func (d *Drill) Notices() []string {
	return append([]string{
		d.hands() + ".",
		d.say.LampsAreNoSafety(),
		d.say.WorksGoFirst(),
	}, d.ofThisPlan()...)
}

// BriefNotices are what stands under questions that the cautions would answer.
func (d *Drill) BriefNotices() []string {
	return append([]string{d.say.BriefCaution()}, d.ofThisPlan()...)
}

// ofThisPlan are the notices about one plan.
func (d *Drill) ofThisPlan() []string {
	var out []string
	if n := d.r.Count(press.Blocker); n > 0 {
		out = append(out, d.say.PracticeOnly(d.r))
	}
	if words.TwoLooks(d.r) {
		out = append(out, d.say.TwoLooksAtOnePart())
	}
	if d.r.Verdict.Ambiguous {
		out = append(out, d.say.SeveralAnswersRight())
	}
	return out
}
