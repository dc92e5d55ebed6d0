package press

import (
	"ramplan/press/model"
	"ramplan/press/strict"
)

// mostPasses is how many passes all steps of a sequence may have together.
const mostPasses = 1000

// run checks the probe and the sequence.
func (c *checker) run() {
	p := c.plan
	if q := p.Probe; q != nil {
		if !p.Given("probe.confirm_time") {
			q.ConfirmTime = p.Motion.ConfirmTime
		}
		r := &p.Ram
		if s := q.Setting; s != nil && c.sound("probe.setting", "ram.setting_min", "ram.setting_max", "ram.curve.points") && (*s < r.SettingMin || *s > r.SettingMax) {
			c.add("probe.setting", CodeRange, "found %s; a setting from %s to %s is needed", strict.PlainNumber(*s), strict.PlainNumber(r.SettingMin), strict.PlainNumber(r.SettingMax))
		}
	}
	if p.Sequence != nil {
		c.pair("sequence.station_zone", p.Sequence.StationZone)
		c.steps()
		c.hold()
	}
}

// pair wants the end of a zone past its start.
func (c *checker) pair(path string, zone *[2]float64) {
	if zone != nil {
		c.rising(path+"[0]", zone[0], path+"[1]", zone[1], true)
	}
}

func stepPath(i int, key string) string { return model.StepPath(i, key) }

// steps checks each step, and which of them push.
func (c *checker) steps() {
	if len(c.problems.At("sequence")) > 0 || len(c.problems.At("sequence.steps")) > 0 { // a fault inside one step hides none of another
		return
	}
	steps := c.plan.Sequence.Steps
	presses, probes, passes := 0, 0, 0.0
	kindsKnown := true
	for i, s := range steps {
		kindsKnown = kindsKnown && c.sound(stepPath(i, "kind"))
		c.pair(stepPath(i, "zone"), s.Zone)
		passes++
		switch s.Kind {
		case StepShift:
			if c.sound(stepPath(i, "by")) && s.By == 0 {
				c.add(stepPath(i, "by"), CodeRange, "found 0; a shift that goes nowhere is none")
			}
			if c.sound(stepPath(i, "times")) {
				passes += s.Times - 1
			}
		case StepPress:
			if presses++; presses > 1 {
				c.add(stepPath(i, "kind"), CodeConflict, "found a second press; exactly one is needed")
			}
		case StepProbe:
			c.probeStep(i, probes)
			probes++
		}
	}
	switch {
	case passes > mostPasses:
		c.add("sequence.steps", CodeRows, "found %s with every repetition; at most %d are allowed", strict.Count(int(passes), "step"), mostPasses)
	case !kindsKnown:
		return
	case presses == 0:
		c.add("sequence.steps", CodeConflict, "found no press; exactly one is needed")
	}
	if c.plan.Probes() && probes == 0 && c.sound("probe.use") {
		c.add("probe.use", CodeConflict, "the sequence has no step probe; put one before the press, or do without the probe")
	}
}

// probeStep wants a probe to be used, the only one, and the press right after it.
func (c *checker) probeStep(i, before int) {
	steps, path := c.plan.Sequence.Steps, stepPath(i, "kind")
	switch {
	case before > 0:
		c.add(path, CodeConflict, "found a second probe; at most one is allowed")
	case !c.plan.Probes() && c.sound("probe.use"):
		c.add(path, CodeConflict, "found a probe; the plan does not use one")
	}
	if next := i + 1; next >= len(steps) || c.sound(stepPath(next, "kind")) && steps[next].Kind != StepPress {
		c.add(path, CodeConflict, "found a probe without the press right after it; the press goes on from where the probe stands")
	}
}

// hold wants the case studied to be in a pass that there is.
func (c *checker) hold() {
	h, steps := c.plan.Sequence.Hold, c.plan.Sequence.Steps
	if h == nil || !c.sound("sequence.hold.step", "sequence.steps") {
		return
	}
	i := int(h.Step)
	if i >= len(steps) {
		c.add("sequence.hold.step", CodeRange, "found %s, counted from 0; a step from 0 to %d is needed", strict.PlainNumber(h.Step), len(steps)-1)
		return
	}
	if !c.sound(stepPath(i, "kind")) {
		return
	}
	if steps[i].Kind == StepWait {
		c.add("sequence.hold.step", CodeConflict, "found %s, counted from 0, which is a wait; a step that moves or pushes is needed", strict.PlainNumber(h.Step))
		return
	}
	passes := 1.0
	if steps[i].Kind == StepShift {
		if !c.sound(stepPath(i, "times")) {
			return
		}
		passes = steps[i].Times
	}
	if c.sound("sequence.hold.pass") && h.Pass > passes {
		c.add("sequence.hold.pass", CodeRange, "found %s; the step is done %s", strict.PlainNumber(h.Pass), strict.Count(int(passes), "time"))
	}
}
