package web

import (
	"encoding/json"
	"math/rand/v2"
	"net/http"
	"strconv"
	"time"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/drill"
	"ramplan/web/page"
	"ramplan/web/view"
)

// A practice is the plan that a request wants to practise on, and where it is.
type practice struct {
	plan     *press.Plan
	at, home string // addresses of the drill and of the plan
}

// drillRoutes are those of a drill at a pattern such as /plans/{id}/drill; of
// finds the plan of a request.
func drillRoutes(r chi.Router, at string, of func(*http.Request) (practice, error)) {
	on := func(f func(drilling, http.ResponseWriter, *http.Request) error) http.Handler {
		return answer(func(w http.ResponseWriter, r *http.Request) error {
			p, err := of(r)
			if err != nil {
				return err
			}
			return f(newDrilling(p), w, r)
		})
	}
	r.Method(http.MethodGet, at, on(drilling.start))                 // what can be practised
	r.Method(http.MethodPost, at+"/round", on(drilling.round))       // the next question, or the answer to one
	r.Method(http.MethodGet, at+"/exam", on(drilling.exam))          // an exam by its seed
	r.Method(http.MethodPost, at+"/exam", on(drilling.judgeExam))    // its answers
	r.Method(http.MethodGet, at+"/station", on(drilling.inMotion))   // one cycle of the station
	r.Method(http.MethodGet, at+"/lamps", on(drilling.whatTheyMean)) // two lamps and a reading
}

// drilling is the drill of one request.
type drilling struct {
	view.Drill
	refused string
}

func newDrilling(p practice) drilling {
	r := press.Evaluate(p.plan)
	v, refused := view.NewDrill(p.plan, r)
	v.At, v.Plan = p.at, p.home
	v.Draw = scenes{p.plan, r}.picture
	return drilling{v, refused}
}

func (d drilling) head(kind string) page.DrillHead {
	return d.Head(assets.drillPage(), kind, d.refused)
}

// start answers GET …/drill.
func (d drilling) start(w http.ResponseWriter, r *http.Request) error {
	return show(w, r, http.StatusOK, page.DrillHomeOf(d.Home(d.head("Drill"), rand.Uint64N(1_000_000))))
}

var errOldRound = refusal{http.StatusBadRequest, "This round does not fit the plan any more.", []string{"Begin a new one from the drill's first page."}}

// round answers POST …/drill/round: it begins a round, judges an answer, or asks
// the next question. The page carries the round.
func (d drilling) round(w http.ResponseWriter, r *http.Request) error {
	if err := r.ParseForm(); err != nil {
		return err
	}
	if d.D == nil {
		return show(w, r, http.StatusUnprocessableEntity, page.DrillRoundOf(page.DrillRound{DrillHead: d.head("Drill")}))
	}
	seed, level, err := seedAndLevel(r)
	if err != nil {
		return err
	}
	var s drill.Session
	if r.PostForm.Get("do") == "begin" {
		s = drill.NewSession(d.D.Round(level, drill.RoundLength, seed))
	} else if json.Unmarshal([]byte(r.PostForm.Get("session")), &s) != nil {
		return errOldRound
	}
	p := page.DrillRound{DrillHead: d.head("Drill"), Seed: strconv.FormatUint(seed, 10), Level: strconv.Itoa(level), Progress: view.Progress(s)}
	key, more := s.Next()
	if !more {
		p.Done = d.RoundScore(s)
		return show(w, r, http.StatusOK, page.DrillRoundOf(p))
	}
	e, ok := d.D.Exercise(key, seed)
	if !ok {
		return errOldRound
	}
	if p.Question, err = d.Question(e, "a"); err != nil {
		return err
	}
	if r.PostForm.Get("do") == "answer" {
		a := answerOf(r, e, "a")
		p.Question = view.Judge(p.Question, e, a)
		p.Question.From, p.Question.To = r.PostForm.Get("a-from"), r.PostForm.Get("a-to")
		s = s.Answered(p.Question.Right)
		p.Answered, p.Progress = true, view.Progress(s)
	}
	carried, err := json.Marshal(s)
	if err != nil {
		return err
	}
	p.Session = string(carried)
	return show(w, r, http.StatusOK, page.DrillRoundOf(p))
}

func seedAndLevel(r *http.Request) (seed uint64, level int, err error) {
	seed, err = strconv.ParseUint(r.FormValue("seed"), 10, 53)
	if err != nil {
		return 0, 0, refusal{http.StatusBadRequest, "A seed is a whole number.", nil}
	}
	level, err = strconv.Atoi(r.FormValue("level"))
	if err != nil || level < 1 || level > drill.Levels {
		return 0, 0, refusal{http.StatusBadRequest, "There is no such level.", nil}
	}
	return seed, level, nil
}

// answerOf reads the answer to an exercise from a form.
func answerOf(r *http.Request, e drill.Exercise, name string) drill.Answer {
	if e.Zone == nil {
		return drill.Answer{Choice: r.PostForm.Get(name)}
	}
	from, ok1 := press.TypedNumber(r.PostForm.Get(name + "-from"))
	to, ok2 := press.TypedNumber(r.PostForm.Get(name + "-to"))
	if !ok1 || !ok2 {
		return drill.Answer{}
	}
	return drill.Answer{Zone: &press.Pair{from, to}}
}

// examOf makes the exam that a request names by its seed.
func (d drilling) examOf(r *http.Request) (*drill.Exam, error) {
	seed, err := strconv.ParseUint(r.FormValue("seed"), 10, 53)
	if err != nil {
		return nil, refusal{http.StatusBadRequest, "A seed is a whole number.", []string{"Any will do: the same one gives the same questions."}}
	}
	return d.D.NewExam(drill.UsualRules(seed))
}

// exam answers GET …/drill/exam.
func (d drilling) exam(w http.ResponseWriter, r *http.Request) error {
	if d.D == nil {
		return show(w, r, http.StatusUnprocessableEntity, page.DrillExamOf(page.DrillExam{DrillHead: d.head("Exam")}))
	}
	x, err := d.examOf(r)
	if err != nil {
		return err
	}
	p, err := d.ExamPage(d.head("Exam"), x)
	if err != nil {
		return err
	}
	p.Who, p.Started = r.FormValue("who"), strconv.FormatInt(time.Now().UnixMilli(), 10)
	return show(w, r, http.StatusOK, page.DrillExamOf(p))
}

// judgeExam answers POST …/drill/exam.
func (d drilling) judgeExam(w http.ResponseWriter, r *http.Request) error {
	if err := r.ParseForm(); err != nil {
		return err
	}
	if d.D == nil {
		return show(w, r, http.StatusUnprocessableEntity, page.DrillExamOf(page.DrillExam{DrillHead: d.head("Exam")}))
	}
	x, err := d.examOf(r)
	if err != nil {
		return err
	}
	started, err := strconv.ParseInt(r.PostForm.Get("started"), 10, 64)
	if err != nil {
		return refusal{http.StatusBadRequest, "The exam does not say when it began.", nil}
	}
	p, err := d.ExamPage(d.head("Exam"), x)
	if err != nil {
		return err
	}
	answers := map[string]drill.Answer{}
	for i, key := range x.Keys {
		e, name := x.Exercise(i), p.Items[i].Name
		answers[key] = answerOf(r, e, name)
		p.Items[i] = view.Judge(p.Items[i], e, answers[key])
		p.Items[i].From, p.Items[i].To = r.PostForm.Get(name+"-from"), r.PostForm.Get(name+"-to")
	}
	p.Done = d.ExamScore(x.Judge(answers, time.Since(time.UnixMilli(started))))
	return show(w, r, http.StatusOK, page.DrillExamOf(p))
}

// whatTheyMean answers GET …/drill/lamps.
func (d drilling) whatTheyMean(w http.ResponseWriter, r *http.Request) error {
	if err := r.ParseForm(); err != nil {
		return err
	}
	h := d.head("At the station")
	if d.D == nil {
		return show(w, r, http.StatusUnprocessableEntity, page.LampsOf(page.LampsPage{DrillHead: h}))
	}
	p := d.Lamps(h, r.Form.Get)
	status := http.StatusOK
	if p.Trouble != "" {
		status = http.StatusUnprocessableEntity
	}
	return show(w, r, status, page.LampsOf(p))
}

// drillPage gives the addresses of what the pages of a drill load.
func (l library) drillPage() page.Assets {
	a := l.plainPage()
	a.Styles = append(a.Styles, l.address("css/drill.css"))
	a.Scripts = []string{l.address("js/station.js")}
	return a
}
