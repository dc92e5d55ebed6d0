package web

import (
	"bytes"
	"context"
	"net"
	"net/http"
	"net/http/httptest"
	"testing"

	"ramplan/static"
)

// FuzzForm sends any form body to the page and to saving: no panic, and one of
// the answers that a form may get.
func FuzzForm(f *testing.F) {
	for _, body := range []string{
		"", "title.name=x", ":do=open", ":do=new", ":do=undo&:version=1", ":do=go+faults&:version=1&:window=w", ":do=choose", ":version=1&:do=restore+1", ":version=1&:signed+issue.reason=x", ":mine=%7B%7D&:do=mine", ":do=add+parts", ":do=remove+parts+0&parts[0]=%7B%7D",
		":exact=[%22title.owner%22,%22%22]&title.owner=", ":parked=[%22joint.diameter%22,%221%22]&joint.kind=interference",
		":other=[%22x%22,%22y%22]&:do=forget+0", "parts[399].name=x&parts[400].name=y&parts[-1].name=z", "ram.curve.points[999][1]=1",
		":paste=1+2%0A3+4&:do=paste+ram.curve.points", "a=b&a=c&%00=%ff", "window=%7B%7D&window.setting=1e999", "joint.kind=touch&joint.hub=%7B%7D",
		"title=x&title.name=y", "parts=[]&parts[0]=[]&parts[0].name[0]=x", "format=ramplan.plan/2",
	} {
		f.Add(formType, []byte(body))
	}
	f.Add("multipart/form-data; boundary=b", []byte("--b\r\nContent-Disposition: form-data; name=\"title.name\"\r\n\r\nx\r\n--b--\r\n"))
	f.Add("multipart/form-data; boundary=b", []byte("--b\r\nContent-Disposition: form-data; name=\":do\"\r\n\r\nopen\r\n--b\r\nContent-Disposition: form-data; name=\":file\"; filename=\"p.json\"\r\n\r\n"+string(static.Example())+"\r\n--b--\r\n"))
	handler := example(f)
	f.Fuzz(func(t *testing.T, kind string, body []byte) {
		for _, path := range []string{"/plans/1", "/plans/1/file", "/plans", "/plans/1/revisions", "/plans/1/history", "/plans/1/choice", "/plans/1/shelved"} {
			req := httptest.NewRequest(http.MethodPost, path, bytes.NewReader(body))
			req.Host = "127.0.0.1:8647"
			req = req.WithContext(context.WithValue(req.Context(), http.LocalAddrContextKey, net.Addr(&net.TCPAddr{IP: net.IPv4(127, 0, 0, 1), Port: 8647})))
			req.Header.Set("Content-Type", kind)
			w := httptest.NewRecorder()
			handler.ServeHTTP(w, req)
			switch w.Code {
			case 200, 303, 400, 404, 409, 413, 422:
			default:
				t.Fatalf("%s answered %d:\n%s", path, w.Code, w.Body)
			}
		}
	})
}
