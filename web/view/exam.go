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

// What an exam may ask for.
const (
	leastPass, mostPass       = 50, 100 // %
	leastMinutes, mostMinutes = 1, 180
)

// ExamRules reads the form that begins an exam.
func ExamRules(typed func(string) string) (page.ExamForm, drill.Rules) {
	f := page.ExamForm{Who: typed("who"), Seed: strings.TrimSpace(typed("seed")), Pass: typed("pass"), Minutes: typed("minutes")}
	seed, err := strconv.ParseUint(f.Seed, 10, 53)
	if err != nil {
		f.SeedFault = "A seed is a whole number. The same one gives the same questions."
	}
	rules := drill.UsualRules(seed)
	whole := func(text string, low, high float64) (float64, bool) {
		x, ok := press.TypedNumber(text)
		return x, ok && x == math.Trunc(x) && x >= low && x <= high
	}
	if x, ok := whole(f.Pass, leastPass, mostPass); ok {
		rules.Pass = x / 100
	} else {
		f.PassFault = "A whole number from 50 to 100 is needed."
	}
	if x, ok := whole(f.Minutes, leastMinutes, mostMinutes); ok {
		rules.Limit = time.Duration(x) * time.Minute
	} else {
		f.MinutesFault = "A whole number from 1 to 180 is needed."
	}
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
		return "1 person passed last on another state of this plan than the one that counts now."
	}
	return strconv.Itoa(n) + " people passed last on another state of this plan than the one that counts now."
}
