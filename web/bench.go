package web

import (
	"context"
	"crypto/rand"
	"errors"
	"net/http"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/web/page"
	"ramplan/web/view"
)

// A bench is the entries of one plan, and how they stand in the archive.
type bench struct {
	head    archive.Head // as it was read, or saved last
	window  string
	typed   view.Typed
	last    *press.Plan // the last valid one; found when it is needed
	notices []page.Notice
	paste   *page.Paste
	refused bool   // what was asked for was not done
	stale   bool   // another window changed the plan: nothing was saved
	failure string // why nothing could be saved
}

// partHeader is the request header by which a script asks for the body of the
// page alone.
const partHeader = "Ramplan-Part"

// openPlan answers GET /plans/{id}: the bench, or for programs the draft.
func (s *site) openPlan(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	head, err := s.store.Get(r.Context(), id)
	if wantsJSON(w, r) {
		return sendDraft(w, head, err)
	}
	var damaged *archive.Damaged
	if errors.As(err, &damaged) {
		return s.showDamage(w, r, damaged)
	}
	if err != nil {
		return err
	}
	b := &bench{head: head, window: rand.Text(), typed: view.Take(head.Draft.Entries, nil)}
	if len(head.Draft.Entries) == 0 {
		b.notices = append(b.notices, page.Notice{Kind: "done", Text: "This is a new, empty plan. It is saved as you type."})
	}
	return s.showBench(w, r, b)
}

// change answers POST /plans/{id}: it does what the pressed button wants of the
// entries, saves them and shows what they lead to.
func (s *site) change(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	p, err := readForm(r)
	if err != nil {
		return err
	}
	b, err := p.obey()
	if err != nil {
		return err
	}
	b.head.ID = id
	ctx := archive.In(r.Context(), p.window)
	if p.verb() == "choose" {
		return s.showChoice(w, r, id, b.typed.All(), "")
	}
	if err := s.keep(ctx, b, p.version); err != nil {
		return err
	}
	if b.stale || b.failure != "" {
		return s.showBench(w, r, b)
	}
	switch p.verb() {
	case "undo", "redo":
		err = s.turn(ctx, b, p.verb())
	case "go":
		return seeOther(w, r, s.besides(id, p.do))
	case "copy":
		return s.copyPlan(w, r, b.head)
	case "bin":
		return s.binPlan(w, r, b.head)
	}
	if err != nil {
		return err
	}
	return s.showBench(w, r, b)
}

// keep saves the entries. That another window was faster, or that the disk does
// not take them, is told on the page with the entries still in it.
func (s *site) keep(ctx context.Context, b *bench, from int64) error {
	id := b.head.ID
	head, err := s.store.Save(ctx, id, from, b.typed.All(), "")
	var stale *archive.Stale
	var failure *archive.Failure
	switch {
	case errors.As(err, &stale):
		b.stale = true
		head.Version = from // the form still starts from there
	case errors.As(err, &failure):
		b.failure = failure.Text
		head = archive.Head{ID: id, Version: from}
	case err != nil:
		return err
	}
	b.head = head
	return nil
}

// turn undoes or redoes one step of the entries.
func (s *site) turn(ctx context.Context, b *bench, which string) error {
	step := s.store.Undo
	if which == "redo" {
		step = s.store.Redo
	}
	head, err := step(ctx, b.head.ID, b.head.Version)
	var stale *archive.Stale
	if errors.As(err, &stale) {
		b.stale = true
		return nil
	}
	if err != nil {
		return err
	}
	b.head, b.typed = head, view.Take(head.Draft.Entries, nil)
	return nil
}

// besides are the addresses to which the buttons of the bench lead once the
// entries are saved.
func (s *site) besides(id archive.ID, do string) string {
	switch do {
	case "go faults":
		return planPath(id, "faults")
	case "go history":
		return planPath(id, "history")
	case "go revisions":
		return planPath(id, "revisions")
	case "go shelf":
		return "/"
	}
	return planPath(id, "")
}

// seeOther sends a browser on after a form.
func seeOther(w http.ResponseWriter, r *http.Request, to string) error {
	http.Redirect(w, r, to, http.StatusSeeOther)
	return nil
}

// showBench computes the plan, or the last valid one, and answers with the page.
func (s *site) showBench(w http.ResponseWriter, r *http.Request, b *bench) error {
	plan, faults := b.typed.Draft.Check()
	status := http.StatusOK
	switch {
	case b.failure != "":
		status = http.StatusServiceUnavailable
	case b.stale:
		status = http.StatusConflict
	case b.refused || plan == nil && r.Method == http.MethodPost:
		status = http.StatusUnprocessableEntity
	}
	if plan == nil && b.failure == "" {
		last, err := s.store.LastPlan(r.Context(), b.head.ID, b.head.State)
		if err != nil {
			return err
		}
		plan = last
	}
	v := view.Bench{
		Typed: b.typed, Faults: faults, Plan: plan, Notices: b.notices, Paste: b.paste,
		Kept: view.Kept{
			Address: planPath(b.head.ID, ""), Version: b.head.Version, Window: b.window, Revision: b.head.Revision,
			CanUndo: b.head.CanUndo, CanRedo: b.head.CanRedo, Binned: b.head.Binned, Stale: b.stale, Failure: b.failure,
		},
	}
	if plan != nil {
		v.Result = press.Evaluate(plan)
		drawings, err := drawn(plan, v.Result)
		if err != nil {
			return err
		}
		v.Drawings = drawings
	}
	w.Header().Add("Vary", partHeader)
	if r.Header.Get(partHeader) == "bench" {
		return show(w, r, status, page.BenchBody(v.Page(assets.page())))
	}
	return show(w, r, status, page.BenchPage(v.Page(assets.page())))
}
