package web

import (
	"net/http"
	"net/url"
	"strconv"
	"strings"
	"time"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drafts"
	"ramplan/press/proving"
	"ramplan/static"
	"ramplan/web/page"
	"ramplan/web/view"
)

// shelfRoutes are those of the shelf and the bin.
func (s *site) shelfRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/", answer(s.showShelf))
	r.Method(http.MethodGet, "/plans", answer(s.listPlans))              // for programs
	r.Method(http.MethodPost, "/plans", answer(s.newPlan))               // empty, from the example, from a file
	r.Method(http.MethodGet, "/bin", answer(s.showBin))                  //
	r.Method(http.MethodPost, "/bin", answer(s.emptyBin))                // for good
	r.Method(http.MethodPost, "/plans/{id}/shelved", answer(s.movePlan)) // to the bin, back to the shelf, or a copy of it
	r.Method(http.MethodGet, "/plans/{id}/shelved", backTo(""))          //
}

// cardsOnPage is how many plans a page of the shelf shows.
const cardsOnPage = 24

// query reads what a request asks of the shelf.
func query(r *http.Request) archive.Query {
	v := r.URL.Query()
	q := archive.Query{Text: v.Get("q"), Order: v.Get("order"), Limit: cardsOnPage}
	if n, err := strconv.Atoi(v.Get("limit")); err == nil && n > 0 {
		q.Limit = min(n, 1000)
	}
	if n, err := strconv.Atoi(v.Get("offset")); err == nil && n > 0 {
		q.Offset = n
	}
	return q
}

// showShelf answers GET /.
func (s *site) showShelf(w http.ResponseWriter, r *http.Request) error {
	if wantsJSON(w, r) {
		return s.listPlans(w, r)
	}
	return s.shelf(w, r, query(r))
}

// showBin answers GET /bin.
func (s *site) showBin(w http.ResponseWriter, r *http.Request) error {
	q := query(r)
	q.Binned = true
	return s.shelf(w, r, q)
}

func (s *site) shelf(w http.ResponseWriter, r *http.Request, q archive.Query) error {
	states, err := s.statesAsked(r.Context(), &q)
	if err != nil {
		return err
	}
	items, total, err := s.store.List(r.Context(), q)
	if err != nil {
		return err
	}
	for i := range items {
		if err := s.bringCard(r.Context(), &items[i]); err != nil {
			return err
		}
	}
	_, binned, err := s.store.List(r.Context(), archive.Query{Binned: true})
	if err != nil {
		return err
	}
	standings, err := s.store.Standings(r.Context(), items, today())
	if err != nil {
		return err
	}
	cards := shelved(items)
	for i := range items {
		if st, issued := standings[items[i].ID]; issued {
			cards[i].Proved = provedOf(st, items[i].Revision, s.desk.now())
		}
		cards[i].AsIssued = s.asIssued(r.Context(), &items[i])
		cards[i].NotReady = s.notReady(r.Context(), &items[i])
		if err := s.showAsked(r.Context(), &items[i], &cards[i], states[items[i].ID]); err != nil {
			return err
		}
	}
	v := view.Shelf{Items: cards, Total: total, Offset: q.Offset, Text: q.Text, Order: q.Order, Bin: q.Binned, Binned: binned}
	if id, err := strconv.ParseInt(r.URL.Query().Get("binned"), 10, 64); err == nil && !q.Binned {
		v.Undo = s.justBinned(r, archive.ID(id))
	}
	return show(w, r, http.StatusOK, page.ShelfOf(v.Page(assets.shelfPage())))
}

// provedOf is how a plan's newest revision stands, as the view takes it.
func provedOf(st archive.Standing, letter string, now time.Time) *view.Proved {
	out := &view.Proved{State: st.State, Until: st.Until, Damaged: st.Damaged}
	if st.Checked.Letter == letter {
		out.Checked = st.Checked.At
	}
	out.Due = proving.DueOf(st.State, st.Until, out.Checked, st.Checked.Passed, now)
	return out
}

// justBinned is what the shelf offers to take back.
func (s *site) justBinned(r *http.Request, id archive.ID) *view.Undo {
	head, err := s.store.Get(r.Context(), id)
	if err != nil || !head.Binned {
		return nil
	}
	name, _ := head.Draft.Get("title.name")
	return &view.Undo{Address: planPath(id, "shelved"), Version: head.Version, Name: name}
}

// shelved are the plans of a page as the view takes them.
func shelved(items []archive.Item) []view.Item {
	out := make([]view.Item, len(items))
	for i, it := range items {
		out[i] = view.Item{
			Address: planPath(it.ID, ""), Name: it.Name, Number: it.Number, Revision: it.Revision, Changed: it.Changed, Binned: it.Binned,
			Version: it.Version, Strip: it.Card.Strip, Blockers: it.Card.Blockers, Cautions: it.Card.Cautions, Notes: it.Card.Notes, Faults: it.Card.Faults, Damaged: it.Card.Of == damagedCard, Asked: it.Asked,
		}
	}
	return out
}

// newPlan answers POST /plans.
func (s *site) newPlan(w http.ResponseWriter, r *http.Request) error {
	if !bringsForm(r) {
		return s.postPlan(w, r)
	}
	if asksJSON(r) {
		return refusal{http.StatusUnsupportedMediaType, say.SendTheDocument(), nil}
	}
	p, err := readForm(r)
	if err != nil {
		return err
	}
	d, did := &press.Draft{}, drafts.DidMake
	switch p.do {
	case "new":
	case "example":
		plan, faults := press.Decode(static.Example())
		if len(faults) > 0 {
			return faults
		}
		d = plan.Draft()
	case "open":
		if d, err = readFile(p.file); err != nil {
			return err
		}
		did = drafts.DidOpen
	default:
		return unknownCommand(p.do)
	}
	head, err := s.store.Create(r.Context(), d, did)
	if err != nil {
		return err
	}
	to := planPath(head.ID, "")
	if did == drafts.DidOpen {
		to += "?" + justOpened
	}
	return seeOther(w, r, to)
}

// movePlan answers POST /plans/{id}/shelved.
func (s *site) movePlan(w http.ResponseWriter, r *http.Request) error {
	id, p, err := planForm(r)
	if err != nil {
		return err
	}
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return err
	}
	switch p.do {
	case "copy":
		return s.copyPlan(w, r, head)
	case "bin":
		return s.binPlan(w, r, head)
	case "unbin":
		if _, err := s.store.Unbin(r.Context(), id, archive.At(head.Version)); err != nil {
			return err
		}
		return seeOther(w, r, planPath(id, ""))
	}
	return unknownCommand(p.do)
}

// copyPlan makes a new plan of a draft and opens it.
func (s *site) copyPlan(w http.ResponseWriter, r *http.Request, from archive.Head) error {
	d := &press.Draft{Entries: append([]press.Entry(nil), from.Draft.Entries...)}
	if name, given := d.Get("title.name"); given && strings.TrimSpace(name) != "" {
		d.Set("title.name", name+" (copy)")
	}
	head, err := s.store.Create(r.Context(), d, drafts.DidCopy)
	if err != nil {
		return err
	}
	return seeOther(w, r, planPath(head.ID, ""))
}

// binPlan moves a plan to the bin and shows the shelf, where that is undone.
func (s *site) binPlan(w http.ResponseWriter, r *http.Request, head archive.Head) error {
	if _, err := s.store.Bin(r.Context(), head.ID, archive.At(head.Version)); err != nil {
		return err
	}
	return seeOther(w, r, "/?"+url.Values{"binned": {strconv.FormatInt(int64(head.ID), 10)}}.Encode())
}

// emptyBin answers POST /bin.
func (s *site) emptyBin(w http.ResponseWriter, r *http.Request) error {
	p, err := readForm(r)
	if err != nil {
		return err
	}
	if p.do != "empty" {
		return unknownCommand(p.do)
	}
	if _, err := s.store.EmptyBin(r.Context()); err != nil {
		return err
	}
	return seeOther(w, r, "/bin")
}
