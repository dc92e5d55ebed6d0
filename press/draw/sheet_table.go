package draw

import (
	"math"
	"slices"
	"strings"

	"ramplan/press/words"
)

// Rooms of a table, px.
const (
	tablePad    = 3  // around the text of a cell
	tableBefore = 16 // above a table under another one
)

// handHeights are those of a row that is filled in by hand, the best first: 8 mm
// down to 6 mm.
var handHeights = []float64{8 * perMM, 7 * perMM, 6 * perMM}

// tableRow is a row of a table while it is laid out.
type tableRow struct {
	cells  [][]setLine
	height float64
	deep   float64 // of the text of its cells
	same   int     // leading cells that say what those of the row above say
}

// laidTable is a table with its rows at one height of those that are filled in by
// hand.
type laidTable struct {
	head tableRow
	rows []tableRow
	high float64 // with what stands over and under it
}

func (s *sheet) layTable(t words.Table, edges []float64, body rect, hand float64) laidTable {
	l := laidTable{head: tableRowOf(heads(t.Columns), t.Columns, edges, sheetBold, 0)}
	l.high = depth(s.tableLead(t, body.width(), false)) + 6 + l.head.height
	for i, r := range t.Rows {
		row := tableRowOf(r, t.Columns, edges, sheetText, hand)
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
	edges := columnEdges(t.Columns, abreastOf(body, abreast))
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

func moved(edges []float64, over float64) []float64 {
	out := slices.Clone(edges)
	for i := range out {
		out[i] += over
	}
	return out
}

// stretches shares rows among stretches that stand beside each other, none higher
// than the room, and gives how high the highest is and what goes on on the next page.
// Those of the last page are about as high as each other.
func stretches(rows []tableRow, abreast int, room float64) (shown [][]tableRow, high float64, rest []tableRow) {
	all, highest := 0.0, 0.0
	for _, r := range rows {
		all, highest = all+r.height, math.Max(highest, r.height)
	}
	for limit := math.Min(all/float64(abreast), room); ; limit += highest / 4 {
		limit = math.Min(limit, room)
		shown, high, rest = nil, 0, rows
		for len(shown) < abreast && len(rest) > 0 {
			n, deep := 0, 0.0
			for n < len(rest) && (n == 0 || deep+rest[n].height <= limit+0.01) {
				deep += rest[n].height
				n++
			}
			shown, high, rest = append(shown, rest[:n]), math.Max(high, deep), rest[n:]
		}
		if len(rest) == 0 || limit >= room {
			return shown, high, rest
		}
	}
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

// columnEdges gives the left edges of the columns, and the right one of the last.
func columnEdges(columns []words.Column, body rect) []float64 {
	sum := 0.0
	for _, c := range columns {
		sum += c.Share
	}
	out, x := []float64{body.x0}, body.x0
	for _, c := range columns {
		x += c.Share / sum * body.width()
		out = append(out, x)
	}
	return out
}

func tableRowOf(texts []string, columns []words.Column, edges []float64, st style, hand float64) tableRow {
	row := tableRow{}
	for i, text := range texts {
		lines := set([]paragraph{{text: text, style: st}}, edges[i+1]-edges[i]-2*tablePad)
		row.cells = append(row.cells, lines)
		row.height = math.Max(row.height, depth(lines)+2*tablePad)
		row.deep = math.Max(row.deep, depth(lines))
		if columns[i].Box {
			row.height = math.Max(row.height, hand)
		}
	}
	return row
}

// table draws rows, the first of them the heading.
func (p *pen) table(edges []float64, top float64, rows []tableRow) {
	left, right := edges[0], edges[len(edges)-1]
	y := top
	grouped := slices.ContainsFunc(rows, func(r tableRow) bool { return r.same > 0 })
	for i, row := range rows {
		over := (row.height - row.deep) / 2
		for k, lines := range row.cells {
			if k < row.same && i > 1 {
				continue // one cell with the one above
			}
			placed, _ := pour(lines, []rect{{edges[k] + tablePad, y + over - 1, edges[k+1] - tablePad, y + row.height + 1}})
			p.write(placed)
		}
		y += row.height
		k, width := quiet, thinLine*0.5
		from := left
		switch {
		case i+1 < len(rows) && i > 0 && rows[i+1].same > 0:
			from = edges[rows[i+1].same]
		case i == 0 || grouped:
			k, width = black, sheetThin
		}
		p.line(k, width, solid, [2]float64{from, y}, [2]float64{right, y})
	}
	for _, x := range edges[1 : len(edges)-1] {
		p.line(quiet, thinLine*0.5, solid, [2]float64{x, top}, [2]float64{x, y})
	}
	p.frame(black, sheetThin, solid, rect{left, top, right, y})
}
