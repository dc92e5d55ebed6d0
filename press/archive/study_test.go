package archive

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/proving"
)

// master is a study as somebody types it, with decimal commas.
func master(readings ...string) *proving.Typed {
	t := proving.NewTyped(proving.Master)
	t.SetHead("taken_at", "2026-03-02")
	t.SetHead("height", "40")
	for _, r := range readings {
		t.Rows = append(t.Rows, []string{r, ""})
	}
	return t
}

// What is typed is kept as typed, readable or not, until it is signed; then it never changes.
func TestStudyIsTypedAndSigned(t *testing.T) {
	c := newClock()
	dir := t.TempDir()
	a := opened(t, dir, Options{First: []*press.Draft{example(t)}, Now: c.now})
	k, err := a.StartStudy(background(), 1, proving.Master, nil)
	require.NoError(t, err)
	assert.Equal(t, int64(1), k.Version)
	assert.False(t, k.Signed())

	typed := master("100,1", " 1oo,2 ", "", "100.3\x00<")
	k, err = a.SaveStudy(background(), 1, k.ID, 1, typed)
	require.NoError(t, err)
	assert.Equal(t, int64(2), k.Version)
	assert.Equal(t, typed, k.Typed, "nothing lost")
	_, err = a.SaveStudy(background(), 1, k.ID, 1, master("7"))
	var stale *StaleStudy
	require.ErrorAs(t, err, &stale)
	assert.Equal(t, typed, stale.Stands.Typed)
	same, err := a.SaveStudy(background(), 1, k.ID, 1, typed)
	require.NoError(t, err, "sent again after a lost answer")
	assert.Equal(t, int64(2), same.Version)

	_, err = a.SignStudy(background(), 1, k.ID, 2, "P. Rill")
	var faults proving.TypedFaults
	require.ErrorAs(t, err, &faults)
	assert.NotEmpty(t, faults.At(2, "reading"))
	assert.NotEmpty(t, faults.At(4, "reading"))
	k, err = a.SaveStudy(background(), 1, k.ID, 2, master("100,1", "100,2"))
	require.NoError(t, err)
	_, err = a.SignStudy(background(), 1, k.ID, 3, "  ")
	require.ErrorIs(t, err, ErrNoSigner)
	_, err = a.SignStudy(background(), 1, k.ID, 2, "P. Rill")
	require.ErrorAs(t, err, &stale)
	c.rest(time.Hour)
	signed, err := a.SignStudy(background(), 1, k.ID, 3, " P.  Rill")
	require.NoError(t, err)
	assert.True(t, signed.Signed() && signed.Counts())
	assert.Equal(t, c.at, signed.SignedAt)
	assert.Equal(t, "P. Rill", signed.SignedBy)
	require.Len(t, signed.Study.Rows, 2)
	assert.Equal(t, 100.2, *signed.Study.Rows[1].Reading)
	again, err := a.SignStudy(background(), 1, k.ID, 3, "P. Rill")
	require.NoError(t, err)
	assert.Equal(t, signed, again)

	_, err = a.SignStudy(background(), 1, k.ID, 4, "Another")
	require.ErrorIs(t, err, ErrSigned)
	_, err = a.SaveStudy(background(), 1, k.ID, 4, master("1"))
	require.ErrorIs(t, err, ErrSigned)
	require.ErrorIs(t, a.DropStudy(background(), 1, k.ID, 4), ErrSigned)

	require.NoError(t, a.Close())
	a = opened(t, dir, Options{Now: c.now})
	all, err := a.Studies(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, []KeptStudy{signed}, all)
	_, err = a.Study(background(), 2, k.ID)
	require.ErrorIs(t, err, ErrNotFound, "of another plan")
}

// A correction takes the place of what it names when it is signed, once, and is of its kind.
func TestStudyIsCorrected(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: newClock().now})
	sign := func(k KeptStudy) KeptStudy {
		t.Helper()
		k, err := a.SignStudy(background(), 1, k.ID, k.Version, "P. Rill")
		require.NoError(t, err)
		return k
	}
	open, err := a.StartStudy(background(), 1, proving.Master, master("100"))
	require.NoError(t, err)
	_, err = a.CorrectStudy(background(), 1, open.ID)
	require.ErrorIs(t, err, ErrOtherKind, "it is typed over as long as it is not signed")
	old := sign(open)
	new1, err := a.CorrectStudy(background(), 1, old.ID)
	require.NoError(t, err)
	new2, err := a.CorrectStudy(background(), 1, old.ID)
	require.NoError(t, err, "two may begin")
	assert.Equal(t, old.Typed, new1.Typed)
	counting, err := a.CountingStudies(background(), 1)
	require.NoError(t, err)
	assert.Len(t, counting, 1)
	new1, err = a.SaveStudy(background(), 1, new1.ID, 1, master("101"))
	require.NoError(t, err)
	new1 = sign(new1)
	_, err = a.SignStudy(background(), 1, new2.ID, 1, "P. Rill")
	require.ErrorIs(t, err, ErrCorrected)
	counting, err = a.CountingStudies(background(), 1)
	require.NoError(t, err)
	require.Len(t, counting, 1)
	assert.Equal(t, 101.0, *counting[0].Rows[0].Reading)
	old, err = a.Study(background(), 1, old.ID)
	require.NoError(t, err)
	assert.Equal(t, new1.ID, old.ReplacedBy)
	assert.False(t, old.Damaged)
	require.NoError(t, a.DropStudy(background(), 1, new2.ID, 1))
	_, err = a.CorrectStudy(background(), 1, old.ID)
	require.ErrorIs(t, err, ErrCorrected)
}

// What a program posts waits for a signature and is not typed over; an event counts at once.
func TestStudyIsPosted(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: newClock().now})
	s, faults := master("100.125", "100.25").Study()
	require.Empty(t, faults)
	k, err := a.PostStudy(background(), 1, s, "logger 4")
	require.NoError(t, err)
	assert.True(t, k.Posted)
	assert.False(t, k.Signed() || k.Counts())
	assert.Equal(t, s, k.Study)
	assert.NotEmpty(t, k.Digest)
	again, err := a.PostStudy(background(), 1, s, "logger 4")
	require.NoError(t, err)
	assert.Equal(t, k, again)
	_, err = a.SaveStudy(background(), 1, k.ID, 1, master("1"))
	require.ErrorIs(t, err, ErrPosted)
	signed, err := a.SignStudy(background(), 1, k.ID, 1, "P. Rill")
	require.NoError(t, err)
	assert.True(t, signed.Counts())
	assert.Equal(t, s, signed.Study)
	assert.Equal(t, k.Digest, signed.Digest)

	event := &proving.Study{Format: proving.Format, Kind: proving.Event, TakenAt: "2026-03-02", Event: proving.Crash}
	_, err = a.PostStudy(background(), 1, event, "")
	require.ErrorIs(t, err, ErrNoSigner)
	k, err = a.PostStudy(background(), 1, event, "press 2")
	require.NoError(t, err)
	assert.True(t, k.Counts())
	assert.Equal(t, "press 2", k.SignedBy)
	_, err = a.PostStudy(background(), 9, event, "press 2")
	require.ErrorIs(t, err, ErrNotFound)
}

// A check of a shift is kept for good with its revision, and proves nothing.
func TestShiftChecks(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
	issueNext(t, a, 1, "first issue")
	typed := proving.NewTyped(proving.Samples)
	typed.SetHead("taken_at", "2026-03-02")
	typed.Rows = [][]string{{"long", "25,3", "off", "off", "", ""}, {"empty", "", "off", "off", "", "wiped"}}
	first, err := a.AddShiftCheck(background(), 1, NewCheck{Letter: "A", By: "Bo", Passed: proving.Pass, Typed: typed, Once: "form 1"})
	require.NoError(t, err)
	c.rest(8 * time.Hour)
	again, err := a.AddShiftCheck(background(), 1, NewCheck{Letter: "A", By: "Bo", Passed: proving.Pass, Typed: typed, Once: "form 1"})
	require.NoError(t, err)
	assert.Equal(t, first, again)
	second, err := a.AddShiftCheck(background(), 1, NewCheck{Letter: "A", By: "Cy", Passed: proving.Fail, Typed: typed, Once: "form 2"})
	require.NoError(t, err)
	all, err := a.ShiftChecks(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, []KeptStudy{second, first}, all)
	assert.Equal(t, "A", second.Check.Letter)
	r, err := a.Revision(background(), 1, "A")
	require.NoError(t, err)
	assert.Equal(t, r.PlanDigest, second.Check.Digest)
	assert.False(t, second.Counts())
	studies, err := a.Studies(background(), 1)
	require.NoError(t, err)
	assert.Empty(t, studies)
	for _, bad := range []struct {
		c    NewCheck
		want error
	}{
		{NewCheck{Letter: "B", By: "Bo", Passed: proving.Pass, Typed: typed}, ErrNotFound},
		{NewCheck{Letter: "A", By: "", Passed: proving.Pass, Typed: typed}, ErrNoSigner},
		{NewCheck{Letter: "A", By: "Bo", Typed: typed}, ErrOutcome},
		{NewCheck{Letter: "A", By: "Bo", Passed: proving.Pass, Typed: master("1")}, ErrKind},
	} {
		_, err := a.AddShiftCheck(background(), 1, bad.c)
		assert.ErrorIs(t, err, bad.want)
	}
}
