package web

import (
	"net/http"
	"net/url"
	"strconv"
	"strings"
	"sync"

	"github.com/go-chi/chi/v5"
	"github.com/go-chi/chi/v5/middleware"

	"ramplan/press"
	"ramplan/press/archive"
)

// A site is what the handlers share.
type site struct {
	store  *archive.Archive
	desk   *desk      // the exams under way
	why    sync.Map   // digest of a draft: why it is not ready, in words
	shown  windows    // what stands in the windows of benches
	judged judgements // what studies say

	beside *press.Beside // what simulations share
}

// New gives the whole program as seen from a browser, upon an archive.
func New(store *archive.Archive) http.Handler { return guard(newSite(store).router()) }

func newSite(store *archive.Archive) *site {
	return &site{store: store, desk: newDesk(), beside: press.NewBeside()}
}

// router lists every route.
func (s *site) router() *chi.Mux {
	r := chi.NewRouter()
	r.Use(bareParts, middleware.GetHead)
	r.Use(middleware.Compress(1, "text/html", "application/json", "application/problem+json"))
	r.NotFound(answer(notFound).ServeHTTP)
	r.MethodNotAllowed(answer(wrongMethod).ServeHTTP)
	s.shelfRoutes(r)
	s.planRoutes(r)
	s.studyRoutes(r)
	s.pastRoutes(r)
	s.provingRoutes(r)
	s.checkRoutes(r)
	s.sheetRoutes(r)
	s.ramRoutes(r)
	s.drillRoutes(r)
	s.recordRoutes(r)
	programRoutes(r)
	glossaryRoutes(r)
	assetRoutes(r)
	return r
}

// bareParts leaves the answers to a script unpacked: on one machine packing takes
// longer than the way.
func bareParts(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.Header.Get(partHeader) != "" {
			r.Header.Del("Accept-Encoding")
		}
		next.ServeHTTP(w, r)
	})
}

// planRoutes are those of one plan and its pages.
func (s *site) planRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/plans/{id}", answer(s.openPlan))          // the bench, or the draft as JSON
	r.Method(http.MethodPost, "/plans/{id}", answer(s.change))           // the entries, and what a button wants of them
	r.Method(http.MethodPut, "/plans/{id}", answer(s.putPlan))           // another draft in its place
	r.Method(http.MethodDelete, "/plans/{id}", answer(s.deletePlan))     // into the bin
	r.Method(http.MethodGet, "/plans/{id}/result", answer(s.showResult)) // what the draft leads to, as JSON
	r.Method(http.MethodGet, "/plans/{id}/faults", answer(s.showFaults)) // the fault catalogue
	r.Method(http.MethodGet, "/plans/{id}/shares", answer(s.showShares)) // what passes and what is refused, simulated
	r.Method(http.MethodPost, "/plans/{id}/file", answer(saveFile))      // the entries of the form as a file
	r.Method(http.MethodGet, "/plans/{id}/file", backTo(""))             //
	r.Method(http.MethodPost, "/plans/{id}/choice", answer(s.choose))    // one side or the other of each entry
	r.Method(http.MethodGet, "/plans/{id}/choice", backTo(""))           //
}

// assetRoutes are those of what the pages load.
func assetRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/static/{hash}/*", answer(serveAsset)) // a file by the hash of its content
}

func notFound(http.ResponseWriter, *http.Request) error {
	return refusal{http.StatusNotFound, say.NoSuchPage(), nil}
}

// wrongMethod says in Allow how the address can be asked.
func wrongMethod(w http.ResponseWriter, r *http.Request) error {
	w.Header().Set("Allow", strings.Join(allowed(r), ", "))
	return refusal{http.StatusMethodNotAllowed, say.MethodNotTaken(), nil}
}

// allowed are the methods that an address answers.
func allowed(r *http.Request) []string {
	routes := chi.RouteContext(r.Context()).Routes
	var out []string
	for _, method := range []string{http.MethodGet, http.MethodPost, http.MethodPut, http.MethodDelete} {
		if routes.Match(chi.NewRouteContext(), method, r.URL.Path) {
			out = append(out, method)
			if method == http.MethodGet {
				out = append(out, http.MethodHead)
			}
		}
	}
	return out
}

// backTo answers the address of a form that somebody kept, or asked for anew: what was
// sent there is gone, and the page that the form stands on is at another address.
func backTo(beside string) http.Handler {
	return answer(func(w http.ResponseWriter, r *http.Request) error {
		id, err := planID(r)
		if err != nil {
			return err
		}
		to := planPath(id, beside)
		if rev := r.URL.Query().Get("revision"); rev != "" {
			to += "?" + url.Values{"revision": {rev}}.Encode()
		}
		return seeOther(w, r, to)
	})
}

var errNoPlan = refusal{http.StatusNotFound, say.NoSuchPlan(), []string{say.PlanMayBeRemoved()}}

// planID reads which plan a request is about.
func planID(r *http.Request) (archive.ID, error) {
	n, err := strconv.ParseInt(chi.URLParam(r, "id"), 10, 64)
	if err != nil || n < 1 {
		return 0, errNoPlan
	}
	return archive.ID(n), nil
}

// planForm reads which plan a form is about, and the form.
func planForm(r *http.Request) (archive.ID, *posted, error) {
	id, err := planID(r)
	if err != nil {
		return 0, nil, err
	}
	p, err := readForm(r)
	return id, p, err
}

// planHead gives the working draft of the plan that a request is about.
func (s *site) planHead(r *http.Request) (archive.Head, error) {
	id, err := planID(r)
	if err != nil {
		return archive.Head{}, err
	}
	return s.store.Get(r.Context(), id)
}

// planPath is the address of a plan's bench, and of a page beside it.
func planPath(id archive.ID, beside string) string {
	path := "/plans/" + strconv.FormatInt(int64(id), 10)
	if beside != "" {
		path += "/" + beside
	}
	return path
}
