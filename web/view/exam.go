package view

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"ramplan/press"
	"ramplan/press/drill"
	"ramplan/press/words"
	"ramplan/web/page"
)

// state says which state of a plan is practised on, and which others there are.
func (v Drill) state(h *page.DrillHead) {
	h.Letter = v.Letter
	switch {
	case v.Letter == "" && len(v.Letters) == 0:
		h.Letter, h.State = "draft", say.DraftBeforeIssue()
	case v.Letter == "":
		h.Letter, h.State = "draft", say.DraftBesideIssued(v.Letters[0])
	case v.Letter == v.Letters[0]:
		h.State = say.LastIssued(v.Letter)
	default:
		h.State = say.LastIssuedSuperseded(v.Letter, v.Letters[0])
	}
	for _, letter := range v.Letters {
		h.States = append(h.States, page.Option{Value: letter, Label: "Revision " + letter, Chosen: letter == v.Letter})
	}
	h.States = append(h.States, page.Option{Value: "draft", Label: say.ThatDraft(), Chosen: v.Letter == ""})
}

// ItemName names the answer to an item of an exam, counted from 0.
func ItemName(i int) string { return "a" + strconv.Itoa(i+1) }

// What a trainer may choose for an exam.
const (
	leastItems, mostItems     = 10, 30
	leastPass, mostPass       = 60, 100 // %
	leastMinutes, mostMinutes = 5, 60
)

// UsualExam is the form of an exam that nobody has changed: its seed is drawn when
// it begins.
func UsualExam() page.ExamForm {
	rules := drill.UsualRules(0)
	return page.ExamForm{Exam: string(drill.Technician), Items: strconv.Itoa(rules.Items), Pass: words.Trimmed(100*rules.Pass, 0), Minutes: words.Trimmed(rules.Limit.Minutes(), 0)}
}

// ExamRules reads the form that begins an exam. What is left empty is as usual,
// and a seed that nobody typed is the fresh one.
func ExamRules(typed func(string) string, fresh uint64) (page.ExamForm, drill.Rules) {
	f := UsualExam()
	f.Who, f.Seed = typed("who"), strings.TrimSpace(typed("seed"))
	rules := drill.UsualRules(fresh)
	if role := drill.Role(typed("exam")); slices.Contains(drill.Roles, role) {
		f.Exam = string(role)
	}
	rules.Role = drill.Role(f.Exam)
	if f.Seed != "" {
		seed, err := strconv.ParseUint(f.Seed, 10, 53)
		if err != nil {
			f.SeedFault = say.SeedNeeded()
		}
		rules.Seed = seed
	}
	whole := func(name string, text, fault *string, low, high float64, unit string) float64 {
		if t := strings.TrimSpace(typed(name)); t != "" {
			*text = t
		}
		x, ok := press.TypedNumber(*text)
		if !ok || x != math.Trunc(x) || x < low || x > high {
			*fault = say.WholeNumberNeeded(low, high, unit)
		}
		return x
	}
	rules.Items = int(whole("items", &f.Items, &f.ItemsFault, leastItems, mostItems, "questions"))
	rules.Pass = whole("pass", &f.Pass, &f.PassFault, leastPass, mostPass, "%") / 100
	rules.Limit = time.Duration(whole("minutes", &f.Minutes, &f.MinutesFault, leastMinutes, mostMinutes, "minutes")) * time.Minute
	return f, rules
}

// exams are those that a plan has questions for, one of them chosen.
func (v Drill) exams(chosen string) []page.ExamChoice {
	var out []page.ExamChoice
	if v.D == nil {
		return nil
	}
	for _, role := range drill.Roles {
		rules := drill.UsualRules(1)
		rules.Role = role
		x, err := v.D.NewExam(rules)
		if err != nil {
			continue
		}
		out = append(out, page.ExamChoice{
			Value: string(role), Name: say.ExamOf(string(role)), About: say.ExamAsks(string(role)), Rules: examRules(x), GraveIntro: drill.GraveIntro(say.Printer), Grave: drill.GraveRule(say.Printer, role), Chosen: string(role) == chosen,
		})
	}
	return out
}

// UnderWay is an exam that was begun and not handed in.
type UnderWay struct {
	Who, Exam, Address string
	Plan               string // its name, where exams of several are listed; else empty
	Started, LeftFrom  time.Time
	Limit              time.Duration
	Answered, Items    int
}

// UnderWayLines lists them. One whose time is over does not look as if there was time left.
func UnderWayLines(all []UnderWay, now time.Time) []page.ExamUnderWay {
	var out []page.ExamUnderWay
	for _, x := range all {
		line := page.ExamUnderWay{
			Who: x.Who, Plan: x.Plan, Exam: say.ExamOf(x.Exam), Begun: say.When(x.Started), Stamp: words.Stamp(x.Started), Address: x.Address,
			Answered: strconv.Itoa(x.Answered) + " of " + strconv.Itoa(x.Items) + " answered", Open: say.GoOn(),
		}
		if c := Clock(x.Limit, now.Sub(x.Started), x.Started); c.Over != "" {
			line.Left, line.Open = say.TimeOver(x.LeftFrom), say.LookAtTheAnswers()
		} else if c.Until != "" {
			line.Left = c.Left + " left"
		}
		out = append(out, line)
	}
	return out
}

// Clock says how long an exam may still take.
func Clock(limit, took time.Duration, started time.Time) page.ExamClock {
	if limit <= 0 {
		return page.ExamClock{}
	}
	c := page.ExamClock{Until: started.Add(limit).Local().Format("15:04:05")}
	if took >= limit {
		c.Over = say.TimeEnded(c.Until)
		return c
	}
	left := limit - took
	c.Left, c.Seconds, c.Share = Lasting(left), words.Fixed(left.Seconds(), 0), words.Fixed(100*left.Seconds()/limit.Seconds(), 2)
	return c
}

// KeptAnswers says what is kept of the answers of an exam under way.
func KeptAnswers(answered, items int) string {
	if answered == 0 {
		return say.NothingAnsweredYet()
	}
	return "Kept: " + strconv.Itoa(answered) + " of " + strconv.Itoa(items) + " answered"
}

// Lasting writes how long something takes.
func Lasting(d time.Duration) string { return say.Lasting(d) }

// StillOpen asks whether it is meant that questions have no answer.
func StillOpen(n int) string {
	return say.UnansweredWouldMiss(counted(n, "question has", "questions have"))
}

// OutdatedNote says how many people have to take an exam again, by the names of those
// who are due in each.
func OutdatedNote(due map[drill.Role][]string) string {
	people := map[string]bool{}
	var exams, by []string
	for _, role := range drill.Roles {
		for _, who := range due[role] {
			people[who] = true
		}
		if n := len(due[role]); n > 0 {
			exams = append(exams, say.InThe(strings.ToLower(say.ExamOf(string(role)))))
			by = append(by, strconv.Itoa(n)+" "+exams[len(exams)-1])
		}
	}
	if len(people) == 0 {
		return ""
	}
	s := say.PeopleNotPassed(len(people))
	if len(people) == 1 {
		s = say.OneNotPassed()
	}
	if len(exams) == 1 {
		return s + ", " + exams[0] + "."
	}
	return s + ": " + strings.Join(by, ", ") + "."
}
