package web

import (
	"net/http/httptest"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drafts"
	"ramplan/press/issue"
	"ramplan/press/proving"
	"ramplan/static"
)

// provingStudies prove the station of the example plan, all taken on one day: two of the
// examples, pushes on a master as the plan predicts them, and limit samples with the lamps and
// readings that it predicts.
func provingStudies(t testing.TB, day string) []*proving.Study {
	t.Helper()
	plan, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	r := press.Evaluate(plan)
	num := func(x float64) *float64 { return &x }
	lamp := func(on bool) *bool { return &on }
	var out []*proving.Study
	for _, name := range []string{"load-cell.csv", "stiffness.csv"} {
		data, err := static.FS.ReadFile("examples/studies/" + name)
		require.NoError(t, err)
		s, lines := proving.ReadCSV(data)
		require.True(t, lines.Sound())
		out = append(out, s)
	}
	m := &proving.Study{Format: proving.Format, Kind: proving.Master, TakenAt: day, Height: num(40), Rows: []proving.Row{{Reading: num(0)}}}
	middle := proving.Assess(r, []*proving.Study{m}, day).Studies[0].Result.(*proving.MasterResult).Predicted
	m.Rows = nil
	for i := range 25 { // back and forth, so that nothing drifts
		m.Rows = append(m.Rows, proving.Row{Reading: num(middle + 0.004*float64(i*7%5-2)/2)})
	}
	s := &proving.Study{Format: proving.Format, Kind: proving.Samples, TakenAt: day, PlanDigest: plan.Digest()}
	for range 3 {
		s.Rows = append(s.Rows, proving.Row{Sample: "T1", Height: num(25.11), Arrival: lamp(true), Zone: lamp(false)}, proving.Row{Sample: "G1", Height: num(25), Arrival: lamp(true), Zone: lamp(true)},
			proving.Row{Sample: "S1", Height: num(24.9), Arrival: lamp(false), Zone: lamp(true)}, proving.Row{Sample: proving.BareNest, Arrival: lamp(false), Zone: lamp(true)})
	}
	for i, row := range proving.Assess(r, []*proving.Study{s}, day).Studies[0].Result.(*proving.SamplesResult).Rows {
		s.Rows[i].Reading = row.PredictedReading
	}
	out = append(out, m, s)
	for _, s := range out {
		s.TakenAt = day
		if s.Kind == proving.LoadCell {
			s.CalibratedAt = day
		}
	}
	return out
}

// The card of an issued plan says whether its newest revision is proved today, and what is due
// at its station; one of which nothing was issued says nothing of that.
func TestShelfTellsWhatIsProved(t *testing.T) {
	a, err := archive.Open(t.Context(), t.TempDir(), archive.Options{})
	require.NoError(t, err)
	t.Cleanup(func() { _ = a.Close() })
	plan, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	day := func(ago int) string { return time.Now().UTC().AddDate(0, 0, -ago).Format(time.DateOnly) }
	station := func(ago int, studies ...*proving.Study) archive.ID {
		t.Helper()
		h, err := a.Create(t.Context(), plan.Draft(), drafts.DidCopy)
		require.NoError(t, err)
		_, err = a.Issue(t.Context(), h.ID, archive.At(h.Version), issue.Signed{Prepared: "A", Checked: "B", Approved: "C", Reason: "First issue", Despite: "a trial", Second: "D"})
		require.NoError(t, err)
		if ago >= 0 {
			studies = append(provingStudies(t, day(ago)), studies...)
		}
		for _, s := range studies {
			k, err := a.StartStudy(t.Context(), h.ID, s.Kind, s.Typed())
			require.NoError(t, err)
			_, err = a.SignStudy(t.Context(), h.ID, k.ID, k.Version, "P. Rill")
			require.NoError(t, err)
		}
		return h.ID
	}
	fresh := station(10)
	want := map[archive.ID][2]string{
		fresh:        {"Revision A proved until " + day(10-365), "Due: no shift check kept yet"},
		station(-1):  {"Revision A not proved", ""},
		station(345): {"Revision A proved until " + day(-20), "Due: prove the station again within 20 days; no shift check kept yet"},
		station(366): {"Revision A no longer proved: expired", ""},
		station(10, &proving.Study{Format: proving.Format, Kind: proving.Event, TakenAt: day(1), Event: proving.Crash}): {"Revision A no longer proved: withdrawn", ""},
	}
	checked := station(10)
	_, err = a.AddShiftCheck(t.Context(), checked, archive.NewCheck{Letter: "A", By: "Bo", Passed: proving.Pass, Typed: provingStudies(t, day(0))[3].Typed()})
	require.NoError(t, err)
	want[checked] = [2]string{"Revision A proved until " + day(10-365), ""}
	refused := station(10)
	_, err = a.AddShiftCheck(t.Context(), refused, archive.NewCheck{Letter: "A", By: "Bo", Passed: proving.Fail, Typed: provingStudies(t, day(0))[3].Typed()})
	require.NoError(t, err)
	want[refused] = [2]string{"Revision A proved until " + day(10-365), "Due: last shift check failed, "}
	leads := map[archive.ID]string{fresh: "/check", refused: "/checks"}
	draft, err := a.Create(t.Context(), plan.Draft(), drafts.DidCopy)
	require.NoError(t, err)
	want[draft.ID] = [2]string{"", ""}

	srv := httptest.NewServer(New(a))
	t.Cleanup(srv.Close)
	for range 2 { // the second time it was kept
		_, body := requested(t, srv.URL, "GET", "/", []string{"Accept: text/html"}, nil)
		cards := map[string][2]string{}
		for _, li := range elements(parsed(t, body), "li") {
			if attr(li, "class") != "plancard" {
				continue
			}
			one := [2]string{}
			for _, p := range elements(li, "p") {
				if strings.HasPrefix(attr(p, "class"), "cardproof") {
					one[0] = text(elements(p, "a")[0])
					if links := elements(p, "a"); len(links) > 1 {
						one[1] = text(links[1])
						if strings.Contains(one[1], "last shift check failed") {
							one[1], _, _ = strings.Cut(one[1], time.Now().UTC().Format("2006"))
						}
						for id, to := range leads {
							if attr(elements(li, "a")[0], "href") == planPath(id, "") {
								assert.Equal(t, planPath(id, "")+to, attr(links[1], "href"), "what is due leads to where it is seen to")
								delete(leads, id)
							}
						}
					}
					if said := elements(p, "span"); attr(elements(li, "a")[0], "href") == planPath(checked, "") {
						require.Len(t, said, 1)
						assert.Regexp(t, `^Last shift check passed, .+; the next is due by .+$`, text(said[0]))
					} else {
						assert.Empty(t, said)
					}
				}
			}
			cards[attr(elements(li, "a")[0], "href")] = one
		}
		require.Len(t, cards, len(want))
		for id, texts := range want {
			assert.Equal(t, texts, cards[planPath(id, "")], "plan %d", id)
		}
	}
	assert.Empty(t, leads)
	_, body := requested(t, srv.URL, "GET", "/plans", []string{jsonWanted}, nil)
	assert.Contains(t, body, `"state": "withdrawn"`)
	assert.Contains(t, body, `"proved": null`)
}
