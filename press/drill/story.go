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
func (d *Drill) high(mm float64) string { return words.Unit(d.Height(mm), "mm") }

// Height writes a height, or a reading beside it, without its unit.
func (d *Drill) Height(mm float64) string { return words.Fixed(mm, d.pos.Decimals()) }

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
	decimals := d.pos.Decimals()
	for scale := math.Pow10(decimals); decimals < 3 && !same(math.Round(mm*scale)/scale); decimals++ {
		scale *= 10
	}
	return words.Unit(words.Fixed(mm, decimals), "mm")
}

// typed writes a position as it was typed in.
func (d *Drill) typed(mm float64) string { return words.Unit(d.pos.Set(mm), "mm") }

// story says why the lamps show what they show.
func (d *Drill) story(e event) string {
	if e.early {
		return "The tool meets the part in the fast approach, before the push begins at " + d.pos.At(d.s.Start) +
			". There the force is not limited, and nobody can say what the lamps show. Do not try it: the approach strikes the part. If it happens, stop, do not start again, and call the setter: " + words.AfterAStrike
	}
	if e.first != nil {
		return d.firstStory(e)
	}
	met := !e.nowhere && d.s.Arrives(e.reading)
	var out []string
	switch {
	case e.arrival != nil:
		out = append(out, "The arrival signal is stuck "+words.OnOff(*e.arrival)+", whatever the ram does.")
	case met:
		out = append(out, "Something stops the ram at "+d.at(e.reading)+d.beforeEnd(e.reading)+": arrival comes on.")
	default:
		out = append(out, "Nothing stops the ram before the push end at "+d.pos.At(d.s.End)+": arrival stays off.")
	}
	if e.zone != nil {
		return strings.Join(append(out, "The zone signal is stuck "+words.OnOff(*e.zone)+", wherever the ram stands."), " ")
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
		return ", the push end"
	}
	return ", before the push end at " + d.pos.At(d.s.End)
}

// where says how the ram stands to the zone; the position may have been named.
func (d *Drill) where(x float64, named bool) string {
	rests := "The ram rests at " + d.at(x)
	if named {
		rests = "The ram rests there"
	}
	if d.s.InZone(x) {
		return rests + ", inside the zone from " + d.pos.Bare(d.s.ZoneStart) + " to " + d.pos.At(d.s.ZoneEnd) + ": zone is on."
	}
	if x < d.s.ZoneStart {
		return rests + ", before the zone start at " + d.pos.At(d.s.ZoneStart) + ": zone is off."
	}
	return rests + ", past the zone end at " + d.pos.At(d.s.ZoneEnd) + ": zone is off."
}

// says tells what a pair of lamps says about the ram, with the plan's figures.
func (d *Drill) says(on words.Pair) string {
	s := "Arrival is " + words.OnOff(on.Arrival)
	if on.Arrival {
		s += ": something stopped the ram, at the push end of " + d.pos.At(d.s.End) + " or before"
	} else {
		s += ": nothing stopped the ram, so by plan it ran to the push end at " + d.pos.At(d.s.End)
	}
	s += ". Zone is " + words.OnOff(on.Zone)
	inside := " between " + d.pos.Bare(d.s.ZoneStart) + " and " + d.pos.At(d.s.ZoneEnd) + "."
	if on.Zone {
		s += ": the ram stands" + inside
	} else {
		s += ": the ram does not stand" + inside
	}
	if in := d.s.InZone(d.s.End); !on.Arrival && on.Zone != in {
		side := "outside"
		if in {
			side = "inside"
		}
		s += " But the push end lies " + side + " the zone, so both cannot be true: a signal or a set value is wrong."
	}
	return s
}

// differs says which lamp an answer has wrong.
func differs(said, is words.Pair) string {
	var out []string
	if said.Arrival != is.Arrival {
		out = append(out, "Arrival is "+words.OnOff(is.Arrival)+", not "+words.OnOff(said.Arrival)+".")
	}
	if said.Zone != is.Zone {
		out = append(out, "Zone is "+words.OnOff(is.Zone)+", not "+words.OnOff(said.Zone)+".")
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
