package archive

import (
	"database/sql"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// first puts an archive as the first schema left it into a folder: two plans, one
// with revision A and three later states, of which one is undone, the other half
// typed. The program of that time made it.
func first(t *testing.T) (dir string) {
	t.Helper()
	data, err := os.ReadFile("../../testdata/archive/schema1.db")
	require.NoError(t, err)
	dir = t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, FileName), data, 0o600))
	return dir
}

func TestFirstSchemaIsBroughtForward(t *testing.T) {
	dir := first(t)
	report, err := CheckFolder(background(), dir)
	require.NoError(t, err)
	assert.Equal(t, "2 plans, 7 states, 1 revision, 0 damaged", report.String(), "a check alone brings nothing forward")

	a := opened(t, dir, Options{First: []*press.Draft{example(t)}})
	report, err = a.Check(background())
	require.NoError(t, err)
	assert.Empty(t, report.Faults)
	assert.Equal(t, 2, report.Plans, "the examples stand on a new shelf only")

	older := filepath.Join(dir, "ramplan-schema1.db")
	db, schema, err := look(background(), older)
	require.NoError(t, err)
	require.NoError(t, db.Close())
	assert.Equal(t, 1, schema, "the older program can still be had back")
	report, err = checkFile(background(), older)
	require.NoError(t, err)
	assert.Equal(t, "2 plans, 7 states, 1 revision, 0 damaged", report.String())

	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, "139.9", text(h, "station.nest"), "140 was typed and undone")
	assert.Equal(t, "A", h.Revision)
	assert.True(t, h.CanUndo && h.CanRedo)
	h, err = a.Redo(background(), 1, At(h.Version))
	require.NoError(t, err)
	assert.Equal(t, "140", text(h, "station.nest"))
	r, err := a.Revision(background(), 1, "A")
	require.NoError(t, err)
	assert.Equal(t, "P. Rill", r.Prepared)
	plan, _ := example(t).Check()
	assert.Equal(t, plan.Digest(), r.PlanDigest)
	other, err := a.Get(background(), 2)
	require.NoError(t, err)
	assert.Equal(t, "14,", text(other, "station.nest"))
	items, _, err := a.List(background(), Query{Text: "vane hub", Limit: 5})
	require.NoError(t, err)
	require.Len(t, items, 1)

	// Seals of the old revisions hold, and can be broken.
	_, err = a.handles.Load().write.Exec("drop trigger revision_stays; update revision set approved = 'another'")
	require.NoError(t, err)
	_, err = a.Revision(background(), 1, "A")
	var damaged *Damaged
	require.ErrorAs(t, err, &damaged)
}

func TestLookBringsForwardUnlessServed(t *testing.T) {
	dir := first(t)
	lock, err := TakeLock(dir)
	require.NoError(t, err)
	_, err = Look(background(), dir)
	require.ErrorContains(t, err, "stop it first")
	require.NoError(t, lock.Release())
	a, err := Look(background(), dir)
	require.NoError(t, err)
	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	_, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "station.nest", "1"), "")
	require.ErrorContains(t, err, "to look at only")
	require.NoError(t, a.Close())
}

func TestNewerSchemaIsRefused(t *testing.T) {
	dir := t.TempDir()
	a := opened(t, dir, Options{})
	_, err := a.handles.Load().write.Exec("pragma user_version = 99")
	require.NoError(t, err)
	require.NoError(t, a.Close())
	for name, open := range map[string]func() error{
		"open":  func() error { _, err := Open(background(), dir, Options{}); return err },
		"look":  func() error { _, err := Look(background(), dir); return err },
		"check": func() error { _, err := CheckFolder(background(), dir); return err },
	} {
		var failure *Failure
		require.ErrorAs(t, open(), &failure, name)
		assert.Contains(t, failure.Text, "schema 99", name)
		assert.Contains(t, failure.Text, "newer ramplan", name)
	}
}

// What holds issued revisions is the database, not only this program.
func TestDatabaseKeepsRevisions(t *testing.T) {
	a := opened(t, first(t), Options{})
	for statement, want := range map[string]string{
		"update revision set reason = 'other'": "never changed",
		"delete from revision":                 "never removed",
		"delete from plan":                     "through the bin only",
		"insert or replace into revision select plan, seq, letter, at, 'another', checked, approved, reason, despite, second, plan_digest, digest, body, seal, drill from revision": "never replaced",
	} {
		_, err := a.handles.Load().write.Exec(statement)
		assert.ErrorContains(t, err, want, statement)
	}
	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	_, err = a.Bin(background(), 1, At(h.Version))
	require.NoError(t, err)
	n, err := a.EmptyBin(background())
	require.NoError(t, err)
	assert.Equal(t, 1, n)
	_, err = a.Get(background(), 1)
	assert.ErrorIs(t, err, ErrNotFound)
	report, err := a.Check(background())
	require.NoError(t, err)
	assert.Equal(t, "1 plan, 3 states, 0 revisions, 0 damaged", report.String())
}

// Two processes may start on an empty folder at the same moment.
func TestOpenedTwiceAtOnce(t *testing.T) {
	dir := t.TempDir()
	done := make(chan error)
	for range 4 {
		go func() {
			a, err := Open(background(), dir, Options{First: []*press.Draft{{Entries: []press.Entry{{Path: "title.name", Text: "x"}}}}})
			if err == nil {
				err = a.Close()
			}
			done <- err
		}()
	}
	for range 4 {
		select {
		case err := <-done:
			require.NoError(t, err)
		case <-time.After(20 * time.Second):
			t.Fatal("an opening hangs")
		}
	}
	report, err := CheckFolder(background(), dir)
	require.NoError(t, err)
	assert.Equal(t, "1 plan, 1 state, 0 revisions, 0 damaged", report.String())
}

// A foreign database is not taken for an archive.
func TestForeignDatabaseIsRefused(t *testing.T) {
	dir := t.TempDir()
	db, err := sql.Open("sqlite", filepath.Join(dir, FileName))
	require.NoError(t, err)
	_, err = db.Exec("create table t (x)")
	require.NoError(t, err)
	require.NoError(t, db.Close())
	_, err = CheckFolder(background(), dir)
	require.ErrorContains(t, err, "no archive")
	_, err = Open(background(), dir, Options{})
	require.ErrorContains(t, err, "no archive")
}
