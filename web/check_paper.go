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
	predicted := map[string]*press.Result{} // by the letter of the revision
	for _, k := range checks {
		if k.Study == nil { // damaged: nothing of it can be told
			continue
		}
		day := k.SignedAt.Local().Format(time.DateOnly)
		if h.From == "" {
			h.From = day
		}
		h.To = day
		h.Rows = append(h.Rows, s.shiftRows(r.Context(), id, k, predicted)...)
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

// shiftRows are the pushes of one check, with what the revision predicts for each where its
// plan can still be read.
func (s *site) shiftRows(ctx context.Context, id archive.ID, k archive.KeptStudy, predicted map[string]*press.Result) []paper.ShiftRow {
	result, known := predicted[k.Check.Letter]
	if !known {
		if rev, err := s.store.Revision(ctx, id, k.Check.Letter); err == nil && rev.Plan != nil {
			result = press.Evaluate(rev.Plan)
		}
		predicted[k.Check.Letter] = result
	}
	var found []proving.SampleRow
	if result != nil {
		if q, ok := proving.Assess(result, []*proving.Study{k.Study}, today()).Studies[0].Result.(*proving.SamplesResult); ok {
			found = q.Rows
		}
	}
	var out []paper.ShiftRow
	for i, row := range k.Study.Rows {
		line := paper.ShiftRow{
			When: k.SignedAt.Local().Format("2006-01-02 15:04"), Who: k.SignedBy, Revision: k.Check.Letter, Sample: row.Sample,
			Predicted: say.LampsInBrief(nil, nil), Came: say.LampsInBrief(row.Arrival, row.Zone), Passed: k.Check.Passed == proving.Pass,
		}
		if i < len(found) {
			line.Predicted = say.LampsInBrief(found[i].Arrival, found[i].Zone)
			line.Passed = found[i].Lamps != proving.Fail && (found[i].Reading == nil || *found[i].Reading != proving.Fail)
		}
		out = append(out, line)
	}
	return out
}
