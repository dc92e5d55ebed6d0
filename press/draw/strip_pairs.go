package draw

import (
	"math"

	"ramplan/press/words"
)

// Columns of the table of signal pairs, px from its left edge.
const (
	arrivalColumn = 22
	zoneColumn    = 62
	wordColumn    = 92
	pairHead      = 22
)

// pairsTwo is from how wide on the narrow form sets the pairs in two columns, px.
const pairsTwo = 500

// pairsGutter is between them.
const pairsGutter = 20

// layPairs finds the boxes of the rows of the table, those with arrival in the first
// column where there are two.
func (d *stripDrawing) layPairs() {
	columns := 1
	if d.compact && d.pairs.x1-d.pairs.x0 >= pairsTwo {
		columns = 2
	}
	d.pairsWide = (d.pairs.x1 - d.pairs.x0 - float64(columns-1)*pairsGutter) / float64(columns)
	rows := (len(d.m.pairs) + columns - 1) / columns
	high := make([]float64, rows)
	for i, q := range d.m.pairs {
		verdict, meaning := d.pairLines(q)
		h := 16 + leading*body*float64(len(verdict)) + leading*small*float64(len(meaning))
		if d.compact {
			h = math.Max(h, 52)
		} else {
			h = math.Max(h, (d.lens.frameEnd()-d.pairs.y0-pairHead)/4)
		}
		high[i%rows] = math.Max(high[i%rows], h)
	}
	d.pairs.y1 = d.pairs.y0 + pairHead
	for i := range d.m.pairs {
		x, y := d.pairs.x0+float64(i/rows)*(d.pairsWide+pairsGutter), d.pairs.y0+pairHead
		for _, h := range high[:i%rows] {
			y += h
		}
		box := rect{x, y, x + d.pairsWide, y + high[i%rows]}
		d.pairsAt = append(d.pairsAt, box)
		d.pairs.y1 = math.Max(d.pairs.y1, box.y1)
	}
	if len(d.m.pairs) == 0 {
		d.pairs.y1 += 50
	}
}

func (d *stripDrawing) pairLines(q words.PairText) (verdict, meaning []string) {
	room := d.pairsWide - wordColumn - 8
	text := style{black, small, false}
	return style{black, body, true}.wrap(q.Verdict, room-22), append(text.wrap(q.Brief, room), text.wrap(q.Act, room)...)
}

// paintPairs draws the four pairs and what each means for this plan.
func (d *stripDrawing) paintPairs(p *pen) {
	box := d.pairs
	head := style{quiet, small, false}
	columns := []float64{box.x0}
	if n := len(d.pairsAt); n > 0 && d.pairsAt[n-1].x0 > box.x0 {
		columns = append(columns, d.pairsAt[n-1].x0)
	}
	for _, x := range columns {
		y := box.y0 + 13
		p.text(head, x+arrivalColumn, y, middle, "arrival")
		p.text(head, x+zoneColumn, y, middle, "zone")
		p.text(head, x+wordColumn, y, start, "means")
		p.hline(black, x, x+d.pairsWide, box.y0+pairHead)
	}
	if len(d.m.pairs) == 0 {
		p.lines(head, box.x0, box.y0+pairHead+20, start, head.wrap("No verdict: zone and push end are not known.", box.x1-box.x0))
		return
	}
	for i, q := range d.m.pairs {
		d.pair(p, q, d.pairsAt[i])
		p.hline(faint, d.pairsAt[i].x0, d.pairsAt[i].x1, d.pairsAt[i].y1)
	}
}

func (d *stripDrawing) pair(p *pen, q words.PairText, box rect) {
	x, y, h := box.x0, box.y0, box.y1-box.y0
	lamp(p, x+arrivalColumn, y+h/2-6, q.Pair.Arrival)
	lamp(p, x+zoneColumn, y+h/2-6, q.Pair.Zone)
	f := fateOf(q)
	verdict, meaning := d.pairLines(q)
	text := leading*body*float64(len(verdict)) + leading*small*float64(len(meaning))
	top := y + (h-text)/2
	sw := rect{x + wordColumn, top + 3, x + wordColumn + 14, top + 17}
	p.swatch(f, sw)
	p.frame(f.ink(), thinLine, solid, sw)
	base := p.lines(style{f.ink(), body, true}, x+wordColumn+22, top+15, start, verdict)
	p.lines(style{quiet, small, false}, x+wordColumn, base+leading*small+1, start, meaning)
}

// lamp is one signal: filled and raised for on, empty for off, with its word.
func lamp(p *pen, x, y float64, on bool) {
	if on {
		p.circle(black, black, outline, x, y, 6)
	} else {
		p.circle(paper, black, outline, x, y, 6)
	}
	p.text(style{black, small, false}, x, y+22, middle, words.OnOff(on))
}

func fateOf(q words.PairText) fate {
	if len(q.Words) == 0 || !q.Clear {
		return fateFault
	}
	return fateOfWord(q.Words[0])
}
