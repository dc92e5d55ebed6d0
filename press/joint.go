package press

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
	raw     float64 // µm, smallest effective interference of room and service before it is cut at 0
	grip    float64 // N, smallest holding force of room and service
}

// push is the force that a fit demands on the way in: drag alone up to the
// pilot, then rising in a straight line to the seat.
type push struct {
	drag   float64 // N
	rise   float64 // N, from the pilot to the seat
	pilot  float64 // mm
	length float64 // mm engaged at the seat
	travel float64 // mm, press-in travel
}

// seat is the demand at the seat.
func (d push) seat() float64 { return d.drag + d.rise }

// stall gives the depth at which a force is used up before the seat is reached.
func (d push) stall(force float64) (z float64, stalled bool) {
	switch {
	case force >= d.seat():
		return 0, false
	case force < d.drag:
	default:
		z = d.pilot + d.length*(force-d.drag)/d.rise
	}
	return z, z < d.travel-slack
}

// Low, typical and high in a Triple.
const (
	low = iota
	mid
	high
)

// jointFigures computes what the joint demands, holds and suffers (model
// section 4).
func (w *work) jointFigures() {
	j, t := &w.p.Joint, w.parts.travel
	switch j.Kind {
	case Measured:
		forces := Triple{j.ForceLow, j.ForceTypical, j.ForceHigh}
		for i, f := range forces {
			w.joint.push[i] = push{rise: f, length: max(t, 0), travel: t}
		}
		w.r.Joint = &JointFigures{Demand: forces}
	case Interference:
		w.interference()
	default:
		// Touch: nothing is demanded and nothing can stall.
	}
}

func (w *work) interference() {
	j, t := &w.p.Joint, w.parts.travel
	w.joint.pilot = t - j.Engagement
	if j.Pilot != nil {
		w.joint.pilot = *j.Pilot
	} else if w.joint.pilot < 0 {
		w.joint.tooLong = w.joint.pilot < -slack
		w.joint.pilot = 0
	}
	rings := fit.Rings{
		Diameter: j.Diameter, HubOutside: j.Hub.OutsideDiameter, InsertBore: j.Insert.Bore,
		HubModulus: j.Hub.Modulus, HubPoisson: j.Hub.Poisson, InsertModulus: j.Insert.Modulus, InsertPoisson: j.Insert.Poisson,
	}
	in := fit.Push{Diameter: j.Diameter, Engagement: j.Engagement, Pilot: w.joint.pilot, Drag: j.Drag}
	w.joint.engaged = in.Engaged(t)

	i := j.interference()
	smoothing := j.smoothing()
	effective := triple(smoothing.Apply(i))
	pressure := each(effective, rings.Pressure)
	friction := Triple{j.FrictionLow, (j.FrictionLow + j.FrictionHigh) / 2, j.FrictionHigh}
	var demand Triple
	for k := range demand {
		grip := in.Grip(friction[k], pressure[k], t)
		w.joint.push[k] = push{drag: j.Drag, rise: grip, pilot: w.joint.pilot, length: w.joint.engaged, travel: t}
		demand[k] = j.Drag + grip
	}
	hold := func(p float64) float64 { return in.Grip(j.HoldingFriction, p, t) }

	least, most := j.serviceRange()
	service := smoothing.Raw(fit.Triple{Low: i.Low + least, High: i.High + most})
	holding, inService := each(pressure, hold), hold(rings.Pressure(max(0, service.Low)))
	w.joint.raw = math.Min(smoothing.Raw(i).Low, service.Low)
	w.joint.grip = math.Min(holding[low], inService)
	highest := math.Max(pressure[high], rings.Pressure(max(0, service.High)))

	w.r.Joint = &JointFigures{
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
