package web

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/hex"
	"io/fs"
	"net/http"
	"path"
	"strings"
	"sync"

	"github.com/go-chi/chi/v5"

	"ramplan/static"
	"ramplan/web/page"
)

// assets are the embedded files that pages load, made ready once.
var assets = loadAssets(static.FS)

// types are the kinds of file that are served, by ending.
var types = map[string]string{
	".css":   "text/css; charset=utf-8",
	".js":    "text/javascript; charset=utf-8",
	".svg":   "image/svg+xml",
	".woff2": "font/woff2",
}

// library is the set of assets, all under one hash, so that they can name each
// other by relative path.
type library struct {
	hash  string
	files map[string]asset
}

type asset struct {
	kind  string
	plain []byte
	small func() []byte // packed when it is first asked for; nil where that gains nothing
}

func loadAssets(from fs.FS) library {
	l := library{files: map[string]asset{}}
	sum := sha256.New()
	err := fs.WalkDir(from, ".", func(name string, d fs.DirEntry, err error) error {
		kind := types[path.Ext(name)]
		if err != nil || d.IsDir() || kind == "" {
			return err
		}
		data, err := fs.ReadFile(from, name)
		if err != nil {
			return err
		}
		_, _ = sum.Write(data)
		l.files[name] = asset{kind, data, sync.OnceValue(func() []byte { return compressed(data) })}
		return nil
	})
	if err != nil {
		panic("web: " + err.Error())
	}
	l.hash = hex.EncodeToString(sum.Sum(nil))[:16]
	return l
}

func compressed(data []byte) []byte {
	var b bytes.Buffer
	z, _ := gzip.NewWriterLevel(&b, gzip.BestCompression)
	_, _ = z.Write(data)
	_ = z.Close()
	if b.Len() > len(data)*9/10 {
		return nil
	}
	return b.Bytes()
}

func (l library) address(name string) string { return "/static/" + l.hash + "/" + name }

// page gives the addresses of what every page loads.
func (l library) page() page.Assets {
	var styles []string
	for _, name := range []string{"base", "entries", "result", "cards", "bench", "strip", "curve", "shares", "pages"} {
		styles = append(styles, l.address("css/"+name+".css"))
	}
	return page.Assets{
		Styles:  styles,
		Print:   l.address("css/print.css"),
		Scripts: []string{l.address("js/bench.js")},
		Icon:    l.address("css/icon.svg"),
	}
}

// plainPage gives the addresses of what the pages beside the bench load: they
// work without a script.
func (l library) plainPage() page.Assets {
	a := l.page()
	a.Scripts = nil
	a.Styles = append(a.Styles, l.address("css/glossary.css"), l.address("css/faults.css"))
	return a
}

// shelfPage gives the addresses of what the shelf and the pages of the past load.
func (l library) shelfPage() page.Assets {
	a := l.page()
	a.Scripts = []string{l.address("js/shelf.js")}
	a.Styles = append(a.Styles, l.address("css/faults.css"), l.address("css/shelf.css"))
	return a
}

// sheetPage gives the addresses of what a plan on paper loads.
func (l library) sheetPage() page.Assets {
	a := l.shelfPage()
	a.Styles = append(a.Styles, l.address("css/sheet.css"))
	return a
}

// sharesPage gives the addresses of what the page of the shares loads.
func (l library) sharesPage() page.Assets {
	a := l.plainPage()
	a.Scripts = []string{l.address("js/sharespage.js")}
	return a
}

// serveAsset answers GET /static/{hash}/*.
func serveAsset(w http.ResponseWriter, r *http.Request) error {
	a, ok := assets.files[chi.URLParam(r, "*")]
	if !ok || chi.URLParam(r, "hash") != assets.hash {
		return notFound(w, r)
	}
	h := w.Header()
	h.Set("Content-Type", a.kind)
	h.Set("Cache-Control", "public, max-age=31536000, immutable")
	h.Set("Vary", "Accept-Encoding")
	body := a.plain
	if strings.Contains(r.Header.Get("Accept-Encoding"), "gzip") {
		if small := a.small(); small != nil {
			h.Set("Content-Encoding", "gzip")
			body = small
		}
	}
	_, _ = w.Write(body)
	return nil
}
