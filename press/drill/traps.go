package drill

import (
	"math"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/press/words/lesson"
)

// The traps: what people under time pressure do, and what it leads to here.
const (
	trapAgain = "again"
	trapPass  = "pass"
	trapWiden = "widen"
	trapForce = "force"
	trapGoOn  = "go-on"
)

// traps are answers that are wrong with a pair, whatever happened before; what
// happened decides how grave it is to go on.
func (d *Drill) traps(t words.PairText, when words.Situation) []Choice {
	out := []Choice{
		{ID: trapForce, Text: d.say.TrapsForce(), Reason: d.raise(), Grave: graveChange},
	}
	if d.plain(t) {
		return append(out, Choice{ID: trapGoOn, Text: d.say.TrapsGoOn(), Reason: d.say.TrapsGoOnWhy(d.says(t.Pair))})
	}
	out = append(out, Choice{ID: trapGoOn, Text: d.say.TrapsGoOnWipe(), Grave: d.graveGoOn(t, when),
		Reason: d.say.TrapsGoOnWipeWhy(d.says(t.Pair), d.orWords(t.Words))})
	if !t.Pair.Arrival || !t.Pair.Zone {
		out = append(out, Choice{ID: trapWiden, Text: d.say.TrapsWiden(), Reason: d.widen(), Grave: graveChange})
	}
	return append(out,
		Choice{ID: trapAgain, Text: d.say.DoAgainPress(), Reason: d.again(), Grave: d.graveAgain(t)},
		Choice{ID: trapPass, Text: d.say.TrapsPass(), Reason: d.say.TrapsPassWhy(d.says(t.Pair), d.orWords(t.Words)), Grave: d.passes(t.Pair)})
}

// graveGoOn says what going on with some lamps is: harmless after one part, not after
// several of them, and never after a fault.
func (d *Drill) graveGoOn(t words.PairText, when words.Situation) lesson.Grave {
	switch {
	case len(t.Words) == 0:
		return graveGoOn
	case d.passes(t.Pair) != "" && (when == words.Run || when == words.Start):
		return graveRow
	}
	return ""
}

// graveAgain says what a second push does with some lamps.
func (d *Drill) graveAgain(t words.PairText) lesson.Grave {
	if len(t.Words) == 0 {
		return graveGoOn
	}
	return graveAgain
}

func (d *Drill) byHand() string {
	return d.say.HandsAndLamps(d.hands())
}

// again says what a second push would show: what was pressed before is seated.
func (d *Drill) again() string {
	for i, f := range d.r.Faults {
		if f.Own || f.Name != press.RowAlreadyPressed || f.Arrival == nil {
			continue
		}
		if words.RefusedFirst(f) {
			return d.say.AgainAfterProbe()
		}
		on := d.shows(d.eventOf(i))
		s := d.say.AgainMayShow(on)
		if on == (words.Pair{Arrival: true, Zone: true}) {
			return d.say.SpoiledWouldPass(s)
		}
		return d.say.SaysNothingOfTheFirst(s)
	}
	return d.say.ReadsTheSameAgain(d.unsure())
}

// widen says what the drawing thinks of another zone.
func (d *Drill) widen() string {
	good := d.r.Window.GoodRange
	s := d.say.ZoneIsOfThePlan(d.at(good[0]), d.at(good[1]))
	if w := d.r.Window.Overlap; w != nil {
		s += d.say.BothOnFrom(w[0], w[1])
	}
	return d.say.MovedZoneLetsPass(s, d.p.Requirement.HeightHigh, d.p.Requirement.HeightLow)
}

// raise says what more force does to this part and to the reading.
func (d *Drill) raise() string {
	f := d.r.Force
	s := d.say.SettingIsOfThePlan(f.Setting, f.High, f.Cap)
	for i, row := range d.r.Faults {
		if !row.Own && row.Name == press.RowSettingHigh && row.Reading != nil {
			s += d.say.OneStepMore(math.Abs(*d.r.Faults[i].Reading - d.r.Nominal()))
		}
	}
	return s
}
