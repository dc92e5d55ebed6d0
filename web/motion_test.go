package web

import (
	"net/http/httptest"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The station plays, pauses and begins again; for who wants no motion the same
// button only steps.
func TestStationPlays(t *testing.T) {
	b := newTab(t)
	h, _ := drillSite(t)
	srv := httptest.NewServer(guard(h))
	t.Cleanup(srv.Close)
	const (
		label = "document.querySelector('[data-do=play]').textContent.trim()"
		clock = "document.querySelector('.figure.wide .station-clock text').textContent"
		wait  = "new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 100))))"
	)
	press := func(what string) { eval[any](b, "document.querySelector('[data-do="+what+"]').click() ?? 0") }
	rest := func() {
		_, err := chromedp.Run(b.ctx, chromedp.Evaluate[any](wait+".then(() => 0)", chromedp.EvalAwaitPromise))
		require.NoError(t, err)
	}
	open := func(motion string) {
		_, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-reduced-motion", Value: motion}}})
		require.NoError(t, err)
		b.do(chromedp.EmulateViewport(1024, 900), chromedp.Navigate(srv.URL+"/plans/1/motion?row=0"))
		b.until("!document.querySelector('[data-controls]').hidden")
	}

	open("no-preference")
	begin := eval[string](b, clock)
	press("play")
	b.until(clock + " !== '" + begin + "'")
	assert.Equal(t, "Pause", eval[string](b, label))
	press("play")
	held := eval[string](b, clock)
	rest()
	assert.Equal(t, held, eval[string](b, clock), "paused, it stands still")
	assert.Equal(t, "Play", eval[string](b, label))
	press("again")
	assert.Equal(t, "Pause", eval[string](b, label), "from the beginning, it plays")

	open("reduce")
	assert.Equal(t, "Next step", eval[string](b, label))
	press("play")
	stepped := eval[string](b, clock)
	assert.NotEqual(t, begin, stepped, "a step was made")
	rest()
	assert.Equal(t, stepped, eval[string](b, clock), "nothing moves by itself")
	press("again")
	rest()
	assert.Equal(t, begin, eval[string](b, clock), "back at the beginning, and still")
	assert.Empty(t, b.complaints())
}

// On a narrow window the stills stand folded away, and beside one another when
// they are opened; each says the same in words.
func TestStillsAreSmall(t *testing.T) {
	b := newTab(t)
	h, _ := drillSite(t)
	srv := httptest.NewServer(guard(h))
	t.Cleanup(srv.Close)
	b.do(chromedp.EmulateViewport(390, 844), chromedp.Navigate(srv.URL+"/plans/1/motion?row=0"))
	assert.False(t, eval[bool](b, "document.querySelector('.stills').checkVisibility()"), "folded away")
	eval[any](b, "(document.querySelector('details.more').open = true) ?? 0")
	assert.True(t, eval[bool](b, "(([a, c]) => a.offsetTop === c.offsetTop && a.offsetLeft < c.offsetLeft)(document.querySelectorAll('.stills figure'))"), "two in a row")
	assert.LessOrEqual(t, eval[int](b, "document.querySelector('.stills').offsetHeight"), 1400)
	assert.True(t, eval[bool](b, "[...document.querySelectorAll('.stills svg')].every((s) => s.querySelector('desc').textContent.length > 40)"), "each in words too")
	assert.LessOrEqual(t, eval[int](b, "document.documentElement.scrollWidth"), 390)
}
