package archive

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/press/issue"
)

func silent(int, int, string) {}

// issueNext issues the draft of a plan, with what a plan with blockers needs.
func issueNext(t *testing.T, a *Archive, id ID, reason string) issue.Revision {
	t.Helper()
	h, err := a.Get(background(), id)
	require.NoError(t, err)
	r, err := a.Issue(background(), id, At(h.Version), issue.Signed{Prepared: "P. Rill", Checked: "C. Vane", Approved: "A. Mast", Reason: reason, Despite: "for the trial run", Second: "S. Gust"})
	require.NoError(t, err)
	return r
}

// fullShelf makes an archive with every kind of thing in it.
func fullShelf(t *testing.T) *Archive {
	t.Helper()
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
	issueNext(t, a, 1, "first issue")
	c.rest(time.Hour)
	h, err := a.Save(background(), 1, At(1), with(example(t), "title.notes", "näher am\n„Nest“"), "")
	require.NoError(t, err)
	issueNext(t, a, 1, "notes")
	c.rest(time.Hour)
	_, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "station.nest", "half ty"), "")
	require.NoError(t, err)
	_, err = a.Create(background(), example(t), drafts.DidCopy) // the same name again
	require.NoError(t, err)
	_, err = a.Create(background(), &press.Draft{Entries: []press.Entry{{Path: "title.name", Text: "../../etc: a/b\\c*?.."}}}, drafts.DidMake)
	require.NoError(t, err)
	_, err = a.Create(background(), &press.Draft{}, drafts.DidMake)
	require.NoError(t, err)
	gone, err := a.Create(background(), example(t), drafts.DidCopy)
	require.NoError(t, err)
	_, err = a.Bin(background(), gone.ID, At(gone.Version))
	require.NoError(t, err)
	_, err = a.CreateRam(background(), bigRam(t))
	require.NoError(t, err)
	_, err = a.KeepTraining(background(), sat("one", "A Learner", 1, "d", true))
	require.NoError(t, err)
	return a
}

// An archive goes out as plain files and comes in again: drafts, revisions and
// rams are the same, date and digest.
func TestOutAndIn(t *testing.T) {
	a := fullShelf(t)
	folder := filepath.Join(t.TempDir(), "plain")
	m, err := a.WriteOut(background(), folder, silent)
	require.NoError(t, err)
	assert.Equal(t, &Moved{Plans: 4, Revisions: 2, Rams: 1, Binned: 1, Trainings: 1}, m)
	for _, name := range []string{
		"WS-210 Bearing sleeve into anemometer hub/draft.json", "WS-210 Bearing sleeve into anemometer hub/revision-A.json", "WS-210 Bearing sleeve into anemometer hub/revision-B.issue.json",
		"WS-210 Bearing sleeve into anemometer hub (2)/plan.json", "etc- a-b-c--/draft.json", "plan/draft.json", "rams/Ram 3.json",
	} {
		assert.FileExists(t, filepath.Join(folder, filepath.FromSlash(name)))
	}
	_, err = a.WriteOut(background(), folder, silent)
	assert.ErrorContains(t, err, "not empty")

	later := &clock{time.Date(2027, 1, 1, 0, 0, 0, 0, time.UTC)}
	b := opened(t, t.TempDir(), Options{Now: later.now})
	m, err = b.BringIn(background(), []string{folder}, silent)
	require.NoError(t, err)
	assert.Equal(t, &Moved{Plans: 4, Revisions: 2, Rams: 1}, m)
	report, err := b.Check(background())
	require.NoError(t, err)
	assert.Empty(t, report.Faults)
	items, _, err := b.List(background(), Query{Text: "anemometer", Order: ByChange, Limit: 9})
	require.NoError(t, err)
	require.Len(t, items, 2)
	var moved ID
	for _, i := range items {
		if i.Revision != "" {
			moved = i.ID
		}
	}
	was, err := a.Get(background(), 1)
	require.NoError(t, err)
	is, err := b.Get(background(), moved)
	require.NoError(t, err)
	assert.Equal(t, was.Draft, is.Draft)
	before, err := a.Revisions(background(), 1)
	require.NoError(t, err)
	after, err := b.Revisions(background(), moved)
	require.NoError(t, err)
	require.Len(t, after, 2)
	for i := range before {
		assert.Equal(t, before[i].PlanDigest, after[i].PlanDigest)
		before[i].Plan, after[i].Plan = nil, nil
		assert.Equal(t, before[i], after[i], "date, letter, names and reason")
	}
	next := issueNext(t, b, items[0].ID, "goes on")
	assert.Contains(t, []string{"A", "C"}, next.Letter)
}

// A revision that is not what was issued does not come in, and its plan neither.
func TestUntrueRevisionsStayOutside(t *testing.T) {
	a := fullShelf(t)
	for name, c := range map[string]struct {
		file string
		edit func(string) string
		want string
	}{
		"another plan":         {"revision-A.json", func(s string) string { return strings.Replace(s, "anemometer", "barometer", 1) }, "not the plan that was issued"},
		"broken plan":          {"revision-A.json", func(s string) string { return s[1:] }, "revision-A.json"},
		"missing plan":         {"revision-B.json", nil, "no such file"},
		"missing A":            {"revision-A.issue.json", nil, "revision-A.json has no file"},
		"nothing of A":         {"", nil, "B is found where A belongs"},
		"no date":              {"revision-A.issue.json", func(s string) string { return strings.Replace(s, "2026-03-02T08", "yesterday", 1) }, "date of issue"},
		"B before A":           {"revision-A.issue.json", func(s string) string { return strings.Replace(s, "2026-03-02T08", "2026-03-03T08", 1) }, "older than the one before"},
		"nobody approved":      {"revision-A.issue.json", func(s string) string { return strings.Replace(s, "A. Mast", "", 1) }, "who approved it is needed"},
		"unknown entry":        {"revision-A.issue.json", func(s string) string { return strings.Replace(s, `"letter"`, `"letters"`, 1) }, "is no ramplan.issue/1"},
		"another format":       {"revision-A.issue.json", func(s string) string { return strings.Replace(s, "issue/1", "issue/2", 1) }, "is no ramplan.issue/1"},
		"a letter that is not": {"revision-A.issue.json", func(s string) string { return strings.Replace(s, `"A"`, `"I"`, 1) }, "found where"},
		"broken draft":         {"draft.json", func(s string) string { return strings.Replace(s, `"fields"`, `"field"`, 1) }, "field"},
	} {
		t.Run(name, func(t *testing.T) {
			folder := filepath.Join(t.TempDir(), "plain")
			_, err := a.WriteOut(background(), folder, silent)
			require.NoError(t, err)
			plan := filepath.Join(folder, "WS-210 Bearing sleeve into anemometer hub")
			if c.file == "" {
				require.NoError(t, os.Remove(filepath.Join(plan, "revision-A.json")))
				c.file = "revision-A.issue.json"
			}
			file := filepath.Join(plan, c.file)
			data, err := os.ReadFile(file)
			require.NoError(t, err)
			if c.edit == nil {
				require.NoError(t, os.Remove(file))
			} else {
				edited := c.edit(string(data))
				require.NotEqual(t, string(data), edited)
				require.NoError(t, os.WriteFile(file, []byte(edited), 0o600))
			}
			b := opened(t, t.TempDir(), Options{})
			m, err := b.BringIn(background(), []string{plan}, silent)
			require.NoError(t, err)
			assert.Zero(t, m.Revisions)
			require.NotEmpty(t, m.Faults)
			assert.Contains(t, strings.Join(m.Faults, "\n"), c.want)
			_, total, err := b.List(background(), Query{Limit: 1})
			require.NoError(t, err)
			assert.Zero(t, total, "nothing of it came in")
		})
	}
}

func TestBringInFiles(t *testing.T) {
	folder := t.TempDir()
	write := func(name string, data []byte) string {
		path := filepath.Join(folder, name)
		require.NoError(t, os.WriteFile(path, data, 0o600))
		return path
	}
	plan, _ := example(t).Check()
	good := write("one.json", plan.JSON())
	draft := write("two.json", (&press.Draft{Entries: []press.Entry{{Path: "title.name", Text: "new"}}}).Encode())
	bad := write("three.json", []byte(`{"format": "ramplan.plan/1", "station": {"nest": "x"}}`))
	large := write("large.json", make([]byte, press.MaxBytes+1))
	write("notes.txt", []byte("left alone"))
	a := opened(t, t.TempDir(), Options{})
	m, err := a.BringIn(background(), []string{good, bad, filepath.Join(folder, "nowhere.json"), large, draft}, silent)
	require.NoError(t, err)
	assert.Equal(t, 2, m.Plans, "the sound ones came in")
	said := strings.Join(m.Faults, "\n")
	assert.Contains(t, said, "three.json: station.nest")
	assert.Contains(t, said, "nowhere.json: no such file")
	assert.Contains(t, said, "4 MiB")
	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	same, faults := h.Draft.Check()
	require.Empty(t, faults)
	assert.Equal(t, plan.Digest(), same.Digest())

	require.NoError(t, os.Remove(bad))
	require.NoError(t, os.Remove(large))
	m, err = a.BringIn(background(), []string{folder}, silent)
	require.NoError(t, err)
	assert.Equal(t, &Moved{Plans: 2}, m)
	m, err = a.BringIn(background(), []string{t.TempDir()}, silent)
	require.NoError(t, err)
	assert.Contains(t, strings.Join(m.Faults, ""), "no plan, draft or ram")
}

func TestMovingStops(t *testing.T) {
	a := fullShelf(t)
	ctx, cancel := context.WithCancel(background())
	folder := filepath.Join(t.TempDir(), "plain")
	m, err := a.WriteOut(ctx, folder, func(done, _ int, _ string) {
		if done == 2 {
			cancel()
		}
	})
	require.ErrorIs(t, err, context.Canceled)
	assert.Less(t, m.Plans, 4)

	ctx, cancel = context.WithCancel(background())
	b := opened(t, t.TempDir(), Options{})
	m, err = b.BringIn(ctx, []string{folder}, func(done, _ int, _ string) {
		if done == 1 {
			cancel()
		}
	})
	require.ErrorIs(t, err, context.Canceled)
	report, err := b.Check(background())
	require.NoError(t, err)
	assert.Empty(t, report.Faults)
	assert.Equal(t, m.Plans, report.Plans, "what is counted is what came in")

	// Also when it is stopped while one is under way, which is then ended.
	ctx, cancel = context.WithCancel(background())
	defer cancel()
	c := opened(t, t.TempDir(), Options{Now: func() time.Time { cancel(); return time.Now() }})
	m, err = c.BringIn(ctx, []string{folder}, silent)
	require.ErrorIs(t, err, context.Canceled)
	assert.Equal(t, 1, m.Plans)
}

// Regression values: they keep the names readable and allowed everywhere.
func TestFileNames(t *testing.T) {
	for text, want := range map[string]string{
		"WS-210 Bearing sleeve": "WS-210 Bearing sleeve",
		" . ":                   "", "": "",
		"Hülse Ø 12,5 µm":            "Hülse Ø 12,5 µm",
		"軸受\tスリーブ":                   "軸受 スリーブ",
		"a/b\\c:d*e?f\"g<h>i|j\x00k": "a-b-c-d-e-f-g-h-i-j-k",
		"..":                         "",
		"con":                        "_con",
		"-rf --x":                    "rf --x", "- -": "", "-con": "_con", // from memory: programs take such names for flags
		"Lpt1.x":                 "_Lpt1.x",
		"context":                "context",
		strings.Repeat("a", 200): strings.Repeat("a", 80),
		strings.Repeat("𐍈", 90):  strings.Repeat("𐍈", 60),
	} {
		assert.Equal(t, want, fileName(text), "%q", text)
	}
	n := names{}
	assert.Equal(t, []string{"a", "A (2)", "plan", "plan (2)"}, []string{n.of("a", "plan"), n.of("A", "plan"), n.of("", "plan"), n.of("..", "plan")})
}
