package web

import (
	"encoding/json"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drill"
	"ramplan/press/words"
	"ramplan/press/words/lesson"
	"ramplan/press/words/screen"
	"ramplan/static"
	"ramplan/web/view"
)

// drillSite serves the drill of the example plan, with some entries changed.
func drillSite(t testing.TB, changes ...string) (http.Handler, *drill.Drill) {
	t.Helper()
	p, ps := press.Decode(static.Example())
	require.Empty(t, ps)
	d := p.Draft()
	for i := 0; i < len(changes); i += 2 {
		d.Set(changes[i], changes[i+1])
	}
	p, ps = d.Check()
	require.Empty(t, ps)
	a, err := archive.Open(t.Context(), t.TempDir(), archive.Options{First: []*press.Draft{d}})
	require.NoError(t, err)
	t.Cleanup(func() { _ = a.Close() })
	result := press.Evaluate(p)
	made, _ := drill.New(words.Printer{}, p, result, words.Reactions(p, result))
	return newSite(a).router(), made
}

// roundOf is the round that a page carries.
func roundOf(t testing.TB, d *drill.Drill, get func(name string) string) (s drill.Session, seed uint64) {
	t.Helper()
	seed, err := strconv.ParseUint(get("seed"), 10, 64)
	require.NoError(t, err)
	level, err := strconv.Atoi(get("level"))
	require.NoError(t, err)
	var given []drill.Answer
	require.NoError(t, json.Unmarshal([]byte(get("answers")), &given))
	s, ok := d.After(level, seed, given)
	require.True(t, ok)
	return s, seed
}

func asked(t testing.TB, h http.Handler, method, to string, form url.Values) (int, *html.Node, string) {
	t.Helper()
	var body *strings.Reader
	if method == http.MethodGet {
		if form != nil {
			to += "?" + form.Encode()
		}
		body = strings.NewReader("")
	} else {
		body = strings.NewReader(form.Encode())
	}
	r := httptest.NewRequest(method, "http://127.0.0.1"+to, body)
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	text := w.Body.String()
	if !strings.HasPrefix(w.Header().Get("Content-Type"), "text/html") {
		return w.Code, nil, text
	}
	doc, err := html.Parse(strings.NewReader(text))
	require.NoError(t, err)
	return w.Code, doc, text
}

// inputs of the form of a round.
func inputs(n *html.Node) url.Values {
	out := url.Values{}
	var walk func(*html.Node)
	walk = func(n *html.Node) {
		if n.Type == html.ElementNode && n.Data == "input" && attr(n, "type") == "hidden" {
			out.Set(attr(n, "name"), attr(n, "value"))
		}
		for c := n.FirstChild; c != nil; c = c.NextSibling {
			walk(c)
		}
	}
	walk(n)
	return out
}

// A whole round by plain forms: one wrong answer comes back, and the score at the
// end counts first answers.
func TestDrillRoundByForms(t *testing.T) {
	h, d := drillSite(t)
	code, doc, _ := asked(t, h, http.MethodPost, "/plans/1/drill/round", url.Values{"seed": {"7"}, "level": {"4"}, "do": {"begin"}})
	require.Equal(t, http.StatusOK, code)
	missed := false
	asks, pictures := 0, 0
	const cameOf = "The station as the lamps are read"
	for range 40 {
		form := inputs(doc)
		if form.Get("answers") == "" {
			break
		}
		s, _ := roundOf(t, d, form.Get)
		key, ok := s.Next()
		require.True(t, ok)
		asks++
		e, _ := d.Exercise(key, 7)
		if s.Again() {
			e = e.Reordered(7, s.Times())
		}
		form.Set("do", "answer")
		if asks == 1 && e.Zone == nil {
			form.Set("a", "no such answer")
			code, _, text := asked(t, h, http.MethodPost, "/plans/1/drill/round", form)
			assert.Equal(t, http.StatusUnprocessableEntity, code)
			assert.Contains(t, text, screen.Words{}.OldAnswer())
			assert.NotContains(t, text, "Wrong.")
		}
		wrong := !missed && e.Zone == nil
		switch {
		case wrong:
			missed = true
			for _, c := range e.Choices {
				if !slices.Contains(e.Right, c.ID) {
					form.Set("a", view.ValueOf(e, c.ID))
				}
			}
		case e.Zone != nil:
			form.Set("a-from", strings.ReplaceAll(strconv.FormatFloat(e.Zone.Solution[0], 'f', -1, 64), ".", ","))
			form.Set("a-to", strconv.FormatFloat(e.Zone.Solution[1], 'f', -1, 64))
		default:
			form.Set("a", view.ValueOf(e, e.Right[0]))
		}
		shown := e.Picture != nil && e.Picture.Lamps == nil
		_, _, before := asked(t, h, http.MethodPost, "/plans/1/drill/round", url.Values{"seed": form["seed"], "level": form["level"], "digest": form["digest"], "answers": form["answers"], "do": {"next"}})
		assert.NotContains(t, before, cameOf)
		assert.NotContains(t, before, "your answer")
		assert.Contains(t, before, lesson.Words{}.BriefCaution())
		assert.NotContains(t, before, d.Notices()[0], "the cautions in full would answer some questions")
		_, answered, text := asked(t, h, http.MethodPost, "/plans/1/drill/round", form)
		assert.Equal(t, shown, strings.Contains(text, cameOf), key)
		if shown {
			pictures++
			struck := slices.Equal(e.Right, []string{"early"})
			for lamp, state := range map[string]string{"arrival": "unknown", "zone": "unknown"} {
				assert.Equal(t, struck, strings.Contains(text, `<g class="lamp-`+lamp+`-`+state+`">`), "%s: the picture shows what came of it", key)
			}
		}
		if wrong {
			assert.Contains(t, text, "Wrong.")
			assert.Contains(t, text, "Right would be")
			given, right := marked(answered, "given"), marked(answered, "right")
			require.Len(t, given, 1, "the answer that was given is labelled as the learner's own")
			assert.Contains(t, given[0], "your answer")
			assert.NotContains(t, given[0], " right")
			require.Len(t, right, len(e.Right))
			assert.True(t, strings.HasSuffix(right[0], " right"), right[0])
			assert.NotContains(t, right[0], "your answer")
		} else {
			assert.Empty(t, marked(answered, "given"))
			assert.Contains(t, text, "Right.", key)
		}
		form = inputs(answered)
		form.Set("do", "next")
		_, next, text := asked(t, h, http.MethodPost, "/plans/1/drill/round", form)
		doc = next
		if strings.Contains(text, `id="score"`) {
			assert.Contains(t, text, "18 of 19 questions right at the first go; 20 answers in all")
			assert.NotZero(t, pictures)
			assert.Equal(t, 20, asks, "one missed: asked again, in the place of a new one")
			return
		}
	}
	t.Fatal("the round does not end")
}

// marked are the choices of a question with a class of their own, in words.
func marked(doc *html.Node, class string) []string {
	var out []string
	for n := range doc.Descendants() {
		if n.Data == "label" && slices.Contains(strings.Fields(attr(n, "class")), class) {
			text := ""
			for c := range n.Descendants() {
				if c.Type == html.TextNode {
					text += c.Data + " "
				}
			}
			out = append(out, strings.Join(strings.Fields(text), " "))
		}
	}
	return out
}

// What cannot be read as a zone is asked again, in a round and in an exam, with what
// was filled in; an answer that was handed in stands filled in.
func TestZoneIsAskedAgain(t *testing.T) {
	h, d := drillSite(t)
	var given []drill.Answer
	form := url.Values{}
	for seed := uint64(1); form.Get("seed") == ""; seed++ {
		given = given[:0]
		for _, key := range d.Round(4, drill.RoundLength, seed)[:10] {
			e, _ := d.Exercise(key, seed)
			if e.Zone != nil {
				form.Set("seed", strconv.FormatUint(seed, 10))
				break
			}
			given = append(given, drill.Answer{Choice: e.Right[0]})
		}
	}
	carried, err := json.Marshal(given)
	require.NoError(t, err)
	form.Set("level", "4")
	form.Set("digest", mustExample(t).Digest())
	form.Set("answers", string(carried))
	form.Set("do", "answer")
	form.Set("a-from", "abc")
	form.Set("a-to", "115.2")
	code, doc, text := asked(t, h, http.MethodPost, "/plans/1/drill/round", form)
	assert.Equal(t, http.StatusUnprocessableEntity, code)
	assert.Contains(t, text, "This cannot be read as the two ends of a zone")
	assert.Contains(t, text, `value="abc"`)
	assert.Contains(t, text, `value="answer"`, "asked again")
	assert.NotContains(t, text, "Wrong.")
	assert.JSONEq(t, string(carried), inputs(doc).Get("answers"), "nothing was counted")
	form.Set("a-from", "115.1 mm")
	code, _, text = asked(t, h, http.MethodPost, "/plans/1/drill/round", form)
	assert.Equal(t, http.StatusOK, code)
	assert.Contains(t, text, `role="status"`)

	at, exam := "", ""
	for seed := 1; exam == ""; seed++ {
		rules := drill.UsualRules(uint64(seed))
		rules.Role = drill.Setter
		x, err := d.NewExam(rules)
		require.NoError(t, err)
		for i, key := range x.Keys {
			if d.KindOf(key) == drill.Zone {
				exam = "a" + strconv.Itoa(i+1)
			}
		}
		if exam != "" {
			_, at, _ = sent(t, h, "/plans/1/drill/exam", url.Values{"who": {"Ada"}, "exam": {"setter"}, "seed": {strconv.Itoa(seed)}})
		}
	}
	status, _, text := sent(t, h, at, url.Values{exam + "-from": {"abc"}, exam + "-to": {"115.3"}})
	assert.Equal(t, http.StatusUnprocessableEntity, status)
	assert.Contains(t, text, "Not handed in yet")
	assert.Contains(t, text, `value="abc"`)
	code, _, _ = asked(t, h, http.MethodGet, "/records/1", nil)
	assert.Equal(t, http.StatusNotFound, code)
	status, _, _ = sent(t, h, at, url.Values{exam + "-from": {"115.123"}, exam + "-to": {"115.3"}, "sure": {"yes"}})
	assert.Equal(t, http.StatusSeeOther, status)
	_, _, text = asked(t, h, http.MethodGet, at, nil)
	assert.Contains(t, text, `value="115.123"`, "what was handed in stands filled in")
}

func TestDrillPages(t *testing.T) {
	h, _ := drillSite(t)
	get := func(path string, form url.Values) (int, string) {
		code, _, text := asked(t, h, http.MethodGet, "/plans/1"+path, form)
		return code, text
	}
	_, text := get("/drill", nil)
	assert.Less(t, strings.Index(text, "Look first"), strings.Index(text, "Practise"))
	for _, term := range words.FirstTerms() {
		assert.Contains(t, text, html.EscapeString(term.Meaning))
	}
	assert.Contains(t, text, `href="/glossary"`)
	assert.Len(t, words.FirstTerms(), 9)
	table := text[strings.Index(text, `id="pairs"`):strings.Index(text, `class="firstwords"`)]
	for _, pair := range words.PairTexts(mustExample(t), press.Evaluate(mustExample(t))) {
		assert.Contains(t, table, "<td>"+words.OnOff(pair.Pair.Arrival)+"</td><td>"+words.OnOff(pair.Pair.Zone)+"</td><td><b>"+words.UpperFirst(pair.Verdict)+"</b>")
	}
	assert.Contains(t, text, "Only one round before the exam? Take level 1 for the technician&#39;s, level 4 for the setter&#39;s.")
	for _, part := range []string{"Level 4", "Never put a hand", "no safety function", "20 questions"} {
		assert.Contains(t, text, part)
	}
	for path, form := range map[string]url.Values{"/drill": nil, "/station": nil, "/station?": {"arrival": {"off"}, "zone": {"off"}}} {
		_, text = get(strings.TrimSuffix(path, "?"), form)
		at := strings.Index(text, words.WhenRead)
		require.Positive(t, at, "%s says when the lamps are read", path)
		first := strings.Index(text, "Level 1")
		if first < 0 {
			first = strings.Index(text, `name="arrival"`)
		}
		assert.Less(t, at, first, "%s: before anything else", path)
	}
	_, text = get("/station", url.Values{"arrival": {"on"}, "zone": {"on"}, "reading": {"115.06"}})
	assert.Contains(t, text, "In doubt: set apart")
	_, text = get("/station", url.Values{"arrival": {"on"}, "zone": {"on"}, "reading": {"24.99"}})
	assert.Contains(t, text, "the height of the part?")
	_, text = get("/station", url.Values{"arrival": {"on"}, "zone": {"on"}, "reading": {"115.07"}})
	assert.Contains(t, text, "In doubt: set apart")
	assert.NotContains(t, text, "it rests between")
	_, text = get("/station", url.Values{"arrival": {"on"}, "zone": {"on"}, "reading": {"115.075"}})
	assert.Contains(t, text, "It reads at the edge")
	_, text = get("/station", url.Values{"arrival": {"off"}, "zone": {"off"}, "reading": {"115.1"}})
	assert.Contains(t, text, ">Fault</h2>")
	assert.Contains(t, text, "<li>Stop: no part")
	_, text = get("/station", url.Values{"arrival": {"on"}, "zone": {"off"}, "reading": {"115.06"}})
	assert.Contains(t, text, "Refused within the guard band: measure it.")
	assert.NotContains(t, text, "In doubt")
	_, text = get("/station", url.Values{"arrival": {"on"}, "zone": {"on"}, "reading": {"115.06"}})
	assert.NotContains(t, text, "pass it on")
	code, text := get("/station", url.Values{"arrival": {"on"}, "zone": {"off"}, "reading": {"114,98"}, "when": {"run"}})
	assert.Equal(t, http.StatusOK, code)
	assert.Contains(t, text, "Too tall")
	assert.Contains(t, text, "Look for a chip")
	for reading, fault := range map[string]bool{"": false, "  ": false, "abc": true, "114,98,1": true, "NaN": true, "115.137 cm": true, "1e999": true, "114.98": false, "114.98 mm": false, "114.98mm": false, "mm": true} {
		code, text = get("/station", url.Values{"arrival": {"on"}, "zone": {"off"}, "reading": {reading}})
		assert.Equal(t, http.StatusOK, code, "the lamps are answered with the reading %q", reading)
		assert.Contains(t, text, `id="advice"`)
		assert.Contains(t, text, "<ol>")
		assert.Equal(t, fault, strings.Contains(text, `aria-describedby="reading-fault"`), "%q", reading)
		assert.Equal(t, fault, strings.Contains(text, "from the lamps alone"), "%q", reading)
		assert.Equal(t, fault, strings.Contains(text[strings.Index(text, `id="advice"`):], "From the lamps alone; the reading was not understood."), "%q: inside the verdict", reading)
	}
	code, text = get("/station", url.Values{"arrival": {"on"}, "zone": {"blue"}, "reading": {"abc"}})
	assert.Equal(t, http.StatusUnprocessableEntity, code)
	assert.Contains(t, text, "Say of both lamps")
	code, text = get("/motion", url.Values{"height": {"25.2"}})
	assert.Equal(t, http.StatusOK, code)
	assert.Contains(t, text, "Part 25.20")
	assert.Contains(t, text, "data-motion")
	assert.Less(t, len(text), 400_000)
	assert.NotContains(t, text, `id="hint"`)
	code, text = get("/motion", url.Values{"height": {"115.14 mm"}})
	assert.Equal(t, http.StatusOK, code)
	assert.Contains(t, text, "looks like a reading")
	code, _ = get("/motion", url.Values{"height": {"tall"}})
	assert.Equal(t, http.StatusUnprocessableEntity, code)
}

// A plan without signals, and broken requests, get a sentence and no fault.
// The addresses of forms lead to the page that the form stands on, with the same state of
// the plan. Derived: from what a person who reloads or keeps them wants.
func TestFormAddressesLeadBack(t *testing.T) {
	h, _ := drillSite(t)
	for at, to := range map[string]string{
		"/plans/1/drill/round": "/plans/1/drill", "/plans/1/drill/round?revision=draft": "/plans/1/drill?revision=draft", "/plans/1/drill/exam": "/plans/1/drill", "/plans/1/choice": "/plans/1", "/plans/1/file": "/plans/1", "/plans/1/shelved": "/plans/1",
	} {
		w := httptest.NewRecorder()
		h.ServeHTTP(w, httptest.NewRequest(http.MethodGet, at, nil))
		assert.Equal(t, http.StatusSeeOther, w.Code, at)
		assert.Equal(t, to, w.Header().Get("Location"), at)
	}
}

func TestDrillRefuses(t *testing.T) {
	h, d := drillSite(t, "station.reference_uncertainty", "0.3")
	require.Nil(t, d)
	for _, path := range []string{"drill", "motion", "station"} {
		_, _, text := asked(t, h, http.MethodGet, "/plans/1/"+path, nil)
		assert.Contains(t, text, "no push end or no zone yet", path)
	}
	h, d = drillSite(t)
	digest := press.Evaluate(mustExample(t)).PlanDigest()
	for _, one := range []struct {
		form url.Values
		want int
	}{
		{url.Values{"seed": {"-1"}, "level": {"1"}, "do": {"begin"}}, http.StatusBadRequest},
		{url.Values{"seed": {"1"}, "level": {"9"}, "do": {"begin"}}, http.StatusBadRequest},
		{url.Values{"seed": {"1"}, "level": {"1"}, "digest": {digest}, "answers": {"{"}}, http.StatusConflict},
		{url.Values{"seed": {"1"}, "level": {"1"}, "digest": {"another"}, "answers": {"[]"}}, http.StatusConflict},
		{url.Values{"seed": {"1"}, "level": {"1"}, "digest": {digest}, "answers": {`[` + strings.Repeat(`{},`, 499) + `{},{}]`}}, http.StatusConflict},
		{url.Values{"seed": {"1"}, "level": {"1"}, "digest": {digest}, "answers": {"[]"}}, http.StatusOK},
	} {
		code, _, _ := asked(t, h, http.MethodPost, "/plans/1/drill/round", one.form)
		assert.Equal(t, one.want, code, "%.80v", one.form)
	}
	require.NotNil(t, d)
}

func mustExample(t testing.TB) *press.Plan {
	t.Helper()
	p, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	return p
}

// tabTo presses the tab key until what has the focus is what is looked for.
func (b *tab) tabTo(is string) {
	b.t.Helper()
	for range 40 {
		if eval[bool](b, "document.activeElement?.matches('"+is+"') ?? false") {
			return
		}
		b.do(chromedp.KeyEvent("\t"))
	}
	b.t.Fatalf("the tab key does not lead to %s", is)
}

// A technician in a window 390 wide, with the keyboard alone: a whole round of
// the lamps, with one answer wrong.
func TestDrillWithTheKeyboard(t *testing.T) {
	b := newTab(t)
	h, d := drillSite(t)
	srv := httptest.NewServer(guard(h))
	t.Cleanup(srv.Close)
	b.do(chromedp.EmulateViewport(390, 844), chromedp.Navigate(srv.URL+"/plans/1/drill"))
	b.tabTo(".level button")
	b.do(chromedp.KeyEvent("\r"))
	wrong := 0
	for n := 0; ; n++ {
		b.until("document.querySelector('#question button[value=answer], #score') !== null")
		if eval[bool](b, "document.getElementById('score') !== null") {
			assert.Equal(t, 20, n, "a round of twenty, the missed one asked twice")
			break
		}
		require.Less(t, n, 30)
		assert.LessOrEqual(t, eval[int](b, "document.documentElement.scrollWidth"), 390, "no sideways scroll")
		s, seed := roundOf(t, d, func(name string) string {
			return eval[string](b, "document.querySelector('#question [name="+name+"]').value")
		})
		key, _ := s.Next()
		e, _ := d.Exercise(key, seed)
		if s.Again() {
			e = e.Reordered(seed, s.Times())
		}
		at := 0
		for i, c := range e.Choices {
			if e.Judge(drill.Answer{Choice: c.ID}).Right == (n > 0) {
				at = i
				break
			}
		}
		b.tabTo("#question input[type=radio]")
		b.do(chromedp.KeyEvent(" "))
		for range at {
			b.do(chromedp.KeyEvent(kb.ArrowDown))
		}
		b.do(chromedp.KeyEvent("\r"))
		b.until("document.querySelector('[role=status]') !== null")
		if !strings.HasPrefix(eval[string](b, "document.querySelector('[role=status]').textContent.trim()"), "Right") {
			wrong++
		}
		assert.LessOrEqual(t, eval[int](b, "document.documentElement.scrollWidth"), 390, "no sideways scroll")
		assert.Equal(t, "next", eval[string](b, "document.activeElement.value"), "the next step has the focus")
		b.do(chromedp.KeyEvent("\r"))
	}
	assert.Equal(t, 1, wrong)
	assert.Contains(t, eval[string](b, "document.getElementById('score').textContent"), "18 of 19")
	assert.Empty(t, b.complaints())
}

// smallTargets lists what is to be tapped and is less than 44 px high.
const smallTargets = `[...document.querySelectorAll("main button, main .button, main .choice, main .taplamp, main select, main input:not([type=radio]):not([type=checkbox]):not([type=hidden]), .pages a")]
	.filter((e) => e.checkVisibility() && e.getBoundingClientRect().height < 43.9).map((e) => e.outerHTML.slice(0, 80))`

// axe-core on every page of the drill, both themes, wide and narrow.
func TestDrillAxe(t *testing.T) {
	b := newTab(t)
	b.withAxe()
	h, _ := drillSite(t)
	srv := httptest.NewServer(guard(h))
	t.Cleanup(srv.Close)
	examined(t, h)
	for nth, path := range []string{"/plans/1/drill", "/plans/1/drill .level:nth-of-type(4) button", "/plans/1/drill .examform button", "/people?who=Learner+7 .removing button", examAddress(t, h), "/plans/1/motion?row=5", "/plans/1/station?arrival=on&zone=off&reading=115.14", "/plans/1/records", "/records/1", "/people", "/people?who=Learner+7"} {
		address, click, _ := strings.Cut(path, " ")
		b.do(chromedp.Navigate(srv.URL + address))
		if click != "" { // what only a form leads to
			eval[any](b, "document.querySelector('"+click+"').click() ?? 0")
			b.until("document.querySelector('#question, #trouble, .examform .fault') !== null")
			b.until("document.readyState === 'complete'")
		}
		eval[any](b, "document.querySelectorAll('details').forEach((d) => (d.open = true)) ?? 0")
		for i, l := range axeLooks() {
			b.look(l)
			assert.LessOrEqual(t, eval[int64](b, "document.documentElement.scrollWidth"), l.width, "%s: no sideways scroll", path)
			if asks(nth, i) {
				assert.Empty(t, b.violations("html"), "%s, %s, %d wide", path, l.theme, l.width)
			}
			if l.width == 390 {
				assert.Empty(t, eval[[]string](b, smallTargets), "%s: too small for a finger", path)
			}
			if folder := os.Getenv("RAMPLAN_SHOTS"); folder != "" {
				png, err := chromedp.Run(b.ctx, chromedp.FullScreenshot(100))
				require.NoError(t, err)
				name := "drill" + strings.NewReplacer("/", "-", "?", "-", "=", "-", "&", "-", "+", "-", " ", "-", ":", "-", "(", "", ")", "").Replace(strings.TrimPrefix(path, "/plans/1"))
				require.NoError(t, os.WriteFile(filepath.Join(folder, name+"-"+l.theme+"-"+strconv.FormatInt(l.width, 10)+".png"), png, 0o644))
			}
		}
	}
}

// The clock in the picture and the list of steps say the same time of the same moment:
// derived, both by the rule of words.Seconds.
func TestClockAndListAgree(t *testing.T) {
	b := newTab(t)
	h, _ := drillSite(t)
	srv := httptest.NewServer(guard(h))
	t.Cleanup(srv.Close)
	b.do(chromedp.EmulateViewport(1024, 900), chromedp.Navigate(srv.URL+"/plans/1/motion?row=0"))
	b.until("!document.querySelector('[data-controls]').hidden")
	steps := eval[[]string](b, "[...document.querySelectorAll('#steps li')].map((l) => l.textContent.split(',')[0])")
	require.Greater(t, len(steps), 6)
	for i, want := range steps {
		assert.Equal(t, want, eval[string](b, "document.querySelector('.figure.wide .station-clock text').textContent"), "step %d", i+1)
		eval[any](b, "document.querySelector('[data-do=next]').click() ?? 0")
	}
}

// The station moves in step with its lamps, its clock and the cursor on the strip.
func TestStationInMotion(t *testing.T) {
	b := newTab(t)
	h, _ := drillSite(t)
	srv := httptest.NewServer(guard(h))
	t.Cleanup(srv.Close)
	b.do(chromedp.EmulateViewport(1024, 900), chromedp.Navigate(srv.URL+"/plans/1/motion?row=0"))
	b.until("!document.querySelector('[data-controls]').hidden")
	lamp := func(name, state string) string {
		return eval[string](b, "document.querySelector('.figure.wide .lamp-"+name+"-"+state+"').getAttribute('visibility')")
	}
	steps := 0
	for lamp("arrival", "on") != "visible" && steps < 12 {
		eval[any](b, "document.querySelector('[data-do=next]').click() ?? 0")
		steps++
	}
	// Derived: approach, slow, press, zone on, at rest.
	assert.Equal(t, 4, steps)
	assert.Equal(t, "visible", lamp("zone", "on"))
	assert.Equal(t, "hidden", lamp("zone", "off"))
	assert.Contains(t, eval[string](b, "document.querySelector('.figure.wide .station-position').textContent"), "115.14")
	assert.Contains(t, eval[string](b, "document.querySelector('[data-says]').textContent"), "At rest")
	down := eval[string](b, "document.querySelector('.figure.wide .station-ram').getAttribute('transform')")
	assert.NotEqual(t, "translate(0 0)", down)
	assert.Equal(t, 2, eval[int](b, "document.querySelectorAll('svg.strip > path:last-child[class=line-ink][stroke-width=\"2\"]').length"), "a cursor on each form of the strip")
	eval[any](b, "document.querySelector('[data-do=back]').click() ?? 0")
	assert.Equal(t, "visible", lamp("arrival", "off"))
	eval[any](b, "(document.querySelector('[data-speed]').value = '1', document.querySelector('[data-do=again]').click()) ?? 0")
	b.until("document.querySelector('[data-do=play]').textContent === 'Go on'") // at the reading
	eval[any](b, "document.querySelector('[data-do=play]').click() ?? 0")
	b.until("document.querySelector('.figure.wide .station-phase').textContent.includes('Home')")
	assert.Equal(t, "Play", eval[string](b, "document.querySelector('[data-do=play]').textContent"))
	assert.Empty(t, b.complaints())
}

// The pages of the drill are as wide at 1440 px as those beside them, and so is the list of
// records in them. Derived: from the fault catalogue, which stands for the others.
func TestDrillPagesUseTheWidth(t *testing.T) {
	b := newTab(t)
	a := exampleArchive(t)
	h := newSite(a).router()
	examined(t, h)
	srv := httptest.NewServer(guard(h))
	t.Cleanup(srv.Close)
	wide := func(path, what string) float64 {
		b.do(chromedp.Navigate(srv.URL + path))
		return eval[float64](b, "document.querySelector('"+what+"').getBoundingClientRect().width")
	}
	b.do(chromedp.EmulateViewport(1440, 900))
	want := wide("/plans/1/faults", ".sheetbody")
	assert.Greater(t, want, 1100.0)
	for _, path := range []string{"/plans/1/drill", "/plans/1/motion", "/plans/1/station", "/plans/1/records", "/people", "/people?who=Learner%207", "/records/1"} {
		assert.InDelta(t, want, wide(path, ".sheetbody"), 1, path)
	}
	for _, path := range []string{"/plans/1/records", "/people"} {
		assert.Greater(t, wide(path, ".trainings"), 0.95*want-20, path)
	}
}
