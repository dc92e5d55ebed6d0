package web

import (
	"mime"
	"net/http"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// wantsJSON tells whether a program asks, and not a browser: JSON stands in its
// Accept header and HTML does not, or stands lower; or neither does, nor anything
// that takes in one of them.
func wantsJSON(w http.ResponseWriter, r *http.Request) bool {
	variesByAccept(w)
	return asksJSON(r)
}

// variesByAccept says to caches that another Accept would get another answer.
func variesByAccept(w http.ResponseWriter) {
	if !slices.Contains(w.Header().Values("Vary"), "Accept") {
		w.Header().Add("Vary", "Accept")
	}
}

func asksJSON(r *http.Request) bool {
	json, html, any, given := 0.0, 0.0, 0.0, false
	for _, header := range r.Header.Values("Accept") {
		for part := range strings.SplitSeq(header, ",") {
			kind, params, err := mime.ParseMediaType(part)
			if err != nil {
				continue
			}
			given = true
			q := 1.0
			if v, err := strconv.ParseFloat(params["q"], 64); err == nil {
				q = v
			}
			switch {
			case kind == "application/json" || kind == "application/*" || strings.HasSuffix(kind, "+json"):
				json = max(json, q)
			case kind == "text/html" || kind == "text/*" || kind == "application/xhtml+xml":
				html = max(html, q)
			case kind == "*/*":
				any = max(any, q)
			}
		}
	}
	return json > html || given && json == 0 && html == 0 && any == 0
}

// noPage are addresses at which there is no page to be shown.
var noPage = regexp.MustCompile(`/(result|assessment|studies(/[^/]*)?)$`)

// takesProblem tells whether what is refused is told as a problem (RFC 9457): to
// programs, which is known by what they ask for or by what they do.
func takesProblem(r *http.Request) bool {
	switch r.Method {
	case http.MethodGet, http.MethodHead:
		return asksJSON(r) || !acceptsHTML(r) && noPage.MatchString(r.URL.Path)
	case http.MethodPost:
		return asksJSON(r) || r.Header.Get("Content-Type") != "" && !bringsForm(r) && !acceptsHTML(r)
	}
	return true
}

// bringsForm tells whether the body of a request is a form of these pages.
func bringsForm(r *http.Request) bool {
	kind, _, _ := mime.ParseMediaType(r.Header.Get("Content-Type"))
	return kind == "multipart/form-data" || kind == "application/x-www-form-urlencoded"
}

// acceptsHTML tells whether a browser asks.
func acceptsHTML(r *http.Request) bool { return strings.Contains(r.Header.Get("Accept"), "text/html") }
