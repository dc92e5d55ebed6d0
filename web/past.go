package web

import (
	"errors"
	"net/http"
	"strconv"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drafts"
	"ramplan/web/page"
	"ramplan/web/view"
)

// pastRoutes are those of what a plan was: its states and its revisions.
func (s *site) pastRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/plans/{id}/history", answer(s.showHistory))
	r.Method(http.MethodPost, "/plans/{id}/history", answer(s.restore)) // a state of before
	r.Method(http.MethodGet, "/plans/{id}/revisions", answer(s.showRevisions))
	r.Method(http.MethodPost, "/plans/{id}/revisions", answer(s.issue)) // the draft, as the next one
	r.Method(http.MethodGet, "/plans/{id}/revisions/{letter}", answer(s.showRevision))
	r.Method(http.MethodPost, "/plans/{id}/revisions/{letter}", answer(s.startAgain)) // the draft, from it
	r.Method(http.MethodGet, "/plans/{id}/compared", answer(s.compare))               // two of the revisions, the states and the draft
}

// statesOnPage is how many states a page of the history shows.
const statesOnPage = 50

// showHistory answers GET /plans/{id}/history.
func (s *site) showHistory(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	head, err := s.store.Get(r.Context(), id)
	var damaged *archive.Damaged
	if err != nil && !errors.As(err, &damaged) {
		return err
	}
	before, _ := strconv.ParseInt(r.URL.Query().Get("before"), 10, 64)
	// One more than is shown: the last needs the one that it was made from.
	states, err := s.store.History(r.Context(), id, before, statesOnPage+1)
	if err != nil {
		return err
	}
	v := view.History{Title: titleOf(head), Address: planPath(id, ""), Version: head.Version, More: len(states) > statesOnPage, Damaged: damaged != nil}
	issued, err := s.store.IssuedStates(r.Context(), id)
	if err != nil {
		return err
	}
	drafts := map[int64]*press.Draft{}
	for _, st := range states {
		drafts[st.N] = st.Draft
	}
	for _, st := range states[:min(len(states), statesOnPage)] {
		from, known := drafts[st.Prev]
		if !known && st.Prev > 0 {
			if old, err := s.store.State(r.Context(), id, st.Prev); err == nil {
				from = old.Draft
			}
		}
		one := view.State{N: st.N, At: st.At, Did: st.Did, Prev: st.Prev, Stands: st.Stands, Sound: st.Valid, Damaged: st.Damaged, Issued: issued[st.N]}
		if from != nil && st.Draft != nil {
			one.Changes = changes(from, st.Draft)
			one.Alike = len(one.Changes) == 0
		}
		v.States = append(v.States, one)
	}
	return show(w, r, http.StatusOK, page.HistoryOf(v.Page(assets.shelfPage().With(plainFoot(head.Draft, "history"+standingDigest(head.Draft))))))
}

// changes are the entries that differ, as the view takes them.
func changes(was, is *press.Draft) []view.Change {
	var out []view.Change
	for _, c := range drafts.Changes(was, is) {
		out = append(out, view.Change{Path: c.Path, Was: c.Was, Is: c.Is, Had: c.Had, Has: c.Has})
	}
	return view.InRows(out, was, is)
}

// titleOf names a plan on the pages beside its bench.
func titleOf(h archive.Head) view.Title {
	t := view.Title{Address: planPath(h.ID, ""), Revision: h.Revision}
	if h.Draft != nil {
		t.Name, _ = h.Draft.Get("title.name")
		t.Number, _ = h.Draft.Get("title.number")
	}
	return t
}

// restore answers POST /plans/{id}/history.
func (s *site) restore(w http.ResponseWriter, r *http.Request) error {
	id, p, err := planForm(r)
	if err != nil {
		return err
	}
	n, err := strconv.ParseInt(p.rest(), 10, 64)
	if err != nil || p.verb() != "restore" {
		return unknownCommand(p.do)
	}
	if _, err := s.store.Restore(r.Context(), id, archive.At(p.version), n); err != nil {
		return err
	}
	return seeOther(w, r, planPath(id, ""))
}

// showDamage answers for a draft that is not what was stored.
func (s *site) showDamage(w http.ResponseWriter, r *http.Request, d *archive.Damaged) error {
	v := view.Damage{Address: planPath(d.Plan, ""), What: d.What}
	if d.Good != nil {
		v.Name, _ = d.Good.Draft.Get("title.name")
		v.Good, v.At, v.Version = d.State, d.Good.At, d.Good.Version
	}
	return show(w, r, http.StatusInternalServerError, page.DamageOf(v.Page(assets.shelfPage())))
}
