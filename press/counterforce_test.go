package press

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What pushes back adds to the demand of every kind of joint. By hand.
func TestCounterforceAddsToTheDemand(t *testing.T) {
	kinds := map[string]func(*Draft){
		Interference: func(*Draft) {},
		Touch: func(d *Draft) {
			d.dropJoint()
			d.Set("joint.kind", Touch)
			d.Set("parts[2].contact", "0")
		},
		Measured: func(d *Draft) {
			d.dropJoint()
			for path, text := range map[string]string{"kind": Measured, "force_low": "900", "force_typical": "1300", "force_high": "1900"} {
				d.Set("joint."+path, text)
			}
		},
	}
	for kind, turn := range kinds {
		d := example(t).Draft()
		turn(d)
		before, ps := d.Check()
		require.Empty(t, ps)
		d.Set("joint.counterforce", "60")
		after, ps := d.Check()
		require.Empty(t, ps)
		a, b := Evaluate(before), Evaluate(after)
		assert.InDelta(t, a.Force.Need+60, b.Force.Need, 1e-9, kind)
		if kind == Touch {
			assert.Nil(t, b.Joint)
			continue
		}
		for i := range b.Joint.Demand {
			assert.InDelta(t, a.Joint.Demand[i]+60, b.Joint.Demand[i], 1e-9, kind)
		}
		if kind == Interference {
			assert.Equal(t, a.Joint.Holding, b.Joint.Holding, "it holds nothing")
		}
	}
}
