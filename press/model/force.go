package model

import (
	"math"

	"ramplan/curves"
)

// StandardGravity is the standard acceleration of free fall, m/s² (3rd CGPM,
// 1901).
const StandardGravity = 9.80665

// drive is the ram's push at the tool (model section 2).
type drive struct {
	curve   *curves.Curve
	share   float64 // proportional scatter, two standard deviations
	scatter float64 // N, two standard deviations
	weight  float64 // N, signed: what the weight adds to the curve
	now     thrust  // at the setting in force
}

// thrust is the force at one setting, N, with its scatter of two standard
// deviations.
type thrust struct{ typical, scatter float64 }

func (f thrust) low() float64  { return f.typical - f.scatter }
func (f thrust) high() float64 { return f.typical + f.scatter }

func newDrive(r *Ram, curve *curves.Curve) drive {
	d := drive{curve: curve, share: r.ForceTolerance / 100, scatter: r.ForceScatter}
	if r.Curve.Measured == MeasuredDrive {
		switch r.Direction {
		case Down:
			d.weight = r.MovingMass * StandardGravity
		case Up:
			d.weight = -r.MovingMass * StandardGravity
		}
	}
	return d
}

// at gives the push at a setting inside the settable range.
func (d *drive) at(setting float64) thrust {
	f, err := d.curve.Force(setting)
	if err != nil {
		panic("model: a settable setting lies outside the curve: " + err.Error())
	}
	return thrust{f + d.weight, math.Hypot(d.share*f, d.scatter)}
}

// slope gives by how much the push grows with the setting, N per %.
func (d *drive) slope(setting float64) float64 {
	s, err := d.curve.Slope(setting)
	if err != nil {
		panic("model: a settable setting lies outside the curve: " + err.Error())
	}
	return s
}

// least gives the least setting at which even a weak ram pushes with a force:
// the root of f − √(τ²f² + s²) = y in the curve force f. +Inf: none does.
func (d *drive) least(force float64) float64 {
	y := force - d.weight
	return d.setting((y + d.root(y)) / (1 - d.share*d.share))
}

// most gives the greatest setting at which even a strong ram stays within a
// force. −Inf: none does.
func (d *drive) most(force float64) float64 {
	y := force - d.weight
	return d.setting((y - d.root(y)) / (1 - d.share*d.share))
}

func (d *drive) root(y float64) float64 {
	return math.Sqrt(d.share*d.share*y*y + (1-d.share*d.share)*d.scatter*d.scatter)
}

// setting inverts the curve; beyond its ends the answer is infinite.
func (d *drive) setting(f float64) float64 {
	c, err := d.curve.Setting(f)
	if err == nil {
		return c
	}
	if first, _ := d.curve.Forces(); f < first {
		return math.Inf(-1)
	}
	return math.Inf(1)
}

// forceWindow finds the settings that seat every part and overload none (model
// section 5), and the setting in force: the one set by hand, or the proposed one. The
// drive comes back at that setting.
func forceWindow(r *Ram, d drive, need, most float64, hand *float64) (drive, Force) {
	f := Force{Need: need, Cap: most}
	from := math.Max(r.SettingMin, d.least(need))
	to := math.Min(r.SettingMax, d.most(most))
	all := r.steps()
	inside := noSteps
	if from <= to+slack {
		from = math.Min(from, to)
		f.Settings = &Pair{from, to}
		inside = multiplesWithin(r.SettingStep, from, to)
		inside.first, inside.last = math.Max(inside.first, all.first), math.Min(inside.last, all.last)
		if inside.count() > 0 {
			f.Steps = &Pair{inside.at(inside.first), inside.at(inside.last)}
		}
	}
	if hand != nil {
		f.Setting = *hand
		d.now = d.at(f.Setting)
		f.SettingFeasible = !d.now.tooWeak(need) && !d.now.tooStrong(most)
	} else {
		f.Setting = d.propose(f, all, inside)
		d.now = d.at(f.Setting)
		f.SettingFeasible = f.Steps != nil
	}
	f.Low, f.Typical, f.High = d.now.low(), d.now.typical, d.now.high()
	f.StepWorth = d.slope(f.Setting) * r.SettingStep
	return d, f
}

// tooWeak and tooStrong judge a push, with the slack of binary noise.
func (f thrust) tooWeak(need float64) bool { return f.low() < need-1e-12*math.Abs(need) }

func (f thrust) tooStrong(most float64) bool { return f.high() > most+1e-12*math.Abs(most) }

// propose gives the settable step that keeps the greatest distance from both
// ends of the window, the lower one on a tie.
func (d *drive) propose(f Force, all, inside steps) float64 {
	if f.Need <= 0 {
		if inside.count() > 0 {
			return inside.at(inside.first)
		}
		return all.at(all.first)
	}
	ratios := func(k float64) (weak, strong float64) {
		at := d.at(all.at(k))
		strong = math.Inf(1)
		if at.high() > 0 {
			strong = f.Cap / at.high()
		}
		return at.low() / f.Need, strong
	}
	// The weak ratio rises with the setting and the strong one falls: the best
	// step stands beside the point where they cross.
	first, last := all.first, all.last
	for first < last {
		k := math.Floor((first + last) / 2)
		if weak, strong := ratios(k); weak >= strong {
			last = k
		} else {
			first = k + 1
		}
	}
	if first > all.first {
		lower := math.Min(ratios(first - 1))
		if upper := math.Min(ratios(first)); upper <= lower+1e-12*math.Abs(lower) {
			first--
		}
	}
	return all.at(first)
}

// WeightDoubt is by how much every push is smaller than computed, N, should a curve whose
// figures hold the weight have been taken while pressing down, of a ram that does not: once
// the weight for a level one, twice for one that presses up. 0 where the direction in which
// it was taken is given, where the figures do not hold the weight, or the ram presses down.
func (r *Outcome) WeightDoubt() float64 {
	if r.work == nil {
		return 0
	}
	ram := &r.inside().p.Ram
	if ram.Curve.Measured != MeasuredTool || ram.Curve.Taken != "" {
		return 0
	}
	weight := ram.MovingMass * StandardGravity
	switch ram.Direction {
	case Up:
		return 2 * weight
	case Level:
		return weight
	}
	return 0
}
