package web

import (
	"context"
	"errors"
	"net/http"
	"time"

	"ramplan/press/archive"
	"ramplan/press/drill"
	"ramplan/press/training"
	"ramplan/press/words"
	"ramplan/web/page"
)

// codeFaults say why a code is not taken.
var codeFaults = []struct {
	err  error
	says string
}{
	{drill.ErrNoCode, words.NoCode},
	{drill.ErrCodeTyped, words.CodeTyped},
	{drill.ErrCodeSense, words.CodeSense},
}

// takeCode answers POST …/records: it makes a record of a code from another device.
func (s *site) takeCode(w http.ResponseWriter, r *http.Request) error {
	if err := r.ParseForm(); err != nil {
		return broken(err)
	}
	text := r.PostForm.Get("code")
	refuse := func(says string) error {
		if takesProblem(r) {
			return refusal{http.StatusUnprocessableEntity, says, nil}
		}
		return s.records(w, r, http.StatusUnprocessableEntity, page.CodeForm{Text: text, Fault: says})
	}
	code, err := drill.ParseCode(text)
	for _, f := range codeFaults {
		if errors.Is(err, f.err) {
			return refuse(f.says)
		}
	}
	if err != nil {
		return err
	}
	if day, _ := time.Parse(time.DateOnly, code.Day); day.After(s.desk.now().Add(24 * time.Hour)) { // that clock may be of another zone
		return refuse(words.CodeFromAfter)
	}
	head, err := s.planHead(r)
	if err != nil {
		return err
	}
	t, found, err := s.meant(r.Context(), head, code)
	if err != nil {
		return err
	}
	if !found {
		return refuse(words.CodeOther)
	}
	kept, err := s.store.KeepTraining(r.Context(), t)
	if errors.Is(err, training.ErrNobody) {
		return refuse(words.NoCode)
	}
	if err != nil {
		return err
	}
	return seeOther(w, r, recordPath(kept.ID))
}

// meant is the record of a code about a plan: of the revision that it names, or of a
// draft that is the working one, or became a revision. It is not found for any other.
func (s *site) meant(ctx context.Context, head archive.Head, c drill.Code) (training.Record, bool, error) {
	t := training.Record{
		Plan: head.ID, Sitting: training.TypedInSitting(c.Key()), Who: c.Who, Exam: string(c.Role), Seed: c.Seed,
		Items: c.Items, Right: c.Right, Needed: c.Needed, Took: c.Took, OverTime: c.OverTime, Passed: c.Passed,
	}
	if c.Level > 0 {
		t.Exam = training.PracticeExam
	} else {
		rules := drill.UsualRules(c.Seed)
		t.Pass, t.Limit = rules.Pass, rules.Limit
	}
	if c.Grave {
		t.Grave = []string{words.GraveByCode}
	}
	title := titleOf(head)
	t.Name, t.Number = title.Name, title.Number
	fits := func(digest string) bool { return words.ShortDigest(digest) == c.Digest }
	issued, err := s.store.Revisions(ctx, head.ID)
	if err != nil {
		return t, false, err
	}
	for _, rev := range issued {
		if fits(rev.PlanDigest) && (c.Revision == rev.Letter || c.Revision == "") {
			t.Revision, t.Digest = c.Revision, rev.PlanDigest
			if rev.Plan != nil {
				t.Name, t.Number = rev.Plan.Title.Name, rev.Plan.Title.Number
			}
			return t, true, nil
		}
	}
	if plan, _ := head.Draft.Check(); plan != nil && c.Revision == "" && fits(plan.Digest()) {
		t.Digest, t.Name, t.Number = plan.Digest(), plan.Title.Name, plan.Title.Number
		return t, true, nil
	}
	return t, false, nil
}
