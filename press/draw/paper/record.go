package paper

import (
	"io"
	"math"
	"slices"
	"strings"
	"time"

	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/training"
	"ramplan/press/words"
)

// A Record is that of an exam, as it is printed for the file: what was missed stands in
// words in its Misses.
type Record struct {
	training.Record
	As string // letter of the revision that a draft became; empty without
}

// asked is what was asked, with its number.
func asked(m training.Miss) string {
	if m.Number == 0 {
		return m.Question
	}
	return words.Fixed(float64(m.Number), 0) + ". " + m.Question
}

// gravestFirst puts the answers that alone failed an exam before the others.
func gravestFirst(a, b training.Miss) int {
	switch {
	case a.Alone == b.Alone:
		return 0
	case a.Alone:
		return -1
	}
	return 1
}

func said(m training.Miss) string {
	if m.Right == "" {
		return ""
	}
	given := strings.TrimSuffix(m.Given, ".")
	if m.Alone {
		given += " (" + words.AloneFails + ")"
	}
	return say.AnsweredRight(given, strings.TrimSuffix(m.Right, "."))
}

// Sizes of the sheet, px: A4 upright, capitals of 2.5 mm, titles of 3.5 mm.
const recordMargin = 15 * canvas.PerMM

// A RecordSheet is a training on paper, to be signed: pages with everything that was
// missed, or one picture that is as long as that takes.
type RecordSheet struct {
	pages []*canvas.Picture
	whole *canvas.Picture
}

// NewRecord lays out the sheet of a training.
func NewRecord(r Record, o draw.Options) *RecordSheet {
	d := layRecord(r)
	need := d.missedFrom + d.missedHeight(0, len(d.missed)) - d.missedTo(0) + recordMargin
	out := &RecordSheet{whole: d.picture(max(typeset.UprightHeight, math.Ceil(need)), 1, 1, 0, o)}
	ends := d.ends(o)
	for i, from := range append([]int{0}, ends[:len(ends)-1]...) {
		out.pages = append(out.pages, d.page(typeset.UprightHeight, i+1, len(ends), from, o))
	}
	return out
}

// Pages gives the pages.
func (s *RecordSheet) Pages() []*canvas.Picture { return s.pages }

// Whole gives everything in one picture.
func (s *RecordSheet) Whole() *canvas.Picture { return s.whole }

// Write writes the pages as one PDF, or the one picture as SVG or PNG.
func (s *RecordSheet) Write(w io.Writer, format string) error {
	if format != "pdf" {
		return s.whole.Write(w, format)
	}
	first := s.pages[0]
	file := canvas.NewFile(first.Title(), first.Description())
	for _, page := range s.pages {
		file.Add(page)
	}
	return file.Write(w)
}

// page is one of the pages, from one of the misses on.
func (d *record) page(height float64, number, of, from int, o draw.Options) *canvas.Picture {
	return typeset.Paged(height, func(height float64) *canvas.Picture { return d.picture(height, number, of, from, o) })
}

func (d *record) picture(height float64, number, of, from int, o draw.Options) *canvas.Picture {
	paint := func(p *canvas.Pen) { d.paint(p, height-recordMargin, of, from) }
	if number > 1 {
		paint = func(p *canvas.Pen) { d.paintOn(p, height-recordMargin, number, of, from) }
	}
	return canvas.NewPicture(canvas.Layout{Kind: "record", ID: o.ID, Title: say.TrainingRecord(d.r.Who), Desc: d.desc(), Width: typeset.UprightWidth, Height: height, Paint: paint})
}

// ends are how many of the misses stand on the pages up to each.
func (d *record) ends(o draw.Options) []int {
	var out []int
	for done := 0; ; {
		last := 0.0
		_ = typeset.Paged(typeset.UprightHeight, func(height float64) *canvas.Picture {
			last = height - recordMargin
			return d.picture(height, len(out)+1, 2, done, o)
		})
		from := d.onFrom()
		if len(out) == 0 {
			from, last = d.missedFrom, d.missedTo(last)
		}
		n := d.fitting(done, from, last)
		if len(out) > 0 {
			n = max(n, 1)
		}
		done += n
		if out = append(out, done); done >= len(d.missed) {
			return out
		}
	}
}

type record struct {
	r      Record
	rows   [][2]string
	result string
	missed [][2]typeset.Block // what was asked, and what was said

	laid       []typeset.Block  // what stands in the rows
	lines      typeset.Block    // the result
	box        canvas.Rectangle // around it
	missedFrom float64          // where the misses begin
}

func recordText() canvas.Style { return canvas.Plain(canvas.Black, canvas.Lettered(2.5)) }

func layRecord(r Record) *record {
	r.Misses = slices.Clone(r.Misses)
	slices.SortStableFunc(r.Misses, gravestFirst) // on the page that is signed
	d := &record{r: r}
	d.result = words.Outcome{Passed: r.Passed, Draft: r.Revision == "" && r.As == "", Below: r.Right < r.Needed, OverTime: r.OverTime, Unfinished: r.Unfinished, Grave: r.Grave}.String()
	if r.TypedIn() != "" {
		d.result = say.TypedOutcome(r.Exam, words.Outcome{Passed: r.Passed, Draft: r.Revision == "" && r.As == "", Below: r.Right < r.Needed, OverTime: r.OverTime, Grave: r.Grave})
	}
	revision := r.Revision
	if revision == "" {
		revision = say.DraftNotIssued()
		if r.As != "" {
			revision = say.DraftThatBecameRevision(r.As)
		}
	}
	limit := say.NoLimit()
	if r.Limit > 0 {
		limit = "limit " + minutes(r.Limit)
	}
	seed := words.Exact(float64(r.Seed))
	if set := say.SetOf(r.Repeat, r.Known); set != "" {
		seed += ": " + set
	}
	d.rows = [][2]string{
		{"Who", r.Who},
		{"When", r.At.Format("2006-01-02 15:04 UTC-07:00")},
		{"Exam", say.ExamOf(r.Exam)},
		{"Plan", r.Name},
		{"Number", r.Number},
		{"Revision", revision},
		{"Digest", words.ShortDigest(r.Digest)},
		{say.SeedOfTheExam(), seed},
		{"Score", d.score()},
		{say.TimeTaken(), minutes(r.Took) + ", " + limit},
	}
	if r.TypedIn() != "" {
		d.rows = append(d.rows, [2]string{say.ThisRecord(), words.TypedIn})
	}
	for _, m := range r.Misses {
		small, room := recordText(), typeset.UprightWidth-2*recordMargin-16
		small.Size = canvas.Lettered(2)
		pair := [2]typeset.Block{typeset.Fill(small, asked(m), room)}
		if text := said(m); text != "" {
			bold := small
			bold.Bold = true
			pair[1] = typeset.Fill(bold, text, room)
		}
		d.missed = append(d.missed, pair)
	}
	d.lay()
	return d
}

// lay finds the places of what stands over the misses.
func (d *record) lay() {
	s, head, right := recordText(), recordHead(), typeset.UprightWidth-recordMargin
	y := recordMargin + head.Size + 10
	for _, row := range d.rows {
		text := row[1]
		if text == "" {
			text = "–"
		}
		b := typeset.Fill(s, text, right-recordMargin-recordColumn)
		d.laid = append(d.laid, b)
		y += b.Height() + 10
	}
	d.box = canvas.Rect(recordMargin, y+14, right, y+14+2.2*head.Size)
	said := head
	said.Size *= canvas.Fit(said.Width(d.result), d.box.X1-d.box.X0-24, 1)
	said.Size = max(said.Size, canvas.Lettered(2))
	d.lines = typeset.Fill(said, d.result, d.box.X1-d.box.X0-24)
	d.box.Y1 = max(d.box.Y1, d.box.Y0+d.lines.Height()+16)
	d.missedFrom = d.box.Y1 + 22
}

func recordHead() canvas.Style { return canvas.Bold(canvas.Black, canvas.Lettered(3.5)) }

// minutes writes a time as minutes and seconds.
func minutes(t time.Duration) string {
	s := int(t.Round(time.Second) / time.Second)
	return words.Unit(words.Fixed(float64(s/60), 0), "min") + " " + words.Unit(words.Fixed(float64(s%60), 0), "s")
}

// score is what it came to in figures.
func (d *record) score() string {
	whole := func(n int) string { return words.Fixed(float64(n), 0) }
	if d.r.Unfinished {
		return say.NotFinished(whole(d.r.Answered), whole(d.r.Items))
	}
	out := whole(d.r.Right) + " of " + whole(d.r.Items) + " right"
	if d.r.Needed > 0 { // of practice nothing is
		out += "; " + whole(d.r.Needed) + " needed"
	}
	return out
}

const recordColumn = 150 // px, where the entries begin

// paint draws the page that is signed.
func (d *record) paint(p *canvas.Pen, bottom float64, pages, from int) {
	s, right := recordText(), typeset.UprightWidth-recordMargin
	y := recordMargin + recordHead().Size
	p.Text(recordHead(), recordMargin, y, canvas.Start, say.RecordHead())
	y += 10
	for i, row := range d.rows {
		p.Text(canvas.Plain(canvas.Quiet, s.Size), recordMargin, y+0.95*s.Size+5, canvas.Start, row[0])
		y = typeset.WriteBlock(p, d.laid[i], recordMargin+recordColumn, y+5) + 5
		p.Line(canvas.Black, 0.5, canvas.Solid, [2]float64{recordMargin, y}, [2]float64{right, y})
	}
	p.Frame(canvas.Black, canvas.Outline, canvas.Solid, d.box)
	typeset.WriteBlock(p, d.lines, d.box.X0+12, (d.box.Y0+d.box.Y1-d.lines.Height())/2)
	low := bottom - signHeight
	d.paintMissed(p, d.missedFrom, d.missedTo(bottom), from)
	if pages > 1 {
		p.Text(canvas.Plain(canvas.Quiet, s.Size), right, low-30-recordCaution().Height(), canvas.End, say.MissedBehind(pages))
	}
	typeset.WriteBlock(p, recordCaution(), recordMargin, low-recordCaution().Height()-4)
	for i, who := range signs {
		line := low + 52*float64(i+1) - 16
		p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{recordMargin, line}, [2]float64{recordMargin + 330, line})
		p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{recordMargin + 360, line}, [2]float64{right, line})
		p.Text(canvas.Plain(canvas.Quiet, s.Size), recordMargin, line+1.3*s.Size, canvas.Start, s.Clip(who, 330))
		p.Text(canvas.Plain(canvas.Quiet, s.Size), recordMargin+360, line+1.3*s.Size, canvas.Start, "Date")
	}
}

func recordCaution() typeset.Block {
	return typeset.Fill(recordText(), say.RecordCaution(), typeset.UprightWidth-2*recordMargin)
}

// signs are who signs, a line each.
var signs = []string{"Learner", "Trainer"}

// signHeight is what is kept free for those who sign.
var signHeight = 30 + float64(len(signs))*52

// missedTo is where the misses must end on the page that is signed.
func (d *record) missedTo(bottom float64) float64 {
	return bottom - signHeight - 40 - recordCaution().Height()
}

// onFrom is where the misses begin on a page behind it.
func (d *record) onFrom() float64 {
	return recordMargin + recordHead().Size + 16 + d.whose().Height() + 16
}

// whose says on a page behind whose record it is.
func (d *record) whose() typeset.Block {
	return typeset.Fill(recordText(), say.RecordFoot(d.rows[0][1], d.rows[1][1], d.r.Number, d.r.Name, d.r.Digest), typeset.UprightWidth-2*recordMargin)
}

// paintOn draws a page behind it.
func (d *record) paintOn(p *canvas.Pen, bottom float64, number, pages, from int) {
	y := recordMargin + recordHead().Size
	p.Text(recordHead(), recordMargin, y, canvas.Start, say.RecordPage(number, pages))
	typeset.WriteBlock(p, d.whose(), recordMargin, y+16)
	d.paintMissed(p, d.onFrom(), bottom, from)
}

// Room of the list of misses, px: over it, and over each.
const (
	overMisses = 4
	overMiss   = 4
)

func missedHead() typeset.Block {
	return typeset.Fill((canvas.Bold(canvas.Black, recordText().Size)), "Missed:", 200)
}

// missedHeight is what some of the misses take, with their heading.
func (d *record) missedHeight(from, to int) float64 {
	y := missedHead().Height() + overMisses
	for _, b := range d.missed[from:to] {
		y += overMiss + b[0].Height() + b[1].Height()
	}
	return y
}

// fitting is how many misses fit between two heights.
func (d *record) fitting(from int, y, last float64) int {
	n := 0
	for from+n < len(d.missed) && y+d.missedHeight(from, from+n+1) <= last {
		n++
	}
	return n
}

// paintMissed lists what was missed, from one of the misses on, as far as there is room.
func (d *record) paintMissed(p *canvas.Pen, y, last float64, from int) {
	s := recordText()
	if len(d.missed) == 0 {
		text := say.NothingMissed()
		if d.r.Unfinished {
			text = say.LeftUnjudged()
		}
		if d.r.TypedIn() != "" {
			text = words.NoMissesInCode
		}
		typeset.WriteBlock(p, typeset.Fill(s, text, typeset.UprightWidth-2*recordMargin), recordMargin, y)
		return
	}
	n := d.fitting(from, y, last)
	y = typeset.WriteBlock(p, missedHead(), recordMargin, y)
	for _, b := range d.missed[from : from+n] {
		p.Text(b[0].Style, recordMargin, y+overMiss+0.95*b[0].Style.Size, canvas.Start, "–")
		y = typeset.WriteBlock(p, b[1], recordMargin+16, typeset.WriteBlock(p, b[0], recordMargin+16, y+overMiss))
	}
}

func (d *record) desc() string {
	text := d.result + "."
	for _, row := range d.rows {
		text += " " + row[0] + ": " + row[1] + "."
	}
	for _, m := range d.r.Misses {
		text += " Missed: " + strings.TrimSpace(asked(m)+" "+said(m))
	}
	return text
}
