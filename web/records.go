package web

import (
	"bytes"
	"context"
	"net/http"
	"strconv"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/draw"
	"ramplan/press/draw/paper"
	"ramplan/press/drill"
	"ramplan/press/issue"
	"ramplan/press/training"
	"ramplan/web/page"
	"ramplan/web/view"
)

// recordRoutes are those of who was trained.
func (s *site) recordRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/plans/{id}/records", answer(s.showRecords))             // of a station
	r.Method(http.MethodPost, "/plans/{id}/records", answer(s.takeCode))               // one more, from a code
	r.Method(http.MethodGet, "/plans/{id}/records.csv", answer(s.sendRecords))         // as a table
	r.Method(http.MethodGet, "/records/{record}", answer(s.showRecord))                // one, also of a plan that is gone
	r.Method(http.MethodGet, "/records/{record}/sheet.{format}", answer(s.signRecord)) // to be signed
	r.Method(http.MethodGet, "/people", answer(s.showPeople))                          // everybody, or one person's records
	r.Method(http.MethodPost, "/people", answer(s.removePerson))                       // for good
	r.Method(http.MethodGet, "/people.csv", answer(s.sendPerson))                      // everybody's or one person's records as a table
}

func recordPath(id training.ID) string {
	return "/records/" + strconv.FormatInt(int64(id), 10)
}

// showRecords answers GET /plans/{id}/records.
func (s *site) showRecords(w http.ResponseWriter, r *http.Request) error {
	return s.records(w, r, http.StatusOK, page.CodeForm{})
}

// records shows a station's records, with a code as it was typed and what is wrong
// with it.
func (s *site) records(w http.ResponseWriter, r *http.Request, status int, typed page.CodeForm) error {
	head, err := s.planHead(r)
	if err != nil {
		return err
	}
	id := head.ID
	s.endLeft(r.Context())
	all, err := s.store.Trainings(r.Context(), id)
	if err != nil {
		return err
	}
	on, err := s.counting(r.Context(), head)
	if err != nil {
		return err
	}
	v := view.Records{Title: titleOf(head), Plan: planPath(id, ""), All: s.viewTrainings(r.Context(), all)}
	if len(on.letters) > 0 {
		v.Letter, v.Same = on.letters[0], on.letters[1:]
	}
	if len(on.counts) > 0 {
		due := dueByExam(all, on.counts)
		for _, role := range drill.Roles {
			list := s.viewTrainings(r.Context(), due[role])
			for i, t := range due[role] {
				list[i].Again = on.why(t)
			}
			v.Due = append(v.Due, view.Due{Exam: string(role), All: list})
		}
	}
	p := v.Page(assets.drillPage().With(plainFoot(head.Draft, say.TrainingRecords(standingDigest(head.Draft)))))
	p.Code = typed
	if p.UnderWay, err = s.underWay(r.Context(), id); err != nil {
		return err
	}
	return show(w, r, status, page.RecordsOf(p))
}

func (s *site) viewTrainings(ctx context.Context, all []training.Record) []view.Training {
	var out []view.Training
	became := map[archive.ID][]issue.Revision{}
	for _, t := range all {
		out = append(out, view.Training{Record: t, Address: recordPath(t.ID), Station: planPath(t.Plan, "records"), Became: s.became(ctx, t, became)})

	}
	return out
}

// became gives the letter of the revision that is, to the last figure, what was a
// draft when somebody was examined on it; empty without. What was issued is read once
// a plan.
func (s *site) became(ctx context.Context, t training.Record, issued map[archive.ID][]issue.Revision) string {
	list, read := issued[t.Plan]
	if !read {
		list, _ = s.store.Revisions(ctx, t.Plan) // a plan that is gone has none
		issued[t.Plan] = list
	}
	return becameOf(t, list)
}

// becameOf finds that letter among the revisions of a plan.
func becameOf(t training.Record, issued []issue.Revision) string {
	letter := ""
	if t.Revision != "" || t.Damaged {
		return letter
	}
	for _, rev := range issued { // the newest first: the oldest of them is what it became
		if rev.PlanDigest == t.Digest {
			letter = rev.Letter
		}
	}
	return letter
}

// recordOf finds the record that a request names.
func (s *site) recordOf(r *http.Request) (training.Record, error) {
	n, err := strconv.ParseInt(chi.URLParam(r, "record"), 10, 64)
	if err == nil {
		var t training.Record
		if t, err = s.store.TrainingOf(r.Context(), training.ID(n)); err == nil {
			return t, nil
		}
		if asRefusal(err).status != http.StatusNotFound {
			return t, err
		}
	}
	return training.Record{}, refusal{http.StatusNotFound, say.NoSuchRecord(), []string{say.RecordMayBeRemoved()}}
}

// missed says what somebody missed: as the record has it in words, or, in a record
// of an older program, by the plan of that time where it is still at hand.
func (s *site) missed(ctx context.Context, t training.Record) []training.Miss {
	if len(t.Misses) == 0 && len(t.Missed) > 0 {
		return view.ItemTitles(s.planOfThen(ctx, t), t.Missed, t.Seed)
	}
	return t.Misses
}

func (s *site) planOfThen(ctx context.Context, t training.Record) *press.Plan {
	if t.Revision != "" {
		if rev, err := s.store.Revision(ctx, t.Plan, t.Revision); err == nil && rev.PlanDigest == t.Digest {
			return rev.Plan
		}
		return nil
	}
	head, err := s.store.Get(ctx, t.Plan)
	if err != nil {
		return nil
	}
	if plan, _ := head.Draft.Check(); plan != nil && plan.Digest() == t.Digest {
		return plan
	}
	return nil
}

// showRecord answers GET /records/{record}.
func (s *site) showRecord(w http.ResponseWriter, r *http.Request) error {
	t, err := s.recordOf(r)
	if err != nil {
		return err
	}
	t.Misses = s.missed(r.Context(), t)
	v := view.Record{Training: s.viewTrainings(r.Context(), []training.Record{t})[0]}
	return show(w, r, http.StatusOK, page.RecordOf(v.Page(assets.drillPage().With(printedToday(say.TrainingRecordOf(t.Who))))))
}

// signRecord answers GET /records/{record}/sheet.{format}.
func (s *site) signRecord(w http.ResponseWriter, r *http.Request) error {
	t, err := s.recordOf(r)
	if err != nil {
		return err
	}
	kind, known := fileTypes[chi.URLParam(r, "format")]
	if !known {
		return notFound(w, r)
	}
	if t.Damaged {
		return refusal{http.StatusConflict, say.RecordDamaged(), nil}
	}
	t.Misses = s.missed(r.Context(), t)
	record := paper.Record{Record: t, As: s.became(r.Context(), t, map[archive.ID][]issue.Revision{})}
	var b bytes.Buffer
	err = board.take(r.Context(), func() error {
		return paper.NewRecord(record, draw.Options{}).Write(&b, chi.URLParam(r, "format"))
	})
	if err != nil {
		return err
	}
	h := w.Header()
	h.Set("Content-Type", kind)
	h.Set("Cache-Control", "private, no-cache")
	h.Set("Content-Disposition", `inline; filename="training-`+strconv.FormatInt(int64(t.ID), 10)+"."+chi.URLParam(r, "format")+`"`)
	if kind == fileTypes["svg"] {
		h.Set("Content-Security-Policy", aloneSVG)
	}
	_, _ = w.Write(b.Bytes())
	return nil
}
