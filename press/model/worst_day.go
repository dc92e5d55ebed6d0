package model

import (
	"math"

	"ramplan/press/risk"
	"ramplan/press/stack"
)

// A WorstDay is how a plan fares when not all goes as on average. What rests on the
// shares of seated parts is nil where the nominal part stalls.
type WorstDay struct {
	Average            *Shares      `json:"average"` // stations and days mixed
	Limit              float64      `json:"limit"`   // mm, B, by which all readings of a worst day are off
	Worst              *WorstShares `json:"worst"`
	Terms              []DayTerm    `json:"terms"`                 // each at its limit by itself
	UnseatedWeakDayPPM float64      `json:"unseated_weak_day_ppm"` // on a day of a weak ram
	Shift              [][3]float64 `json:"shift"`                 // mm by which the mean height is off, consumer ppm, producer ppm
	Spread             [][3]float64 `json:"spread"`                // factor on the parts' tolerances, consumer ppm, producer ppm
	Wear               *Wear        `json:"wear"`

	Kept      *Kept        `json:"-"` // nil: a target is missed as things are
	WearCurve [][3]float64 `json:"-"` // mm, consumer ppm, producer ppm, up to the drawing's width
}

// Shares are the two risks of all parts.
type Shares struct {
	ConsumerPPM float64 `json:"consumer_ppm"`
	ProducerPPM float64 `json:"producer_ppm"`
}

// WorstShares are the larger of both signs, each with the side to which all readings are
// then off.
type WorstShares struct {
	Shares
	ConsumerToward string `json:"consumer_toward"` // TowardDeeper or TowardShallower
	ProducerToward string `json:"producer_toward"`
}

// Toward which side the readings of a day are off.
const (
	TowardDeeper    = "deeper"
	TowardShallower = "shallower"
)

// DayTerm is what is the same for every part of a day, at its limit by itself.
type DayTerm struct {
	Name        string   `json:"name"`
	Limit       float64  `json:"limit"` // mm in the reading
	ConsumerPPM *float64 `json:"consumer_ppm"`
	ProducerPPM *float64 `json:"producer_ppm"`
}

// Wear is by how much the nest face may sink before a target is missed, mm; nil: by no
// wear up to twice the drawing's width.
type Wear struct {
	FalseAccept *float64 `json:"false_accept"`
	FalseReject *float64 `json:"false_reject"`
}

// WorstDay gives the worst day of a plan; nil where the window is not known. It is no part
// of the evaluation, and worked out when it is asked for first.
func (r *Outcome) WorstDay() *WorstDay {
	w := r.work
	if w == nil || !w.zone.known || !w.parts.pressable() {
		return nil
	}
	w.onDay.Do(func() { w.day = w.worstDay() })
	return w.day
}

// days are those of a window that is known.
func (w *work) days() *days {
	d := &days{in: w.p, q: &w.parts, s: &w.seated}
	d.window = risk.Window{Low: w.zone.first, High: w.zone.last, Empty: !w.zone.overlap}
	d.all = w.p.population(d.q, d.s)
	return d
}

// onWorstDay are the shares of the worst day alone.
func (w *work) onWorstDay() WorstShares {
	return w.days().worst(w.p.worstDay(&w.parts, &w.seated))
}

func (w *work) worstDay() *WorstDay {
	d := w.days()
	limits := w.p.daily(d.s)
	out := &WorstDay{Limit: limits.together(), UnseatedWeakDayPPM: million64 * w.unseatedOnWeakDay()}
	if w.seated.stalled {
		out.Terms = d.terms(limits, false)
		return out
	}
	out.Average = ptr(d.shares(0, d.average()))
	out.Worst = ptr(d.worst(w.p.worstDay(d.q, d.s)))
	out.Terms = d.terms(limits, true)
	out.Shift, out.Spread = d.shift(), d.spread()
	out.Kept = d.limits(out.Shift, out.Spread)
	out.Wear, out.WearCurve = d.wear()
	return out
}

// days are a plan's parts and window, to be read with another error or off by something.
type days struct {
	in     *Input
	q      *parts
	s      *reading
	window risk.Window
	all    risk.Population
}

// average is the error of a reading with stations and days mixed.
func (d *days) average() *stack.Sum { return d.in.wholeError(d.q, d.s) }

// shares are the risks when all readings are off by something.
func (d *days) shares(off float64, e *stack.Sum) Shares {
	all, window := d.all, d.window
	all.Base += off
	window.Error = e
	consumer, producer := all.Global(window)
	return Shares{million64 * consumer, million64 * producer}
}

// worst takes the larger of both signs.
func (d *days) worst(off float64, e *stack.Sum) WorstShares {
	deeper, shallower := d.shares(off, e), d.shares(-off, e)
	out := WorstShares{deeper, TowardDeeper, TowardDeeper}
	if shallower.ConsumerPPM > deeper.ConsumerPPM {
		out.ConsumerPPM, out.ConsumerToward = shallower.ConsumerPPM, TowardShallower
	}
	if shallower.ProducerPPM > deeper.ProducerPPM {
		out.ProducerPPM, out.ProducerToward = shallower.ProducerPPM, TowardShallower
	}
	return out
}

// terms puts each at its limit by itself: its own spread is taken out, and the others are
// as on average.
func (d *days) terms(limits daily, shares bool) []DayTerm {
	st := &d.in.Station
	out := []DayTerm{{Name: "nest_drift", Limit: limits.nest}, {Name: "reference", Limit: limits.reference},
		{Name: "stiffness", Limit: limits.stiffness}, {Name: "curve", Limit: limits.curve}}
	if !shares {
		return out
	}
	normal := []float64{0, limits.reference / 2, limits.stiffness / 2, limits.curve / 2}
	for i := range out {
		drift := st.drift()
		if i == 0 {
			drift.Half = 0
		}
		var left float64
		for k, sd := range normal {
			if k != i {
				left += square(sd)
			}
		}
		left += square(d.in.Ram.Repeatability/2) + square(d.in.Ram.ForceScatter/2/st.Stiffness)
		e := stack.NewError(math.Sqrt(left), append([]stack.Term{drift}, d.q.read...))
		s := d.worst(out[i].Limit, e)
		out[i].ConsumerPPM, out[i].ProducerPPM = &s.ConsumerPPM, &s.ProducerPPM
	}
	return out
}

// shift moves the mean height by up to half the drawing's width to both sides.
func (d *days) shift() [][3]float64 {
	half := (d.in.Requirement.HeightHigh - d.in.Requirement.HeightLow) / 2
	e := d.average()
	var out [][3]float64
	for j := -10; j <= 10; j++ {
		by := half * float64(j) / 10
		s := d.moved(by, e)
		out = append(out, [3]float64{by, s.ConsumerPPM, s.ProducerPPM})
	}
	return out
}

// moved are the shares with heights off by something: that is limits off by as much the
// other way, with the reading of no height.
func (d *days) moved(by float64, e *stack.Sum) Shares {
	moved := *d
	moved.all.Low, moved.all.High, moved.all.Base = d.all.Low-by, d.all.High-by, d.all.Base-by
	return moved.shares(0, e)
}

// spread widens and narrows the tolerances of all rows that are no datum.
func (d *days) spread() [][3]float64 {
	e := d.average()
	var out [][3]float64
	for k := 5; k <= 20; k++ {
		factor := float64(k) / 10
		s := d.spreadBy(factor, e)
		out = append(out, [3]float64{factor, s.ConsumerPPM, s.ProducerPPM})
	}
	return out
}

// spreadBy are the shares with tolerances so many times as wide.
func (d *days) spreadBy(factor float64, e *stack.Sum) Shares {
	rows := make([]stack.Term, len(d.q.product))
	for i, t := range d.q.product {
		t.Half *= factor
		rows[i] = t
	}
	other := *d
	other.all.Height = stack.NewSum(rows)
	if d.all.Beside != nil {
		other.all.Whole = stack.NewSum(append(rows, d.q.beside...))
	}
	return other.shares(0, e)
}

// wear sinks the nest face: every reading lies deeper, the heights stay. A window can be
// worn past, so that the first wear over the target is looked for step by step.
func (d *days) wear() (*Wear, [][3]float64) {
	edges := d.all.Edges(d.average())
	at := func(w float64) Shares {
		consumer, producer := 0.0, edges.Good
		if !d.window.Empty {
			consumer, producer = edges.Global(edges.Lower(d.window.Low-w), edges.Upper(d.window.High-w))
		}
		return Shares{million64 * consumer, million64 * producer}
	}
	const steps = 400
	most := 2 * (d.in.Requirement.HeightHigh - d.in.Requirement.HeightLow)
	t := &d.in.Targets
	var out Wear
	look := func(found **float64, before, after float64, over func(Shares) bool) {
		if *found != nil || !over(at(after)) {
			return
		}
		for after-before > 1e-7 {
			if mid := (before + after) / 2; over(at(mid)) {
				after = mid
			} else {
				before = mid
			}
		}
		*found = ptr(after)
	}
	// A target of nothing asks for the finest share: over it is no trace of an integral.
	accepts := func(s Shares) bool { return s.ConsumerPPM > max(t.FalseAcceptPPM, finest) }
	rejects := func(s Shares) bool { return s.ProducerPPM > max(t.FalseRejectPPM, finest) }
	look(&out.FalseAccept, 0, 0, accepts)
	look(&out.FalseReject, 0, 0, rejects)
	for k := 1; k <= steps && (out.FalseAccept == nil || out.FalseReject == nil); k++ {
		before, after := most*float64(k-1)/steps, most*float64(k)/steps
		look(&out.FalseAccept, before, after, accepts)
		look(&out.FalseReject, before, after, rejects)
	}
	var curve [][3]float64
	const points = 60
	for k := range points + 1 {
		w := most / 2 * float64(k) / points
		s := at(w)
		curve = append(curve, [3]float64{w, s.ConsumerPPM, s.ProducerPPM})
	}
	return &out, curve
}
