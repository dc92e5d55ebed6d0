package drafts

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// example is the draft of the first example plan.
func example(t *testing.T) *press.Draft {
	t.Helper()
	plan, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	return plan.Draft()
}

// with is a copy of a draft with another text at a path.
func with(d *press.Draft, path, text string) *press.Draft {
	out := &press.Draft{Entries: append([]press.Entry(nil), d.Entries...)}
	out.Set(path, text)
	return out
}

// TestChangesByMeaning: what is only written in another way has not changed, a
// default that was typed out has (derived).
func TestChangesByMeaning(t *testing.T) {
	was := example(t)
	mass, _ := was.Get("ram.moving_mass")
	require.Equal(t, "2.4", mass, "the example is typed with points")
	is := with(with(was, "ram.moving_mass", "2,4 kg"), "station.nest", "140 mm")
	assert.Empty(t, Changes(was, is))
	assert.Empty(t, Changes(is, was))

	is = with(is, "motion.clearance", "0,8")
	is = with(is, "station.home", "  ")
	is = with(is, "station.nest_drift", "")
	before := with(with(was, "station.home", "0"), "station.nest_drift", "")
	var told []string
	for _, c := range Changes(before, is) {
		told = append(told, c.Path)
	}
	assert.Contains(t, told, "motion.clearance")
	assert.Contains(t, told, "station.home", "a default that was typed is given")
	assert.NotContains(t, told, "station.nest_drift", "given on neither side")
	assert.NotContains(t, told, "ram.moving_mass")
	for _, c := range Changes(before, is) {
		if c.Path == "station.home" {
			assert.True(t, c.Had)
			assert.False(t, c.Has)
		}
	}
}

// TestTypingOnKeepsItsPath: retyping a figure in another way is still typing in
// its one field.
func TestTypingOnKeepsItsPath(t *testing.T) {
	path, one := OnePath(example(t), with(example(t), "ram.moving_mass", "2.40"))
	assert.True(t, one)
	assert.Equal(t, "ram.moving_mass", path)
	_, one = OnePath(example(t), example(t))
	assert.False(t, one)
}
