package model

import (
	"math"

	"ramplan/press/fit"
)

// joint is what pressing in takes, and what the fit does.
type joint struct {
	push    [3]push // low, typical, high
	pilot   float64 // mm
	tooLong bool    // the engaged length does not fit into the travel
	engaged float64 // mm at the seat
	rings   fit.Rings
	raw     float64 // µm, smallest effective interference of room and service before it is cut at 0
	grip    float64 // N, smallest holding force of room and service
}

// push is the force that pressing in demands on the way: drag and the
// counterforce, which rises in a straight line from the contact to the seat, and
// from the pilot on the fit, which rises with the engaged length.
type push struct {
	drag    float64 // N
	counter float64 // N at the seat, of what pushes back
	rise    float64 // N, of the fit, from the pilot to the seat
	pilot   float64 // mm
	length  float64 // mm engaged at the seat
	travel  float64 // mm, press-in travel
}

// seat is the demand at the seat.
func (d push) seat() float64 { return d.drag + d.counter + d.rise }

// at gives the demand at a depth.
func (d push) at(z float64) float64 {
	return d.drag + d.counter*d.share(z, 0, d.travel) + d.rise*d.share(z, d.pilot, d.length)
}

// share is how much of a rise has come at a depth. Where it has no way, all of it
// comes at the seat.
func (d push) share(z, from, way float64) float64 {
	switch {
	case way > 0:
		return math.Min(math.Max(z-from, 0), way) / way
	case z >= d.travel:
		return 1
	}
	return 0
}

// stall gives the depth at which a force is used up before the seat is reached.
func (d push) stall(force float64) (z float64, stalled bool) {
	if force >= d.seat() {
		return 0, false
	}
	z = d.depth(force)
	return z, z < d.travel-slack
}

// depth is the greatest depth at which no more than a force is demanded, for a
// force below the demand at the seat.
func (d push) depth(force float64) float64 {
	if force < d.drag {
		return 0
	}
	from := 0.0
	for _, to := range []float64{d.pilot, d.pilot + d.length, d.travel} {
		to = math.Min(to, d.travel)
		if to <= from {
			continue
		}
		below, above := d.at(from), d.at(to)
		if above > force {
			return from + (to-from)*math.Max(0, force-below)/(above-below)
		}
		from = to
	}
	return from
}

// Low, typical and high in a Triple.
const (
	low = iota
	mid
	high
)

// StandInPilot is the pilot of an interference joint for which none was given, mm.
func (r *Outcome) StandInPilot() float64 {
	return tidy(math.Max(0, r.Stack.PressInTravel-r.work.p.Joint.Engagement))
}

// pressIn computes what the joint demands on its way, holds and suffers (model
// section 4).
func (j *Joint) pressIn(travel float64) (joint, *JointFigures) {
	var out joint
	switch j.Kind {
	case Measured:
		forces := Triple{j.ForceLow, j.ForceTypical, j.ForceHigh}
		for i, f := range forces {
			out.push[i] = push{counter: j.Counterforce, rise: f, length: max(travel, 0), travel: travel}
			forces[i] = out.push[i].seat()
		}
		return out, &JointFigures{Demand: forces}
	case Interference:
		return j.interfere(travel)
	}
	for i := range out.push { // nothing is pressed in, but something may push back
		out.push[i] = push{counter: j.Counterforce, travel: travel}
	}
	return out, nil
}

func (j *Joint) interfere(travel float64) (joint, *JointFigures) {
	var out joint
	out.pilot = travel - j.Engagement
	if j.Pilot != nil {
		out.pilot = *j.Pilot
	} else if out.pilot < 0 {
		out.tooLong = out.pilot < -slack
		out.pilot = 0
	}
	rings := j.Rings()
	out.rings = rings
	in := fit.Push{Diameter: j.Diameter, Engagement: j.Engagement, Pilot: out.pilot, Drag: j.Drag}
	out.engaged = in.Engaged(travel)

	i := j.interference()
	smoothing := j.smoothing()
	effective := triple(smoothing.Apply(i))
	pressure := each(effective, rings.Pressure)
	friction := Triple{j.FrictionLow, (j.FrictionLow + j.FrictionHigh) / 2, j.FrictionHigh}
	var demand Triple
	for k := range demand {
		grip := in.Grip(friction[k], pressure[k], travel)
		out.push[k] = push{drag: j.Drag, counter: j.Counterforce, rise: grip, pilot: out.pilot, length: out.engaged, travel: travel}
		demand[k] = out.push[k].seat()
	}
	hold := func(p float64) float64 { return in.Grip(j.HoldingFriction, p, travel) }

	least, most := j.serviceRange()
	service := smoothing.Raw(fit.Triple{Low: i.Low + least, High: i.High + most})
	holding, inService := each(pressure, hold), hold(rings.Pressure(max(0, service.Low)))
	out.raw = math.Min(smoothing.Raw(i).Low, service.Low)
	out.grip = math.Min(holding[low], inService)
	highest := math.Max(pressure[high], rings.Pressure(max(0, service.High)))

	return out, &JointFigures{
		Interference:      ptr(triple(i)),
		Effective:         &effective,
		Pressure:          &pressure,
		Demand:            demand,
		Holding:           &holding,
		HoldingService:    &inService,
		HubHoop:           ptr(each(pressure, rings.HubHoop)),
		InsertHoop:        ptr(each(pressure, rings.InsertHoop)),
		BoreClosure:       ptr(each(pressure, rings.BoreClosure)),
		HubGrowth:         ptr(each(pressure, rings.HubGrowth)),
		HubUtilisation:    ptr(highest / rings.HubLimit(j.Hub.Yield)),
		InsertUtilisation: ptr(highest / rings.InsertLimit(j.Insert.Yield)),
		HubMises:          ptr(rings.HubMises(highest)),
		InsertMises:       ptr(rings.InsertMises(highest)),
	}
}

// Rings are the two rings of an interference joint.
func (j *Joint) Rings() fit.Rings {
	return fit.Rings{
		Diameter: j.Diameter, HubOutside: j.Hub.OutsideDiameter, InsertBore: j.Insert.Bore,
		HubModulus: j.Hub.Modulus, HubPoisson: j.Hub.Poisson, InsertModulus: j.Insert.Modulus, InsertPoisson: j.Insert.Poisson,
	}
}

// Pilot is the depth at which the fit of an interference joint begins, given or standing
// in, mm.
func (r *Outcome) Pilot() float64 { return r.work.joint.pilot }

// interference is shaft less hole, µm.
func (j *Joint) interference() fit.Triple {
	return fit.Interference(fit.Limits{Low: j.Hole[0], High: j.Hole[1]}, fit.Limits{Low: j.Shaft[0], High: j.Shaft[1]})
}

func (j *Joint) smoothing() fit.Smoothing {
	return fit.Smoothing{Least: j.SmoothingLeast, Most: j.SmoothingMost, RzSum: j.Hub.RoughnessRz + j.Insert.RoughnessRz}
}

// serviceRange gives by how much service changes the interference at least and
// at most, µm.
func (j *Joint) serviceRange() (least, most float64) {
	thermal := fit.Thermal{Diameter: j.Diameter, InsertExpansion: j.Insert.Expansion, HubExpansion: j.Hub.Expansion}
	cold, hot := thermal.Change(j.ServiceChange[0]), thermal.Change(j.ServiceChange[1])
	return math.Min(cold, hot), math.Max(cold, hot)
}

func triple(t fit.Triple) Triple { return Triple{t.Low, t.Mean, t.High} }

func each(t Triple, f func(float64) float64) Triple {
	return Triple{f(t[0]), f(t[1]), f(t[2])}
}
