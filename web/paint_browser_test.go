package web

import (
	"os"
	"slices"
	"strconv"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/css"
	"github.com/chromedp/cdproto/dom"
	"github.com/chromedp/cdproto/performance"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// watchPaint measures, for each answer to typing, when the keys had rested, when the
// answer was there, when it stood in the page and when it was painted.
const watchPaint = `(() => {
	const rest = 200; // as live.js has it
	window.painted = [];
	let now = null;
	document.addEventListener("input", () => (now = { rested: performance.now() + rest }), true);
	const text = Response.prototype.text;
	Response.prototype.text = async function () {
		const body = await text.call(this);
		if (now) now.answered = performance.now();
		return body;
	};
	new MutationObserver(() => {
		const one = now;
		if (!one?.answered || one.swapped) return;
		one.swapped = performance.now();
		requestAnimationFrame(() => {
			const after = new MessageChannel(); // its message comes when the frame is done
			after.port1.onmessage = () => {
				one.painted = performance.now();
				window.painted.push(one);
				window.next?.();
			};
			after.port2.postMessage(0);
		});
	}).observe(document.getElementById("result"), { childList: true, subtree: true, characterData: true, attributes: true });
	return 0;
})()`

// TestPaint prints how long it takes from the rest of the keys to the picture that an
// answer paints, and what the page's thread works for it:
//
//	RAMPLAN_PAINT=1 go test -v -run TestPaint ./web
//
// The aim is 60 ms on a quiet machine; the work in thread time can be compared on a busy
// one as well.
func TestPaint(t *testing.T) {
	if os.Getenv("RAMPLAN_PAINT") == "" {
		t.Skip("measured with RAMPLAN_PAINT=1")
	}
	b, _ := visitWhole(t, example(t))
	b.do(chromedp.EmulateViewport(1440, 900))
	type moments struct{ Rested, Answered, Swapped, Painted float64 }
	eval[any](b, watchPaint)
	// The test's own look into the page is told of every changed node, which takes the
	// page longer than the change: nobody's browser does that work.
	for _, stop := range []cdp.Command[cdp.Empty, cdp.Empty]{css.Disable, dom.Disable} {
		_, err := chromedp.Call(b.ctx, stop, cdp.Empty{})
		require.NoError(t, err)
	}
	_, err := chromedp.Call(b.ctx, performance.Enable, performance.EnableParams{TimeDomain: performance.EnableTimeDomainThreadTicks})
	require.NoError(t, err)
	const first, times = 4, 24 // the first answers bring everything
	var before map[string]float64
	for n := range first + times {
		if n == first {
			before = b.work()
		}
		b.retype("f-station-nest", strconv.Itoa(140+n%2)+"."+strconv.Itoa(n%7))
		eval[any](b, "painted.length > "+strconv.Itoa(n)+" || new Promise((done) => (window.next = () => done(0)))") // asking again and again would be work too
	}
	after := b.work()
	all := eval[[]moments](b, "window.painted")[first:]
	for _, part := range []struct {
		name string
		took func(moments) float64
	}{
		{"keys rest to answer", func(m moments) float64 { return m.Answered - m.Rested }},
		{"answer to page", func(m moments) float64 { return m.Swapped - m.Answered }},
		{"page to painted", func(m moments) float64 { return m.Painted - m.Swapped }},
		{"keys rest to painted", func(m moments) float64 { return m.Painted - m.Rested }},
	} {
		var took []float64
		for _, m := range all {
			took = append(took, part.took(m))
		}
		slices.Sort(took)
		t.Logf("%-22s median %5.1f ms, longest %5.1f ms", part.name, took[len(took)/2], took[len(took)-1])
	}
	for _, name := range []string{"ScriptDuration", "RecalcStyleDuration", "LayoutDuration", "TaskDuration"} {
		t.Logf("%-22s %5.1f ms of thread time an answer", name, 1000*(after[name]-before[name])/times)
	}
}

// work is how long the page's thread has worked so far, in seconds by kind.
func (b *tab) work() map[string]float64 {
	b.t.Helper()
	got, err := chromedp.Call(b.ctx, performance.GetMetrics, cdp.Empty{})
	require.NoError(b.t, err)
	out := map[string]float64{}
	for _, m := range got.Metrics {
		out[m.Name] = m.Value
	}
	return out
}
