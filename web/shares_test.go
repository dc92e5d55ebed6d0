package web

import (
	"context"
	"encoding/json"
	"io"
	"net/http"
	"net/http/httptest"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/static"
)

func askShares(ctx context.Context, t testing.TB, address string, header ...string) *http.Response {
	t.Helper()
	req, err := http.NewRequestWithContext(ctx, http.MethodGet, address, nil)
	require.NoError(t, err)
	for i := 0; i < len(header); i += 2 {
		req.Header.Set(header[i], header[i+1])
	}
	resp, err := http.DefaultClient.Do(req)
	require.NoError(t, err)
	t.Cleanup(func() { resp.Body.Close() })
	return resp
}

// The page says the figures of the simulation, the closed form beside them, and what it
// all rests on; a form that cannot be done is said, with what was typed kept.
func TestSharesPage(t *testing.T) {
	s := plainPageOf(t, "/plans/1/shares?parts=20000&seed=7")
	require.Equal(t, http.StatusOK, s.status)
	assert.Len(t, elements(s.root, "h1"), 1)
	plan, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	r := press.Evaluate(plan)
	sim := r.Simulate(t.Context(), press.SimulationOptions{Parts: 20000, Seed: 7, Precision: sharePrecision})
	shown := text(s.root)
	for _, row := range (words.Printer{}).Shares(r, sim) {
		for _, want := range []string{row.Label, row.Closed, row.Share, row.Limits, row.Counted} {
			assert.Contains(t, shown, want)
		}
	}
	for _, one := range (words.Printer{}).SharesSay(sim) {
		assert.Contains(t, shown, one)
	}
	assert.Contains(t, shown, "20\u202f000 parts counted one by one, seed 7")

	// Of a share of which none was counted one limit is said, the same beside the count and under
	// the table: 3 parts in 20 000 are 150 ppm, by hand (95 %, one-sided, −ln 0.05 ≈ 3).
	assert.Contains(t, shown, "0: under\u202f150")
	assert.Contains(t, shown, "under 150\u202fppm with 95\u202f% confidence")
	assert.NotContains(t, shown, "0: 0 to ")
	assert.Contains(t, shown, "in it hole and shaft end at their limits", "why a bad lot may show less than the average")

	s = plainPageOf(t, "/plans/1/shares?parts=&seed=1")
	assert.Equal(t, http.StatusUnprocessableEntity, s.status, "without a script a count of nothing is said as well")
	assert.Contains(t, text(s.root), words.PartsNotGiven)
	assert.NotContains(t, text(plainPageOf(t, "/plans/1/shares").root), words.PartsNotGiven)

	s = plainPageOf(t, "/plans/1/shares?parts=1,5e3&seed=x")
	assert.Equal(t, http.StatusUnprocessableEntity, s.status)
	assert.Contains(t, text(s.root), words.PartsRefused)
	assert.Contains(t, text(s.root), words.SeedRefused)
	assert.Contains(t, s.body, `value="1,5e3"`)
	s = plainPageOf(t, "/plans/1/shares?parts=1e12")
	assert.Equal(t, http.StatusUnprocessableEntity, s.status, "nobody waits for that without a script")
	assert.Contains(t, text(s.root), words.TooManyToWaitFor)
}

// Programs get the simulation as the command line prints it.
func TestSharesForPrograms(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	resp := askShares(t.Context(), t, srv.URL+"/plans/1/shares?parts=5000&seed=3", "Accept", "application/json")
	require.Equal(t, http.StatusOK, resp.StatusCode)
	body, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	plan, _ := press.Decode(static.Example())
	want, err := press.Evaluate(plan).Simulate(t.Context(), press.SimulationOptions{Parts: 5000, Seed: 3, Precision: sharePrecision}).JSON()
	require.NoError(t, err)
	assert.JSONEq(t, string(want), string(body))
	resp = askShares(t.Context(), t, srv.URL+"/plans/1/shares?parts=x", "Accept", "application/json")
	assert.Equal(t, http.StatusUnprocessableEntity, resp.StatusCode)
}

// The stream gives whole pieces, each from more points or with more in it than the one
// before; that of another plan than the bench shows is refused.
func TestSharesStream(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	at := srv.URL + "/plans/1/shares"
	resp := askShares(t.Context(), t, at+"?parts=300000", partHeader, "shares")
	require.Equal(t, http.StatusOK, resp.StatusCode)
	body, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	pieces := strings.Split(string(body), recordEnd)
	require.Empty(t, pieces[len(pieces)-1], "the last piece is whole as well")
	pieces = slices.DeleteFunc(pieces[:len(pieces)-1], func(p string) bool { return strings.HasPrefix(p, "<output>") })
	require.GreaterOrEqual(t, len(pieces), 2)
	assert.NotContains(t, pieces[0], "parts counted one by one", "the estimate does not wait for the count")
	assert.Contains(t, pieces[len(pieces)-1], "300\u202f000 parts counted one by one")

	plan, _ := press.Decode(static.Example())
	resp = askShares(t.Context(), t, at+"?of="+press.Evaluate(plan).PlanDigest(), partHeader, "shares")
	assert.Equal(t, http.StatusOK, resp.StatusCode)
	resp = askShares(t.Context(), t, at+"?of=sha256:0", partHeader, "shares")
	assert.Equal(t, http.StatusConflict, resp.StatusCode)
}

// A count that would take days ends when nobody reads it any more: the server can be
// stopped, as it waits for what it still does.
func TestSharesDropped(t *testing.T) {
	srv := httptest.NewServer(example(t))
	ctx, leave := context.WithCancel(t.Context())
	resp := askShares(ctx, t, srv.URL+"/plans/1/shares?parts=1e12", partHeader, "shares")
	read, end := make([]byte, 1), make(chan struct{})
	_, err := resp.Body.Read(read)
	require.NoError(t, err, "the first answer comes at once")
	leave()
	go func() { srv.Close(); close(end) }()
	select {
	case <-end:
	case <-time.After(2 * time.Minute):
		t.Fatal("the count goes on though nobody reads it")
	}
}

// A plan that is none yet has no shares, and says so to people and programs.
func TestSharesOfNothing(t *testing.T) {
	store := exampleArchive(t)
	srv := httptest.NewServer(New(store))
	defer srv.Close()
	resp, err := http.Post(srv.URL+"/plans", formType, strings.NewReader(":do=new"))
	require.NoError(t, err)
	resp.Body.Close()
	at := strings.TrimSuffix(resp.Request.URL.Path, "/") + "/shares"
	resp = askShares(t.Context(), t, srv.URL+at)
	assert.Equal(t, http.StatusUnprocessableEntity, resp.StatusCode)
	body, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	assert.Contains(t, string(body), "no sound plan yet")
	resp = askShares(t.Context(), t, srv.URL+at, "Accept", "application/json")
	assert.Equal(t, http.StatusUnprocessableEntity, resp.StatusCode)
	assert.True(t, json.NewDecoder(resp.Body).Decode(new(map[string]any)) == nil)
}

// The bench's stream brings the strip with the readings of parts that stall, in the form
// that was asked for, and once where nothing of it changes; the page of the shares has no
// strip.
func TestSharesStreamStrip(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	at, of := srv.URL+"/plans/1/shares", ""
	pieces := func(headers ...string) (strips []string) {
		resp := askShares(t.Context(), t, at+of, headers...)
		require.Equal(t, http.StatusOK, resp.StatusCode)
		body, err := io.ReadAll(resp.Body)
		require.NoError(t, err)
		for _, p := range strings.Split(string(body), recordEnd) {
			if strings.HasPrefix(p, `<div class="drawings" id="strip">`) {
				strips = append(strips, p)
			}
		}
		return strips
	}
	assert.Empty(t, pieces(partHeader, "shares"))
	plan, _ := press.Decode(static.Example())
	of = "?of=" + press.Evaluate(plan).PlanDigest()
	strips := pieces(partHeader, "shares", roomHeader, wide)
	require.Len(t, strips, 1, "nothing stalls, so that it stays the same")
	assert.NotContains(t, strips[0], "stalled")
	assert.Contains(t, strips[0], "strip-wide")
	assert.NotContains(t, strips[0], "strip-compact")

	// A setting so low that tight parts stall.
	weak := strings.Replace(string(static.Example()), `"window": {`, `"window": {"setting": 38`, 1)
	plan, faults := press.Decode([]byte(weak))
	require.Empty(t, faults)
	resp, _ := requested(t, srv.URL, http.MethodPost, "/plans", []string{"Content-Type: application/json"}, []byte(weak))
	at = srv.URL + resp.Header.Get("Location") + "/shares"
	of = "?of=" + press.Evaluate(plan).PlanDigest()
	strips = pieces(partHeader, "shares", roomHeader, narrow)
	require.NotEmpty(t, strips)
	assert.Contains(t, strips[len(strips)-1], "in a million parts stall before their seat")
	assert.Contains(t, strips[len(strips)-1], `class="stalled"`)
	assert.NotContains(t, strips[0], "strip-wide")
}
