package proof

import (
	"strings"

	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// newLamps draws limit samples over the lens of the strip: where each would rest, and which
// lamps were predicted and came.
func newLamps(s Subject, o draw.Options) *canvas.Picture {
	r := resultOf[proving.SamplesResult](s)
	if r == nil || len(r.Rows) == 0 {
		return nothing("lamps", o)
	}
	d := &lamps{r: r, study: s.Study, pos: say.Positions(s.Plan.Plan).Fine()}
	d.choose(o)
	d.lay(s, o)
	return d.picture(d.paintAll)
}

// How many rows are drawn, usually and flat; of more, those that differ are drawn first.
const mostSamples, mostFlat = 36, 18

type lamps struct {
	*lensFrame
	r     *proving.SamplesResult
	study *proving.Study
	pos   words.Positions
	shown []proving.SampleRow
	wide  float64 // of each column beside the lens
}

// choose takes the rows that are drawn, in their order.
func (d *lamps) choose(o draw.Options) {
	most := mostSamples
	if o.Flat {
		most = mostFlat
	}
	d.shown = d.r.Rows
	if len(d.r.Rows) <= most {
		return
	}
	wrong := 0
	for _, row := range d.r.Rows {
		if failed(row) {
			wrong++
		}
	}
	room := max(0, most-wrong)
	d.shown = nil
	for _, row := range d.r.Rows {
		if failed(row) && len(d.shown) < most {
			d.shown = append(d.shown, row)
		} else if !failed(row) && room > 0 {
			d.shown = append(d.shown, row)
			room--
		}
	}
}

// failed tells whether something of a row differs from what was predicted.
func failed(row proving.SampleRow) bool {
	return row.Lamps == proving.Fail || row.Reading != nil && *row.Reading == proving.Fail
}

// given is the row of the study that a sample is of.
func (d *lamps) given(row proving.SampleRow) proving.Row {
	if row.Row >= 1 && row.Row <= len(d.study.Rows) {
		return d.study.Rows[row.Row-1]
	}
	return proving.Row{}
}

// Sizes, px.
const (
	sampleHigh    = 24
	sampleFlat    = 17
	sampleCompact = 22
	lampColumn    = 92
)

func (d *lamps) lay(s Subject, o draw.Options) {
	var places []float64
	wrong := 0
	for _, row := range d.r.Rows {
		if row.PredictedReading != nil {
			places = append(places, *row.PredictedReading)
		}
		if failed(row) {
			wrong++
		}
	}
	d.wide = lampColumn
	if o.Width == 0 && !o.Compact {
		o.Width = 760
	}
	d.lensFrame = newLensFrame("lamps", say.LampsTitle(len(d.r.Rows), wrong), d.describe(), s.Plan, o, 2*d.wide+22, places...)
	if !o.Compact {
		d.y += 16
		d.top += 16
	}
	for _, row := range d.shown {
		d.sample(row)
	}
	var key []keyItem
	roles := map[string]bool{}
	for _, row := range d.shown {
		roles[roleOf(row)] = true
	}
	for _, role := range []string{"good", "long", "short", "empty", ""} {
		if roles[role] {
			key = append(key, keyItem{roleMark(role), say.RoleKey(role)})
		}
	}
	key = append(key, keyItem{markSmallRing, say.ReadingCame()})
	if wrong > 0 {
		key = append(key, keyItem{markCross, say.Differs()})
	}
	if n := len(d.r.Rows) - len(d.shown); n > 0 {
		key = append(key, keyItem{func(*canvas.Pen, float64, float64) {}, say.NotDrawn(n)})
	}
	d.foot(key...)
}

func roleOf(row proving.SampleRow) string {
	if row.Role == nil {
		return ""
	}
	return *row.Role
}

// roleMark is the mark of a role: told apart by its shape.
func roleMark(role string) func(*canvas.Pen, float64, float64) {
	switch role {
	case "good":
		return markDisc
	case "long":
		return markTriangle
	case "short":
		return func(p *canvas.Pen, x, y float64) {
			p.Area(canvas.Black, [2]float64{x, y + 4.5}, [2]float64{x - 4.5, y - 3.5}, [2]float64{x + 4.5, y - 3.5})
		}
	case "empty":
		return markSquare
	}
	return markRing
}

// sample adds the row of a sample.
func (d *lamps) sample(row proving.SampleRow) {
	high := float64(sampleHigh)
	if d.o.Flat {
		high = sampleFlat
	}
	came := d.given(row)
	name, note := say.SampleName(row.Row, row.Sample), ""
	if d.o.Compact {
		high = sampleCompact
		note = say.LampsCame(row.Arrival, row.Zone, came.Arrival, came.Zone)
		if failed(row) {
			note = say.DiffersIn(row.Lamps == proving.Fail, row.Reading != nil && *row.Reading == proving.Fail) + ": " + note
		}
	}
	d.row(name, note, high, func(p *canvas.Pen, box canvas.Rectangle) { d.paintSample(p, box, row, came) })
	d.y -= 4
}

func (d *lamps) paintSample(p *canvas.Pen, box canvas.Rectangle, row proving.SampleRow, came proving.Row) {
	y := (box.Y0 + box.Y1) / 2
	p.HLine(canvas.Faint, box.X0, box.X1, box.Y1)
	if row.PredictedReading != nil {
		at := *row.PredictedReading
		x := d.x.At(at)
		switch {
		case at < d.x.From:
			p.Arrow(canvas.Black, x+2, y, -9)
			x += 16
		case at > d.x.To:
			p.Arrow(canvas.Black, x-2, y, 9)
			x -= 16
		}
		if came.Reading != nil && inside(*came.Reading) {
			to := d.x.At(*came.Reading)
			p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{x, y}, [2]float64{to, y})
			markSmallRing(p, to, y)
		}
		roleMark(roleOf(row))(p, x, y)
		if failed(row) {
			markCross(p, x, y)
		}
	}
	if d.o.Compact {
		return
	}
	st, bold := canvas.Plain(canvas.Black, canvas.Small), canvas.Bold(canvas.Alert, canvas.Small)
	x := box.X1 + 12
	p.Text(st, x, y+4, canvas.Start, say.LampPair(row.Arrival, row.Zone))
	seen := say.LampPair(came.Arrival, came.Zone)
	if failed(row) {
		markCross(p, x+d.wide+2, y)
		seen = bold.Clip(seen+say.DiffersBriefly(row.Lamps == proving.Fail, row.Reading != nil && *row.Reading == proving.Fail), d.width-canvas.Margin/2-x-d.wide-12)
		p.Text(bold, x+d.wide+12, y+4, canvas.Start, seen)
		return
	}
	p.Text(st, x+d.wide+12, y+4, canvas.Start, seen)
}

// paintAll draws the rows, with the heads of the columns beside them.
func (d *lamps) paintAll(p *canvas.Pen) {
	if len(d.shown) > 0 {
		d.overlap(p, d.top, d.rows[len(d.shown)-1].box.Y1)
	}
	d.paint(p)
	if d.o.Compact {
		return
	}
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	y := d.top - 6
	p.Text(st, canvas.Margin, y, canvas.Start, say.SampleHead())
	p.Text(st, d.right+12, y, canvas.Start, say.PredictedHead())
	p.Text(st, d.right+24+d.wide, y, canvas.Start, say.CameHead())
	p.Text(st, (d.left+d.right)/2, y, canvas.Middle, st.Clip(say.RestsHead(), d.right-d.left))
}

func (d *lamps) describe() string {
	s := []string{say.SampleRowsText(d.r.N, d.r.Roles.Long, d.r.Roles.Short, d.r.Roles.Good, d.r.Roles.Empty)}
	if o := d.r.Offset; o != nil {
		s = append(s, say.OffsetText(d.pos, o.Value, o.Allowed, o.N))
	}
	for _, row := range d.shown {
		came := d.given(row)
		s = append(s, say.SampleText(d.pos, say.SampleName(row.Row, row.Sample), roleOf(row), row.PredictedReading, row.Arrival, row.Zone, came.Arrival, came.Zone, came.Reading,
			row.Lamps == proving.Fail, row.Reading != nil && *row.Reading == proving.Fail))
	}
	if n := len(d.r.Rows) - len(d.shown); n > 0 {
		s = append(s, say.NotDrawn(n)+".")
	}
	return strings.Join(s, " ")
}
