package draw

import (
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// cardFirst is the first look on the card, row by row, before the pairs of the second.
type cardFirst struct {
	head typeset.Block
	top  float64
	rows []cardFirstRow
}

type cardFirstRow struct {
	text words.CardFirst
	top  float64
	high float64
	body typeset.Block
}

// Of a row of the first look, in sizes of the running text: it is smaller than a pair, for
// it judges no part.
const (
	cardFirstLamp = 0.62
	cardFirstDo   = 8.9 // where the text begins that says what is done
)

// layFirst lays out the rows of the first look, and gives where the next thing begins.
func (c *card) layFirst(rows []words.CardFirst, y float64) float64 {
	if len(rows) == 0 {
		return y
	}
	size := cardLists * c.size
	f := cardFirst{top: y, head: typeset.Fill(canvas.Bold(canvas.Black, size), words.CardFirstHead, typeset.UprightWidth-2*cardMargin)}
	y += f.head.Height() + 1.05*c.lampStyle().Size + 6
	left := cardMargin + cardFirstDo*c.size
	for _, text := range rows {
		row := cardFirstRow{text: text, top: y, body: typeset.Fill(canvas.Plain(canvas.Black, size), text.Do, typeset.UprightWidth-cardMargin-left)}
		row.high = max(row.body.Height(), 2*cardFirstLamp*c.size) + 6
		f.rows = append(f.rows, row)
		y += row.high
	}
	c.first = f
	return y + 0.5*c.size
}

func (c *card) paintFirst(p *canvas.Pen) {
	f := c.first
	if len(f.rows) == 0 {
		return
	}
	typeset.WriteBlock(p, f.head, cardMargin, f.top)
	c.nameLamps(p, f.rows[0].top-6)
	verdict := canvas.Bold(canvas.Black, cardLists*c.size)
	for _, row := range f.rows {
		c.ruleAt(p, row.top)
		y := row.top + row.high/2
		for i, state := range []string{row.text.Arrival, row.text.Zone} {
			if state == "" {
				p.Text(canvas.Plain(canvas.Black, 0.62*c.size), c.lampX(i), y+0.22*c.size, canvas.Middle, say.EitherLamp())
				continue
			}
			lampSaying(p, c.lampX(i), y, cardFirstLamp*c.size, 0.55*c.size, state)
		}
		p.Text(verdict, c.glyphX(), y+0.36*verdict.Size, canvas.Start, row.text.Verdict)
		typeset.WriteBlock(p, row.body, cardMargin+cardFirstDo*c.size, y-row.body.Height()/2)
	}
	last := f.rows[len(f.rows)-1]
	c.ruleAt(p, last.top+last.high)
}

// said is the first look in sentences.
func (f cardFirst) said() []string {
	if len(f.rows) == 0 {
		return nil
	}
	out := []string{words.CardFirstHead}
	for _, row := range f.rows {
		out = append(out, row.text.String())
	}
	return out
}
