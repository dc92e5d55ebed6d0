package web

import (
	"cmp"
	"context"
	"crypto/rand"
	"errors"
	"net/http"
	"strconv"
	"time"

	"github.com/go-chi/chi/v5"

	"ramplan/press/archive"
	"ramplan/press/proving"
	"ramplan/press/words"
	"ramplan/press/words/proof"
	"ramplan/web/page"
	proofview "ramplan/web/view/proving"
)

// checkRoutes are those of the check of a shift, made at the station.
func (s *site) checkRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/plans/{id}/check", answer(s.newCheck))                // samples, push by push, to be filled in
	r.Method(http.MethodPost, "/plans/{id}/check", answer(s.fillCheck))              // how they went so far; or it is signed
	r.Method(http.MethodGet, "/plans/{id}/checks", answer(s.listChecks))             // those that were kept
	r.Method(http.MethodGet, "/plans/{id}/checks.csv", answer(s.sendChecks))         // the same as a table
	r.Method(http.MethodGet, "/plans/{id}/checks.pdf", answer(s.printChecks))        // and as a page to be signed
	r.Method(http.MethodGet, "/plans/{id}/checks/{study}", answer(s.showShiftCheck)) // one of them, to be printed and signed
}

// showCards answers GET /plans/{id}/proving/{study}/cards.
func (s *site) showCards(w http.ResponseWriter, r *http.Request) error {
	d, err := s.studyOf(r)
	if err != nil {
		return err
	}
	if d.kept.Kind != proving.Samples || d.kept.Signed() || d.kept.Posted {
		return seeOther(w, r, studyPath(d.id, d.kept.ID))
	}
	d.cards = true
	return s.studyPage(w, r, d)
}

// cards answers with the pushes of a study one by one.
func (s *site) cards(w http.ResponseWriter, r *http.Request, d *studyDesk, a against) error {
	v := &d.v
	v.Typed = proofview.WithSampleColumns(v.Typed)
	shown := v.Page(page.Assets{})
	c := proofview.Cards{
		Title: v.Title, Plan: v.Plan, Here: v.Address, Back: page.Link{Address: v.Address, Text: sayProof.AsATable()}, Letter: a.letter, Result: a.result,
		Typed: v.Typed, Faults: v.Faults, Judged: v.Judged, State: shown.State, Who: v.Who, NoWho: v.NoWho, Notices: v.Notices, Saved: shown.Saved,
		Hidden: []page.Hidden{{Name: page.NameVersion, Value: v.Version}, {Name: page.NameWindow, Value: v.Window}},
	}
	return s.showChecked(w, r, d.status, c, a, r.Header.Get(partHeader) == "check")
}

// showChecked answers with samples to be filled in, and what the plan predicts of them.
func (s *site) showChecked(w http.ResponseWriter, r *http.Request, status int, c proofview.Cards, a against, part bool) error {
	expect(&c, a)
	w.Header().Add("Vary", partHeader)
	if part {
		return show(w, r, status, page.CheckBody(c.Page(assets.provingPage())))
	}
	foot := draftFoot(a.head.Draft, a.plan, a.result, false)
	if a.letter != "" {
		var err error
		if foot, err = s.issuedFoot(r.Context(), a.head.ID, a.issued[0], a.result); err != nil {
			return err
		}
	}
	return show(w, r, status, page.CheckOf(c.Page(assets.provingPage().With(foot))))
}

// expect tells of each push what the plan predicts, whatever came.
func expect(c *proofview.Cards, a against) {
	if c.Expects != nil || a.result == nil || c.Typed == nil {
		return
	}
	if study, _ := proofview.Expected(c.Typed, a.result); len(study.Rows) > 0 {
		c.Expects = &proving.Assess(a.result, []*proving.Study{study}, today()).Studies[0]
	}
}

// newCheck answers GET /plans/{id}/check.
func (s *site) newCheck(w http.ResponseWriter, r *http.Request) error {
	c, a, err := s.shiftCheck(r)
	if err != nil {
		return err
	}
	return s.showChecked(w, r, http.StatusOK, c, a, false)
}

// shiftCheck is an empty shift check of a plan's newest revision, with the heights that its
// samples had the last time.
func (s *site) shiftCheck(r *http.Request) (proofview.Cards, against, error) {
	id, err := planID(r)
	if err != nil {
		return proofview.Cards{}, against{}, err
	}
	a, err := s.against(r.Context(), id, false)
	if err != nil {
		return proofview.Cards{}, a, err
	}
	t := titleOf(a.head)
	c := proofview.Cards{
		Title: page.Title{Address: t.Address, Name: t.Name, Number: t.Number}, Plan: planPath(id, ""), Here: planPath(id, "check"), Letter: a.letter, Result: a.result, Shift: true, Saved: true,
		Back: page.Link{Address: planPath(id, "checks"), Text: sayProof.AllChecks()}, Hidden: []page.Hidden{{Name: page.NameOnce, Value: rand.Text()}},
	}
	if a.letter == "" {
		c.Refused = sayProof.NothingToCheck()
		return c, a, nil
	}
	if c.Warned, err = s.warned(r.Context(), id); err != nil {
		return c, a, err
	}
	c.Looks = proofview.LooksBegun(a.result)
	if c.Typed = proofview.ShiftBegun(a.result); len(c.Typed.Rows) == 0 {
		c.Refused = sayProof.NoSamples()
		return c, a, nil
	}
	last, err := s.lastSamples(r.Context(), id)
	proofview.Remember(c.Typed, last)
	_, c.Faults = c.Typed.Study()
	return c, a, err
}

// lastSamples is the study or shift check in which samples were shown last; nil for none.
func (s *site) lastSamples(ctx context.Context, id archive.ID) (*proving.Study, error) {
	checks, err := s.store.ShiftChecks(ctx, id)
	if err != nil {
		return nil, err
	}
	for _, k := range checks {
		if k.Study != nil {
			return k.Study, nil
		}
	}
	kept, err := s.store.Studies(ctx, id)
	if err != nil {
		return nil, err
	}
	for i := len(kept) - 1; i >= 0; i-- {
		if kept[i].Kind == proving.Samples && kept[i].Counts() {
			return kept[i].Study, nil
		}
	}
	return nil, nil
}

// fillCheck answers POST /plans/{id}/check.
func (s *site) fillCheck(w http.ResponseWriter, r *http.Request) error {
	c, a, err := s.shiftCheck(r)
	if err != nil {
		return err
	}
	f, err := readStudyForm(r)
	if err != nil {
		return err
	}
	part := r.Header.Get(partHeader) == "check"
	if c.Refused != "" {
		return s.showChecked(w, r, http.StatusUnprocessableEntity, c, a, part)
	}
	c.Typed = f.into(&proving.Typed{Kind: proving.Samples, Columns: c.Typed.Columns})
	c.Who, c.Hidden = f.other[page.NameWho], []page.Hidden{{Name: page.NameOnce, Value: f.other[page.NameOnce]}}
	for i := range c.Looks {
		l := &c.Looks[i]
		arrival, zone := proofview.LookNames(i)
		l.Arrival, l.Zone = f.other[arrival], f.other[zone]
	}
	c.Typed.SetHead("notes", proofview.LooksNoted(c.Looks))
	c.Typed.SetHead("taken_at", time.Now().Format(time.RFC3339))
	c.Typed.SetHead("plan_digest", a.result.PlanDigest())
	c.Typed.SetHead("taken_by", c.Who)
	study, faults := c.Typed.Study()
	c.Faults = faults
	if len(study.Rows) > 0 {
		c.Judged = &proving.Assess(a.result, []*proving.Study{study}, today()).Studies[0]
	}
	switch f.do {
	case "", "save", "recompute":
		return s.showChecked(w, r, http.StatusOK, c, a, part)
	case "sign":
	default:
		return unknownCommand(f.do)
	}
	refused := func(why string) error {
		c.NoWho = why
		return s.showChecked(w, r, http.StatusUnprocessableEntity, c, a, part)
	}
	expect(&c, a)
	passed, left := c.Outcome()
	if left > 0 {
		return refused(sayProof.CheckNotWhole(left))
	}
	if passed == proving.Open {
		return refused(sayProof.CheckUndecided())
	}
	k, err := s.store.AddShiftCheck(r.Context(), a.head.ID, archive.NewCheck{Letter: a.letter, By: c.Who, Passed: passed, Typed: c.Typed, Once: f.other[page.NameOnce]})
	var wrong proving.TypedFaults
	var no archive.StudyRefused
	switch {
	case errors.As(err, &wrong):
		return refused(sayProof.SignRefused(len(wrong), 0))
	case errors.As(err, &no):
		return refused(no.Text())
	case err != nil:
		return studyError(err)
	}
	return seeOther(w, r, planPath(a.head.ID, "checks/"+strconv.FormatInt(int64(k.ID), 10)))
}

// stationChecks says on the page of proving when the last shift check was.
func (s *site) stationChecks(ctx context.Context, id archive.ID, a against) (page.StationChecks, error) {
	out := page.StationChecks{Address: planPath(id, "check"), History: planPath(id, "checks"), Text: sayProof.NeverChecked(a.letter)}
	checks, err := s.store.ShiftChecks(ctx, id)
	if err != nil {
		return out, err
	}
	if out.Warned, err = s.warned(ctx, id); err != nil {
		return out, err
	}
	if len(checks) > 0 {
		k := checks[0]
		out.Text = sayProof.LastChecked(k.SignedAt, k.Check.Passed, k.SignedBy)
		out.Failed = k.Check.Passed != proving.Pass
		due := proving.DueOf("", "", k.SignedAt, k.Check.Passed, time.Now())
		if out.Due = a.letter != "" && due.Any(); due.CheckOld && out.Due {
			out.Text += sayProof.CheckAgain()
		}
	}
	if a.plan != nil && a.letter != "" {
		out.Text += sayProof.HowOftenChecked(a.plan)
	}
	return out, nil
}

// listChecks answers GET /plans/{id}/checks.
func (s *site) listChecks(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	a, err := s.against(r.Context(), id, false)
	if err != nil {
		return err
	}
	checks, err := s.store.ShiftChecks(r.Context(), id)
	if err != nil {
		return err
	}
	said, err := s.stationChecks(r.Context(), id, a)
	if err != nil {
		return err
	}
	t := titleOf(a.head)
	p := page.ChecksPage{Title: page.Title{Address: t.Address, Name: t.Name, Number: t.Number}, Address: planPath(id, ""), Due: said.Text, IsDue: said.Due, Paper: planPath(id, "checks.pdf")}
	for i, way := range words.Separations {
		l := page.Link{Address: planPath(id, "checks.csv"), Text: say.AllAsCSV(way.Name)}
		if i > 0 {
			l.Address += "?separator=" + way.Name
		}
		p.CSV = append(p.CSV, l)
	}
	if p.Warned, err = s.warned(r.Context(), id); err != nil {
		return err
	}
	predicted := predictions{}
	for _, k := range checks {
		p.Lines = append(p.Lines, shiftLine(id, k, s.pushesOf(r.Context(), k, predicted)))
	}
	p.Assets = assets.provingPage().With(plainFoot(a.head.Draft, sayProof.ShiftCheck()))
	return show(w, r, http.StatusOK, page.ChecksOf(p))
}

func shiftLine(id archive.ID, k archive.KeptStudy, pushes []proof.ShiftPushed) page.ShiftLine {
	out := page.ShiftLine{
		Address: planPath(id, "checks/"+strconv.FormatInt(int64(k.ID), 10)), When: say.When(k.SignedAt), Stamp: words.Stamp(k.SignedAt), Who: k.SignedBy,
		Revision: sayProof.RevisionNamed(k.Check.Letter), Outcome: string(k.Check.Passed), OutcomeText: sayProof.ShiftVerdict(k.Check.Passed),
	}
	if k.Damaged {
		out.Outcome, out.OutcomeText = string(proving.Fail), sayProof.DamagedWord()
	} else {
		out.Lead = sayProof.ShiftLead(pushes)
	}
	return out
}

// showShiftCheck answers GET /plans/{id}/checks/{study}.
func (s *site) showShiftCheck(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	n, err := studyID(r)
	if err != nil {
		return err
	}
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return err
	}
	k, err := s.store.Study(r.Context(), id, n)
	if err != nil {
		return studyError(err)
	}
	if !k.Shift {
		return seeOther(w, r, studyPath(id, n))
	}
	t := titleOf(head)
	p := page.ShiftPage{Title: page.Title{Address: t.Address, Name: t.Name, Number: t.Number}, Address: planPath(id, ""), Outcome: string(k.Check.Passed), Verdict: sayProof.ShiftVerdict(k.Check.Passed)}
	if k.Damaged {
		p.Damaged = sayProof.DamagedStudy()
	} else {
		p.Facts = proofview.ShiftFacts(k.SignedBy, k.SignedAt, k.Check.Letter, k.Check.Digest, k.Digest)
		p.Table = proofview.ShiftTable(s.pushesOf(r.Context(), k, predictions{}))
	}
	p.Assets = assets.provingPage().With(plainFoot(head.Draft, sayProof.RevisionNamed(k.Check.Letter)+" · "+sayProof.ShiftCheck()))
	return show(w, r, http.StatusOK, page.ShiftOf(p))
}

// sendChecks answers GET /plans/{id}/checks.csv: a row for each push.
func (s *site) sendChecks(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return err
	}
	t := titleOf(head)
	checks, err := s.store.ShiftChecks(r.Context(), id)
	if err != nil {
		return err
	}
	to, err := separationOf(r)
	if err != nil {
		return err
	}
	rows, predicted := [][]string{proofview.ShiftHeads()}, predictions{}
	for _, k := range checks {
		if k.Study != nil {
			kept := proofview.ShiftKept{
				Plan: cmp.Or(t.Number, t.Name), Who: k.SignedBy, Letter: k.Check.Letter, Digest: k.Digest, At: k.SignedAt, Passed: k.Check.Passed, Pushes: s.pushesOf(r.Context(), k, predicted),
			}
			rows = append(rows, kept.Rows(to)...)
		}
	}
	sendCSV(w, "shift-checks-"+strconv.FormatInt(int64(id), 10), to.File(rows))
	return nil
}
