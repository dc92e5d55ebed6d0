package web

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// TestStripFollowsTheRoom types in a wide window, of which the answer brings the wide
// strip alone, and makes the window narrow: the other form comes by itself.
func TestStripFollowsTheRoom(t *testing.T) {
	b, _ := visit(t, example(t))
	forms := func(class string) string { return "document.querySelectorAll('#strip > .drawing" + class + "').length" }
	b.do(chromedp.EmulateViewport(1440, 900))
	b.retype("f-station-nest", "141")
	b.until(forms(":not(.compact)") + " === 1 && " + forms(".compact") + " === 0")
	b.until("document.getElementById('setpoints').textContent.includes('116.08')")
	b.do(chromedp.EmulateViewport(390, 900))
	b.until(forms(".compact") + " === 1 && " + forms(":not(.compact)") + " === 0")
	b.until("document.querySelector('#strip > .compact').getBoundingClientRect().height > 50")
	b.do(chromedp.EmulateViewport(1440, 900))
	b.until(forms(":not(.compact)") + " === 1")
	// What an answer leaves out stays in the page as it was.
	b.retype("f-station-nest", "142")
	b.until("document.getElementById('setpoints').textContent.includes('117.08')")
	assert.Equal(t, "", eval[string](b, "[...document.querySelectorAll('[data-kept]')].map((e) => e.id).join(' ')"))
	assert.True(t, eval[bool](b, "document.getElementById('f-joint').textContent.length > 200 && document.querySelector('#force svg').childElementCount > 3"))
	assert.Equal(t, "142", valueOf(b, "f-station-nest"))
}
