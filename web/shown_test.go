package web

import (
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// A typist sends the entries of the example with one changed, as the script does.
type typist struct {
	t       *testing.T
	srv     *httptest.Server
	version int
	shown   string
	room    string
}

func (y *typist) types(do, path, typed string) string {
	y.t.Helper()
	plan, faults := press.Decode(static.Example())
	require.Empty(y.t, faults)
	y.version++
	form := url.Values{":window": {"w"}, ":version": {"1"}, ":do": {do}}
	d := plan.Draft()
	d.Set(path, typed)
	for _, e := range d.Entries {
		form.Set(e.Path, e.Text)
	}
	req, err := http.NewRequest(http.MethodPost, y.srv.URL+benchPath, strings.NewReader(form.Encode()))
	require.NoError(y.t, err)
	for name, value := range map[string]string{"Content-Type": formType, partHeader: "bench", shownHeader: y.shown, roomHeader: y.room} {
		req.Header.Set(name, value)
	}
	resp, err := http.DefaultClient.Do(req)
	require.NoError(y.t, err)
	defer resp.Body.Close()
	body, err := io.ReadAll(resp.Body)
	require.NoError(y.t, err)
	return string(body)
}

var keptSection = regexp.MustCompile(`<section class="sec" id="([^"]+)" data-kept></section>`)

func kept(body string) []string {
	var out []string
	for _, m := range keptSection.FindAllStringSubmatch(body, -1) {
		out = append(out, m[1])
	}
	return out
}

// TestTypingIsAnsweredWithWhatChanged: entries that are shown already are left out,
// faults and what changed are not, nor anything where another answer is shown than the
// server knows.
func TestTypingIsAnsweredWithWhatChanged(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	y := &typist{t: t, srv: srv}
	whole := y.types("recompute", "station.nest", "140")
	assert.Empty(t, kept(whole), "nothing is known of the window yet")
	y.shown = answerNumber.FindStringSubmatch(whole)[1]

	body := y.types("recompute", "station.nest", "141")
	assert.NotContains(t, kept(body), "f-station", "it changed")
	assert.Contains(t, kept(body), "f-joint")
	assert.Contains(t, kept(body), "f-parts")
	assert.Greater(t, len(kept(body)), 8)
	assert.Less(t, len(body), len(whole)*2/3)
	assert.Contains(t, body, "116.08", "the new zone")
	jumps := regexp.MustCompile(`(?s)<nav class="jumps".*?</nav>`)
	assert.Equal(t, jumps.FindString(whole), jumps.FindString(body), "the links to all sections keep their names")

	wrong := y.types("recompute", "station.nest", "none")
	assert.NotContains(t, kept(wrong), "f-station")
	assert.Contains(t, wrong, `aria-invalid="true"`, "the fault is in it")
	far := y.types("recompute", "joint.fit", "H7/zz9")
	assert.NotContains(t, kept(far), "f-joint")

	same := y.types("recompute", "title.notes", "words only")
	assert.Equal(t, 0, strings.Count(same, "<svg data-kept></svg>"), "the last shown answer was of another nest, and is forgotten")
	y.shown = answerNumber.FindStringSubmatch(same)[1]
	again := y.types("recompute", "title.notes", "other words only")
	assert.Equal(t, 4, strings.Count(again, "<svg data-kept></svg>"), "strip, force, press-in and cycle are what they were")
	assert.NotContains(t, kept(again), "f-title")

	y.shown = "999999"
	assert.Empty(t, kept(y.types("recompute", "station.nest", "140")), "an answer that nobody knows")
	y.shown = answerNumber.FindStringSubmatch(again)[1]
	assert.Empty(t, kept(y.types("sort ram.curve.points", "station.nest", "140")), "the answer to a command brings all entries")
}

// The strip is drawn in the form that there is room for.
func TestStripInItsRoom(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	for room, want := range map[string][2]bool{"": {true, true}, wide: {true, false}, narrow: {false, true}, "else": {true, true}} {
		y := &typist{t: t, srv: srv, room: room}
		body := y.types("recompute", "station.nest", "140")
		assert.Equal(t, want, [2]bool{strings.Contains(body, `"strip-wide-title`), strings.Contains(body, `"strip-compact-title`)}, room)
	}
}

// What is remembered of windows is bounded.
func TestWindowsAreForgotten(t *testing.T) {
	srv := newSite(exampleArchive(t))
	h := srv.router()
	for i := range 3 * mostWindows {
		req := httptest.NewRequest(http.MethodGet, benchPath, nil)
		req.Header.Set("Accept", "text/html")
		h.ServeHTTP(httptest.NewRecorder(), req)
		assert.LessOrEqual(t, len(srv.shown.last), mostWindows, "%d", i)
	}
}
