package web

import (
	"bytes"
	"context"
	"net/http"
	"slices"
	"strconv"
	"time"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/draw/paper"
	"ramplan/press/proving"
	"ramplan/press/words/proof"
	proofview "ramplan/web/view/proving"
)

// printChecks answers GET /plans/{id}/checks.pdf: the shift checks as a page to be signed, the
// first of them on top.
func (s *site) printChecks(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return err
	}
	checks, err := s.store.ShiftChecks(r.Context(), id)
	if err != nil {
		return err
	}
	slices.SortStableFunc(checks, func(a, b archive.KeptStudy) int { return a.SignedAt.Compare(b.SignedAt) })
	t := titleOf(head)
	h := paper.ShiftHistory{Number: t.Number, Name: t.Name, Day: say.Today()}
	predicted := predictions{}
	for _, k := range checks {
		if k.Study == nil { // damaged: nothing of it can be told
			continue
		}
		day := k.SignedAt.Local().Format(time.DateOnly)
		if h.From == "" {
			h.From = day
		}
		h.To = day
		h.Rows = append(h.Rows, shiftRows(k, s.pushesOf(r.Context(), k, predicted))...)
	}
	var b bytes.Buffer
	if err := board.take(r.Context(), func() error { return paper.NewShiftHistory(h).Write(&b, "pdf") }); err != nil {
		return err
	}
	header := w.Header()
	header.Set("Content-Type", fileTypes["pdf"])
	header.Set("Cache-Control", "private, no-cache")
	header.Set("Content-Disposition", `inline; filename="shift-checks-`+strconv.FormatInt(int64(id), 10)+`.pdf"`)
	_, _ = w.Write(b.Bytes())
	return nil
}

// predictions are the results of a plan's revisions by their letter; nil of one that can no longer be read.
type predictions map[string]*press.Result

// pushesOf are the pushes of a kept check, with what its revision predicts for each where its
// plan can still be read; none of a damaged one.
func (s *site) pushesOf(ctx context.Context, k archive.KeptStudy, predicted predictions) []proof.ShiftPushed {
	if k.Study == nil {
		return nil
	}
	result, known := predicted[k.Check.Letter]
	if !known {
		if rev, err := s.store.Revision(ctx, k.Plan, k.Check.Letter); err == nil && rev.Plan != nil {
			result = press.Evaluate(rev.Plan)
		}
		predicted[k.Check.Letter] = result
	}
	return proofview.PushesOf(result, k.Study)
}

// shiftRows are the pushes of one check on paper. What the plan does not tell goes by the check.
func shiftRows(k archive.KeptStudy, pushes []proof.ShiftPushed) []paper.ShiftRow {
	var out []paper.ShiftRow
	for _, x := range pushes {
		line := paper.ShiftRow{
			When: k.SignedAt.Local().Format("2006-01-02 15:04"), Who: k.SignedBy, Revision: k.Check.Letter, Sample: x.Sample,
			Predicted: say.LampsInBrief(x.WantArrival, x.WantZone), Came: say.LampsInBrief(x.Arrival, x.Zone), Passed: x.How == proving.Pass || x.How == proving.Open && k.Check.Passed == proving.Pass,
		}
		if x.First {
			line.Sample = sayProof.AtFirstLook(x.Sample)
		}
		out = append(out, line)
	}
	return out
}

// warned says what stands against a plan's station: that its last shift check failed, or that a
// crash was written down since the last that passed.
func (s *site) warned(ctx context.Context, id archive.ID) (string, error) {
	checks, err := s.store.ShiftChecks(ctx, id)
	if err != nil {
		return "", err
	}
	kept, err := s.store.Studies(ctx, id)
	if err != nil {
		return "", err
	}
	var failed, passed, crash time.Time
	for i, k := range checks { // the newest first
		if i == 0 && k.Check.Passed == proving.Fail {
			failed = k.SignedAt
		}
		if k.Check.Passed == proving.Pass && passed.IsZero() {
			passed = k.SignedAt
		}
	}
	for _, k := range kept {
		if k.Study == nil || k.Kind != proving.Event || k.Study.Event != proving.Crash || k.ReplacedBy != 0 {
			continue
		}
		if at := proving.LatestOf(k.Study, k.Changed); at.After(passed) && at.After(crash) {
			crash = at
		}
	}
	return sayProof.StationWarned(failed, crash), nil
}
