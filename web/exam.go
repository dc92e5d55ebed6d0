package web

import (
	"cmp"
	"context"
	"errors"
	chance "math/rand/v2"
	"net/http"
	"slices"
	"strconv"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drill"
	"ramplan/press/issue"
	"ramplan/press/training"
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
	who := training.PersonName(r.PostForm.Get("who"))
	fresh, err := d.freshSeed(r.Context())
	if err != nil {
		return err
	}
	typed, rules := view.ExamRules(r.PostForm.Get, fresh)
	if who == "" {
		typed.WhoFault = say.WhoNeeded(training.MaxWho)
	}
	d.site.endLeft(r.Context())
	sits, err := d.sitsAlready(r.Context(), who)
	if err != nil {
		return err
	}
	if who != "" && sits {
		typed.WhoFault = say.ExamUnderThisName()
	}
	if typed.Wrong() {
		return d.home(w, r, http.StatusUnprocessableEntity, typed)
	}
	x, err := d.D.NewExam(rules)
	if errors.Is(err, drill.ErrNothingToAsk) {
		return refusal{http.StatusUnprocessableEntity, say.NothingToExam(), nil}
	}
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
		if !slices.ContainsFunc(all, func(t training.Record) bool { return t.Seed == seed }) {
			return seed, err
		}
	}
}

// atDesk does something with the exam that a request is about. What was handed in
// before the program was started again, or left, has become a record: then that is shown.
func (s *site) atDesk(w http.ResponseWriter, r *http.Request, do func(x *sitting) error) error {
	s.endLeft(r.Context())
	x, err := s.sittingOf(r)
	if x != nil {
		x.mu.Lock()
		defer x.mu.Unlock()
	}
	if x == nil || x.score == nil {
		if kept, lost := s.store.TrainingOfSitting(r.Context(), chi.URLParam(r, "sitting")); lost == nil {
			return seeOther(w, r, recordPath(kept.ID))
		}
	}
	if err != nil {
		return err
	}
	return do(x)
}

// showExam answers GET …/drill/exam/{sitting}.
func (s *site) showExam(w http.ResponseWriter, r *http.Request) error {
	return s.atDesk(w, r, func(x *sitting) error {
		if err := s.sinceBegun(r.Context(), x); err != nil {
			return err
		}
		if x.score == nil {
			p, err := s.examPage(x)
			if err != nil {
				return err
			}
			return show(w, r, http.StatusOK, page.DrillExamOf(p))
		}
		p, err := x.ExamPage(x.head("Exam"), x.exam)
		if err != nil {
			return err
		}
		given := x.answers()
		for i, key := range x.exam.Keys {
			e := x.exam.Exercise(i)
			if p.Items[i], err = x.Outcome(view.Judge(p.Items[i], e, given[key]), e); err != nil {
				return err
			}
		}
		asDraft := training.Record{Plan: x.drilling.id, Revision: x.Letter, Digest: x.R.PlanDigest()}
		p.Done = view.ExamScore(*x.score, p.Items, x.Letter == "" && s.became(r.Context(), asDraft, map[archive.ID][]issue.Revision{}) == "")
		if x.record != 0 {
			p.Record = recordPath(x.record)
		}
		return show(w, r, http.StatusOK, page.DrillExamOf(p))
	})
}

// sinceBegun looks what was issued since an exam began, so that its page says when it
// asks about a revision that is superseded.
func (s *site) sinceBegun(ctx context.Context, x *sitting) error {
	issued, err := s.store.Revisions(ctx, x.drilling.id)
	if err != nil {
		if errors.Is(err, archive.ErrNotFound) {
			return nil // the plan is gone, and the exam goes on
		}
		return err
	}
	x.Letters = lettersOf(issued)
	return nil
}

// examPage is an exam under way, with the answers as they were given.
func (s *site) examPage(x *sitting) (page.DrillExam, error) {
	p, err := x.ExamPage(x.head("Exam"), x.exam)
	if err != nil {
		return p, err
	}
	p.Assets.Scripts = append(p.Assets.Scripts, assets.address("js/exam.js"))
	p.Who, p.Address, p.Notices = x.who, planPath(x.drilling.id, "drill/exam/"+x.id), x.D.BriefNotices()
	p.Clock = view.Clock(x.exam.Rules.Limit, s.desk.now().Sub(x.started), x.started)
	p.Kept = view.KeptAnswers(len(x.given), len(x.exam.Keys))
	for i, key := range x.exam.Keys {
		g := x.given[key]
		p.Items[i] = view.StillAsked(p.Items[i], x.exam.Exercise(i), g.Choice, g.From, g.To)
	}
	return p, nil
}

// What a form of an exam wants, other than to hand it in.
const (
	doKeep  = "keep"  // the answers so far
	doLeave = "leave" // give the exam up
)

// sitIn answers POST …/drill/exam/{sitting}: it keeps the answers so far, gives the exam
// up, or hands it in. What was handed in first counts.
func (s *site) sitIn(w http.ResponseWriter, r *http.Request) error {
	if err := r.ParseForm(); err != nil {
		return broken(err)
	}
	return s.atDesk(w, r, func(x *sitting) error {
		at := planPath(x.drilling.id, "drill/exam/"+x.id)
		if x.score != nil {
			return s.record(w, r, x, at)
		}
		given, unknown := x.takenIn(r)
		if err := s.store.KeepAnswers(r.Context(), x.id, given, s.desk.now()); errors.Is(err, archive.ErrNotFound) {
			return errNotUnderWay // its person's records were removed meanwhile
		} else if err != nil {
			return err
		}
		x.given = given
		switch r.PostForm.Get("do") {
		case doKeep:
			if r.PostForm.Get("quiet") != "" { // a script that goes on by itself
				w.WriteHeader(http.StatusNoContent)
				return nil
			}
			return seeOther(w, r, at)
		case doLeave:
			kept, err := s.store.EndSitting(r.Context(), x.id, s.desk.now())
			if err != nil {
				return err
			}
			return seeOther(w, r, recordPath(kept.ID))
		}
		if p, err := s.unready(x, unknown, r.PostForm.Get("sure") != ""); err != nil || p.Trouble != "" {
			if err != nil {
				return err
			}
			return show(w, r, http.StatusUnprocessableEntity, page.DrillExamOf(p))
		}
		score := x.exam.Judge(x.answers(), s.desk.now().Sub(x.started))
		x.score = &score
		return s.record(w, r, x, at)
	})
}

// record keeps what an exam came to, once, and shows it.
func (s *site) record(w http.ResponseWriter, r *http.Request, x *sitting, at string) error {
	if x.record == 0 {
		kept, err := s.store.KeepTraining(r.Context(), x.training())
		if err != nil {
			return err
		}
		x.record = kept.ID
	}
	return seeOther(w, r, at)
}

// unready says why an exam is not handed in yet: an answer cannot be read, or there are
// questions without one and nobody said that this is meant. The clock runs on.
func (s *site) unready(x *sitting, unknown map[string]bool, sure bool) (page.DrillExam, error) {
	p, err := s.examPage(x)
	if err != nil {
		return p, err
	}
	for i, key := range x.exam.Keys {
		e, number := x.exam.Exercise(i), strconv.Itoa(i+1)
		if _, readable := answered(e, x.given[key]); !readable || unknown[key] {
			p.Items[i].Trouble = view.Unreadable(e)
			if p.Trouble == "" {
				p.Trouble = say.AnswerUnreadable(number)
			}
		} else if _, given := x.given[key]; !given {
			p.Open = append(p.Open, number)
		}
	}
	switch {
	case p.Trouble != "" || sure:
		p.Open = nil
	case len(p.Open) > 0:
		p.Trouble = view.StillOpen(len(p.Open))
	}
	return p, nil
}

// training is the record of a sitting that was handed in.
func (x *sitting) training() training.Record {
	rules := x.exam.Rules
	return training.Record{
		Plan: x.drilling.id, Sitting: x.id, Who: x.who, Name: x.P.Title.Name, Number: x.P.Title.Number, Revision: x.Letter, Digest: x.R.PlanDigest(), Exam: string(rules.Role),
		Seed: rules.Seed, Items: x.score.Items, Right: x.score.Right, Needed: x.score.Needed, Pass: rules.Pass, Limit: rules.Limit,
		Took: x.score.Took, OverTime: x.score.OverTime, Passed: x.score.Passed, Missed: x.score.Missed, Misses: x.exam.Misses(x.answers(), *x.score), Grave: x.score.Grave,
	}
}

// underWay are the exams of a plan that were begun and not handed in.
func (s *site) underWay(ctx context.Context, id archive.ID) ([]page.ExamUnderWay, error) {
	open, err := s.store.Sittings(ctx, id)
	return view.UnderWayLines(viewUnderWay(open, false), s.desk.now()), err
}

// viewUnderWay lists exams, named by their plans where they are of several.
func viewUnderWay(open []training.Sitting, named bool) []view.UnderWay {
	var out []view.UnderWay
	for _, x := range open {
		items, plan := cmp.Or(x.Asks, x.Items), "" // older programs kept no more
		if p, _ := press.Decode(x.Document); named && p != nil {
			plan = p.Title.Name
		}
		out = append(out, view.UnderWay{
			Who: x.Who, Exam: x.Exam, Plan: plan, Address: planPath(x.Plan, "drill/exam/"+x.ID), Started: x.Started, LeftFrom: x.LeftFrom(), Limit: x.Limit, Answered: len(x.Given), Items: items,
		})
	}
	return out
}

// sitsAlready tells whether a person has an exam of the plan under way.
func (d drilling) sitsAlready(ctx context.Context, who string) (bool, error) {
	open, err := d.site.store.Sittings(ctx, d.id)
	return slices.ContainsFunc(open, func(x training.Sitting) bool { return training.PersonKey(x.Who) == training.PersonKey(who) }), err
}
