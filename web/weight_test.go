package web

import (
	"bufio"
	"context"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"regexp"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// mostWeight is what the whole first page may weigh as it is transferred, bytes:
// an aim of this project, no source.
const mostWeight = 300_000

// TestPageWeight transfers the page and everything it loads, as a browser asks
// for it.
func TestPageWeight(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	sizes := map[string]int{}
	var load func(path string)
	load = func(path string) {
		if _, done := sizes[path]; done {
			return
		}
		sizes[path] = len(transferred(t, srv.URL+path))
		for _, next := range loadedBy(path, plain(t, srv.URL+path)) {
			load(next)
		}
	}
	load(benchPath)
	total := 0
	for path, size := range sizes {
		t.Logf("%7d %s", size, path)
		total += size
	}
	t.Logf("%7d in all", total)
	assert.Less(t, total, mostWeight)
	assert.Contains(t, sizes, assets.address("fonts/ramplan-sans.woff2"))
	assert.Contains(t, sizes, assets.address("js/morph.js"))
}

var (
	inPage   = regexp.MustCompile(`(?:src|<link[^>]* href)="(/static/[^"]+)"`)
	inStyle  = regexp.MustCompile(`url\("\.\./([^"]+)"\)`)
	inScript = regexp.MustCompile(`from "\./([^"]+)"`)
)

// loadedBy finds what a page, a style or a script loads.
func loadedBy(path, body string) []string {
	find := func(re *regexp.Regexp, folder string) []string {
		var out []string
		for _, m := range re.FindAllStringSubmatch(body, -1) {
			out = append(out, folder+m[1])
		}
		return out
	}
	switch {
	case strings.HasSuffix(path, ".css"):
		return find(inStyle, assets.address(""))
	case strings.HasSuffix(path, ".js"):
		return find(inScript, assets.address("js/"))
	case path == benchPath:
		return find(inPage, "")
	}
	return nil
}

// transferred gives the bytes on the wire.
func transferred(t *testing.T, url string) []byte {
	t.Helper()
	req, err := http.NewRequest(http.MethodGet, url, nil)
	require.NoError(t, err)
	req.Header.Set("Accept-Encoding", "gzip")
	resp, err := http.DefaultTransport.RoundTrip(req)
	require.NoError(t, err)
	defer resp.Body.Close()
	require.Equal(t, http.StatusOK, resp.StatusCode, url)
	body, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	return body
}

func plain(t *testing.T, url string) string {
	t.Helper()
	resp, err := http.Get(url)
	require.NoError(t, err)
	defer resp.Body.Close()
	body, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	return string(body)
}

// TestAssetsAreKept wants files that a browser keeps for good, and pages that it
// asks for again.
func TestAssetsAreKept(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	for path, want := range map[string]string{assets.address("css/base.css"): "immutable", assets.address("fonts/ramplan-sans.woff2"): "immutable", "/": "no-cache"} {
		resp, err := http.Get(srv.URL + path)
		require.NoError(t, err)
		resp.Body.Close()
		assert.Contains(t, resp.Header.Get("Cache-Control"), want, path)
	}
}

// TestPart asks for the body of the page alone, as the script does.
func TestPart(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	req, err := http.NewRequest(http.MethodGet, srv.URL+benchPath, nil)
	require.NoError(t, err)
	req.Header.Set(partHeader, "bench")
	resp, err := http.DefaultClient.Do(req)
	require.NoError(t, err)
	defer resp.Body.Close()
	body, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	assert.True(t, strings.HasPrefix(string(body), "<main"), "%.80s", body)
	assert.Contains(t, resp.Header.Values("Vary"), partHeader)
	window := regexp.MustCompile(`name=":window" value="\w+"|data-answer="\d+"`) // each page has its own
	assert.True(t, strings.Contains(window.ReplaceAllString(plain(t, srv.URL+benchPath), ""), window.ReplaceAllString(string(body), "")), "the whole page holds the same part")
}

// BenchmarkLiveAnswer is one live answer over one connection: form read, plan checked,
// saved and evaluated, the drawings made, page rendered. Whole is the answer with
// everything in it; typing is that to a script that says what it shows. Memory is collected
// as seldom as the program does that serves it, unless the environment says otherwise.
func BenchmarkLiveAnswer(b *testing.B) {
	if os.Getenv("GOGC") == "" {
		usual := debug.SetGCPercent(400)
		b.Cleanup(func() { debug.SetGCPercent(usual) })
	}
	if os.Getenv("GOMEMLIMIT") == "" {
		usual := debug.SetMemoryLimit(256 << 20)
		b.Cleanup(func() { debug.SetMemoryLimit(usual) })
	}
	for _, name := range []string{"whole", "typing"} {
		b.Run(name, func(b *testing.B) { benchmarkLiveAnswer(b, name == "typing", 0) })
	}
}

// BenchmarkLiveAnswerBeside is the same answer to typing while another window counts 10⁹
// parts; in turns with one that nothing runs beside, as the machine's own noise is in both.
func BenchmarkLiveAnswerBeside(b *testing.B) {
	usual := debug.SetGCPercent(400)
	b.Cleanup(func() { debug.SetGCPercent(usual) })
	for _, name := range []string{"alone-1", "beside-1", "alone-2", "beside-2"} {
		parts := 0
		if strings.HasPrefix(name, "beside") {
			parts = 1_000_000_000
		}
		b.Run(name, func(b *testing.B) { benchmarkLiveAnswer(b, true, parts) })
	}
}

// counting starts a count of parts on a server, as the page of the shares does, and reads
// how far it is until the benchmark ends.
func counting(b *testing.B, base string, parts int) {
	ctx, stop := context.WithCancel(b.Context())
	resp := askShares(ctx, b, base+"/plans/1/shares?parts="+strconv.Itoa(parts), partHeader, "shares")
	require.Equal(b, http.StatusOK, resp.StatusCode)
	begun, end := make(chan struct{}), make(chan struct{})
	go func() {
		defer close(end)
		lines := bufio.NewReader(resp.Body)
		for first := true; ; {
			piece, err := lines.ReadString(recordEnd[0])
			if first && strings.HasPrefix(piece, "<output>") {
				first = false
				close(begun)
			}
			if err != nil {
				return
			}
		}
	}()
	b.Cleanup(func() { stop(); <-end })
	<-begun
}

var answerNumber = regexp.MustCompile(`data-answer="(\d+)"`)

func benchmarkLiveAnswer(b *testing.B, typing bool, beside int) {
	srv := httptest.NewServer(example(b))
	b.Cleanup(srv.Close)
	if beside > 0 {
		counting(b, srv.URL, beside)
	}
	plan, faults := press.Decode(static.Example())
	require.Empty(b, faults)
	form := ""
	for _, entry := range plan.Draft().Entries {
		if entry.Path != "station.nest" {
			form += "&" + entry.Path + "=" + strings.NewReplacer(" ", "+", "%", "%25", ",", "%2C").Replace(entry.Text)
		}
	}
	var took []time.Duration
	sent, shown := 0, ""
	for n := 0; b.Loop(); n++ {
		start := time.Now()
		req, err := http.NewRequest(http.MethodPost, srv.URL+benchPath, strings.NewReader(form+"&:do=recompute&:window=w&:version="+strconv.Itoa(n+1)+"&station.nest="+strconv.Itoa(100+n%2)))
		require.NoError(b, err)
		req.Header.Set("Content-Type", formType)
		req.Header.Set(partHeader, "bench")
		if typing {
			req.Header.Set(roomHeader, wide)
			req.Header.Set(shownHeader, shown)
		}
		resp, err := http.DefaultClient.Do(req)
		require.NoError(b, err)
		body, _ := io.ReadAll(resp.Body)
		resp.Body.Close()
		if resp.StatusCode != http.StatusOK {
			b.Fatal(resp.StatusCode)
		}
		took = append(took, time.Since(start))
		sent = len(body)
		if m := answerNumber.FindSubmatch(body); m != nil {
			shown = string(m[1])
		}
	}
	slices.Sort(took)
	at := func(share float64) float64 {
		return float64(took[int(share*float64(len(took)-1))].Microseconds()) / 1000
	}
	b.ReportMetric(at(0.5), "median-ms")
	b.ReportMetric(at(0.99), "p99-ms")
	b.ReportMetric(float64(sent), "bytes/answer")
}
