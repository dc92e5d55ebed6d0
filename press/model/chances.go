package model

import (
	"math"

	"ramplan/press/stack"
)

// Chances are how likely each pair of signals is where something comes to rest
// once: over the error of a reading at the plan's own setting, as the detection of
// the fault catalogue is. They add up to 1.
type Chances struct {
	Early float64       // met before the push begins: nobody knows what the signals say
	Pairs [2][2]float64 // arrival off or on, zone off or on
}

// Of gives the chance of one pair.
func (c Chances) Of(arrival, zone bool) float64 { return c.Pairs[index(arrival)][index(zone)] }

func index(on bool) int {
	if on {
		return 1
	}
	return 0
}

// ChancesOf tells what the signals say of a row of the fault catalogue. It is
// false for a result without signals and for a row that there is not.
func (r *Outcome) ChancesOf(row int) (Chances, bool) {
	w := r.inside()
	if row < 0 || row >= len(w.visits) || !w.withRisk {
		return Chances{}, false
	}
	return w.chances(w.visits[row]), true
}

// ChancesAt tells what the signals say where a part would stop the ram at a
// reading without error, mm.
func (r *Outcome) ChancesAt(reading float64) (Chances, bool) {
	if !r.inside().zone.known || !r.inside().withRisk {
		return Chances{}, false
	}
	return r.inside().chances(visit{occasion: restsAt(reading)}), true
}

// PartChances tells what the signals say of all parts, seated at a station whose readings
// lie off the planned ones by a shift, mm. It is false for a result without signals, and
// where nothing is seated or the nominal part stalls.
func (r *Outcome) PartChances(shift float64) (Chances, bool) {
	w := r.inside()
	if !w.zone.known || !w.parts.pressable() || w.seated.stalled {
		return Chances{}, false
	}
	spread := append([]stack.Term{w.p.Station.drift()}, w.parts.read...)
	e := stack.NewError(w.seated.sigma, append(spread, w.parts.product...))
	return w.spread(e, visit{occasion: occasion{reading: w.r.Travel.SeatReading + shift, contact: math.Inf(1)}}), true
}

// chances weighs the errors of one reading.
func (w *work) chances(v visit) Chances { return w.spread(w.chance.window.Error, v) }

// spread weighs the stretches of readings on which the signals stay the same.
func (w *work) spread(e *stack.Sum, v visit) Chances {
	z := w.zone.at
	var c Chances
	add := func(share float64, arrival, zone bool) {
		if v.stuck.Arrival != nil {
			arrival = *v.stuck.Arrival
		}
		if v.stuck.Zone != nil {
			zone = *v.stuck.Zone
		}
		c.Pairs[index(arrival)][index(zone)] += share
	}
	switch {
	case v.nowhere:
		add(1, false, z.InZone(z.End))
	case z.Early(v.contact):
		c.Early = 1
	case e.Point() && z.Early(v.reading):
		c.Early = 1
	case e.Point():
		arrival, zone := z.At(v.reading)
		add(1, arrival, zone)
	default:
		below := func(x float64) float64 { return e.CDF(x - v.reading) }
		end := max(z.Start, z.End)
		first, last := min(max(z.Start, z.ZoneStart), end), min(max(z.Start, z.ZoneEnd), end)
		last = max(first, last)
		c.Early = below(z.Start)
		add(below(first)-below(z.Start), true, false)
		add(below(last)-below(first), true, true)
		add(below(end)-below(last), true, false)
		add(1-below(end), false, z.InZone(z.End))
	}
	return c
}
