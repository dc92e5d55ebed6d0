package web

import (
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// TestRefusedDocuments sends what is no plan: a problem document (RFC 9457) says
// what is wrong.
func TestRefusedDocuments(t *testing.T) {
	srv := httptest.NewServer(example(t))
	t.Cleanup(srv.Close)
	long := func(n int) string {
		return `{"format":"ramplan.draft/1","fields":[["title.notes","` + strings.Repeat("x", n) + `"]]}`
	}
	for name, c := range map[string]struct {
		body   string
		status int
		path   string // of the first fault
	}{
		"nothing":         {"", 422, ""},
		"half of it":      {`{"format":"ramplan.plan/1"`, 422, ""},
		"no format":       {`{}`, 422, "format"},
		"a later plan":    {`{"format":"ramplan.plan/2"}`, 422, "format"},
		"half a pair":     {`{"format":"ramplan.draft/1","fields":[["title.name"]]}`, 422, "fields[0]"},
		"a long document": {long(5 << 20), 413, ""},
		"a long request":  {long(9 << 20), 413, ""},
	} {
		for _, way := range [][]string{{"POST", "/plans", "Content-Type: application/json"}, {"PUT", "/plans/1", "If-Match: *"}} {
			resp, body := requested(t, srv.URL, way[0], way[1], way[2:], []byte(c.body))
			note := name + ", " + way[0]
			assert.Equal(t, c.status, resp.StatusCode, "%s: %.200s", note, body)
			assert.Equal(t, "application/problem+json", resp.Header.Get("Content-Type"), note)
			var p problem
			require.NoError(t, json.Unmarshal([]byte(body), &p), note)
			assert.Equal(t, c.status, p.Status, note)
			assert.NotEmpty(t, p.Detail, note)
			if c.path != "" && assert.NotEmpty(t, p.Errors, note) {
				assert.Equal(t, c.path, p.Errors[0].Path, note)
			}
		}
	}
}

// TestKindsOfDocuments: a document is known by its format, wherever in it that
// stands and whatever else is typed; a form is no document.
func TestKindsOfDocuments(t *testing.T) {
	srv := httptest.NewServer(example(t))
	t.Cleanup(srv.Close)
	resp, body := requested(t, srv.URL, "POST", "/plans", []string{"Content-Type: " + formType, jsonWanted}, static.Example())
	assert.Equal(t, http.StatusUnsupportedMediaType, resp.StatusCode, "the kind that a tool sends when none is named")
	assert.Contains(t, body, `"status":415`)
	late := `{"fields":[["title.notes","` + strings.Repeat("x", 500) + ` ramplan.plan/1"]],"format":"ramplan.draft/1"}`
	resp, _ = requested(t, srv.URL, "POST", "/plans", []string{"Content-Type: application/json"}, []byte(late))
	require.Equal(t, http.StatusCreated, resp.StatusCode)
	assert.Equal(t, `"1"`, resp.Header.Get("ETag"))
	assert.Equal(t, "/plans/2", resp.Header.Get("Location"))
	for _, kind := range []string{"*/*", "application/json"} {
		resp, _ = requested(t, srv.URL, "GET", "/plans/9/result", []string{"Accept: " + kind}, nil)
		assert.Equal(t, http.StatusNotFound, resp.StatusCode)
		assert.Equal(t, "application/problem+json", resp.Header.Get("Content-Type"), "a result is no page: %s", kind)
	}
}

// TestBinAndDamage: a plan in the bin is still a document, and a whole one takes
// the place of a damaged one.
func TestBinAndDamage(t *testing.T) {
	a := exampleArchive(t)
	srv := httptest.NewServer(New(a))
	t.Cleanup(srv.Close)
	draft := (&press.Draft{Entries: []press.Entry{{Path: "title.name", Text: "whole"}}}).Encode()
	resp, _ := requested(t, srv.URL, "DELETE", "/plans/1", []string{`If-Match: "1"`}, nil)
	require.Equal(t, http.StatusNoContent, resp.StatusCode)
	assert.Equal(t, `"2"`, resp.Header.Get("ETag"), "it can be changed further without being read again")
	resp, _ = requested(t, srv.URL, "GET", "/plans/1", []string{jsonWanted}, nil)
	assert.Equal(t, http.StatusOK, resp.StatusCode)
	_, body := requested(t, srv.URL, "GET", "/plans", []string{jsonWanted}, nil)
	assert.Contains(t, body, `"plans": []`)

	overwrite(t, a, "update state set body = cast(replace(cast(body as text), 'title', 'tilte') as blob)")
	resp, _ = requested(t, srv.URL, "GET", "/plans/1", []string{jsonWanted}, nil)
	assert.Equal(t, http.StatusInternalServerError, resp.StatusCode)
	resp, _ = requested(t, srv.URL, "PUT", "/plans/1", []string{`If-Match: *`}, draft)
	require.Equal(t, http.StatusNoContent, resp.StatusCode)
	_, body = requested(t, srv.URL, "GET", "/plans/1", []string{jsonWanted}, nil)
	assert.Contains(t, body, `["title.name", "whole"]`)
}

// TestResultIsNamedByItsContent: of one draft another program may make another
// result, so the version of the draft does not name it.
func TestResultIsNamedByItsContent(t *testing.T) {
	s := start(t)
	resp, err := http.Get(s.base + benchPath + "/result")
	require.NoError(t, err)
	defer resp.Body.Close()
	body, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	assert.Equal(t, fmt.Sprintf("%q", fmt.Sprintf("%x", sha256.Sum256(body))[:32]), resp.Header.Get("ETag"))
}
