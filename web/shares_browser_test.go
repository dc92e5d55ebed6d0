package web

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

const sharesText = "(document.querySelector('#shares .sharesbody')?.textContent ?? '')"

// TestSharesBrowser: the bench's shares come by themselves, are marked as older while
// something is typed, and are those of the new plan after it; the page counts, and a count
// can be stopped.
func TestSharesBrowser(t *testing.T) {
	b, srv := visitWhole(t, example(t))
	b.until(sharesText + ".includes('Accepted, not conforming')")
	of := eval[string](b, "document.getElementById('shares').dataset.of")
	b.until("document.getElementById('shares').dataset.whole === document.getElementById('shares').dataset.of")
	was := eval[string](b, sharesText)
	eval[any](b, `(() => {
		const place = document.getElementById("shares");
		window.gone = 0;
		new MutationObserver(() => { if (!place.querySelector("#days")) window.gone++; }).observe(place, { childList: true, subtree: true });
		return 0;
	})()`)
	b.retype("f-requirement-height_high", "25.07")
	b.until("document.getElementById('shares').dataset.of !== '" + of + "' && document.getElementById('shares').dataset.whole === document.getElementById('shares').dataset.of && !document.getElementById('shares').classList.contains('older')")
	assert.NotEqual(t, was, eval[string](b, sharesText))
	assert.Zero(t, eval[int](b, "window.gone"), "the worst day stays in its place while the new one is worked out, so that nothing below jumps")
	assert.False(t, eval[bool](b, "document.querySelector('#days').classList.contains('older')"), "and is the new one in the end")
	assert.False(t, eval[bool](b, "document.querySelector('#strip .stalled') !== null"), "nothing stalls")
	b.retype("f-window-setting", "38")
	b.until("document.querySelector('#strip .stalled:not(.older)') !== null && document.getElementById('strip').textContent.includes('in a million parts stall')")
	assert.Equal(t, 1, eval[int](b, "document.querySelectorAll('#strip svg').length"), "in the form that there is room for")
	b.retype("f-window-setting", "")
	b.until("document.querySelector('#strip .stalled') === null")
	b.retype("f-requirement-height_high", "x")
	b.until("document.querySelector('.outcome.older') !== null && !document.getElementById('shares').classList.contains('older')")

	b.do(chromedp.Navigate(srv.URL + "/plans/1/shares"))
	b.until("document.documentElement.classList.contains('live') && document.getElementById('stop').disabled && " + sharesText + ".includes('Bad lot')")
	eval[any](b, "document.querySelector('#asked button:not([type])').click() ?? 0")
	b.until("document.getElementById('parts-n').textContent.includes('how many parts') && document.activeElement.id === 'parts'")
	eval[any](b, "document.getElementById('parts').value = '1e12'; document.querySelector('#asked button:not([type])').click() ?? 0")
	b.until("document.getElementById('progress').textContent.includes('of 1') && " + sharesText + ".includes('so far')")
	assert.False(t, eval[bool](b, "document.getElementById('stop').disabled"))
	eval[any](b, "document.getElementById('stop').click() ?? 0")
	b.until("document.getElementById('progress').textContent.startsWith('Stopped') && document.getElementById('progress').textContent.includes('is kept below')")
	assert.True(t, eval[bool](b, sharesText+".includes('so far: not all that were asked for')"), "what was counted stays")
	assert.True(t, eval[bool](b, sharesText+".includes('Counted: limits')"))
	assert.False(t, eval[bool](b, "document.querySelector('#days').classList.contains('older')"))
	eval[any](b, "document.getElementById('parts').value = '20000'; document.querySelector('#asked button:not([type])').click() ?? 0")
	b.until(sharesText + ".includes('parts counted one by one')")
}

// TestSharesPushNothingDown: what stands under the shares of the bench stays where it is
// when they come, but for a few px where this plan was never shown in this browser, and
// quite when it was.
func TestSharesPushNothingDown(t *testing.T) {
	b, srv := visitWhole(t, example(t))
	for i, most := range []float64{120, 1} {
		b.do(chromedp.Navigate("about:blank"))
		b.do(chromedp.Navigate(srv.URL + "/plans/1"))
		b.until("document.documentElement.classList.contains('live')")
		eval[any](b, `(() => {
			window.tops = [];
			const top = () => document.getElementById("risk").getBoundingClientRect().top - document.getElementById("shares").getBoundingClientRect().top;
			window.tops.push(top());
			new ResizeObserver(() => window.tops.push(top())).observe(document.getElementById("shares"));
			return 0;
		})()`)
		b.until("document.getElementById('shares').dataset.whole === document.getElementById('shares').dataset.of")
		moved := eval[float64](b, "Math.max(...window.tops) - window.tops[0]")
		assert.LessOrEqual(t, moved, most, "load %d", i)
	}
}
