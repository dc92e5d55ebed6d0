package web

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// TestCheckOnPaperAndPhone: printed, the lamps that were tapped stand out from those that were not;
// a kept check names its samples in a column that is wide enough; and that a name is missing is
// said until one is typed.
func TestCheckOnPaperAndPhone(t *testing.T) {
	store := exampleArchive(t)
	provedParts(t, store)
	b, srv := visitWhole(t, New(store))
	b.do(chromedp.EmulateViewport(390, 844))
	b.do(chromedp.Navigate(srv.URL + benchPath + "/checks/4"))
	assert.GreaterOrEqual(t, eval[float64](b, `document.querySelector(".saysfigures tbody th").getBoundingClientRect().width`), 90.0, "a word wide, by eye")

	b.do(chromedp.Navigate(srv.URL + benchPath + "/check"))
	b.until("document.documentElement.classList.contains('live')")
	b.press("#sign button.primary")
	b.until("document.getElementById('sign-f') !== null && document.documentElement.classList.contains('live')")
	b.focusOn("#sign-who")
	b.keys("B")
	assert.True(t, eval[bool](b, "document.getElementById('sign-f') === null && !document.getElementById('sign-who').hasAttribute('aria-invalid')"))

	eval[any](b, `document.querySelector("#c0 input[type=radio]").checked = true`)
	_, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
	require.NoError(t, err)
	ink := `getComputedStyle(document.querySelector("#c0 .taplamp2%s")).color`
	assert.Equal(t, "rgb(0, 0, 0)", eval[string](b, fmt.Sprintf(ink, ":has(:checked)")), "tapped: black")
	assert.Equal(t, "rgb(153, 153, 153)", eval[string](b, fmt.Sprintf(ink, ":not(:has(:checked))")), "not tapped: pale")
}
