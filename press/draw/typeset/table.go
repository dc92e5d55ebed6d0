package typeset

import (
	"math"
	"slices"

	"ramplan/press/draw/canvas"
)

// tablePad is kept free around the text of a cell, px.
const tablePad = 3

// Row is a row of a table while it is laid out.
type Row struct {
	cells  [][]Line
	Height float64
	deep   float64 // of the text of its cells
	Same   int     // leading cells that say what those of the row above say
}

// Edges gives the left edges of columns that share a box, and the right one of the last.
func Edges(shares []float64, box canvas.Rectangle) []float64 {
	sum := 0.0
	for _, share := range shares {
		sum += share
	}
	out, x := []float64{box.X0}, box.X0
	for _, share := range shares {
		x += share / sum * box.Width()
		out = append(out, x)
	}
	return out
}

// NewRow sets the texts of a row between the edges of its columns.
func NewRow(texts []string, edges []float64, st canvas.Style) Row {
	row := Row{}
	for i, text := range texts {
		lines := Set([]Paragraph{{Text: text, Style: st}}, edges[i+1]-edges[i]-2*tablePad)
		row.cells = append(row.cells, lines)
		row.Height = math.Max(row.Height, Depth(lines)+2*tablePad)
		row.deep = math.Max(row.deep, Depth(lines))
	}
	return row
}

// Moved are the edges of columns, so much farther to the right.
func Moved(edges []float64, over float64) []float64 {
	out := slices.Clone(edges)
	for i := range out {
		out[i] += over
	}
	return out
}

// Stretches shares rows among stretches that stand beside each other, none higher
// than the room, and gives how high the highest is and what goes on on the next page.
// Those of the last page are about as high as each other.
func Stretches(rows []Row, abreast int, room float64) (shown [][]Row, high float64, rest []Row) {
	all, highest := 0.0, 0.0
	for _, r := range rows {
		all, highest = all+r.Height, math.Max(highest, r.Height)
	}
	for limit := math.Min(all/float64(abreast), room); ; limit += highest / 4 {
		limit = math.Min(limit, room)
		shown, high, rest = nil, 0, rows
		for len(shown) < abreast && len(rest) > 0 {
			n, deep := 0, 0.0
			for n < len(rest) && (n == 0 || deep+rest[n].Height <= limit+0.01) {
				deep += rest[n].Height
				n++
			}
			shown, high, rest = append(shown, rest[:n]), math.Max(high, deep), rest[n:]
		}
		if len(rest) == 0 || limit >= room {
			return shown, high, rest
		}
	}
}

// WriteTable draws rows, the first of them the heading.
func WriteTable(p *canvas.Pen, edges []float64, top float64, rows []Row) {
	left, right := edges[0], edges[len(edges)-1]
	y := top
	grouped := slices.ContainsFunc(rows, func(r Row) bool { return r.Same > 0 })
	for i, row := range rows {
		over := (row.Height - row.deep) / 2
		for k, lines := range row.cells {
			if k < row.Same && i > 1 {
				continue // one cell with the one above
			}
			placed, _ := Pour(lines, []canvas.Rectangle{canvas.Rect(edges[k]+tablePad, y+over-1, edges[k+1]-tablePad, y+row.Height+1)})
			Write(p, placed)
		}
		y += row.Height
		k, width := canvas.Quiet, canvas.ThinLine*0.5
		from := left
		switch {
		case i+1 < len(rows) && i > 0 && rows[i+1].Same > 0:
			from = edges[rows[i+1].Same]
		case i == 0 || grouped:
			k, width = canvas.Black, Thin
		}
		p.Line(k, width, canvas.Solid, [2]float64{from, y}, [2]float64{right, y})
	}
	for _, x := range edges[1 : len(edges)-1] {
		p.Line(canvas.Quiet, canvas.ThinLine*0.5, canvas.Solid, [2]float64{x, top}, [2]float64{x, y})
	}
	p.Frame(canvas.Black, Thin, canvas.Solid, canvas.Rect(left, top, right, y))
}
