package web

import (
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/drill"
	"ramplan/press/words"
	"ramplan/static"
)

// handheldPlan is the example plan, its result, and the file made of it.
func handheldPlan(t testing.TB, issue *carry.Issue) (*press.Plan, *drill.Drill, string) {
	t.Helper()
	p, ps := press.Decode(static.Example())
	require.Empty(t, ps)
	r := press.Evaluate(p)
	d, err := drill.New(words.Printer{}, p, r, words.Reactions(p, r))
	require.NoError(t, err)
	file, err := DrillFile(p, issue, "", time.Date(2026, 11, 28, 12, 0, 0, 0, time.Local))
	require.NoError(t, err)
	return p, d, string(file)
}

// The file loads nothing and allows nothing but its own style and script; it says which
// plan it is, in which state, of when, with every caution, and that it is for practice.
func TestHandheldStandsAlone(t *testing.T) {
	p, d, file := handheldPlan(t, nil)
	for _, m := range regexp.MustCompile(`(?:src|href|action|srcset|poster)="([^"]*)"`).FindAllStringSubmatch(file, -1) {
		assert.Regexp(t, "^(#|data:image/svg)", m[1])
	}
	for _, m := range regexp.MustCompile(`url\(([^)]{0,40})`).FindAllStringSubmatch(file, -1) {
		assert.Regexp(t, `^("data:|#)`, m[1])
	}
	assert.NotRegexp(t, `<[a-z][^>]*\son[a-z]+=`, file, "a handler in the markup")
	assert.NotRegexp(t, `<[a-z][^>]*\sstyle=`, file)
	assert.NotContains(t, file, "http://127", "no server")
	policy := regexp.MustCompile(`http-equiv="Content-Security-Policy" content="([^"]*)"`).FindStringSubmatch(file)
	require.NotNil(t, policy)
	allowed := strings.ReplaceAll(policy[1], "&#39;", "'")
	assert.NotContains(t, allowed, "unsafe")
	assert.Contains(t, allowed, "default-src 'none'")
	for _, tag := range []string{"style", "script"} {
		all := regexp.MustCompile(`(?s)<`+tag+`>(.*?)</`+tag+`>`).FindAllStringSubmatch(file, -1)
		require.Len(t, all, 1, tag)
		assert.Contains(t, allowed, tag+"-src "+hashSource(all[0][1])+";")
	}
	text := strings.ReplaceAll(file, "&#39;", "'")
	for _, s := range append(d.Notices(), "DRAFT", p.Title.Number, words.ShortDigest(p.Digest()), "2026-11-28", "whoever can read the source of this file can read the answers", "typing mistakes only", "not watched by the server") {
		assert.Contains(t, text, s)
	}
	_, _, issued := handheldPlan(t, &carry.Issue{Revision: "C", Date: "2026-11-25"})
	assert.Contains(t, issued, "<dd>C</dd>")
	assert.Contains(t, issued, "<dd>2026-11-25</dd>")
	assert.NotContains(t, issued, "DRAFT")
	older, err := DrillFile(p, &carry.Issue{Revision: "C", Date: "2026-11-25"}, "D", time.Now())
	require.NoError(t, err)
	assert.Contains(t, string(older), "<dd>C, superseded by revision D</dd>")
	assert.Contains(t, string(older), "SUPERSEDED BY REVISION D: do not judge parts by this page")
	assert.Less(t, len(file), 2_500_000, "to be sent by mail; a measure of our own")
}

// A plan whose lamps mean nothing has no such file.
func TestHandheldRefuses(t *testing.T) {
	h, _ := drillSite(t, "station.reference_uncertainty", "0.3")
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest(http.MethodGet, "http://127.0.0.1/plans/1/drill.html", nil))
	assert.Equal(t, http.StatusUnprocessableEntity, w.Code)
	h, _ = drillSite(t)
	w = httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest(http.MethodGet, "http://127.0.0.1/plans/1/drill.html", nil))
	assert.Equal(t, http.StatusOK, w.Code)
	assert.Equal(t, `attachment; filename="WS-210-draft-drill.html"`, w.Header().Get("Content-Disposition"))
}

// openHandheld opens the file as a phone does, from its own storage.
func openHandheld(t *testing.T, b *tab, file string) {
	t.Helper()
	name := filepath.Join(t.TempDir(), "drill.html")
	require.NoError(t, os.WriteFile(name, []byte(file), 0o644))
	b.do(chromedp.EmulateViewport(390, 844), chromedp.Navigate("file://"+name))
	b.until("document.documentElement.classList.contains('scripted')")
}

// askedItem is the place of the exercise that a question on the page is.
const askedItem = `Number(document.querySelector('#stage .choice input').name.slice(1))`

// answerHandheld chooses a choice by its text, in the question of an item.
func answerHandheld(b *tab, text string) {
	b.t.Helper()
	require.True(b.t, eval[bool](b, `(() => {
		const c = [...document.querySelectorAll('#stage .choice')].find((c) => c.textContent.replace(/\s+/g, ' ').trim() === `+quoted(text)+`);
		c?.querySelector('input').click();
		return c !== undefined;
	})()`), text)
	eval[any](b, "document.querySelector('#stage [data-answer]').click() ?? 0")
}

func quoted(text string) string {
	return "`" + strings.NewReplacer("`", "\\`", `\`, `\\`).Replace(strings.Join(strings.Fields(text), " ")) + "`"
}

// A whole round from the file alone: every answer is judged as the program judges it,
// what is missed comes back as in the program, what came of it is shown, and the code
// at the end says so.
func TestHandheldRound(t *testing.T) {
	b := newTab(t)
	p, d, file := handheldPlan(t, nil)
	taken := d.TakeAlong()
	openHandheld(t, b, file)
	eval[any](b, "document.querySelector('[data-round=\"4\"]').click() ?? 0")
	var s drill.Session
	began, pictures, grave := false, 0, 0
	for nth := 1; ; nth++ {
		if eval[bool](b, "document.getElementById('score-h') !== null") {
			break
		}
		at := eval[int](b, askedItem)
		e := taken.Exercises[at]
		if !began {
			began = true
			sets := taken.Rounds[drill.Levels-1]
			i := slices.IndexFunc(sets, func(x drill.Set) bool { return x.Items[0] == at })
			require.GreaterOrEqual(t, i, 0)
			var keys []string
			for _, n := range sets[i].Items {
				keys = append(keys, taken.Exercises[n].Key)
			}
			s = drill.NewSession(keys)
		}
		key, more := s.Next()
		require.True(t, more)
		require.Equal(t, key, e.Key, "question %d", nth)
		id := e.Right[0]
		if nth%4 == 1 {
			for _, c := range e.Choices {
				if !slices.Contains(e.Right, c.ID) && (id == e.Right[0] || c.Grave != "") {
					id = c.ID
				}
			}
		}
		i := slices.IndexFunc(e.Choices, func(c drill.Choice) bool { return c.ID == id })
		assert.Equal(t, 0, eval[int](b, "document.querySelectorAll('#stage .verdict').length"))
		assert.False(t, eval[bool](b, "document.querySelector('[data-full]').checkVisibility()"), "the cautions in full would answer")
		answerHandheld(b, e.Choices[i].Text)
		j := e.JudgeChosen(id)
		said := eval[string](b, "document.querySelector('#stage .verdict').textContent.replace(/\\s+/g, ' ').trim()")
		assert.True(t, strings.HasPrefix(said, map[bool]string{true: "Right. ", false: "Wrong. "}[j.Right]+strings.Join(strings.Fields(j.Reason), " ")), "%s: %s", e.Key, said)
		labelled := eval[[]string](b, "[...document.querySelectorAll('#stage .choice.given .mark')].map((m) => m.textContent)")
		if j.Right {
			assert.Empty(t, labelled)
		} else {
			assert.Equal(t, []string{"your answer"}, labelled, e.Key)
		}
		assert.Equal(t, len(e.Right), eval[int](b, "[...document.querySelectorAll('#stage .choice.right .mark')].filter((m) => m.textContent === 'right').length"), e.Key)
		if j.Grave != "" {
			grave++
			assert.Contains(t, said, "In an exam this answer alone fails: "+j.Grave)
		}
		assert.True(t, eval[bool](b, "document.querySelector('[data-full]').checkVisibility()"))
		if e.Picture != nil && e.Picture.Lamps == nil {
			pictures++
			want := "on"
			if slices.Contains(e.Right, "early") {
				want = "unknown"
			} else if strings.HasPrefix(e.Right[0], "off") {
				want = "off"
			}
			if e.Kind == drill.Predict { // whose right answer is what the lamps show
				assert.Equal(t, "visible", eval[string](b, "document.querySelector('#stage .lamp-arrival-"+want+"').getAttribute('visibility')"), e.Key)
			}
			assert.Contains(t, eval[string](b, "document.querySelector('#stage .ended').textContent"), "The station as the lamps are read")
			assert.Greater(t, eval[float64](b, "document.querySelector('#stage .scene svg').getBoundingClientRect().height"), 300.0, "the drawing is drawn")
		}
		assert.LessOrEqual(t, eval[int](b, "document.documentElement.scrollWidth"), 390, e.Key)
		s = s.Answered(j.Right)
		eval[any](b, "document.querySelector('[data-next]').click() ?? 0")
		require.Less(t, nth, 30)
	}
	assert.True(t, s.Done())
	assert.NotZero(t, pictures)
	points := b.text("points")
	assert.Contains(t, points, words.Fixed(float64(s.Right), 0)+" of "+words.Fixed(float64(len(s.Seen)), 0)+" questions right at the first go")
	b.retype("who", "  Kim   Ito ")
	code, err := drill.ParseCode(b.text("code"))
	require.NoError(t, err, b.text("code"))
	assert.Equal(t, drill.Code{
		Level: 4, Digest: words.ShortDigest(p.Digest()), Right: s.Right, Items: len(s.Seen), Seed: code.Seed, Took: code.Took, Day: words.Day(time.Now()), Who: "Kim Ito",
	}, code)
	assert.Equal(t, 0, eval[int](b, "performance.getEntriesByType('resource').filter((r) => !r.name.startsWith('data:')).length"), "nothing was asked for")
	assert.Empty(t, b.complaints())
}

// At the station: two taps, and the page says what the bench would.
func TestHandheldStation(t *testing.T) {
	b := newTab(t)
	p, _, file := handheldPlan(t, nil)
	openHandheld(t, b, file)
	r := press.Evaluate(p)
	shown := "[...document.querySelectorAll('[data-lamps]')].filter((a) => a.checkVisibility())"
	assert.Equal(t, 0, eval[int](b, shown+".length"), "nothing before both were tapped")
	for _, on := range words.AllPairs {
		for _, when := range words.Situations {
			eval[any](b, `(() => {
				document.querySelector('[name=arrival][value=`+words.OnOff(on.Arrival)+`]').click();
				document.querySelector('[name=zone][value=`+words.OnOff(on.Zone)+`]').click();
				const w = document.querySelector('select[name=when]');
				w.value = '`+string(when)+`';
				w.dispatchEvent(new Event('change', { bubbles: true }));
				return 0;
			})()`)
			a, err := drill.AtStation(words.Printer{}, p, r, words.Reactions(p, r), on, when, nil)
			require.NoError(t, err)
			require.Equal(t, 1, eval[int](b, shown+".length"))
			text := eval[string](b, shown+"[0].textContent.replace(/\\s+/g, ' ')")
			for _, s := range append([]string{words.UpperFirst(a.Verdict), a.Meaning, a.Part}, a.Checks...) {
				assert.Contains(t, text, strings.Join(strings.Fields(s), " "))
			}
		}
	}
	assert.Empty(t, b.complaints())
}

// An exam from the file: the clock runs in sight, handing in with open questions asks
// first, what is wrong is told at the end, and the code says that it was not passed.
func TestHandheldExam(t *testing.T) {
	b := newTab(t)
	_, d, file := handheldPlan(t, &carry.Issue{Revision: "C", Date: "2026-11-25"})
	taken := d.TakeAlong()
	openHandheld(t, b, file)
	take := func(right bool) (all []int) {
		eval[any](b, "document.querySelector('[data-exam=T]').click() ?? 0")
		assert.Regexp(t, `^(19:5\d|20:00) left$`, b.text("clock"))
		all = eval[[]int](b, "[...document.querySelectorAll('#stage fieldset')].map((f) => Number(f.querySelector('input').name.slice(1)))")
		for n, at := range all {
			if n == 0 && !right {
				continue
			}
			e := taken.Exercises[at]
			i := slices.IndexFunc(e.Choices, func(c drill.Choice) bool { return slices.Contains(e.Right, c.ID) == (right || n > 2) })
			require.True(t, eval[bool](b, `(() => {
				const c = [...document.querySelectorAll('#q`+words.Fixed(float64(n+1), 0)+` .choice')].find((c) => c.textContent.replace(/\s+/g, ' ').trim() === `+quoted(e.Choices[i].Text)+`);
				c?.querySelector('input').click();
				return c !== undefined;
			})()`), e.Choices[i].Text)
		}
		return all
	}
	all := take(false)
	assert.Contains(t, b.text("open"), words.Fixed(float64(len(all)-1), 0)+" of "+words.Fixed(float64(len(all)), 0)+" answered")
	eval[any](b, "document.querySelector('[data-hand-in]').click() ?? 0")
	assert.Contains(t, b.text("trouble"), "Without an answer: 1.")
	eval[any](b, "document.querySelector('[data-hand-in]').click() ?? 0")
	b.until("document.getElementById('score-h') !== null")
	assert.Equal(t, len(all), eval[int](b, "document.querySelectorAll('#stage .verdict').length"))
	assert.Equal(t, 3, eval[int](b, "document.querySelectorAll('#missed li').length"))
	b.retype("who", "4711")
	code, err := drill.ParseCode(b.text("code"))
	require.NoError(t, err, b.text("code"))
	assert.Equal(t, []any{drill.Technician, "C", len(all) - 3, len(all)}, []any{code.Role, code.Revision, code.Right, code.Items})
	eval[any](b, "[...document.querySelectorAll('[data-leave]')].at(-1).click() ?? 0")
	take(true)
	eval[any](b, "document.querySelector('[data-hand-in]').click() ?? 0")
	b.until("document.getElementById('score-h') !== null")
	assert.Equal(t, "Technician's exam: passed, for practice", b.text("score-h"))
	b.retype("who", "4711")
	code, err = drill.ParseCode(b.text("code"))
	require.NoError(t, err, b.text("code"))
	assert.True(t, code.Passed)
	assert.Empty(t, b.complaints())
}

// The checker finds nothing in any state of the file, in both themes, wide and narrow.
func TestHandheldAxe(t *testing.T) {
	slow(t)
	b := newTab(t)
	b.withAxe()
	_, _, file := handheldPlan(t, nil)
	openHandheld(t, b, file)
	click := func(what string) func() {
		return func() { eval[any](b, "document.querySelector('"+what+"').click() ?? 0") }
	}
	b.checkStates([]axeState{
		{"beginning", "", func() {}},
		{"at the station", "", func() {
			click("[name=arrival][value=on]")()
			click("[name=zone][value=off]")()
		}},
		{"question", "", click("[data-round=\"2\"]")},
		{"answered", "", func() {
			click("#stage .choice input")()
			click("[data-answer]")()
		}},
		{"exam", "", func() {
			eval[any](b, "(window.confirm = () => true, document.querySelector('[data-leave]').click()) ?? 0")
			click("[data-exam=S]")()
			click("[data-hand-in]")()
		}},
		{"score", "", click("[data-hand-in]")},
	})
	assert.Empty(t, b.complaints())
}

// Where the script does not run, as in the preview of a mail, what the lamps mean
// stands there in full, and a sentence says how to practise.
func TestHandheldWithoutScript(t *testing.T) {
	b := newTab(t)
	_, _, file := handheldPlan(t, nil)
	name := filepath.Join(t.TempDir(), "drill.html")
	require.NoError(t, os.WriteFile(name, []byte(file), 0o644))
	b.withoutScript()
	b.do(chromedp.EmulateViewport(390, 844), chromedp.Navigate("file://"+name))
	assert.Equal(t, len(words.AllPairs)*len(words.Situations), eval[int](b, "[...document.querySelectorAll('[data-lamps]')].filter((a) => a.checkVisibility()).length"))
	assert.True(t, eval[bool](b, "document.querySelector('noscript').textContent.includes('open the file in a browser')"))
	assert.Equal(t, 0, eval[int](b, "[...document.querySelectorAll('[data-round], [data-exam], #station form')].filter((a) => a.checkVisibility()).length"), "nothing that does nothing")
	assert.LessOrEqual(t, eval[int](b, "document.documentElement.scrollWidth"), 390)
}
