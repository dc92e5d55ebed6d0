package web

import (
	"net/http"
	"sync/atomic"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

const (
	livePage = "document.documentElement.classList.contains('live')"
	tapped   = `document.querySelector('[name="rows[0].2"]:checked')?.value ?? ''`
)

// TestHalfFilledCheck: what was filled into a shift check on a phone is there again after a reload,
// and after a signature that the server did not answer; once it is signed the next begins empty.
func TestHalfFilledCheck(t *testing.T) {
	store := exampleArchive(t)
	issuedA(t, store)
	var down atomic.Bool
	whole := New(store)
	b, srv := visitWhole(t, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if down.Load() && r.Method == http.MethodPost && r.Header.Get(partHeader) == "" {
			http.Error(w, "down", http.StatusServiceUnavailable)
			return
		}
		whole.ServeHTTP(w, r)
	}))
	b.do(chromedp.EmulateViewport(390, 800))
	open := func() {
		b.do(chromedp.Navigate(srv.URL + benchPath + "/check"))
		b.until("document.getElementById('check') !== null && " + livePage)
	}
	open()
	assert.Empty(t, eval[string](b, tapped))
	press := func(name, value string) {
		eval[any](b, `document.querySelector('[name="`+name+`"][value="`+value+`"]').click() ?? 0`)
	}
	press("rows[0].2", "off")
	b.focusOn("#check input[type=text][name^='rows[0]']")
	b.keys("115,1")
	b.do(chromedp.Reload())
	b.until("document.getElementById('check') !== null && " + livePage)
	assert.Equal(t, "off", eval[string](b, tapped))
	assert.Equal(t, "115,1", eval[string](b, `document.querySelector("#check input[type=text][name^='rows[0]']").value`))

	for _, row := range []string{"0", "1", "2", "3", "4", "5"} {
		press("rows["+row+"].2", "off")
		press("rows["+row+"].3", "on")
	}
	eval[any](b, `document.querySelectorAll("#check .cardfields input[type=text]").forEach((e) => {
		e.value = "25.05"; e.dispatchEvent(new Event("input", {bubbles: true})); }) ?? 0`)
	b.focusOn("#sign-who")
	b.keys("B. Roth")
	sign := func() { eval[any](b, `document.querySelector('button[value="sign"]').click() ?? 0`) }
	down.Store(true)
	sign()
	b.until("document.getElementById('check') === null")
	down.Store(false)
	open()
	assert.Equal(t, "off", eval[string](b, tapped), "the server did not answer: nothing is lost")
	b.focusOn("#sign-who")
	b.keys("B. Roth")
	sign()
	b.until("/checks\\/1$/.test(location.pathname)")
	open()
	assert.Empty(t, eval[string](b, tapped), "the next check begins empty")
}
