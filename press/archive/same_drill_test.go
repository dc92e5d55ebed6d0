package archive

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/issue"
)

// A planner who says that a change does not concern the drill leaves those trained who
// passed on the revision before. That is sealed, goes out and comes in with the revision,
// and is refused where the lamps mean something else. Derived: by hand from that rule; a
// zone that begins behind the push end leaves no good part.
func TestChangeThatDoesNotConcernTheDrill(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
	give := func(path, text, drill string) (issue.Revision, error) {
		h, err := a.Get(background(), 1)
		require.NoError(t, err)
		h, err = a.Save(background(), 1, At(h.Version), with(h.Draft, path, text), "")
		require.NoError(t, err)
		c.rest(time.Hour)
		return a.Issue(background(), 1, At(h.Version), issue.Signed{Prepared: "P", Checked: "C", Approved: "V", Reason: "a change", Despite: "trial", Second: "S", Drill: drill})
	}
	for i, drill := range []string{issue.DrillSame, issue.DrillSame, issue.DrillAgain, issue.DrillSame, ""} {
		r, err := give("title.notes", strings.Repeat("x", i+1), drill)
		require.NoError(t, err)
		if i == 0 {
			assert.Empty(t, r.Drill, "the first has nothing before it")
		} else {
			assert.Equal(t, drill, r.Drill)
		}
	}
	all, err := a.Revisions(background(), 1)
	require.NoError(t, err)
	digests := func(from, to int) (out []string) {
		for _, r := range all[from:to] {
			out = append(out, r.PlanDigest)
		}
		return out
	}
	assert.Equal(t, digests(0, 1), issue.Counting(all), "of E nobody said anything: it concerns the drill")
	assert.Equal(t, digests(1, 3), issue.Counting(all[1:]), "D is as C, which everybody must learn anew")
	assert.Equal(t, digests(3, 5), issue.Counting(all[3:]))

	_, err = give("title.notes", "y", "perhaps")
	var refused *issue.Refused
	require.ErrorAs(t, err, &refused)
	require.True(t, refused.Problems.Has(issue.PathDrill))
	_, err = give("window.zone_end", "115.15", issue.DrillSame) // what runs to the push end leaves the zone then
	require.ErrorAs(t, err, &refused)
	require.True(t, refused.Problems.Has(issue.PathDrill))
	assert.Contains(t, refused.Problems.Error(), "mean something else than in revision E")

	out := filepath.Join(t.TempDir(), "out")
	_, err = a.WriteOut(background(), out, func(int, int, string) {})
	require.NoError(t, err)
	b := opened(t, t.TempDir(), Options{Now: c.now})
	_, err = b.BringIn(background(), []string{out}, func(int, int, string) {})
	require.NoError(t, err)
	came, err := b.Revisions(background(), 1)
	require.NoError(t, err)
	require.Len(t, came, 5)
	for i := range came {
		assert.Equal(t, all[i].Drill, came[i].Drill)
	}
	found, err := filepath.Glob(filepath.Join(out, "*", "revision-D.issue.json"))
	require.NoError(t, err)
	require.Len(t, found, 1)
	data, err := os.ReadFile(found[0])
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(found[0], []byte(strings.Replace(string(data), `"same"`, `"maybe"`, 1)), 0o600))
	_, err = readIssue(found[0])
	require.ErrorContains(t, err, "what is said of the drill")

	_, err = a.handles.Load().write.Exec("drop trigger revision_stays; update revision set drill = 'same' where letter = 'C'")
	require.NoError(t, err)
	report, err := a.Check(background())
	require.NoError(t, err)
	assert.Equal(t, []Fault{{Plan: 1, What: "revision C", Why: "does not match its digest"}}, report.Faults)
}
