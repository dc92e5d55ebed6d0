package web

import (
	"context"
	"errors"
	"net/http"
	"strconv"
	"strings"
	"time"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/issue"
	"ramplan/press/proving"
	"ramplan/press/words/proof"
	"ramplan/web/page"
	proofview "ramplan/web/view/proving"
)

// sayProof writes what the server answers about studies, in metric English.
var sayProof proof.Words

// provingRoutes are those by which the station of a plan is proved.
func (s *site) provingRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/plans/{id}/proving", answer(s.showProving))             // what is needed, what is there, what it says, what is open
	r.Method(http.MethodPost, "/plans/{id}/proving", answer(s.changeProving))          // a new study, or an event
	r.Method(http.MethodGet, "/plans/{id}/proving/{study}", answer(s.showStudy))       // one study: its table, and what it says
	r.Method(http.MethodPost, "/plans/{id}/proving/{study}", answer(s.changeStudy))    // what was typed, and what a button wants of it
	r.Method(http.MethodGet, "/plans/{id}/proving/{study}/cards", answer(s.showCards)) // its pushes one by one, for a phone at the station
	r.Method(http.MethodGet, "/plans/{id}/proving/{study}/drawings/{what}.{format}", answer(s.sendStudyDrawing))
}

// today is the day for which the state of a station is asked.
func today() string { return time.Now().UTC().Format(time.DateOnly) }

// thisMinute is when a study or an event begins to be typed: with the time of day, or nobody
// could tell which of two on one day came first.
func thisMinute() string { return time.Now().Format("2006-01-02T15:04:05Z07:00") }

// against is what the studies of a plan are held against: the newest issued revision, or the
// draft where nothing was issued or that is asked for.
type against struct {
	head   archive.Head
	letter string // empty: the draft
	plan   *press.Plan
	result *press.Result // nil where nothing is sound
	issued []issue.Revision
}

func (s *site) against(ctx context.Context, id archive.ID, draft bool) (against, error) {
	head, err := s.store.Get(ctx, id)
	if err != nil {
		return against{}, err
	}
	a := against{head: head}
	if a.issued, err = s.store.Revisions(ctx, id); err != nil {
		return a, err
	}
	if len(a.issued) > 0 && !draft && a.issued[0].Plan != nil {
		a.letter, a.plan = a.issued[0].Letter, a.issued[0].Plan
	} else if a.plan, _ = head.Draft.Check(); a.plan == nil {
		if a.plan, err = s.store.LastPlan(ctx, id, head.State); err != nil {
			return a, err
		}
	}
	if a.plan != nil {
		a.result = press.Evaluate(a.plan)
	}
	return a, nil
}

func studyPath(id archive.ID, study archive.StudyID) string {
	return planPath(id, "proving/"+strconv.FormatInt(int64(study), 10))
}

// viewKept is a study as the pages take it.
func viewKept(id archive.ID, k archive.KeptStudy) proofview.Kept {
	out := proofview.Kept{
		ID: strconv.FormatInt(int64(k.ID), 10), Address: studyPath(id, k.ID), Kind: k.Kind, Posted: k.Posted, Changed: k.Changed, Version: strconv.FormatInt(k.Version, 10),
		Typed: k.Typed, Study: k.Study, SignedAt: k.SignedAt, SignedBy: k.SignedBy, Digest: k.Digest, Damaged: k.Damaged,
	}
	if k.Replaces != 0 {
		out.Replaces = studyPath(id, k.Replaces)
	}
	if k.ReplacedBy != 0 {
		out.ReplacedBy = studyPath(id, k.ReplacedBy)
	}
	if out.Typed == nil {
		out.Typed = proving.NewTyped(k.Kind)
	}
	return out
}

// showProving answers GET /plans/{id}/proving.
func (s *site) showProving(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	return s.overview(w, r, id, http.StatusOK, proofview.Overview{})
}

// overview shows the page, with what was typed into its forms and what is wrong with that.
func (s *site) overview(w http.ResponseWriter, r *http.Request, id archive.ID, status int, o proofview.Overview) error {
	ctx := r.Context()
	a, err := s.against(ctx, id, false)
	if err != nil {
		return err
	}
	kept, err := s.store.Studies(ctx, id)
	if err != nil {
		return err
	}
	t := titleOf(a.head)
	o.Title, o.Address, o.Letter, o.Result = page.Title{Address: t.Address, Name: t.Name, Number: t.Number}, planPath(id, ""), a.letter, a.result
	if o.Title.Name == "" {
		o.Title.Name = say.NewPlan()
	}
	var studies []*proving.Study
	for i, k := range kept {
		o.Kept = append(o.Kept, viewKept(id, k))
		if k.Counts() {
			studies, o.Counted = append(studies, k.Study), append(o.Counted, i)
		}
	}
	if a.result != nil {
		o.Found = proving.Assess(a.result, studies, today())
		for i, at := range o.Counted {
			o.Kept[at].Judged = &o.Found.Studies[i]
		}
	}
	if o.Event.When == "" {
		o.Event.When = thisMinute()
	}
	if o.Checks, err = s.stationChecks(ctx, id, a); err != nil {
		return err
	}
	foot, err := s.provingFoot(ctx, id, a)
	if err != nil {
		return err
	}
	return show(w, r, status, page.ProvingOf(o.Page(assets.provingPage().With(foot))))
}

// provingFoot stands at the foot of what a browser prints of studies: what they are held
// against.
func (s *site) provingFoot(ctx context.Context, id archive.ID, a against) (string, error) {
	if a.letter != "" {
		return s.issuedFoot(ctx, id, a.issued[0], a.result)
	}
	return draftFoot(a.head.Draft, a.plan, a.result, false), nil
}

// changeProving answers POST /plans/{id}/proving: it begins a study, reads one in, or says or keeps
// what happened.
func (s *site) changeProving(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	f, err := readStudyForm(r)
	if err != nil {
		return err
	}
	switch verb, rest, _ := strings.Cut(f.do, " "); verb {
	case "start":
		return s.startStudy(w, r, id, rest)
	case "read":
		return s.readStudy(w, r, id, f)
	case "event", "change", "keep":
		return s.happened(w, r, id, f, verb)
	}
	return unknownCommand(f.do)
}

// startStudy begins a study of a kind.
func (s *site) startStudy(w http.ResponseWriter, r *http.Request, id archive.ID, kind string) error {
	a, err := s.against(r.Context(), id, false)
	if err != nil {
		return err
	}
	typed := proofview.Begun(kind, thisMinute(), a.letter, a.result)
	if typed == nil {
		return unknownCommand("start " + kind)
	}
	k, err := s.store.StartStudy(r.Context(), id, kind, typed)
	if err != nil {
		return studyError(err)
	}
	return seeOther(w, r, studyPath(id, k.ID))
}

// readStudy makes a new study of a table of text.
func (s *site) readStudy(w http.ResponseWriter, r *http.Request, id archive.ID, f *studyForm) error {
	text := f.table()
	if strings.TrimSpace(text) == "" {
		return s.overview(w, r, id, http.StatusUnprocessableEntity, proofview.Overview{Upload: page.Upload{Open: true, Faults: []string{sayProof.NothingToReadIn()}}})
	}
	typed, lines := proving.ReadTyped([]byte(text))
	if typed == nil {
		return s.overview(w, r, id, http.StatusUnprocessableEntity, proofview.Overview{Upload: page.Upload{Open: true, Text: text, Faults: lines.Errors(f.fileName())}})
	}
	k, err := s.store.StartStudy(r.Context(), id, typed.Kind, typed)
	if err != nil {
		return studyError(err)
	}
	return seeOther(w, r, studyPath(id, k.ID)+"?"+justRead)
}

// justRead is in the address of a study that was read in just now.
const justRead = "read"

// studyError is what is answered for an error of the archive about a study.
func studyError(err error) error {
	var refused archive.StudyRefused
	var stale *archive.StaleStudy
	switch {
	case errors.Is(err, archive.ErrNotFound):
		return refusal{http.StatusNotFound, sayProof.NoStudy(), nil}
	case errors.As(err, &refused):
		return refusal{http.StatusUnprocessableEntity, refused.Text(), nil}
	case errors.As(err, &stale):
		return refusal{http.StatusConflict, stale.Text(), nil}
	}
	return err
}

// provingPage gives the addresses of what the pages of studies load.
func (l library) provingPage() page.Assets {
	a := l.plainPage()
	a.Styles = append(a.Styles, l.address("css/shelf.css"), l.address("css/sheet.css"), l.address("css/proving.css"))
	a.Scripts = []string{l.address("js/proving.js")}
	return a
}
