package web

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// TestJumpsAtTop: while the entries scroll, the links to their sections lie right
// under the bar where it stays, and at the upper edge where it scrolls away.
func TestJumpsAtTop(t *testing.T) {
	b, _ := visitWhole(t, example(t))
	for _, width := range []int64{1440, 1024, 1001, 1000, 720, 500, 390} {
		b.do(chromedp.EmulateViewport(width, 900))
		eval[any](b, "document.getElementById('f-motion').scrollIntoView() ?? 0")
		b.until("document.getElementById('jumps').getBoundingClientRect().top < 100")
		over := eval[float64](b, "Math.max(0, document.querySelector('.bar').getBoundingClientRect().bottom)")
		assert.InDelta(t, over, eval[float64](b, "document.getElementById('jumps').getBoundingClientRect().top"), 1.5, "window of %d", width)
		assert.True(t, eval[bool](b, "document.getElementById('f-motion').getBoundingClientRect().top >= document.getElementById('jumps').getBoundingClientRect().bottom - 1"), "window of %d: the section begins under the links", width)
		eval[any](b, "scrollTo(0, 0) ?? 0")
	}
}

// TestUnderTheHeading: in a narrow window what stands in no frame begins where the
// heading begins.
func TestUnderTheHeading(t *testing.T) {
	b, srv := visitWhole(t, example(t))
	for _, path := range []string{"/programs", benchPath + "/history", benchPath + "/sheet", benchPath + "/compared?from=draft", benchPath + "/revisions"} {
		b.do(chromedp.Navigate(srv.URL + path))
		for _, width := range []int64{1440, 980, 500, 390} {
			b.do(chromedp.EmulateViewport(width, 900))
			off := eval[[]string](b, `(() => {
				const left = (e) => e.getBoundingClientRect().left;
				const at = left(document.querySelector("h1"));
				return [...document.querySelectorAll("main > *")].filter((e) => e.getClientRects().length && !e.matches(".block, .paper, .sheethead, .sheetbody") && Math.abs(left(e) - at) > 0.5).map((e) => e.outerHTML.slice(0, 60));
			})()`)
			assert.Empty(t, off, "%s at %d", path, width)
		}
	}
}

// TestLevelButtons: the buttons of the levels, one of them bold, are of one width.
func TestLevelButtons(t *testing.T) {
	b, srv := visitWhole(t, example(t))
	b.do(chromedp.Navigate(srv.URL + benchPath + "/drill"))
	widths := eval[[]float64](b, "[...document.querySelectorAll('.level > button[value=begin]')].map((e) => e.getBoundingClientRect().width)")
	assert.GreaterOrEqual(t, len(widths), 4)
	for _, w := range widths {
		assert.InDelta(t, widths[0], w, 0.1)
	}
}

// TestLampTableInANarrowWindow: where there is little room, lamps and word stand in a line
// and what they mean in all the width under them; nothing is squeezed into a column of
// single words, and to a screen reader it is a table still.
func TestLampTableInANarrowWindow(t *testing.T) {
	b, _ := visitWhole(t, example(t))
	const cells = "[...document.querySelectorAll('.lamptable tbody tr')].map((r) => [...r.cells].map((c) => c.getBoundingClientRect()))"
	for _, width := range []int64{390, 320} {
		b.do(chromedp.EmulateViewport(width, 900))
		assert.Equal(t, 4.0, eval[float64](b, cells+".length"), "pairs at %d", width)
		share := eval[float64](b, "Math.min(..."+cells+".map((r) => r[3].width / document.querySelector('.lamptable').getBoundingClientRect().width))")
		assert.Greater(t, share, 0.95, "the meaning has all the width of %d", width)
		assert.True(t, eval[bool](b, cells+".every((r) => r[3].top >= r[2].bottom - 1 && Math.abs(r[0].top - r[1].top) < 2)"), "the meaning stands under the lamps at %d", width)
		assert.True(t, eval[bool](b, "document.documentElement.scrollWidth <= innerWidth"), "nothing sticks out at %d", width)
	}
	assert.Equal(t, "table rowgroup row cell", eval[string](b, `["", " tbody", " tr", " td"].map((e) => document.querySelector(".lamptable" + e.replace(" tr", " tbody tr")).getAttribute("role")).join(" ")`))
	b.do(chromedp.EmulateViewport(1440, 900))
	assert.True(t, eval[bool](b, cells+".every((r) => Math.abs(r[3].top - r[2].top) < 2)"), "side by side in a wide window")
}

// TestNothingTouchesInTheTables: the button that takes a rule keeps apart from the text above
// it; in a narrow window the table of shares shows no label without a figure, and no rule
// within a row.
func TestNothingTouchesInTheTables(t *testing.T) {
	b, _ := visitWhole(t, example(t))
	for _, width := range []int64{1440, 1024, 390} {
		b.do(chromedp.EmulateViewport(width, 900))
		gaps := eval[[]float64](b, `[...document.querySelectorAll(".ruletable th button")].map((e) => e.getBoundingClientRect().top - e.parentElement.querySelector(".note").getBoundingClientRect().bottom)`)
		assert.NotEmpty(t, gaps)
		for _, gap := range gaps {
			assert.GreaterOrEqual(t, gap, 6.0, "at %d, px; common practice, no source", width)
		}
	}
	b.until("document.querySelector('#shares table.shares tr.apart') !== null")
	assert.Empty(t, eval[[]string](b, `[...document.querySelectorAll("#shares table.shares:not(.matrix) td")].filter((e) => e.textContent.trim() === "" && e.getClientRects().length).map((e) => e.dataset.label)`))
	assert.Empty(t, eval[[]string](b, `[...document.querySelectorAll("#shares table.shares tr.apart > *")].map((e) => getComputedStyle(e).borderTopWidth).filter((w) => w !== "0px")`))
}
