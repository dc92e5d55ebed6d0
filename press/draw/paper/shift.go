package paper

import (
	"math"

	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
)

// A ShiftHistory is the checks of the shifts at one station, to be printed and signed.
type ShiftHistory struct {
	Number, Name string // of the plan
	From, To     string // days, of the first and the last check; empty without one
	Day          string // on which it is printed
	Rows         []ShiftRow
}

// A ShiftRow is one sample of a check.
type ShiftRow struct {
	When, Who, Revision     string
	Sample, Predicted, Came string
	Passed                  bool
}

// NewShiftHistory lays out the history of the checks of the shifts.
func NewShiftHistory(h ShiftHistory) *RecordSheet {
	d := layShifts(h)
	out := &RecordSheet{}
	var rows [][]typeset.Row
	for from := 0; ; {
		n, last := d.fitting(from, len(rows) == 0)
		rows = append(rows, d.rows[from:from+n])
		if from += n; from >= len(d.rows) && last {
			break
		}
	}
	for i, list := range rows {
		out.pages = append(out.pages, d.picture(typeset.UprightHeight, i+1, len(rows), list))
	}
	high := d.top(true) + d.head.Height + d.high(d.rows) + d.foot() + recordMargin
	out.whole = d.picture(math.Max(typeset.UprightHeight, math.Ceil(high)), 1, 1, d.rows)
	return out
}

// shifts is the history while it is laid out.
type shifts struct {
	h     ShiftHistory
	edges []float64
	head  typeset.Row
	rows  []typeset.Row
	lead  typeset.Block
	note  typeset.Block
}

// shiftShares are those of the columns: when, who, revision, sample, predicted, came, result.
var shiftShares = []float64{2.2, 2.2, 0.9, 2.2, 2, 2, 1.2}

func layShifts(h ShiftHistory) *shifts {
	width := typeset.UprightWidth - 2*recordMargin
	d := &shifts{h: h, edges: typeset.Edges(shiftShares, canvas.Rect(recordMargin, 0, recordMargin+width, 0))}
	bold, plain := canvas.Bold(canvas.Black, canvas.Lettered(2)), canvas.Plain(canvas.Black, canvas.Lettered(2))
	d.head = typeset.NewRow(say.ShiftHeads(), d.edges, bold)
	failed := 0
	for _, row := range h.Rows {
		st := plain
		if !row.Passed {
			st = bold
			failed++
		}
		d.rows = append(d.rows, typeset.NewRow([]string{row.When, row.Who, row.Revision, say.SampleSaid(row.Sample), row.Predicted, row.Came, say.ShiftResult(row.Passed)}, d.edges, st))
	}
	d.lead = typeset.Fill(recordText(), say.ShiftLead(h.Number, h.Name, len(h.Rows), failed, h.From, h.To, h.Day), width)
	d.note = typeset.Fill(recordText(), say.ShiftNote(), width)
	return d
}

// top is where the table begins on the first page, and on others.
func (d *shifts) top(first bool) float64 {
	y := recordMargin + recordHead().Size + 14
	if first {
		y += d.lead.Height() + 8
	}
	return y
}

func (d *shifts) high(rows []typeset.Row) float64 {
	sum := 0.0
	for _, r := range rows {
		sum += r.Height
	}
	return sum
}

// foot is what is kept free under the table on the last page, for the note and those who sign.
func (d *shifts) foot() float64 { return 24 + d.note.Height() + float64(len(shiftSigns))*signLine }

// signLine is the room of a line to sign on, px.
const signLine = 52

// shiftSigns are who signs.
var shiftSigns = []string{"Shift lead", "Quality"}

// fitting is how many rows go on a page, and whether those who sign find room under them.
func (d *shifts) fitting(from int, first bool) (n int, last bool) {
	room := typeset.UprightHeight - recordMargin - d.top(first) - d.head.Height - 20
	used := 0.0
	for from+n < len(d.rows) && used+d.rows[from+n].Height <= room {
		used += d.rows[from+n].Height
		n++
	}
	return n, from+n >= len(d.rows) && used+d.foot() <= room
}

func (d *shifts) picture(height float64, number, of int, rows []typeset.Row) *canvas.Picture {
	return canvas.NewPicture(canvas.Layout{Kind: "shifts", Title: say.ShiftHistoryTitle(), Desc: d.desc(), Width: typeset.UprightWidth, Height: height, Fixed: true,
		Paint: func(p *canvas.Pen) { d.paint(p, height, number, of, rows) }})
}

func (d *shifts) desc() string {
	s := say.ShiftLead(d.h.Number, d.h.Name, len(d.h.Rows), d.failed(), d.h.From, d.h.To, d.h.Day)
	for _, r := range d.h.Rows {
		s += " " + say.ShiftRowText(r.When, r.Who, r.Sample, r.Predicted, r.Came, r.Passed)
	}
	return s
}

func (d *shifts) failed() int {
	n := 0
	for _, r := range d.h.Rows {
		if !r.Passed {
			n++
		}
	}
	return n
}

func (d *shifts) paint(p *canvas.Pen, height float64, number, of int, rows []typeset.Row) {
	right := typeset.UprightWidth - recordMargin
	p.Text(recordHead(), recordMargin, recordMargin+recordHead().Size, canvas.Start, say.ShiftHistoryTitle())
	p.Text(canvas.Plain(canvas.Quiet, recordText().Size), right, recordMargin+recordHead().Size, canvas.End, say.PageOf(number, of))
	y := d.top(number == 1)
	if number == 1 {
		typeset.WriteBlock(p, d.lead, recordMargin, recordMargin+recordHead().Size+14)
	}
	if len(rows) > 0 {
		typeset.WriteTable(p, d.edges, y, append([]typeset.Row{d.head}, rows...))
	}
	if number < of {
		return
	}
	y = height - recordMargin - d.foot() + 24
	y = typeset.WriteBlock(p, d.note, recordMargin, y)
	quiet := canvas.Plain(canvas.Quiet, recordText().Size)
	for i, who := range shiftSigns {
		line := y + signLine*float64(i+1) - 18
		p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{recordMargin, line}, [2]float64{recordMargin + 330, line})
		p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{recordMargin + 360, line}, [2]float64{right, line})
		p.Text(quiet, recordMargin, line+1.2*quiet.Size, canvas.Start, who)
		p.Text(quiet, recordMargin+360, line+1.2*quiet.Size, canvas.Start, "Date")
	}
}
