package web

import (
	"mime"
	"net/http"
	"strconv"
	"strings"
)

// wantsJSON tells whether a program asks, and not a browser: JSON stands in its
// Accept header and HTML does not, or stands lower.
func wantsJSON(w http.ResponseWriter, r *http.Request) bool {
	w.Header().Add("Vary", "Accept")
	return asksJSON(r)
}

func asksJSON(r *http.Request) bool {
	json, html := 0.0, 0.0
	for _, header := range r.Header.Values("Accept") {
		for part := range strings.SplitSeq(header, ",") {
			kind, params, err := mime.ParseMediaType(part)
			if err != nil {
				continue
			}
			q := 1.0
			if v, err := strconv.ParseFloat(params["q"], 64); err == nil {
				q = v
			}
			switch {
			case kind == "application/json" || strings.HasSuffix(kind, "+json"):
				json = max(json, q)
			case kind == "text/html" || kind == "application/xhtml+xml":
				html = max(html, q)
			}
		}
	}
	return json > html
}

// bringsForm tells whether the body of a request is a form of these pages.
func bringsForm(r *http.Request) bool {
	kind, _, _ := mime.ParseMediaType(r.Header.Get("Content-Type"))
	return kind == "multipart/form-data" || kind == "application/x-www-form-urlencoded"
}

// acceptsHTML tells whether a browser asks.
func acceptsHTML(r *http.Request) bool { return strings.Contains(r.Header.Get("Accept"), "text/html") }
