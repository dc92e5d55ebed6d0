package view

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestHoldStaysWithItsStep: however the rows are moved, the hold case is in the step that
// it was in; when that one goes, the rest of the case stays and is told of as lacking its
// step. Expected values by hand.
func TestHoldStaysWithItsStep(t *testing.T) {
	rows := func(held string) Typed {
		var d press.Draft
		for i, name := range []string{"a", "b", "c", "d"} {
			d.Set(press.RowPath("sequence.steps[].kind", i), press.StepMove)
			d.Set(press.RowPath("sequence.steps[].name", i), name)
		}
		d.Set(holdStep, held)
		d.Set("sequence.hold.at", "80.0")
		d.Set("sequence.hold.time", "1")
		return Typed{Draft: d}
	}
	text := func(typed Typed, path string) string {
		for _, e := range typed.Draft.Entries {
			if e.Path == path {
				return e.Text
			}
		}
		return ""
	}
	for _, c := range []struct {
		held, do  string
		row       int
		want      string
		alsoNamed string
	}{
		{"1", "up", 1, "0", "b"},
		{"1", "down", 1, "2", "b"},
		{"1", "down", 0, "0", "b"},
		{"1", "up", 3, "1", "b"},
		{"1", "remove", 0, "0", "b"},
		{"1", "remove", 2, "1", "b"},
		{"1", "remove", 1, "", ""},
		{"1", "repeat", 0, "2", "b"},
		{"1", "repeat", 1, "1", "b"},
		{"1", "add", 0, "1", "b"},
		{"1.0", "up", 1, "0", "b"},
		{"4", "remove", 0, "4", ""}, // no step before, and none after
		{"here", "remove", 0, "here", ""},
	} {
		moved, ok := Move(rows(c.held), c.do, stepRows, c.row)
		require.True(t, ok)
		assert.Equal(t, c.want, text(moved, holdStep), "%s %d, held in %s", c.do, c.row, c.held)
		if c.alsoNamed != "" {
			at, _ := stepTyped(c.want)
			assert.Equal(t, c.alsoNamed, text(moved, press.RowPath("sequence.steps[].name", at)))
		}
		assert.Equal(t, "80.0", text(moved, "sequence.hold.at"), "nothing is lost")
		assert.Equal(t, "1", text(moved, "sequence.hold.time"))
	}
	gone, _ := Move(rows("1"), "remove", stepRows, 1)
	_, faults := gone.Draft.Check()
	assert.Contains(t, paths(faults), holdStep, "the case is told of")
	assert.True(t, HeldIn(rows("1"), 1))
	assert.False(t, HeldIn(rows("1"), 0))
}

func paths(all press.Problems) []string {
	var out []string
	for _, p := range all {
		out = append(out, p.Path)
	}
	return out
}
