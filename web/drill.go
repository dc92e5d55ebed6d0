package web

import (
	"encoding/json"
	"math/rand/v2"
	"net/http"
	"strconv"

	"github.com/go-chi/chi/v5"

	"ramplan/press/drill"
	"ramplan/press/training"
	"ramplan/web/page"
	"ramplan/web/view"
)

// drillRoutes are those of a plan's drill, and of what is beside it.
func (s *site) drillRoutes(r chi.Router) {
	on := func(f func(drilling, http.ResponseWriter, *http.Request) error) http.Handler {
		return answer(func(w http.ResponseWriter, r *http.Request) error {
			d, err := s.drillingOf(r)
			if err != nil {
				return err
			}
			return f(d, w, r)
		})
	}
	r.Method(http.MethodGet, "/plans/{id}/drill", on(drilling.start))                // what can be practised
	r.Method(http.MethodPost, "/plans/{id}/drill/round", on(drilling.round))         // the next question, or the answer to one
	r.Method(http.MethodGet, "/plans/{id}/drill/round", backTo("drill"))             // typed or kept as an address
	r.Method(http.MethodPost, "/plans/{id}/drill/exam", on(drilling.beginExam))      // an exam by its seed
	r.Method(http.MethodGet, "/plans/{id}/drill/exam", backTo("drill"))              //
	r.Method(http.MethodGet, "/plans/{id}/drill/exam/{sitting}", answer(s.showExam)) // its questions, or what it came to
	r.Method(http.MethodPost, "/plans/{id}/drill/exam/{sitting}", answer(s.sitIn))   // its answers so far, or handed in
	r.Method(http.MethodGet, "/plans/{id}/motion", on(drilling.inMotion))            // one cycle of the station
	r.Method(http.MethodGet, "/plans/{id}/station", on(drilling.whatTheyMean))       // two lamps and a reading
	r.Method(http.MethodGet, "/plans/{id}/card.{format}", answer(s.sendCard))        // the card for the wall
	r.Method(http.MethodGet, "/plans/{id}/drill.html", on(drilling.sendHandheld))    // drill and station page as a file
}

func (d drilling) head(kind string) page.DrillHead {
	return d.Head(assets.drillPage().With(d.foot), kind, d.refused)
}

// start answers GET …/drill.
func (d drilling) start(w http.ResponseWriter, r *http.Request) error {
	return d.home(w, r, http.StatusOK, page.ExamForm{})
}

// home shows the first page of the drill, with what was typed to begin an exam.
func (d drilling) home(w http.ResponseWriter, r *http.Request, status int, typed page.ExamForm) error {
	h := d.head("Drill")
	h.First = true
	d.site.endLeft(r.Context())
	p := d.Home(h, rand.Uint64N(1_000_000), typed)
	all, err := d.site.store.Trainings(r.Context(), d.id)
	if err != nil {
		return err
	}
	due := map[drill.Role][]string{}
	for role, list := range dueByExam(all, d.counts) {
		for _, t := range list {
			due[role] = append(due[role], training.PersonKey(t.Who))
		}
	}
	p.Outdated = view.OutdatedNote(due)
	if p.UnderWay, err = d.site.underWay(r.Context(), d.id); err != nil {
		return err
	}
	return show(w, r, status, page.DrillHomeOf(p))
}

var errOldRound = refusal{http.StatusConflict, say.RoundDoesNotFit(), []string{say.BeginNewRound()}}

// mostAnswers is how many answers a round may carry.
const mostAnswers = 500

// round answers POST …/drill/round: it begins a round, judges an answer, or asks
// the next question. The page carries what was answered; how the round stands is
// worked out from that each time.
func (d drilling) round(w http.ResponseWriter, r *http.Request) error {
	if err := r.ParseForm(); err != nil {
		return broken(err)
	}
	if d.D == nil {
		return show(w, r, http.StatusUnprocessableEntity, page.DrillRoundOf(page.DrillRound{DrillHead: d.head("Drill")}))
	}
	seed, level, err := seedAndLevel(r)
	if err != nil {
		return err
	}
	var given []drill.Answer
	if r.PostForm.Get("do") != "begin" {
		if json.Unmarshal([]byte(r.PostForm.Get("answers")), &given) != nil || len(given) > mostAnswers || r.PostForm.Get("digest") != d.R.PlanDigest() {
			return errOldRound
		}
	}
	s, ok := d.D.After(level, seed, given)
	if !ok {
		return errOldRound
	}
	p := page.DrillRound{DrillHead: d.head("Drill"), Seed: strconv.FormatUint(seed, 10), Level: strconv.Itoa(level), Digest: d.R.PlanDigest(), Progress: view.Progress(s, s)}
	key, more := s.Next()
	if !more {
		p.Done = d.RoundScore(s, seed)
		p.Next = strconv.FormatUint(rand.Uint64N(1_000_000), 10)
		return show(w, r, http.StatusOK, page.DrillRoundOf(p))
	}
	e, _ := d.D.Exercise(key, seed)
	if s.Again() {
		e = e.Reordered(seed, s.Times())
	}
	if r.PostForm.Get("do") != "answer" { // the cautions would answer some of what is asked
		p.Notices = d.D.BriefNotices()
	}
	if p.Question, err = d.Question(e, "a"); err != nil {
		return err
	}
	status := http.StatusOK
	if r.PostForm.Get("do") == "answer" {
		p.Question.From, p.Question.To = r.PostForm.Get("a-from"), r.PostForm.Get("a-to")
		if a, readable := answerOf(r, e, "a"); !readable || e.Zone != nil && a.Zone == nil {
			status, p.Question.Trouble = http.StatusUnprocessableEntity, view.Unreadable(e)
		}
	}
	if r.PostForm.Get("do") == "answer" && status == http.StatusOK {
		a, _ := answerOf(r, e, "a")
		if p.Question, err = d.Outcome(view.Judge(p.Question, e, a), e); err != nil {
			return err
		}
		given = append(given, a)
		p.Answered, p.Progress = true, view.Progress(s, s.Answered(p.Question.Right))
	}
	carried, err := json.Marshal(given)
	if err != nil {
		return err
	}
	p.Answers = string(carried)
	return show(w, r, status, page.DrillRoundOf(p))
}

func seedAndLevel(r *http.Request) (seed uint64, level int, err error) {
	seed, err = strconv.ParseUint(r.FormValue("seed"), 10, 53)
	if err != nil {
		return 0, 0, refusal{http.StatusBadRequest, say.SeedIsWhole(), nil}
	}
	level, err = strconv.Atoi(r.FormValue("level"))
	if err != nil || level < 1 || level > drill.Levels {
		return 0, 0, refusal{http.StatusBadRequest, say.NoSuchLevel(), nil}
	}
	return seed, level, nil
}

// whatTheyMean answers GET …/station.
func (d drilling) whatTheyMean(w http.ResponseWriter, r *http.Request) error {
	if err := r.ParseForm(); err != nil {
		return err
	}
	h := d.head(say.AtTheStation())
	if d.D == nil {
		return show(w, r, http.StatusUnprocessableEntity, page.LampsOf(page.LampsPage{DrillHead: h}))
	}
	p := d.Lamps(h, r.Form.Get)
	p.Check = page.Link{Address: planPath(d.id, "check"), Text: sayProof.ShiftCheck()}
	var err error
	if p.Warned, err = d.site.warned(r.Context(), d.id); err != nil {
		return err
	}
	status := http.StatusOK
	if p.Trouble != "" {
		status = http.StatusUnprocessableEntity
	}
	return show(w, r, status, page.LampsOf(p))
}
