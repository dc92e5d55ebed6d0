package view

import (
	"math"
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
		h.Letter, h.State = "draft", "The draft: nothing was issued yet, so these figures may still change."
	case v.Letter == "":
		h.Letter, h.State = "draft", "The draft. The station runs by what was issued last, revision "+v.Letters[0]+"."
	case v.Letter == v.Letters[0]:
		h.State = "Revision " + v.Letter + ", the last that was issued."
	default:
		h.State = "Revision " + v.Letter + ", an older one: what was issued last is revision " + v.Letters[0] + "."
	}
	for _, letter := range v.Letters {
		h.States = append(h.States, page.Option{Value: letter, Label: "Revision " + letter, Chosen: letter == v.Letter})
	}
	h.States = append(h.States, page.Option{Value: "draft", Label: "The draft", Chosen: v.Letter == ""})
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
	return page.ExamForm{Items: strconv.Itoa(rules.Items), Pass: words.Trimmed(100*rules.Pass, 0), Minutes: words.Trimmed(rules.Limit.Minutes(), 0)}
}

// ExamRules reads the form that begins an exam. What is left empty is as usual,
// and a seed that nobody typed is the fresh one.
func ExamRules(typed func(string) string, fresh uint64) (page.ExamForm, drill.Rules) {
	f := UsualExam()
	f.Who, f.Seed = typed("who"), strings.TrimSpace(typed("seed"))
	rules := drill.UsualRules(fresh)
	if f.Seed != "" {
		seed, err := strconv.ParseUint(f.Seed, 10, 53)
		if err != nil {
			f.SeedFault = "A seed is a whole number. Leave it empty for questions that nobody has seen."
		}
		rules.Seed = seed
	}
	whole := func(name string, text, fault *string, low, high float64, unit string) float64 {
		if t := strings.TrimSpace(typed(name)); t != "" {
			*text = t
		}
		x, ok := press.TypedNumber(*text)
		if !ok || x != math.Trunc(x) || x < low || x > high {
			*fault = "A whole number from " + words.Trimmed(low, 0) + " to " + words.Trimmed(high, 0) + " " + unit + " is needed."
		}
		return x
	}
	rules.Items = int(whole("items", &f.Items, &f.ItemsFault, leastItems, mostItems, "questions"))
	rules.Pass = whole("pass", &f.Pass, &f.PassFault, leastPass, mostPass, "%") / 100
	rules.Limit = time.Duration(whole("minutes", &f.Minutes, &f.MinutesFault, leastMinutes, mostMinutes, "minutes")) * time.Minute
	return f, rules
}

// TimeLeft says how long an exam may still take.
func TimeLeft(limit, took time.Duration, started time.Time) string {
	if limit <= 0 {
		return ""
	}
	until := started.Add(limit).Local().Format("15:04:05")
	if took >= limit {
		return "The time ended at " + until + ": what is handed in now does not pass."
	}
	return "Hand in by " + until + ", in " + Lasting(limit-took) + ". The program keeps the time."
}

// Lasting writes how long something takes.
func Lasting(d time.Duration) string {
	s := int(d.Round(time.Second).Seconds())
	if s < 60 {
		return words.Unit(strconv.Itoa(s), "s")
	}
	return words.Unit(strconv.Itoa(s/60), "min") + " " + words.Unit(strconv.Itoa(s%60), "s")
}

// OutdatedNote says how many people have to be trained again.
func OutdatedNote(n int) string {
	switch n {
	case 0:
		return ""
	case 1:
		return "1 person has not passed on the state of this plan that counts now."
	}
	return strconv.Itoa(n) + " people have not passed on the state of this plan that counts now."
}
