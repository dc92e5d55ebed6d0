package words

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// TestTitles of the drawings with curves, for plans that do and do not work. The
// figures are regression values.
func TestTitles(t *testing.T) {
	for _, c := range []struct {
		plan                  changes
		force, pressIn, cycle string
	}{
		{nil, "At 66 % even a weak ram pushes 205 N more than needed, and a strong one stays 259 N under what may be borne, at rest",
			"Even the tightest fit is pressed in: 1939 N of the 2294 N of a weak ram", "One part takes 6.17 s; an arrival is due by 1.70 s, by the motion alone"},
		{changes{"station.max_force": "2300"}, "No setting will do: at 59 % a weak ram lacks 54 N and a strong one pushes 43 N too much",
			"Even the tightest fit is pressed in: 1939 N of the 2035 N of a weak ram", "One part takes 6.17 s; an arrival is due by 1.70 s, by the motion alone"},
		{changes{"window.setting": "12"}, "At 12 % a weak ram lacks 1845 N", "Even the usual fit stalls the ram, at 2.40 mm of 6.40 mm", "One part takes 5.64 s; an arrival is due by 1.69 s, by the motion alone"},
		{changes{"window.setting": "50"}, "At 50 % a weak ram lacks 407 N", "The tightest fit stalls a weak ram at 5.67 mm of 6.40 mm", "One part takes 6.17 s; an arrival is due by 1.70 s, by the motion alone"},
		{changes{"station.reference_uncertainty": "0.2"}, "At 66 % even a weak ram pushes 205 N more than needed, and a strong one stays 259 N under what may be borne, at rest",
			"Even the tightest fit is pressed in: 1939 N of the 2294 N of a weak ram", "One part takes 6.17 s"},
		{with(touch, changes{"parts[2].contact": "0"}), "", "Nothing is pressed in: the push meets no force before the seat", ""},
	} {
		p := example(t, c.plan)
		r := press.Evaluate(p)
		traces := *r.Traces()
		for want, got := range map[string]string{c.force: ForceTitle(r), c.pressIn: PressInTitle(p, r, traces.Tight, traces.Stall), c.cycle: CycleTitle(r)} {
			if want != "" {
				assert.Equal(t, want, plain(got), "%v", c.plan)
			}
			assert.NotContains(t, got, none)
		}
	}
}
