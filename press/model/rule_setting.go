package model

import "math"

// mostSettings is how many steps of the force window are looked at for the targets: of
// more, every second, third or so on.
const mostSettings = 256

// settingForTarget moves the setting to a step of the force window at which the window
// meets the targets, where it does not at the proposed one; it tells whether the targets
// have chosen it. A lower setting bends less and reads better, and stalls more.
func (w *work) settingForTarget() bool {
	in, f := w.p, &w.r.Force
	if in.Window.SettingFor != ForTarget || in.Window.Setting != nil || f.Steps == nil || !w.parts.pressable() || w.measureAt(w.force.now) <= 1 {
		return false
	}
	type candidate struct{ setting, measure, room float64 }
	inside := multiplesWithin(in.Ram.SettingStep, f.Steps[0], f.Steps[1])
	var all []candidate
	least := math.Inf(1)
	for k, every := inside.first, max(1, math.Ceil(inside.count()/mostSettings)); k <= inside.last; k += every {
		c := inside.at(k)
		at := w.force.at(c)
		next := candidate{c, w.measureAt(at), f.room(at)}
		all, least = append(all, next), min(least, next.measure)
	}
	if math.IsInf(least, 1) {
		return false
	}
	best := candidate{room: math.Inf(-1)}
	for _, c := range all {
		if c.measure <= least*1.01 && c.room > best.room+1e-12*math.Abs(c.room) {
			best = c
		}
	}
	f.Setting, w.force.now = best.setting, w.force.at(best.setting)
	f.Low, f.Typical, f.High = w.force.now.low(), w.force.now.typical, w.force.now.high()
	f.StepWorth = w.force.slope(f.Setting) * in.Ram.SettingStep
	return true
}

// room is how far a push stays from both ends of the force window.
func (f *Force) room(at thrust) float64 {
	weak, strong := math.Inf(1), math.Inf(1)
	if f.Need > 0 {
		weak = at.low() / f.Need
	}
	if at.high() > 0 {
		strong = f.Cap / at.high()
	}
	return min(weak, strong)
}

// measureAt is the larger share of the window that the rule gives at a push, in terms of
// its target; infinite where it gives none.
func (w *work) measureAt(at thrust) float64 {
	in := w.p
	seated, win := in.readings(&w.parts, at, w.joint.push[mid])
	rule := in.propose(&w.parts, &seated, &win)
	if win.Target != nil {
		if win.Target.Measure == nil {
			return math.Inf(1)
		}
		return *win.Target.Measure
	}
	z, _ := in.travel(&w.parts, &seated, &rule)
	if !z.known || !z.overlap {
		return math.Inf(1)
	}
	g := in.goal(&w.parts, &seated)
	return g.Judge(z.first, z.last)
}
