package view

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/drill"
	"ramplan/press/words"
	"ramplan/press/words/screen"
	"ramplan/web/page"
)

// Drill is what the pages of a plan's drill are made from.
type Drill struct {
	Plan     string   // its address
	Letter   string   // of the revision that is practised on; empty for the draft
	Letters  []string // of those that were issued, the newest first
	P        *press.Plan
	R        *press.Result
	D        *drill.Drill                                // nil: refused
	Draw     func(drill.Picture, string) (string, error) // the station before the push
	DrawEnd  func(drill.Picture, string) (string, error) // when its lamps are read
	Standing Standing                                    // of its station, where it is the last revision
}

// NewDrill makes the drill of a plan, refused where its lamps mean nothing.
func NewDrill(p *press.Plan, r *press.Result) (Drill, string) {
	d, err := drill.New(say.Printer, p, r, say.Reactions(p, r))
	if err != nil {
		return Drill{P: p, R: r}, say.NothingToPractise()
	}
	return Drill{P: p, R: r, D: d}, ""
}

// Head is what every page has.
func (v Drill) Head(assets page.Assets, kind, refused string) page.DrillHead {
	h := page.DrillHead{
		Assets: assets, Title: say.KindOfTitle(kind, v.P.Title.Name), Kind: kind, Name: v.P.Title.Name, Number: v.P.Title.Number,
		Plan: v.Plan, Refused: refused, Notices: words.CardCautions,
	}
	v.state(&h)
	h.Proved = v.Standing.Link(v.Plan, false)
	h.Shout = v.shout(kind)
	if v.D != nil {
		h.Notices = v.D.Notices()
	}
	return h
}

// shout says over a page at which parts or people are judged that its figures are none
// to judge by, as the card on the wall does, and over every page that a newer revision
// was issued.
func (v Drill) shout(kind string) string {
	what, judged := map[string]string{say.AtTheStation(): say.DoNotJudgeByPage(), "Exam": say.DoNotJudgeByExam()}[kind]
	if !judged {
		what = say.PractiseOnThatOne()
	}
	var state []string
	if v.superseded() {
		state = append(state, strings.ToUpper(say.SupersededBy(v.Letters[0], "")))
	}
	switch {
	case !judged:
	case v.R.Blocked():
		state = append(state, say.NotReadyBare())
	case v.Letter == "":
		state = append(state, "DRAFT")
	}
	if len(state) == 0 {
		return ""
	}
	return strings.Join(state, ", ") + ": " + what
}

// superseded tells whether a newer revision was issued than the one that is practised on.
func (v Drill) superseded() bool {
	return v.Letter != "" && len(v.Letters) > 0 && v.Letter != v.Letters[0]
}

// levelWhat says what each level has.
var levelWhat = []func(screen.Words) string{
	screen.Words.LevelLamps,
	screen.Words.LevelPredict,
	screen.Words.LevelFaults,
	screen.Words.LevelAll,
}

// kindNames name the kinds of exercise.
var kindNames = map[drill.Kind]func(screen.Words) string{
	drill.Read: screen.Words.ReadingTheLamps, drill.Act: screen.Words.WhatToDo, drill.Predict: screen.Words.PredictingTheLamps, drill.React: screen.Words.WhatToCheckFirst, drill.Blind: screen.Words.Unfound, drill.Zone: screen.Words.SettingAZone, drill.Safe: screen.Words.Unsafe,
}

// Home is the page on which a learner begins.
func (v Drill) Home(h page.DrillHead, seed uint64, typed page.ExamForm) page.DrillHome {
	out := page.DrillHome{DrillHead: h, When: say.WhenReadIn(v.R), PairsHead: say.PairsHead(v.R), FirstWords: firstTerms(), Glossary: glossaryPath, Seed: strconv.FormatUint(seed, 10), Form: typed}
	if !typed.Wrong() {
		out.Form = UsualExam()
	}
	out.Form.Exams = v.exams(out.Form.Exam)
	for _, format := range []string{"pdf", "png", "svg"} {
		out.Card = append(out.Card, page.Link{Address: h.To("/card." + format), Text: strings.ToUpper(format)})
	}
	if v.D == nil {
		return out
	}
	out.Advice = say.OneRoundBeforeExam(drill.Levels)
	for _, t := range say.PairTexts(v.P, v.R) {
		out.Pairs = append(out.Pairs, page.DrillPair{Arrival: words.OnOff(t.Pair.Arrival), Zone: words.OnOff(t.Pair.Zone), Verdict: words.UpperFirst(t.Verdict), Act: words.UpperFirst(t.Act)})
	}
	for i, what := range levelWhat {
		n := len(v.D.Round(i+1, drill.RoundLength, seed))
		items := counted(n, "question", "questions")
		if n < drill.RoundLength {
			items += say.AtTheMostAsked(drill.RoundLength)
		}
		out.Levels = append(out.Levels, page.DrillLevel{Number: strconv.Itoa(i + 1), What: what(say), Items: say.DrawnFrom(items, len(v.D.Keys(i+1)))})
	}
	for _, k := range drill.Kinds {
		if why := v.D.Impossible()[k]; why != "" {
			out.Impossible = append(out.Impossible, say.LeftOut(saidOf(kindNames, k), why))
		}
	}
	return out
}

// firstTerms are the words that a learner reads first.
func firstTerms() []page.Term {
	var out []page.Term
	for _, t := range say.FirstTerms() {
		out = append(out, page.Term{Word: t.Word, Meaning: t.Meaning})
	}
	return out
}

func examRules(x *drill.Exam) string {
	s := say.MustBeRight(counted(len(x.Keys), "question", "questions"), x.Needed())
	if l := x.Rules.Limit; l > 0 {
		s += say.Within(counted(int(l.Minutes()), "minute", "minutes"))
	}
	return s + "."
}

// Question is an exercise as it is asked.
func (v Drill) Question(e drill.Exercise, name string) (page.DrillQuestion, error) {
	q := page.DrillQuestion{Name: name, Text: e.Question, Facts: e.Facts}
	if pic := e.Picture; pic != nil && pic.Lamps != nil {
		q.Lamps = []page.DrillLamp{{Name: "arrival", State: words.OnOff(pic.Lamps.Arrival)}, {Name: "zone", State: words.OnOff(pic.Lamps.Zone)}}
	} else if pic != nil && v.Draw != nil {
		svg, err := v.Draw(*pic, name)
		if err != nil {
			return q, err
		}
		q.Picture = svg
	}
	for i, c := range e.Choices {
		q.Choices = append(q.Choices, page.DrillChoice{Value: choiceValue(i), Text: c.Text})
	}
	if e.Zone != nil {
		for _, x := range e.Zone.Parts {
			part := page.DrillPart{Height: v.D.Height(x.Height), Word: words.Say(x.Word)}
			if e.Zone.Told {
				part.Reading = v.D.Height(x.Reading)
			}
			q.Parts = append(q.Parts, part)
		}
	}
	return q, nil
}

// Outcome is a question with the station as it is in the end, for one that was
// answered.
func (v Drill) Outcome(q page.DrillQuestion, e drill.Exercise) (page.DrillQuestion, error) {
	if q.Picture == "" || v.DrawEnd == nil {
		return q, nil
	}
	svg, err := v.DrawEnd(*e.Picture, q.Name)
	if err == nil && svg != "" {
		q.Picture, q.Ended = svg, true
	}
	return q, err
}

// TypedLength reads a length or position as it was typed, with or without its unit.
func TypedLength(text string) (float64, bool) {
	text = strings.TrimSpace(text)
	if n := len(text) - 2; n > 0 && strings.EqualFold(text[n:], "mm") {
		text = strings.TrimSpace(text[:n])
	}
	return press.TypedNumber(text)
}

// HeightHint says of a height that it looks like a reading; empty otherwise.
func (v Drill) HeightHint(mm float64) string {
	if !drill.ForReading(v.P, v.R, mm) {
		return ""
	}
	pos := say.Positions(v.P)
	return say.LooksLikeAReading(pos.Set(mm), pos, v.R.HeightOf(mm))
}

// StillAsked puts what was given back into a question that is asked still.
func StillAsked(q page.DrillQuestion, e drill.Exercise, choice, from, to string) page.DrillQuestion {
	for i := range q.Choices {
		q.Choices[i].Chosen = e.Choices[i].ID == choice
	}
	q.From, q.To = from, to
	return q
}

// Judge puts an answer and what it is worth into a question.
func Judge(q page.DrillQuestion, e drill.Exercise, a drill.Answer) page.DrillQuestion {
	j := e.Judge(a)
	q.Right, q.Reason, q.Verdict = j.Right, j.Reason, "Wrong"
	if j.Grave != "" && q.Number != "" {
		q.Alone = words.UpperFirst(words.AloneFails) + ": " + j.Grave + "."
	} else if j.Grave != "" {
		q.Reason = say.FailsAnExam(strings.TrimSpace(q.Reason), j.Grave)
	}
	if j.Right {
		q.Verdict = "Right"
	}
	right := map[string]bool{}
	for _, id := range e.Right {
		right[id] = true
	}
	for i := range q.Choices {
		c := &q.Choices[i]
		id := e.Choices[i].ID
		c.Chosen, c.Right, c.Marks = id == a.Choice, right[id], marks(id == a.Choice, right[id])
		if !j.Right && c.Right {
			q.Answers = append(q.Answers, c.Text)
		}
	}
	if a.Zone != nil && q.From+q.To == "" {
		q.From, q.To = words.Exact(a.Zone[0]), words.Exact(a.Zone[1])
	}
	if e.Zone != nil && !j.Right {
		q.Answers = []string{e.Explain}
	}
	return q
}

// marks say of a choice, after the answer, whose it is and whether it is right.
func marks(given, right bool) []string {
	var out []string
	if given {
		out = append(out, words.YourAnswer)
	}
	if right {
		out = append(out, words.RightAnswer)
	}
	return out
}

// Progress says how a round stands: which question is asked, and what was right
// once it is answered.
func Progress(asks, now drill.Session) string {
	s := "Question " + strconv.Itoa(asks.Tried+1) + " of " + strconv.Itoa(now.Total())
	if asks.Again() {
		s += say.AskedAgain()
	}
	if n := len(now.Seen); n > 0 {
		s += say.RightAtFirstSoFar(now.Right, n)
	}
	return s + "."
}

// RoundScore is what a round came to.
func (v Drill) RoundScore(s drill.Session, seed uint64) *page.DrillScore {
	out := &page.DrillScore{Score: say.RightAtFirst(s.Right, counted(len(s.Seen), "question", "questions"), counted(s.Tried, "answer", "answers"))}
	for _, key := range s.Missed {
		if e, ok := v.D.Exercise(key, seed); ok {
			out.Missed = append(out.Missed, page.DrillMiss{Text: e.InWords() + " Right: " + e.RightInWords()})
		}
	}
	return out
}

// ExamScore is what an exam came to, with the questions that were missed; draft: on a
// draft that is no revision yet.
func ExamScore(s drill.Score, asked []page.DrillQuestion, draft bool) *page.DrillScore {
	out := &page.DrillScore{
		Passed: words.Outcome{Passed: s.Passed, Draft: draft, Below: s.Right < s.Needed, OverTime: s.OverTime, Grave: s.Grave}.String(),
		Score:  strconv.Itoa(s.Right) + " of " + counted(s.Items, "question", "questions") + " right; " + strconv.Itoa(s.Needed) + " needed.",
	}
	if s.OverTime {
		out.Score += say.TookTooLong()
	}
	for _, q := range asked {
		if !q.Right {
			out.Missed = append(out.Missed, page.DrillMiss{Text: q.Text, Lamps: q.Lamps, Alone: q.Alone, Number: strings.TrimSuffix(q.Number, ".")})
		}
	}
	return out
}

// ExamPage is an exam as it is asked.
func (v Drill) ExamPage(h page.DrillHead, x *drill.Exam) (page.DrillExam, error) {
	out := page.DrillExam{DrillHead: h, Seed: strconv.FormatUint(x.Rules.Seed, 10), Exam: say.ExamOf(string(x.Rules.Role)), Rules: examRules(x), GraveIntro: drill.GraveIntro(say.Printer), Grave: drill.GraveRule(say.Printer, x.Rules.Role)}
	for i := range x.Keys {
		q, err := v.Question(x.Exercise(i), ItemName(i))
		if err != nil {
			return out, err
		}
		q.Number = strconv.Itoa(i+1) + "."
		out.Items = append(out.Items, q)
	}
	return out, nil
}
