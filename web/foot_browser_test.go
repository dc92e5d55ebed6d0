package web

import (
	"strings"
	"testing"

	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/static"
)

// textOf are the words of a printed page, one blank between two.
func textOf(g printedPage) string {
	var out []string
	for _, w := range g.Words {
		out = append(out, w.Text)
	}
	return strings.ReplaceAll(strings.Join(out, " "), "\u202f", " ")
}

// TestFootOfPrintedPages: of every page that a browser prints of a plan it is known which
// state of which plan it is, whatever the paper, also where the entries are at fault and
// where they are what was issued; and no drawing is cut by the edge of a page.
func TestFootOfPrintedPages(t *testing.T) {
	slow(t)
	h, _ := drillSite(t)
	b, srv := visit(t, h)
	p, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	short := words.ShortDigest(p.Digest())

	// A browser that knows no pages of a name of their own prints across.
	acrossToo := `(() => {
		const s = new CSSStyleSheet();
		s.replaceSync(".bench { page: auto }");
		document.adoptedStyleSheets.push(s);
		return true;
	})()`
	everyPage := func(path, foot string, paper cdppage.PrintToPDFParams) {
		t.Helper()
		b.do(chromedp.Navigate(srv.URL + path))
		if paper.Landscape != nil {
			eval[bool](b, acrossToo)
		}
		pages := b.printedPages("foot", paper)
		for i, g := range pages {
			assert.Contains(t, textOf(g), foot, "%s, page %d of %d", path, i+1, len(pages))
		}
		cycles := 0
		for _, g := range pages {
			if text := textOf(g); strings.Contains(text, " retract ") && strings.Contains(text, " handling ") { // over the cycle
				cycles++
				assert.Contains(t, text, "time, s", "the cycle is cut by the edge of the page")
			}
		}
		if path == benchPath {
			assert.Equal(t, 1, cycles, "cycles on the printed bench")
		}
	}
	a4 := cdppage.PrintToPDFParams{PaperWidth: 8.27, PaperHeight: 11.69, PreferCSSPageSize: new(true)}
	letter := cdppage.PrintToPDFParams{PreferCSSPageSize: new(true)}
	a5 := cdppage.PrintToPDFParams{PaperWidth: 5.83, PaperHeight: 8.27, PreferCSSPageSize: new(true)}
	across := cdppage.PrintToPDFParams{PaperWidth: 8.27, PaperHeight: 11.69, Landscape: new(true)}
	draft := "WS-210 · DRAFT, not issued · drawn " + words.Today() + " · plan " + short
	for _, paper := range []cdppage.PrintToPDFParams{a4, letter, a5, across} {
		everyPage(benchPath, draft, paper)
	}
	for _, path := range []string{"/plans/1/faults", "/plans/1/station?arrival=on&zone=off"} {
		everyPage(path, draft, a4)
	}
	form := (&sheet{t: t, base: srv.URL}).get("/plans/1/revisions")
	issued(form, version(form), map[string]string{"prepared": "P", "checked": "C", "approved": "A", "reason": "First issue"})
	revision := "WS-210 · revision A · issued " + words.Today() + " · plan " + short
	for _, path := range []string{benchPath, "/plans/1/revisions/A", "/plans/1/motion", "/plans/1/drill"} {
		everyPage(path, revision, a4)
	}
	b.do(chromedp.Navigate(srv.URL + benchPath))
	b.retype("f-station-nest", "141")
	b.until(`document.documentElement.dataset.foot.startsWith("WS-210 · DRAFT, not issued · drawn ") && !document.documentElement.dataset.foot.includes("` + short + `")`)
	b.retype("f-station-nest", "14o")
	b.until(`document.documentElement.dataset.foot.includes("with faults; the figures are of the earlier plan ")`)
}
