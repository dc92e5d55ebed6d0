package web

import (
	"bytes"
	"fmt"
	"io"
	"mime"
	"net/http"
	"strconv"
	"strings"
	"time"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/proving"
)

// studyType is the media type of a study that is sent to programs.
const studyType = `application/json; format="` + proving.Format + `"`

// studyRoutes are those by which programs read and post studies of a plan's station. People
// have the pages of proving.
func (s *site) studyRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/plans/{id}/studies", answer(s.listStudies))                // what is kept of the station
	r.Method(http.MethodPost, "/plans/{id}/studies", answer(s.postStudy))                 // a finished study, as of a data logger
	r.Method(http.MethodGet, "/plans/{id}/studies/{study}.{format}", answer(s.sendStudy)) // one, as JSON or CSV
	r.Method(http.MethodGet, "/plans/{id}/assessment", answer(s.showAssessment))          // the plan held against its studies
}

// A listedStudy is a study of a plan as programs read it.
type listedStudy struct {
	ID         archive.StudyID `json:"id"`
	Href       string          `json:"href"`
	CSV        string          `json:"csv"`
	Kind       string          `json:"kind"`
	TakenAt    *string         `json:"taken_at"` // as it was typed; null where it was not yet
	Digest     *string         `json:"study_digest"`
	Posted     bool            `json:"posted"`
	Signed     *time.Time      `json:"signed"`
	SignedBy   *string         `json:"signed_by"`
	Counts     bool            `json:"counts"` // the plan is judged with it
	Replaces   *string         `json:"replaces"`
	ReplacedBy *string         `json:"replaced_by"`
	Damaged    bool            `json:"damaged,omitempty"`
}

func studyAddress(plan archive.ID, id archive.StudyID, format string) string {
	return planPath(plan, "studies/"+strconv.FormatInt(int64(id), 10)+"."+format)
}

// orNull is a text, or nil for none.
func orNull(text string) *string {
	if text == "" {
		return nil
	}
	return &text
}

// listStudies answers GET /plans/{id}/studies.
func (s *site) listStudies(w http.ResponseWriter, r *http.Request) error {
	head, err := s.planHead(r)
	if err != nil {
		return err
	}
	if json := wantsJSON(w, r); acceptsHTML(r) && !json {
		return seeOther(w, r, planPath(head.ID, "proving"))
	}
	all, err := s.store.Studies(r.Context(), head.ID)
	if err != nil {
		return err
	}
	out := struct {
		Studies []listedStudy `json:"studies"`
	}{Studies: []listedStudy{}}
	address := func(id archive.StudyID) *string {
		if id == 0 {
			return nil
		}
		return orNull(studyAddress(head.ID, id, "json"))
	}
	for _, k := range all {
		one := listedStudy{
			ID: k.ID, Href: studyAddress(head.ID, k.ID, "json"), CSV: studyAddress(head.ID, k.ID, "csv"), Kind: k.Kind, Digest: orNull(k.Digest), Posted: k.Posted, SignedBy: orNull(k.SignedBy),
			Counts: k.Counts(), Replaces: address(k.Replaces), ReplacedBy: address(k.ReplacedBy), Damaged: k.Damaged,
		}
		if k.Typed != nil {
			one.TakenAt = orNull(strings.TrimSpace(k.Typed.Head("taken_at")))
		}
		if k.Signed() {
			one.Signed = &k.SignedAt
		}
		out.Studies = append(out.Studies, one)
	}
	return sendValue(w, http.StatusOK, out)
}

// postStudy answers POST /plans/{id}/studies with a study, JSON or a table of text.
func (s *site) postStudy(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	if bringsForm(r) {
		return refusal{http.StatusUnsupportedMediaType, say.SendTheStudy(), nil}
	}
	study, err := readStudy(r)
	if err != nil {
		return err
	}
	by := r.URL.Query().Get("by")
	if by == "" {
		by = study.TakenBy
	}
	k, err := s.store.PostStudy(r.Context(), id, study, by)
	if err == archive.ErrNotFound {
		return errNoPlan
	} else if err != nil {
		return studyError(err)
	}
	w.Header().Set("Location", studyAddress(id, k.ID, "json"))
	w.WriteHeader(http.StatusCreated)
	return nil
}

// readStudy reads a study from the body of a request: JSON where it says so, or begins as
// such; else a table.
func readStudy(r *http.Request) (*proving.Study, error) {
	data, err := io.ReadAll(r.Body)
	if err != nil {
		return nil, err
	}
	kind, _, _ := mime.ParseMediaType(r.Header.Get("Content-Type"))
	text := bytes.TrimLeft(bytes.TrimPrefix(data, []byte("\xef\xbb\xbf")), " \t\r\n")
	status := http.StatusUnprocessableEntity
	if len(data) > press.MaxBytes {
		status = http.StatusRequestEntityTooLarge
	}
	if kind != "text/csv" && (kind == "application/json" || strings.HasSuffix(kind, "+json") || bytes.HasPrefix(text, []byte("{"))) {
		study, faults := proving.Decode(data)
		if len(faults) > 0 {
			return nil, faulty{refusal{status, say.NoStudySent(), lines(faults)}, faults}
		}
		return study, nil
	}
	study, read := proving.ReadCSV(data)
	if !read.Sound() {
		e := faultyLines{refusal{status, say.NoStudySent(), nil}, read.Faults}
		for _, f := range read.Faults {
			e.refusal.hints = append(e.refusal.hints, f.String())
		}
		return nil, e
	}
	return study, nil
}

// faultyLines is a table that was sent and is refused with the faults of its lines.
type faultyLines struct {
	refusal
	faults []proving.Fault
}

func (e faultyLines) Unwrap() error { return e.refusal }

// sendStudy answers GET /plans/{id}/studies/{study}.{format}: as it was signed or posted, or,
// while it is typed, as it reads so far, if nothing is wrong with it.
func (s *site) sendStudy(w http.ResponseWriter, r *http.Request) error {
	plan, err := planID(r)
	if err != nil {
		return err
	}
	id, err := studyID(r)
	if err != nil {
		return err
	}
	k, err := s.store.Study(r.Context(), plan, id)
	if err != nil {
		return studyError(err)
	}
	study := k.Study
	switch {
	case k.Damaged:
		return refusal{http.StatusConflict, sayProof.DamagedStudy(), nil}
	case study == nil:
		var faults proving.TypedFaults
		if study, faults = k.Typed.Study(); len(faults) > 0 {
			return faulty{refusal{http.StatusUnprocessableEntity, say.StudyHalfTyped(), nil}, typedProblems(faults)}
		}
	}
	switch chi.URLParam(r, "format") {
	case "json":
		w.Header().Set("ETag", `"`+study.Digest()+`"`)
		return sendJSON(w, http.StatusOK, studyType, study.JSON())
	case "csv":
		sendCSV(w, fmt.Sprintf("study-%d-%s", id, study.Kind), study.CSV())
		return nil
	}
	return notFound(w, r)
}

// typedProblems are the faults of a typed study as a document has them.
func typedProblems(faults proving.TypedFaults) press.Problems {
	var out press.Problems
	for _, f := range faults {
		path := f.Field
		if f.Row > 0 {
			path = strings.TrimSuffix(fmt.Sprintf("rows[%d].%s", f.Row-1, f.Field), ".")
		}
		out = append(out, press.Problem{Path: path, Code: press.CodeSyntax, Message: f.Message})
	}
	return out
}

// showAssessment answers GET /plans/{id}/assessment: the newest issued revision, the one
// that of names, or the draft, held against the signed studies of the plan.
func (s *site) showAssessment(w http.ResponseWriter, r *http.Request) error {
	head, err := s.planHead(r)
	if err != nil {
		return err
	}
	on := r.URL.Query().Get("on")
	if on == "" {
		on = today()
	} else if _, err := time.Parse(time.DateOnly, on); err != nil {
		return faulty{refusal{http.StatusUnprocessableEntity, say.NoDayAsked(), nil}, press.Problems{{Path: "on", Code: press.CodeSyntax, Message: say.NoDayAsked()}}}
	}
	plan, err := s.assessed(r, head)
	if err != nil {
		return err
	}
	studies, err := s.store.CountingStudies(r.Context(), head.ID)
	if err != nil {
		return err
	}
	result := press.Evaluate(plan)
	a := proving.Assess(result, studies, on)
	sayProof.Explain(result, studies, a)
	return sendJSON(w, http.StatusOK, `application/json; format="`+proving.AssessmentFormat+`"`, a.JSON())
}

// assessed is the plan that an assessment is asked of.
func (s *site) assessed(r *http.Request, head archive.Head) (*press.Plan, error) {
	of := r.URL.Query().Get("of")
	if of == "" && head.Revision != "" {
		of = head.Revision
	}
	if of != "" && of != "draft" {
		rev, err := s.store.Revision(r.Context(), head.ID, of)
		if err == archive.ErrNotFound {
			return nil, refusal{http.StatusNotFound, say.NoSuchRevision(), nil}
		}
		return rev.Plan, err
	}
	plan, faults := head.Draft.Check()
	if plan == nil {
		return nil, faulty{refusal{http.StatusUnprocessableEntity, say.DraftHasNoResult(), lines(faults)}, faults}
	}
	return plan, nil
}
