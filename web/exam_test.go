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
	"ramplan/press/issue"
	"ramplan/press/training"
	"ramplan/press/words"
	"ramplan/press/words/lesson"
	"ramplan/press/words/screen"
	"ramplan/web/view"
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

// technicianRules are those of the exam that is begun unless another is chosen.
func technicianRules(seed uint64) drill.Rules {
	rules := drill.UsualRules(seed)
	rules.Role = drill.Technician
	return rules
}

// allRight are right answers to an exam of the example, but for so many items at
// its end.
func allRight(t testing.TB, butFor int) url.Values {
	t.Helper()
	p := mustExample(t)
	r := press.Evaluate(p)
	d, err := drill.New(words.Printer{}, p, r, words.Reactions(p, r))
	require.NoError(t, err)
	x, err := d.NewExam(technicianRules(5))
	require.NoError(t, err)
	form := url.Values{"sure": {"yes"}}
	for i := range len(x.Keys) - butFor {
		e, name := x.Exercise(i), "a"+strconv.Itoa(i+1)
		if e.Zone != nil {
			form.Set(name+"-from", strconv.FormatFloat(e.Zone.Solution[0], 'f', -1, 64))
			form.Set(name+"-to", strconv.FormatFloat(e.Zone.Solution[1], 'f', -1, 64))
			continue
		}
		form.Set(name, view.ValueOf(e, e.Right[0]))
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
	for _, part := range []string{"Learner 7", "Passed", "18 of 20 right, 16 needed (80", "Missed", "no answer", "<dt>Right</dt>"} {
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
	assert.Contains(t, text, "whoever was examined has passed on it")
	_, text = get("/people")
	assert.Contains(t, text, `href="/people?who=Learner+7"`)
	for path, foot := range map[string]string{"/people": "of everybody", "/people?who=learner+7": "of Learner 7", "/records/1": "of Learner 7"} {
		_, text = get(path)
		assert.Regexp(t, `data-foot="Training records? `+foot+` · printed \d{4}-\d\d-\d\d"`, text, "what a printed page is, and of which day")
	}
	for _, path := range []string{"/plans/1/records.csv", "/people.csv?who=learner+7", "/people.csv"} {
		_, text = get(path)
		rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
		require.NoError(t, err)
		require.Len(t, rows, 2, path)
		got := map[string]string{}
		for i, name := range rows[0] {
			got[name] = rows[1][i]
		}
		assert.Equal(t, mustExample(t).Digest(), got["plan_digest"])
		for name, want := range map[string]string{"person": "Learner 7", "revision": "draft", "seed": "5", "set": "fresh set", "right": "18", "items": "20", "needed": "16", "pass_percent": "80", "passed": "true", "state": "sound"} {
			assert.Equal(t, want, got[name], "%s of %s", name, path)
		}
		assert.Equal(t, 2, strings.Count(got["missed"], "Answered: no answer. Right: "), "in words: %s", got["missed"])
		assert.NotRegexp(t, `[a-z]+/[a-z]`, got["missed"], "no key of an item")
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

// An exam page gives nothing away: its values are places, and its cautions are brief; in
// full they stand before it and with the result. Answers of another page are asked again.
func TestExamPageGivesNothingAway(t *testing.T) {
	h, d := drillSite(t)
	blow := d.Notices()[0]
	_, _, text := asked(t, h, http.MethodGet, "/plans/1/drill", nil)
	assert.Contains(t, text, blow)
	at := examAddress(t, h)
	_, doc, text := asked(t, h, http.MethodGet, at, nil)
	assert.Contains(t, text, lesson.Words{}.BriefCaution())
	assert.NotContains(t, text, blow)
	assert.NotContains(t, text, "They judge parts, and nothing else")
	values := 0
	for n := range doc.Descendants() {
		if attr(n, "type") == "radio" {
			values++
			assert.Regexp(t, `^[1-9]$`, attr(n, "value"))
		}
	}
	assert.Greater(t, values, 60)
	code, _, text := asked(t, h, http.MethodPost, at, url.Values{"a1": {"step-1"}, "a2": {"2"}})
	assert.Equal(t, http.StatusUnprocessableEntity, code)
	assert.Contains(t, text, "Not handed in yet: question 1 has an answer that cannot be read")
	assert.Contains(t, text, screen.Words{}.OldAnswer())
	assert.Contains(t, text, lesson.Words{}.BriefCaution())
	assert.Equal(t, 1, strings.Count(text, " checked"), "what can be read stays chosen")
	sent(t, h, at, allRight(t, 0))
	_, _, text = asked(t, h, http.MethodGet, at, nil)
	assert.Contains(t, text, "20 of 20")
	assert.Contains(t, text, blow)
}

// Who passes on a refused part does not pass, however much else is right: it is said
// before, in the result, the record, the table and the sheet.
func TestExamFailedByOneAnswer(t *testing.T) {
	h, d := drillSite(t)
	_, _, text := asked(t, h, http.MethodGet, "/plans/1/drill", nil)
	for _, one := range append([]string{drill.GraveIntro(words.Printer{})}, drill.GraveRule(words.Printer{}, drill.Technician)...) {
		assert.Contains(t, text, one, "before the exam, a line each")
	}
	at := examAddress(t, h)
	_, _, text = asked(t, h, http.MethodGet, at, nil)
	for _, one := range append([]string{drill.GraveIntro(words.Printer{})}, drill.GraveRule(words.Printer{}, drill.Technician)...) {
		assert.Contains(t, text, one, "before the exam, a line each")
	}
	form := allRight(t, 0)
	x, err := d.NewExam(technicianRules(5))
	require.NoError(t, err)
	why, at1 := "", 0
	for i := range x.Keys {
		for _, c := range x.Exercise(i).Choices {
			if why == "" && c.Grave != "" {
				why, at1 = lesson.Words{}.Grave(c.Grave), i+1
				form.Set("a"+strconv.Itoa(i+1), view.ValueOf(x.Exercise(i), c.ID))
			}
		}
	}
	require.NotEmpty(t, why)
	sent(t, h, at, form)
	for _, path := range []string{at, "/records/1", "/plans/1/records", "/records/1/sheet.svg"} {
		_, _, text = asked(t, h, http.MethodGet, path, nil)
		assert.Contains(t, text, "Not passed: "+"answered that "+why, path)
	}
	_, _, text = asked(t, h, http.MethodGet, at, nil)
	assert.Contains(t, text, "19 of 20 questions right")
	assert.Contains(t, text, "This alone fails: "+"answered that "+why)
	number := strconv.Itoa(at1)
	assert.Contains(t, text, `href="#q`+number+`"`, "the list leads to the question")
	assert.Contains(t, text, `id="q`+number+`"`)
	for _, path := range []string{"/records/1", "/records/1/sheet.svg"} {
		_, _, text = asked(t, h, http.MethodGet, path, nil)
		assert.Contains(t, text, number+". ", "%s: the exam's own number", path)
		assert.Contains(t, text, words.AloneFails, path)
	}
	_, _, text = asked(t, h, http.MethodGet, "/people.csv", nil)
	assert.Contains(t, text, ",false,false,"+"answered that "+why+",")
	assert.Contains(t, text, " (this alone fails). Right: ")
	_, _, german := asked(t, h, http.MethodGet, "/people.csv?separator=semicolon", nil)
	assert.Contains(t, german, ";passed;over_time;")
	assert.True(t, strings.HasPrefix(text, "record,"), "nothing but ASCII: no mark by which spreadsheets know UTF-8")
}

// The server keeps the time: what comes too late does not pass.
func TestExamOverTime(t *testing.T) {
	a := exampleArchive(t)
	clock := time.Now()
	s := &site{store: a, desk: &desk{now: func() time.Time { return clock }}}
	h := s.router()
	at := examAddress(t, h)
	_, _, text := asked(t, h, http.MethodGet, at, nil)
	assert.Contains(t, text, "Hand in by")
	clock = clock.Add(15*time.Minute + time.Second)
	_, _, text = asked(t, h, http.MethodGet, at, nil)
	assert.Contains(t, text, "does not pass")
	sent(t, h, at, allRight(t, 0))
	_, _, text = asked(t, h, http.MethodGet, at, nil)
	for _, part := range []string{"Not passed: over the time<", "20 of 20 questions right", "longer than allowed"} {
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
	for field, value := range map[string]string{"who": "  ", "seed": "x", "items": "31", "pass": "59", "minutes": "4"} {
		form := examForm("Ada")
		form.Set(field, value)
		status, _, text := sent(t, h, "/plans/1/drill/exam", form)
		assert.Equal(t, http.StatusUnprocessableEntity, status, field)
		assert.Contains(t, text, `id="`+field+`-fault"`)
		assert.Equal(t, 1, strings.Count(text, "aria-invalid"), field)
		assert.Equal(t, field != "who", strings.Contains(text, "<details class=\"more\" open>"), "%s: what is wrong is not folded away", field)
	}
	code, _, text := asked(t, h, http.MethodGet, "/plans/1/drill/exam/nothing", nil)
	assert.Equal(t, http.StatusNotFound, code)
	assert.Contains(t, text, "not under way any more")
	at := examAddress(t, h)
	code, _, _ = asked(t, h, http.MethodGet, strings.Replace(at, "/plans/1/", "/plans/2/", 1), nil)
	assert.Equal(t, http.StatusNotFound, code, "it belongs to its plan")
}

// Who gives a name and nothing else gets the usual exam, with questions that nobody
// has seen; a seed that is taken again is called a repeat wherever the record goes.
func TestExamAsUsual(t *testing.T) {
	a := exampleArchive(t)
	h := newSite(a).router()
	_, _, home := asked(t, h, http.MethodGet, "/plans/1/drill", nil)
	for _, part := range []string{"20 questions; 16 must be right, within 20 minutes", "For the trainer", `name="seed" value=""`} {
		assert.Contains(t, home, part)
	}
	seeds := map[string]bool{}
	for range 3 {
		status, next, _ := sent(t, h, "/plans/1/drill/exam", url.Values{"who": {"Ada"}})
		require.Equal(t, http.StatusSeeOther, status)
		status, _, _ = sent(t, h, next, url.Values{"sure": {"yes"}})
		require.Equal(t, http.StatusSeeOther, status)
	}
	all, err := a.AllTrainings(t.Context())
	require.NoError(t, err)
	require.Len(t, all, 3)
	for _, x := range all {
		seeds[strconv.FormatUint(x.Seed, 10)] = true
		assert.Equal(t, 20*time.Minute, x.Limit)
		assert.Equal(t, 16, x.Needed)
		assert.False(t, x.Repeat)
		assert.Len(t, x.Misses, 20)
	}
	assert.Len(t, seeds, 3, "each exam has its own questions")

	examined(t, h)
	examined(t, h)
	for path, want := range map[string]int{"/records/4": 0, "/records/5": 1, "/plans/1/records": 1, "/people?who=Learner+7": 1, "/people.csv": 1, "/records/5/sheet.svg": 2} {
		_, _, text := asked(t, h, http.MethodGet, strings.Split(path, "?")[0], values(path))
		assert.Equal(t, want, strings.Count(text, "repeat of a seen set"), path)
	}

	status, next, _ := sent(t, h, "/plans/1/drill/exam", examForm("Bo"))
	require.Equal(t, http.StatusSeeOther, status)
	sent(t, h, next, allRight(t, 0))
	for path, want := range map[string]int{"/records/4": 0, "/records/6": 1, "/plans/1/records": 1, "/people?who=Bo": 1, "/people.csv": 1, "/records/6/sheet.svg": 2} {
		_, _, text := asked(t, h, http.MethodGet, strings.Split(path, "?")[0], values(path))
		assert.Equal(t, want, strings.Count(text, "a set given before to another person"), path)
	}
}

func values(path string) url.Values {
	_, query, _ := strings.Cut(path, "?")
	v, _ := url.ParseQuery(query)
	return v
}

// A record of an older program has no words: what it missed is said by the plan,
// or by kind where the plan is gone, and never by a key.
func TestRecordOfAnOlderProgram(t *testing.T) {
	a := exampleArchive(t)
	h := newSite(a).router()
	for i, digest := range []string{mustExample(t).Digest(), "sha256:of-a-plan-that-is-gone"} {
		_, err := a.KeepTraining(t.Context(), training.Record{Plan: 1, Sitting: strconv.Itoa(i), Who: "Old", Digest: digest, Seed: 3, Items: 20, Right: 18, Needed: 16, Missed: []string{"read/on-off", "zone/9"}})
		require.NoError(t, err)
	}
	_, _, text := asked(t, h, http.MethodGet, "/records/1", nil)
	assert.Contains(t, text, "A part was pressed. The lamps that count are: arrival on, zone off. What is it?")
	assert.Contains(t, text, "Setting a zone. What was asked is not at hand any more.")
	_, _, text = asked(t, h, http.MethodGet, "/records/2", nil)
	assert.Contains(t, text, "Reading the lamps. What was asked is not at hand any more.")
	_, _, text = asked(t, h, http.MethodGet, "/people.csv", nil)
	assert.NotContains(t, text, "read/on-off")
}

// A revision that was issued since shows who has to be trained again, and is what
// is practised.
func TestTrainedOnAnOlderRevision(t *testing.T) {
	a := exampleArchive(t)
	h := newSite(a).router()
	issue := func(reason string) {
		head, err := a.Get(t.Context(), 1)
		require.NoError(t, err)
		_, err = a.Issue(t.Context(), 1, archive.At(head.Version), issue.Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: reason, Despite: "D", Second: "S"})
		require.NoError(t, err)
	}
	get := func(path string) string {
		code, _, text := asked(t, h, http.MethodGet, path, nil)
		require.Equal(t, http.StatusOK, code, path)
		return text
	}
	assert.Contains(t, get("/plans/1/drill"), "nothing was issued yet")
	assert.Contains(t, get("/plans/1/station"), "DRAFT: do not judge parts by this page")
	_, draft, _ := sent(t, h, "/plans/1/drill/exam", url.Values{"who": {"Early"}, "seed": {"5"}})
	assert.Contains(t, get(draft), "DRAFT: do not judge parts by what this exam asks")
	sent(t, h, draft, allRight(t, 0))
	assert.NotContains(t, get("/records/1"), "became")
	for _, path := range []string{draft, "/records/1", "/records/1/sheet.svg", "/people", "/plans/1/records"} {
		_, _, text := asked(t, h, http.MethodGet, path, nil)
		assert.Contains(t, text, "Passed on a draft", path)
	}
	issue("first")
	assert.NotContains(t, get("/people"), "Passed on a draft", "what is a revision now")
	for _, path := range []string{"/records/1", "/plans/1/records", "/people?who=Early", "/records/1/sheet.svg"} {
		_, _, text := asked(t, h, http.MethodGet, strings.Split(path, "?")[0], values(path))
		assert.Contains(t, strings.ToLower(text), "draft that became revision a", path)
	}
	assert.NotContains(t, get("/plans/1/station"), `id="shout"`)
	assert.Contains(t, get("/plans/1/station?revision=draft"), "DRAFT: do not judge")
	assert.Contains(t, get("/plans/1/drill"), "Revision A, the last that was issued")
	onA := examined(t, h)
	assert.NotContains(t, get(onA), "SUPERSEDED")
	assert.NotContains(t, get("/plans/1/drill"), `id="outdated"`)
	record, err := a.TrainingOf(t.Context(), 2)
	require.NoError(t, err)
	assert.Equal(t, "A", record.Revision)
	assert.NotContains(t, get("/people"), "To be trained again")

	head, err := a.Get(t.Context(), 1)
	require.NoError(t, err)
	head.Draft.Set("title.notes", "changed")
	_, err = a.Save(t.Context(), 1, archive.At(head.Version), head.Draft, "")
	require.NoError(t, err)
	assert.NotContains(t, get("/plans/1/drill"), `id="outdated"`, "a draft that goes on asks nobody to be trained again")
	issue("second")
	home := get("/plans/1/drill")
	assert.Contains(t, home, "2 people have not passed on the state")
	people := get("/people")
	assert.Equal(t, 2, strings.Count(people, "To be trained again: Bearing sleeve into anemometer hub"))
	assert.Contains(t, people, "WS-210 Bearing sleeve into anemometer hub")
	_, failed, _ := sent(t, h, "/plans/1/drill/exam", url.Values{"who": {"Learner 7"}})
	sent(t, h, failed, url.Values{"sure": {"yes"}})
	assert.Contains(t, get("/people"), "Not passed: the score is below the mark</b> 0 of 20 right")
	assert.Contains(t, get(failed), "Not passed: the score is below the mark")
	assert.Contains(t, get("/plans/1/records"), "failed the last exam on it")
	assert.Contains(t, home, "Revision B, the last that was issued")
	for path, what := range map[string]string{"drill": "practise on that one", "motion": "practise on that one", "station": "do not judge parts by this page"} {
		text := get("/plans/1/" + path + "?revision=a")
		assert.Contains(t, text, "Revision A, superseded by revision B, the last that was issued.", path)
		assert.Contains(t, text, "SUPERSEDED BY REVISION B: "+what, path)
	}
	assert.Contains(t, get(onA), "SUPERSEDED BY REVISION B: do not judge parts by what this exam asks", "an exam that began before")
	assert.NotContains(t, home, `id="shout"`, "the newest")
	assert.Contains(t, get("/plans/1/drill?revision=draft"), "The station runs by what was issued last, revision B")
	records := get("/plans/1/records")
	again := records[strings.Index(records, `id="again"`):strings.Index(records, `id="all"`)]
	assert.Contains(t, again, "Learner 7")
	assert.Contains(t, again, "Revision B", "the exam that was failed")
	assert.Contains(t, again, "Draft that became revision A", "Early passed on what was revision A then")
	code, _, _ := asked(t, h, http.MethodGet, "/plans/1/drill?revision=Q", nil)
	assert.Equal(t, http.StatusNotFound, code)
	for format, begin := range map[string]string{"pdf": "%PDF-", "svg": "<svg", "png": "\x89PNG"} {
		text := get("/plans/1/card." + format)
		assert.Contains(t, text[:min(200, len(text))], begin)
	}
	assert.Contains(t, get("/plans/1/card.svg"), "revision B")
	assert.Contains(t, strings.ToLower(get("/plans/1/card.svg?revision=draft")), "draft")
}

// After a restart an exam that was handed in leads to its record. One that was not
// goes on: the same questions, the same clock, also for a plan that was changed.
func TestExamAfterARestart(t *testing.T) {
	a := exampleArchive(t)
	clock := time.Now()
	again := func() http.Handler {
		return (&site{store: a, desk: &desk{now: func() time.Time { return clock }}}).router()
	}
	h := again()
	done, open := examined(t, h), examAddress(t, h)
	_, _, before := asked(t, h, http.MethodGet, open, nil)
	head, err := a.Get(t.Context(), 1)
	require.NoError(t, err)
	head.Draft.Set("requirement.height_high", "25.2")
	_, err = a.Save(t.Context(), 1, archive.At(head.Version), head.Draft, "")
	require.NoError(t, err)

	h = again()
	status, next := got(t, h, done)
	assert.Equal(t, http.StatusSeeOther, status)
	assert.Equal(t, "/records/1", next)
	code, _, text := asked(t, h, http.MethodGet, open, nil)
	assert.Equal(t, http.StatusOK, code)
	assert.Equal(t, before, text, "it goes on as if nothing had been")
	code, _, _ = asked(t, h, http.MethodGet, strings.Replace(open, "/plans/1/", "/plans/2/", 1), nil)
	assert.Equal(t, http.StatusNotFound, code)
	clock = clock.Add(14 * time.Minute)
	h = again()
	status, _, _ = sent(t, h, open, allRight(t, 0))
	assert.Equal(t, http.StatusSeeOther, status)
	kept, err := a.TrainingOf(t.Context(), 2)
	require.NoError(t, err)
	assert.True(t, kept.Passed)
	assert.Equal(t, 14*time.Minute, kept.Took.Round(time.Second), "the clock ran on")
	assert.Equal(t, mustExample(t).Digest(), kept.Digest, "on the plan as it was")
	_, err = a.SittingOf(t.Context(), kept.Sitting)
	assert.ErrorIs(t, err, archive.ErrNotFound)
}

// What another version of the program would ask now is not asked: the exam cannot go on,
// and its record says that it is not finished.
func TestExamOfAnotherProgram(t *testing.T) {
	a := exampleArchive(t)
	p := mustExample(t)
	require.NoError(t, a.KeepSitting(t.Context(), training.Sitting{ID: "other", Plan: 1, Who: "Ada", Started: time.Now(), Document: p.Canonical(), Seed: 5, Items: 20, Pass: 0.8, Limit: time.Hour, Asked: "sha256:else"}))
	require.NoError(t, a.KeepSitting(t.Context(), training.Sitting{ID: "broken", Plan: 1, Who: "Ada", Started: time.Now(), Document: []byte("{}"), Seed: 5, Items: 20, Pass: 0.8}))
	h := newSite(a).router()
	_, _, text := asked(t, h, http.MethodGet, "/plans/1/drill", nil)
	assert.Equal(t, 2, strings.Count(text, "Exam of everything, 0 of 20 answered"), "of an older program")
	for i, id := range []string{"other", "broken"} {
		status, next := got(t, h, "/plans/1/drill/exam/"+id)
		assert.Equal(t, http.StatusSeeOther, status, id)
		assert.Equal(t, "/records/"+strconv.Itoa(i+1), next)
		_, _, text := asked(t, h, http.MethodGet, next, nil)
		assert.Contains(t, text, "Not finished")
		assert.Contains(t, text, "Exam of everything")
	}
	code, _, _ := asked(t, h, http.MethodGet, "/plans/1/drill/exam/none", nil)
	assert.Equal(t, http.StatusNotFound, code)
}

// got gives the status of a page and where it leads, without going there.
func got(t testing.TB, h http.Handler, at string) (status int, next string) {
	t.Helper()
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest(http.MethodGet, "http://127.0.0.1"+at, nil))
	return w.Code, w.Header().Get("Location")
}
