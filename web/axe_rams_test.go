package web

import (
	"testing"

	"github.com/chromedp/chromedp"
)

// TestAxeRams runs the checker on the shelf of rams, on a plan that takes one from
// there, and on the page for other programs.
func TestAxeRams(t *testing.T) {
	slow(t)
	source := axeSource(t)
	b, srv := visit(t, example(t))
	eval[any](b, source+"; 0")
	b.checkStates([]axeState{
		{"rams, none yet", func() {
			b.do(chromedp.Navigate(srv.URL + "/rams"))
			eval[any](b, source+"; 0")
		}},
		{"putting a ram on the shelf, refused", func() {
			b.do(chromedp.Navigate(srv.URL + "/plans/1/ram"))
			b.retype("shelf-name", "")
			b.do(chromedp.Click(chromedp.CSS(`button[value="put"]`)))
			b.until("document.querySelector('[aria-invalid]') !== null")
			eval[any](b, source+"; 0")
		}},
		{"a ram on the shelf", func() {
			b.retype("shelf-name", "Ram of bench two")
			b.do(chromedp.Click(chromedp.CSS(`button[value="put"]`)))
			b.until("document.querySelector('button[value=\"take 1\"]') !== null")
			eval[any](b, source+"; 0")
		}},
		{"rams", func() {
			b.do(chromedp.Navigate(srv.URL + "/rams"))
			eval[any](b, source+"; 0")
		}},
		{"ram", func() {
			b.do(chromedp.Navigate(srv.URL + "/rams/1"))
			eval[any](b, source+"; 0")
		}},
		{"for other programs", func() {
			b.do(chromedp.Navigate(srv.URL + "/programs"))
			eval[any](b, source+"; 0")
		}},
		{"a plan whose ram is older than the shelf's", func() {
			held := (&sheet{t: t, base: srv.URL}).get("/plans/1/ram").send("/plans/1/ram", "take 1", nil)
			held.typeIn("ram.stroke", "149")
			held.press("recompute")
			one := held.get("/rams/1")
			one.say("ram.plan", "1")
			one.send("/rams/1", "anew", nil)
			b.do(chromedp.Navigate(srv.URL + "/plans/1"))
			b.until("document.getElementById('ramnews') !== null")
			eval[any](b, source+"; 0")
		}},
	})
}
