package web

import (
	"net/http/httptest"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// examInTab begins an exam of the example in a tab.
func examInTab(t *testing.T, b *tab, exam string) {
	t.Helper()
	srv := httptest.NewServer(guard(example(t)))
	t.Cleanup(srv.Close)
	b.do(chromedp.EmulateViewport(390, 844), chromedp.Navigate(srv.URL+"/plans/1/drill"))
	b.do(chromedp.Click(chromedp.CSS("[name=exam][value=" + exam + "]")))
	b.retype("who", "Ada")
	b.do(chromedp.KeyEvent("\r"))
	b.until("document.querySelector('form.exam') !== null")
}

const inSight = "(() => { const r = document.querySelector('.exambar').getBoundingClientRect(); return r.top >= 0 && r.bottom <= innerHeight && r.height > 0; })()"

// An answer is kept as it is chosen, and stands there when the page is opened again; the
// clock runs and stays in sight; handing in asks about open questions first.
func TestExamInTheBrowser(t *testing.T) {
	b := newTab(t)
	examInTab(t, b, "technician")
	b.until("document.querySelector('[data-keep]').getClientRects().length === 0") // nobody has to press it
	b.do(chromedp.Click(chromedp.CSS("#q2 [value=\"3\"]")))
	b.until("document.querySelector('[data-kept]').textContent === 'Kept: 1 of 20 answered'")
	clock := eval[string](b, "document.querySelector('[role=timer]').textContent")
	b.until("document.querySelector('[role=timer]').textContent !== " + "'" + clock + "'")
	eval[any](b, "scrollTo(0, document.body.scrollHeight) ?? 0")
	assert.True(t, eval[bool](b, inSight), "at the foot of the page")
	assert.LessOrEqual(t, eval[int](b, "document.documentElement.scrollWidth"), 390, "no sideways scroll")
	b.do(chromedp.Reload())
	b.until("document.querySelector('#q2 [value=\"3\"]')?.checked ?? false")
	b.do(chromedp.Click(chromedp.CSS(".exam > p > button.primary")))
	b.until("document.querySelector('#open') !== null")
	assert.Contains(t, b.text("trouble"), "19 questions have no answer")
	assert.True(t, eval[bool](b, "document.querySelector('#q2 [value=\"3\"]').checked"))
	b.do(chromedp.Click(chromedp.CSS("[name=sure]")))
	b.until("document.querySelector('#score') !== null")
	assert.Empty(t, b.complaints())
}

// Half a zone is kept while it is typed; the time that runs out is said on the page.
func TestZoneOfAnExamIsKept(t *testing.T) {
	b := newTab(t)
	examInTab(t, b, "setter")
	name := eval[string](b, "document.querySelector('[name$=-from]').id")
	b.retype(name, "115,0")
	b.until("document.querySelector('[data-kept]').textContent === 'Kept: 1 of 20 answered'")
	b.do(chromedp.Reload())
	b.until("document.getElementById('" + name + "')?.value === '115,0'")
	assert.Empty(t, b.complaints())
}

// Without a script a button keeps the answers, and the line of the time runs all the same.
func TestExamWithoutScript(t *testing.T) {
	b := newTab(t)
	b.withoutScript()
	examInTab(t, b, "technician")
	b.do(chromedp.Click(chromedp.CSS("#q3 [value=\"2\"]")))
	b.do(chromedp.Click(chromedp.CSS("[data-keep]")))
	b.until("document.querySelector('#q3 [value=\"2\"]')?.checked && document.querySelector('[data-kept]').textContent === 'Kept: 1 of 20 answered'")
	width := "document.querySelector('.runsleft').width.animVal.value"
	before := eval[float64](b, width)
	assert.Greater(t, before, 50.0)
	b.until(width + " < " + strconv.FormatFloat(before, 'f', -1, 64))
}

// TestExamShots takes pictures of an exam for people to look at, into the folder that
// RAMPLAN_SHOTS names.
func TestExamShots(t *testing.T) {
	folder := os.Getenv("RAMPLAN_SHOTS")
	if folder == "" {
		t.Skip("no folder named in RAMPLAN_SHOTS")
	}
	require.NoError(t, os.MkdirAll(folder, 0o755))
	b := newTab(t)
	take := func(name string) {
		for _, width := range []int64{1440, 390} {
			b.do(chromedp.EmulateViewport(width, 900))
			png, err := chromedp.Run(b.ctx, chromedp.CaptureScreenshot())
			require.NoError(t, err)
			require.NoError(t, os.WriteFile(filepath.Join(folder, name+map[int64]string{1440: "-1440", 390: "-390"}[width]+".png"), png, 0o644))
		}
	}
	examInTab(t, b, "setter")
	take("exam")
	eval[any](b, "scrollTo(0, 3000) ?? 0")
	take("exam-further")
	b.do(chromedp.Click(chromedp.CSS(".exam > p > button.primary")))
	b.until("document.querySelector('#open') !== null")
	take("exam-open")
	eval[any](b, "document.getElementById('giveup').open = true")
	eval[any](b, "scrollTo(0, document.body.scrollHeight) ?? 0")
	take("exam-foot")
	b.do(chromedp.Click(chromedp.CSS("#giveup button")))
	b.until("document.querySelector('#unfinished') !== null")
	take("record-left")
	b.do(chromedp.Navigate(eval[string](b, "new URL('/plans/1/records', location.href).href")))
	take("records")
	b.do(chromedp.Navigate(eval[string](b, "new URL('/plans/1/drill', location.href).href")))
	take("drill")
	eval[any](b, "document.getElementById('exam').scrollIntoView() ?? 0")
	take("drill-exam")
}
