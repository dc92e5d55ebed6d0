package draw

import (
	"math"
	"slices"
	"strings"

	"ramplan/press/words"
)

// Rooms of a table, px.
const (
	tableBefore = 16 // above a table under another one
)

// handHeights are those of a row that is filled in by hand, the best first: 8 mm
// down to 6 mm.
var handHeights = []float64{8 * perMM, 7 * perMM, 6 * perMM}

// laidTable is a table with its rows at one height of those that are filled in by
// hand.
type laidTable struct {
	head tableRow
	rows []tableRow
	high float64 // with what stands over and under it
}

func (s *sheet) layTable(t words.Table, edges []float64, body rect, hand float64) laidTable {
	l := laidTable{head: newRow(heads(t.Columns), edges, sheetBold)}
	l.high = depth(s.tableLead(t, body.width(), false)) + 6 + l.head.height
	for i, r := range t.Rows {
		row := newRow(r, edges, sheetText)
		if slices.ContainsFunc(t.Columns, func(c words.Column) bool { return c.Box }) {
			row.height = math.Max(row.height, hand)
		}
		for t.Grouped && i > 0 && row.same < len(r)-1 && r[row.same] == t.Rows[i-1][row.same] {
			row.same++
		}
		l.rows = append(l.rows, row)
	}
	_, rows, _ := stretches(l.rows, max(1, t.Abreast), math.Inf(1))
	l.high += rows
	if len(t.Notes) > 0 {
		_, high := sideBySide(tableNotes(t, body), t, body)
		l.high += 5 + high
	}
	return l
}

// fitTable lays out a table as high as there is room for: under the one before,
// else on a page of its own.
func (s *sheet) fitTable(t words.Table, edges []float64, body rect) (l laidTable, under bool) {
	for _, from := range []float64{s.tableEnd + tableBefore, body.y0} {
		under = from != body.y0
		if under && s.last == nil {
			continue
		}
		for _, hand := range handHeights {
			if l = s.layTable(t, edges, body, hand); from+l.high <= body.y1 {
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
	edges := tableEdges(shares(t.Columns), abreastOf(body, abreast))
	laid, under := s.fitTable(t, edges, body)
	head, rows := laid.head, laid.rows
	lead := s.tableLead(t, body.width(), false)
	g, y := s.last, s.tableEnd+tableBefore
	if under {
		g.name += "; " + t.Title
	} else {
		g, y = s.page(t.Title), body.y0
	}
	for {
		placed, _ := pour(lead, []rect{{body.x0, y, body.x1, body.y1}})
		y += depth(lead) + 6
		top := y
		shown, high, rest := s.stretches(t, rows, body, y+head.height)
		y += head.height + high
		g.add(func(p *pen) {
			p.write(placed)
			for i, rows := range shown {
				over := float64(i) * (body.width() + sheetGutter) / float64(abreast)
				p.table(moved(edges, over), top, append([]tableRow{head}, rows...))
			}
		})
		if rows = rest; len(rows) == 0 {
			s.last, s.tableEnd = g, y
			if len(t.Notes) > 0 {
				s.tableNotes(t, body)
			}
			return
		}
		g, y, lead = s.page(t.Title+", continued"), body.y0, s.tableLead(t, body.width(), true)
	}
}

// stretches are the rows that go on a page, from y on. The notes go behind the last rows:
// where they find no room there, the last rows go along to the next page, so that no
// page holds notes alone.
func (s *sheet) stretches(t words.Table, rows []tableRow, body rect, y float64) (shown [][]tableRow, high float64, rest []tableRow) {
	abreast := max(1, t.Abreast)
	shown, high, rest = stretches(rows, abreast, body.y1-y)
	if len(t.Notes) == 0 || len(rest) > 0 {
		return shown, high, rest
	}
	if _, notes := sideBySide(tableNotes(t, body), t, body); y+high+5+notes <= body.y1 {
		return shown, high, rest
	}
	along := min(rowsAlong*abreast, len(rows)/2)
	shown, high, _ = stretches(rows[:len(rows)-along], abreast, body.y1-y)
	return shown, high, rows[len(rows)-along:]
}

// rowsAlong is how many rows, in each stretch, go to the next page with notes that find no
// room behind all of them.
const rowsAlong = 3

// abreastOf is the room of the first of some stretches that stand beside each other.
func abreastOf(body rect, abreast int) rect {
	body.x1 = body.x0 + (body.width()-float64(abreast-1)*sheetGutter)/float64(abreast)
	return body
}

func (s *sheet) tableLead(t words.Table, width float64, again bool) []setLine {
	title := t.Title
	if again {
		return set([]paragraph{{text: title + ", continued", style: sheetLarge}}, width)
	}
	ps := []paragraph{{text: title, style: sheetLarge}}
	if s.r.Blocked() {
		ps = append(ps, paragraph{text: words.NotForUse(words.NotReady(s.r)), style: style{alert, sheetLeast, true}, above: 3})
	}
	for _, text := range []string{t.Lead, t.Lacking} {
		if text != "" {
			ps = append(ps, paragraph{text: text, style: sheetText, above: 3})
		}
	}
	if len(t.Fill) > 0 {
		for _, line := range blanks(t.Fill, width) {
			ps = append(ps, paragraph{text: line, style: sheetText, above: 14})
		}
	}
	return set(ps, width)
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
		case sheetText.width(joined) <= width:
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
func (s *sheet) tableNotes(t words.Table, body rect) {
	lines := tableNotes(t, body)
	if placed, high := sideBySide(lines, t, rect{body.x0, s.tableEnd + 5, body.x1, body.y1}); s.tableEnd+5+high <= body.y1 {
		s.last.add(func(p *pen) { p.write(placed) })
		s.tableEnd += 5 + high
		return
	}
	s.last = s.page(t.Title + ", continued")
	lead := s.tableLead(t, body.width(), true)
	head, _ := pour(lead, []rect{body})
	placed, high := sideBySide(lines, t, rect{body.x0, body.y0 + depth(lead) + 5, body.x1, body.y1})
	s.last.add(func(p *pen) { p.write(append(head, placed...)) })
	s.tableEnd = body.y0 + depth(lead) + 5 + high
}

// tableNotes sets the notes in the width of their columns.
func tableNotes(t words.Table, body rect) []setLine {
	var ps []paragraph
	for _, note := range t.Notes {
		ps = append(ps, item(note))
	}
	width := body.width()
	if len(ps) >= manyNotes {
		width = (width - sheetGutter) / 2
	}
	return set(ps, width)
}

// sideBySide places notes under their heading, in one column or in two of the same
// height, and gives how high they stand.
func sideBySide(lines []setLine, t words.Table, box rect) (placed []placedLine, high float64) {
	if t.Over != "" {
		head := set([]paragraph{{text: t.Over, style: sheetBold}}, box.width())
		placed, _ = pour(head, []rect{{box.x0, box.y0, box.x1, box.y0 + 100}})
		high = depth(head)
	}
	columns := []rect{{box.x0, box.y0 + high, box.x1, 0}}
	if len(t.Notes) >= manyNotes {
		mid := (box.x0 + box.x1) / 2
		columns[0].x1 = mid - sheetGutter/2
		columns = append(columns, rect{mid + sheetGutter/2, box.y0 + high, box.x1, 0})
	}
	for deep := 0.0; ; deep += sheetLeast / 4 {
		for i := range columns {
			columns[i].y1 = columns[i].y0 + deep
		}
		if notes, over := pour(lines, columns); len(over) == 0 {
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
