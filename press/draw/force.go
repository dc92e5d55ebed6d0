package draw

import (
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
)

// NewForce makes the force window: the curve with its scatter, need and cap as a
// band of force, what they allow on the axis of settings, and the setting chosen.
func NewForce(p *press.Plan, r *press.Result, o Options) *canvas.Picture {
	m := newForceModel(p, r, *r.Traces())
	d := layForce(m, o)
	return canvas.NewPicture(canvas.Layout{Kind: "force", Compact: o.Compact, ID: o.ID, Title: m.title, Desc: m.desc, Width: d.width, Height: d.height, Paint: d.paint})
}

// forceModel is what the force window shows, as data.
type forceModel struct {
	title, desc string
	curve       []press.Band
	need, most  float64
	top         float64     // N, end of the axis
	bottom      float64     // N
	allowed     *press.Pair // %, exact
	steps       *press.Pair // %, first and last settable step inside
	step        float64     // %
	settable    press.Pair  // %, first and last settable step
	force       press.Force
}

func newForceModel(p *press.Plan, r *press.Result, t press.Traces) *forceModel {
	f := r.Force
	m := &forceModel{title: say.ForceTitle(r), curve: t.Force, need: f.Need, most: f.Cap, allowed: f.Settings, steps: f.Steps, step: p.Ram.SettingStep, settable: t.Steps, force: f}
	m.top, m.bottom = math.Max(0, f.High), math.Min(0, f.Low)
	for _, b := range t.Force {
		m.top, m.bottom = math.Max(m.top, b.High), math.Min(m.bottom, b.Low)
	}
	// Need and cap stretch the axis only so far that the curve can still be seen.
	reach := 2.5 * math.Max(m.top, -m.bottom)
	for _, x := range []float64{f.Need, f.Cap} {
		if x <= reach {
			m.top = math.Max(m.top, x)
		}
	}
	m.top *= 1.06
	if !(m.top > m.bottom) {
		m.top = m.bottom + 1
	}
	m.desc = m.describe()
	return m
}

// pushAt gives the push at a setting, between the points that are drawn.
func (m *forceModel) pushAt(setting float64) press.Band {
	for i, b := range m.curve {
		if setting > b.At && i < len(m.curve)-1 {
			continue
		}
		a := m.curve[max(i-1, 0)]
		if b.At == a.At {
			return b
		}
		share := (setting - a.At) / (b.At - a.At)
		mix := func(x, y float64) float64 { return x + share*(y-x) }
		return press.Band{At: setting, Low: mix(a.Low, b.Low), Typical: mix(a.Typical, b.Typical), High: mix(a.High, b.High)}
	}
	return press.Band{At: setting, Low: m.need, Typical: m.need, High: m.most}
}

func (m *forceModel) describe() string {
	f := m.force
	s := []string{
		say.ForceText(m.settable[0], m.settable[1]),
		say.NeededAndBorne(m.need, m.most),
	}
	if m.allowed != nil {
		s = append(s, say.SettingsInWindow(m.allowed[0], m.allowed[1]))
	} else {
		s = append(s, say.NoSettingInWindow())
	}
	s = append(s, say.ForceAtSetting(f.Setting, f.Low, f.High, f.Typical))
	return strings.Join(s, " ")
}

// forceDrawing is the force window laid out in px.
type forceDrawing struct {
	*chart
	m       *forceModel
	lane    canvas.Rectangle // under the axis: which settings can be used
	thin    float64          // steps from tick to tick of the lane
	below   typeset.Callouts
	nameAt  [2]float64 // px of the name of the axis: where no line passes
	compact bool
}

func layForce(m *forceModel, o Options) *forceDrawing {
	d := &forceDrawing{m: m, chart: newChart(o, m.title, 118), compact: o.Compact}
	if o.Compact {
		d.plot.X1 = d.width - canvas.Margin - 92
	}
	first, last := m.settable[0], m.settable[1]
	if n := len(m.curve); n > 1 {
		first, last = m.curve[0].At, m.curve[n-1].At
	}
	d.scales(first, last, m.bottom, m.top)
	d.xName, d.yName = say.SettingOfRatedAxis(), say.PushForceAxis()
	if d.thin = d.thinned(); d.thin > 1 {
		d.xName = say.SettingStepsAxis(m.step, m.step*d.thin)
		d.xName = d.xNameStyle().Clip(d.xName, d.width-1.5*canvas.Margin)
	}
	d.endLabels()
	y := d.plot.Y1 + axisFigures + 5
	d.lane = canvas.Rect(d.plot.X0, y, d.plot.X1, y+12)
	d.below = typeset.LayCallouts(d.settingLabels(), canvas.Margin, d.width-canvas.Margin)
	d.nameAt = [2]float64{canvas.Margin, d.lane.Y1 + d.below.Height() - d.below.Depth + 1.05*canvas.Small}
	edge := d.lane.Y1 + d.below.Height()
	wide, left, right := d.xNameStyle().Width(d.xName), d.width, 0.0
	for i, c := range d.below.Items {
		half := c.Width()/2 + typeset.CalloutGap
		left, right = math.Min(left, d.below.Centre[i]-half), math.Max(right, d.below.Centre[i]+half)
	}
	switch {
	case d.below.Rows == 1 && canvas.Margin+wide <= left:
	case d.below.Rows == 1 && right+wide <= d.plot.X1:
		d.nameAt[0] = d.plot.X1 - wide
	default:
		d.nameAt[1] = edge + canvas.Small
		edge += axisName
	}
	d.height = math.Ceil(edge + canvas.Margin/2)
	return d
}

func (d *forceDrawing) xNameStyle() canvas.Style { return canvas.Plain(canvas.Quiet, canvas.Small) }

func (d *forceDrawing) endLabels() {
	m := d.m
	add := func(v float64, text string, k canvas.Ink, strong bool) {
		d.ends = append(d.ends, endLabel{d.y.At(v), text + beyond(v, m.top), k, strong})
	}
	add(m.most, "cap "+say.Force(m.most), canvas.Black, true)
	add(m.need, "need "+say.Force(m.need), canvas.Black, true)
	if n := len(m.curve); n > 0 {
		b := m.curve[n-1]
		add(b.High, say.StrongRam(), canvas.Quiet, false)
		add(b.Typical, "typical", canvas.Black, false)
		add(b.Low, say.WeakRam(), canvas.Quiet, false)
	}
}

// beyond marks the name of a line that lies over the upper end of the axis.
func beyond(v, top float64) string {
	if v > top {
		return " ↑"
	}
	return ""
}

func (d *forceDrawing) settingLabels() []typeset.Callout {
	m := d.m
	var out []typeset.Callout
	add := func(v float64, name string, k canvas.Style) {
		out = append(out, typeset.Callout{X: d.x.At(v), Lines: []string{say.Setting(v), name}, Style: k})
	}
	edge := canvas.Bold(canvas.Good, canvas.Small)
	if m.steps != nil {
		if m.steps[0] != m.force.Setting {
			add(m.steps[0], say.FirstStep(), edge)
		}
		if m.steps[1] != m.force.Setting && m.steps[1] != m.steps[0] {
			add(m.steps[1], say.LastStep(), edge)
		}
	}
	set := canvas.Bold(canvas.Black, canvas.Body)
	if !m.force.SettingFeasible {
		set.Ink = canvas.Alert
	}
	add(m.force.Setting, "setting", set)
	for i := range out {
		out[i].Style.Size = canvas.Small + 1
	}
	return out
}

func (d *forceDrawing) paint(p *canvas.Pen) {
	d.paper(p)
	d.window(p)
	d.curves(p)
	d.chosen(p)
	d.chart.frame(p)
	d.labelEnds(p)
	d.figuresX(p, d.plot.Y1)
	d.settings(p)
	d.below.Below(p, d.lane.Y1)
	p.Text(d.xNameStyle(), d.nameAt[0], d.nameAt[1], canvas.Start, d.xName)
}

// window draws need and cap: what lies between is wanted, what lies over the cap
// is crossed out, what lies under the need leaves parts tall.
func (d *forceDrawing) window(p *canvas.Pen) {
	m := d.m
	need, most := d.y.At(m.need), d.y.At(m.most)
	if m.need <= m.most {
		p.Fill(canvas.Good.Tint(canvas.FillTint), canvas.Rect(d.plot.X0, most, d.plot.X1, need))
	} else {
		p.Hatch(canvas.Alert.Tint(0.7), canvas.CrossHatch, canvas.Rect(d.plot.X0, need, d.plot.X1, most))
	}
	d.wanted(p, need, most)
	for _, v := range []float64{m.need, m.most} {
		if d.y.Has(v) {
			p.Line(canvas.Good, canvas.Outline, canvas.Solid, d.at(d.x.From, v), d.at(d.x.To, v))
		}
	}
}

// wanted names the band where the curve leaves room for it.
func (d *forceDrawing) wanted(p *canvas.Pen, need, most float64) {
	st := canvas.Bold(canvas.Good, canvas.Small)
	text := say.WindowOfForce()
	x, y := d.plot.X0+10, (need+most)/2+4
	if need-most < 20 || x+st.Width(text) > d.plot.X1-10 {
		return
	}
	for _, b := range d.m.curve {
		if d.x.At(b.At) < x+st.Width(text)+6 && d.y.At(b.High) < y+8 {
			return
		}
	}
	p.Text(st, x, y, canvas.Start, text)
}

func (d *forceDrawing) curves(p *canvas.Pen) {
	low, mid, high := bands(d.m.curve)
	d.band(p, canvas.Black.Tint(canvas.BandTint), low, high)
	d.curve(p, canvas.Quiet, canvas.ThinLine, low)
	d.curve(p, canvas.Quiet, canvas.ThinLine, high)
	d.curve(p, canvas.Black, canvas.Outline, mid)
}

// chosen marks the push at the setting: from the weak to the strong ram.
func (d *forceDrawing) chosen(p *canvas.Pen) {
	f := d.m.force
	x := d.x.At(f.Setting)
	k, dash := canvas.Black, canvas.Solid
	if !f.SettingFeasible {
		k, dash = canvas.Alert, canvas.Centring
	}
	d.vertical(p, k, dash, x, d.y.At(f.High))
	p.Line(k, 3, canvas.Solid, [2]float64{canvas.Crisp(x), d.y.At(f.Low)}, [2]float64{canvas.Crisp(x), d.y.At(f.High)})
	p.Circle(canvas.Paper, k, canvas.Outline, canvas.Crisp(x), d.y.At(f.Typical), 4)
	if a := d.m.allowed; a != nil {
		for i, v := range []float64{d.m.pushAt(a[0]).Low, d.m.pushAt(a[1]).High} {
			p.Line(canvas.Good, canvas.ThinLine, canvas.Dashed, d.at(a[i], v), [2]float64{d.x.At(a[i]), d.lane.Y0})
		}
	}
}

// tickApart is the least distance of ticks that can still be told apart, px.
const tickApart = 4

// thinned gives how many settable steps lie from one tick to the next: one where
// they can be told apart, else a round number of them.
func (d *forceDrawing) thinned() float64 {
	perStep := (d.x.X1 - d.x.X0) / (d.x.To - d.x.From) * d.m.step
	if !(perStep > 0) || perStep >= tickApart {
		return 1
	}
	return roundStep(tickApart / perStep)
}

// ticks are the settable steps that are drawn.
func (d *forceDrawing) ticks() []float64 {
	apart := d.m.step * d.thin
	first, last := math.Ceil(d.m.settable[0]/apart-1e-9), math.Floor(d.m.settable[1]/apart+1e-9)
	var out []float64
	for k := first; k <= last && last-first < (d.plot.X1-d.plot.X0)/tickApart+1; k++ {
		out = append(out, k*apart)
	}
	return out
}

// settings draws the lane of what can be set: the window on it, and the steps.
func (d *forceDrawing) settings(p *canvas.Pen) {
	m := d.m
	p.Fill(canvas.Black.Tint(canvas.QuietTint), canvas.Rect(d.x.At(m.settable[0]), d.lane.Y0, d.x.At(m.settable[1]), d.lane.Y1))
	if a := m.allowed; a != nil {
		box := canvas.Rect(d.x.At(a[0]), d.lane.Y0, math.Max(d.x.At(a[1]), d.x.At(a[0])+1), d.lane.Y1)
		p.Fill(canvas.Good.Tint(2*canvas.FillTint), box)
		p.Frame(canvas.Good, canvas.Outline, canvas.Solid, box)
	}
	for _, v := range d.ticks() {
		p.VLine(canvas.Quiet, d.x.At(v), d.lane.Y1-4, d.lane.Y1)
	}
	x := d.x.At(m.force.Setting)
	p.Area(canvas.Black, [2]float64{x, d.lane.Y1}, [2]float64{x - 5, d.lane.Y0}, [2]float64{x + 5, d.lane.Y0})
}
