package web

import (
	"context"
	"errors"
	"net/http"
	"slices"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/draw/paper"
	"ramplan/press/proving"
	"ramplan/press/words/proof"
)

// recordAsked tells whether a request wants the proof of the station behind the sheet.
func recordAsked(r *http.Request) bool {
	return slices.Contains(r.URL.Query()["behind"], paper.RecordPage)
}

// proofOf is what the studies of a plan say today of its draft, or of the revision of a letter, and
// what that took over from studies; nil where that is not asked.
func (s *site) proofOf(r *http.Request, id archive.ID, letter string, plan *press.Plan, asked bool) (*paper.Proof, error) {
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
	if recordAsked(r) {
		out.Adopted, err = s.adopted(r.Context(), id, letter, plan)
	}
	return out, err
}

// adopted is what the draft of a plan, or a revision of it, took over from studies, as far as its
// history tells.
func (s *site) adopted(ctx context.Context, id archive.ID, letter string, plan *press.Plan) ([]proof.Adoption, error) {
	steps, draft, err := s.store.StepsTo(ctx, id, letter, proof.Took)
	var takings []proof.Taking
	for _, st := range steps {
		takings = append(takings, proof.Taking{At: st.At, Did: st.Did, Was: st.Was, Is: st.Draft})
	}
	return sayProof.Adoptions(plan, takings, draft), err
}
