package proof

import (
	"math"
	"slices"
	"strings"

	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// newMaster draws the readings of one master in their order.
func newMaster(s Subject, o draw.Options) *canvas.Picture {
	r := resultOf[proving.MasterResult](s)
	values, rows := readingsInOrder(s)
	if r == nil || len(values) == 0 {
		return nothing("master", o)
	}
	d := &master{r: r, values: values, rows: rows, pos: say.Positions(s.Plan.Plan).Fine()}
	d.lay(o)
	return d.picture(d.paint)
}

// readingsInOrder gives the readings of a study in the order in which they were taken, and
// the numbers of their rows.
func readingsInOrder(s Subject) (values []float64, rows []int) {
	if s.Study == nil {
		return nil, nil
	}
	for _, i := range inOrder(s.Study.Rows) {
		if x := s.Study.Rows[i].Reading; x != nil && inside(*x) {
			values, rows = append(values, *x), append(rows, i+1)
		}
	}
	return values, rows
}

// inOrder gives the places of rows by their time where every one has it, else as they
// stand.
func inOrder(rows []proving.Row) []int {
	out := make([]int, len(rows))
	timed := true
	for i := range rows {
		out[i] = i
		timed = timed && rows[i].Time != nil
	}
	if timed {
		slices.SortStableFunc(out, func(a, b int) int {
			switch x, y := *rows[a].Time, *rows[b].Time; {
			case x < y:
				return -1
			case x > y:
				return 1
			}
			return 0
		})
	}
	return out
}

type master struct {
	*frame
	r      *proving.MasterResult
	values []float64
	rows   []int // numbers of their rows
	pos    words.Positions
	run    *panel
	cut    []stretch // nil: every reading is drawn
}

func (d *master) lay(o draw.Options) {
	right := 132.0
	if o.Compact {
		right = 110
	}
	r := d.r
	d.frame = newFrame("master", say.MasterTitle(d.pos, r.Bias.Value, r.Bias.Allowed), d.describe(), o, 56, right)
	y := newReach()
	y.take(d.values...)
	y.take(r.Mean, r.Predicted, r.Predicted-r.Bias.Allowed, r.Predicted+r.Bias.Allowed)
	if r.SD != nil {
		y.take(r.Mean-2**r.SD, r.Mean+2**r.SD)
	}
	d.across(0.5, float64(len(d.values))+0.5, say.OrderAxis(len(d.values)))
	d.xWhole = true
	from, to := y.padded(0.06)
	d.run = d.add(230, from, to, say.ReadingAxis())
	d.run.end(r.Mean, say.MeanIs(d.pos, r.Mean), canvas.Black, true)
	d.run.end(r.Predicted, say.PredictedIs(d.pos, r.Predicted), canvas.Accent, true)
	if r.SD != nil {
		d.run.end(r.Mean+2**r.SD, say.TwoSD(true), canvas.Quiet, false)
		d.run.end(r.Mean-2**r.SD, say.TwoSD(false), canvas.Quiet, false)
	}
	key := []keyItem{{field(canvas.Accent.Tint(canvas.FillTint), canvas.RisingHatch, canvas.Accent.Tint(0.4)), say.AllowedBias(d.pos, r.Bias.Allowed)}}
	if len(d.values) > mostMarks {
		d.cut = stretches(d.values, mostMarks)
		key = append(key, keyItem{markReach, say.ReadingsReach(len(d.values), len(d.cut))})
	} else {
		key = append(key, keyItem{markDot, say.EachReading(len(d.values))})
	}
	if len(r.Outliers) > 0 {
		key = append(key, keyItem{markOdd, say.StandsOut()})
	}
	d.axis(key...)
}

func (d *master) describe() string {
	r := d.r
	s := []string{say.MasterText(d.pos, len(d.values), r.Mean, r.Predicted, r.Bias.Value, r.Bias.Allowed)}
	if r.SD != nil {
		s = append(s, say.SpreadText2(d.pos, *r.SD, r.Spread.PlannedSD))
	}
	if len(r.Outliers) > 0 {
		s = append(s, say.OutlierRows(r.Outliers))
	}
	return strings.Join(s, " ")
}

func (d *master) paint(p *canvas.Pen) {
	q, r := d.run, d.r
	d.grid(p, q)
	band := canvas.Rect(q.box.X0, q.y.At(r.Predicted+r.Bias.Allowed), q.box.X1, q.y.At(r.Predicted-r.Bias.Allowed))
	p.Fill(canvas.Accent.Tint(canvas.FillTint), band)
	p.Hatch(canvas.Accent.Tint(0.4), canvas.RisingHatch, band)
	q.level(p, canvas.Accent, canvas.Outline, canvas.Centring, r.Predicted)
	if r.SD != nil {
		q.level(p, canvas.Quiet, canvas.ThinLine, canvas.Dashed, r.Mean+2**r.SD)
		q.level(p, canvas.Quiet, canvas.ThinLine, canvas.Dashed, r.Mean-2**r.SD)
	}
	q.level(p, canvas.Black, canvas.Outline, canvas.Solid, r.Mean)
	d.readings(p, q, d.values, d.rows, d.cut, r.Outliers)
	d.over(p, q)
	d.below(p)
}

// readings draws readings in their order, one by one or as stretches.
func (f *frame) readings(p *canvas.Pen, q *panel, values []float64, rows []int, cut []stretch, odd []int) {
	if cut != nil {
		wide := math.Max(1, math.Min(4, (f.right-f.left)/float64(len(cut))-1))
		var mid [][2]float64
		for _, s := range cut {
			at := float64(s.first+s.last)/2 + 1
			p.Line(canvas.Quiet, wide, canvas.Solid, f.at(q, at, s.low), f.at(q, at, s.high))
			mid = append(mid, f.at(q, at, s.mid))
		}
		p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, mid...)
	} else {
		var line [][2]float64
		for i, v := range values {
			line = append(line, f.at(q, float64(i+1), v))
		}
		p.Line(canvas.Quiet.Tint(0.5), canvas.ThinLine, canvas.Solid, line...)
		for _, at := range line {
			markDot(p, at[0], at[1])
		}
	}
	for i, v := range values {
		if slices.Contains(odd, rows[i]) {
			at := f.at(q, float64(i+1), v)
			markOdd(p, at[0], at[1])
		}
	}
}
