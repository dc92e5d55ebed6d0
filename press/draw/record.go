package draw

import (
	"slices"
	"strings"
	"time"

	"ramplan/press/words"
)

// Record is a training that took place, as it is printed for the file.
type Record struct {
	Who        string
	When       time.Time
	Plan       string // name
	Number     string
	Revision   string // empty: a draft
	Digest     string // of the plan
	Exam       string // whose, such as technician; empty: the one exam of older programs
	Seed       uint64
	Items      int
	Right      int
	Needed     int
	Took       time.Duration
	Limit      time.Duration // 0: none
	Passed     bool
	OverTime   bool
	Unfinished bool     // begun and left
	TypedIn    bool     // from a code that was made on another device
	Answered   int      // of one that is not finished
	Grave      []string // what was answered that failed it whatever the score, each once
	As         string   // letter of the revision that a draft became; empty without
	Repeat     bool     // of a set of questions that the person had seen
	Known      bool     // of one that another person had been given
	Missed     []RecordMiss
	Signs      []string // who signs, a line each; nil: learner and trainer
}

// RecordMiss is an item that was missed, in words; what was given and what is right
// are empty where they were not kept.
type RecordMiss struct {
	Question, Given, Right string
	Number                 int  // of the question in the exam; 0 where it is not known
	Alone                  bool // the answer alone failed it
}

// asked is what was asked, with its number.
func (m RecordMiss) asked() string {
	if m.Number == 0 {
		return m.Question
	}
	return words.Fixed(float64(m.Number), 0) + ". " + m.Question
}

// gravestFirst puts the answers that alone failed an exam before the others.
func gravestFirst(a, b RecordMiss) int {
	switch {
	case a.Alone == b.Alone:
		return 0
	case a.Alone:
		return -1
	}
	return 1
}

func (m RecordMiss) said() string {
	if m.Right == "" {
		return ""
	}
	given := strings.TrimSuffix(m.Given, ".")
	if m.Alone {
		given += " (" + words.AloneFails + ")"
	}
	return "Answered: " + given + ". Right: " + strings.TrimSuffix(m.Right, ".") + "."
}

// Sizes of the sheet, px: A4 upright, capitals of 2.5 mm, titles of 3.5 mm.
const recordMargin = 15 * pxPerMM

// NewRecord makes the one-page sheet of a training, to be signed.
func NewRecord(r Record, o Options) *Picture {
	return paged(cardHeight, func(height float64) *Picture {
		d := layRecord(r)
		d.bottom = height - recordMargin
		return &Picture{kind: "record", id: o.ID, title: "Training record: " + r.Who, desc: d.desc(), width: cardWidth, height: height, paint: d.paint}
	})
}

type record struct {
	r      Record
	rows   [][2]string
	result string
	missed [][2]block // what was asked, and what was said
	bottom float64
}

func recordText() style { return style{black, capital(2.5), false} }

func layRecord(r Record) *record {
	r.Missed = slices.Clone(r.Missed)
	slices.SortStableFunc(r.Missed, gravestFirst) // there may not be room for all
	d := &record{r: r}
	d.result = words.Outcome{Passed: r.Passed, Draft: r.Revision == "" && r.As == "", Below: r.Right < r.Needed, OverTime: r.OverTime, Unfinished: r.Unfinished, Grave: r.Grave}.String()
	if r.TypedIn {
		d.result = words.TypedOutcome(r.Exam, words.Outcome{Passed: r.Passed, Draft: r.Revision == "" && r.As == "", Below: r.Right < r.Needed, OverTime: r.OverTime, Grave: r.Grave})
	}
	if len(r.Signs) == 0 {
		d.r.Signs = []string{"Learner", "Trainer"}
	}
	revision := r.Revision
	if revision == "" {
		revision = "draft, not issued"
		if r.As != "" {
			revision = "draft that became revision " + r.As
		}
	}
	limit := "no limit"
	if r.Limit > 0 {
		limit = "limit " + minutes(r.Limit)
	}
	seed := words.Exact(float64(r.Seed))
	if set := words.SetOf(r.Repeat, r.Known); set != "" {
		seed += ": " + set
	}
	d.rows = [][2]string{
		{"Who", r.Who},
		{"When", r.When.Format("2006-01-02 15:04 UTC-07:00")},
		{"Exam", words.ExamOf(r.Exam)},
		{"Plan", r.Plan},
		{"Number", r.Number},
		{"Revision", revision},
		{"Digest", words.ShortDigest(r.Digest)},
		{"Seed of the exam", seed},
		{"Score", d.score()},
		{"Time taken", minutes(r.Took) + ", " + limit},
	}
	if r.TypedIn {
		d.rows = append(d.rows, [2]string{"This record", words.TypedIn})
	}
	for _, m := range r.Missed {
		small, room := recordText(), cardWidth-2*recordMargin-16
		small.size = capital(2)
		pair := [2]block{small.fill(m.asked(), room)}
		if text := m.said(); text != "" {
			bold := small
			bold.bold = true
			pair[1] = bold.fill(text, room)
		}
		d.missed = append(d.missed, pair)
	}
	return d
}

// minutes writes a time as minutes and seconds.
func minutes(t time.Duration) string {
	s := int(t.Round(time.Second) / time.Second)
	return words.Unit(words.Fixed(float64(s/60), 0), "min") + " " + words.Unit(words.Fixed(float64(s%60), 0), "s")
}

// score is what it came to in figures.
func (d *record) score() string {
	whole := func(n int) string { return words.Fixed(float64(n), 0) }
	if d.r.Unfinished {
		return words.NotFinished(whole(d.r.Answered), whole(d.r.Items))
	}
	out := whole(d.r.Right) + " of " + whole(d.r.Items) + " right"
	if d.r.Needed > 0 { // of practice nothing is
		out += "; " + whole(d.r.Needed) + " needed"
	}
	return out
}

const recordColumn = 150 // px, where the entries begin

func (d *record) paint(p *pen) {
	s := recordText()
	head := style{black, capital(3.5), true}
	right := cardWidth - recordMargin
	y := recordMargin + head.size
	p.text(head, recordMargin, y, start, "Training record: the two lamps of the station")
	y += 10
	for _, row := range d.rows {
		text := row[1]
		if text == "" {
			text = "–"
		}
		b := s.fill(text, right-recordMargin-recordColumn)
		p.text(style{quiet, s.size, false}, recordMargin, y+0.95*s.size+5, start, row[0])
		y = p.block(b, recordMargin+recordColumn, y+5) + 5
		p.line(black, 0.5, solid, [2]float64{recordMargin, y}, [2]float64{right, y})
	}
	box := rect{recordMargin, y + 14, right, y + 14 + 2.2*head.size}
	said := head
	said.size *= fit(said.width(d.result), box.x1-box.x0-24, 1)
	said.size = max(said.size, capital(2))
	lines := said.fill(d.result, box.x1-box.x0-24)
	box.y1 = max(box.y1, box.y0+lines.height()+16)
	p.frame(black, outline, solid, box)
	p.block(lines, box.x0+12, (box.y0+box.y1-lines.height())/2)
	y = box.y1 + 22
	signs := d.bottom - 30 - float64(len(d.r.Signs))*52
	d.paintMissed(p, y, signs-40)
	caution := s.fill("Practice on a plan does not stand for instruction at the machine. Never put a hand into the work space; the lamps are no safety function.", right-recordMargin)
	p.block(caution, recordMargin, signs-caution.height()-4)
	for i, who := range d.r.Signs {
		line := signs + 52*float64(i+1) - 16
		p.line(black, thinLine, solid, [2]float64{recordMargin, line}, [2]float64{recordMargin + 330, line})
		p.line(black, thinLine, solid, [2]float64{recordMargin + 360, line}, [2]float64{right, line})
		p.text(style{quiet, s.size, false}, recordMargin, line+1.3*s.size, start, s.face().clip(who, s.size, 330))
		p.text(style{quiet, s.size, false}, recordMargin+360, line+1.3*s.size, start, "Date")
	}
}

// paintMissed lists what was missed as far as there is room, and says how much is
// left out.
func (d *record) paintMissed(p *pen, y, last float64) {
	s := recordText()
	if len(d.missed) == 0 {
		text := "Nothing was missed."
		if d.r.Unfinished {
			text = "It was begun and left. What was answered was not handed in."
		}
		if d.r.TypedIn {
			text = words.NoMissesInCode
		}
		p.block(s.fill(text, cardWidth-2*recordMargin), recordMargin, y)
		return
	}
	y = p.block((style{black, s.size, true}).fill("Missed:", 200), recordMargin, y)
	for i, b := range d.missed {
		if y+b[0].height()+b[1].height()+2*s.size > last {
			p.block(s.fill("… and "+words.Fixed(float64(len(d.missed)-i), 0)+" more, in the archive.", cardWidth-2*recordMargin), recordMargin, y+2)
			return
		}
		p.text(b[0].style, recordMargin, y+4+0.95*b[0].style.size, start, "–")
		y = p.block(b[1], recordMargin+16, p.block(b[0], recordMargin+16, y+4))
	}
}

func (d *record) desc() string {
	text := d.result + "."
	for _, row := range d.rows {
		text += " " + row[0] + ": " + row[1] + "."
	}
	for _, m := range d.r.Missed {
		text += " Missed: " + strings.TrimSpace(m.asked()+" "+m.said())
	}
	return text
}
