package draw

import (
	"math"
	"slices"
)

// tablePad is kept free around the text of a cell, px.
const tablePad = 3

// tableRow is a row of a table while it is laid out.
type tableRow struct {
	cells  [][]setLine
	height float64
	deep   float64 // of the text of its cells
	same   int     // leading cells that say what those of the row above say
}

// tableEdges gives the left edges of columns that share a box, and the right one of the last.
func tableEdges(shares []float64, box rect) []float64 {
	sum := 0.0
	for _, share := range shares {
		sum += share
	}
	out, x := []float64{box.x0}, box.x0
	for _, share := range shares {
		x += share / sum * box.width()
		out = append(out, x)
	}
	return out
}

// newRow sets the texts of a row between the edges of its columns.
func newRow(texts []string, edges []float64, st style) tableRow {
	row := tableRow{}
	for i, text := range texts {
		lines := set([]paragraph{{text: text, style: st}}, edges[i+1]-edges[i]-2*tablePad)
		row.cells = append(row.cells, lines)
		row.height = math.Max(row.height, depth(lines)+2*tablePad)
		row.deep = math.Max(row.deep, depth(lines))
	}
	return row
}

// moved are the edges of columns, so much farther to the right.
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
