package view

import (
	"encoding/json"
	"math"
	"strconv"
	"strings"
	"time"

	"ramplan/press/draw"
	"ramplan/press/drill"
	"ramplan/press/words"
	"ramplan/web/page"
)

// A Handheld is the drill of a plan as a file for a phone or tablet.
type Handheld struct {
	Drill
	Issued string    // the day on which the revision was issued; empty for a draft
	Newest string    // letter of the last revision, where it is known
	Made   time.Time // when the file was made
	// Scene draws the compact station of a picture before its push, and gives what moves
	// it to the reading; motion is false where there is nothing to draw.
	Scene func(q drill.Picture, id string) (svg string, m draw.Motion, motion bool, err error)
}

// handheldData is what the script of the file works with.
type handheldData struct {
	Digest   string                  `json:"digest"`
	Revision string                  `json:"revision"`
	Length   int                     `json:"length"` // of a round
	Soon     int                     `json:"soon"`   // questions between a miss and its return
	Times    int                     `json:"times"`  // that a question is asked in one round
	Items    []handheldItem          `json:"items"`
	Rounds   [][]handheldSet         `json:"rounds"` // by level
	Exams    map[string]handheldExam `json:"exams"`  // by the letter of a role, as in a code
	Scenes   map[string]draw.Motion  `json:"scenes"`
}

type handheldItem struct {
	Right   []string          `json:"right"`   // values of choices
	Explain string            `json:"explain"` // why they are right
	Reasons map[string]string `json:"reasons"` // why the others are not
	Grave   map[string]string `json:"grave"`   // what of them fails an exam alone
	Words   string            `json:"words"`   // what is asked, for a list of what was missed
	Answer  string            `json:"answer"`  // the right one, for the same
	Scene   string            `json:"scene,omitempty"`
}

type handheldSet struct {
	Seed   uint64 `json:"seed"`
	Items  []int  `json:"items"`
	Needed int    `json:"needed,omitempty"`
}

type handheldExam struct {
	Title string        `json:"title"`
	Limit float64       `json:"limit"` // s; 0: none
	Sets  []handheldSet `json:"sets"`
}

// facts say which plan it is, and which state of it.
func (v Handheld) facts() []page.Fact {
	state, when := "DRAFT", page.Fact{}
	if v.Letter != "" {
		state, when = v.Letter, page.Fact{Name: "Issued", Text: v.Issued}
		if v.Newest != "" && v.Newest != v.Letter {
			state += ", " + say.SupersededBy(v.Newest, "")
		}
	}
	out := []page.Fact{{Name: "Number", Text: v.P.Title.Number}, {Name: "Revision", Text: state}, {Name: say.PlanDigest(), Text: words.ShortDigest(v.R.PlanDigest())}, when, {Name: say.FileMade(), Text: say.Day(v.Made)}}
	kept := out[:0]
	for _, f := range out {
		if f.Text != "" {
			kept = append(kept, f)
		}
	}
	return kept
}

// Page makes the page, without what its bundle is.
func (v Handheld) Page(h page.DrillHead) (page.HandheldPage, error) {
	h.Kind, h.Title = say.DrillForHandheld(), say.DrillOfTitle(v.P.Title.Name)
	if h.Shout == "" && v.Letter != "" && v.Newest != "" && v.Newest != v.Letter {
		h.Shout = say.DoNotJudgeLoud(strings.ToUpper(say.SupersededBy(v.Newest, "")))
	}
	out := page.HandheldPage{DrillHead: h, Facts: v.facts(), Honest: say.HandheldHonest(), Source: say.HandheldSource(), CodeNote: say.CodeNotes(), When: say.WhenReadIn(v.R), PairsHead: say.PairsHead(v.R), Second: say.SecondOnly(v.R), Brief: v.D.BriefNotices()}
	home := v.Home(h, 1, page.ExamForm{})
	out.Pairs, out.Impossible = home.Pairs, home.Impossible
	taken := v.D.TakeAlong()
	data := handheldData{
		Digest: words.ShortDigest(v.R.PlanDigest()), Revision: v.Letter, Length: drill.RoundLength, Soon: drill.Soon, Times: drill.MostTimes, Exams: map[string]handheldExam{}, Scenes: map[string]draw.Motion{},
	}
	v.lampsOf(&out)
	for i, sets := range taken.Rounds {
		var list []handheldSet
		for _, s := range sets {
			list = append(list, handheldSet{Seed: s.Seed, Items: s.Items})
		}
		data.Rounds = append(data.Rounds, list)
		if len(list) > 0 {
			out.Levels = append(out.Levels, page.DrillLevel{Number: strconv.Itoa(i + 1), What: levelWhat[i](say)})
		}
	}
	for _, x := range taken.Exams {
		code := drill.RoleLetter(x.Rules.Role)
		e := handheldExam{Title: say.ExamOf(string(x.Rules.Role)), Limit: x.Rules.Limit.Seconds()}
		for _, s := range x.Sets {
			e.Sets = append(e.Sets, handheldSet{Seed: s.Seed, Items: s.Items, Needed: int(math.Ceil(x.Rules.Pass*float64(len(s.Items)) - 1e-9))})
		}
		data.Exams[code] = e
		out.Exams = append(out.Exams, page.HandheldExam{Value: code, Title: e.Title, Rules: examRules(x.First), GraveIntro: drill.GraveIntro(say.Printer), Grave: drill.GraveRule(say.Printer, x.Rules.Role)})
	}
	for i, e := range taken.Exercises {
		if err := v.item(&out, &data, i, e); err != nil {
			return out, err
		}
	}
	body, err := json.Marshal(data) // < and > escaped, so that nothing ends the element
	out.Data = `<script type="application/json" id="data">` + string(body) + `</script>`
	return out, err
}

// item puts an exercise on the page, and what is right into the data.
func (v Handheld) item(out *page.HandheldPage, data *handheldData, i int, e drill.Exercise) error {
	v.Draw = nil
	q, err := v.Question(e, "i"+strconv.Itoa(i))
	if err != nil {
		return err
	}
	it := handheldItem{Explain: e.Explain, Reasons: map[string]string{}, Grave: map[string]string{}, Words: e.InWords(), Answer: e.RightInWords()}
	if e.Zone != nil {
		it.Answer = ""
	}
	for n, c := range e.Choices {
		value := choiceValue(n)
		switch j := e.JudgeChosen(c.ID); {
		case j.Right:
			it.Right = append(it.Right, value)
			if e.Zone != nil {
				it.Answer = c.Text
			}
		default:
			it.Reasons[value] = j.Reason
			if j.Grave != "" {
				it.Grave[value] = j.Grave
			}
		}
	}
	if pic := e.Picture; pic != nil && pic.Lamps == nil {
		it.Scene = sceneName(*pic)
		if _, known := data.Scenes[it.Scene]; !known {
			svg, m, ok, err := v.Scene(*pic, it.Scene)
			if err != nil {
				return err
			}
			if ok {
				data.Scenes[it.Scene] = m
				out.Scenes = append(out.Scenes, page.HandheldScene{ID: it.Scene, SVG: svg})
			} else {
				it.Scene = ""
			}
		}
		if it.Scene != "" {
			q.Picture = `<div class="scene" data-scene="` + it.Scene + `"></div>`
		}
	}
	out.Items = append(out.Items, q)
	data.Items = append(data.Items, it)
	return nil
}

// sceneName names what a picture shows, fit for an id.
func sceneName(q drill.Picture) string {
	if q.Height != nil {
		return "h" + strings.NewReplacer(".", "-", "-", "m", "+", "").Replace(words.Fixed(*q.Height, 3))
	}
	return "r" + strconv.Itoa(q.Row)
}

// lampsOf says of every pair of lamps, after everything that may have happened, what
// it is.
func (v Handheld) lampsOf(out *page.HandheldPage) {
	for _, on := range words.AllPairs {
		for _, when := range words.Situations {
			typed := map[string]string{"arrival": words.OnOff(on.Arrival), "zone": words.OnOff(on.Zone), "when": string(when)}
			p := v.Lamps(page.DrillHead{}, func(name string) string { return typed[name] })
			out.Situations = p.Situations
			if p.Advice != nil {
				out.Advice = append(out.Advice, page.HandheldAdvice{Lamps: drill.PairID(on), Situation: string(when), Title: when.Title(), LampsAdvice: *p.Advice})
			}
		}
	}
	for i := range out.Situations {
		out.Situations[i].Chosen = out.Situations[i].Value == string(words.One)
	}
}
