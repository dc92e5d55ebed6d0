package web

import (
	"net/http"

	"github.com/go-chi/chi/v5"
	"github.com/go-chi/chi/v5/middleware"
)

// New gives the whole program as seen from a browser.
func New() http.Handler { return guard(router()) }

// router lists every route.
func router() *chi.Mux {
	r := chi.NewRouter()
	r.Use(middleware.Compress(1, "text/html", "application/json"))
	r.NotFound(answer(notFound).ServeHTTP)
	r.MethodNotAllowed(answer(wrongMethod).ServeHTTP)
	benchRoutes(r)
	faultRoutes(r)
	glossaryRoutes(r)
	assetRoutes(r)
	return r
}

// benchRoutes are those of the bench.
func benchRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/", answer(openExample))   // the bench with the example plan
	r.Method(http.MethodPost, "/", answer(recompute))    // the entries, and what a button wants of them
	r.Method(http.MethodPost, "/save", answer(saveFile)) // the entries as a file
}

// assetRoutes are those of what the pages load.
func assetRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/static/{hash}/*", answer(serveAsset)) // a file by the hash of its content
}

func notFound(http.ResponseWriter, *http.Request) error {
	return refusal{http.StatusNotFound, "There is no such page.", nil}
}

func wrongMethod(http.ResponseWriter, *http.Request) error {
	return refusal{http.StatusMethodNotAllowed, "This page cannot be asked for in this way.", nil}
}
