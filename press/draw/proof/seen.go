package proof

import (
	"math"
	"strings"

	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/proving"
)

// newSeen draws how often each pair of lamps came beside how often the plan predicts it, on
// a scale of tenfold steps, so that rare ones can be read.
func newSeen(s Subject, o draw.Options) *canvas.Picture {
	r := resultOf[proving.TrialResult](s)
	if r == nil || len(r.Shares) == 0 {
		return nothing("seen", o)
	}
	d := &seen{}
	for _, q := range r.Shares {
		d.add(say.PairSeen(q.Pair), q)
	}
	d.add(say.RejectsSeen(), r.Rejects)
	if t := r.Truth; t != nil {
		d.add(say.FalseAcceptSeen(), t.FalseAccept)
		d.add(say.FalseRejectSeen(), t.FalseReject)
	}
	if len(d.rows) == 0 {
		return nothing("seen", o)
	}
	d.rejects = r.Rejects
	d.lay(o)
	return d.picture(d.paint)
}

type seen struct {
	*frame
	rows    []seenRow
	rejects proving.SeenShare
	least   float64 // the share at which the scale begins
	plot    canvas.Rectangle
	high    float64 // of a row
	figures float64 // left edge of the figures; 0: they stand over the row
}

type seenRow struct {
	name string
	proving.SeenShare
}

func (d *seen) add(name string, s proving.SeenShare) {
	if s.Of > 0 {
		d.rows = append(d.rows, seenRow{name, s})
	}
}

// Room of the rows, px, and of the columns beside them.
const (
	seenRowHigh    = 34
	seenRowCompact = 46
	seenNames      = 130
	seenFigures    = 196
)

func (d *seen) lay(o draw.Options) {
	left, right := float64(seenNames), float64(seenFigures)
	d.high = seenRowHigh
	if o.Compact {
		left, right, d.high = 6, 6, seenRowCompact
	}
	d.frame = newFrame("seen", say.SeenTitle(d.rejects.Seen, d.rejects.Of, d.rejects.Predicted), d.describe(), o, left, right)
	if !o.Compact {
		d.figures = d.frame.right + 14
	}
	d.least = 1e-4
	for _, q := range d.rows {
		for _, v := range []*float64{q.Predicted, q.Share} {
			if v != nil && *v > 0 {
				d.least = math.Min(d.least, *v)
			}
		}
	}
	d.least = math.Max(1e-8, math.Pow10(int(math.Floor(math.Log10(d.least)))))
	d.across(math.Log10(d.least), 0, say.ShareAxis())
	d.plot = canvas.Rect(d.frame.left, d.y+8, d.frame.right, d.y+8+d.high*float64(len(d.rows)))
	d.y = d.plot.Y1 + figuresBelow + nameBelow
	key := []keyItem{{keySeenBar, say.SeenLimits()}, {markDisc, say.SeenMark()}, {lower(markPredicted, 6), say.PredictedMark()}}
	for _, q := range d.rows {
		if q.Lower != nil {
			key = append(key, keyItem{lower(markLower, -6), say.LowerMark()})
			break
		}
	}
	d.explain(append(key, keyItem{markAtEdge, say.AtEdge(d.least)}))
}

func (d *seen) describe() string {
	s := []string{say.SeenScale()}
	for _, q := range d.rows {
		s = append(s, q.text())
	}
	return strings.Join(s, " ")
}

func (q seenRow) text() string {
	return say.SeenText(q.name, q.Seen, q.Of, q.Share, q.Limits, q.Predicted, q.Lower)
}

// place is where a share stands; edge tells that it is less than the scale shows.
func (d *seen) place(share float64) (x float64, edge bool) {
	if share < d.least {
		return d.plot.X0, true
	}
	return d.x.At(math.Log10(share)), false
}

func keySeenBar(p *canvas.Pen, x, y float64) { barAcross(p, x-8, x+8, y) }

// lower is a mark so much lower, px: as it stands in the key.
func lower(mark func(*canvas.Pen, float64, float64), by float64) func(*canvas.Pen, float64, float64) {
	return func(p *canvas.Pen, x, y float64) { mark(p, x, y+by) }
}

func barAcross(p *canvas.Pen, x0, x1, y float64) {
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{x0, y}, [2]float64{x1, y})
	for _, x := range []float64{x0, x1} {
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{x, y - 4}, [2]float64{x, y + 4})
	}
}

// markPredicted is a wedge that stands on the row.
func markPredicted(p *canvas.Pen, x, y float64) {
	p.Area(canvas.Accent, [2]float64{x, y - 1}, [2]float64{x - 5, y - 10}, [2]float64{x + 5, y - 10})
}

// markLower is the limit that decides.
func markLower(p *canvas.Pen, x, y float64) {
	p.Line(canvas.Black, 2*canvas.Outline, canvas.Solid, [2]float64{x, y + 1}, [2]float64{x, y + 10})
}

func markAtEdge(p *canvas.Pen, x, y float64) { p.Arrow(canvas.Black, x-5, y, -9) }

func (d *seen) paint(p *canvas.Pen) {
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	for k := int(d.x.From); k <= 0; k++ {
		x := d.x.At(float64(k))
		p.VLine(canvas.Faint, x, d.plot.Y0, d.plot.Y1)
		if (-k)%d.every() == 0 {
			text := say.SeenShare(math.Pow10(k))
			half := st.Width(text) / 2
			p.Text(st, math.Max(canvas.Margin/2+half, math.Min(x, d.width-canvas.Margin/2-half)), d.plot.Y1+17, canvas.Middle, text)
		}
	}
	p.Text(st, d.frame.right, d.plot.Y1+17+nameBelow, canvas.End, st.Clip(d.xName, d.frame.right-canvas.Margin))
	for i, q := range d.rows {
		d.row(p, q, d.plot.Y0+float64(i)*d.high)
	}
	p.HLine(canvas.Black, d.plot.X0, d.plot.X1, d.plot.Y1)
	p.VLine(canvas.Black, d.plot.X0, d.plot.Y0, d.plot.Y1)
}

// every is how many tenfold steps lie from figure to figure.
func (d *seen) every() int {
	apart := (d.x.X1 - d.x.X0) / math.Max(1, d.x.To-d.x.From)
	return max(1, int(math.Ceil(64/apart)))
}

func (d *seen) row(p *canvas.Pen, q seenRow, top float64) {
	main, side := canvas.Bold(canvas.Black, canvas.Small), canvas.Plain(canvas.Black, canvas.Small)
	y := top + d.high - 14
	figures := say.SeenFigures(q.Seen, q.Of, q.Predicted)
	if d.figures > 0 {
		p.Text(main, canvas.Margin, y+4, canvas.Start, main.Clip(q.name, seenNames-8))
		p.Text(side, d.figures, y+4, canvas.Start, side.Clip(figures, d.width-canvas.Margin/2-d.figures))
	} else {
		w := main.Width(q.name)
		p.Text(main, d.plot.X0+6, top+15, canvas.Start, q.name)
		p.Text(side, d.plot.X0+6+w+8, top+15, canvas.Start, side.Clip(figures, d.plot.X1-d.plot.X0-w-20))
	}
	p.HLine(canvas.Faint, d.plot.X0, d.plot.X1, top+d.high)
	if q.Limits != nil {
		x0, edge := d.place(q.Limits[0])
		x1, _ := d.place(q.Limits[1])
		barAcross(p, x0, x1, y)
		if edge {
			p.Arrow(canvas.Black, x0, y, -9)
		}
	}
	if q.Lower != nil {
		x, edge := d.place(*q.Lower)
		if !edge {
			markLower(p, x, y)
		}
	}
	if q.Share != nil {
		if x, edge := d.place(*q.Share); !edge {
			markDisc(p, x, y)
		}
	}
	if q.Predicted != nil {
		x, _ := d.place(*q.Predicted)
		markPredicted(p, x, y)
	}
}
