package web

import (
	"bytes"
	"io"
	"log"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// loggedServer serves a handler and gives what it logs.
func loggedServer(t *testing.T, h http.Handler) (*httptest.Server, *bytes.Buffer) {
	t.Helper()
	var said bytes.Buffer
	srv := httptest.NewUnstartedServer(h)
	srv.Config.ErrorLog = log.New(&said, "", 0)
	srv.Start()
	t.Cleanup(srv.Close)
	return srv, &said
}

func exchanged(t *testing.T, req *http.Request) (int, string) {
	t.Helper()
	resp, err := http.DefaultClient.Do(req)
	require.NoError(t, err)
	defer resp.Body.Close()
	body, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	return resp.StatusCode, string(body)
}

// A fault of the program is shown as one and logged with where it was, and the server
// goes on: in a handler, in what it renders, and in a goroutine that it began.
func TestPanicsAreShownAndLogged(t *testing.T) {
	mux := http.NewServeMux()
	mux.Handle("/handler", answer(func(http.ResponseWriter, *http.Request) error { panic("the unexpected") }))
	mux.Handle("/", (&site{}).router()) // without an archive, every use of it panics
	srv, said := loggedServer(t, mux)
	form := strings.NewReader(":version=1&:do=recompute&title.name=x")
	for _, c := range []struct {
		method, path string
		body         io.Reader
		want         string
	}{
		{"GET", "/handler", nil, "the unexpected"},
		{"POST", "/plans/1", form, "(*site).keep"}, // the goroutine that saves
		{"GET", "/plans/1", nil, "(*site).openPlan"},
	} {
		said.Reset()
		req, err := http.NewRequest(c.method, srv.URL+c.path, c.body)
		require.NoError(t, err)
		req.Header.Set("Accept", "text/html")
		req.Header.Set("Content-Type", formType)
		status, body := exchanged(t, req)
		assert.Equal(t, http.StatusInternalServerError, status, c.path)
		assert.Contains(t, body, "Something went wrong in the program", c.path)
		assert.NotContains(t, body, "goroutine", c.path)
		assert.Contains(t, said.String(), c.method+" "+c.path+": web: panic: ", c.path)
		assert.Contains(t, said.String(), c.want, c.path)
	}
	req, err := http.NewRequest("GET", srv.URL+"/plans/1", nil)
	require.NoError(t, err)
	req.Header.Set("Accept", "application/json")
	status, body := exchanged(t, req)
	assert.Equal(t, http.StatusInternalServerError, status)
	assert.Contains(t, body, `"status":500`)
}

// A handler may still end its connection.
func TestAbortIsNoFault(t *testing.T) {
	assert.PanicsWithValue(t, http.ErrAbortHandler, func() { _ = safely(func() error { panic(http.ErrAbortHandler) }) })
}

// What the archive's disk refuses is not only shown: who looks after the machine finds
// it in the log.
func TestTroubleOfTheDiskIsLogged(t *testing.T) {
	a := exampleArchive(t)
	srv, said := loggedServer(t, New(a))
	folder := filepath.Dir(a.Path())
	require.NoError(t, os.Rename(folder, folder+"-away"))
	req, err := http.NewRequest("POST", srv.URL+benchPath, strings.NewReader(":version=1&:do=recompute&title.name=x"))
	require.NoError(t, err)
	req.Header.Set("Content-Type", formType)
	status, _ := exchanged(t, req)
	assert.Equal(t, http.StatusServiceUnavailable, status)
	assert.Contains(t, said.String(), "POST /plans/1: The archive's folder or file was removed")
	said.Reset()
	req, err = http.NewRequest("POST", srv.URL+"/plans", strings.NewReader(":do=new"))
	require.NoError(t, err)
	req.Header.Set("Content-Type", formType)
	status, _ = exchanged(t, req)
	assert.Equal(t, http.StatusServiceUnavailable, status)
	assert.Contains(t, said.String(), "POST /plans: The archive's folder or file was removed")
	require.NoError(t, os.Rename(folder+"-away", folder))
}
