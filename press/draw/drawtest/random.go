package drawtest

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"ramplan/press"
)

// RandomPlan changes the example plan at random; ok is false when the entries
// contradict one another.
func RandomPlan(t testing.TB, random *rand.Rand) (*press.Plan, bool) {
	t.Helper()
	d := exampleDraft(t)
	some := func(path string, values ...string) {
		if random.IntN(3) == 0 {
			d.Set(path, values[random.IntN(len(values))])
		}
	}
	number := func(low, high float64, decimals int) string {
		return fmt.Sprintf("%.*f", decimals, low+random.Float64()*(high-low))
	}
	some("ram.stroke", "12", "100", "115.3", "150", "400", "2500")
	some("station.nest", "30", "139.5", "140", "145", "2000", "-20")
	some("station.home", "-40", "0", "50", "110")
	some("station.reference_uncertainty", "0", number(0, 0.3, 3))
	some("station.stiffness", number(500, 60000, 0))
	some("station.position_step", "0.001", "0.1", "1", "0.025", "0.000001")
	some("requirement.height_low", number(22, 24.99, 3))
	some("requirement.height_high", number(25.001, 28, 3))
	some("parts[1].insert", "true", "false")
	some("parts[0].insert", "true", "false")
	some("parts[0].datum", "true", "false")
	some("parts[0].plus", number(0, 0.5, 3))
	some("motion.clearance", "0", number(0, 30, 2))
	some("joint.engagement", number(0.5, 9, 2))
	some("station.presence_check", "light barrier in the nest")
	d.Entries = withoutEntry(d.Entries, "window")
	some("window.setting", number(10, 70, 0))
	some("window.approach_end", number(90, 116, 2))
	some("window.push_stroke", number(0.01, 12, 2), "0.01", "40")
	some("window.zone_start", number(114.8, 115.3, 2), "0", "115.1")
	some("window.zone_end", number(115.1, 115.6, 2), "200")
	some("window.guard_factor", "0", "2", "5")
	some("station.max_force", number(500, 4000, 0), "1000000", "1")
	some("requirement.min_seating_force", number(0, 3000, 0))
	some("ram.force_tolerance", "0", number(0, 99, 1))
	some("ram.moving_mass", "0", number(0, 200, 1))
	some("ram.direction", "up", "level")
	some("ram.setting_step", "0.01", "2.5", "10")
	some("joint.drag", number(0, 2500, 0))
	some("joint.pilot", number(0, 8, 2))
	some("motion.hold_time", "0", number(0, 20, 2))
	some("motion.confirm_time", "0", number(0, 3, 2))
	some("motion.slow_speed", "0.05", "100")
	p, ps := d.Check()
	return p, len(ps) == 0
}

func withoutEntry(entries []press.Entry, path string) []press.Entry {
	out := entries[:0]
	for _, e := range entries {
		if e.Path != path {
			out = append(out, e)
		}
	}
	return out
}
