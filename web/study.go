package web

import (
	"context"
	"crypto/rand"
	"errors"
	"net/http"
	"strconv"
	"strings"
	"time"

	"github.com/go-chi/chi/v5"

	"ramplan/press/archive"
	"ramplan/press/proving"
	"ramplan/web/page"
	proofview "ramplan/web/view/proving"
)

// How an address asks to hold a study against the draft though a revision was issued, and how
// a form asks for the pushes one by one.
const (
	againstDraft = "draft"
	asCards      = "cards"
)

// A desk of one study: what stands, what was typed, and what is shown of it.
type studyDesk struct {
	id     archive.ID
	kept   archive.KeptStudy
	v      proofview.Study
	draft  bool // it is held against the draft
	cards  bool // its pushes are shown one by one
	part   bool // a script asks for the body alone
	status int
	take   []string // entries that are picked of what it offers; nil: all
	picked bool
}

func studyID(r *http.Request) (archive.StudyID, error) {
	n, err := strconv.ParseInt(chi.URLParam(r, "study"), 10, 64)
	if err != nil || n < 1 {
		return 0, refusal{http.StatusNotFound, sayProof.NoStudy(), nil}
	}
	return archive.StudyID(n), nil
}

// studyOf finds the study that a request is about.
func (s *site) studyOf(r *http.Request) (*studyDesk, error) {
	id, err := planID(r)
	if err != nil {
		return nil, err
	}
	n, err := studyID(r)
	if err != nil {
		return nil, err
	}
	kept, err := s.store.Study(r.Context(), id, n)
	if err != nil {
		return nil, studyError(err)
	}
	d := &studyDesk{id: id, kept: kept, status: http.StatusOK, draft: r.URL.Query().Get("against") == againstDraft, part: r.Header.Get(partHeader) == "study"}
	d.v.Kept = viewKept(id, kept)
	d.v.From, _ = strconv.Atoi(r.URL.Query().Get("from"))
	d.v.Window = rand.Text()
	return d, nil
}

// showStudy answers GET /plans/{id}/proving/{study}.
func (s *site) showStudy(w http.ResponseWriter, r *http.Request) error {
	d, err := s.studyOf(r)
	if err != nil {
		return err
	}
	if r.URL.Query().Has(justRead) {
		_, faults := d.v.Typed.Study()
		d.say("done", sayProof.Pasted(d.v.Rows(), proofview.FaultyRows(faults)))
	}
	return s.studyPage(w, r, d)
}

// changeStudy answers POST /plans/{id}/proving/{study}: what was typed is kept, then done what
// the pressed button wants.
func (s *site) changeStudy(w http.ResponseWriter, r *http.Request) error {
	d, err := s.studyOf(r)
	if err != nil {
		return err
	}
	f, err := readStudyForm(r)
	if err != nil {
		return err
	}
	d.cards = f.other[page.NameAs] == asCards
	if f.window != "" {
		d.v.Window = f.window
	}
	d.v.From, d.v.Who = f.from, f.other[page.NameWho]
	ctx := r.Context()
	verb, rest, _ := strings.Cut(f.do, " ")
	switch verb {
	case "take", "try":
		return s.adopt(w, r, d, f, rest)
	case "correct":
		k, err := s.store.CorrectStudy(ctx, d.id, d.kept.ID)
		if err != nil {
			return studyError(err)
		}
		return seeOther(w, r, studyPath(d.id, k.ID))
	case "discard":
		if err := s.store.DropStudy(ctx, d.id, d.kept.ID, f.version); err != nil {
			return studyError(err)
		}
		return seeOther(w, r, planPath(d.id, "proving"))
	}
	if err := s.keepTyped(ctx, d, f, verb == "overwrite"); err != nil {
		return err
	}
	if d.v.Stale || d.v.Failure != "" {
		return s.studyPage(w, r, d)
	}
	switch verb {
	case "", "save", "recompute", "overwrite":
	case "more":
		d.v.More = true
	case "column", "remove", "paste", "read":
		if err := s.mend(ctx, d, f, verb, rest); err != nil {
			return err
		}
	case "sign":
		return s.sign(w, r, d)
	default:
		return unknownCommand(f.do)
	}
	return s.studyPage(w, r, d)
}

// keepTyped saves what a form brought.
func (s *site) keepTyped(ctx context.Context, d *studyDesk, f *studyForm, over bool) error {
	if d.kept.Posted || d.kept.Signed() {
		return nil
	}
	from := f.version
	if over {
		from = d.kept.Version
	}
	if over || from == d.kept.Version {
		return s.put(ctx, d, from, f.into(d.v.Typed))
	}
	// The rows of this leaf are all that this window can say: what stands around them is the
	// other's.
	typed := f.into(d.v.Typed)
	if typed.Same(d.kept.Typed) {
		return nil
	}
	d.v.Typed, d.v.Stale, d.status = typed, true, http.StatusConflict
	return nil
}

// put saves what was typed; that the disk does not take it, or another window was faster, is
// told on the page with everything still in it.
func (s *site) put(ctx context.Context, d *studyDesk, from int64, typed *proving.Typed) error {
	k, err := s.store.SaveStudy(ctx, d.id, d.kept.ID, from, typed)
	var stale *archive.StaleStudy
	var failure *archive.Failure
	var refused archive.StudyRefused
	switch {
	case errors.As(err, &stale):
		d.v.Typed, d.v.Stale, d.status = typed, true, http.StatusConflict
		return nil
	case errors.As(err, &failure):
		d.v.Typed, d.v.Failure, d.status = typed, failure.Text, http.StatusServiceUnavailable
		return nil
	case errors.As(err, &refused):
		d.v.Typed, d.v.Failure, d.status = typed, refused.Text(), http.StatusUnprocessableEntity
		return nil
	case err != nil:
		return studyError(err)
	}
	d.stands(k)
	return nil
}

// stands takes over what is kept now.
func (d *studyDesk) stands(k archive.KeptStudy) {
	d.kept, d.v.Kept = k, viewKept(d.id, k)
}

func (d *studyDesk) say(kind, text string) {
	d.v.Notices = append(d.v.Notices, page.Notice{Kind: kind, Text: text})
}

// mend does to the table what a button, or a paste, wants.
func (s *site) mend(ctx context.Context, d *studyDesk, f *studyForm, verb, rest string) error {
	var typed *proving.Typed
	switch verb {
	case "column":
		typed = proofview.WithColumn(d.v.Typed, rest)
	case "remove":
		row, err := strconv.Atoi(strings.TrimPrefix(rest, "rows "))
		if err != nil {
			return unknownCommand(f.do)
		}
		typed = proofview.WithoutRow(d.v.Typed, row)
	case "paste":
		row, column, ok := pastedAt(rest)
		if !ok {
			return unknownCommand(f.do)
		}
		var n int
		typed, n = proofview.WithBlock(d.v.Typed, row, column, f.text)
		d.said(typed, n)
	case "read":
		if strings.TrimSpace(f.table()) == "" {
			d.v.Upload = &page.Upload{Open: true, Faults: []string{sayProof.NothingToReadIn()}}
			d.status = http.StatusUnprocessableEntity
			return nil
		}
		var n int
		var why []string
		typed, n, why = proofview.WithTable(d.v.Typed, f.table(), f.fileName())
		if typed == nil {
			d.v.Upload = &page.Upload{Open: true, Text: f.table(), Faults: why}
			d.status = http.StatusUnprocessableEntity
			return nil
		}
		d.said(typed, n)
	}
	if typed == nil {
		return unknownCommand(f.do)
	}
	return s.put(ctx, d, d.kept.Version, typed)
}

// said tells how many rows were read in, and how many of them are at fault.
func (d *studyDesk) said(typed *proving.Typed, n int) {
	_, faults := typed.Study()
	d.say("done", sayProof.Pasted(n, proofview.FaultyRows(faults)))
}

// pastedAt reads "rows 3 1": the cell in which a block begins.
func pastedAt(rest string) (row, column int, ok bool) {
	parts := strings.Fields(rest)
	if len(parts) != 3 {
		return 0, 0, false
	}
	row, err1 := strconv.Atoi(parts[1])
	column, err2 := strconv.Atoi(parts[2])
	return row, column, err1 == nil && err2 == nil && row >= 0 && row < proving.MostTypedRows && column >= 0
}

// sign keeps the study for good.
func (s *site) sign(w http.ResponseWriter, r *http.Request, d *studyDesk) error {
	if day := d.v.Day(); day > time.Now().AddDate(0, 0, 1).UTC().Format(time.DateOnly) {
		d.v.NoWho, d.status = sayProof.NotComeYet(day), http.StatusUnprocessableEntity
		return s.studyPage(w, r, d)
	}
	k, err := s.store.SignStudy(r.Context(), d.id, d.kept.ID, d.kept.Version, d.v.Who)
	var faults proving.TypedFaults
	var refused archive.StudyRefused
	var stale *archive.StaleStudy
	var failure *archive.Failure
	switch {
	case errors.As(err, &faults):
		d.v.NoWho, d.status = sayProof.SignRefused(len(faults), proofview.StillEmpty(d.v.Typed)), http.StatusUnprocessableEntity
	case errors.As(err, &refused):
		d.v.NoWho, d.status = refused.Text(), http.StatusUnprocessableEntity
	case errors.As(err, &stale):
		d.v.Stale, d.status = true, http.StatusConflict
	case errors.As(err, &failure):
		d.v.Failure, d.status = failure.Text, http.StatusServiceUnavailable
	case err != nil:
		return studyError(err)
	default:
		return seeOther(w, r, studyPath(d.id, k.ID))
	}
	return s.studyPage(w, r, d)
}

// studyPage answers with the page of a study.
func (s *site) studyPage(w http.ResponseWriter, r *http.Request, d *studyDesk) error {
	a, err := s.against(r.Context(), d.id, d.draft)
	if err != nil {
		return err
	}
	t := titleOf(a.head)
	v := &d.v
	v.Title, v.Plan, v.Letter, v.Result = page.Title{Address: t.Address, Name: t.Name, Number: t.Number}, planPath(d.id, ""), a.letter, a.result
	if v.Title.Name == "" {
		v.Title.Name = say.NewPlan()
	}
	s.judge(d, a)
	if v.Upload == nil && !v.Signed() && !v.Posted && v.Kind != proving.Event {
		v.Upload = &page.Upload{}
	}
	if err := s.drawStudy(d, a); err != nil {
		return err
	}
	if v.Signed() && v.ReplacedBy == "" {
		if v.Adopt, err = s.offers(r.Context(), d, a); err != nil {
			return err
		}
	}
	d.links(a)
	w.Header().Add("Vary", partHeader)
	if d.cards {
		return s.cards(w, r, d, a)
	}
	if d.part {
		return show(w, r, d.status, page.StudyBody(v.Page(assets.provingPage())))
	}
	foot, err := s.provingFoot(r.Context(), d.id, a)
	if err != nil {
		return err
	}
	return show(w, r, d.status, page.StudyOf(v.Page(assets.provingPage().With(foot))))
}

// headFaulty tells whether the head of a study cannot be read, so that nothing is said of it.
func headFaulty(faults proving.TypedFaults) bool {
	for _, f := range faults {
		if f.Row == 0 && f.Field != "taken_at" && f.Field != "rows" {
			return true
		}
	}
	return false
}

// links are to what else can be had of a study.
func (d *studyDesk) links(a against) {
	v := &d.v
	if len(a.issued) > 0 {
		if d.draft {
			v.Others = append(v.Others, page.Link{Address: v.Address, Text: sayProof.HoldAgainst(a.issued[0].Letter)})
		} else if a.letter != "" {
			v.Others = append(v.Others, page.Link{Address: v.Address + "?against=" + againstDraft, Text: sayProof.HoldAgainst("")})
		}
	}
	if len(v.Faults) == 0 && v.Rows() > 0 {
		at := planPath(d.id, "studies/"+v.ID)
		v.Others = append(v.Others, page.Link{Address: at + ".csv", Text: sayProof.AsFile("CSV")}, page.Link{Address: at + ".json", Text: sayProof.AsFile("JSON")})
	}
	if v.Kind == proving.Samples && !v.Signed() && !v.Posted {
		v.Others = append(v.Others, page.Link{Address: v.Address + "/cards", Text: sayProof.OnAPhone()})
	}
}
