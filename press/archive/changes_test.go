package archive

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

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
	path, one := onePath(example(t), with(example(t), "ram.moving_mass", "2.40"))
	assert.True(t, one)
	assert.Equal(t, "ram.moving_mass", path)
	_, one = onePath(example(t), example(t))
	assert.False(t, one)
}

// TestIssuedStates: the state that a revision was made of is found again, also
// after later typing, an undo before the issue, and where another one came between.
func TestIssuedStates(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{Now: c.now})
	h, err := a.Create(background(), example(t), DidMake)
	require.NoError(t, err)
	signed := Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: "First issue"}
	none, err := a.IssuedStates(background(), h.ID)
	require.NoError(t, err)
	assert.Empty(t, none)

	c.rest(2 * Pause)
	_, err = a.Issue(background(), h.ID, h.Version, signed)
	require.NoError(t, err)
	c.rest(2 * Pause)
	h, err = a.Save(background(), h.ID, h.Version, with(example(t), "station.nest", "141"), "")
	require.NoError(t, err)
	c.rest(2 * Pause)
	h, err = a.Save(background(), h.ID, h.Version, with(example(t), "station.nest", "142"), "")
	require.NoError(t, err)
	require.Equal(t, int64(3), h.State)
	h, err = a.Undo(background(), h.ID, h.Version)
	require.NoError(t, err)
	c.rest(2 * Pause)
	signed.Reason = "Nest set anew"
	_, err = a.Issue(background(), h.ID, h.Version, signed)
	require.NoError(t, err)
	h, err = a.Redo(background(), h.ID, h.Version)
	require.NoError(t, err)
	signed.Reason = "Nest set anew again"
	_, err = a.Issue(background(), h.ID, h.Version, signed)
	require.NoError(t, err)
	h, err = a.Undo(background(), h.ID, h.Version)
	require.NoError(t, err)
	signed.Reason = "It was right before"
	_, err = a.Issue(background(), h.ID, h.Version, signed)
	require.NoError(t, err)

	got, err := a.IssuedStates(background(), h.ID)
	require.NoError(t, err)
	assert.Equal(t, map[int64][]string{1: {"A"}, 2: {"B", "D"}, 3: {"C"}}, got)
}
