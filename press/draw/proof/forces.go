package proof

import (
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/proving"
)

// mostPushes is how many pushes at one setting are drawn one by one.
const mostPushes = 40

// newForces draws the forces that a load cell measured over the band that the plan expects:
// as they are, and under that as what they differ from its typical force by, where the
// bands can be told apart.
func newForces(s Subject, o draw.Options) *canvas.Picture {
	r := resultOf[proving.LoadCellResult](s)
	if r == nil || len(r.Settings) == 0 {
		return nothing("forces", o)
	}
	d := &forces{r: r, band: s.Plan.Traces().Force, rows: map[float64][]float64{}, outliers: len(r.Outliers)}
	for _, row := range s.Study.Rows {
		if row.Setting != nil && row.Force != nil {
			d.rows[*row.Setting] = append(d.rows[*row.Setting], *row.Force)
		}
	}
	d.need, d.most, d.setting = s.Plan.Force.Need, s.Plan.Force.Cap, s.Plan.Force.Setting
	d.lay(o)
	return d.picture(d.paint)
}

type forces struct {
	*frame
	r                   *proving.LoadCellResult
	band                []press.Band
	rows                map[float64][]float64 // N, by setting
	need, most, setting float64
	outliers            int

	whole, apart *panel
	few          bool // every push is drawn
}

func (d *forces) lay(o draw.Options) {
	places := map[string]int{}
	for _, q := range d.r.Settings {
		if q.Place != nil {
			places[*q.Place]++
		}
	}
	drawn, all := 0, 0
	d.few = true
	for _, list := range d.rows {
		all += len(list)
		if len(list) > mostPushes {
			d.few = false
		} else {
			drawn += len(list)
		}
	}
	right := 118.0
	if o.Compact {
		right = 92
	}
	d.frame = newFrame("forces", say.ForcesTitle(d.r.AtSetting != nil, d.atForce(), d.setting, places[proving.Inside], places[proving.Undecided], places[proving.Outside]), d.describe(), o, 44, right)
	xs, whole, apart := newReach(), newReach(), newReach()
	for _, b := range d.band {
		xs.take(b.At)
	}
	for _, q := range d.r.Settings {
		xs.take(q.Setting)
		whole.take(q.Mean)
		if q.Predict != nil {
			whole.take(q.Predict[0], q.Predict[1])
		}
		if q.Plan == nil {
			continue
		}
		apart.take(q.Plan[0]-q.Plan[1], q.Plan[2]-q.Plan[1], q.Mean-q.Plan[1])
		if q.Predict != nil {
			apart.take(q.Predict[0]-q.Plan[1], q.Predict[1]-q.Plan[1])
		}
		for _, f := range d.rows[q.Setting] {
			apart.take(f - q.Plan[1])
		}
	}
	for _, b := range d.band {
		whole.take(b.Low, b.High)
	}
	whole.take(0)
	if reach := 1.5 * whole.to; d.most <= reach {
		whole.take(d.most)
	}
	if d.need <= 1.5*whole.to {
		whole.take(d.need)
	}
	d.across(first(xs.padded(0.02)), last(xs.padded(0.02)), say.MeasuredSettingAxis())
	from, to := whole.padded(0.04)
	d.whole = d.add(150, math.Max(from, math.Min(0, whole.from)), to, say.MeasuredForceAxis())
	d.whole.end(d.most, say.CapIs(d.most), canvas.Good, true)
	d.whole.end(d.need, say.NeedIs(d.need), canvas.Good, true)
	if n := len(d.band); n > 0 {
		d.whole.end(d.band[n-1].Typical, say.PlanTypical(), canvas.Black, false)
	}
	from, to = apart.padded(0.08)
	d.apart = d.add(170, from, to, say.ForceApartAxis())
	d.apart.end(0, say.PlanTypical(), canvas.Black, false)
	if n := len(d.band); n > 0 {
		b := d.band[n-1]
		d.apart.end(b.High-b.Typical, say.StrongRam(), canvas.Quiet, false)
		d.apart.end(b.Low-b.Typical, say.WeakRam(), canvas.Quiet, false)
	}
	key := []keyItem{{keyBar, say.OneMorePush()}}
	key = append(key, keyItem{markDisc, say.PlaceKey(proving.Inside)})
	if places[proving.Undecided] > 0 {
		key = append(key, keyItem{markRing, say.PlaceKey(proving.Undecided)})
	}
	if places[proving.Outside] > 0 {
		key = append(key, keyItem{markWrong, say.PlaceKey(proving.Outside)})
	}
	if d.few {
		key = append(key, keyItem{markSmallRing, say.EachPush(all)})
	} else {
		key = append(key, keyItem{markReach, say.PushesReach(drawn, all)})
	}
	d.axis(key...)
}

func first(a, _ float64) float64 { return a }
func last(_, b float64) float64  { return b }

func keyBar(p *canvas.Pen, x, y float64) { markBar(p, x, y-6, y+6) }

func markReach(p *canvas.Pen, x, y float64) {
	p.Line(canvas.Quiet, 3, canvas.Solid, [2]float64{x, y - 6}, [2]float64{x, y + 6})
}

func (d *forces) atForce() float64 {
	if d.r.AtSetting == nil {
		return 0
	}
	return d.r.AtSetting.Force
}

// describe has the figures of the drawing in sentences.
func (d *forces) describe() string {
	s := []string{say.NeedAndCap(d.need, d.most)}
	if a := d.r.AtSetting; a != nil {
		if a.Predict != nil {
			s = append(s, say.AtSettingPredicted(a.Setting, a.Force, a.Predict[0], a.Predict[1]))
		} else {
			s = append(s, say.AtSettingFound(a.Setting, a.Force))
		}
	}
	for _, q := range d.r.Settings {
		s = append(s, say.SettingMeasured(q.Setting, q.N, q.Mean, q.Predict, q.Plan, q.Place))
	}
	if d.outliers > 0 {
		s = append(s, say.OutlierRows(d.r.Outliers))
	}
	return strings.Join(s, " ")
}

func (d *forces) paint(p *canvas.Pen) {
	d.paintWhole(p)
	d.paintApart(p)
	d.below(p)
}

func (d *forces) paintWhole(p *canvas.Pen) {
	q := d.whole
	d.grid(p, q)
	if d.need <= d.most {
		p.Fill(canvas.Good.Tint(canvas.FillTint), canvas.Rect(q.box.X0, q.y.At(d.most), q.box.X1, q.y.At(d.need)))
	}
	for _, v := range []float64{d.need, d.most} {
		q.level(p, canvas.Good, canvas.Outline, canvas.Solid, v)
	}
	d.fillBand(p, q, false)
	d.atThe(p, q)
	for _, m := range d.r.Settings {
		d.mean(p, q, m, 0)
	}
	d.over(p, q)
}

// fillBand draws the band of the plan, from the weak to the strong ram.
func (d *forces) fillBand(p *canvas.Pen, q *panel, less bool) {
	var low, mid, high [][2]float64
	for _, b := range d.band {
		zero := 0.0
		if less {
			zero = b.Typical
		}
		low, mid, high = append(low, d.at(q, b.At, b.Low-zero)), append(mid, d.at(q, b.At, b.Typical-zero)), append(high, d.at(q, b.At, b.High-zero))
	}
	if len(low) < 2 {
		return
	}
	shape := append([][2]float64{}, low...)
	for i := len(high) - 1; i >= 0; i-- {
		shape = append(shape, high[i])
	}
	p.Area(canvas.Black.Tint(canvas.BandTint), shape...)
	p.Line(canvas.Quiet, canvas.ThinLine, canvas.Solid, low...)
	p.Line(canvas.Quiet, canvas.ThinLine, canvas.Solid, high...)
	p.Line(canvas.Black, canvas.ThinLine, canvas.Centring, mid...)
}

// atThe marks the setting of the plan.
func (d *forces) atThe(p *canvas.Pen, q *panel) {
	if d.x.Has(d.setting) {
		x := canvas.Crisp(d.x.At(d.setting))
		p.Line(canvas.Black, canvas.ThinLine, canvas.Dashed, [2]float64{x, q.box.Y0}, [2]float64{x, q.box.Y1})
	}
}

// mean draws what the pushes at a setting say, less the typical force of the plan.
func (d *forces) mean(p *canvas.Pen, q *panel, m proving.SettingForces, less float64) {
	x := d.x.At(m.Setting)
	if m.Predict != nil {
		markBar(p, x, q.y.At(m.Predict[1]-less), q.y.At(m.Predict[0]-less))
	}
	mark := markDisc
	switch {
	case m.Place == nil || *m.Place == proving.Undecided:
		mark = markRing
	case *m.Place == proving.Outside:
		mark = markWrong
	}
	mark(p, x, q.y.At(m.Mean-less))
}

func (d *forces) paintApart(p *canvas.Pen) {
	q := d.apart
	d.grid(p, q)
	p.Group("band", false, func() { d.fillBand(p, q, true) })
	d.atThe(p, q)
	if d.x.Has(d.setting) {
		st := canvas.Plain(canvas.Black, canvas.Small)
		text := say.PlanSetting(d.setting)
		half := st.Width(text) / 2
		p.OnPaper(st, math.Max(d.left+half+4, math.Min(d.x.At(d.setting), d.right-half-4)), q.box.Y0+14, canvas.Middle, text)
	}
	for _, m := range d.r.Settings {
		if m.Plan == nil {
			continue
		}
		x, list := d.x.At(m.Setting), d.rows[m.Setting]
		if len(list) > mostPushes {
			low, high := math.Inf(1), math.Inf(-1)
			for _, f := range list {
				low, high = math.Min(low, f), math.Max(high, f)
			}
			p.Line(canvas.Quiet, 3, canvas.Solid, [2]float64{x + 8, q.y.At(low - m.Plan[1])}, [2]float64{x + 8, q.y.At(high - m.Plan[1])})
		} else {
			for _, f := range list {
				markSmallRing(p, x+8, q.y.At(f-m.Plan[1]))
			}
		}
		d.mean(p, q, m, m.Plan[1])
	}
	d.over(p, q)
}
