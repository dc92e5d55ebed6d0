package words

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// A curve taken at the tool holds the weight as it acted then. Where nobody says how the ram
// stood, one that presses up or level says by how much it may be off. By hand: 2.4 kg weigh
// 23.54 N, twice that is 47 N.
func TestTheWeightInACurveOfUnknownDirection(t *testing.T) {
	for _, c := range []struct {
		plan changes
		want string
	}{
		{changes{"ram.direction": "up"}, "47 N"},
		{changes{"ram.direction": "level"}, "24 N"},
		{nil, ""},
		{changes{"ram.direction": "up", "ram.curve.taken": "up"}, ""},
		{changes{"ram.direction": "up", "ram.curve.measured": "drive"}, ""},
	} {
		r := press.Evaluate(example(t, c.plan))
		Explain(r)
		if c.want == "" {
			assert.NotContains(t, Perfect(r)+say.AtRest(r), "less")
			continue
		}
		assert.Contains(t, plain(Perfect(r)), "if it pressed down, every push is "+c.want+" less than here")
		assert.Contains(t, say.AtRest(r), c.want[:2]+" less if the curve was taken pressing down")
	}
}
