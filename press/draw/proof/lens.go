package proof

import (
	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
)

// A lensFrame is a drawing over the lens of the decision strip: rows of its own, and under
// them the ruler, the zone with the push end, and what each reading means.
type lensFrame struct {
	*frame
	lens  *draw.Lens
	rows  []lensRow
	top   float64
	edges typeset.Callouts
}

// A lensRow is one row over the lens: its name at the side, or over it in the narrow form.
type lensRow struct {
	name, note string
	box        canvas.Rectangle
	paint      func(*canvas.Pen, canvas.Rectangle)
}

// gutter is the width of the column that names the rows, px.
const gutter = 136

// newLensFrame begins one; the room at the right is for columns beside it.
func newLensFrame(kind, title, desc string, plan *press.Result, o draw.Options, right float64, places ...float64) *lensFrame {
	left := float64(gutter)
	if o.Compact {
		left, right = 0, 0
	}
	l := &lensFrame{frame: newFrame(kind, title, desc, o, left, right)}
	l.lens = draw.NewLens(plan.Plan, plan, l.left, l.right, places...)
	l.x = l.lens.Scale()
	l.top = l.y + 4
	l.y = l.top + 6
	return l
}

// row adds a row under those there are.
func (l *lensFrame) row(name, note string, height float64, paint func(*canvas.Pen, canvas.Rectangle)) canvas.Rectangle {
	if l.o.Compact && name != "" {
		l.y += 4 + canvas.Leading*canvas.Small
	}
	box := canvas.Rect(l.left, l.y, l.right, l.y+height)
	l.rows = append(l.rows, lensRow{name, note, box, paint})
	l.y = box.Y1 + 8
	return box
}

// foot adds the rows of the strip itself, and ends the lens.
func (l *lensFrame) foot(key ...keyItem) {
	l.row("", say.RamPositionAxis(), 24, l.lens.Ruler)
	l.row(say.ZoneAndPushEnd(), "", 28, l.lens.Zone)
	if l.lens.HasVerdicts() {
		l.row("verdict", say.OfTwoSignals(), 34, l.lens.Verdicts)
	}
	l.y -= 4
	bottom := l.y
	l.edges = typeset.LayCallouts(l.lens.Callouts(), canvas.Margin, l.width-canvas.Margin)
	l.y = bottom + l.edges.Height()
	l.explain(key)
}

// bottom is the lower edge of the frame around the rows.
func (l *lensFrame) bottom() float64 { return l.rows[len(l.rows)-1].box.Y1 + 4 }

// overlap tints the readings that give both signals, between two heights.
func (l *lensFrame) overlap(p *canvas.Pen, top, bottom float64) {
	if o := l.lens.Overlap(); o != nil {
		p.Fill(canvas.Good.Tint(canvas.FillTint), canvas.Rect(l.x.At(o[0]), top, l.x.At(o[1]), bottom))
	}
}

func (l *lensFrame) paint(p *canvas.Pen) {
	l.lens.Guides(p, l.top, l.bottom())
	for _, row := range l.rows {
		l.named(p, row)
		row.paint(p, row.box)
	}
	box := canvas.Rect(canvas.Crisp(l.left), canvas.Crisp(l.top), canvas.Crisp(l.right), canvas.Crisp(l.bottom()))
	p.Frame(canvas.Quiet, canvas.ThinLine, canvas.Solid, box)
	l.edges.Below(p, l.bottom())
}

func (l *lensFrame) named(p *canvas.Pen, row lensRow) {
	main, side := canvas.Bold(canvas.Black, canvas.Small), canvas.Plain(canvas.Quiet, canvas.Small)
	mid := (row.box.Y0 + row.box.Y1) / 2
	switch {
	case l.o.Compact && row.name == "":
		p.Text(side, row.box.X1-4, row.box.Y1+12, canvas.End, side.Clip(row.note, row.box.Width()-8))
	case l.o.Compact:
		x, y, w := row.box.X0+4, row.box.Y0-5, main.Width(row.name)
		note := side.Clip(row.note, row.box.Width()-w-20)
		p.Fill(canvas.Paper, canvas.Rect(x-2, y-canvas.Small, x+w+10+side.Width(note), y+4))
		p.Text(main, x, y, canvas.Start, row.name)
		p.Text(side, x+w+8, y, canvas.Start, note)
	case row.name == "":
		p.Text(side, canvas.Margin, mid+4, canvas.Start, row.note)
	case row.note == "":
		p.Text(main, canvas.Margin, mid+4, canvas.Start, main.Clip(row.name, gutter-6))
	default:
		p.Text(main, canvas.Margin, mid-3, canvas.Start, main.Clip(row.name, gutter-6))
		notes := side.Wrap(row.note, gutter-6)
		for i, line := range notes {
			p.Text(side, canvas.Margin, mid+12+float64(i)*15, canvas.Start, line)
		}
	}
}
