package paper

import (
	"math"
	"slices"
	"strings"

	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// tableBefore is kept free above a table that stands under another one, px.
const tableBefore = 16

// handHeights are those of a row that is filled in by hand, the best first: 8 mm
// down to 6 mm.
var handHeights = []float64{8 * canvas.PerMM, 7 * canvas.PerMM, 6 * canvas.PerMM}

// laidTable is a table with its rows at one height of those that are filled in by
// hand.
type laidTable struct {
	head typeset.Row
	rows []typeset.Row
	high float64 // with what stands over and under it
}

func (s *sheet) layTable(t words.Table, edges []float64, body canvas.Rectangle, hand float64) laidTable {
	l := laidTable{head: typeset.NewRow(heads(t.Columns), edges, typeset.Strong)}
	l.high = typeset.Depth(s.tableLead(t, body.Width(), false)) + 6 + l.head.Height
	for i, r := range t.Rows {
		row := typeset.NewRow(r, edges, typeset.Text)
		if slices.ContainsFunc(t.Columns, func(c words.Column) bool { return c.Box }) {
			row.Height = math.Max(row.Height, hand)
		}
		for t.Grouped && i > 0 && row.Same < len(r)-1 && r[row.Same] == t.Rows[i-1][row.Same] {
			row.Same++
		}
		l.rows = append(l.rows, row)
	}
	_, rows, _ := typeset.Stretches(l.rows, max(1, t.Abreast), math.Inf(1))
	l.high += rows
	if len(t.Notes) > 0 {
		_, high := sideBySide(tableNotes(t, body), t, body)
		l.high += 5 + high
	}
	return l
}

// fitTable lays out a table as high as there is room for: under the one before,
// else on a page of its own.
func (s *sheet) fitTable(t words.Table, edges []float64, body canvas.Rectangle) (l laidTable, under bool) {
	for _, from := range []float64{s.tableEnd + tableBefore, body.Y0} {
		under = from != body.Y0
		if under && s.last == nil {
			continue
		}
		for _, hand := range handHeights {
			if l = s.layTable(t, edges, body, hand); from+l.high <= body.Y1 {
				return l, under
			}
		}
	}
	return l, false
}

// table puts a table on pages of its own, or under the one before where the whole
// of it fits there. What needs more pages goes on under the same heading.
func (s *sheet) table(t words.Table) {
	body := s.body()
	abreast := max(1, t.Abreast)
	edges := typeset.Edges(shares(t.Columns), abreastOf(body, abreast))
	laid, under := s.fitTable(t, edges, body)
	head, rows := laid.head, laid.rows
	lead := s.tableLead(t, body.Width(), false)
	g, y := s.last, s.tableEnd+tableBefore
	if under {
		g.name += "; " + t.Title
	} else {
		g, y = s.page(t.Title), body.Y0
	}
	for {
		placed, _ := typeset.Pour(lead, []canvas.Rectangle{canvas.Rect(body.X0, y, body.X1, body.Y1)})
		y += typeset.Depth(lead) + 6
		top := y
		shown, high, rest := s.stretches(t, rows, body, y+head.Height)
		y += head.Height + high
		g.add(func(p *canvas.Pen) {
			typeset.Write(p, placed)
			for i, rows := range shown {
				over := float64(i) * (body.Width() + sheetGutter) / float64(abreast)
				typeset.WriteTable(p, typeset.Moved(edges, over), top, append([]typeset.Row{head}, rows...))
			}
		})
		if rows = rest; len(rows) == 0 {
			s.last, s.tableEnd = g, y
			if len(t.Notes) > 0 {
				s.tableNotes(t, body)
			}
			return
		}
		g, y, lead = s.page(t.Title+", continued"), body.Y0, s.tableLead(t, body.Width(), true)
	}
}

// stretches are the rows that go on a page, from y on. The notes go behind the last rows:
// where they find no room there, the last rows go along to the next page, so that no
// page holds notes alone.
func (s *sheet) stretches(t words.Table, rows []typeset.Row, body canvas.Rectangle, y float64) (shown [][]typeset.Row, high float64, rest []typeset.Row) {
	abreast := max(1, t.Abreast)
	shown, high, rest = typeset.Stretches(rows, abreast, body.Y1-y)
	if len(t.Notes) == 0 || len(rest) > 0 {
		return shown, high, rest
	}
	if _, notes := sideBySide(tableNotes(t, body), t, body); y+high+5+notes <= body.Y1 {
		return shown, high, rest
	}
	along := min(rowsAlong*abreast, len(rows)/2)
	shown, high, _ = typeset.Stretches(rows[:len(rows)-along], abreast, body.Y1-y)
	return shown, high, rows[len(rows)-along:]
}

// rowsAlong is how many rows, in each stretch, go to the next page with notes that find no
// room behind all of them.
const rowsAlong = 3

// abreastOf is the room of the first of some stretches that stand beside each other.
func abreastOf(body canvas.Rectangle, abreast int) canvas.Rectangle {
	body.X1 = body.X0 + (body.Width()-float64(abreast-1)*sheetGutter)/float64(abreast)
	return body
}

func (s *sheet) tableLead(t words.Table, width float64, again bool) []typeset.Line {
	title := t.Title
	if again {
		return typeset.Set([]typeset.Paragraph{{Text: title + ", continued", Style: typeset.Large}}, width)
	}
	ps := []typeset.Paragraph{{Text: title, Style: typeset.Large}}
	if s.r.Blocked() {
		ps = append(ps, typeset.Paragraph{Text: words.NotForUse(words.NotReady(s.r)), Style: canvas.Bold(canvas.Alert, typeset.Least), Above: 3})
	}
	for _, text := range []string{t.Lead, t.Lacking} {
		if text != "" {
			ps = append(ps, typeset.Paragraph{Text: text, Style: typeset.Text, Above: 3})
		}
	}
	if len(t.Fill) > 0 {
		for _, line := range blanks(t.Fill, width) {
			ps = append(ps, typeset.Paragraph{Text: line, Style: typeset.Text, Above: 14})
		}
	}
	return typeset.Set(ps, width)
}

// blanks are lines to write on, each behind its name and on one line with it.
func blanks(names []string, width float64) []string {
	var out []string
	line := ""
	for _, name := range names {
		blank := strings.ReplaceAll(name+": ", " ", "\u00a0") + strings.Repeat("_", 20)
		switch joined := line + "\u00a0\u00a0 " + blank; {
		case line == "":
			line = blank
		case typeset.Text.Width(joined) <= width:
			line = joined
		default:
			out = append(out, line)
			line = blank
		}
	}
	return append(out, line)
}

// manyNotes is from how many notes on they stand in two columns.
const manyNotes = 4

// tableNotes puts what is said under a table there, or on the next page where it
// finds no room.
func (s *sheet) tableNotes(t words.Table, body canvas.Rectangle) {
	lines := tableNotes(t, body)
	if placed, high := sideBySide(lines, t, canvas.Rect(body.X0, s.tableEnd+5, body.X1, body.Y1)); s.tableEnd+5+high <= body.Y1 {
		s.last.add(func(p *canvas.Pen) { typeset.Write(p, placed) })
		s.tableEnd += 5 + high
		return
	}
	s.last = s.page(t.Title + ", continued")
	lead := s.tableLead(t, body.Width(), true)
	head, _ := typeset.Pour(lead, []canvas.Rectangle{body})
	placed, high := sideBySide(lines, t, canvas.Rect(body.X0, body.Y0+typeset.Depth(lead)+5, body.X1, body.Y1))
	s.last.add(func(p *canvas.Pen) { typeset.Write(p, append(head, placed...)) })
	s.tableEnd = body.Y0 + typeset.Depth(lead) + 5 + high
}

// tableNotes sets the notes in the width of their columns.
func tableNotes(t words.Table, body canvas.Rectangle) []typeset.Line {
	var ps []typeset.Paragraph
	for _, note := range t.Notes {
		ps = append(ps, typeset.Item(note))
	}
	width := body.Width()
	if len(ps) >= manyNotes {
		width = (width - sheetGutter) / 2
	}
	return typeset.Set(ps, width)
}

// sideBySide places notes under their heading, in one column or in two of the same
// height, and gives how high they stand.
func sideBySide(lines []typeset.Line, t words.Table, box canvas.Rectangle) (placed []typeset.PlacedLine, high float64) {
	if t.Over != "" {
		head := typeset.Set([]typeset.Paragraph{{Text: t.Over, Style: typeset.Strong}}, box.Width())
		placed, _ = typeset.Pour(head, []canvas.Rectangle{canvas.Rect(box.X0, box.Y0, box.X1, box.Y0+100)})
		high = typeset.Depth(head)
	}
	columns := []canvas.Rectangle{canvas.Rect(box.X0, box.Y0+high, box.X1, 0)}
	if len(t.Notes) >= manyNotes {
		mid := (box.X0 + box.X1) / 2
		columns[0].X1 = mid - sheetGutter/2
		columns = append(columns, canvas.Rect(mid+sheetGutter/2, box.Y0+high, box.X1, 0))
	}
	for deep := 0.0; ; deep += typeset.Least / 4 {
		for i := range columns {
			columns[i].Y1 = columns[i].Y0 + deep
		}
		if notes, over := typeset.Pour(lines, columns); len(over) == 0 {
			return append(placed, notes...), high + deep
		}
	}
}

func heads(columns []words.Column) []string {
	var out []string
	for _, c := range columns {
		out = append(out, c.Head)
	}
	return out
}

func shares(columns []words.Column) []float64 {
	var out []float64
	for _, c := range columns {
		out = append(out, c.Share)
	}
	return out
}
