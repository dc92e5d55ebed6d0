package archive

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// tightened lets today's rules take less of a field than the example has.
func tightened(t *testing.T, path string, high float64) {
	t.Helper()
	f, ok := press.FieldAt(path)
	require.True(t, ok)
	d, was := example(t), f.High
	f.High = &press.Limit{Value: high}
	t.Cleanup(func() { f.High = was })
	_, faults := d.Check()
	require.True(t, faults.Has(path), "the example breaks the tightened rule")
}

// An archive of before holds a revision that today's rules do not take: it is what
// was issued, so it is whole, copied, put back and written out as ever.
func TestRevisionThatTodaysRulesDoNotTake(t *testing.T) {
	dir := first(t)
	a := opened(t, dir, Options{})
	before, err := a.Revision(background(), 1, "A")
	require.NoError(t, err)
	require.NoError(t, a.Close())

	plan, _ := press.Decode(before.Plan.JSON())
	tightened(t, "station.nest", plan.Station.Nest-1)
	report, err := CheckFolder(background(), dir)
	require.NoError(t, err)
	assert.Empty(t, report.Faults)
	require.Len(t, report.NotTaken, 1)
	assert.Contains(t, report.NotTaken[0].String(), "revision A is whole, but today's rules do not take it: station.nest")
	assert.Contains(t, report.String(), "0 damaged, 1 whole but not taken by today's rules")

	copied := filepath.Join(t.TempDir(), "copy.db")
	_, err = Backup(background(), dir, copied)
	require.NoError(t, err)
	other := t.TempDir()
	_, _, err = PutBack(background(), other, copied)
	require.NoError(t, err, "a healthy backup is put back")

	b := opened(t, other, Options{})
	now, err := b.Revision(background(), 1, "A")
	var old *NotTaken
	require.ErrorAs(t, err, &old)
	assert.Equal(t, "A", old.Letter)
	assert.True(t, old.Faults.Has("station.nest"))
	assert.False(t, now.Damaged)
	assert.Nil(t, now.Plan)
	assert.Equal(t, string(before.Plan.JSON()), string(now.Document.JSON()))
	assert.Equal(t, before.Plan.Draft(), now.Document.Draft(), "a draft can be made of it, to be mended")
	issued, err := b.Revisions(background(), 1)
	require.NoError(t, err)
	require.Len(t, issued, 1)
	assert.False(t, issued[0].Damaged)
	assert.NotEmpty(t, issued[0].Faults)
	folder := filepath.Join(t.TempDir(), "out")
	moved, err := b.WriteOut(background(), folder, func(int, int, string) {})
	require.NoError(t, err)
	assert.Empty(t, moved.Faults)
	assert.Equal(t, 1, moved.Revisions)

	// What is not what was stored stays damaged, whatever the rules.
	flip(t, b, "revision", "body", "letter = 'A'")
	_, err = b.Revision(background(), 1, "A")
	var damaged *Damaged
	require.ErrorAs(t, err, &damaged)
}

// A step to another schema that was released gives the same seals for good.
func TestSealsOfTheThirdSchemaAreFixed(t *testing.T) {
	a := opened(t, first(t), Options{})
	var seal string
	require.NoError(t, a.handles.Load().read.QueryRow("select seal from revision").Scan(&seal))
	// Regression: what the program gave that brought the third schema.
	assert.Equal(t, "sha256:ca45bd41e24052a749cb6abe5d23cc204bfb176f231f12c4bb3ee7dbca0ad140", seal)
	tightened(t, "station.nest", 1)
	b := opened(t, first(t), Options{})
	var again string
	require.NoError(t, b.handles.Load().read.QueryRow("select seal from revision").Scan(&again))
	assert.Equal(t, seal, again, "whatever today's rules take")
}
