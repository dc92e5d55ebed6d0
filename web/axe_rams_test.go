package web

import (
	"testing"

	"github.com/chromedp/chromedp"
)

// TestAxeRams runs the checker on the shelf of rams, on a plan that takes one from
// there, and on the page for other programs.
func TestAxeRams(t *testing.T) {
	slow(t)
	b, srv := checked(t, example(t))
	b.checkStates([]axeState{
		{"rams, none yet", "", func() {
			b.do(chromedp.Navigate(srv.URL + "/rams"))
		}},
		{"putting a ram on the shelf, refused", "", func() {
			b.do(chromedp.Navigate(srv.URL + "/plans/1/ram"))
			b.retype("shelf-name", "")
			b.do(chromedp.Click(chromedp.CSS(`button[value="put"]`)))
			b.until("document.querySelector('[aria-invalid]') !== null")
		}},
		{"a ram on the shelf", "", func() {
			b.retype("shelf-name", "Ram of bench two")
			b.do(chromedp.Click(chromedp.CSS(`button[value="put"]`)))
			b.until("document.querySelector('button[value=\"take 1\"]') !== null")
		}},
		{"rams", "", func() {
			b.do(chromedp.Navigate(srv.URL + "/rams"))
		}},
		{"ram", "", func() {
			b.do(chromedp.Navigate(srv.URL + "/rams/1"))
		}},
		{"for other programs", "", func() {
			b.do(chromedp.Navigate(srv.URL + "/programs"))
		}},
		{"a plan whose ram is older than the shelf's", "", func() {
			held := (&sheet{t: t, base: srv.URL}).get("/plans/1/ram").send("/plans/1/ram", "take 1", nil)
			held.typeIn("ram.stroke", "149")
			held.press("recompute")
			one := held.get("/rams/1")
			one.say("ram.plan", "1")
			one.send("/rams/1", "anew", nil)
			b.do(chromedp.Navigate(srv.URL + "/plans/1"))
			b.until("document.getElementById('ramnews') !== null")
		}},
	})
}
