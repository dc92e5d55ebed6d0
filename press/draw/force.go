package draw

import (
	"io"
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// Force draws the force window of a plan as SVG.
func Force(w io.Writer, p *press.Plan, r *press.Result) error {
	return NewForce(p, r, Options{}).SVG(w)
}

// NewForce makes the force window: the curve with its scatter, need and cap as a
// band of force, what they allow on the axis of settings, and the setting chosen.
func NewForce(p *press.Plan, r *press.Result, o Options) *Picture {
	m := newForceModel(p, r, *r.Traces())
	d := layForce(m, o)
	return newPicture(layout{kind: "force", compact: o.Compact, id: o.ID, title: m.title, desc: m.desc, width: d.width, height: d.height, paint: d.paint})
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
	m := &forceModel{title: words.ForceTitle(r), curve: t.Force, need: f.Need, most: f.Cap, allowed: f.Settings, steps: f.Steps, step: p.Ram.SettingStep, settable: t.Steps, force: f}
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
		"Push force against setting, from " + words.Setting(m.settable[0]) + " to " + words.Setting(m.settable[1]) + ".",
		"Needed: " + words.Force(m.need) + ". Part and tool may bear: " + words.Force(m.most) + ".",
	}
	if m.allowed != nil {
		s = append(s, "Settings from "+words.Setting(m.allowed[0])+" to "+words.Setting(m.allowed[1])+" lie in the window.")
	} else {
		s = append(s, "No setting lies in the window.")
	}
	s = append(s, "At "+words.Setting(f.Setting)+" the ram pushes "+words.Force(f.Low)+" to "+words.Force(f.High)+", typically "+words.Force(f.Typical)+".")
	return strings.Join(s, " ")
}

// forceDrawing is the force window laid out in px.
type forceDrawing struct {
	*chart
	m       *forceModel
	lane    rect    // under the axis: which settings can be used
	thin    float64 // steps from tick to tick of the lane
	below   callouts
	nameAt  [2]float64 // px of the name of the axis: where no line passes
	compact bool
}

func layForce(m *forceModel, o Options) *forceDrawing {
	d := &forceDrawing{m: m, chart: newChart(o, m.title, 118), compact: o.Compact}
	if o.Compact {
		d.plot.x1 = d.width - margin - 92
	}
	first, last := m.settable[0], m.settable[1]
	if n := len(m.curve); n > 1 {
		first, last = m.curve[0].At, m.curve[n-1].At
	}
	d.scales(first, last, m.bottom, m.top)
	d.xName, d.yName = "setting, % of the rated motor current", "push force at the tool, N"
	if d.thin = d.thinned(); d.thin > 1 {
		d.xName = "setting, %; to be set every " + words.Setting(m.step) + ", a tick every " + words.Setting(m.step*d.thin)
		d.xName = d.xNameStyle().clip(d.xName, d.width-1.5*margin)
	}
	d.endLabels()
	y := d.plot.y1 + axisFigures + 5
	d.lane = rect{d.plot.x0, y, d.plot.x1, y + 12}
	d.below = layCallouts(d.settingLabels(), margin, d.width-margin)
	d.nameAt = [2]float64{margin, d.lane.y1 + d.below.height() - d.below.depth + 1.05*small}
	edge := d.lane.y1 + d.below.height()
	wide, left, right := d.xNameStyle().width(d.xName), d.width, 0.0
	for i, c := range d.below.items {
		half := c.width()/2 + calloutGap
		left, right = math.Min(left, d.below.centre[i]-half), math.Max(right, d.below.centre[i]+half)
	}
	switch {
	case d.below.rows == 1 && margin+wide <= left:
	case d.below.rows == 1 && right+wide <= d.plot.x1:
		d.nameAt[0] = d.plot.x1 - wide
	default:
		d.nameAt[1] = edge + small
		edge += axisName
	}
	d.height = math.Ceil(edge + margin/2)
	return d
}

func (d *forceDrawing) xNameStyle() style { return style{quiet, small, false} }

func (d *forceDrawing) endLabels() {
	m := d.m
	add := func(v float64, text string, k ink, strong bool) {
		d.ends = append(d.ends, endLabel{d.y.x(v), text + beyond(v, m.top), k, strong})
	}
	add(m.most, "cap "+words.Force(m.most), black, true)
	add(m.need, "need "+words.Force(m.need), black, true)
	if n := len(m.curve); n > 0 {
		b := m.curve[n-1]
		add(b.High, "strong ram", quiet, false)
		add(b.Typical, "typical", black, false)
		add(b.Low, "weak ram", quiet, false)
	}
}

// beyond marks the name of a line that lies over the upper end of the axis.
func beyond(v, top float64) string {
	if v > top {
		return " ↑"
	}
	return ""
}

func (d *forceDrawing) settingLabels() []callout {
	m := d.m
	var out []callout
	add := func(v float64, name string, k style) {
		out = append(out, callout{x: d.x.x(v), lines: []string{words.Setting(v), name}, style: k})
	}
	edge := style{good, small, true}
	if m.steps != nil {
		if m.steps[0] != m.force.Setting {
			add(m.steps[0], "first step", edge)
		}
		if m.steps[1] != m.force.Setting && m.steps[1] != m.steps[0] {
			add(m.steps[1], "last step", edge)
		}
	}
	set := style{black, body, true}
	if !m.force.SettingFeasible {
		set.ink = alert
	}
	add(m.force.Setting, "setting", set)
	for i := range out {
		out[i].style.size = small + 1
	}
	return out
}

func (d *forceDrawing) paint(p *pen) {
	d.paper(p)
	d.window(p)
	d.curves(p)
	d.chosen(p)
	d.chart.frame(p)
	d.labelEnds(p)
	d.figuresX(p, d.plot.y1)
	d.settings(p)
	d.below.below(p, d.lane.y1)
	p.text(d.xNameStyle(), d.nameAt[0], d.nameAt[1], start, d.xName)
}

// window draws need and cap: what lies between is wanted, what lies over the cap
// is crossed out, what lies under the need leaves parts tall.
func (d *forceDrawing) window(p *pen) {
	m := d.m
	need, most := d.y.x(m.need), d.y.x(m.most)
	if m.need <= m.most {
		p.fill(good.tint(fillTint), rect{d.plot.x0, most, d.plot.x1, need})
	} else {
		p.hatch(alert.tint(0.7), crossHatch, rect{d.plot.x0, need, d.plot.x1, most})
	}
	d.wanted(p, need, most)
	for _, v := range []float64{m.need, m.most} {
		if d.y.has(v) {
			p.line(good, outline, solid, d.at(d.x.from, v), d.at(d.x.to, v))
		}
	}
}

// wanted names the band where the curve leaves room for it.
func (d *forceDrawing) wanted(p *pen, need, most float64) {
	st := style{good, small, true}
	text := "seats every part, overloads none"
	x, y := d.plot.x0+10, (need+most)/2+4
	if need-most < 20 || x+st.width(text) > d.plot.x1-10 {
		return
	}
	for _, b := range d.m.curve {
		if d.x.x(b.At) < x+st.width(text)+6 && d.y.x(b.High) < y+8 {
			return
		}
	}
	p.text(st, x, y, start, text)
}

func (d *forceDrawing) curves(p *pen) {
	low, mid, high := bands(d.m.curve)
	d.band(p, black.tint(bandTint), low, high)
	d.curve(p, quiet, thinLine, low)
	d.curve(p, quiet, thinLine, high)
	d.curve(p, black, outline, mid)
}

// chosen marks the push at the setting: from the weak to the strong ram.
func (d *forceDrawing) chosen(p *pen) {
	f := d.m.force
	x := d.x.x(f.Setting)
	k, dash := black, solid
	if !f.SettingFeasible {
		k, dash = alert, centring
	}
	d.vertical(p, k, dash, x, d.y.x(f.High))
	p.line(k, 3, solid, [2]float64{crisp(x), d.y.x(f.Low)}, [2]float64{crisp(x), d.y.x(f.High)})
	p.circle(paper, k, outline, crisp(x), d.y.x(f.Typical), 4)
	if a := d.m.allowed; a != nil {
		for i, v := range []float64{d.m.pushAt(a[0]).Low, d.m.pushAt(a[1]).High} {
			p.line(good, thinLine, dashed, d.at(a[i], v), [2]float64{d.x.x(a[i]), d.lane.y0})
		}
	}
}

// tickApart is the least distance of ticks that can still be told apart, px.
const tickApart = 4

// thinned gives how many settable steps lie from one tick to the next: one where
// they can be told apart, else a round number of them.
func (d *forceDrawing) thinned() float64 {
	perStep := (d.x.x1 - d.x.x0) / (d.x.to - d.x.from) * d.m.step
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
	for k := first; k <= last && last-first < (d.plot.x1-d.plot.x0)/tickApart+1; k++ {
		out = append(out, k*apart)
	}
	return out
}

// settings draws the lane of what can be set: the window on it, and the steps.
func (d *forceDrawing) settings(p *pen) {
	m := d.m
	p.fill(black.tint(quietTint), rect{d.x.x(m.settable[0]), d.lane.y0, d.x.x(m.settable[1]), d.lane.y1})
	if a := m.allowed; a != nil {
		box := rect{d.x.x(a[0]), d.lane.y0, math.Max(d.x.x(a[1]), d.x.x(a[0])+1), d.lane.y1}
		p.fill(good.tint(2*fillTint), box)
		p.frame(good, outline, solid, box)
	}
	for _, v := range d.ticks() {
		p.vline(quiet, d.x.x(v), d.lane.y1-4, d.lane.y1)
	}
	x := d.x.x(m.force.Setting)
	p.area(black, [2]float64{x, d.lane.y1}, [2]float64{x - 5, d.lane.y0}, [2]float64{x + 5, d.lane.y0})
}
