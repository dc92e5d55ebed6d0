package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// NewShift draws what becomes of both risks when the parts are off their mean.
func NewShift(p *press.Plan, r *press.Result, o Options) *canvas.Picture {
	return newDays(p, r, o, "shift", func(m *daysModel, d *press.WorstDay) {
		m.title, m.desc = say.ShiftTitle(p, d), say.ShiftText(p, d)
		m.rows, m.xName, m.now = d.Shift, say.MeanOffAxis(), "now"
		if k := d.Kept; k != nil {
			pos := say.Positions(p).Fine()
			m.limit(-k.Lower, say.OffBy(pos, k.Lower))
			m.limit(k.Taller, say.OffBy(pos, k.Taller))
		}
	})
}

// NewSpread draws what becomes of them when the parts spread wider.
func NewSpread(p *press.Plan, r *press.Result, o Options) *canvas.Picture {
	return newDays(p, r, o, "spread", func(m *daysModel, d *press.WorstDay) {
		m.title, m.desc = say.SpreadTitle(p, d), say.SpreadText(d)
		m.rows, m.xName, m.now, m.nowAt = d.Spread, say.SpreadAxis(), "now", 1
		if k := d.Kept; k != nil {
			m.limit(k.Wider, say.TimesAsWide(k.Wider))
		}
	})
}

// NewWear draws what becomes of them while the nest wears.
func NewWear(p *press.Plan, r *press.Result, o Options) *canvas.Picture {
	pos := say.Positions(p).Fine()
	return newDays(p, r, o, "wear", func(m *daysModel, d *press.WorstDay) {
		m.title, m.desc = say.WearTitle(p, d), say.WearText(p, d)
		m.rows, m.xName = d.WearCurve, say.NestWornAxis()
		last := m.rows[len(m.rows)-1][0]
		for _, x := range []*float64{d.Wear.FalseReject, d.Wear.FalseAccept} {
			if x != nil && *x > 0 && *x < last {
				m.limits = append(m.limits, dayLimit{*x, pos.Length(*x)})
			}
		}
	})
}

// daysModel is what a drawing of both risks shows, as data.
type daysModel struct {
	title, desc    string
	xName          string
	rows           [][3]float64 // where, ppm accepted of a wrong height, ppm refused although good
	accept, reject float64      // ppm, the targets
	now            string       // names where things stand
	nowAt          float64
	limits         []dayLimit
}

// limit marks where a target is missed, of what lies between now and the ends of what is
// looked at.
func (m *daysModel) limit(at float64, text string) {
	if at != m.nowAt && at > m.rows[0][0] && at < m.rows[len(m.rows)-1][0] {
		m.limits = append(m.limits, dayLimit{at, text})
	}
}

// A dayLimit is where a target is missed.
type dayLimit struct {
	at   float64
	text string
}

// newDays makes one of the drawings of both risks; empty but for its title where they are
// not known.
func newDays(p *press.Plan, r *press.Result, o Options, kind string, fill func(*daysModel, *press.WorstDay)) *canvas.Picture {
	m := &daysModel{accept: p.Targets.FalseAcceptPPM, reject: p.Targets.FalseRejectPPM}
	if d := r.WorstDay(); d != nil && d.Average != nil {
		fill(m, d)
	} else {
		m.title, m.desc = say.DaysUnknown(), say.DaysUnknown()+"."
	}
	if m.rows != nil {
		m.desc = m.title + ". " + m.desc
	}
	d := layDays(m, o)
	return canvas.NewPicture(canvas.Layout{Kind: kind, Compact: o.Compact, ID: o.ID, Title: m.title, Desc: m.desc, Width: d.width, Height: d.height, Paint: d.paint})
}

// Powers of ten, in ppm, that the scale of the shares reaches: nothing under the least
// is told from nothing.
const (
	leastPower = -2
	mostPower  = 6
)

// power is a share on the scale of the drawing.
func power(ppm float64) float64 {
	return math.Log10(min(max(ppm, math.Pow10(leastPower)), math.Pow10(mostPower)))
}

// Room of the drawings of both risks, px.
const (
	daysLabels = 110 // at the right, for the names of the lines
	daysRaise  = 12  // under the name of the y axis
)

type daysDrawing struct {
	*chart
	m     *daysModel
	marks typeset.Callouts
}

func layDays(m *daysModel, o Options) *daysDrawing {
	o.Flat = true // small, three beside one another
	d := &daysDrawing{m: m, chart: newChart(o, m.title, daysLabels)}
	d.plot.X0 += 12
	d.plot.Y1 += 28
	d.xName, d.yName, d.closeX = m.xName, say.PPMAxis(), true
	if len(m.rows) == 0 {
		d.noX = true
		d.height = math.Ceil(d.plot.Y0)
		return d
	}
	first, last := m.rows[0], m.rows[len(m.rows)-1]
	d.x = canvas.NewScale(first[0], last[0], d.plot.X0, d.plot.X1)
	var labels []typeset.Callout
	if m.now != "" {
		labels = append(labels, typeset.Callout{X: d.x.At(m.nowAt), Lines: []string{m.now}, Style: canvas.Plain(canvas.Quiet, canvas.Small)})
	}
	for _, l := range m.limits {
		labels = append(labels, typeset.Callout{X: d.x.At(l.at), Lines: []string{l.text}, Style: canvas.Bold(canvas.Black, canvas.Small)})
	}
	d.marks = typeset.LayCallouts(labels, canvas.Margin, d.width-canvas.Margin)
	d.raise(max(d.marks.Height(), daysRaise))
	d.scales(first[0], last[0], leastPower, mostPower)
	d.ends = []endLabel{
		{d.y.At(power(last[1])), say.WrongAccepted(), canvas.Black, true},
		{d.y.At(power(last[2])), say.GoodRefused(), canvas.Accent, true},
		{d.y.At(power(m.accept)), say.AcceptTarget(), canvas.Black, false},
		{d.y.At(power(m.reject)), say.RejectTarget(), canvas.Accent, false},
	}
	if m.accept == m.reject {
		d.ends = append(d.ends[:2], endLabel{d.y.At(power(m.accept)), say.BothTargets(), canvas.Quiet, false})
	}
	d.height = math.Ceil(d.bottom() + canvas.Margin/2)
	return d
}

func (d *daysDrawing) paint(p *canvas.Pen) {
	p.Lines(canvas.Bold(canvas.Black, canvas.Heading), canvas.Margin, canvas.Margin+canvas.Heading, canvas.Start, d.title)
	if len(d.m.rows) == 0 {
		return
	}
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	p.Text(st, canvas.Margin, d.yNameAt, canvas.Start, d.yName)
	for k := leastPower; k <= mostPower; k += 2 {
		y := d.y.At(float64(k))
		p.HLine(canvas.Faint, d.plot.X0, d.plot.X1, y)
		p.Text(st, d.plot.X0-8, y+4, canvas.End, words.Trimmed(math.Pow10(k), 2))
	}
	d.gridX(p)
	for _, t := range []struct {
		ppm float64
		ink canvas.Ink
	}{{d.m.accept, canvas.Black}, {d.m.reject, canvas.Accent}} {
		y := canvas.Crisp(d.y.At(power(t.ppm)))
		p.Line(t.ink, canvas.ThinLine, canvas.Centring, [2]float64{d.plot.X0, y}, [2]float64{d.plot.X1, y})
	}
	if d.m.now != "" {
		d.vertical(p, canvas.Quiet, canvas.Dashed, d.x.At(d.m.nowAt), d.plot.Y0)
	}
	for _, l := range d.m.limits {
		d.vertical(p, canvas.Black, canvas.Dashed, d.x.At(l.at), d.plot.Y0)
	}
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, d.line(1)...)
	p.Line(canvas.Accent, canvas.Outline, canvas.Dashed, d.line(2)...)
	d.frame(p)
	d.labelEnds(p)
	d.figuresX(p, d.plot.Y1)
	d.nameX(p, d.plot.Y1)
	d.marks.Above(p, d.plot.Y0)
}

// line is one of the two shares along the drawing.
func (d *daysDrawing) line(share int) [][2]float64 {
	var out [][2]float64
	for _, row := range d.m.rows {
		out = append(out, d.at(row[0], power(row[share])))
	}
	return out
}
