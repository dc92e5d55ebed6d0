package web

import (
	"crypto/sha256"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/http"
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drafts"
)

// Media types of what is sent to programs: JSON, with the name of its format.
const (
	planType  = `application/json; format="` + press.Format + `"`
	draftType = `application/json; format="` + press.DraftFormat + `"`
)

// etag is the version of a draft as HTTP names it.
func etag(version int64) string { return `"` + strconv.FormatInt(version, 10) + `"` }

// sendDraft answers with a plan, or with the draft where it is none; with nothing
// where If-None-Match names the version that stands.
func sendDraft(w http.ResponseWriter, r *http.Request, head archive.Head, err error) error {
	if err != nil {
		return err
	}
	w.Header().Set("ETag", etag(head.Version))
	for _, tag := range tags(r, "If-None-Match") {
		if tag == "*" || strings.TrimPrefix(tag, "W/") == etag(head.Version) {
			w.Header().Set("Cache-Control", "no-cache")
			w.WriteHeader(http.StatusNotModified)
			return nil
		}
	}
	if plan, _ := head.Draft.Check(); plan != nil {
		return sendJSON(w, http.StatusOK, planType, plan.JSON())
	}
	return sendJSON(w, http.StatusOK, draftType, head.Draft.Encode())
}

func sendJSON(w http.ResponseWriter, status int, kind string, body []byte) error {
	h := w.Header()
	h.Set("Content-Type", kind)
	h.Set("Cache-Control", "no-cache")
	w.WriteHeader(status)
	_, _ = w.Write(body)
	return nil
}

func sendValue(w http.ResponseWriter, status int, v any) error {
	body, err := json.MarshalIndent(v, "", "  ")
	if err != nil {
		return err
	}
	return sendJSON(w, status, "application/json", append(body, '\n'))
}

// putPlan answers PUT /plans/{id}: another draft in place of the version that
// If-Match names.
func (s *site) putPlan(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	from, err := s.matched(r, id)
	if err != nil {
		return err
	}
	d, err := readDocument(r)
	if err != nil {
		return err
	}
	head, err := s.store.Save(r.Context(), id, archive.At(from), d, drafts.DidReplace)
	if err != nil {
		return asPrecondition(err)
	}
	w.Header().Set("ETag", etag(head.Version))
	w.WriteHeader(http.StatusNoContent)
	return nil
}

// deletePlan answers DELETE /plans/{id}: into the bin.
func (s *site) deletePlan(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	from, err := s.matched(r, id)
	if err != nil {
		return err
	}
	head, err := s.store.Bin(r.Context(), id, archive.At(from))
	if err != nil {
		return asPrecondition(err)
	}
	w.Header().Set("ETag", etag(head.Version))
	w.WriteHeader(http.StatusNoContent)
	return nil
}

// tags are what a header that names versions holds. No tag of this program has a
// comma in it.
func tags(r *http.Request, header string) []string {
	var out []string
	for _, line := range r.Header.Values(header) {
		for tag := range strings.SplitSeq(line, ",") {
			if tag = strings.TrimSpace(tag); tag != "" {
				out = append(out, tag)
			}
		}
	}
	return out
}

// matched gives the version that If-Match names: of several the one that stands.
func (s *site) matched(r *http.Request, id archive.ID) (int64, error) {
	named := tags(r, "If-Match")
	if len(named) == 0 {
		return 0, refusal{http.StatusPreconditionRequired, say.IfMatchNeeded(), nil}
	}
	if len(named) > 1 || named[0] == "*" {
		head, err := s.store.Get(r.Context(), id)
		var damaged *archive.Damaged
		if err != nil && !errors.As(err, &damaged) { // a whole one may take its place
			return 0, err
		}
		if slices.Contains(named, "*") || slices.Contains(named, etag(head.Version)) {
			return head.Version, nil
		}
	}
	version, err := strconv.ParseInt(strings.Trim(named[0], `"`), 10, 64)
	if err != nil || named[0] != etag(version) { // a weak one never matches
		return 0, refusal{http.StatusPreconditionFailed, say.IfMatchUnknown(), nil}
	}
	return version, nil
}

// precondition is a stale change as programs are told of it.
type precondition struct {
	refusal
	stale *archive.Stale
}

func (e precondition) Unwrap() []error { return []error{e.refusal, e.stale} }

func asPrecondition(err error) error {
	var stale *archive.Stale
	if errors.As(err, &stale) {
		return precondition{refusal{http.StatusPreconditionFailed, say.ChangedSinceVersion(), nil}, stale}
	}
	return err
}

// readDocument reads a plan or a draft from the body of a request.
func readDocument(r *http.Request) (*press.Draft, error) {
	data, err := io.ReadAll(r.Body)
	if err != nil {
		return nil, err
	}
	d, faults := decodeFile(data)
	if len(faults) > 0 {
		status := http.StatusUnprocessableEntity
		if faults[0].Code == press.CodeSize {
			status = http.StatusRequestEntityTooLarge
		}
		return nil, faulty{refusal{status, say.NeitherPlanNorDraft(), nil}, faults}
	}
	return d, nil
}

// showResult answers GET /plans/{id}/result.
func (s *site) showResult(w http.ResponseWriter, r *http.Request) error {
	head, err := s.planHead(r)
	if err != nil {
		return err
	}
	plan, faults := head.Draft.Check()
	if plan == nil {
		return faulty{refusal{http.StatusUnprocessableEntity, say.DraftHasNoResult(), lines(faults)}, faults}
	}
	result := press.Evaluate(plan)
	say.Explain(result)
	body, err := result.JSON(true)
	if err != nil {
		return err
	}
	// Of one draft another program may make another result: its name is its content.
	w.Header().Set("ETag", fmt.Sprintf(`"%.16x"`, sha256.Sum256(body)))
	return sendJSON(w, http.StatusOK, "application/json", body)
}
