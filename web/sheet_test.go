package web

import (
	"io"
	"net/http"
	"net/http/httptest"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/words"
)

func fetched(t *testing.T, address string) (*http.Response, []byte) {
	t.Helper()
	resp, err := http.Get(address)
	require.NoError(t, err)
	defer resp.Body.Close()
	data, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	return resp, data
}

// TestSheetFiles takes the sheet and a drawing in every format, of the draft and
// of a revision: each carries the plan, and opens it again on the shelf.
func TestSheetFiles(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	s := (&sheet{t: t, base: srv.URL}).get(benchPath)
	issued(s.get("/plans/1/revisions"), "1", map[string]string{"prepared": "P", "checked": "C", "approved": "A", "reason": "First issue"})
	s.typeIn("station.nest", "141")
	require.Equal(t, http.StatusOK, s.press("recompute").status)

	for query, revision := range map[string]string{"": "", "revision=A": "A", "revision=A&size=letter": "A"} {
		for format, kind := range fileTypes {
			for _, path := range []string{"/plans/1/sheet.", "/plans/1/drawings/strip."} {
				resp, data := fetched(t, srv.URL+path+format+"?"+query)
				require.Equal(t, http.StatusOK, resp.StatusCode, path+format)
				assert.Equal(t, kind, resp.Header.Get("Content-Type"))
				inside, err := carry.Extract(data)
				require.NoError(t, err, path+format)
				if revision == "" {
					assert.Nil(t, inside.Issue)
				} else {
					require.NotNil(t, inside.Issue)
					assert.Equal(t, revision, inside.Issue.Revision)
					assert.Equal(t, "First issue", inside.Issue.Reason)
				}
				opened := s.open("sheet."+format, data)
				require.Equal(t, http.StatusOK, opened.status)
				again, faults := press.Decode(opened.save())
				require.Empty(t, faults)
				assert.Equal(t, inside.Digest, again.Digest(), path+format)
				const told = "This plan was issued before"
				if page := text(opened.byID("main")); revision == "" {
					assert.NotContains(t, page, told, path+format)
				} else {
					assert.Contains(t, page, told, path+format)
					assert.Contains(t, page, "Revision A of WS-210", path+format)
					assert.Contains(t, opened.body, `href="/plans/1/revisions/A"`, path+format)
				}
			}
		}
	}
	_, rows := fetched(t, srv.URL+"/plans/1/rows/control.csv?revision=A")
	assert.Contains(t, string(rows), "Control-plan rows,WS-210,Bearing sleeve into anemometer hub,A,")
	resp, every := fetched(t, srv.URL+"/plans/1/rows/all.csv?separator=semicolon")
	assert.Equal(t, `attachment; filename="WS-210-draft-all.csv"`, resp.Header.Get("Content-Disposition"))
	for _, name := range words.PapersOf(mustExample(t)) {
		assert.Contains(t, string(every), "\r\n"+words.PaperTitle(name)+";WS-210;Bearing sleeve into anemometer hub;DRAFT;"+words.Today()+";sha256:", name)
	}
	assert.Regexp(t, `;\d+,\d+;mm;`, string(every), "a decimal comma")
	_, alone := fetched(t, srv.URL+"/plans/1/sheet.pdf")
	_, behind := fetched(t, srv.URL+"/plans/1/sheet.pdf?behind=control&behind=shift&behind=nothing")
	pages := regexp.MustCompile(`/Type /Page\b`)
	assert.Greater(t, len(pages.FindAll(behind, -1)), len(pages.FindAll(alone, -1)))
	for path, want := range map[string]int{
		"/plans/1/rows/nothing.csv": 404, "/plans/1/rows/shift.csv?separator=tab": 400, "/people.csv?separator=tab": 400, "/people.csv?separator=semicolon": 200,
		"/plans/1/sheet.svg?behind=control&page=2": 200,
		"/plans/1/sheet.pdf?revision=B":            404, "/plans/1/sheet.gif": 404, "/plans/1/sheet.svg?page=9": 404, "/plans/1/sheet.svg?page=x": 404,
		"/plans/999/sheet.pdf": 404, "/plans/1/sheet.pdf?size=a0": 400, "/plans/1/drawings/nothing.svg": 404, "/plans/1/drawings/strip.svg?width=no": 400,
		"/plans/1/drawings/strip.png?width=84&title=no": 200, "/plans/1/sheet?revision=A&size=letter": 200, "/plans/1/sheet?revision=B": 404,
	} {
		resp, _ := fetched(t, srv.URL+path)
		assert.Equal(t, want, resp.StatusCode, path)
	}
}

// TestSheetPage shows the pages, leads to the files, and refuses what is no plan.
func TestSheetPage(t *testing.T) {
	s := start(t)
	page := s.get("/plans/1/sheet")
	require.Equal(t, http.StatusOK, page.status)
	images := elements(page.root, "img")
	require.NotEmpty(t, images)
	for _, a := range append(elements(page.root, "a"), images...) {
		address := attr(a, "href") + attr(a, "src")
		if strings.HasPrefix(address, "/plans/1/sheet.") || strings.HasPrefix(address, "/plans/1/drawings/") {
			resp, _ := fetched(t, s.base+address)
			assert.Equal(t, http.StatusOK, resp.StatusCode, address)
		}
	}
	narrow := s.get("/plans/1/sheet?width=column&title=no&size=letter&behind=shift")
	for _, img := range elements(narrow.byID("drawings"), "img") {
		assert.Contains(t, attr(img, "src"), "title=no&width=column")
	}
	asked := map[string]string{}
	for _, in := range elements(narrow.byID("drawings"), "input") {
		asked[attr(in, "name")] = attr(in, "value")
	}
	assert.Equal(t, map[string]string{"size": "letter", "behind": "shift", "title": "no"}, asked, "the pages stay as they were asked for")
	files := 0
	for _, b := range elements(page.root, "button") {
		if address := attr(b, "formaction"); address != "" {
			files++
			resp, _ := fetched(t, s.base+address+"?download=1&width=&revision=draft&size=a4")
			assert.Equal(t, http.StatusOK, resp.StatusCode, address)
			assert.Contains(t, resp.Header.Get("Content-Disposition"), "attachment", address)
		}
	}
	assert.Equal(t, 1+7*3, files, "by hand: the PDF, and three formats of seven drawings: strip, force, press-in, cycle, and the three of the worst day")
	assert.Equal(t, http.StatusBadRequest, s.get("/plans/1/sheet?width=wide").status)
	s.typeIn("station.nest", "14o")
	s.press("recompute")
	refused := s.get("/plans/1/sheet")
	assert.Equal(t, http.StatusUnprocessableEntity, refused.status)
	assert.Contains(t, text(refused.byID("main")), `found "14o"`)

	for name, data := range map[string]string{"cut.pdf": "%PDF-1.7\n", "empty.png": "\x89PNG\r\n\x1a\n", "plain.svg": "<svg xmlns=\"http://www.w3.org/2000/svg\"/>"} {
		assert.Equal(t, http.StatusUnprocessableEntity, s.open(name, []byte(data)).status, name)
	}
}

// TestAloneInTheBrowser: a drawing and the card say whether they are of a draft or of
// a revision, and of which day.
func TestAloneInTheBrowser(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	s := (&sheet{t: t, base: srv.URL}).get(benchPath)
	for _, path := range []string{"/plans/1/drawings/strip.svg", "/plans/1/drawings/cycle.svg?width=column", "/plans/1/card.svg"} {
		_, draft := fetched(t, srv.URL+path)
		assert.Contains(t, string(draft), "DRAFT", path)
		assert.Contains(t, string(draft), "drawn "+words.Today(), path)
	}
	issued(s.get("/plans/1/revisions"), "1", map[string]string{"prepared": "P", "checked": "C", "approved": "A", "reason": "First issue"})
	for _, path := range []string{"/plans/1/drawings/strip.svg?revision=A", "/plans/1/drawings/cycle.svg?width=column&revision=A", "/plans/1/card.svg"} {
		_, data := fetched(t, srv.URL+path)
		assert.NotContains(t, string(data), "DRAFT", path)
		assert.Contains(t, string(data), "revision A", path)
		assert.Contains(t, string(data), "issued "+words.Today(), path)
	}
}
