package web

import (
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// TestPageShots takes pictures of the pages beside the bench for people to look
// at, into the folder that RAMPLAN_SHOTS names, and prints the catalogue there.
func TestPageShots(t *testing.T) {
	folder := os.Getenv("RAMPLAN_SHOTS")
	if folder == "" {
		t.Skip("no folder named in RAMPLAN_SHOTS")
	}
	require.NoError(t, os.MkdirAll(folder, 0o755))
	b, srv := visitWhole(t, example(t))
	held := (&sheet{t: t, base: srv.URL}).get(benchPath)
	putOnShelf(held, "Ram of bench two")
	for _, name := range []string{"rams", "ram", "taking", "programs", "faults", "history", "revisions", "sheet", "compared", "shelf", "glossary"} {
		path := "/plans/1/" + name
		switch name {
		case "rams", "programs":
			path = "/" + name
		case "ram":
			path = "/rams/1"
		case "taking":
			path = "/plans/1/ram"
		case "glossary":
			path = "/glossary"
		case "shelf":
			path = "/"
		}
		b.do(chromedp.Navigate(srv.URL + path))
		for _, theme := range []string{"light", "dark"} {
			_, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: theme}}})
			require.NoError(t, err)
			for _, width := range []int64{1440, 1024, 390} {
				b.do(chromedp.EmulateViewport(width, 900))
				png, err := chromedp.Run(b.ctx, chromedp.FullScreenshot(100))
				require.NoError(t, err)
				require.NoError(t, os.WriteFile(filepath.Join(folder, name+"-"+theme+"-"+strconv.FormatInt(width, 10)+".png"), png, 0o644))
			}
		}
		printed, err := chromedp.Call(b.ctx, cdppage.PrintToPDF, cdppage.PrintToPDFParams{PreferCSSPageSize: new(true)})
		require.NoError(t, err)
		require.NoError(t, os.WriteFile(filepath.Join(folder, name+".pdf"), printed.Data, 0o644))
	}
}
