package web

import (
	"net/http"
	"net/url"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/archive"
	"ramplan/press/drill"
	"ramplan/press/issue"
	"ramplan/press/training"
	"ramplan/press/words"
)

// clocked serves an archive by a clock of its own, as a program that was started anew.
func clocked(a *archive.Archive, clock *time.Time) http.Handler {
	return (&site{store: a, desk: &desk{now: func() time.Time { return *clock }}}).router()
}

// The answers of an exam are kept as they are given, half a zone too: they stand on the
// page again when it is opened anew, also after a restart, and the drill's first page
// leads back to them.
func TestAnswersOfAnExamAreKept(t *testing.T) {
	a := exampleArchive(t)
	clock := time.Now()
	h := clocked(a, &clock)
	status, at, _ := sent(t, h, "/plans/1/drill/exam", url.Values{"who": {"Ada"}, "seed": {"5"}, "exam": {"setter"}})
	require.Equal(t, http.StatusSeeOther, status)
	rules := drill.UsualRules(5)
	rules.Role = drill.Setter
	_, d := drillSite(t)
	x, err := d.NewExam(rules)
	require.NoError(t, err)
	form, zone, choice := url.Values{"do": {"keep"}}, "", ""
	for i := range x.Keys {
		name := "a" + words.Fixed(float64(i+1), 0)
		if e := x.Exercise(i); e.Zone != nil && zone == "" {
			zone = name
			form.Set(name+"-from", "115,0")
		} else if e.Zone == nil && choice == "" {
			choice = name
			form.Set(name, "2")
		}
	}
	_, _, before := asked(t, h, http.MethodGet, at, nil)
	assert.Contains(t, before, "Nothing answered yet")
	assert.Contains(t, before, "Setter&#39;s exam of <b>Ada</b>")
	assert.NotContains(t, before, " checked")
	status, next, _ := sent(t, h, at, form)
	assert.Equal(t, http.StatusSeeOther, status, "without a script the page comes again")
	assert.Equal(t, at, next)
	form.Set("quiet", "yes")
	status, _, _ = sent(t, h, at, form)
	assert.Equal(t, http.StatusNoContent, status, "a script goes on")

	clock = clock.Add(5 * time.Minute)
	h = clocked(a, &clock)
	_, _, home := asked(t, h, http.MethodGet, "/plans/1/drill", nil)
	for _, part := range []string{`id="underway"`, "Setter&#39;s exam, 2 of 20 answered", "15\u202fmin 0\u202fs left", `href="` + at + `"`} {
		assert.Contains(t, home, part)
	}
	_, _, records := asked(t, h, http.MethodGet, "/plans/1/records", nil)
	assert.Contains(t, records, "Setter&#39;s exam, 2 of 20 answered", "a trainer sees it too")
	_, _, text := asked(t, h, http.MethodGet, at, nil)
	assert.Equal(t, 1, strings.Count(text, " checked"))
	assert.Contains(t, text, `name="`+choice+`" value="2" checked`)
	assert.Contains(t, text, `name="`+zone+`-from" value="115,0"`)
	assert.Contains(t, text, "Kept: 2 of 20 answered")
	assert.Contains(t, text, `data-left="900"`)
	assert.Contains(t, text, `<animate attributeName="width" from="75.00" to="0" dur="900s"`, "the line runs without a script")

	status, _, text = sent(t, h, "/plans/1/drill/exam", url.Values{"who": {" ada "}})
	assert.Equal(t, http.StatusUnprocessableEntity, status, "one at a time")
	assert.Contains(t, text, "An exam under this name is not handed in yet")
}

// Questions without an answer are asked about before an exam is handed in, and are named.
func TestHandingInAsksFirst(t *testing.T) {
	a := exampleArchive(t)
	clock := time.Now()
	h := clocked(a, &clock)
	at := examAddress(t, h)
	form := allRight(t, 2)
	form.Del("sure")
	status, _, text := sent(t, h, at, form)
	assert.Equal(t, http.StatusUnprocessableEntity, status)
	assert.Contains(t, text, "2 questions have no answer, and would count as missed")
	assert.Contains(t, text, `href="#q19"`)
	assert.Contains(t, text, `id="q20"`)
	assert.Equal(t, 18, strings.Count(text, " checked"), "what was answered stands there still")
	all, err := a.AllTrainings(t.Context())
	require.NoError(t, err)
	assert.Empty(t, all)
	h = clocked(a, &clock)
	_, _, text = asked(t, h, http.MethodGet, at, nil)
	assert.Equal(t, 18, strings.Count(text, " checked"), "and is kept")
	form.Set("sure", "yes")
	status, _, _ = sent(t, h, at, form)
	assert.Equal(t, http.StatusSeeOther, status)
	_, _, text = asked(t, h, http.MethodGet, at, nil)
	assert.Contains(t, text, "18 of 20 questions right")
}

// An exam that is begun and left leaves a record, wherever records are read; so does one
// that is given up. Derived: an exam is left an hour after its time, which is 15 minutes.
func TestLeftExamsAreRecorded(t *testing.T) {
	a := exampleArchive(t)
	clock := time.Now()
	h := clocked(a, &clock)
	at := examAddress(t, h)
	form := allRight(t, 13)
	form.Set("do", "keep")
	sent(t, h, at, form)
	end := clock.Add(15*time.Minute + training.LeftAfter).Local().Format("15:04")
	clock = clock.Add(16 * time.Minute)
	for _, path := range []string{"/plans/1/records", "/people", "/plans/1/drill"} { // at once
		_, _, text := asked(t, h, http.MethodGet, path, nil)
		assert.Contains(t, text, "The time is over: it cannot be passed any more. Handed in by "+end+" it is judged, as over the time; after that it counts as not finished.", path)
		assert.Contains(t, text, ">Look at the answers<", path)
		assert.NotContains(t, text, ">Go on<", path)
	}
	clock = clock.Add(58 * time.Minute)
	_, _, text := asked(t, h, http.MethodGet, "/plans/1/records", nil)
	assert.NotContains(t, text, "Not finished")
	clock = clock.Add(2 * time.Minute)
	for _, path := range []string{"/plans/1/records", "/people", "/records/1", "/records/1/sheet.svg"} {
		_, _, text := asked(t, h, http.MethodGet, path, nil)
		assert.Contains(t, text, "Not finished", path)
		assert.Contains(t, text, "7 of 20 answered, nothing judged", path)
	}
	_, _, text = asked(t, h, http.MethodGet, "/plans/1/records", nil)
	assert.Contains(t, text, "Technician&#39;s exam. Draft, plan")
	assert.Contains(t, text[strings.Index(text, `id="again"`):strings.Index(text, `id="all"`)], "Learner 7", "who never finished one is due")
	_, _, text = asked(t, h, http.MethodGet, "/people.csv", nil)
	assert.Contains(t, text, ",technician,5,fresh set,,20,16,80,false,false,,")
	assert.Contains(t, text, ",false,7,sound\r\n")
	_, _, text = asked(t, h, http.MethodGet, "/plans/1/drill", nil)
	assert.NotContains(t, text, `id="underway"`)
	status, next, _ := sent(t, h, at, allRight(t, 0))
	assert.Equal(t, http.StatusSeeOther, status, "too late to hand it in")
	assert.Equal(t, "/records/1", next)

	again := examAddress(t, h)
	status, next, _ = sent(t, h, again, url.Values{"do": {"leave"}})
	assert.Equal(t, http.StatusSeeOther, status)
	assert.Equal(t, "/records/2", next)
	_, _, text = asked(t, h, http.MethodGet, "/records/2", nil)
	assert.Contains(t, text, "It was begun and left.")
	assert.Contains(t, text, "repeat of a seen set", "its questions were seen, though nothing was handed in")
	_, next = got(t, h, again)
	assert.Equal(t, "/records/2", next)

	gone := examAddress(t, h)
	_, err := a.RemovePerson(t.Context(), "Learner 7")
	require.NoError(t, err)
	status, _, _ = sent(t, h, gone, allRight(t, 0))
	assert.Equal(t, http.StatusNotFound, status)
	all, err := a.AllTrainings(t.Context())
	require.NoError(t, err)
	assert.Empty(t, all, "what was removed does not come back")
}

// Technician and setter are due each by their own exam, and a change that does not
// concern the drill makes nobody due.
func TestDueByExamAndByWhatThePlannerSays(t *testing.T) {
	a := exampleArchive(t)
	clock := time.Now()
	h := clocked(a, &clock)
	give := func(notes, says string) {
		head, err := a.Get(t.Context(), 1)
		require.NoError(t, err)
		head.Draft.Set("title.notes", notes)
		head, err = a.Save(t.Context(), 1, archive.At(head.Version), head.Draft, "")
		require.NoError(t, err)
		_, err = a.Issue(t.Context(), 1, archive.At(head.Version), issue.Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: notes, Despite: "D", Second: "S", Drill: says})
		require.NoError(t, err)
		clock = clock.Add(time.Second)
	}
	get := func(path string) string {
		_, _, text := asked(t, h, http.MethodGet, path, nil)
		return text
	}
	sit := func(who, exam string, form url.Values) {
		status, at, _ := sent(t, h, "/plans/1/drill/exam", url.Values{"who": {who}, "exam": {exam}, "seed": {"5"}})
		require.Equal(t, http.StatusSeeOther, status)
		status, _, _ = sent(t, h, at, form)
		require.Equal(t, http.StatusSeeOther, status)
	}
	give("first", "")
	sit("Tec", "technician", allRight(t, 0))
	sit("Set", "setter", url.Values{"sure": {"yes"}})
	home := get("/plans/1/drill")
	assert.Contains(t, home, "1 person has not passed on the state of this plan that counts now, in the setter&#39;s exam.")
	give("second", issue.DrillSame)
	assert.Contains(t, get("/plans/1/drill"), "1 person has not passed", "nobody is due for a note")
	records := get("/plans/1/records")
	assert.Contains(t, records, "A pass on revision A counts as well")
	assert.Contains(t, records, "Did not pass the last exam on A, which counts.")
	give("third", issue.DrillAgain)
	assert.Contains(t, get("/plans/1/drill"), "2 people have not passed on the state of this plan that counts now: 1 in the technician&#39;s exam, 1 in the setter&#39;s exam.")
	assert.NotContains(t, get("/plans/1/records"), "counts as well")
	people := get("/people")
	for _, page := range []string{people, get("/plans/1/records")} { // which revision, and what the planner said of its change
		assert.Contains(t, page, "Passed on A. C changed the drill. Reason for C: third.")
		assert.Contains(t, page, "Has not passed it here yet.")
	}
	give("fourth", "")
	assert.Contains(t, get("/people"), "Passed on A. D was issued since, and nobody said that its drill is the same. Reason for D: fourth.")
	assert.Contains(t, people, "To be trained again: Bearing sleeve into anemometer hub (technician&#39;s exam)")
	assert.Contains(t, people, "To be trained: Bearing sleeve into anemometer hub (setter&#39;s exam)", "Set has never passed")
	assert.Contains(t, get("/records/2/sheet.svg"), "Setter&#39;s exam")
}

// Records of older programs call an answer a deed; wherever they are shown they say what
// was answered. Derived: the archive of schema 5 holds them as they were worded then.
func TestOldRecordsSayWhatWasAnswered(t *testing.T) {
	a := exampleArchive(t)
	_, err := a.KeepTraining(t.Context(), training.Record{Plan: 1, Sitting: "old", Who: "Bo", Digest: mustExample(t).Digest(), Seed: 3, Items: 20, Right: 19, Needed: 16, Grave: []string{"a hand was put into the work space"}})
	require.NoError(t, err)
	h := newSite(a).router()
	for _, path := range []string{"/records/1", "/plans/1/records", "/people", "/people.csv", "/records/1/sheet.svg"} {
		_, _, text := asked(t, h, http.MethodGet, path, nil)
		assert.Contains(t, text, "answered that a hand may be put into the work space", path)
		assert.NotContains(t, text, "a hand was put", path)
	}
}
