package web

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
)

// TestPictureAndLooseSleeve plans, from the example and by keys alone, a picture that is
// taken 30 mm above the part before it is pressed, and a loose sleeve that must be refused:
// one box, one button. A probe that comes after the steps is offered its place among them.
func TestPictureAndLooseSleeve(t *testing.T) {
	b, _ := visitWhole(t, example(t))
	b.do(chromedp.EmulateViewport(1440, 900))
	press := func(selector, key string) {
		eval[any](b, "document.querySelector(`"+selector+"`).focus() ?? 0")
		b.do(chromedp.KeyEvent(key))
	}
	const lead = "document.querySelector('.headline').textContent"
	planned := "document.querySelector('#run .drawing') !== null && document.querySelector('#probe .drawing') !== null && " + lead + ".includes('is refused by the probe')"

	press("#f-probe-use", " ")
	b.until(lead + ".includes('is refused by the probe')")
	press(`[value="steps picture"]`, kb.Enter)
	b.until(planned)
	assert.Equal(t, "78.6", eval[string](b, "document.getElementById('f-sequence-steps-0-to').value"), "30 mm before the contact at 108.60 (derived)")
	assert.True(t, eval[bool](b, "document.getElementById('lead').textContent.includes('before the first contact of the nominal part')"))
	assert.False(t, eval[bool](b, lead+".includes('Not ready')"))
	assert.True(t, eval[bool](b, "document.getElementById('strip').textContent.includes('first look')"))

	// The other way about, in the same plan: without the probe its step is offered to go, and
	// with it again its place.
	press("#f-probe-use", " ")
	b.until("document.querySelector(`[value=\"probestep out\"]`) !== null")
	press(`[value="probestep out"]`, kb.Enter)
	b.until("document.querySelector(`[value=\"probestep out\"]`) === null && document.querySelector('#run .drawing') !== null && document.querySelector('#probe .drawing') === null")
	press("#f-probe-use", " ")
	b.until("document.querySelector(`[value=\"probestep in\"]`) !== null")
	press(`[value="probestep in"]`, kb.Enter)
	b.until(planned)
	assert.Equal(t, "probe", eval[string](b, "document.getElementById('f-sequence-steps-2-kind').value"))
}
