package web

import (
	"bytes"
	"context"
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/go-chi/chi/v5"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// requested sends one request and reads its answer; it follows no redirect.
func requested(t *testing.T, base, method, path string, header []string, body []byte) (*http.Response, string) {
	t.Helper()
	req, err := http.NewRequest(method, base+path, bytes.NewReader(body))
	require.NoError(t, err)
	for _, h := range header {
		name, value, ok := strings.Cut(h, ": ")
		require.True(t, ok, h)
		req.Header.Add(name, value)
	}
	resp, err := http.DefaultTransport.RoundTrip(req)
	require.NoError(t, err)
	defer resp.Body.Close()
	data, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	return resp, string(data)
}

// TestProgramExamples sends what the page prints, in order, and wants what it
// prints of the answers.
func TestProgramExamples(t *testing.T) {
	srv := httptest.NewServer(example(t))
	t.Cleanup(srv.Close)
	files := map[string][]byte{"": nil, "plan.json": static.Example(), "draft.json": []byte(halfDraft), "master.csv": []byte(masterTable), "broken.csv": []byte(brokenTable)}
	_, printed := requested(t, srv.URL, http.MethodGet, "/programs", nil, nil)
	printed = text((&sheet{root: parsed(t, printed)}).byID("main"))
	plan := ""
	for _, e := range programExamples {
		body, ok := files[e.file]
		require.True(t, ok, e.file)
		resp, got := requested(t, srv.URL, e.method, strings.ReplaceAll(e.path, "{plan}", plan), e.header, body)
		require.Equal(t, e.status, resp.StatusCode, "%s: %s", e.title, got)
		if plan == "" {
			plan = resp.Header.Get("Location")
			require.NotEmpty(t, plan)
		}
		var head bytes.Buffer
		require.NoError(t, resp.Header.Write(&head))
		for _, want := range e.shows {
			assert.Contains(t, head.String()+got, strings.ReplaceAll(want, "{plan}", plan), e.title)
			assert.Contains(t, printed, strings.ReplaceAll(want, "{plan}", "/plans/2"), e.title)
		}
		assert.Contains(t, printed, e.curl(srv.URL), e.title)
	}
}

// TestProgramAddresses: the page lists addresses that there are.
func TestProgramAddresses(t *testing.T) {
	there := map[string]bool{}
	require.NoError(t, chi.Walk((&site{}).router(), func(method, route string, _ http.Handler, _ ...func(http.Handler) http.Handler) error {
		there[method+" "+route] = true
		return nil
	}))
	for _, a := range addresses {
		assert.True(t, there[a.Method+" "+a.Path], "%s %s", a.Method, a.Path)
	}
}

// TestAccept: the answer to an Accept header, by RFC 9110 section 12.5.1 where it
// decides; the rest is this program's own choice (from memory).
func TestAccept(t *testing.T) {
	srv := httptest.NewServer(example(t))
	t.Cleanup(srv.Close)
	for accept, want := range map[string]string{
		"":    "text/html",
		"*/*": "text/html",
		"text/html,application/xml;q=0.9,*/*;q=0.8": "text/html",
		"application/json":                          "application/json",
		"application/*":                             "application/json",
		"application/vnd.example+json":              "application/json",
		"application/json;q=0.5, text/html":         "text/html",
		"application/json, */*;q=0.1":               "application/json",
		"text/html;q=0.5, application/json":         "application/json",
		"application/xml":                           "application/json",
		"text/*":                                    "text/html",
	} {
		var header []string
		if accept != "" {
			header = []string{"Accept: " + accept}
		}
		resp, _ := requested(t, srv.URL, http.MethodGet, "/plans/1", header, nil)
		assert.Equal(t, http.StatusOK, resp.StatusCode, accept)
		assert.True(t, strings.HasPrefix(resp.Header.Get("Content-Type"), want), "%s: %s", accept, resp.Header.Get("Content-Type"))
		assert.Contains(t, resp.Header.Values("Vary"), "Accept", accept)
		resp, _ = requested(t, srv.URL, http.MethodGet, "/plans/99", header, nil)
		assert.Equal(t, http.StatusNotFound, resp.StatusCode, accept)
		assert.Equal(t, want == "application/json", resp.Header.Get("Content-Type") == "application/problem+json", "%s: %s", accept, resp.Header.Get("Content-Type"))
		assert.Contains(t, resp.Header.Values("Vary"), "Accept", accept)
	}
}

// TestVersions: what If-Match and If-None-Match may say (RFC 9110 sections 13.1.1
// and 13.1.2; RFC 6585 section 3 for 428).
func TestVersions(t *testing.T) {
	srv := httptest.NewServer(example(t))
	t.Cleanup(srv.Close)
	for _, c := range []struct {
		header string
		want   int
	}{
		{"X: y", http.StatusPreconditionRequired}, {`If-Match: "9"`, http.StatusPreconditionFailed}, {`If-Match: W/"1"`, http.StatusPreconditionFailed},
		{"If-Match: 1", http.StatusPreconditionFailed}, {`If-Match: "x"`, http.StatusPreconditionFailed}, {`If-Match: "8", "9"`, http.StatusPreconditionFailed},
		{`If-Match: "9", "1"`, http.StatusNoContent}, {"If-Match: *", http.StatusNoContent},
	} {
		resp, body := requested(t, srv.URL, http.MethodPut, "/plans/1", []string{c.header}, edited(t, `"number": "WS-210"`, `"number": "WS-211"`))
		assert.Equal(t, c.want, resp.StatusCode, "%s: %s", c.header, body)
		if c.want != http.StatusNoContent {
			assert.Equal(t, "application/problem+json", resp.Header.Get("Content-Type"), c.header)
		}
	}
	resp, _ := requested(t, srv.URL, http.MethodPut, "/plans/1", []string{`If-Match: "1"`}, edited(t, `"number": "WS-210"`, `"number": "WS-211"`))
	assert.Equal(t, http.StatusNoContent, resp.StatusCode, "sent twice, as after a lost answer: it was done already, so section 13.1.1 lets it succeed")
	resp, _ = requested(t, srv.URL, http.MethodGet, "/plans/1", []string{jsonWanted}, nil)
	tag := resp.Header.Get("ETag")
	for header, want := range map[string]int{tag: 304, "W/" + tag: 304, "*": 304, `"x", ` + tag: 304, `"x"`: 200} {
		resp, body := requested(t, srv.URL, http.MethodGet, "/plans/1", []string{jsonWanted, "If-None-Match: " + header}, nil)
		assert.Equal(t, want, resp.StatusCode, header)
		assert.Equal(t, want == 304, body == "", header)
	}
	resp, body := requested(t, srv.URL, http.MethodPost, "/plans", []string{"Content-Type: application/json"}, []byte("{"))
	assert.Equal(t, http.StatusUnprocessableEntity, resp.StatusCode)
	assert.Contains(t, body, `"errors":[`, "who sends a document and not a form is told as a program")
}

// FuzzPut puts any bytes in place of a plan: no panic, one of the answers that a
// document may get, and what was taken reads back with the same digest.
func FuzzPut(f *testing.F) {
	f.Add(static.Example())
	f.Add([]byte(halfDraft))
	for _, s := range []string{"", "{}", "[]", `{"format":"ramplan.draft/1","fields":[["a","\u0000"],["a","b"]]}`, `{"format":"ramplan.draft/1","fields":[["","\r\n"]]}`, `{"format":"ramplan.plan/1"}`, "%PDF-1.7", "\x89PNG\r\n\x1a\n"} {
		f.Add([]byte(s))
	}
	handler := example(f)
	ask := func(method string, body []byte) *httptest.ResponseRecorder {
		req := httptest.NewRequest(method, "/plans/1", bytes.NewReader(body))
		req.Host = "127.0.0.1:8647"
		req = req.WithContext(context.WithValue(req.Context(), http.LocalAddrContextKey, net.Addr(&net.TCPAddr{IP: net.IPv4(127, 0, 0, 1), Port: 8647})))
		req.Header.Set("If-Match", "*")
		req.Header.Set("Accept", "application/json")
		w := httptest.NewRecorder()
		handler.ServeHTTP(w, req)
		return w
	}
	f.Fuzz(func(t *testing.T, body []byte) {
		w := ask(http.MethodPut, body)
		switch w.Code {
		case 204:
		case 400, 412, 413, 422:
			return
		default:
			t.Fatalf("answered %d:\n%s", w.Code, w.Body)
		}
		sent, faults := decodeFile(body)
		if len(faults) > 0 {
			t.Fatalf("took what has faults: %v", faults)
		}
		got := ask(http.MethodGet, nil)
		if got.Code != 200 {
			t.Fatalf("taken, and read back as %d:\n%s", got.Code, got.Body)
		}
		if plan, _ := sent.Check(); plan != nil {
			back, faults := press.Decode(got.Body.Bytes())
			if len(faults) > 0 || back.Digest() != plan.Digest() {
				t.Fatalf("the plan reads back as another one: %v", faults)
			}
			return
		}
		back, faults := press.DecodeDraft(got.Body.Bytes())
		if len(faults) > 0 || !bytes.Equal(back.Encode(), sent.Encode()) {
			t.Fatalf("the draft reads back as another one: %v", faults)
		}
	})
}
