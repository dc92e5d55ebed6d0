package drill

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// event is what happens to the ram in one push.
type event struct {
	nowhere       bool    // nothing stops it
	reading       float64 // mm, otherwise
	early         bool    // met before the push begins
	arrival, zone *bool   // stuck signals

	first *words.Pair // the lamps of the first look that refuses it; nil where the push follows
}

// shows gives the lamps after an event; early ones have none.
func (d *Drill) shows(e event) words.Pair {
	if e.first != nil {
		return *e.first
	}
	on := words.Pair{Zone: d.s.InZone(d.s.End)}
	if !e.nowhere {
		on.Arrival, on.Zone = d.s.At(e.reading)
	}
	if e.arrival != nil {
		on.Arrival = *e.arrival
	}
	if e.zone != nil {
		on.Zone = *e.zone
	}
	return on
}

// high writes a height as finely as the station shows its positions.
func (d *Drill) high(mm float64) string { return d.say.At(mm) }

// Height writes a height, or a reading beside it, without its unit.
func (d *Drill) Height(mm float64) string { return d.say.Bare(mm) }

// at writes a reading as the station shows it, and finer only where the rounded one
// would stand on another side of what decides: zone, push end, drawing.
func (d *Drill) at(mm float64) string {
	good := d.r.Window.GoodRange
	edges := []float64{d.s.Start, d.s.End, d.s.ZoneStart, d.s.ZoneEnd, good[0], good[1]}
	same := func(x float64) bool {
		return !slices.ContainsFunc(edges, func(edge float64) bool {
			return cmp.Compare(x, edge) != cmp.Compare(mm, edge) && math.Abs(mm-edge) > 1e-9
		})
	}
	decimals := d.say.Decimals()
	for scale := math.Pow10(decimals); decimals < 3 && !same(math.Round(mm*scale)/scale); decimals++ {
		scale *= 10
	}
	return d.say.With(decimals).At(mm)
}

// typed writes a position as it was typed in.
func (d *Drill) typed(mm float64) string { return d.say.SetAt(mm) }

// story says why the lamps show what they show.
func (d *Drill) story(e event) string {
	if e.early {
		return d.say.MetInTheApproach(d.s.Start, words.AfterAStrike)
	}
	if e.first != nil {
		return d.firstStory(e)
	}
	met := !e.nowhere && d.s.Arrives(e.reading)
	var out []string
	switch {
	case e.arrival != nil:
		out = append(out, d.say.ArrivalStuck(*e.arrival))
	case met:
		out = append(out, d.say.StoppedAt(d.at(e.reading), d.beforeEnd(e.reading)))
	default:
		out = append(out, d.say.NotStopped(d.s.End))
	}
	if e.zone != nil {
		return strings.Join(append(out, d.say.ZoneStuck(*e.zone)), " ")
	}
	rest := d.s.End
	if met {
		rest = e.reading
	}
	return strings.Join(append(out, d.where(rest, e.arrival == nil && !met)), " ")
}

// beforeEnd says where a reading stands to the push end that it does not pass.
func (d *Drill) beforeEnd(reading float64) string {
	if d.s.End-reading < 1e-9 {
		return d.say.WhichIsThePushEnd()
	}
	return d.say.BeforeThePushEnd(d.s.End)
}

// where says how the ram stands to the zone; the position may have been named.
func (d *Drill) where(x float64, named bool) string {
	rests := d.say.RestsAt(d.at(x))
	if named {
		rests = d.say.RestsThere()
	}
	if d.s.InZone(x) {
		return d.say.RestsInsideZone(rests, d.s.ZoneStart, d.s.ZoneEnd)
	}
	if x < d.s.ZoneStart {
		return d.say.RestsBeforeZone(rests, d.s.ZoneStart)
	}
	return d.say.RestsPastZone(rests, d.s.ZoneEnd)
}

// says tells what a pair of lamps says about the ram, with the plan's figures.
func (d *Drill) says(on words.Pair) string {
	s := d.say.ArrivalIs(on.Arrival)
	if on.Arrival {
		s += d.say.SinceStopped(d.s.End)
	} else {
		s += d.say.SinceNotStopped(d.s.End)
	}
	s += d.say.ZoneIs(on.Zone)
	inside := " between " + d.say.Bare(d.s.ZoneStart) + " and " + d.say.At(d.s.ZoneEnd) + "."
	if on.Zone {
		s += d.say.SinceItStands(inside)
	} else {
		s += d.say.SinceItStandsNot(inside)
	}
	if in := d.s.InZone(d.s.End); !on.Arrival && on.Zone != in {
		side := "outside"
		if in {
			side = "inside"
		}
		s += d.say.CannotBothBeTrue(side)
	}
	return s
}

// differs says which lamp an answer has wrong.
func (d *Drill) differs(said, is words.Pair) string {
	var out []string
	if said.Arrival != is.Arrival {
		out = append(out, d.say.ArrivalIsNot(is.Arrival, said.Arrival))
	}
	if said.Zone != is.Zone {
		out = append(out, d.say.ZoneIsNot(is.Zone, said.Zone))
	}
	return strings.Join(out, " ")
}

// eventOf is a row of the fault catalogue as an event.
func (d *Drill) eventOf(i int) event {
	f := d.r.Faults[i]
	if f.Verdict == press.EarlyContact {
		return event{early: true}
	}
	e := event{nowhere: f.Reading == nil}
	if f.Reading != nil {
		e.reading = *f.Reading
	}
	e.arrival, e.zone = f.Case().Stuck.Arrival, f.Case().Stuck.Zone
	if words.RefusedFirst(f) {
		e.first = &words.Pair{Arrival: *f.Probe.Arrival, Zone: *f.Probe.Zone}
	}
	return e
}
