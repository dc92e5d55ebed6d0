package web

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
)

// focused names what has the focus: the id of a field, or what a button says.
const focused = "document.activeElement.getAttribute('aria-label') && document.activeElement.nodeName === 'BUTTON' ? document.activeElement.getAttribute('aria-label') : document.activeElement.id"

// TestTabThroughRows: from entry to entry of the curve nothing lies between, and
// the buttons of all its rows are one stop behind them.
func TestTabThroughRows(t *testing.T) {
	b, _ := visit(t, example(t))
	b.do(chromedp.Focus(chromedp.ID("f-ram-curve-points-0-0")))
	for row := range 7 {
		for k := range 2 {
			assert.Equal(t, fmt.Sprintf("f-ram-curve-points-%d-%d", row, k), eval[string](b, focused))
			b.do(chromedp.KeyEvent(kb.Tab))
		}
	}
	assert.Equal(t, "Remove point 7", eval[string](b, focused))
	for _, c := range []struct{ key, want string }{
		{kb.ArrowLeft, "Move point 7 up"}, // down is disabled there
		{kb.ArrowUp, "Move point 6 up"},
		{kb.ArrowRight, "Move point 6 down"},
		{kb.ArrowDown, "Move point 7 up"}, // what can be pressed there
		{kb.Home, "Move point 1 down"},
		{kb.ArrowUp, "Move point 1 down"},
		{kb.ArrowRight, "Remove point 1"},
		{kb.ArrowRight, "Remove point 1"},
		{kb.End, "Remove point 7"},
	} {
		b.do(chromedp.KeyEvent(c.key))
		assert.Equal(t, c.want, eval[string](b, focused))
	}
	b.do(chromedp.KeyEvent(kb.Tab))
	assert.Equal(t, "Add a point", eval[string](b, "document.activeElement.textContent.trim()"))

	b.do(chromedp.KeyEvent(kb.Tab, chromedp.KeyModifiers(chromedp.ModifierShift)))
	b.do(chromedp.KeyEvent(kb.Enter))
	b.until("document.getElementById('f-ram-curve-points-6') === null")
	stops := "[...document.querySelectorAll('#f-ram-curve-points-rows .sign')].filter((e) => e.tabIndex === 0).length"
	b.until(stops + " === 1")
	assert.Equal(t, 2, eval[int](b, "[...document.querySelectorAll('#f-parts-0 .sign, #f-parts-1 .sign')].filter((e) => e.tabIndex === 0).length"), "a card has one stop")
	b.retype("f-title-name", "Hub")
	b.until("document.querySelector('.planname').textContent === 'Hub'")
	assert.Equal(t, 1, eval[int](b, stops), "an answer leaves it so")
	assert.Empty(t, b.complaints())
}

// TestUndoOnTheCurve: Ctrl+Z on a moved point does what the button does.
func TestUndoOnTheCurve(t *testing.T) {
	b, _ := visit(t, example(t))
	b.do(chromedp.EmulateViewport(1440, 900))
	const id = "curve-point-2"
	eval[any](b, "document.getElementById('"+id+"').focus() ?? 0")
	b.do(chromedp.KeyEvent(kb.ArrowUp))
	assert.Equal(t, "970", eval[string](b, pointForce))
	b.do(chromedp.KeyEvent("z", chromedp.KeyModifiers(chromedp.ModifierCtrl))) // at once, before it is saved
	b.until(pointForce + " === '960'")
	assert.Equal(t, id, eval[string](b, "document.activeElement.id"), "the focus stays")
	b.do(chromedp.KeyEvent("y", chromedp.KeyModifiers(chromedp.ModifierCtrl)))
	b.until(pointForce + " === '970'")
	b.until("!document.getElementById('undo').disabled")
	assert.Empty(t, b.complaints())

	b, _ = visit(t, example(t)) // what is typed soon after belongs to the same step
	b.do(chromedp.EmulateViewport(1440, 900))
	x, y := b.at(id)
	b.mouse("mousePressed", x, y)
	b.mouse("mouseMoved", x, y-20)
	b.mouse("mouseReleased", x, y-20)
	assert.NotEqual(t, "960", eval[string](b, pointForce))
	b.do(chromedp.KeyEvent("z", chromedp.KeyModifiers(chromedp.ModifierCtrl)))
	b.until(pointForce + " === '960'")
	assert.Empty(t, b.complaints())
}
