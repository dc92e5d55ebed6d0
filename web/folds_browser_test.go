package web

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

func isOpen(b *tab, id string) bool {
	b.t.Helper()
	return eval[bool](b, "document.getElementById('"+id+"').open")
}

// TestFoldsStay opens and closes folds and presses a button of a row: they stay
// as they were left, and so does what was put into the paste box, which closes
// once it is read.
func TestFoldsStay(t *testing.T) {
	b, _ := visit(t, example(t))
	assert.False(t, isOpen(b, "f-title-more"))
	assert.True(t, isOpen(b, "f-ram-more"))
	eval[any](b, `(document.getElementById("f-title-more").open = document.getElementById("paste").open = true,
		document.getElementById("f-ram-more").open = false,
		document.getElementById("f-parts-rows-columns").open = true,
		document.getElementById("paste-text").value = "10 250\n70 2700", 0)`)
	click(b, addPart)
	b.until("document.getElementById('f-parts-3-nominal') !== null")
	click(b, `#f-parts-3 button[value="remove parts 3"]`)
	b.until("document.getElementById('f-parts-3-nominal') === null")
	for _, id := range []string{"f-title-more", "paste", "f-parts-rows-columns"} {
		assert.True(t, isOpen(b, id), id)
	}
	assert.False(t, isOpen(b, "f-ram-more"))
	assert.Equal(t, "10 250\n70 2700", valueOf(b, "paste-text"))
	click(b, `#paste button[value="paste ram.curve.points"]`)
	b.until("document.getElementById('f-ram-curve-points-1-1').value === '2700'")
	assert.False(t, isOpen(b, "paste"))
	assert.Empty(t, valueOf(b, "paste-text"))
	assert.True(t, isOpen(b, "f-title-more"))
}

// TestNothingJumps focuses every entry of a part: the row keeps its height.
func TestNothingJumps(t *testing.T) {
	b, _ := visit(t, example(t))
	assert.Empty(t, eval[string](b, `(() => {
		const card = document.getElementById("f-parts-0");
		const was = card.getBoundingClientRect().height;
		const jumped = [];
		for (const e of card.querySelectorAll("input:not([type=hidden]), select")) {
			e.focus();
			if (card.getBoundingClientRect().height !== was) jumped.push(e.name);
		}
		return jumped.join(" ");
	})()`))
}

// TestChoicesFit wants the chosen word of every choice in a row to be seen whole
// beside the arrow, and the explanations to be open where there is no row yet.
func TestChoicesFit(t *testing.T) {
	b, srv := visit(t, example(t))
	assert.False(t, isOpen(b, "f-parts-rows-columns"))
	assert.Contains(t, b.text("f-parts-rows-columns"), "The row goes away when the insert is missing.")
	for _, width := range []int64{1440, 1024, 390} {
		b.do(chromedp.EmulateViewport(width, 900))
		assert.Empty(t, eval[string](b, `(() => {
			const cut = [];
			for (const s of document.querySelectorAll("#f-parts-0 select")) {
				const style = getComputedStyle(s), pen = document.createElement("canvas").getContext("2d");
				pen.font = style.fontSize + " " + style.fontFamily;
				const room = s.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight) - 20; // the arrow
				for (const o of s.options) if (pen.measureText(o.label).width > room) cut.push(o.label);
			}
			return cut.join(" ");
		})()`), "%d", width)
	}
	newPlan(b, srv)
	assert.True(t, isOpen(b, "f-parts-rows-columns"))
}

// TestFaultsOnPhone shows the table of faults as cards at 390: nothing of it lies
// beyond the edge, and each figure says what it is.
func TestFaultsOnPhone(t *testing.T) {
	b, _ := visit(t, example(t))
	b.do(chromedp.EmulateViewport(390, 900))
	assert.Empty(t, eval[string](b, `[...document.querySelectorAll("#catalogue td, #catalogue tbody th")].filter((c) => {
		const r = c.getBoundingClientRect();
		return r.right > innerWidth || r.left < 0 || c.scrollWidth > c.clientWidth || (c.nodeName === "TD" && !getComputedStyle(c, "::before").content.includes(c.dataset.label));
	}).map((c) => c.textContent).join("; ")`))
	assert.Greater(t, eval[int](b, `document.querySelectorAll("#catalogue td").length`), 50)
	b.do(chromedp.EmulateViewport(1440, 900))
	assert.Equal(t, "table-cell", eval[string](b, `getComputedStyle(document.querySelector("#catalogue td")).display`))
}
