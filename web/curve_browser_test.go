package web

import (
	"fmt"
	"testing"

	cdpinput "github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const pointForce = "document.getElementById('f-ram-curve-points-2-1').value"

// at gives the middle of an element in the window.
func (b *tab) at(id string) (x, y float64) {
	b.t.Helper()
	eval[any](b, fmt.Sprintf("document.getElementById(%q).scrollIntoView({block: 'center'}) ?? 0", id))
	at := eval[[]float64](b, fmt.Sprintf("(() => { const r = document.querySelector('#%s .knob').getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2]; })()", id))
	return at[0], at[1]
}

func (b *tab) mouse(kind cdpinput.DispatchMouseEventType, x, y float64) {
	b.t.Helper()
	_, err := chromedp.Call(b.ctx, cdpinput.DispatchMouseEvent, cdpinput.DispatchMouseEventParams{Type: kind, X: x, Y: y, Button: cdpinput.MouseButtonLeft, Buttons: 1, ClickCount: 1})
	require.NoError(b.t, err)
}

// TestDragPoint drags a point of the curve: its entries follow at once, answers
// that come meanwhile change neither, and the neighbours are never passed.
func TestDragPoint(t *testing.T) {
	b, _ := visit(t, example(t))
	b.do(chromedp.EmulateViewport(1440, 900))
	const id = "curve-point-2"
	x, y := b.at(id)
	line := eval[string](b, "document.querySelector('#curve .drawing').innerHTML")
	digest := b.text("digest")
	b.mouse(chromedp.MousePressed, x, y)
	b.mouse(chromedp.MouseMoved, x, y-8)
	moved := eval[string](b, pointForce)
	require.NotEqual(t, "960", moved, "the entry follows at once")
	now := eval[float64](b, "document.querySelector('#"+id+" .knob').getBoundingClientRect().y")
	assert.InDelta(t, y-8, now+6, 3, "and so does the point")
	b.until(fmt.Sprintf("document.getElementById('digest').textContent !== %q", digest))
	assert.NotEqual(t, line, eval[string](b, "document.querySelector('#curve .drawing').innerHTML"), "the curve follows with the answer")
	assert.Equal(t, moved, eval[string](b, pointForce))
	assert.Equal(t, id, eval[string](b, "document.activeElement.id"), "the answer leaves the point in hand")
	b.mouse(chromedp.MouseMoved, x, y-12)
	further := eval[string](b, pointForce)
	assert.Greater(t, eval[float64](b, "Number("+pointForce+")"), 960.0)
	assert.NotEqual(t, moved, further, "the drag goes on after the answer")
	b.mouse(chromedp.MouseMoved, x, y-400)
	b.mouse(chromedp.MouseReleased, x, y-400)
	assert.Equal(t, "1370", eval[string](b, pointForce), "a step below the next point's 1380 N")
	assert.Equal(t, "30", eval[string](b, "document.getElementById('f-ram-curve-points-2-0').value"), "what was not moved stays as typed")
	b.until("!document.getElementById('result').textContent.includes('Older than the entries')")
	assert.Empty(t, b.complaints())
}

// TestPointByKeys moves a point with the arrow keys, and says where it is.
func TestPointByKeys(t *testing.T) {
	b, _ := visit(t, example(t))
	b.do(chromedp.EmulateViewport(390, 900))
	const id = "curve-point-2"
	eval[any](b, "document.getElementById('"+id+"').focus() ?? 0")
	digest := b.text("digest")
	b.do(chromedp.KeyEvent(kb.ArrowUp), chromedp.KeyEvent(kb.ArrowUp), chromedp.KeyEvent(kb.ArrowLeft))
	assert.Equal(t, "980", eval[string](b, pointForce))
	assert.Equal(t, "29.5", eval[string](b, "document.getElementById('f-ram-curve-points-2-0').value"))
	assert.Equal(t, "Point 3: 29.5\u202f%, 980\u202fN", eval[string](b, "document.getElementById('"+id+"').getAttribute('aria-label')"))
	b.until(fmt.Sprintf("document.getElementById('digest').textContent !== %q", digest))
	assert.Equal(t, id, eval[string](b, "document.activeElement.id"), "the focus stays")
	b.do(chromedp.KeyEvent(kb.ArrowDown, chromedp.KeyModifiers(chromedp.ModifierShift)))
	assert.Equal(t, "880", eval[string](b, pointForce))

	b.retype("f-station-nest", "14o")
	b.until("document.getElementById('f-station-nest').getAttribute('aria-invalid') === 'true'")
	assert.True(t, eval[bool](b, "document.getElementById('"+id+"') !== null"), "a fault elsewhere leaves the points movable")
	b.retype("f-ram-curve-points-2-1", "x")
	b.until("document.getElementById('curve').textContent.includes('Older than the points below')")
	assert.False(t, eval[bool](b, "document.getElementById('"+id+"') !== null"), "a curve that is not that of the entries cannot be moved")
	assert.Empty(t, b.complaints())
}
