package press

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestCurveTrace puts the line of a plan's curve through its points and has the
// forces that the ram is computed with between them.
func TestCurveTrace(t *testing.T) {
	for _, how := range []string{"monotone", "linear"} {
		d := exampleDraft(t)
		d.Set("ram.curve.interpolation", how)
		p, faults := d.Check()
		require.Empty(t, faults)
		trace := p.CurveTrace()
		require.Equal(t, p.Ram.Curve.Points, trace.Points)
		on := 0
		for i, q := range trace.Line {
			force, err := p.Drive.Force(q[0])
			require.NoError(t, err)
			assert.InDelta(t, force, q[1], 1e-9, "%s at %v", how, q[0])
			if i > 0 {
				assert.Greater(t, q[0], trace.Line[i-1][0], how)
			}
			for _, point := range trace.Points {
				if point == q {
					on++
				}
			}
		}
		assert.Equal(t, len(trace.Points), on, "every point lies on the line: %s", how)
		assert.Equal(t, trace, d.CurveTrace(), "the draft of a sound plan has the plan's curve")
	}
}

// TestCurveTraceOfDraft reads the points whatever is wrong elsewhere, and not
// where they are wrong themselves.
func TestCurveTraceOfDraft(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(*Draft)
		read  bool
	}{
		{"a fault elsewhere", func(d *Draft) { d.Set("station.nest", "14o") }, true},
		{"limits outside the curve", func(d *Draft) { d.Set("ram.setting_max", "900") }, true},
		{"no number", func(d *Draft) { d.Set("ram.curve.points[1][1]", "x") }, false},
		{"nothing typed", func(d *Draft) { d.Set("ram.curve.points[1][1]", "") }, false},
		{"falling", func(d *Draft) { d.Set("ram.curve.points[1][1]", "1") }, false},
		{"unknown interpolation", func(d *Draft) { d.Set("ram.curve.interpolation", "wavy") }, false},
		{"a point twice", func(d *Draft) { d.Entries = append(d.Entries, Entry{"ram.curve.points[1][1]", "570"}) }, false},
		{"no points", func(d *Draft) { d.Entries = nil }, false},
		{"a new row", func(d *Draft) { d.Entries = append(d.Entries, Entry{"ram.curve.points[7]", "[]"}) }, false},
	} {
		d := exampleDraft(t)
		c.spoil(d)
		assert.Equal(t, c.read, d.CurveTrace() != nil, c.name)
	}
}

func exampleDraft(t *testing.T) *Draft {
	t.Helper()
	data, err := os.ReadFile("../static/examples/example-plan.json")
	require.NoError(t, err)
	p, faults := Decode(data)
	require.Empty(t, faults)
	return p.Draft()
}
