package web

import (
	"encoding/csv"
	"net/http"
	"net/http/httptest"
	"net/url"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drill"
	"ramplan/press/words"
)

// sent gives the status and where an answer leads, without going there.
func sent(t testing.TB, h http.Handler, to string, form url.Values) (status int, next, text string) {
	t.Helper()
	r := httptest.NewRequest(http.MethodPost, "http://127.0.0.1"+to, strings.NewReader(form.Encode()))
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w.Code, w.Header().Get("Location"), w.Body.String()
}

func examForm(who string) url.Values {
	return url.Values{"who": {who}, "seed": {"5"}, "pass": {"80"}, "minutes": {"15"}}
}

// examAddress begins an exam of the first plan.
func examAddress(t testing.TB, h http.Handler) string {
	t.Helper()
	status, next, _ := sent(t, h, "/plans/1/drill/exam", examForm(" Learner  7 "))
	require.Equal(t, http.StatusSeeOther, status)
	return next
}

// allRight are right answers to an exam of the example, but for so many items at
// its end.
func allRight(t testing.TB, butFor int) url.Values {
	t.Helper()
	p := mustExample(t)
	r := press.Evaluate(p)
	d, err := drill.New(p, r, words.Reactions(p, r))
	require.NoError(t, err)
	x, err := d.NewExam(drill.UsualRules(5))
	require.NoError(t, err)
	form := url.Values{}
	for i := range len(x.Keys) - butFor {
		e, name := x.Exercise(i), "a"+strconv.Itoa(i+1)
		if e.Zone != nil {
			form.Set(name+"-from", strconv.FormatFloat(e.Zone.Solution[0], 'f', -1, 64))
			form.Set(name+"-to", strconv.FormatFloat(e.Zone.Solution[1], 'f', -1, 64))
			continue
		}
		form.Set(name, e.Right[0])
	}
	return form
}

// examined takes an exam with two answers missing.
func examined(t testing.TB, h http.Handler) string {
	t.Helper()
	at := examAddress(t, h)
	status, next, _ := sent(t, h, at, allRight(t, 2))
	require.Equal(t, http.StatusSeeOther, status)
	require.Equal(t, at, next)
	return at
}

// An exam becomes a record, which is listed, goes out as a table and a sheet, and
// is removed with its person.
func TestExamBecomesARecord(t *testing.T) {
	h, _ := drillSite(t)
	get := func(path string) (int, string) {
		code, _, text := asked(t, h, http.MethodGet, path, nil)
		return code, text
	}
	at := examined(t, h)
	_, text := get(at)
	for _, part := range []string{"Passed", "18 of 20 questions right; 16 needed", "No answer was given", `href="/records/1"`} {
		assert.Contains(t, text, part)
	}
	status, next, _ := sent(t, h, at, allRight(t, 20))
	assert.Equal(t, http.StatusSeeOther, status)
	assert.Equal(t, at, next)
	_, text = get("/records/1")
	for _, part := range []string{"Learner 7", "Passed", "18 of 20 right, 16 needed (80", "Missed"} {
		assert.Contains(t, text, part, "what was handed in first counts")
	}
	code, _ := get("/records/2")
	assert.Equal(t, http.StatusNotFound, code, "an exam is recorded once")
	for format, begin := range map[string]string{"pdf": "%PDF-", "svg": "<svg", "png": "\x89PNG"} {
		code, text = get("/records/1/sheet." + format)
		assert.Equal(t, http.StatusOK, code, format)
		assert.Contains(t, text[:min(200, len(text))], begin)
	}
	code, _ = get("/records/1/sheet.txt")
	assert.Equal(t, http.StatusNotFound, code)

	_, text = get("/plans/1/records")
	assert.Contains(t, text, "Learner 7")
	assert.Contains(t, text, "Nobody passed last on another state")
	_, text = get("/people")
	assert.Contains(t, text, `href="/people?who=Learner+7"`)
	for _, path := range []string{"/plans/1/records.csv", "/people.csv?who=learner+7"} {
		_, text = get(path)
		rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
		require.NoError(t, err)
		require.Len(t, rows, 2, path)
		got := map[string]string{}
		for i, name := range rows[0] {
			got[name] = rows[1][i]
		}
		assert.Equal(t, mustExample(t).Digest(), got["plan_digest"])
		for name, want := range map[string]string{"person": "Learner 7", "revision": "draft", "seed": "5", "right": "18", "items": "20", "needed": "16", "pass_percent": "80", "passed": "true", "state": "sound"} {
			assert.Equal(t, want, got[name], "%s of %s", name, path)
		}
		assert.Len(t, strings.Fields(got["missed"]), 2)
	}

	status, _, text = sent(t, h, "/people", url.Values{"who": {"Learner 7"}, "do": {"remove"}})
	assert.Equal(t, http.StatusUnprocessableEntity, status)
	assert.Contains(t, text, "Nothing was removed")
	_, text = get("/people")
	assert.Contains(t, text, "Learner 7")
	status, next, _ = sent(t, h, "/people", url.Values{"who": {"Learner 7"}, "do": {"remove"}, "sure": {"yes"}})
	assert.Equal(t, http.StatusSeeOther, status)
	assert.Equal(t, "/people", next)
	for _, path := range []string{"/people", "/plans/1/records", "/plans/1/records.csv"} {
		_, text = get(path)
		assert.NotContains(t, text, "Learner 7", path)
	}
	code, _ = get("/records/1")
	assert.Equal(t, http.StatusNotFound, code)
}

// The server keeps the time: what comes too late does not pass.
func TestExamOverTime(t *testing.T) {
	a := exampleArchive(t)
	clock := time.Now()
	s := &site{a, &desk{now: func() time.Time { return clock }}}
	h := s.router()
	at := examAddress(t, h)
	_, _, text := asked(t, h, http.MethodGet, at, nil)
	assert.Contains(t, text, "Hand in by")
	clock = clock.Add(15*time.Minute + time.Second)
	_, _, text = asked(t, h, http.MethodGet, at, nil)
	assert.Contains(t, text, "does not pass")
	sent(t, h, at, allRight(t, 0))
	_, _, text = asked(t, h, http.MethodGet, at, nil)
	for _, part := range []string{"Not passed", "20 of 20 questions right", "longer than allowed"} {
		assert.Contains(t, text, part)
	}
	kept, err := a.TrainingOf(t.Context(), 1)
	require.NoError(t, err)
	assert.True(t, kept.OverTime)
	assert.False(t, kept.Passed)
	assert.Equal(t, 15*time.Minute+time.Second, kept.Took)
}

// An exam that cannot begin says why beside its field.
func TestExamRefuses(t *testing.T) {
	h, _ := drillSite(t)
	for field, value := range map[string]string{"who": "  ", "seed": "x", "pass": "49", "minutes": "0"} {
		form := examForm("Ada")
		form.Set(field, value)
		status, _, text := sent(t, h, "/plans/1/drill/exam", form)
		assert.Equal(t, http.StatusUnprocessableEntity, status, field)
		assert.Contains(t, text, `id="`+field+`-fault"`)
		assert.Equal(t, 1, strings.Count(text, "aria-invalid"), field)
	}
	code, _, text := asked(t, h, http.MethodGet, "/plans/1/drill/exam/nothing", nil)
	assert.Equal(t, http.StatusNotFound, code)
	assert.Contains(t, text, "not under way any more")
	at := examAddress(t, h)
	code, _, _ = asked(t, h, http.MethodGet, strings.Replace(at, "/plans/1/", "/plans/2/", 1), nil)
	assert.Equal(t, http.StatusNotFound, code, "it belongs to its plan")
}

// A revision that was issued since shows who has to be trained again, and is what
// is practised.
func TestTrainedOnAnOlderRevision(t *testing.T) {
	a := exampleArchive(t)
	h := (&site{a, newDesk()}).router()
	issue := func(reason string) {
		head, err := a.Get(t.Context(), 1)
		require.NoError(t, err)
		_, err = a.Issue(t.Context(), 1, head.Version, archive.Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: reason, Despite: "D", Second: "S"})
		require.NoError(t, err)
	}
	get := func(path string) string {
		code, _, text := asked(t, h, http.MethodGet, path, nil)
		require.Equal(t, http.StatusOK, code, path)
		return text
	}
	assert.Contains(t, get("/plans/1/drill"), "nothing was issued yet")
	issue("first")
	assert.Contains(t, get("/plans/1/drill"), "Revision A, the last that was issued")
	examined(t, h)
	assert.NotContains(t, get("/plans/1/drill"), `id="outdated"`)
	record, err := a.TrainingOf(t.Context(), 1)
	require.NoError(t, err)
	assert.Equal(t, "A", record.Revision)

	head, err := a.Get(t.Context(), 1)
	require.NoError(t, err)
	head.Draft.Set("title.notes", "changed")
	_, err = a.Save(t.Context(), 1, head.Version, head.Draft, "")
	require.NoError(t, err)
	assert.NotContains(t, get("/plans/1/drill"), `id="outdated"`, "a draft that goes on asks nobody to be trained again")
	issue("second")
	home := get("/plans/1/drill")
	assert.Contains(t, home, "1 person passed last on another state")
	assert.Contains(t, home, "Revision B, the last that was issued")
	assert.Contains(t, get("/plans/1/drill?revision=a"), "an older one: what was issued last is revision B")
	assert.Contains(t, get("/plans/1/drill?revision=draft"), "The station runs by what was issued last, revision B")
	records := get("/plans/1/records")
	again := records[strings.Index(records, `id="again"`):strings.Index(records, `id="all"`)]
	assert.Contains(t, again, "Learner 7")
	assert.Contains(t, again, "Revision A")
	code, _, _ := asked(t, h, http.MethodGet, "/plans/1/drill?revision=Q", nil)
	assert.Equal(t, http.StatusNotFound, code)
	for format, begin := range map[string]string{"pdf": "%PDF-", "svg": "<svg", "png": "\x89PNG"} {
		text := get("/plans/1/card." + format)
		assert.Contains(t, text[:min(200, len(text))], begin)
	}
	assert.Contains(t, get("/plans/1/card.svg"), "revision B")
	assert.Contains(t, strings.ToLower(get("/plans/1/card.svg?revision=draft")), "draft")
}

// After a restart an exam that was handed in leads to its record, one that was not
// is gone and says so.
func TestExamAfterARestart(t *testing.T) {
	a := exampleArchive(t)
	h := (&site{a, newDesk()}).router()
	done, open := examined(t, h), examAddress(t, h)
	h = (&site{a, newDesk()}).router()
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest(http.MethodGet, "http://127.0.0.1"+done, nil))
	assert.Equal(t, http.StatusSeeOther, w.Code)
	assert.Equal(t, "/records/1", w.Header().Get("Location"))
	code, _, text := asked(t, h, http.MethodGet, open, nil)
	assert.Equal(t, http.StatusNotFound, code)
	assert.Contains(t, text, "leaves no record")
	status, _, _ := sent(t, h, open, allRight(t, 0))
	assert.Equal(t, http.StatusNotFound, status)
}
