package paper

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// titleWidth is the width of a title block: 180 mm (ISO 7200).
const titleWidth = 180 * canvas.PerMM

// Heights of the rows of a title block, px.
const (
	cellHeight = 29
	cellPad    = 5 // beside a text
	reasonPad  = 8 // above and below a reason, together
)

// titleBlock holds the data fields of ISO 7200. A field that the plan does not
// give stays an empty box with its label.
type titleBlock struct {
	rows    [][]titleCell
	reasons []titleReason
	name    string
	creator string
	number  string
	date    string
}

// titleCell is one field: its label over its value.
type titleCell struct {
	label, value string
	mm           float64
	bold         bool
	page         bool // the value is the number of the page
}

// titleReason is a line over the block of the first page. The reason for a change has
// its room on a draft as well, so that a plan takes as many pages after it is issued
// as before.
type titleReason struct{ label, text string }

func newTitleBlock(p *press.Plan, r *press.Result, issue *carry.Issue) titleBlock {
	t := p.Title
	b := titleBlock{name: t.Name, number: t.Number, creator: t.PreparedBy}
	revision, checked, approved := words.DraftMark, t.CheckedBy, t.ApprovedBy
	if issue != nil {
		revision, b.date = issue.Revision, issue.Date
		b.creator, checked, approved = issue.Prepared, issue.Checked, issue.Approved
	}
	b.reasons = reasonsOf(issue)
	b.rows = [][]titleCell{
		{{label: say.CreatedBy(), value: b.creator, mm: 40}, {label: say.CheckedBy(), value: checked, mm: 40}, {label: say.ApprovedBy(), value: approved, mm: 40},
			{label: say.DateOfIssue(), value: b.date, mm: 28}, {label: say.PlanDigest(), value: words.ShortDigest(r.PlanDigest()), mm: 32}},
		{{label: say.LegalOwner(), value: t.Owner, mm: 56}, {label: say.DocumentType(), value: say.PressFitPlan(), mm: 38}, {label: say.PartNumber(), value: t.PartNumber, mm: 60},
			{label: say.PartRevision(), value: t.PartRevision, mm: 26}},
		{{label: "Title", value: t.Name, mm: 83, bold: true}, {label: say.IdentificationNumber(), value: t.Number, mm: 46, bold: true},
			{label: "Revision", value: revision, mm: 25, bold: true}, {label: "Page", mm: 26, page: true}},
	}
	if t.Characteristic != "" {
		b.reasons = append([]titleReason{{"Characteristic:", t.Characteristic}}, b.reasons...)
	}
	return b
}

// drawn puts the day on which a draft was drawn where an issued plan has its date.
func (b *titleBlock) drawn(day string) {
	if day != "" {
		date := &b.rows[0][3]
		date.label, date.value = say.DrawnNotIssued(), day
	}
}

// supersede says over everything else in the block that a newer revision was issued.
func (b *titleBlock) supersede(by string) {
	if by != "" {
		b.reasons = append([]titleReason{{say.NotToBeUsed(), by + "."}}, b.reasons...)
		b.rows[2][2].label = say.SupersededRevision()
	}
}

// prove says at the revision whether its station is proved.
func (b *titleBlock) prove(not bool) {
	b.rows[2][2].label = say.RevisionProved(!not)
}

// reasonsOf are the reasons of an issue, or the room for the one that every issue has.
func reasonsOf(issue *carry.Issue) []titleReason {
	change := say.ReasonHead()
	if issue == nil {
		return []titleReason{{change, ""}}
	}
	out := []titleReason{{change, issue.Reason}}
	if issue.Despite != "" || issue.Second != "" {
		out = append(out, titleReason{say.DespiteBlockersHead(issue.Second), issue.Despite})
	}
	return out
}

// heading names the document among others.
func (b titleBlock) heading() string {
	if b.number == "" {
		return b.name
	}
	return b.number + " " + b.name
}

// height of the block on a page; the reasons stand on the first.
func (b titleBlock) height(page int) float64 {
	h := float64(len(b.rows)) * cellHeight
	for _, q := range b.on(page) {
		h += q.height()
	}
	return h
}

// on are the reasons on a page.
func (b titleBlock) on(page int) []titleReason {
	if page == 1 {
		return b.reasons
	}
	return nil
}

func (b titleBlock) paint(p *canvas.Pen, box canvas.Rectangle, number, count int) {
	y := box.Y0
	for _, q := range b.on(number) {
		writeReason(p, q, canvas.Rect(box.X0, y, box.X1, y+q.height()))
		y += q.height()
		p.Line(canvas.Black, typeset.Thin, canvas.Solid, [2]float64{box.X0, y}, [2]float64{box.X1, y})
	}
	for i, row := range b.rows {
		x := box.X0
		for k, c := range row {
			cell := canvas.Rect(x, y, x+c.mm*canvas.PerMM, y+cellHeight)
			if c.page {
				c.value = strconv.Itoa(number) + " of " + strconv.Itoa(count)
			}
			if k > 0 {
				p.Line(canvas.Black, typeset.Thin, canvas.Solid, [2]float64{x, y}, [2]float64{x, cell.Y1})
			}
			writeCell(p, c, cell)
			x = cell.X1
		}
		y += cellHeight
		if i < len(b.rows)-1 {
			p.Line(canvas.Black, typeset.Thin, canvas.Solid, [2]float64{box.X0, y}, [2]float64{box.X1, y})
		}
	}
	p.Frame(canvas.Black, typeset.Thick, canvas.Solid, box)
}

// cut are the fields that do not fit into the block, whole.
func (b titleBlock) cut() []typeset.Paragraph {
	var out []typeset.Paragraph
	whole := func(label, text string) {
		out = append(out, typeset.Paragraph{Opening: label, Text: text, Style: typeset.Text, Above: 2})
	}
	for _, q := range b.reasons {
		if shortened(q.lines()) {
			whole(q.label, q.text)
		}
	}
	for _, row := range b.rows {
		for _, c := range row {
			if text, _ := c.fitted(); !c.page && text != oneLine(c.value) {
				whole(c.label+":", c.value)
			}
		}
	}
	return out
}

func shortened(lines []typeset.Line) bool {
	return len(lines) > 0 && strings.HasSuffix(lines[len(lines)-1].Text, "…")
}

// fitted is the value as it goes into its box: smaller, then shortened, where it is
// too long.
func (c titleCell) fitted() (string, canvas.Style) {
	st := typeset.Value
	if c.bold {
		st = typeset.Large
	}
	room := c.mm*canvas.PerMM - 2*cellPad
	if st.Width(c.value) > room {
		st.Size = typeset.Least
	}
	return st.Clip(oneLine(c.value), room), st
}

// writeCell writes a label and under it the value.
func writeCell(p *canvas.Pen, c titleCell, box canvas.Rectangle) {
	p.Text(typeset.Quiet, box.X0+cellPad, box.Y0+2+0.85*typeset.Least, canvas.Start, c.label)
	text, st := c.fitted()
	p.Text(st, box.X0+cellPad, box.Y1-5, canvas.Start, text)
}

// reasonLines is the most lines of a reason; what is longer is cut, and said to be.
const reasonLines = 2

// lines breaks a reason.
func (q titleReason) lines() []typeset.Line {
	width := titleWidth - 2.0*cellPad
	if room := 0.6 * width; typeset.Strong.Width(q.label) > room {
		q.label = typeset.Strong.Clip(q.label, room)
	}
	lines := typeset.Set([]typeset.Paragraph{{Opening: q.label, Text: oneLine(q.text), Style: typeset.Text}}, width)
	if len(lines) > reasonLines {
		lines = lines[:reasonLines]
		last := &lines[reasonLines-1]
		last.Text = typeset.Text.Clip(last.Text+" …", width)
	}
	return lines
}

func (q titleReason) height() float64 { return typeset.Depth(q.lines()) + reasonPad }

// writeReason writes a reason into its box.
func writeReason(p *canvas.Pen, q titleReason, box canvas.Rectangle) {
	placed, _ := typeset.Pour(q.lines(), []canvas.Rectangle{canvas.Rect(box.X0+cellPad, box.Y0+3, box.X1-cellPad, box.Y1)})
	typeset.Write(p, placed)
}
