package archive

import (
	"context"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/press/issue"
	"ramplan/static"
)

// example gives the draft of the example plan.
func example(t testing.TB) *press.Draft {
	t.Helper()
	plan, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	return plan.Draft()
}

// with gives a copy of a draft with one entry set.
func with(d *press.Draft, path, text string) *press.Draft {
	c := &press.Draft{Entries: append([]press.Entry(nil), d.Entries...)}
	c.Set(path, text)
	return c
}

// A clock stands still until it is told to go.
type clock struct{ at time.Time }

func (c *clock) now() time.Time       { return c.at }
func (c *clock) rest(d time.Duration) { c.at = c.at.Add(d) }
func newClock() *clock                { return &clock{time.Date(2026, 3, 2, 8, 0, 0, 0, time.UTC)} }
func background() context.Context     { return context.Background() }
func text(h Head, path string) string { s, _ := h.Draft.Get(path); return s }
func opened(t testing.TB, dir string, o Options) *Archive {
	t.Helper()
	a, err := Open(background(), dir, o)
	require.NoError(t, err)
	t.Cleanup(func() { _ = a.Close() })
	return a
}

func TestDraftIsKept(t *testing.T) {
	c := newClock()
	dir := t.TempDir()
	a := opened(t, dir, Options{First: []*press.Draft{example(t)}, Now: c.now})
	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	require.Equal(t, int64(1), h.Version)

	c.rest(time.Minute)
	h2, err := a.Save(background(), 1, At(h.Version), with(h.Draft, "station.nest", "not yet"), "")
	require.NoError(t, err)
	require.Equal(t, int64(2), h2.Version)
	require.True(t, h2.CanUndo)

	_, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "station.nest", "other"), "")
	var stale *Stale
	require.ErrorAs(t, err, &stale)
	require.Equal(t, "not yet", text(stale.Head, "station.nest"))

	require.NoError(t, a.Close())
	b := opened(t, dir, Options{First: []*press.Draft{example(t)}})
	h, err = b.Get(background(), 1)
	require.NoError(t, err)
	require.Equal(t, "not yet", text(h, "station.nest"))
	_, total, err := b.List(background(), Query{Limit: 10})
	require.NoError(t, err)
	require.Equal(t, 1, total, "the examples stand on a new shelf only")
	last, err := b.LastPlan(background(), 1, h.State)
	require.NoError(t, err)
	plan, _ := example(t).Check()
	require.Equal(t, plan.Digest(), last.Digest())
}

func TestTypingIsOneStateAPause(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
	h, _ := a.Get(background(), 1)
	d := h.Draft
	c.rest(time.Minute)
	for _, typed := range []string{"1", "12", "123"} {
		var err error
		h, err = a.Save(background(), 1, At(h.Version), with(d, "station.nest", typed), "")
		require.NoError(t, err)
		c.rest(Pause / 2)
	}
	require.Equal(t, int64(4), h.Version, "each save has a version of its own")
	require.Equal(t, int64(2), h.State)
	c.rest(Pause)
	h, err := a.Save(background(), 1, At(h.Version), with(d, "station.nest", "1234"), "")
	require.NoError(t, err)
	require.Equal(t, int64(3), h.State)
	h, err = a.Undo(background(), 1, At(h.Version))
	require.NoError(t, err)
	require.Equal(t, "123", text(h, "station.nest"))
	h, err = a.Redo(background(), 1, At(h.Version))
	require.NoError(t, err)
	require.Equal(t, "1234", text(h, "station.nest"))
	h, err = a.Restore(background(), 1, At(h.Version), 1)
	require.NoError(t, err)
	require.Empty(t, drafts.Changes(d, h.Draft))
	states, err := a.History(background(), 1, 0, 10)
	require.NoError(t, err)
	require.Len(t, states, 4)
}

func TestIssue(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
	h, _ := a.Get(background(), 1)
	signed := issue.Signed{Prepared: "P", Checked: "C", Approved: "V", Reason: "first issue"}
	_, err := a.Issue(background(), 1, At(h.Version), issue.Signed{})
	var refused *issue.Refused
	require.ErrorAs(t, err, &refused)
	require.True(t, refused.Problems.Has(issue.PathReason))
	r, err := a.Issue(background(), 1, At(h.Version), signed)
	if errors := (*issue.Refused)(nil); err != nil {
		require.ErrorAs(t, err, &errors)
		signed.Despite, signed.Second = "trial", "S"
		r, err = a.Issue(background(), 1, At(h.Version), signed)
	}
	require.NoError(t, err)
	require.Equal(t, "A", r.Letter)
	c.rest(time.Hour)
	again, err := a.Issue(background(), 1, At(h.Version), signed)
	require.NoError(t, err)
	require.Equal(t, r.At, again.At, "the answer to the first was lost: it is not issued twice")
	require.Equal(t, "A", again.Letter)
	other := signed
	other.Reason = "another reason"
	_, err = a.Issue(background(), 1, At(h.Version), other)
	require.ErrorAs(t, err, &refused, "one plan is not issued twice")
	require.Contains(t, refused.Error(), "issued already, as revision A")
	c.rest(time.Hour)
	h, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "title.notes", "changed"), "")
	require.NoError(t, err)
	again, err = a.Issue(background(), 1, At(h.Version), other)
	require.NoError(t, err)
	require.Equal(t, "B", again.Letter)
	_, err = a.handles.Load().write.Exec("update revision set reason = 'other'")
	require.ErrorContains(t, err, "never changed")
	_, err = a.handles.Load().write.Exec("delete from revision")
	require.ErrorContains(t, err, "never removed")
	items, _, err := a.List(background(), Query{Text: "sleev", Limit: 5})
	require.NoError(t, err)
	require.Len(t, items, 1)
	require.Equal(t, "B", items[0].Revision)
}

func TestOwnChangesMakeNoWindowStale(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: newClock().now})
	h, _ := a.Get(background(), 1)
	d, in := h.Draft, func(window string, version int64) Start { return Start{Version: version, Window: window} }
	_, err := a.Save(background(), 1, in("w1", 1), with(d, "station.nest", "1"), "")
	require.NoError(t, err)
	_, err = a.Save(background(), 1, in("w1", 1), with(d, "station.nest", "2"), "")
	require.NoError(t, err, "the answer to the first was lost")
	_, err = a.Save(background(), 1, in("w2", 3), with(d, "station.nest", "3"), "")
	require.NoError(t, err)
	var stale *Stale
	_, err = a.Save(background(), 1, in("w1", 3), with(d, "station.nest", "4"), "")
	require.ErrorAs(t, err, &stale, "another window changed it since")
	_, err = a.Save(background(), 1, in("w2", 2), with(d, "station.nest", "5"), "")
	require.ErrorAs(t, err, &stale, "another window changed it between")
}

// TestLastPlanFollowsItsOwnLine: after undoing, what was undone is no state that
// the draft comes from.
func TestLastPlanFollowsItsOwnLine(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	save := func(path, typed string) {
		t.Helper()
		c.rest(time.Minute)
		h, err = a.Save(background(), 1, At(h.Version), with(h.Draft, path, typed), "")
		require.NoError(t, err)
	}
	lasting := func() string {
		t.Helper()
		p, err := a.LastPlan(background(), 1, h.State)
		require.NoError(t, err)
		require.NotNil(t, p)
		return p.Digest()
	}
	first := lasting()
	save("station.nest", "141")
	require.NotEqual(t, first, lasting(), "a sound state is its own")
	h, err = a.Undo(background(), 1, At(h.Version))
	require.NoError(t, err)
	require.Equal(t, first, lasting())
	save("station.nest", "abc")
	save("station.nest", "abcd")
	require.Equal(t, first, lasting(), "not the state that was undone")
}
