package proof

import (
	"math"
	"strings"

	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// mostStarts is how many starts stand beside one another with all their pushes.
const mostStarts = 60

// newStarts draws the pushes after each start beside one another.
func newStarts(s Subject, o draw.Options) *canvas.Picture {
	r := resultOf[proving.RestartResult](s)
	if r == nil || len(r.Starts) == 0 {
		return nothing("starts", o)
	}
	d := &starts{r: r, pos: say.Positions(s.Plan.Plan).Fine(), planned: s.Plan.Plan.Station.ReferenceUncertainty, rows: map[float64][]proving.Row{}}
	for _, row := range s.Study.Rows {
		if row.Start != nil && row.Reading != nil && inside(*row.Reading) {
			d.rows[*row.Start] = append(d.rows[*row.Start], row)
		}
	}
	for _, q := range r.Starts {
		d.mean += q.Mean / float64(len(r.Starts))
	}
	d.lay(o)
	return d.picture(d.paint)
}

type starts struct {
	*frame
	r       *proving.RestartResult
	pos     words.Positions
	planned float64 // ± mm, what the plan says that a start may move
	mean    float64 // of the means of the starts
	rows    map[float64][]proving.Row
	run     *panel
	each    bool // every push is drawn
}

func (d *starts) lay(o draw.Options) {
	right := 132.0
	if o.Compact {
		right = 110
	}
	r := d.r
	d.frame = newFrame("starts", say.StartsTitle(d.pos, r.Supported, d.planned), d.describe(), o, 56, right)
	y := newReach()
	cold, warm, most := false, false, 0
	for _, list := range d.rows {
		most = max(most, len(list))
		for _, row := range list {
			y.take(*row.Reading)
			cold, warm = cold || row.Condition == proving.Cold, warm || row.Condition == proving.Warm
		}
	}
	d.each = len(r.Starts) <= mostStarts && most <= mostPushes
	for _, q := range r.Starts {
		y.take(q.Mean)
	}
	y.take(d.mean-d.planned, d.mean+d.planned)
	if r.Supported != nil {
		y.take(d.mean-*r.Supported, d.mean+*r.Supported)
	}
	d.across(0.5, float64(len(r.Starts))+0.5, say.StartAxis(len(r.Starts)))
	d.xWhole = true
	from, to := y.padded(0.06)
	d.run = d.add(230, from, to, say.ReadingAxis())
	d.run.end(d.mean, say.MeanIs(d.pos, d.mean), canvas.Black, true)
	d.run.end(d.mean+d.planned, say.StartPlanned(), canvas.Accent, false)
	if r.Supported != nil {
		d.run.end(d.mean+*r.Supported, say.StartShown(), canvas.Quiet, false)
	}
	key := []keyItem{{field(canvas.Accent.Tint(canvas.FillTint), canvas.RisingHatch, canvas.Accent.Tint(0.4)), say.PlanOfStarts(d.pos, d.planned)}}
	if d.each && cold {
		key = append(key, keyItem{markTriangle, "cold"})
	}
	if d.each && warm {
		key = append(key, keyItem{markRing, "warm"})
	}
	if d.each && !(cold && warm) {
		key = append(key, keyItem{markDot, say.EachPush(r.N)})
	}
	if !d.each {
		key = append(key, keyItem{markReach, say.StartsReach(r.N, len(r.Starts))})
	}
	key = append(key, keyItem{lying(canvas.Black, 3, canvas.Solid), say.MeanOfStart()})
	d.axis(key...)
}

func (d *starts) describe() string {
	r := d.r
	s := []string{say.StartsText(d.pos, r.N, len(r.Starts), d.mean, d.planned, r.Supported)}
	for i, q := range r.Starts {
		if i == mostStarts {
			s = append(s, say.MoreStarts(len(r.Starts)-i))
			break
		}
		s = append(s, say.StartText(d.pos, q.Start, q.N, q.Mean))
	}
	if c := r.ColdWarm; c != nil {
		s = append(s, say.ColdWarmText(d.pos, c.Difference, c.Limits))
	}
	if len(r.Outliers) > 0 {
		s = append(s, say.OutlierRows(r.Outliers))
	}
	return strings.Join(s, " ")
}

func (d *starts) paint(p *canvas.Pen) {
	q, r := d.run, d.r
	d.grid(p, q)
	band := canvas.Rect(q.box.X0, q.y.At(d.mean+d.planned), q.box.X1, q.y.At(d.mean-d.planned))
	p.Fill(canvas.Accent.Tint(canvas.FillTint), band)
	p.Hatch(canvas.Accent.Tint(0.4), canvas.RisingHatch, band)
	if r.Supported != nil {
		q.level(p, canvas.Quiet, canvas.ThinLine, canvas.Dashed, d.mean-*r.Supported)
		q.level(p, canvas.Quiet, canvas.ThinLine, canvas.Dashed, d.mean+*r.Supported)
	}
	q.level(p, canvas.Black, canvas.ThinLine, canvas.Solid, d.mean)
	wide := (d.right - d.left) / float64(len(r.Starts))
	for i, s := range r.Starts {
		d.start(p, float64(i+1), wide, s)
	}
	d.over(p, q)
	d.below(p)
}

// start draws the pushes of one start side by side, and their mean through them.
func (d *starts) start(p *canvas.Pen, at, wide float64, s proving.Start) {
	q, x, list := d.run, d.x.At(at), d.rows[s.Start]
	if d.each {
		step := math.Min(9, 0.7*wide/math.Max(1, float64(len(list))))
		for k, row := range list {
			px := x + (float64(k)-float64(len(list)-1)/2)*step
			switch py := q.y.At(*row.Reading); row.Condition {
			case proving.Cold:
				markTriangle(p, px, py)
			case proving.Warm:
				markRing(p, px, py)
			default:
				markDot(p, px, py)
			}
		}
	} else if len(list) > 0 {
		y := newReach()
		for _, row := range list {
			y.take(*row.Reading)
		}
		p.Line(canvas.Quiet, math.Max(1, math.Min(3, wide-1)), canvas.Solid, [2]float64{x, q.y.At(y.from)}, [2]float64{x, q.y.At(y.to)})
	}
	half := math.Max(1, math.Min(0.42*wide, 24))
	y := q.y.At(s.Mean)
	p.Line(canvas.Black, 2, canvas.Solid, [2]float64{x - half, y}, [2]float64{x + half, y})
}
