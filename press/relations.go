package press

import (
	"fmt"
	"strings"

	"ramplan/curves"
	"ramplan/press/fit"
	"ramplan/press/model"
	"ramplan/press/strict"
)

// relations checks what two or more entries say together. A relation is looked
// at only when the entries it needs are sound by themselves.
func (c *checker) relations() {
	for _, path := range model.Perfect {
		if !c.plan.Given(path) {
			c.plan.Unstated = append(c.plan.Unstated, path)
		}
	}
	c.ram()
	c.datums()
	c.joint()
	c.words()
	c.run()
	p := c.plan
	c.rising("requirement.height_low", p.Requirement.HeightLow, "requirement.height_high", p.Requirement.HeightHigh, true)
	c.rising("motion.slow_speed", p.Motion.SlowSpeed, "motion.approach_speed", p.Motion.ApproachSpeed, false)
	if z1, z2 := p.Window.ZoneStart, p.Window.ZoneEnd; z1 != nil && z2 != nil {
		c.rising("window.zone_start", *z1, "window.zone_end", *z2, true)
	}
}

// datums fills in how often each datum row counts, and refuses a count that the
// reading contradicts.
func (c *checker) datums() {
	for i := range c.plan.Parts {
		row, path := &c.plan.Parts[i], fmt.Sprintf("parts[%d].datum_count", i)
		if !c.sound(path, fmt.Sprintf("parts[%d].datum", i), fmt.Sprintf("parts[%d].seat", i)) {
			continue
		}
		given := c.plan.Given(path)
		if row.Datum && !given {
			row.DatumCount = row.Seat
		}
		switch {
		case given && !row.Datum:
			c.add(path, CodeConflict, "found %s; only a datum row counts in the datum", strict.PlainNumber(row.DatumCount))
		case !row.Datum:
		case row.DatumCount == 0 && given:
			c.add(path, CodeRange, "found 0; a datum row that does not count is none")
		case row.DatumCount == 0:
			c.add(path, CodeRequired, "not given; a datum row that is not in the seated height says how often it counts in the datum")
		case row.Carries() && row.DatumCount != row.Seat:
			c.add(path, CodeConflict, "found %s; a row that carries the insert counts in the datum as it does in the seat, %s", strict.PlainNumber(row.DatumCount), strict.PlainNumber(row.Seat))
		}
	}
}

// words wants each setpoint named once.
func (c *checker) words() {
	seen := map[string]int{}
	for i, w := range c.plan.Controller.Words {
		path := fmt.Sprintf("controller.words[%d].setpoint", i)
		if !c.sound(path) {
			continue
		}
		if first, twice := seen[w.Setpoint]; twice {
			c.add(path, CodeConflict, "found %q, which row %d names already; each setpoint is named once", w.Setpoint, first+1)
			continue
		}
		seen[w.Setpoint] = i
	}
}

// sound tells whether none of these entries has a fault.
func (c *checker) sound(paths ...string) bool {
	for _, path := range paths {
		if c.problems.Has(path) {
			return false
		}
		// A container that is itself at fault takes its entries with it.
		for i, r := range path {
			if (r == '.' || r == '[') && len(c.problems.At(path[:i])) > 0 {
				return false
			}
		}
	}
	return true
}

// rising wants the second entry above the first, or not below it.
func (c *checker) rising(low string, a float64, high string, b float64, strictly bool) {
	if !c.sound(low, high) {
		return
	}
	if strictly && a >= b {
		c.add(high, CodeOrder, "found %s; more than the %s of %q is needed", strict.PlainNumber(b), strict.PlainNumber(a), labelOf(low))
	} else if a > b {
		c.add(high, CodeOrder, "found %s; no less than the %s of %q is needed", strict.PlainNumber(b), strict.PlainNumber(a), labelOf(low))
	}
}

func labelOf(path string) string {
	f, ok := FieldAt(path)
	if !ok {
		panic("press: no field " + path)
	}
	return f.Label
}

// ram checks the curve and what can be set on it.
func (c *checker) ram() {
	r := &c.plan.Ram
	if !c.plan.Given("ram.inertia_mass") {
		r.InertiaMass = r.MovingMass
	}
	if !c.curve() {
		return
	}
	c.taken()
	points := r.Curve.Points
	first, last := points[0][0], points[len(points)-1][0]
	c.insideCurve("ram.setting_min", &r.SettingMin, first, first, last)
	c.insideCurve("ram.setting_max", &r.SettingMax, last, first, last)
	if !c.sound("ram.setting_min", "ram.setting_max") {
		return
	}
	if c.plan.Given("ram.setting_max") {
		c.rising("ram.setting_min", r.SettingMin, "ram.setting_max", r.SettingMax, true)
	} else if r.SettingMin >= r.SettingMax {
		c.add("ram.setting_min", CodeOrder, "found %s; less than the greatest setting %s is needed", strict.PlainNumber(r.SettingMin), strict.PlainNumber(r.SettingMax))
	}
	if !c.sound("ram.setting_min", "ram.setting_max", "ram.setting_step") {
		return
	}
	if n := r.Steps(); n < 1 || n > 100000 {
		c.add("ram.setting_step", CodeRange, "found %s; between 1 and 100000 multiples of it are needed from %s to %s", strict.PlainNumber(r.SettingStep), strict.PlainNumber(r.SettingMin), strict.PlainNumber(r.SettingMax))
	}
	if s := c.plan.Window.Setting; s != nil && c.sound("window.setting") && (*s < r.SettingMin || *s > r.SettingMax) {
		c.add("window.setting", CodeRange, "found %s; a setting from %s to %s is needed", strict.PlainNumber(*s), strict.PlainNumber(r.SettingMin), strict.PlainNumber(r.SettingMax))
	}
}

// curve wants settings and forces rising from point to point.
func (c *checker) curve() bool {
	if !c.sound("ram.curve.points") {
		return false
	}
	points := c.plan.Ram.Curve.Points
	for i := 1; i < len(points); i++ {
		for k, word := range []string{"setting", "force"} {
			if a, b := points[i-1][k], points[i][k]; b <= a {
				c.add(fmt.Sprintf("ram.curve.points[%d][%d]", i, k), CodeOrder, "found %s; more than the %s of the point before, %s, is needed", strict.PlainNumber(b), word, strict.PlainNumber(a))
			}
		}
	}
	if !c.sound("ram.curve.points", "ram.curve.interpolation") {
		return false
	}
	through := make([]curves.Point, len(points))
	for i, p := range points {
		through[i] = curves.Point{Setting: p[0], Force: p[1]}
	}
	curve, err := curves.New(through, curves.Interpolation(c.plan.Ram.Curve.Interpolation))
	if err != nil {
		c.add("ram.curve.points", CodeRange, "%s", strings.TrimPrefix(err.Error(), "curves: "))
		return false
	}
	c.plan.Drive = curve
	return true
}

// taken refuses a curve whose figures hold the weight for another direction.
func (c *checker) taken() {
	r := &c.plan.Ram
	if !c.sound("ram.curve.taken", "ram.curve.measured", "ram.direction") || !c.plan.Given("ram.curve.taken") {
		return
	}
	if r.Curve.Measured == MeasuredTool && r.Curve.Taken != r.Direction {
		c.add("ram.curve.taken", CodeConflict, "found %q; the plan presses %s, and figures taken at the tool hold the weight as it acted then: take the curve anew in the plan's direction", r.Curve.Taken, r.Direction)
	}
}

// insideCurve fills in a limit of the setting, or checks it against the curve.
func (c *checker) insideCurve(path string, v *float64, standIn, first, last float64) {
	switch {
	case !c.sound(path):
	case !c.plan.Given(path):
		*v = standIn
	case *v < first || *v > last:
		c.add(path, CodeRange, "found %s; the curve reaches from %s to %s", strict.PlainNumber(*v), strict.PlainNumber(first), strict.PlainNumber(last))
	}
}

// joint checks the entries of the joint against each other.
func (c *checker) joint() {
	j := &c.plan.Joint
	switch c.kind {
	case Measured:
		c.rising("joint.force_low", j.ForceLow, "joint.force_typical", j.ForceTypical, false)
		c.rising("joint.force_typical", j.ForceTypical, "joint.force_high", j.ForceHigh, false)
	case Interference:
		c.rings()
		c.fit()
		c.friction()
		c.service()
	}
}

func (c *checker) rings() {
	j := &c.plan.Joint
	c.rising("joint.diameter", j.Diameter, "joint.hub.outside_diameter", j.Hub.OutsideDiameter, true)
	if c.sound("joint.diameter", "joint.insert.bore") && j.Insert.Bore >= j.Diameter {
		c.add("joint.insert.bore", CodeOrder, "found %s; less than the joint diameter %s is needed", strict.PlainNumber(j.Insert.Bore), strict.PlainNumber(j.Diameter))
	}
}

// fit wants either a code or both pairs of deviations, and fills the deviations
// from the code.
func (c *checker) fit() {
	j := &c.plan.Joint
	code, hole, shaft := c.plan.Given("joint.fit"), c.plan.Given("joint.hole"), c.plan.Given("joint.shaft")
	switch {
	case code && (hole || shaft):
		c.add("joint.fit", CodeConflict, "a fit code and deviations are both given; one of the two is needed")
	case code:
		c.fitCode()
	case hole && shaft:
		c.rising("joint.hole[0]", j.Hole[0], "joint.hole[1]", j.Hole[1], false)
		c.rising("joint.shaft[0]", j.Shaft[0], "joint.shaft[1]", j.Shaft[1], false)
	case hole || shaft:
		missing := "joint.shaft"
		if shaft {
			missing = "joint.hole"
		}
		c.add(missing+"[0]", CodeRequired, "not given; hole and shaft deviations belong together")
		c.add(missing+"[1]", CodeRequired, "not given; hole and shaft deviations belong together")
	default:
		c.add("joint.fit", CodeRequired, "not given; a fit code such as H7/s6, or hole and shaft deviations, is needed")
	}
}

func (c *checker) fitCode() {
	j := &c.plan.Joint
	if !c.sound("joint.fit", "joint.diameter") {
		return
	}
	if j.Diameter > fit.MaxDiameter {
		c.add("joint.diameter", CodeRange, "found %s; at most %s with a fit code; give the deviations instead", strict.PlainNumber(j.Diameter), strict.PlainNumber(fit.MaxDiameter))
		return
	}
	hole, shaft, err := fit.Code(j.Fit, j.Diameter)
	if err != nil {
		c.add("joint.fit", CodeClass, "%s", strings.TrimPrefix(err.Error(), "fit: "))
		return
	}
	j.Hole, j.Shaft = [2]float64{hole.Low, hole.High}, [2]float64{shaft.Low, shaft.High}
}

func (c *checker) friction() {
	j := &c.plan.Joint
	if !c.plan.Given("joint.holding_friction") {
		j.HoldingFriction = j.FrictionLow
	}
	c.rising("joint.friction_low", j.FrictionLow, "joint.friction_high", j.FrictionHigh, false)
	if c.sound("joint.smoothing_least", "joint.smoothing_most") && j.SmoothingLeast > j.SmoothingMost {
		c.add("joint.smoothing_least", CodeOrder, "found %s; no more than the most smoothing %s is needed", strict.PlainNumber(j.SmoothingLeast), strict.PlainNumber(j.SmoothingMost))
	}
}

func (c *checker) service() {
	j := &c.plan.Joint
	c.rising("joint.service_change[0]", j.ServiceChange[0], "joint.service_change[1]", j.ServiceChange[1], false)
	if !c.sound("joint.service_change") || j.ServiceChange == [2]float64{} {
		return
	}
	for _, path := range []string{"joint.hub.expansion", "joint.insert.expansion"} {
		if c.sound(path) && !c.plan.Given(path) {
			c.add(path, CodeRequired, "not given; the service temperature change needs both expansions")
		}
	}
}
