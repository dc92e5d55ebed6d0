package web

import (
	"net/http"

	"github.com/go-chi/chi/v5"

	"ramplan/web/page"
	"ramplan/web/view"
)

// glossaryRoutes are those of the glossary.
func glossaryRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/glossary", answer(showGlossary)) // every word and every field
}

// showGlossary answers GET /glossary.
func showGlossary(w http.ResponseWriter, r *http.Request) error {
	return show(w, r, http.StatusOK, page.GlossaryOf(view.Glossary(assets.plainPage())))
}
