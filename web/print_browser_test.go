package web

import (
	"encoding/xml"
	"math"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/go-chi/chi/v5"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A printedWord is a word on paper with its box, in points.
type printedWord struct {
	X0   float64 `xml:"xMin,attr"`
	Y0   float64 `xml:"yMin,attr"`
	X1   float64 `xml:"xMax,attr"`
	Y1   float64 `xml:"yMax,attr"`
	Text string  `xml:",chardata"`
}

// A printedPage is one page of a printed file.
type printedPage struct {
	Width  float64       `xml:"width,attr"`
	Height float64       `xml:"height,attr"`
	Words  []printedWord `xml:"word"`
}

// printedPages prints what the tab shows, as the browser's own command does, and reads
// the words back with their boxes.
func (b *tab) printedPages(name string, paper cdppage.PrintToPDFParams) []printedPage {
	b.t.Helper()
	if _, err := exec.LookPath("pdftotext"); err != nil {
		if os.Getenv("RAMPLAN_PAPER") == "required" {
			b.t.Fatal("pdftotext is not installed, and RAMPLAN_PAPER=required")
		}
		b.t.Skip("pdftotext is not installed; with RAMPLAN_PAPER=required this is a failure")
	}
	printed, err := chromedp.Call(b.ctx, cdppage.PrintToPDF, paper)
	require.NoError(b.t, err)
	file := filepath.Join(b.t.TempDir(), name+".pdf")
	require.NoError(b.t, os.WriteFile(file, printed.Data, 0o644))
	out, err := exec.Command("pdftotext", "-bbox", file, "-").Output()
	require.NoError(b.t, err)
	body := regexp.MustCompile(`(?s)<doc>.*</doc>`).Find(out)
	var doc struct {
		Pages []printedPage `xml:"page"`
	}
	require.NoError(b.t, xml.Unmarshal(body, &doc))
	return doc.Pages
}

// wordsApart wants no word over another one, and none beyond the edge of its page.
func wordsApart(t *testing.T, name string, pages []printedPage) {
	t.Helper()
	for n, g := range pages {
		for i, a := range g.Words {
			assert.True(t, a.X0 > -0.5 && a.Y0 > -0.5 && a.X1 < g.Width+0.5 && a.Y1 < g.Height+0.5, "%s, page %d: %q leaves the page", name, n+1, a.Text)
			for _, b := range g.Words[:i] {
				wide := math.Min(a.X1, b.X1) - math.Max(a.X0, b.X0)
				high := math.Min(a.Y1, b.Y1) - math.Max(a.Y0, b.Y0)
				// The boxes have room over and under the letters.
				if wide > 1 && high > 0.45*math.Min(a.Y1-a.Y0, b.Y1-b.Y0) {
					t.Errorf("%s, page %d: %q and %q stand over one another", name, n+1, a.Text, b.Text)
				}
			}
		}
	}
}

// onlyOnScreen are the texts of what can only be pressed, or leads to other pages, and
// would be on paper all the same.
const onlyOnScreen = `[...document.querySelectorAll("button, input[type=submit], input[type=file], nav, .bar, .skip")]
	.filter((e) => e.getClientRects().length > 0).map((e) => e.textContent.trim() || e.className)`

// A printing is a page as it is printed, and what it must still say.
type printing struct{ route, path, says string }

var printings = []printing{
	{"/", "/", "Bearing sleeve"},
	{"/plans", "", ""}, // answers other programs
	{"/bin", "/bin", "Bin"},
	{"/plans/{id}", "/plans/1", "115.08"},
	{"/plans/{id}", "/plans/1", "Greatest speed"},
	{"/plans/{id}/result", "", ""}, // for other programs
	{"/plans/{id}/choice", "", ""}, // this and the next lead back to the page of their form
	{"/plans/{id}/drill/exam", "", ""},
	{"/plans/{id}/drill/round", "", ""},
	{"/plans/{id}/file", "", ""},
	{"/plans/{id}/shelved", "", ""},
	{"/plans/{id}/faults", "/plans/1/faults", "Chip under the part"},
	{"/plans/{id}/shares", "/plans/1/shares?parts=1000", "Conforming, refused"},
	{"/plans/{id}/sheet", "/plans/1/sheet?behind=control&behind=shift", "Control-plan rows"},
	{"/plans/{id}/history", "/plans/1/history", "the draft is plan"},
	{"/plans/{id}/revisions", "/plans/1/revisions", "First issue"},
	{"/plans/{id}/revisions/{letter}", "/plans/1/revisions/A", "First issue"},
	{"/plans/{id}/compared", "/plans/1/compared?from=A&to=draft", "Figures"},
	{"/programs", "/programs", "/plans"},
	{"/rams", "/rams", "Ram of bench two"},
	{"/rams/{id}", "/rams/1", "own load cell"},
	{"/plans/{id}/ram", "/plans/1/ram", "Ram of bench two"},
	{"/plans/{id}/drill", "/plans/1/drill", "Set apart"},
	{"/plans/{id}/drill/exam/{sitting}", "", "Question 2"}, // see below
	{"/plans/{id}/motion", "/plans/1/motion", "Approach"},
	{"/plans/{id}/station", "/plans/1/station?arrival=on&zone=off", "too tall"},
	{"/plans/{id}/records", "/plans/1/records", "Learner 7"},
	{"/records/{record}", "/records/1", "Learner 7"},
	{"/people", "/people", "Learner 7"},
	{"/glossary", "/glossary", "press-in"},
}

// provingPrintings are the pages on which a station is proved: study 1 is signed, 3 are limit
// samples that are begun, 4 is a shift check.
var provingPrintings = []printing{
	{"/plans/{id}/studies", "", ""}, // this and the next for other programs
	{"/plans/{id}/assessment", "", ""},
	{"/plans/{id}/checks.pdf", "", ""}, // paper already
	{"/plans/{id}/proving", "/plans/1/proving", "What is needed"},
	{"/plans/{id}/proving/{study}", "/plans/1/proving/1", "Signed A. Weber"},
	{"/plans/{id}/proving/{study}", "/plans/1/proving/2", "100.137"},
	{"/plans/{id}/proving/{study}/cards", "/plans/1/proving/3/cards", "Limit samples"},
	{"/plans/{id}/check", "/plans/1/check", "Shift check"},
	{"/plans/{id}/checks", "/plans/1/checks", "B. Roth"},
	{"/plans/{id}/checks/{study}", "/plans/1/checks/4", "B. Roth"},
}

// TestPrintedProving prints the pages on which a station is proved.
func TestPrintedProving(t *testing.T) {
	slow(t)
	store := exampleArchive(t)
	provedParts(t, store)
	b, srv := visitWhole(t, New(store))
	for _, p := range provingPrintings {
		if p.path != "" {
			b.printsAs(srv.URL, p.path, p.says)
		}
	}
}

// printsAs prints a page: nothing on it can only be pressed, no word stands over another one,
// and it says what it must. It gives the pages and all their words.
func (b *tab) printsAs(base, path, says string) ([]printedPage, string) {
	t := b.t
	t.Helper()
	b.do(chromedp.Navigate(base + path))
	_, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
	require.NoError(t, err)
	assert.Empty(t, eval[[]string](b, onlyOnScreen), "%s prints what can only be pressed", path)
	_, err = chromedp.Call(b.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{})
	require.NoError(t, err)
	name := strings.Trim(regexp.MustCompile(`\W+`).ReplaceAllString(path, "-"), "-")
	pages := b.printedPages(name, cdppage.PrintToPDFParams{PreferCSSPageSize: new(true)})
	require.NotEmpty(t, pages, path)
	wordsApart(t, path, pages)
	all := ""
	for _, g := range pages {
		for _, w := range g.Words {
			all += w.Text + " "
		}
	}
	all = strings.ReplaceAll(all, "\u202f", " ")
	assert.Contains(t, all, says, path)
	return pages, all
}

// TestPrintedPages prints every page as Ctrl+P does: what belongs on paper is there,
// nothing that can only be pressed, and no word stands over another one.
func TestPrintedPages(t *testing.T) {
	slow(t)
	known := map[string]bool{}
	for _, p := range slices.Concat(printings, provingPrintings) {
		known[p.route] = true
	}
	err := chi.Walk((&site{}).router(), func(method, route string, _ http.Handler, _ ...func(http.Handler) http.Handler) error {
		if method == http.MethodGet && !regexp.MustCompile(`\.csv$|\.html$|\{format\}$|^/static/`).MatchString(route) {
			assert.True(t, known[route], "nothing says how %s is printed", route)
		}
		return nil
	})
	require.NoError(t, err)

	h, _ := drillSite(t)
	exam := examined(t, h)
	b, srv := visitWhole(t, h)
	s := (&sheet{t: t, base: srv.URL}).get(benchPath)
	putOnShelf(s, "Ram of bench two")
	issued(s.get("/plans/1/revisions"), version(s.get("/plans/1/revisions")), map[string]string{"prepared": "P", "checked": "C", "approved": "A", "reason": "First issue"})
	for _, p := range printings {
		path := p.path
		if p.route == "/plans/{id}/drill/exam/{sitting}" {
			path = exam
		}
		if path == "" {
			continue
		}
		pages, all := b.printsAs(srv.URL, path, p.says)
		if p.route == "/plans/{id}/revisions/{letter}" || p.route == "/plans/{id}/compared" {
			first := ""
			for _, w := range pages[0].Words {
				first += w.Text + " "
			}
			assert.Contains(t, first, "requirement", "%s: the first page has what is said and its drawing", path)
		}
		if p.route == "/plans/{id}/sheet" {
			assert.Greater(t, len(pages), 2)
			assert.InDelta(t, 297*72/25.4, pages[0].Width, 1, "A4 across")
			assert.NotContains(t, all, "Pages behind it", "the pages, and nothing else")
		}
	}
}
