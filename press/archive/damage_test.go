package archive

import (
	"fmt"
	"os"
	"path/filepath"
	"ramplan/press"
	"ramplan/press/issue"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"github.com/stretchr/testify/require"
)

// flip changes one bit in the middle of a stored document, as a failing disk
// would: without anybody asking.
func flip(t *testing.T, a *Archive, table, column, where string) {
	t.Helper()
	db := a.handles.Load().write
	_, err := db.Exec("drop trigger if exists revision_stays")
	require.NoError(t, err)
	var body []byte
	require.NoError(t, db.QueryRow(fmt.Sprintf("select %s from %s where %s", column, table, where)).Scan(&body))
	body[len(body)/2] ^= 1
	r, err := db.Exec(fmt.Sprintf("update %s set %s = $1 where %s", table, column, where), body)
	require.NoError(t, err)
	n, _ := r.RowsAffected()
	require.Equal(t, int64(1), n)
}

// typed makes a plan with a few states and gives its head.
func typed(t *testing.T, a *Archive, c *clock, values ...string) Head {
	t.Helper()
	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	for _, v := range values {
		c.rest(time.Minute)
		h, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "station.nest", v), "")
		require.NoError(t, err)
	}
	return h
}

func TestDamagedHead(t *testing.T) {
	for name, mend := range map[string]func(*testing.T, *Archive, Head, *Damaged) (Head, error){
		"restore the good state": func(t *testing.T, a *Archive, _ Head, d *Damaged) (Head, error) {
			return a.Restore(background(), 1, At(d.Good.Version), d.State)
		},
		"undo": func(t *testing.T, a *Archive, h Head, _ *Damaged) (Head, error) {
			return a.Undo(background(), 1, At(h.Version))
		},
		"save what a window still holds": func(t *testing.T, a *Archive, h Head, _ *Damaged) (Head, error) {
			return a.Save(background(), 1, At(h.Version), h.Draft, "")
		},
		"save one entry": func(t *testing.T, a *Archive, h Head, _ *Damaged) (Head, error) {
			return a.Save(background(), 1, At(h.Version), &press.Draft{Entries: []press.Entry{{Path: "station.nest", Text: "2"}}}, "")
		},
		"save nothing": func(t *testing.T, a *Archive, h Head, _ *Damaged) (Head, error) {
			return a.Save(background(), 1, At(h.Version), &press.Draft{}, "")
		},
		"bin and unbin, then restore": func(t *testing.T, a *Archive, h Head, _ *Damaged) (Head, error) {
			h, err := a.Bin(background(), 1, At(h.Version))
			require.NoError(t, err)
			h, err = a.Unbin(background(), 1, At(h.Version))
			require.NoError(t, err)
			return a.Restore(background(), 1, At(h.Version), 1)
		},
	} {
		t.Run(name, func(t *testing.T) {
			c := newClock()
			a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
			h := typed(t, a, c, "1", "2", "3")
			flip(t, a, "state", "body", "n = 4")
			_, err := a.Get(background(), 1)
			var d *Damaged
			require.ErrorAs(t, err, &d)
			require.NotNil(t, d.Good)
			assert.Equal(t, "state 4", d.What)
			assert.Equal(t, int64(3), d.State)
			assert.Equal(t, "2", text(*d.Good, "station.nest"))
			assert.Equal(t, h.Version, d.Good.Version)
			_, err = a.Issue(background(), 1, At(h.Version), issue.Signed{})
			require.ErrorAs(t, err, &d, "what is damaged is not issued")

			h, err = mend(t, a, h, d)
			require.NoError(t, err)
			got, err := a.Get(background(), 1)
			require.NoError(t, err)
			assert.Equal(t, h.Digest, got.Digest)
			report, err := a.Check(background())
			require.NoError(t, err)
			assert.Equal(t, []Fault{{Plan: 1, What: "state 4", Why: "does not match its digest"}}, report.Faults, "the damage stays visible, the rest is in step")
		})
	}
}

// Every document, and what else the archive relies on, is looked at by a check
// and told when it is read.
func TestDamageIsFound(t *testing.T) {
	const row = "plan = 1 and letter = 'A'"
	for name, c := range map[string]struct {
		harm func(*testing.T, *Archive)
		want []string
	}{
		"an old state":     {func(t *testing.T, a *Archive) { flip(t, a, "state", "body", "plan = 1 and n = 1") }, []string{"plan 1, state 1 does not match its digest"}},
		"a digest":         {sql1("update state set digest = 'sha256:0' where plan = 1 and n = 1"), []string{"plan 1, state 1 does not match its digest"}},
		"no draft":         {sql1("update state set body = x'7b7d', digest = 'sha256:44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a' where plan = 1 and n = 1"), []string{"plan 1, state 1 is no draft"}},
		"a revision":       {func(t *testing.T, a *Archive) { flip(t, a, "revision", "body", row) }, []string{"plan 1, revision A does not match its digest"}},
		"a name":           {sql1("update revision set approved = 'B. Mast' where " + row), []string{"plan 1, revision A does not match its digest"}},
		"a date":           {sql1("update revision set at = '2026-03-02T08:00:00.001Z' where " + row), []string{"plan 1, revision A does not match its digest"}},
		"a letter":         {sql1("update revision set letter = 'C' where " + row), []string{"plan 1, revision C stands at place 1, where A belongs", "plan 1, revision C does not match its digest"}},
		"a missing state":  {sql1("delete from state where plan = 1 and n = 2"), []string{"plan 1, state 1 leads on to state 2, which does not lead back", "plan 1, state 2 is not there"}},
		"a missing head":   {sql1("delete from state where plan = 1 and n = 3"), []string{"plan 1, state 2 leads on to state 3, which does not lead back", "plan 1, state 3 is not there", "plan 1, its draft is state 3, which is not there"}},
		"a link back":      {sql1("update state set prev = 3 where plan = 1 and n = 2"), []string{"plan 1, state 1 leads on to state 2, which does not lead back", "plan 1, state 2 was made from state 3, which cannot be"}},
		"a link on":        {sql1("update state set next = 7 where plan = 1 and n = 3"), []string{"plan 1, state 3 leads on to state 7, which does not lead back"}},
		"a lost count":     {sql1("update plan set top = 2 where id = 1"), []string{"plan 1, its history holds more than its 2 states"}},
		"a wrong card":     {sql1("update plan set name = 'other' where id = 1"), []string{`plan 1, its card names "other", "WS-210"; its draft "Bearing sleeve into anemometer hub", "WS-210"`}},
		"a missing search": {sql1("delete from find where rowid = 1"), []string{"plan 1, the search does not know it"}},
		"another search":   {sql1("update find set name = 'other' where rowid = 1"), []string{"plan 1, the search knows other words than its draft has"}},
		"a search of none": {sql1("insert into find (rowid, name) values (99, 'x')"), []string{"plan 99, the search finds a plan that is not there"}},
		"a stray row":      {sql1("pragma foreign_keys = 0; insert into state (plan, n, at, did, digest, valid, body) values (77, 1, '', '', '', 0, x'')"), []string{"the file holds a state that belongs to no plan"}},
		"a lost index":     {sql1("delete from find_data where id > 10"), nil},
	} {
		t.Run(name, func(t *testing.T) {
			a := fullShelf(t)
			c.harm(t, a)
			report, err := a.Check(background())
			require.NoError(t, err)
			var got []string
			for _, f := range report.Faults {
				got = append(got, f.String())
			}
			if c.want == nil {
				require.NotEmpty(t, got)
				return
			}
			assert.Equal(t, c.want, got)
		})
	}
}

// sql1 does what no method of the archive would.
func sql1(statement string) func(*testing.T, *Archive) {
	return func(t *testing.T, a *Archive) {
		t.Helper()
		_, err := a.handles.Load().write.Exec("drop trigger if exists revision_stays; " + statement)
		require.NoError(t, err)
	}
}

func TestDamagedIsToldWhereItIsRead(t *testing.T) {
	a := fullShelf(t)
	flip(t, a, "state", "body", "plan = 1 and n = 2")
	flip(t, a, "revision", "body", "plan = 1 and letter = 'A'")
	var d *Damaged
	_, err := a.State(background(), 1, 2)
	require.ErrorAs(t, err, &d)
	assert.Equal(t, int64(3), d.State)
	_, err = a.Restore(background(), 1, At(3), 2)
	require.ErrorAs(t, err, &d)
	_, err = a.Undo(background(), 1, At(3))
	require.ErrorAs(t, err, &d, "undo does not lead to what is damaged")
	require.NotNil(t, d.Good)
	_, err = a.Revision(background(), 1, "A")
	require.ErrorAs(t, err, &d)
	assert.Equal(t, "revision A", d.What)
	require.NotNil(t, d.Good)
	states, err := a.History(background(), 1, 0, 10)
	require.NoError(t, err)
	require.Len(t, states, 3)
	assert.True(t, states[1].Damaged)
	assert.Nil(t, states[1].Draft)
	issued, err := a.Revisions(background(), 1)
	require.NoError(t, err)
	require.Len(t, issued, 2)
	assert.True(t, issued[1].Damaged)
	assert.Nil(t, issued[1].Plan)
	h, err := a.Get(background(), 1)
	require.NoError(t, err, "the head is whole")

	folder := filepath.Join(t.TempDir(), "plain")
	flip(t, a, "state", "body", "plan = 1 and n = 3")
	m, err := a.WriteOut(background(), folder, silent)
	require.NoError(t, err)
	assert.Len(t, m.Faults, 2)
	assert.Contains(t, m.Faults[0], "state 1, the newest that is whole, was written in its place")
	assert.Contains(t, m.Faults[1], "revision A is damaged and was left out")
	_ = h
}

// A page of the file itself that was lost is told, and what can still be read is
// counted.
func TestTornFile(t *testing.T) {
	a := fullShelf(t)
	require.NoError(t, a.Close())
	data, err := os.ReadFile(a.Path())
	require.NoError(t, err)
	const page = 4096
	for i := 6 * page; i < 7*page; i++ {
		data[i] = 0xa5
	}
	require.NoError(t, os.WriteFile(a.Path(), data, 0o600))
	report, err := CheckFolder(background(), filepath.Dir(a.Path()))
	require.NoError(t, err)
	require.NotEmpty(t, report.Faults)
	assert.Equal(t, "the file", report.Faults[0].What)
	require.NoError(t, os.WriteFile(a.Path(), data[:len(data)/3], 0o600))
	report, err = CheckFolder(background(), filepath.Dir(a.Path()))
	if err == nil {
		assert.NotEmpty(t, report.Faults)
	}
}
