package web

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// inView tells whether an element lies in the window and nothing covers it.
func inView(b *tab, id string) bool {
	return eval[bool](b, `(() => {
		const e = document.getElementById("`+id+`"), r = e.getBoundingClientRect();
		if (r.height === 0 || r.top < 0 || r.bottom > innerHeight) return false;
		const on = document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2);
		return on !== null && (e.contains(on) || on.contains(e));
	})()`)
}

// TestHeadlineStays edits an entry far down: the headline, and how many blockers
// there are, stay in sight, and change there. In a narrow window their short form
// does.
func TestHeadlineStays(t *testing.T) {
	for _, width := range []int64{1440, 1024, 390} {
		b, _ := visit(t, example(t))
		b.do(chromedp.EmulateViewport(width, 900))
		id := "headline"
		if width < 1000 {
			id = "glance"
		}
		b.retype("f-requirement-height_high", "24.951")
		b.until("document.getElementById('" + id + "').textContent.includes('Not ready')")
		eval[any](b, "document.getElementById('f-targets-conforming_share').scrollIntoView({block: 'center'}) ?? 0")
		assert.True(t, inView(b, id), "%d", width)
		assert.Contains(t, b.text("glance"), "blocker", "%d", width)
		assert.True(t, eval[bool](b, "[...document.querySelectorAll('.standing-blocker, .glance-blocker b')].some((e) => e.getBoundingClientRect().height > 0 && e.getBoundingClientRect().bottom <= innerHeight)"), "the count at %d", width)
		assert.Equal(t, width < 1000, eval[bool](b, "getComputedStyle(document.getElementById('glance')).display !== 'none'"), "%d", width)
		if width < 1000 {
			b.do(chromedp.Click(chromedp.ID("glance")))
			b.until("Math.abs(document.getElementById('result').getBoundingClientRect().top - 72) < 60")
		}
		assert.Empty(t, b.complaints())
	}
}

// TestHeadlineOnce: the strip beside the headline does not say it again.
func TestHeadlineOnce(t *testing.T) {
	b, _ := visit(t, example(t))
	assert.Contains(t, b.text("headline"), "Catches a part")
	assert.NotContains(t, b.text("strip"), "atches a part")
	assert.Contains(t, b.text("strip"), "Good between 115.08 and 115.19")
}
