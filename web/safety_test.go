package web

import (
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const formType = "application/x-www-form-urlencoded"

// TestSafety sends what a page of another site, another machine or a tool might
// send. HOST and PORT stand for the server's own.
func TestSafety(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	own, err := url.Parse(srv.URL)
	require.NoError(t, err)
	cases := []struct {
		name, method, path, host string
		headers                  map[string]string
		want                     int
	}{
		// Which host the request names.
		{"own address", "GET", "/", "127.0.0.1:PORT", nil, 200},
		{"localhost", "GET", "/", "localhost:PORT", nil, 200},
		{"localhost in capitals", "GET", "/", "LOCALHOST:PORT", nil, 200},
		{"loopback in six", "GET", "/", "[::1]:PORT", nil, 200},
		{"a name made to point here", "GET", "/", "evil.example:PORT", nil, 421},
		{"a name that begins like ours", "GET", "/", "localhost.evil.example:PORT", nil, 421},
		{"a name that ends like ours", "GET", "/", "evil.localhost.example:PORT", nil, 421},
		{"every address", "GET", "/", "0.0.0.0:PORT", nil, 421},
		{"another port", "GET", "/", "127.0.0.1:1", nil, 421},
		{"no port", "GET", "/", "127.0.0.1", nil, 421},
		{"a style under another host", "GET", assets.address("css/base.css"), "evil.example:PORT", nil, 421},
		{"a form under another host", "POST", "/plans/1", "evil.example:PORT", nil, 421},
		// Where a form comes from.
		{"own page", "POST", "/plans/1", "", map[string]string{"Sec-Fetch-Site": "same-origin", "Origin": srv.URL}, 409},
		{"typed by the user", "POST", "/plans/1", "", map[string]string{"Sec-Fetch-Site": "none"}, 409},
		{"a tool without headers", "POST", "/plans/1", "", nil, 409},
		{"another site", "POST", "/plans/1", "", map[string]string{"Sec-Fetch-Site": "cross-site", "Origin": "https://evil.example"}, 403},
		{"another port of this machine", "POST", "/plans/1", "", map[string]string{"Sec-Fetch-Site": "same-site", "Origin": "http://127.0.0.1:1"}, 403},
		{"another origin, old browser", "POST", "/plans/1/file", "", map[string]string{"Origin": "https://evil.example"}, 403},
		{"no origin", "POST", "/plans/1/file", "", map[string]string{"Origin": "null"}, 403},
		// What another site's page loads, and that it leads here.
		{"an image on another site", "GET", "/plans/1/sheet.png", "", map[string]string{"Sec-Fetch-Site": "cross-site", "Sec-Fetch-Mode": "no-cors", "Sec-Fetch-Dest": "image"}, 403},
		{"an image on another port", "GET", "/plans/1/drawings/strip.png", "", map[string]string{"Sec-Fetch-Site": "same-site", "Sec-Fetch-Mode": "no-cors", "Sec-Fetch-Dest": "image"}, 403},
		{"a fetch by another site", "GET", "/plans", "", map[string]string{"Sec-Fetch-Site": "cross-site", "Sec-Fetch-Mode": "cors", "Sec-Fetch-Dest": "empty"}, 403},
		{"a frame on another site", "GET", "/plans/1", "", map[string]string{"Sec-Fetch-Site": "cross-site", "Sec-Fetch-Mode": "navigate", "Sec-Fetch-Dest": "iframe"}, 403},
		{"a style on another site", "GET", assets.address("css/base.css"), "", map[string]string{"Sec-Fetch-Site": "cross-site", "Sec-Fetch-Mode": "no-cors", "Sec-Fetch-Dest": "style"}, 403},
		{"a link on another site", "GET", "/plans/1", "", map[string]string{"Sec-Fetch-Site": "cross-site", "Sec-Fetch-Mode": "navigate", "Sec-Fetch-Dest": "document"}, 200},
		{"an image of our own", "GET", "/plans/1/drawings/strip.png", "", map[string]string{"Sec-Fetch-Site": "same-origin", "Sec-Fetch-Mode": "no-cors", "Sec-Fetch-Dest": "image"}, 200},
		{"an image opened by the user", "GET", "/plans/1/drawings/strip.png", "", map[string]string{"Sec-Fetch-Site": "none", "Sec-Fetch-Mode": "navigate", "Sec-Fetch-Dest": "document"}, 200},
		// What there is.
		{"no such page", "GET", "/nothing", "", nil, 404},
		{"no such file", "GET", "/static/" + assets.hash + "/css/nothing.css", "", nil, 404},
		{"a file of another build", "GET", "/static/0000000000000000/css/base.css", "", nil, 404},
		{"out of the folder", "GET", "/static/" + assets.hash + "/../fs.go", "", nil, 404},
		{"the plans are no assets", "GET", "/static/" + assets.hash + "/examples/example-plan.json", "", nil, 404},
		{"a method that is not there", "DELETE", "/", "", nil, 405},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			req, err := http.NewRequest(c.method, srv.URL+c.path, strings.NewReader(""))
			require.NoError(t, err)
			if c.host != "" {
				req.Host = strings.ReplaceAll(c.host, "PORT", own.Port())
			}
			if c.method == "POST" {
				req.Header.Set("Content-Type", formType)
			}
			for k, v := range c.headers {
				req.Header.Set(k, v)
			}
			resp, err := http.DefaultTransport.RoundTrip(req)
			require.NoError(t, err)
			defer resp.Body.Close()
			assert.Equal(t, c.want, resp.StatusCode)
			assertHeaders(t, resp.Header)
		})
	}
}

// assertHeaders wants the headers that every answer carries, refusals included.
func assertHeaders(t *testing.T, h http.Header) {
	t.Helper()
	assert.Equal(t, policy, h.Get("Content-Security-Policy"))
	assert.NotContains(t, policy, "unsafe")
	assert.Equal(t, "nosniff", h.Get("X-Content-Type-Options"))
	assert.Equal(t, "DENY", h.Get("X-Frame-Options"))
	assert.Equal(t, "same-origin", h.Get("Referrer-Policy"))
	assert.Equal(t, "same-origin", h.Get("Cross-Origin-Opener-Policy"))
	assert.Equal(t, "same-origin", h.Get("Cross-Origin-Resource-Policy"))
	assert.Empty(t, h.Get("Access-Control-Allow-Origin"))
}

// TestNoInline wants pages without inline script or style, which the policy
// would stop anyway.
func TestNoInline(t *testing.T) {
	s := start(t)
	for _, page := range []*sheet{s, s.send("/plans", "new", nil), s.press("nonsense"), s.get("/"), s.get("/plans/1/revisions"), s.get("/plans/1/history")} {
		for n := range page.root.Descendants() {
			for _, a := range n.Attr {
				assert.NotEqual(t, "style", a.Key, n.Data)
				assert.False(t, strings.HasPrefix(a.Key, "on"), "%s has %s", n.Data, a.Key)
				assert.False(t, strings.HasPrefix(a.Val, "javascript:"), a.Val)
				if a.Key == "src" || a.Key == "href" || a.Key == "action" {
					assert.False(t, strings.Contains(a.Val, "//"), "%s leads to %s", n.Data, a.Val)
				}
			}
			assert.NotEqual(t, "style", n.Data)
			if n.Data == "script" {
				assert.NotEmpty(t, attr(n, "src"))
				assert.Nil(t, n.FirstChild)
			}
		}
	}
}

// TestMarkupIsText types markup into a field and wants to see it as text.
func TestMarkupIsText(t *testing.T) {
	const evil = `"><script>alert(1)</script><b onmouseover=alert(1)>`
	s := start(t)
	for _, path := range []string{"title.name", "station.nest", "parts[0].name", "ram.curve.points[0][0]", "joint.fit", "title.notes"} {
		s.typeIn(path, evil)
	}
	s = s.press("recompute")
	got, _ := s.value("title.name")
	assert.Equal(t, evil, got)
	for n := range s.root.Descendants() {
		assert.NotEqual(t, "onmouseover", attr(n, "onmouseover"))
		if n.Data == "script" {
			assert.NotEmpty(t, attr(n, "src"))
		}
	}
}
