package draw

import (
	"math"

	"ramplan/press/draw/canvas"
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
	if d.compact && d.pairs.X1-d.pairs.X0 >= pairsTwo {
		columns = 2
	}
	d.pairsWide = (d.pairs.X1 - d.pairs.X0 - float64(columns-1)*pairsGutter) / float64(columns)
	rows := (len(d.m.pairs) + columns - 1) / columns
	high := make([]float64, rows)
	for i, q := range d.m.pairs {
		verdict, meaning := d.pairLines(q)
		h := 16 + canvas.Leading*canvas.Body*float64(len(verdict)) + canvas.Leading*canvas.Small*float64(len(meaning))
		if d.compact {
			h = math.Max(h, 52)
		} else {
			h = math.Max(h, (d.lens.frameEnd()-d.pairs.Y0-pairHead)/4)
		}
		high[i%rows] = math.Max(high[i%rows], h)
	}
	d.pairs.Y1 = d.pairs.Y0 + pairHead
	for i := range d.m.pairs {
		x, y := d.pairs.X0+float64(i/rows)*(d.pairsWide+pairsGutter), d.pairs.Y0+pairHead
		for _, h := range high[:i%rows] {
			y += h
		}
		box := canvas.Rect(x, y, x+d.pairsWide, y+high[i%rows])
		d.pairsAt = append(d.pairsAt, box)
		d.pairs.Y1 = math.Max(d.pairs.Y1, box.Y1)
	}
	if len(d.m.pairs) == 0 {
		d.pairs.Y1 += 50
	}
}

func (d *stripDrawing) pairLines(q words.PairText) (verdict, meaning []string) {
	room := d.pairsWide - wordColumn - 8
	text := canvas.Plain(canvas.Black, canvas.Small)
	return canvas.Bold(canvas.Black, canvas.Body).Wrap(q.Verdict, room-22), append(text.Wrap(q.Brief, room), text.Wrap(q.Act, room)...)
}

// paintPairs draws the four pairs and what each means for this plan.
func (d *stripDrawing) paintPairs(p *canvas.Pen) {
	box := d.pairs
	head := canvas.Plain(canvas.Quiet, canvas.Small)
	columns := []float64{box.X0}
	if n := len(d.pairsAt); n > 0 && d.pairsAt[n-1].X0 > box.X0 {
		columns = append(columns, d.pairsAt[n-1].X0)
	}
	for _, x := range columns {
		y := box.Y0 + 13
		p.Text(head, x+arrivalColumn, y, canvas.Middle, "arrival")
		p.Text(head, x+zoneColumn, y, canvas.Middle, "zone")
		p.Text(head, x+wordColumn, y, canvas.Start, say.Means(d.m.first != nil))
		p.HLine(canvas.Black, x, x+d.pairsWide, box.Y0+pairHead)
	}
	if len(d.m.pairs) == 0 {
		p.Lines(head, box.X0, box.Y0+pairHead+20, canvas.Start, head.Wrap(say.NoVerdict(), box.X1-box.X0))
		return
	}
	for i, q := range d.m.pairs {
		d.pair(p, q, d.pairsAt[i])
		p.HLine(canvas.Faint, d.pairsAt[i].X0, d.pairsAt[i].X1, d.pairsAt[i].Y1)
	}
}

func (d *stripDrawing) pair(p *canvas.Pen, q words.PairText, box canvas.Rectangle) {
	x, y, h := box.X0, box.Y0, box.Y1-box.Y0
	lamp(p, x+arrivalColumn, y+h/2-6, q.Pair.Arrival)
	lamp(p, x+zoneColumn, y+h/2-6, q.Pair.Zone)
	f := fateOf(q)
	verdict, meaning := d.pairLines(q)
	text := canvas.Leading*canvas.Body*float64(len(verdict)) + canvas.Leading*canvas.Small*float64(len(meaning))
	top := y + (h-text)/2
	sw := canvas.Rect(x+wordColumn, top+3, x+wordColumn+14, top+17)
	swatch(p, f, sw)
	p.Frame(f.ink(), canvas.ThinLine, canvas.Solid, sw)
	base := p.Lines(canvas.Bold(f.ink(), canvas.Body), x+wordColumn+22, top+15, canvas.Start, verdict)
	p.Lines(canvas.Plain(canvas.Quiet, canvas.Small), x+wordColumn, base+canvas.Leading*canvas.Small+1, canvas.Start, meaning)
}

// lamp is one signal: filled and raised for on, empty for off, with its word.
func lamp(p *canvas.Pen, x, y float64, on bool) {
	if on {
		p.Circle(canvas.Black, canvas.Black, canvas.Outline, x, y, 6)
	} else {
		p.Circle(canvas.Paper, canvas.Black, canvas.Outline, x, y, 6)
	}
	p.Text(canvas.Plain(canvas.Black, canvas.Small), x, y+22, canvas.Middle, words.OnOff(on))
}

func fateOf(q words.PairText) fate {
	if len(q.Words) == 0 || !q.Clear {
		return fateFault
	}
	return fateOfWord(q.Words[0])
}
