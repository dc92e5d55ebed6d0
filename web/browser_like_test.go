package web

import (
	"bytes"
	"io"
	"mime/multipart"
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/static"
	"ramplan/web/page"
)

// A sheet is a page as a browser holds it: its status, its markup, and the
// inputs of its form in the order in which they would be sent.
type sheet struct {
	t      *testing.T
	base   string
	path   string // of the page
	status int
	body   string
	root   *html.Node
	inputs []input
}

// example is the whole program on an archive of its own, with the example plan
// on its shelf as number 1.
func example(t testing.TB) http.Handler { return New(exampleArchive(t)) }

func exampleArchive(t testing.TB) *archive.Archive {
	t.Helper()
	plan, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	a, err := archive.Open(t.Context(), t.TempDir(), archive.Options{First: []*press.Draft{plan.Draft()}})
	require.NoError(t, err)
	t.Cleanup(func() { _ = a.Close() })
	return a
}

// benchPath is the address of the example plan's bench.
const benchPath = "/plans/1"

// start serves the whole program and opens the bench of the example.
func start(t *testing.T) *sheet {
	t.Helper()
	srv := httptest.NewServer(example(t))
	t.Cleanup(srv.Close)
	resp, err := srv.Client().Get(srv.URL + benchPath)
	require.NoError(t, err)
	return read(t, srv.URL, resp)
}

func read(t *testing.T, base string, resp *http.Response) *sheet {
	t.Helper()
	defer resp.Body.Close()
	data, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	s := &sheet{t: t, base: base, path: resp.Request.URL.Path, status: resp.StatusCode, body: string(data)}
	s.root, err = html.Parse(bytes.NewReader(data))
	require.NoError(t, err)
	for n := range s.root.Descendants() {
		if n.Type == html.ElementNode {
			s.control(n)
		}
	}
	return s
}

// control takes what a browser would send for one control of the form.
func (s *sheet) control(n *html.Node) {
	name := attr(n, "name")
	switch n.Data {
	case "input":
		value := attr(n, "value")
		switch attr(n, "type") {
		case "file":
			return
		case "checkbox":
			if !has(n, "checked") {
				return
			}
		case "text":
			value = strings.NewReplacer("\r", "", "\n", "").Replace(value)
		}
		s.inputs = append(s.inputs, input{name, value})
	case "textarea":
		s.inputs = append(s.inputs, input{name, text(n)})
	case "select":
		value := ""
		for o := range n.Descendants() {
			if o.Data == "option" && has(o, "selected") {
				value = attr(o, "value")
			}
		}
		s.inputs = append(s.inputs, input{name, value})
	}
}

func attr(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

func has(n *html.Node, key string) bool {
	for _, a := range n.Attr {
		if a.Key == key {
			return true
		}
	}
	return false
}

func text(n *html.Node) string {
	var b strings.Builder
	for d := range n.Descendants() {
		if d.Type == html.TextNode {
			b.WriteString(d.Data)
		}
	}
	return b.String()
}

// byID finds an element.
func (s *sheet) byID(id string) *html.Node {
	for n := range s.root.Descendants() {
		if n.Type == html.ElementNode && attr(n, "id") == id {
			return n
		}
	}
	return nil
}

// typeIn types into the field of a path; the field must be there.
func (s *sheet) typeIn(path, value string) {
	s.t.Helper()
	for i := range s.inputs {
		if s.inputs[i].name == path {
			s.inputs[i].value = value
			return
		}
	}
	s.t.Fatalf("the page has no field %s", path)
}

// tick ticks a box that is not ticked.
func (s *sheet) tick(path string) { s.inputs = append(s.inputs, input{path, "true"}) }

func (s *sheet) value(path string) (string, bool) {
	for _, in := range s.inputs {
		if in.name == path {
			return in.value, true
		}
	}
	return "", false
}

// press sends the form as the form itself says, multipart, with a button's value.
func (s *sheet) press(do string) *sheet { return s.send(s.path, do, nil) }

// open chooses a file and opens it as a new plan.
func (s *sheet) open(name string, data []byte) *sheet {
	return s.send("/plans", "open", &postedFile{name, data})
}

func (s *sheet) send(to, do string, file *postedFile) *sheet {
	s.t.Helper()
	var b bytes.Buffer
	w := multipart.NewWriter(&b)
	for _, in := range append(s.inputs, input{page.NameDo, do}) {
		f, err := w.CreateFormField(in.name)
		require.NoError(s.t, err)
		// Browsers send every line break as CR LF.
		_, _ = io.WriteString(f, strings.ReplaceAll(strings.ReplaceAll(in.value, "\r\n", "\n"), "\n", "\r\n"))
	}
	if file != nil {
		f, err := w.CreateFormFile(page.NameFile, file.name)
		require.NoError(s.t, err)
		_, _ = f.Write(file.data)
	}
	require.NoError(s.t, w.Close())
	resp, err := http.Post(s.base+to, w.FormDataContentType(), &b)
	require.NoError(s.t, err)
	return read(s.t, s.base, resp)
}

// sendEncoded sends the form as a script would, without its file.
func (s *sheet) sendEncoded(do string) *sheet {
	s.t.Helper()
	pairs := make([]string, 0, len(s.inputs)+1)
	for _, in := range append(s.inputs, input{page.NameDo, do}) {
		pairs = append(pairs, url.QueryEscape(in.name)+"="+url.QueryEscape(in.value))
	}
	resp, err := http.Post(s.base+s.path, "application/x-www-form-urlencoded", strings.NewReader(strings.Join(pairs, "&")))
	require.NoError(s.t, err)
	return read(s.t, s.base, resp)
}

// save sends the form to be saved and returns the file.
func (s *sheet) save() []byte {
	s.t.Helper()
	saved := s.send(s.path+"/file", "save", nil)
	require.Equal(s.t, http.StatusOK, saved.status)
	return []byte(saved.body)
}

// get opens another page.
func (s *sheet) get(path string) *sheet {
	s.t.Helper()
	resp, err := http.Get(s.base + path)
	require.NoError(s.t, err)
	return read(s.t, s.base, resp)
}
