package web

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestStepsStandLevel: the inputs of a step that share a line are level, and its words are
// not cut, at every width.
func TestStepsStandLevel(t *testing.T) {
	b, _ := visit(t, runSite(t))
	for _, width := range []int64{1440, 1024, 390} {
		b.do(chromedp.EmulateViewport(width, 900))
		off := eval[[]string](b, `(() => {
			const out = [];
			for (const cells of document.querySelectorAll('[id^="f-sequence-steps-"] .cells')) {
				const all = [...cells.querySelectorAll('.field input[type=text], .field select')].filter((e) => e.getClientRects().length);
				for (const a of all) for (const c of all) {
					const p = a.getBoundingClientRect(), q = c.getBoundingClientRect();
					if (p.top < q.bottom && q.top < p.bottom && Math.abs(p.top - q.top) > 3) out.push(a.id + " beside " + c.id);
				}
				for (const s of cells.querySelectorAll('.field-choice')) if (s.getBoundingClientRect().width < 150) out.push(s.id + " is narrow");
			}
			return out;
		})()`)
		assert.Empty(t, off, "window of %d", width)
	}
}

// TestZoneIsMovedByItsButton: a typed target leaves the zone where it is; the question comes
// with the answer, and its button, pressed by a key, moves the zone. 58 to 62 mm about 60
// becomes 73 to 77 about 75, by hand.
func TestZoneIsMovedByItsButton(t *testing.T) {
	b, _ := visit(t, runSite(t))
	const (
		button = `document.querySelector('[value="zone 0"]')`
		zone   = `[0, 1].map((k) => document.querySelector('[name="sequence.steps[0].zone[' + k + ']"]').value).join(" ")`
	)
	require.True(t, eval[bool](b, button+" === null"))
	eval[any](b, "document.getElementById('f-sequence-steps-0-to').focus() ?? document.getElementById('f-sequence-steps-0-to').select() ?? 0")
	b.do(chromedp.KeyEvent("75"))
	b.until(button + " !== null")
	assert.Equal(t, "58 62", eval[string](b, zone), "nothing changes by itself")
	eval[any](b, button+".focus() ?? 0")
	b.do(chromedp.KeyEvent(kb.Enter))
	b.until(button + " === null")
	assert.Equal(t, "73 77", eval[string](b, zone))
}
