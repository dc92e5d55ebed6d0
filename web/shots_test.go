package web

import (
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// TestShots takes pictures of the bench for people to look at, into the folder
// that RAMPLAN_SHOTS names:
//
//	RAMPLAN_SHOTS=DIR go test ./web -run TestShots
func TestShots(t *testing.T) {
	folder := os.Getenv("RAMPLAN_SHOTS")
	if folder == "" {
		t.Skip("no folder named in RAMPLAN_SHOTS")
	}
	require.NoError(t, os.MkdirAll(folder, 0o755))
	b, srv := visitWhole(t, example(t))
	take := func(name string, whole bool) {
		shot := chromedp.CaptureScreenshot()
		if whole {
			shot = chromedp.FullScreenshot(100)
		}
		png, err := chromedp.Run(b.ctx, shot)
		require.NoError(t, err)
		require.NoError(t, os.WriteFile(filepath.Join(folder, name+".png"), png, 0o644))
	}
	for _, theme := range []string{"light", "dark"} {
		_, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: theme}}})
		require.NoError(t, err)
		for _, width := range []int64{1440, 1024, 390} {
			b.do(chromedp.EmulateViewport(width, 900))
			take("bench-"+theme+"-"+strconv.FormatInt(width, 10), width == 390)
			eval[any](b, "document.getElementById('curve').scrollIntoView({block: 'center'}) ?? 0")
			eval[any](b, "[...document.querySelectorAll('.handle')].filter((h) => h.getClientRects().length)[2].focus({preventScroll: true}) ?? 0")
			take("curve-"+theme+"-"+strconv.FormatInt(width, 10), false)
			eval[any](b, "scrollTo(0, 0) ?? 0")
		}
	}
	b.do(chromedp.EmulateViewport(1440, 900))
	take("whole", true)
	for i, at := range []string{"640", "1400", "2200", "3000"} {
		eval[any](b, "document.getElementById('figures').scrollTo(0, "+at+") ?? 0")
		take("result-"+strconv.Itoa(i+2), false)
	}
	b.do(chromedp.EmulateViewport(1440, 900))
	eval[any](b, "document.getElementById('f-ram-max_accel').focus() ?? 0")
	take("word", false)
	b.do(chromedp.EmulateViewport(720, 450)) // 1440 by 900 at 200 % zoom
	take("zoom", false)
	b.do(chromedp.EmulateViewport(1440, 900))
	b.retype("f-station-nest", "14o")
	b.until("document.getElementById('f-station-nest').getAttribute('aria-invalid') === 'true'")
	eval[any](b, "document.getElementById('f-station-nest').scrollIntoView({block: 'center'}) ?? 0")
	take("broken", false)
	newPlan(b, srv)
	take("new", true)
}
