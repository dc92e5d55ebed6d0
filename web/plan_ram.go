package web

import (
	"context"
	"errors"
	"net/http"
	"strconv"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drafts"
	"ramplan/web/page"
	"ramplan/web/view"
)

// showRamOf answers GET /plans/{id}/ram.
func (s *site) showRamOf(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	v := view.PlanRam{}
	if put, err := ramID(r.URL.Query().Get("put")); err == nil {
		if ram, err := s.store.Ram(r.Context(), put); err == nil {
			one := viewRam(ram)
			v.Put = &one
		}
	}
	return s.ramOf(w, r, id, http.StatusOK, v)
}

// ramOf shows the page, with what was typed into its form, and why that was not
// put on the shelf.
func (s *site) ramOf(w http.ResponseWriter, r *http.Request, id archive.ID, status int, v view.PlanRam) error {
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return err
	}
	v.Title, v.Address, v.Version, v.Text = titleOf(head), planPath(id, ""), head.Version, r.URL.Query().Get("q")
	v.Entries = drafts.RamEntries(head.Draft)
	v.From, _ = head.Draft.Get(drafts.PathShelfName)
	if v.Rams, err = s.rams(r, v.Text); err != nil {
		return err
	}
	return show(w, r, status, page.PlanRamOf(v.Page(assets.ramPage())))
}

// moveRamOf answers POST /plans/{id}/ram: the plan takes a ram from the shelf, or
// puts its own there.
func (s *site) moveRamOf(w http.ResponseWriter, r *http.Request) error {
	id, p, err := planForm(r)
	if err != nil {
		return err
	}
	switch p.verb() {
	case "take":
		return s.takeRam(w, r, id, p)
	case "put":
		return s.putRam(w, r, id, p)
	}
	return unknownCommand(p.do)
}

func (s *site) takeRam(w http.ResponseWriter, r *http.Request, id archive.ID, p *posted) error {
	which, err := ramID(p.rest())
	if err != nil {
		return err
	}
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return err
	}
	ram, err := s.store.Ram(r.Context(), which)
	if err != nil {
		return ramError(err)
	}
	_, err = s.store.Save(r.Context(), id, archive.At(p.version), drafts.PutRam(head.Draft, ram.Ram), drafts.DidRam)
	var stale *archive.Stale
	if errors.As(err, &stale) {
		return s.ramOf(w, r, id, http.StatusConflict, view.PlanRam{Faults: changedMeanwhile})
	}
	if err != nil {
		return err
	}
	return seeOther(w, r, planPath(id, ""))
}

// changedMeanwhile is said on a page that shows an older state of a plan.
var changedMeanwhile = press.Problems{{Code: press.CodeConflict, Message: say.ChangedSinceOpenedChoose()}}

func (s *site) putRam(w http.ResponseWriter, r *http.Request, id archive.ID, p *posted) error {
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return err
	}
	if head.Version != p.version {
		return s.ramOf(w, r, id, http.StatusConflict, view.PlanRam{Typed: p.signed, Faults: changedMeanwhile})
	}
	ram, err := s.store.CreateRam(r.Context(), drafts.Ram{Told: toldOf(p), Entries: drafts.RamEntries(head.Draft)})
	var faults press.Problems
	if errors.As(err, &faults) {
		return s.ramOf(w, r, id, http.StatusUnprocessableEntity, view.PlanRam{Typed: p.signed, Faults: faults})
	}
	if err != nil {
		return err
	}
	return seeOther(w, r, planPath(id, "ram")+"?put="+strconv.FormatInt(int64(ram.ID), 10))
}

// ramNews tells that the shelf's ram has changed since the entries were copied
// from it, and what they would be with it; nil for no news. That it cannot be told is no reason not to
// show the bench.
func (s *site) ramNews(ctx context.Context, b *bench) *view.RamNews {
	if b.failure != "" {
		return nil
	}
	ram, is, err := s.store.RamNews(ctx, &b.typed.Draft)
	if err != nil || !is {
		return nil
	}
	here := b.typed.All()
	return &view.RamNews{Name: ram.Name, Changes: changes(here, drafts.PutRam(here, ram.Ram))}
}

// updateRam takes the shelf's ram anew into entries that were copied from it.
func (s *site) updateRam(ctx context.Context, b *bench) error {
	ram, is, err := s.store.RamNews(ctx, &b.typed.Draft)
	if err != nil {
		return err
	}
	if !is {
		b.say(say.ShelfRamUnchanged())
		return nil
	}
	head, err := s.store.Save(ctx, b.head.ID, b.start(), drafts.PutRam(b.typed.All(), ram.Ram), drafts.DidRam)
	var stale *archive.Stale
	if errors.As(err, &stale) {
		b.stale = true
		return nil
	}
	if err != nil {
		return err
	}
	b.say(say.RamIsShelfsAgain())
	b.head, b.typed, b.leads = head, view.Take(head.Draft.Entries, nil), nil
	return nil
}
