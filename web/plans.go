package web

import (
	"net/http"
	"time"

	"ramplan/press/archive"
	"ramplan/press/drafts"
)

// A listed plan is one of the shelf as programs read it.
type listed struct {
	ID       archive.ID `json:"id"`
	Href     string     `json:"href"`
	Name     string     `json:"name"`
	Number   string     `json:"number"`
	Revision *string    `json:"revision"` // the last issued
	Changed  time.Time  `json:"changed"`
	Version  int64      `json:"version"` // of the draft
	Binned   bool       `json:"binned"`
	Proved   *provedNow `json:"proved"`          // how the last issued stands today; null where nothing was issued
	Asked    *askedFor  `json:"asked,omitempty"` // what has the digest that was searched for
}

// A provedNow is how an issued revision stands at its station.
type provedNow struct {
	State string  `json:"state"` // proved, not_proved, withdrawn or expired
	Until *string `json:"until"` // the last day on which it is proved, or was
}

// An askedFor is the revision, or the state of the draft, whose digest was searched for.
type askedFor struct {
	Revision string     `json:"revision,omitempty"`
	State    int64      `json:"state,omitempty"`
	At       *time.Time `json:"at,omitempty"`     // of the state
	Stands   *bool      `json:"stands,omitempty"` // the state is the draft of today
}

// askedOf says by what a plan was found; nil for a search by words.
func askedOf(it *archive.Item, st *archive.FoundState) *askedFor {
	switch {
	case it.Asked != "":
		return &askedFor{Revision: it.Asked}
	case st != nil:
		return &askedFor{State: st.N, At: &st.At, Stands: &st.Stands}
	}
	return nil
}

// listPlans answers GET /plans.
func (s *site) listPlans(w http.ResponseWriter, r *http.Request) error {
	if json := wantsJSON(w, r); r.URL.Path != "/" && acceptsHTML(r) && !json {
		return seeOther(w, r, "/?"+r.URL.RawQuery)
	}
	q := query(r)
	q.Binned = r.URL.Query().Get("bin") == "yes"
	states, err := s.statesAsked(r.Context(), &q)
	if err != nil {
		return err
	}
	items, total, err := s.store.List(r.Context(), q)
	if err != nil {
		return err
	}
	standings, err := s.store.Standings(r.Context(), items, today())
	if err != nil {
		return err
	}
	out := struct {
		Plans []listed `json:"plans"`
		Total int      `json:"total"`
	}{Plans: []listed{}, Total: total}
	for _, it := range items {
		l := listed{ID: it.ID, Href: planPath(it.ID, ""), Name: it.Name, Number: it.Number, Changed: it.Changed, Version: it.Version, Binned: !it.Binned.IsZero(), Asked: askedOf(&it, states[it.ID])}
		if it.Revision != "" {
			l.Revision = &it.Revision
			l.Proved = &provedNow{standings[it.ID].State, orNull(standings[it.ID].Until)}
		}
		out.Plans = append(out.Plans, l)
	}
	return sendValue(w, http.StatusOK, out)
}

// postPlan answers POST /plans with a document: a new plan on the shelf.
func (s *site) postPlan(w http.ResponseWriter, r *http.Request) error {
	d, err := readDocument(r)
	if err != nil {
		return err
	}
	head, err := s.store.Create(r.Context(), d, drafts.DidOpen)
	if err != nil {
		return err
	}
	w.Header().Set("Location", planPath(head.ID, ""))
	w.Header().Set("ETag", etag(head.Version))
	w.WriteHeader(http.StatusCreated)
	return nil
}
