package web

import (
	"cmp"
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
	notices []page.Notice
	paste   *page.Paste
	growth  view.Growth
	doubts  []page.Doubt // about the points just read
	leads   *leads       // what the entries lead to, once computed
	refused bool         // what was asked for was not done
	stale   bool         // another window changed the plan: nothing was saved
	from    int64        // the state that the form still starts from where nothing was saved
	failure string       // why nothing could be saved
	room    string       // which form of the strip is wanted; empty: both
	typing  bool         // it answers to typing: what is shown already is left out
}

// start is where a change of what the bench shows starts from.
func (b *bench) start() archive.Start {
	return archive.Start{Version: b.head.Version, Window: b.window}
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
		return sendDraft(w, r, head, err)
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
		b.notices = append(b.notices, page.Notice{Kind: "done", Text: say.NewEmptyPlan()})
	}
	if r.URL.Query().Has(justOpened) {
		if err := s.sayIssued(r.Context(), b); err != nil {
			return err
		}
	}
	return s.showBench(w, r, b)
}

// change answers POST /plans/{id}: it does what the pressed button wants of the
// entries, saves them and shows what they lead to.
func (s *site) change(w http.ResponseWriter, r *http.Request) error {
	id, p, err := planForm(r)
	if err != nil {
		return err
	}
	b, err := p.obey()
	if err != nil {
		return err
	}
	b.head.ID, b.room, b.typing = id, roomOf(r), p.verb() == "" || p.verb() == "recompute"
	ctx := r.Context()
	if p.verb() == "choose" {
		return s.showChoice(w, r, id, ours{b.typed.All(), p.state}, "")
	}
	// The disk and the processor work at the same time.
	kept := make(chan error, 1)
	saved := *b
	go func() { kept <- safely(func() error { return s.keep(ctx, &saved, p) }) }()
	if p.shown() {
		if b.leads, err = b.compute(); err == nil && b.leads.plan != nil {
			b.leads.made = b.view(b.leads).Make()
		}
	}
	if err := errors.Join(err, <-kept); err != nil {
		return err
	}
	b.head, b.from, b.stale, b.failure = saved.head, saved.from, saved.stale, saved.failure
	if b.failure != "" {
		logOf(r).Printf("%s %s: %s", r.Method, r.URL.Path, b.failure)
	}
	if b.stale || b.failure != "" {
		return s.showBench(w, r, b)
	}
	switch p.verb() {
	case "undo", "redo":
		err = s.turn(ctx, b, p.verb())
	case "ram":
		err = s.updateRam(ctx, b)
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
func (s *site) keep(ctx context.Context, b *bench, p *posted) error {
	id := b.head.ID
	head, err := s.store.Save(ctx, id, archive.Start{Version: p.version, Window: b.window}, b.typed.All(), "")
	var stale *archive.Stale
	var failure *archive.Failure
	switch {
	case errors.As(err, &stale):
		b.stale = true
		head.Version, b.from = p.version, p.state // the form still starts from there
	case errors.As(err, &failure):
		b.failure = failure.Text
		head, b.from = archive.Head{ID: id, Version: p.version}, p.state
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
	head, err := step(ctx, b.head.ID, b.start())
	var stale *archive.Stale
	if errors.As(err, &stale) {
		b.stale = true
		return nil
	}
	if err != nil {
		return err
	}
	b.head, b.typed, b.leads = head, view.Take(head.Draft.Entries, nil), nil
	return nil
}

// besides are the addresses to which the buttons of the bench lead once the
// entries are saved.
func (s *site) besides(id archive.ID, do string) string {
	switch do {
	case "go faults":
		return planPath(id, "faults")
	case "go shares":
		return planPath(id, "shares")
	case "go sheet":
		return planPath(id, "sheet")
	case "go proving":
		return planPath(id, "proving")
	case "go drill":
		return planPath(id, "drill")
	case "go history":
		return planPath(id, "history")
	case "go revisions":
		return planPath(id, "revisions")
	case "go compare":
		return planPath(id, "compared")
	case "go ram":
		return planPath(id, "ram")
	case "go putram":
		return planPath(id, "ram#put")
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

// leads is what entries lead to: a plan with its result and drawings, or faults.
type leads struct {
	plan     *press.Plan
	faults   press.Problems
	result   *press.Result
	drawings view.Drawings
	room     string     // for the strip
	made     *view.Made // what is shown of it, where it was made while the entries were saved
}

// asIssued tells whether the entries are the last issued revision.
func (l *leads) asIssued(head archive.Head) bool {
	return len(l.faults) == 0 && l.result != nil && l.result.PlanDigest() == head.Issued
}

func (b *bench) compute() (*leads, error) {
	l := leads{room: b.room}
	l.plan, l.faults = b.typed.Draft.Check()
	return &l, l.show()
}

// show evaluates and draws the plan, when there is one.
func (l *leads) show() (err error) {
	if l.plan == nil {
		return nil
	}
	l.result = press.Evaluate(l.plan)
	// What the other rules would propose is worked out while the drawings are made.
	rules := make(chan error, 1)
	go func() {
		rules <- safely(func() error {
			l.result.RuleWindows()
			return nil
		})
	}()
	l.drawings, err = drawn(l.plan, l.result, l.room)
	return errors.Join(err, <-rules)
}

// view is what the page is made from, but for how the entries stand in the archive.
func (b *bench) view(l *leads) view.Bench {
	return view.Bench{
		Typed: b.typed, Faults: l.faults, Plan: l.plan, Result: l.result, Drawings: l.drawings,
		Notices: b.notices, Paste: b.paste, Growth: b.growth, Doubts: b.doubts,
	}
}

// showBench answers with the page of the plan, or of the last valid one.
func (s *site) showBench(w http.ResponseWriter, r *http.Request, b *bench) error {
	if b.leads == nil {
		var err error
		if b.leads, err = b.compute(); err != nil {
			return err
		}
	}
	l := *b.leads
	status := http.StatusOK
	switch {
	case b.failure != "":
		status = http.StatusServiceUnavailable
	case b.stale:
		status = http.StatusConflict
	case b.refused || l.plan == nil && r.Method == http.MethodPost:
		status = http.StatusUnprocessableEntity
	}
	if l.plan == nil && b.failure == "" {
		var err error
		if l.plan, err = s.store.LastPlan(r.Context(), b.head.ID, b.head.State); err != nil {
			return err
		}
		if err := l.show(); err != nil {
			return err
		}
	}
	asIssued, older := l.asIssued(b.head), ""
	if !asIssued && b.head.Revision != "" && len(l.faults) == 0 && l.result != nil {
		var err error
		if older, err = s.store.LetterOf(r.Context(), b.head.ID, l.result.PlanDigest()); err != nil {
			return err
		}
	}
	v := b.view(&l)
	v.Made = l.made
	v.Kept = view.Kept{
		Address: planPath(b.head.ID, ""), Version: b.head.Version, State: cmp.Or(b.from, b.head.State), Window: b.window, Revision: b.head.Revision,
		Standing: s.standing(r.Context(), b.head.ID, b.head.Issued, b.head.Revision),
		AsIssued: asIssued, Older: older, CanUndo: b.head.CanUndo, CanRedo: b.head.CanRedo, Binned: b.head.Binned, Stale: b.stale, Failure: b.failure, RamNews: s.ramNews(r.Context(), b),
	}
	foot, err := s.benchFoot(r.Context(), b, &l, asIssued)
	if err != nil {
		return err
	}
	shownPage := v.Page(assets.page().With(foot))
	for _, header := range []string{partHeader, shownHeader, roomHeader} {
		w.Header().Add("Vary", header)
	}
	part := r.Header.Get(partHeader) == "bench"
	earlier := ""
	if part && b.typing {
		earlier = r.Header.Get(shownHeader)
	}
	s.shown.seen(b.window, &shownPage, earlier)
	if part {
		return show(w, r, status, page.BenchBody(shownPage))
	}
	return show(w, r, status, page.BenchPage(shownPage))
}
