package draw

import (
	"strconv"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/words"
)

// titleWidth is the width of a title block: 180 mm (ISO 7200).
const titleWidth = 180 * perMM

// Heights of the rows of a title block, px.
const (
	cellHeight   = 27
	reasonHeight = 2*1.27*lettering18 + 8
	lettering18  = 1.8 * perMM / capitals
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

// titleReason is a line over the block that only issued revisions have.
type titleReason struct{ label, text string }

func newTitleBlock(p *press.Plan, r *press.Result, issue *carry.Issue) titleBlock {
	t := p.Title
	b := titleBlock{name: t.Name, number: t.Number, creator: t.PreparedBy}
	revision, checked, approved := "draft", t.CheckedBy, t.ApprovedBy
	if issue != nil {
		revision, b.date = issue.Revision, issue.Date
		b.creator, checked, approved = issue.Prepared, issue.Checked, issue.Approved
		b.reasons = append(b.reasons, titleReason{"Reason for the change:", issue.Reason})
		if issue.Despite != "" || issue.Second != "" {
			b.reasons = append(b.reasons, titleReason{"Issued despite blockers, second name " + issue.Second + ":", issue.Despite})
		}
	}
	b.rows = [][]titleCell{
		{{label: "Created by", value: b.creator, mm: 40}, {label: "Checked by", value: checked, mm: 40}, {label: "Approved by", value: approved, mm: 40},
			{label: "Date of issue", value: b.date, mm: 28}, {label: "Plan digest", value: words.ShortDigest(r.PlanDigest), mm: 32}},
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

// heading names the document among others.
func (b titleBlock) heading() string {
	if b.number == "" {
		return b.name
	}
	return b.number + " " + b.name
}

func (b titleBlock) height() float64 {
	return float64(len(b.rows))*cellHeight + float64(len(b.reasons))*reasonHeight
}

func (b titleBlock) paint(p *pen, box rect, number, count int) {
	y := box.y0
	for _, q := range b.reasons {
		p.reason(q, rect{box.x0, y, box.x1, y + reasonHeight})
		y += reasonHeight
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

// cell writes a label and under it a value: smaller, then shortened, where it is
// too long for its box.
func (p *pen) cell(c titleCell, box rect) {
	const pad = 5
	p.text(sheetQuiet, box.x0+pad, box.y0+2+0.8*sheetLeast, start, c.label)
	st := sheetValue
	if c.bold {
		st = sheetLarge
	}
	room := box.width() - 2*pad
	if st.width(c.value) > room {
		st.size = sheetLeast
	}
	p.text(st, box.x0+pad, box.y1-5, start, st.face().clip(oneLine(c.value), st.size, room))
}

// reason writes a text of two lines at most.
func (p *pen) reason(q titleReason, box rect) {
	const pad = 5
	width := box.width() - 2*pad
	if room := 0.6 * width; sheetBold.width(q.label) > room {
		q.label = sheetBold.face().clip(q.label, sheetBold.size, room)
	}
	lines := set([]paragraph{{opening: q.label, text: oneLine(q.text), style: sheetText}}, width)
	if len(lines) > 2 {
		lines = lines[:2]
		lines[1].text = sheetText.face().clip(lines[1].text+"…", sheetLeast, width)
		if last := lines[1].text; sheetText.width(last) > width-10 {
			lines[1].text = sheetText.face().clip(last, sheetLeast, width-10)
		}
	}
	inner := rect{box.x0 + pad, box.y0 + 3, box.x1 - pad, box.y1}
	placed, _ := pour(lines, []rect{inner})
	p.write(placed)
}
