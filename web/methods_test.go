package web

import (
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/go-chi/chi/v5"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"ramplan/press/archive"
	"ramplan/press/drafts"
	"ramplan/press/issue"
	"ramplan/press/proving"
)

func parsed(t *testing.T, body string) *html.Node {
	t.Helper()
	n, err := html.Parse(strings.NewReader(body))
	require.NoError(t, err)
	return n
}

// TestMethods asks every route with every method, as a program and without a
// body. 405 comes with Allow, and is a problem. The statuses are those of the
// pages as they are meant (derived).
func TestMethods(t *testing.T) {
	store := exampleArchive(t)
	head, err := store.Get(t.Context(), 1)
	require.NoError(t, err)
	_, err = store.CreateRam(t.Context(), drafts.Ram{Told: drafts.Told{Name: "Ram 3"}, Entries: drafts.RamEntries(head.Draft)})
	require.NoError(t, err)
	_, err = store.Issue(t.Context(), 1, archive.At(head.Version), issue.Signed{Prepared: "A", Checked: "B", Approved: "C", Reason: "First issue", Despite: "a trial", Second: "D"})
	require.NoError(t, err)
	_, err = store.StartStudy(t.Context(), 1, proving.Master, &proving.Typed{Kind: proving.Master, Heads: []proving.Head{{Name: "height", Text: "40"}}, Columns: []string{"reading"}, Rows: [][]string{{"100.14"}, {"100.15"}}})
	require.NoError(t, err)
	srv := httptest.NewServer(New(store))
	t.Cleanup(srv.Close)
	tried := map[string]bool{}
	methods := []string{"GET", "HEAD", "POST", "PUT", "DELETE", "PATCH", "OPTIONS"}
	for _, c := range []struct {
		route, path string
		want        [7]int // by method
		allow       string
	}{
		{"/", "/", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans", "/plans", [7]int{200, 200, 422, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/bin", "/bin", [7]int{200, 200, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}", "/plans/1", [7]int{200, 200, 400, 428, 428, 405, 405}, "GET, HEAD, POST, PUT, DELETE"},
		{"/plans/{id}", "/plans/77", [7]int{404, 404, 400, 428, 428, 405, 405}, "GET, HEAD, POST, PUT, DELETE"},
		{"/plans/{id}/result", "/plans/1/result", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/faults", "/plans/1/faults", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/shares", "/plans/1/shares", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/file", "/plans/1/file", [7]int{303, 303, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/choice", "/plans/1/choice", [7]int{303, 303, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/shelved", "/plans/1/shelved", [7]int{303, 303, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/proving", "/plans/1/proving", [7]int{200, 200, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/proving/{study}", "/plans/1/proving/1", [7]int{200, 200, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/proving/{study}", "/plans/1/proving/99", [7]int{404, 404, 404, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/proving/{study}/cards", "/plans/1/proving/1/cards", [7]int{303, 303, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/proving/{study}/drawings/{what}.{format}", "/plans/1/proving/1/drawings/master.svg", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/check", "/plans/1/check", [7]int{200, 200, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/checks", "/plans/1/checks", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/checks.csv", "/plans/1/checks.csv", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/checks.pdf", "/plans/1/checks.pdf", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/checks/{study}", "/plans/1/checks/99", [7]int{404, 404, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/sheet", "/plans/1/sheet", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/sheet.{format}", "/plans/1/sheet.svg", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/drawings/{what}.{format}", "/plans/1/drawings/strip.svg", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/history", "/plans/1/history", [7]int{200, 200, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/revisions", "/plans/1/revisions", [7]int{200, 200, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/revisions/{letter}", "/plans/1/revisions/A", [7]int{200, 200, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/compared", "/plans/1/compared?from=A&to=draft", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/rows/{name}.csv", "/plans/1/rows/control.csv", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/ram", "/plans/1/ram", [7]int{200, 200, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/rams", "/rams", [7]int{200, 200, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/drill", "/plans/1/drill", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/drill/round", "/plans/1/drill/round", [7]int{303, 303, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/drill/exam", "/plans/1/drill/exam", [7]int{303, 303, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/drill/exam/{sitting}", "/plans/1/drill/exam/none", [7]int{404, 404, 404, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/motion", "/plans/1/motion", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/station", "/plans/1/station", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/drill.html", "/plans/1/drill.html", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/card.{format}", "/plans/1/card.svg", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/records", "/plans/1/records", [7]int{200, 200, 422, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/records.csv", "/plans/1/records.csv", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/records/{record}", "/records/1", [7]int{404, 404, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/records/{record}/sheet.{format}", "/records/1/sheet.pdf", [7]int{404, 404, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/people", "/people", [7]int{200, 200, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/people.csv", "/people.csv", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/studies", "/plans/1/studies", [7]int{200, 200, 422, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/plans/{id}/studies/{study}.{format}", "/plans/1/studies/99.json", [7]int{404, 404, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/plans/{id}/assessment", "/plans/1/assessment", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/rams/{id}", "/rams/1", [7]int{200, 200, 400, 405, 405, 405, 405}, "GET, HEAD, POST"},
		{"/programs", "/programs", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/glossary", "/glossary", [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"/static/{hash}/*", assets.address("css/base.css"), [7]int{200, 200, 405, 405, 405, 405, 405}, "GET, HEAD"},
		{"", "/nothing", [7]int{404, 404, 404, 404, 404, 404, 404}, ""},
	} {
		for i, method := range methods {
			resp, body := requested(t, srv.URL, method, c.path, []string{jsonWanted}, nil)
			assert.Equal(t, c.want[i], resp.StatusCode, "%s %s: %.300s", method, c.path, body)
			if method == http.MethodHead {
				assert.Empty(t, body, c.path)
			}
			if resp.StatusCode >= 400 {
				assert.Equal(t, "application/problem+json", resp.Header.Get("Content-Type"), "%s %s", method, c.path)
			}
			if resp.StatusCode == http.StatusMethodNotAllowed {
				assert.Equal(t, c.allow, resp.Header.Get("Allow"), "%s %s", method, c.path)
			}
		}
		tried[c.route] = true
	}
	require.NoError(t, chi.Walk((&site{}).router(), func(_, route string, _ http.Handler, _ ...func(http.Handler) http.Handler) error {
		assert.True(t, tried[route], "%s was not tried", route)
		return nil
	}))
}
