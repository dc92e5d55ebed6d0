package web

import (
	"net"
	"net/http"
	"strings"
)

// maxBody is the most that a request may bring: a file of 4 MiB beside a form.
const maxBody = 8 << 20

// policy lets a page load from this server alone, without inline script or style.
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; " +
	"connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"

// guard puts every check around the handler that a page of another site, or
// another machine, must not get past.
func guard(next http.Handler) http.Handler {
	origin := http.NewCrossOriginProtection()
	origin.SetDenyHandler(answer(func(http.ResponseWriter, *http.Request) error {
		return refusal{http.StatusForbidden, say.FromAnotherSite(), []string{say.OpenBenchAndTryThere()}}
	}))
	return headers(checkHost(ownLoads(origin.Handler(http.MaxBytesHandler(next, maxBody)))))
}

// ownLoads refuses what a page of another site loads from here, such as a drawing
// as its image: it could see nothing of it, but the work would be done. That a link
// over there leads here is no loading.
func ownLoads(next http.Handler) http.Handler {
	refuse := answer(func(http.ResponseWriter, *http.Request) error {
		return refusal{http.StatusForbidden, say.AskedByAnotherSite(), []string{say.OpenBench()}}
	})
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if foreignLoad(r.Header) {
			refuse.ServeHTTP(w, r)
			return
		}
		next.ServeHTTP(w, r)
	})
}

// foreignLoad tells by what browsers say of each request (Fetch Metadata Request
// Headers, W3C) whether another site's page loads something. Another port of this
// machine is the same site, and another's page all the same.
func foreignLoad(h http.Header) bool {
	switch h.Get("Sec-Fetch-Site") {
	case "cross-site", "same-site":
		into := h.Get("Sec-Fetch-Dest")
		return h.Get("Sec-Fetch-Mode") != "navigate" || into != "" && into != "document"
	}
	return false
}

// headers says to the browser what these pages may do: nothing but load from here.
func headers(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Content-Security-Policy", policy)
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("X-Frame-Options", "DENY")
		h.Set("Referrer-Policy", "same-origin")
		h.Set("Cross-Origin-Opener-Policy", "same-origin")
		h.Set("Cross-Origin-Resource-Policy", "same-origin")
		h.Set("Permissions-Policy", "camera=(), geolocation=(), microphone=()")
		next.ServeHTTP(w, r)
	})
}

// checkHost answers only when the request names this machine and this server's
// own port: a name of another site that was made to point here is refused.
func checkHost(next http.Handler) http.Handler {
	refuse := answer(func(http.ResponseWriter, *http.Request) error {
		return refusal{http.StatusMisdirectedRequest, say.NotThisHost(), []string{say.UsePrintedAddress()}}
	})
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if !ownHost(r) {
			refuse.ServeHTTP(w, r)
			return
		}
		next.ServeHTTP(w, r)
	})
}

func ownHost(r *http.Request) bool {
	local, ok := r.Context().Value(http.LocalAddrContextKey).(net.Addr)
	if !ok {
		return false
	}
	_, own, err := net.SplitHostPort(local.String())
	if err != nil {
		return false
	}
	host, port, err := net.SplitHostPort(r.Host)
	if err != nil {
		host, port = r.Host, "80"
		if bare, ok := strings.CutPrefix(host, "["); ok {
			host = strings.TrimSuffix(bare, "]")
		}
	}
	return port == own && localHost(host)
}
