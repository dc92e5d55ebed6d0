package press_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// TestStepWorth: on a straight piece of curve a step is worth what it is long
// times what the piece rises. Derived by hand: between 60 % and 70 % the
// example's curve rises by 390 N, so a step of 1 % is worth 39 N, one of 0.5 %
// half of that, with the weight of the ram in it or not.
func TestStepWorth(t *testing.T) {
	p, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	d := p.Draft()
	d.Set("ram.curve.interpolation", "linear")
	for step, want := range map[string]float64{"1": 39, "0.5": 19.5} {
		for _, measured := range []string{press.MeasuredDrive, "tool"} {
			d.Set("ram.setting_step", step)
			d.Set("ram.curve.measured", measured)
			d.Set("window.setting", "66")
			p, faults := d.Check()
			require.Empty(t, faults)
			assert.InEpsilon(t, want, press.Evaluate(p).Force.StepWorth, 1e-12, "%s, %s", step, measured)
		}
	}
}
