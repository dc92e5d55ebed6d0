package archive

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/press/issue"
	"ramplan/press/proving"
	"ramplan/static"
)

// proof gives studies that prove the station of the example plan: two of the examples, pushes
// on a master as the plan predicts them, and limit samples with the lamps and readings that
// it predicts.
func proof(t testing.TB) []*proving.Study {
	t.Helper()
	plan, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	r := press.Evaluate(plan)
	var out []*proving.Study
	for _, name := range []string{"load-cell.csv", "stiffness.csv"} {
		data, err := static.FS.ReadFile("examples/studies/" + name)
		require.NoError(t, err)
		s, lines := proving.ReadCSV(data)
		require.True(t, lines.Sound())
		out = append(out, s)
	}
	num := func(x float64) *float64 { return &x }
	lamp := func(on bool) *bool { return &on }
	m := &proving.Study{Format: proving.Format, Kind: proving.Master, TakenAt: "2026-11-22", Height: num(40), Rows: []proving.Row{{Reading: num(0)}}}
	middle := proving.Assess(r, []*proving.Study{m}, "2026-11-22").Studies[0].Result.(*proving.MasterResult).Predicted
	m.Rows = nil
	for i := range 25 { // back and forth, so that nothing drifts
		m.Rows = append(m.Rows, proving.Row{Reading: num(middle + 0.004*float64(i*7%5-2)/2)})
	}
	s := &proving.Study{Format: proving.Format, Kind: proving.Samples, TakenAt: "2026-11-25", PlanDigest: plan.Digest()}
	for range 3 {
		s.Rows = append(s.Rows, proving.Row{Sample: "T1", Height: num(25.11), Arrival: lamp(true), Zone: lamp(false)}, proving.Row{Sample: "G1", Height: num(25), Arrival: lamp(true), Zone: lamp(true)},
			proving.Row{Sample: "S1", Height: num(24.9), Arrival: lamp(false), Zone: lamp(true)}, proving.Row{Sample: proving.BareNest, Arrival: lamp(false), Zone: lamp(true)})
	}
	for i, row := range proving.Assess(r, []*proving.Study{s}, "2026-11-25").Studies[0].Result.(*proving.SamplesResult).Rows {
		s.Rows[i].Reading = row.PredictedReading
	}
	return append(out, m, s)
}

// signed signs studies for a plan.
func signed(t testing.TB, a *Archive, plan ID, studies ...*proving.Study) {
	t.Helper()
	for _, s := range studies {
		k, err := a.StartStudy(background(), plan, s.Kind, s.Typed())
		require.NoError(t, err)
		_, err = a.SignStudy(background(), plan, k.ID, 1, "P. Rill")
		require.NoError(t, err)
	}
}

// standing gives how a plan stands.
func standing(t testing.TB, a *Archive, plan ID, day string) Standing {
	t.Helper()
	items, _, err := a.List(background(), Query{Limit: 10})
	require.NoError(t, err)
	all, err := a.Standings(background(), items, day)
	require.NoError(t, err)
	return all[plan]
}

// The newest revision is proved from the day of the last study that is needed to a year after
// the first, unless something withdraws that, or a new revision is issued.
func TestStanding(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
	assert.Equal(t, Standing{}, standing(t, a, 1, "2026-11-28"), "nothing was issued")
	issueNext(t, a, 1, "first issue")
	assert.Equal(t, Standing{State: proving.StateNotProved}, standing(t, a, 1, "2026-11-28"))
	signed(t, a, 1, proof(t)...)
	for range 2 { // the second time it is kept
		for day, want := range map[string]Standing{
			"2026-11-24": {State: proving.StateNotProved, Studies: 4},
			"2026-11-25": {State: proving.StateProved, Until: "2027-11-20", Studies: 4},
			"2026-11-28": {State: proving.StateProved, Until: "2027-11-20", Studies: 4},
			"2027-11-20": {State: proving.StateProved, Until: "2027-11-20", Studies: 4},
			"2027-11-21": {State: proving.StateExpired, Until: "2027-11-20", Studies: 4},
		} {
			assert.Equal(t, want, standing(t, a, 1, day), day)
		}
	}
	_, err := a.PostStudy(background(), 1, &proving.Study{Format: proving.Format, Kind: proving.Event, TakenAt: "2026-11-27", Event: proving.Crash}, "press 2")
	require.NoError(t, err)
	assert.Equal(t, proving.StateWithdrawn, standing(t, a, 1, "2026-11-28").State)
	assert.Equal(t, proving.StateProved, standing(t, a, 1, "2026-11-26").State)

	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	_, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "title.notes", "another"), "")
	require.NoError(t, err)
	assert.Equal(t, proving.StateProved, standing(t, a, 1, "2026-11-26").State, "typing in the draft changes nothing")
	issueNext(t, a, 1, "notes")
	assert.Equal(t, proving.StateNotProved, standing(t, a, 1, "2026-11-26").State, "samples must be shown again")
}

// What is kept of a standing is found again without an assessment, and a damaged study leaves
// nothing proved.
func TestStandingIsKept(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: newClock().now})
	issueNext(t, a, 1, "first issue")
	signed(t, a, 1, proof(t)...)
	require.Equal(t, proving.StateProved, standing(t, a, 1, "2026-11-28").State)
	_, err := a.handles.Load().write.Exec("update proved set until = 'as kept'")
	require.NoError(t, err)
	assert.Equal(t, "as kept", standing(t, a, 1, "2027-01-15").Until)
	_, err = a.handles.Load().write.Exec("delete from proved; drop trigger study_stays; update study set signer = 'Q. Rill' where id = 1")
	require.NoError(t, err)
	s := standing(t, a, 1, "2026-11-28")
	assert.True(t, s.Damaged)
	assert.Equal(t, proving.StateNotProved, s.State)
}

// The last shift check stands with it.
func TestStandingTellsTheLastCheck(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
	issueNext(t, a, 1, "first issue")
	for _, passed := range []proving.Answer{proving.Pass, proving.Fail} {
		c.rest(time.Hour)
		s := proof(t)[3]
		_, err := a.AddShiftCheck(background(), 1, NewCheck{Letter: "A", By: "Bo", Passed: passed, Typed: s.Typed()})
		require.NoError(t, err)
		assert.Equal(t, Standing{State: proving.StateNotProved, Checked: LastCheck{c.at, "A", passed}}, standing(t, a, 1, "2026-11-28"))
	}
}

// Ordered by what is due: what was withdrawn, then a failed check, then what is proved by the
// day on which that ends, then what was never proved, then what was never issued.
func TestOrderOfWhatIsDue(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t), example(t), example(t), example(t), example(t), example(t)}, Now: newClock().now})
	for id := range ID(5) {
		issueNext(t, a, id+1, "first issue")
	}
	later := proof(t)
	for _, s := range later {
		s.TakenAt, s.CalibratedAt = "2026-11-27", ""
		if s.Kind == proving.LoadCell {
			s.CalibratedAt = "2026-11-01"
		}
	}
	signed(t, a, 2, later...)
	signed(t, a, 3, proof(t)...)
	signed(t, a, 4, proof(t)...)
	_, err := a.AddShiftCheck(background(), 1, NewCheck{Letter: "A", By: "Bo", Passed: proving.Fail, Typed: proof(t)[3].Typed()})
	require.NoError(t, err)
	order := func() (ids []ID) {
		items, total, err := a.List(background(), Query{Limit: 10, Order: ByDue})
		require.NoError(t, err)
		require.Equal(t, 6, total)
		_, err = a.Standings(background(), items, "2026-11-28")
		require.NoError(t, err)
		for _, it := range items {
			ids = append(ids, it.ID)
		}
		return ids
	}
	order() // assesses them
	assert.Equal(t, []ID{1, 4, 3, 2, 5, 6}, order())
	_, err = a.PostStudy(background(), 2, &proving.Study{Format: proving.Format, Kind: proving.Event, TakenAt: "2026-11-27", Event: proving.Crash}, "press 2")
	require.NoError(t, err)
	for range 2 { // before it is assessed and after
		assert.Equal(t, []ID{2, 1, 4, 3, 5, 6}, order())
	}
}

// BenchmarkStandings shows a page of a shelf of 1,000 plans that are all issued and proved.
func BenchmarkStandings(b *testing.B) {
	a := opened(b, b.TempDir(), Options{})
	plan, faults := example(b).Check()
	require.Empty(b, faults)
	studies := proof(b)
	require.NoError(b, a.change(background(), func(ctx context.Context, tx *sql.Tx) error {
		for i := range 1000 {
			h, err := a.create(ctx, tx, example(b), drafts.DidMake)
			r := issue.Revision{Letter: "A", At: a.now(), Plan: plan, PlanDigest: plan.Digest()}
			if err = errors.Join(err, addRevision(ctx, tx, h.ID, 1, &r)); err != nil {
				return err
			}
			for _, s := range studies {
				row := studyRow{made: a.stamp(), changed: a.stamp(), signed: a.stamp(), kept: &KeptStudy{Plan: h.ID, Kind: s.Kind, Typed: s.Typed(), Study: s, SignedBy: fmt.Sprint(i)}}
				err := row.setTyped()
				if _, more := row.add(ctx, tx); err != nil || more != nil {
					return errors.Join(err, more)
				}
			}
		}
		return nil
	}))
	items, _, err := a.List(background(), Query{Limit: 24})
	require.NoError(b, err)
	_, err = a.Standings(background(), items, "2026-11-28")
	require.NoError(b, err)
	b.Run("list alone", func(b *testing.B) {
		for b.Loop() {
			_, _, err := a.List(background(), Query{Limit: 24})
			require.NoError(b, err)
		}
	})
	b.Run("kept", func(b *testing.B) {
		for b.Loop() {
			all, err := a.Standings(background(), items, "2026-11-28")
			require.NoError(b, err)
			require.Equal(b, proving.StateProved, all[items[0].ID].State)
		}
	})
	b.Run("anew", func(b *testing.B) {
		for b.Loop() {
			_, err := a.handles.Load().write.Exec("delete from proved")
			require.NoError(b, err)
			_, err = a.Standings(background(), items, "2026-11-28")
			require.NoError(b, err)
		}
	})
}
