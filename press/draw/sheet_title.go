package draw

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/words"
)

// titleWidth is the width of a title block: 180 mm (ISO 7200).
const titleWidth = 180 * perMM

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
		{{label: "Created by", value: b.creator, mm: 40}, {label: "Checked by", value: checked, mm: 40}, {label: "Approved by", value: approved, mm: 40},
			{label: "Date of issue", value: b.date, mm: 28}, {label: "Plan digest", value: words.ShortDigest(r.PlanDigest()), mm: 32}},
		{{label: "Legal owner", value: t.Owner, mm: 56}, {label: "Document type", value: "Press-fit plan", mm: 38}, {label: "Part number", value: t.PartNumber, mm: 60},
			{label: "Part revision", value: t.PartRevision, mm: 26}},
		{{label: "Title", value: t.Name, mm: 83, bold: true}, {label: "Identification number", value: t.Number, mm: 46, bold: true},
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
		date.label, date.value = "Drawn, not issued", day
	}
}

// supersede says over everything else in the block that a newer revision was issued.
func (b *titleBlock) supersede(by string) {
	if by != "" {
		b.reasons = append([]titleReason{{"Not to be used any more:", by + "."}}, b.reasons...)
		b.rows[2][2].label = "Superseded revision"
	}
}

// reasonsOf are the reasons of an issue, or the room for the one that every issue has.
func reasonsOf(issue *carry.Issue) []titleReason {
	const change = "Reason for the change:"
	if issue == nil {
		return []titleReason{{change, ""}}
	}
	out := []titleReason{{change, issue.Reason}}
	if issue.Despite != "" || issue.Second != "" {
		out = append(out, titleReason{"Issued despite blockers, second name " + issue.Second + ":", issue.Despite})
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

func (b titleBlock) paint(p *pen, box rect, number, count int) {
	y := box.y0
	for _, q := range b.on(number) {
		p.reason(q, rect{box.x0, y, box.x1, y + q.height()})
		y += q.height()
		p.line(black, sheetThin, solid, [2]float64{box.x0, y}, [2]float64{box.x1, y})
	}
	for i, row := range b.rows {
		x := box.x0
		for k, c := range row {
			cell := rect{x, y, x + c.mm*perMM, y + cellHeight}
			if c.page {
				c.value = strconv.Itoa(number) + " of " + strconv.Itoa(count)
			}
			if k > 0 {
				p.line(black, sheetThin, solid, [2]float64{x, y}, [2]float64{x, cell.y1})
			}
			p.cell(c, cell)
			x = cell.x1
		}
		y += cellHeight
		if i < len(b.rows)-1 {
			p.line(black, sheetThin, solid, [2]float64{box.x0, y}, [2]float64{box.x1, y})
		}
	}
	p.frame(black, sheetThick, solid, box)
}

// cut are the fields that do not fit into the block, whole.
func (b titleBlock) cut() []paragraph {
	var out []paragraph
	whole := func(label, text string) {
		out = append(out, paragraph{opening: label, text: text, style: sheetText, above: 2})
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

func shortened(lines []setLine) bool {
	return len(lines) > 0 && strings.HasSuffix(lines[len(lines)-1].text, "…")
}

// fitted is the value as it goes into its box: smaller, then shortened, where it is
// too long.
func (c titleCell) fitted() (string, style) {
	st := sheetValue
	if c.bold {
		st = sheetLarge
	}
	room := c.mm*perMM - 2*cellPad
	if st.width(c.value) > room {
		st.size = sheetLeast
	}
	return st.clip(oneLine(c.value), room), st
}

// cell writes a label and under it the value.
func (p *pen) cell(c titleCell, box rect) {
	p.text(sheetQuiet, box.x0+cellPad, box.y0+2+0.85*sheetLeast, start, c.label)
	text, st := c.fitted()
	p.text(st, box.x0+cellPad, box.y1-5, start, text)
}

// reasonLines is the most lines of a reason; what is longer is cut, and said to be.
const reasonLines = 2

// lines breaks a reason.
func (q titleReason) lines() []setLine {
	width := titleWidth - 2.0*cellPad
	if room := 0.6 * width; sheetBold.width(q.label) > room {
		q.label = sheetBold.clip(q.label, room)
	}
	lines := set([]paragraph{{opening: q.label, text: oneLine(q.text), style: sheetText}}, width)
	if len(lines) > reasonLines {
		lines = lines[:reasonLines]
		last := &lines[reasonLines-1]
		last.text = sheetText.clip(last.text+" …", width)
	}
	return lines
}

func (q titleReason) height() float64 { return depth(q.lines()) + reasonPad }

// reason writes a reason into its box.
func (p *pen) reason(q titleReason, box rect) {
	placed, _ := pour(q.lines(), []rect{{box.x0 + cellPad, box.y0 + 3, box.x1 - cellPad, box.y1}})
	p.write(placed)
}
