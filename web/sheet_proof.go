package web

import (
	"errors"
	"net/http"
	"slices"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/draw/paper"
	"ramplan/press/proving"
)

// recordAsked tells whether a request wants the proof of the station behind the sheet.
func recordAsked(r *http.Request) bool {
	return slices.Contains(r.URL.Query()["behind"], paper.RecordPage)
}

// proofOf is what the studies of a plan say of a state of it today; nil where that is not
// asked.
func (s *site) proofOf(r *http.Request, id archive.ID, plan *press.Plan, asked bool) (*paper.Proof, error) {
	if !asked {
		return nil, nil
	}
	studies, err := s.store.CountingStudies(r.Context(), id)
	out := &paper.Proof{Studies: studies}
	if damaged := (*archive.Damaged)(nil); errors.As(err, &damaged) {
		out, err = &paper.Proof{Damaged: true}, nil
	}
	if err != nil {
		return nil, err
	}
	out.Assessment = proving.Assess(press.Evaluate(plan), out.Studies, today())
	return out, nil
}
