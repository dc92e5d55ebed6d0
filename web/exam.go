package web

import (
	"context"
	chance "math/rand/v2"
	"net/http"
	"slices"
	"strconv"

	"github.com/go-chi/chi/v5"

	"ramplan/press/archive"
	"ramplan/press/drill"
	"ramplan/web/page"
	"ramplan/web/view"
)

// beginExam answers POST …/drill/exam.
func (d drilling) beginExam(w http.ResponseWriter, r *http.Request) error {
	if !bringsForm(r) {
		return errNoForm
	}
	if err := r.ParseForm(); err != nil {
		return broken(err)
	}
	if d.D == nil {
		return d.home(w, r, http.StatusUnprocessableEntity, page.ExamForm{})
	}
	who := archive.PersonName(r.PostForm.Get("who"))
	fresh, err := d.freshSeed(r.Context())
	if err != nil {
		return err
	}
	typed, rules := view.ExamRules(r.PostForm.Get, fresh)
	if who == "" {
		typed.WhoFault = "A name or number is needed, of " + strconv.Itoa(archive.MaxWho) + " characters at most."
	}
	if typed.Wrong() {
		return d.home(w, r, http.StatusUnprocessableEntity, typed)
	}
	x, err := d.D.NewExam(rules)
	if err != nil {
		return err
	}
	s, err := d.begin(r.Context(), who, x)
	if err != nil {
		return err
	}
	return seeOther(w, r, planPath(d.id, "drill/exam/"+s.id))
}

// freshSeed draws a seed that nobody has handed in yet on this plan.
func (d drilling) freshSeed(ctx context.Context) (uint64, error) {
	all, err := d.site.store.Trainings(ctx, d.id)
	for {
		seed := 1 + chance.Uint64N(999_999_999)
		if !slices.ContainsFunc(all, func(t archive.Training) bool { return t.Seed == seed }) {
			return seed, err
		}
	}
}

// showExam answers GET …/drill/exam/{sitting}. Of one that was handed in before
// the program was started again the record is left.
func (s *site) showExam(w http.ResponseWriter, r *http.Request) error {
	x, err := s.sittingOf(r)
	if err != nil {
		if kept, lost := s.store.TrainingOfSitting(r.Context(), chi.URLParam(r, "sitting")); lost == nil {
			return seeOther(w, r, recordPath(kept.ID))
		}
		return err
	}
	x.mu.Lock()
	defer x.mu.Unlock()
	p, err := x.ExamPage(x.head("Exam"), x.exam)
	if err != nil {
		return err
	}
	p.Who, p.Address = x.who, planPath(x.drilling.id, "drill/exam/"+x.id)
	if x.score == nil {
		p.Notices = x.D.BriefNotices()
		p.Left = view.TimeLeft(x.exam.Rules.Limit, s.desk.now().Sub(x.started), x.started)
		return show(w, r, http.StatusOK, page.DrillExamOf(p))
	}
	for i, key := range x.exam.Keys {
		p.Items[i] = view.Judge(p.Items[i], x.exam.Exercise(i), x.given[key])
	}
	asDraft := archive.Training{Plan: x.drilling.id, Revision: x.Letter, Digest: x.R.PlanDigest}
	p.Done = view.ExamScore(*x.score, p.Items, x.Letter == "" && s.became(r.Context(), asDraft, map[archive.ID][]archive.Revision{}) == "")
	if x.record != 0 {
		p.Record = recordPath(x.record)
	}
	return show(w, r, http.StatusOK, page.DrillExamOf(p))
}

// handIn answers POST …/drill/exam/{sitting}. What was handed in first counts.
func (s *site) handIn(w http.ResponseWriter, r *http.Request) error {
	x, err := s.sittingOf(r)
	if err != nil {
		return err
	}
	if err := r.ParseForm(); err != nil {
		return broken(err)
	}
	x.mu.Lock()
	defer x.mu.Unlock()
	if x.score == nil {
		given, unreadable := map[string]drill.Answer{}, false
		for i, key := range x.exam.Keys {
			a, readable := answerOf(r, x.exam.Exercise(i), view.ItemName(i))
			given[key], unreadable = a, unreadable || !readable
		}
		if unreadable {
			return s.askAgain(w, r, x, given)
		}
		x.given = given
		score := x.exam.Judge(x.given, s.desk.now().Sub(x.started))
		x.score = &score
	}
	if x.record == 0 {
		kept, err := s.store.KeepTraining(r.Context(), x.training())
		if err != nil {
			return err
		}
		x.record = kept.ID
	}
	return seeOther(w, r, planPath(x.drilling.id, "drill/exam/"+x.id))
}

// askAgain shows an exam with what was filled in, because an answer cannot be read:
// nothing is handed in yet, and the clock runs on.
func (s *site) askAgain(w http.ResponseWriter, r *http.Request, x *sitting, given map[string]drill.Answer) error {
	p, err := x.ExamPage(x.head("Exam"), x.exam)
	if err != nil {
		return err
	}
	p.Who, p.Address, p.Notices = x.who, planPath(x.drilling.id, "drill/exam/"+x.id), x.D.BriefNotices()
	p.Left = view.TimeLeft(x.exam.Rules.Limit, s.desk.now().Sub(x.started), x.started)
	for i, key := range x.exam.Keys {
		name := view.ItemName(i)
		e := x.exam.Exercise(i)
		p.Items[i] = view.StillAsked(p.Items[i], e, given[key], r.PostForm.Get(name+"-from"), r.PostForm.Get(name+"-to"))
		if _, readable := answerOf(r, e, name); !readable {
			p.Items[i].Trouble, p.Trouble = view.Unreadable(e), "Not handed in yet: question "+strconv.Itoa(i+1)+" has an answer that cannot be read. The time runs on."
		}
	}
	return show(w, r, http.StatusUnprocessableEntity, page.DrillExamOf(p))
}

// training is the record of a sitting that was handed in.
func (x *sitting) training() archive.Training {
	rules := x.exam.Rules
	var misses []archive.Miss
	for _, m := range x.exam.Misses(x.given, *x.score) {
		misses = append(misses, archive.Miss(m))
	}
	return archive.Training{
		Plan: x.drilling.id, Sitting: x.id, Who: x.who, Name: x.P.Title.Name, Number: x.P.Title.Number, Revision: x.Letter, Digest: x.R.PlanDigest,
		Seed: rules.Seed, Items: x.score.Items, Right: x.score.Right, Needed: x.score.Needed, Pass: rules.Pass, Limit: rules.Limit,
		Took: x.score.Took, OverTime: x.score.OverTime, Passed: x.score.Passed, Missed: x.score.Missed, Misses: misses, Grave: x.score.Grave,
	}
}
