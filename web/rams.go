package web

import (
	"errors"
	"net/http"
	"strconv"
	"strings"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drafts"
	"ramplan/web/page"
	"ramplan/web/view"
)

// ramRoutes are those of the shelf of rams.
func (s *site) ramRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/rams", answer(s.showRams))
	r.Method(http.MethodPost, "/rams", answer(s.ramBack)) // one that was taken off just now
	r.Method(http.MethodGet, "/rams/{id}", answer(s.showRam))
	r.Method(http.MethodPost, "/rams/{id}", answer(s.changeRam))      // what is said of it, its figures, off the shelf
	r.Method(http.MethodGet, "/plans/{id}/ram", answer(s.showRamOf))  // rams to take, and the plan's own to put
	r.Method(http.MethodPost, "/plans/{id}/ram", answer(s.moveRamOf)) // one way or the other
}

// ramPage gives the addresses of what the pages of the rams load.
func (l library) ramPage() page.Assets {
	a := l.shelfPage()
	a.Styles = append(a.Styles, l.address("css/rams.css"))
	return a
}

var errNoRam = refusal{http.StatusNotFound, say.NoSuchRam(), []string{say.RamMayBeOff()}}

// ramError tells of a ram what the archive tells of an entry.
func ramError(err error) error {
	if errors.Is(err, archive.ErrNotFound) {
		return errNoRam
	}
	return err
}

// ramID reads which ram a text names.
func ramID(text string) (archive.RamID, error) {
	n, err := strconv.ParseInt(text, 10, 64)
	if err != nil || n < 1 {
		return 0, errNoRam
	}
	return archive.RamID(n), nil
}

// viewRam is a ram as the view takes it.
func viewRam(r archive.Ram) view.Ram {
	return view.Ram{
		ID: int64(r.ID), Version: r.Version, Entries: r.Entries, Changed: r.Changed, Damaged: r.Damaged,
		Told: map[string]string{
			drafts.PathRamName: r.Name, drafts.PathRamSource: r.Source, drafts.PathRamMeasured: r.Measured,
			drafts.PathRamMethod: r.Method, drafts.PathRamNotes: r.Notes,
		},
	}
}

// toldOf reads what a form says of a ram.
func toldOf(p *posted) drafts.Told {
	said := func(path string) string { return strings.TrimSpace(p.signed[path]) }
	return drafts.Told{
		Name: said(drafts.PathRamName), Source: said(drafts.PathRamSource), Measured: said(drafts.PathRamMeasured),
		Method: said(drafts.PathRamMethod), Notes: said(drafts.PathRamNotes),
	}
}

// rams are those of the shelf in which a text is found.
func (s *site) rams(r *http.Request, text string) ([]view.Ram, error) {
	found, err := s.store.Rams(r.Context(), text)
	out := make([]view.Ram, len(found))
	for i, one := range found {
		out[i] = viewRam(one)
	}
	return out, err
}

// showRams answers GET /rams.
func (s *site) showRams(w http.ResponseWriter, r *http.Request) error {
	v := view.RamShelf{Text: r.URL.Query().Get("q")}
	var err error
	if v.Rams, err = s.rams(r, v.Text); err != nil {
		return err
	}
	return show(w, r, http.StatusOK, page.RamsOf(v.Page(assets.ramPage())))
}

// showRam answers GET /rams/{id}.
func (s *site) showRam(w http.ResponseWriter, r *http.Request) error {
	id, err := ramID(chi.URLParam(r, "id"))
	if err != nil {
		return err
	}
	return s.oneRam(w, r, id, view.OneRam{Done: r.URL.Query().Get("done")})
}

// oneRam shows a ram, with what was typed and why that was not saved.
func (s *site) oneRam(w http.ResponseWriter, r *http.Request, id archive.RamID, v view.OneRam) error {
	ram, err := s.store.Ram(r.Context(), id)
	var damaged *archive.Damaged
	if err != nil && !errors.As(err, &damaged) {
		return ramError(err)
	}
	v.Ram = viewRam(ram)
	plans, _, err := s.store.List(r.Context(), archive.Query{Limit: cardsOnPage})
	if err != nil {
		return err
	}
	for _, it := range plans {
		v.Plans = append(v.Plans, view.PlanOption{ID: int64(it.ID), Name: it.Name, Number: it.Number, Revision: it.Revision, Changed: it.Changed})
	}
	status := http.StatusOK
	switch {
	case len(v.Faults) > 0:
		status = http.StatusUnprocessableEntity
	case ram.Damaged:
		status = http.StatusInternalServerError
	}
	return show(w, r, status, page.RamOf(v.Page(assets.ramPage())))
}

// changeRam answers POST /rams/{id}.
func (s *site) changeRam(w http.ResponseWriter, r *http.Request) error {
	id, err := ramID(chi.URLParam(r, "id"))
	if err != nil {
		return err
	}
	p, err := readForm(r)
	if err != nil {
		return err
	}
	ram, err := s.store.Ram(r.Context(), id)
	var damaged *archive.Damaged
	if err != nil && !errors.As(err, &damaged) {
		return ramError(err)
	}
	ram.Told = toldOf(p)
	var faults press.Problems
	switch p.do {
	case "save":
		if ram.Damaged { // its figures are not known
			return damaged
		}
	case "anew":
		if ram.Entries, faults, err = s.ramOfPlan(r, p.signed["ram.plan"]); err != nil {
			return err
		}
	case "remove":
		return s.removeRam(w, r, id, p.version)
	default:
		return unknownCommand(p.do)
	}
	if len(faults) == 0 {
		_, err = s.store.SaveRam(r.Context(), id, p.version, ram.Ram)
	}
	switch {
	case errors.As(err, &faults), len(faults) > 0:
		return s.oneRam(w, r, id, view.OneRam{Typed: p.signed, Faults: faults})
	case err != nil:
		return ramError(err)
	}
	done := view.DoneTold
	if p.do == "anew" {
		done = view.DoneAnew
	}
	return seeOther(w, r, view.RamAddress(int64(id))+"?done="+done)
}

// ramOfPlan gives the ram that a chosen plan holds.
func (s *site) ramOfPlan(r *http.Request, chosen string) ([]press.Entry, press.Problems, error) {
	n, err := strconv.ParseInt(chosen, 10, 64)
	if err != nil {
		return nil, nil, errNoPlan
	}
	head, err := s.store.Get(r.Context(), archive.ID(n))
	if err != nil {
		return nil, nil, err
	}
	entries := drafts.RamEntries(head.Draft)
	if len(entries) == 0 {
		return nil, press.Problems{{Path: "ram", Code: press.CodeRequired, Message: say.NoRamInPlan()}}, nil
	}
	return entries, nil, nil
}

// removeRam takes a ram off the shelf and shows the list, where that is undone.
func (s *site) removeRam(w http.ResponseWriter, r *http.Request, id archive.RamID, from int64) error {
	gone, err := s.store.RemoveRam(r.Context(), id, from)
	if err != nil {
		return ramError(err)
	}
	if gone.Damaged { // nothing of it could be put back
		return seeOther(w, r, "/rams")
	}
	one := viewRam(gone)
	d := &press.Draft{Entries: gone.Entries}
	for path, text := range one.Told {
		d.Set(path, text)
	}
	v := view.RamShelf{Removed: &one, Back: string(d.Encode())}
	if v.Rams, err = s.rams(r, ""); err != nil {
		return err
	}
	return show(w, r, http.StatusOK, page.RamsOf(v.Page(assets.ramPage())))
}

// ramBack answers POST /rams: a ram that was taken off stands there again.
func (s *site) ramBack(w http.ResponseWriter, r *http.Request) error {
	p, err := readForm(r)
	if err != nil {
		return err
	}
	if p.do != "back" {
		return unknownCommand(p.do)
	}
	d, faults := press.DecodeDraft([]byte(p.mine))
	if len(faults) > 0 {
		return refusal{http.StatusBadRequest, say.RamUnreadable(), nil}
	}
	p.signed = map[string]string{}
	for _, e := range d.Entries {
		p.signed[e.Path] = e.Text
	}
	ram, err := s.store.CreateRam(r.Context(), drafts.Ram{Told: toldOf(p), Entries: drafts.RamEntries(d)})
	if errors.As(err, &faults) {
		return faulty{refusal{http.StatusUnprocessableEntity, say.RamNotPutBack(), lines(faults)}, faults}
	}
	if err != nil {
		return err
	}
	return seeOther(w, r, view.RamAddress(int64(ram.ID)))
}
