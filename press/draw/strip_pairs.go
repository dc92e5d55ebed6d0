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

// layPairs finds the heights of the rows of the table.
func (d *stripDrawing) layPairs() {
	y := d.pairs.y0 + pairHead
	for _, q := range d.m.pairs {
		verdict, meaning := d.pairLines(q)
		h := 16 + leading*body*float64(len(verdict)) + leading*small*float64(len(meaning))
		if d.compact {
			h = math.Max(h, 52)
		} else {
			h = math.Max(h, (d.lens.frameEnd()-d.pairs.y0-pairHead)/4)
		}
		d.pairsH = append(d.pairsH, h)
		y += h
	}
	if len(d.m.pairs) == 0 {
		y += 50
	}
	d.pairs.y1 = y
}

func (d *stripDrawing) pairLines(q words.PairText) (verdict, meaning []string) {
	room := d.pairs.x1 - d.pairs.x0 - wordColumn - 8
	return bold().wrap(q.Verdict, body, room-22), append(regular().wrap(q.Brief, small, room), regular().wrap(q.Act, small, room)...)
}

// paintPairs draws the four pairs and what each means for this plan.
func (d *stripDrawing) paintPairs(p *pen) {
	box := d.pairs
	head := style{quiet, small, false}
	y := box.y0 + 13
	p.text(head, box.x0+arrivalColumn, y, middle, "arrival")
	p.text(head, box.x0+zoneColumn, y, middle, "zone")
	p.text(head, box.x0+wordColumn, y, start, "means")
	y = box.y0 + pairHead
	p.hline(black, box.x0, box.x1, y)
	if len(d.m.pairs) == 0 {
		p.lines(head, box.x0, y+20, start, regular().wrap("No verdict: zone and push end are not known.", small, box.x1-box.x0))
		return
	}
	for i, q := range d.m.pairs {
		d.pair(p, q, y, d.pairsH[i])
		y += d.pairsH[i]
		p.hline(faint, box.x0, box.x1, y)
	}
}

func (d *stripDrawing) pair(p *pen, q words.PairText, y, h float64) {
	x := d.pairs.x0
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
