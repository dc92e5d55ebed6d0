package drill

import (
	"math"

	"ramplan/press"
	"ramplan/press/words"
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
		{ID: trapForce, Text: "Press the next part with the setting one step higher, and see what changes.", Reason: d.raise(), Grave: graveChange},
	}
	if d.plain(t) {
		return append(out, Choice{ID: trapGoOn, Text: "Nothing: with these lamps there is nothing to check.", Reason: d.says(t.Pair) + " A lamp that is stuck on shows the same."})
	}
	out = append(out, Choice{ID: trapGoOn, Text: "Wipe the nest and go on with the next part.", Grave: d.graveGoOn(t, when),
		Reason: d.says(t.Pair) + " That is " + d.orWords(t.Words) + ". Whoever goes on without looking for the cause gets it again with the next part."})
	if !t.Pair.Arrival || !t.Pair.Zone {
		out = append(out, Choice{ID: trapWiden, Text: "Move the zone until both lamps come on.", Reason: d.widen(), Grave: graveChange})
	}
	return append(out,
		Choice{ID: trapAgain, Text: "Press the part once more.", Reason: d.again(), Grave: d.graveAgain(t)},
		Choice{ID: trapPass, Text: "Pass the part on.", Reason: d.says(t.Pair) + " That is " + d.orWords(t.Words) + ". Only a part that is surely good is passed on.", Grave: d.passes(t.Pair)})
}

// graveGoOn says what going on with some lamps is: harmless after one part, not after
// several of them, and never after a fault.
func (d *Drill) graveGoOn(t words.PairText, when words.Situation) string {
	switch {
	case len(t.Words) == 0:
		return graveGoOn
	case d.passes(t.Pair) != "" && (when == words.Run || when == words.Start):
		return graveRow
	}
	return ""
}

// graveAgain says what a second push does with some lamps.
func (d *Drill) graveAgain(t words.PairText) string {
	if len(t.Words) == 0 {
		return graveGoOn
	}
	return graveAgain
}

func (d *Drill) byHand() string {
	return d.hands() + ". The lamps are no safety function."
}

// again says what a second push would show: what was pressed before is seated.
func (d *Drill) again() string {
	for i, f := range d.r.Faults {
		if f.Own || f.Name != press.RowAlreadyPressed || f.Arrival == nil {
			continue
		}
		if words.RefusedFirst(f) {
			return "A part that is pressed a second time is seated already. The probe finds nothing to stall in and refuses it: that says nothing about the first push."
		}
		on := d.shows(d.eventOf(i))
		s := "A part that is pressed a second time may be seated by then, and may show " + on.String() + ", whatever it showed before"
		if on == (words.Pair{Arrival: true, Zone: true}) {
			return s + ": a spoiled joint would pass as good."
		}
		return s + ": that says nothing about the first push."
	}
	return "The same part reads the same again, within " + d.pos.Length(d.unsure()) + ": a second push shows nothing new and may spoil the part."
}

// widen says what the drawing thinks of another zone.
func (d *Drill) widen() string {
	good := d.r.Window.GoodRange
	s := "The zone is part of the plan. By the drawing, readings from " + d.at(good[0]) + " to " + d.at(good[1]) + " are good"
	if w := d.r.Window.Overlap; w != nil {
		s += "; both lamps are on from " + d.pos.Bare(w[0]) + " to " + d.pos.At(w[1])
	}
	return s + ". A zone that is moved to make one part look good lets others pass that are taller than " +
		d.pos.At(d.p.Requirement.HeightHigh) + " or shorter than " + d.pos.At(d.p.Requirement.HeightLow) + "."
}

// raise says what more force does to this part and to the reading.
func (d *Drill) raise() string {
	f := d.r.Force
	s := "The setting of " + words.Setting(f.Setting) + " is part of the plan. A strong ram pushes " + words.Force(f.High) + " with it; part and tool bear " + words.Force(f.Cap) + " at most."
	for i, row := range d.r.Faults {
		if !row.Own && row.Name == press.RowSettingHigh && row.Reading != nil {
			s += " One step more moves the reading of a nominal part by " + d.pos.Length(math.Abs(*d.r.Faults[i].Reading-d.r.Nominal())) + ", so every verdict moves with it."
		}
	}
	return s
}
