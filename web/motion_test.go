package web

import (
	"net/http/httptest"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/words"
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

// What plays stops by itself where the lamps are read, with both lamps and what they
// mean in view; from there it goes on.
func TestStationStopsWhereItIsRead(t *testing.T) {
	b := newTab(t)
	h, _ := drillSite(t)
	srv := httptest.NewServer(guard(h))
	t.Cleanup(srv.Close)
	for _, row := range []string{"0", "2"} {
		b.do(chromedp.EmulateViewport(390, 844), chromedp.Navigate(srv.URL+"/plans/1/motion?row="+row))
		b.until("!document.querySelector('[data-controls]').hidden")
		eval[any](b, "(document.querySelector('[data-speed]').value = '1', document.querySelector('[data-do=play]').click()) ?? 0")
		b.until("document.querySelector('[data-do=play]').textContent.trim() === 'Go on'")
		assert.Equal(t, "Read", eval[string](b, "document.querySelector('.figure.compact .station-phase text').textContent"))
		verdict := eval[string](b, "document.querySelector('.figure.compact .station-verdict').getAttribute('visibility') + ' ' + document.querySelector('.figure.compact .station-verdict text').textContent")
		assert.Regexp(t, "^visible [A-Z]", verdict)
		says := eval[string](b, "document.querySelector('[data-says]').textContent")
		assert.Contains(t, says, "lamps are read")
		assert.Regexp(t, "Arrival (on|off), zone (on|off): ", says)
		assert.True(t, eval[bool](b, `[document.querySelector('.figure.compact .lamp-arrival-on'), document.querySelector('[data-says]')].every((e) => { const r = e.getBoundingClientRect(); return r.top >= 0 && r.bottom <= innerHeight; })`), "lamps and meaning are in view")
		eval[any](b, "document.querySelector('[data-do=play]').click() ?? 0")
		b.until("document.querySelector('.figure.compact .station-phase text').textContent === 'Home'")
	}
	assert.Empty(t, b.complaints())
}

// The pointer of the magnified stretch stands where the ram is, at every moment; while
// that stretch does not show the ram, the picture and the strip say where it is.
func TestStationPointerFollows(t *testing.T) {
	b := newTab(t)
	h, _ := drillSite(t)
	srv := httptest.NewServer(guard(h))
	t.Cleanup(srv.Close)
	b.do(chromedp.EmulateViewport(1024, 900), chromedp.Navigate(srv.URL+"/plans/1/motion?row=0"))
	b.until("!document.querySelector('[data-controls]').hidden")
	type seen struct {
		Position, Pointer float64
		Shown             bool
		Above, Where      string
	}
	inside, outside := 0, 0
	for range 12 {
		s := eval[seen](b, `(() => {
			const f = document.querySelector('.figure.wide'), m = JSON.parse(f.dataset.motion), g = m.glass;
			const tip = f.querySelector('.station-tip'), place = (p) => Math.min(g.end, Math.max(g.at, g.at + (g.end - g.at) * (p - g.from) / (g.to - g.from)));
			const moved = Number(tip.getAttribute('transform').match(/translate\(0 (.*)\)/)[1]);
			return {
				Position: parseFloat(f.querySelector('.station-position text').textContent),
				Pointer: g.from + (place(m.drawn.position) + moved - g.at) / (g.end - g.at) * (g.to - g.from),
				Shown: tip.getAttribute('visibility') === 'visible',
				Above: f.querySelector('.station-above').getAttribute('visibility') === 'visible' ? f.querySelector('.station-above text').textContent : '',
				Where: document.querySelector('[data-where]').textContent,
			};
		})()`)
		figure := words.Fixed(s.Position, 2)
		if s.Shown {
			inside++
			assert.InDelta(t, s.Position, s.Pointer, 0.006, "as far as the position is written") // derived: half a hundredth, and the arithmetic
			assert.Empty(t, s.Above)
			assert.Empty(t, s.Where)
		} else {
			outside++
			assert.Equal(t, "tool above, at "+figure, s.Above)
			assert.Contains(t, s.Where, "The ram stands at "+figure)
		}
		eval[any](b, "document.querySelector('[data-do=next]').click() ?? 0")
	}
	assert.NotZero(t, inside)
	assert.NotZero(t, outside)
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
