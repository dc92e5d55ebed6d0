package web

import (
	"encoding/json"
	"errors"
	"net/http"
	"net/url"
	"strings"
	"time"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drafts"
	"ramplan/press/issue"
	"ramplan/web/page"
	"ramplan/web/view"
)

// showRevisions answers GET /plans/{id}/revisions: those that were issued, and
// what it takes to issue the next.
func (s *site) showRevisions(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	if wantsJSON(w, r) {
		return s.listRevisions(w, r, id)
	}
	return s.revisions(w, r, id, nil, nil)
}

// justIssued names, in the address of the page, the revision that was issued just now.
const justIssued = "issued"

// revisions shows the page: with what was typed into its form, and why that was
// not issued.
func (s *site) revisions(w http.ResponseWriter, r *http.Request, id archive.ID, typed map[string]string, faults press.Problems) error {
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return err
	}
	issued, err := s.store.Revisions(r.Context(), id)
	if err != nil {
		return err
	}
	v := view.Revisions{Title: titleOf(head), Address: planPath(id, ""), Version: head.Version, Next: issue.Letter(len(issued) + 1), Typed: typed, Faults: faults}
	for _, rev := range issued {
		v.Issued = append(v.Issued, viewRevision(rev))
	}
	if len(issued) > 0 && r.URL.Query().Get(justIssued) == issued[0].Letter {
		v.Just = issued[0].Letter
	}
	v.Draft = head.Draft
	plan, wrong := head.Draft.Check()
	v.Unsound = len(wrong)
	if plan != nil {
		v.Plan, v.Result = plan, press.Evaluate(plan)
		if len(issued) > 0 && issued[0].Plan != nil {
			asked := issue.AskedOf(issued[0].Plan, plan)
			v.Asked = &asked
		}
		v.Same = len(issued) > 0 && issued[0].PlanDigest == v.Result.PlanDigest()
		stands := issue.StandingOf(v.Result)
		v.Physical, v.Others = stands.Physical, stands.Others
	}
	status := http.StatusOK
	if len(faults) > 0 {
		status = http.StatusUnprocessableEntity
	}
	return show(w, r, status, page.RevisionsOf(v.Page(assets.shelfPage().With(plainFoot(head.Draft, "revisions")))))
}

func viewRevision(r issue.Revision) view.Revision {
	return view.Revision{Letter: r.Letter, At: r.At, Prepared: r.Prepared, Checked: r.Checked, Approved: r.Approved, Reason: r.Reason, Despite: r.Despite, Second: r.Second, Drill: r.Drill, Digest: r.PlanDigest, Damaged: r.Damaged, Faults: r.Faults, Readable: r.Document != nil}
}

// issue answers POST /plans/{id}/revisions.
func (s *site) issue(w http.ResponseWriter, r *http.Request) error {
	id, p, err := planForm(r)
	if err != nil {
		return err
	}
	said := func(path string) string { return strings.TrimSpace(p.signed[path]) }
	before, err := s.store.Revisions(r.Context(), id)
	if err != nil {
		return err
	}
	if len(before) > 0 && said(issue.PathDrill) == "" {
		return s.revisions(w, r, id, p.signed, press.Problems{{Path: issue.PathDrill, Code: press.CodeRequired, Message: say.SayWhetherDrillConcerned()}})
	}
	rev, err := s.store.Issue(r.Context(), id, archive.At(p.version), issue.Signed{
		Prepared: said(issue.PathPrepared), Checked: said(issue.PathChecked), Approved: said(issue.PathApproved),
		Reason: said(issue.PathReason), Despite: said(issue.PathDespite), Second: said(issue.PathSecond), Drill: said(issue.PathDrill),
	})
	var refused *issue.Refused
	var stale *archive.Stale
	switch {
	case errors.As(err, &refused):
		return s.revisions(w, r, id, p.signed, refused.Problems)
	case errors.As(err, &stale):
		return s.revisions(w, r, id, p.signed, press.Problems{{Code: press.CodeConflict, Message: say.ChangedSinceOpenedIssue()}})
	case err != nil:
		return err
	}
	return seeOther(w, r, planPath(id, "revisions")+"?"+url.Values{justIssued: {rev.Letter}}.Encode())
}

// startAgain answers POST /plans/{id}/revisions/{letter}: the revision's plan
// becomes the draft, as one state more.
func (s *site) startAgain(w http.ResponseWriter, r *http.Request) error {
	id, p, err := planForm(r)
	if err != nil {
		return err
	}
	if p.do != "draft" {
		return unknownCommand(p.do)
	}
	rev, err := s.anyRevision(r.Context(), id, chi.URLParam(r, "letter"))
	if err != nil {
		return err
	}
	if _, err := s.store.Save(r.Context(), id, archive.At(p.version), rev.Document.Draft(), drafts.DidAgain(rev.Letter)); err != nil {
		return err
	}
	return seeOther(w, r, planPath(id, ""))
}

// A signature is an issued revision as programs read it.
type signature struct {
	Format     string          `json:"format"`
	Letter     string          `json:"letter"`
	Issued     time.Time       `json:"issued"`
	PreparedBy string          `json:"prepared_by"`
	CheckedBy  string          `json:"checked_by"`
	ApprovedBy string          `json:"approved_by"`
	Reason     string          `json:"reason"`
	Despite    string          `json:"despite_blockers"`
	SecondName string          `json:"second_name"`
	Drill      string          `json:"drill,omitempty"`
	PlanDigest string          `json:"plan_digest"`
	Damaged    bool            `json:"damaged,omitempty"`
	Faults     press.Problems  `json:"faults,omitempty"` // why today's rules do not take it, though it is what was issued
	Href       string          `json:"href"`
	Plan       json.RawMessage `json:"plan,omitempty"`
}

func signatureOf(id archive.ID, r issue.Revision) signature {
	return signature{
		Format: "ramplan.revision/1", Letter: r.Letter, Issued: r.At, PreparedBy: r.Prepared, CheckedBy: r.Checked, ApprovedBy: r.Approved,
		Reason: r.Reason, Despite: r.Despite, SecondName: r.Second, Drill: r.Drill, PlanDigest: r.PlanDigest, Damaged: r.Damaged, Faults: r.Faults, Href: planPath(id, "revisions/"+r.Letter),
	}
}

func (s *site) listRevisions(w http.ResponseWriter, r *http.Request, id archive.ID) error {
	if _, err := s.store.Get(r.Context(), id); errors.Is(err, archive.ErrNotFound) {
		return err
	}
	issued, err := s.store.Revisions(r.Context(), id)
	if err != nil {
		return err
	}
	out := struct {
		Revisions []signature `json:"revisions"`
	}{[]signature{}}
	for _, rev := range issued {
		out.Revisions = append(out.Revisions, signatureOf(id, rev))
	}
	return sendValue(w, http.StatusOK, out)
}

// showRevision answers GET /plans/{id}/revisions/{letter}.
func (s *site) showRevision(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	if wantsJSON(w, r) {
		rev, err := s.anyRevision(r.Context(), id, chi.URLParam(r, "letter"))
		if err != nil {
			return err
		}
		out := signatureOf(id, rev)
		out.Plan = rev.Document.JSON()
		return sendValue(w, http.StatusOK, out)
	}
	rev, err := s.revision(r.Context(), id, chi.URLParam(r, "letter"))
	if err != nil {
		return err
	}
	result := press.Evaluate(rev.Plan)
	drawings, err := drawn(rev.Plan, result, "")
	if err != nil {
		return err
	}
	head, err := s.store.Get(r.Context(), id)
	var damaged *archive.Damaged
	if err != nil && !errors.As(err, &damaged) {
		return err
	}
	all, err := s.store.Revisions(r.Context(), id)
	if err != nil {
		return err
	}
	v := view.Issued{Address: planPath(id, ""), Revision: viewRevision(rev), Plan: rev.Plan, Result: result, Drawings: drawings, Version: head.Version, Last: viewRevision(all[0])}
	if head.Draft != nil {
		plan, _ := head.Draft.Check()
		v.IsDraft = plan != nil && plan.Digest() == rev.PlanDigest
	}
	foot, err := s.issuedFoot(r.Context(), id, rev, result)
	if err != nil {
		return err
	}
	return show(w, r, http.StatusOK, page.IssuedOf(v.Page(assets.shelfPage().With(foot))))
}
