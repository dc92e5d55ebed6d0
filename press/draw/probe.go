package draw

import (
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// NewProbe makes the probe: along the ruler where a sound part stalls and where the
// probe ends, and the chance of refusal against the interference.
func NewProbe(p *press.Plan, r *press.Result, o Options) *Picture {
	b := &r.Probe
	switch {
	case !b.InUse:
		return stated("probe", words.NoProbe, o, stripWideLeast, stripCompactLeast)
	case b.End == nil || b.Detection == nil:
		return stated("probe", words.NoProbeFigures, o, stripWideLeast, stripCompactLeast)
	}
	m := newProbeModel(p, r)
	d := layProbe(m, o)
	return newPicture(layout{kind: "probe", compact: o.Compact, id: o.ID, title: m.title, desc: m.desc, width: d.width, height: d.height, paint: d.paint})
}

// probeModel is what the probe's drawing shows, as data.
type probeModel struct {
	title, desc string
	pos         words.Positions
	from, to    float64 // mm, of the ruler
	approach    float64
	contact     float64
	nominal     *float64 // mm, where the nominal part stalls
	loosest     *float64 // mm, where the loosest sound part does
	reaches     float64  // mm, up to where that may read
	end         float64
	zone        *float64 // mm, the zone start
	seat        float64
	effective   [21]float64
	refused     [21]float64
	fit         *press.Triple // µm
	below       *float64      // µm, refused surely
	above       *float64      // µm, passed surely
	most        float64       // µm, of the axis
}

func newProbeModel(p *press.Plan, r *press.Result) *probeModel {
	b := &r.Probe
	m := &probeModel{
		title: words.ProbeTitle(r), pos: words.PositionsOf(p), approach: r.Travel.ApproachEnd, contact: r.Travel.Contact,
		nominal: b.StallNominal, loosest: b.StallLoosest, end: *b.End, seat: r.Travel.SeatReading,
		effective: b.Detection.Effective, refused: b.Detection.Refused, above: b.PassedAbove,
	}
	if z := r.Window.Zone; z != nil {
		m.zone = z[0]
	}
	if b.Room != nil && m.loosest != nil {
		m.reaches = math.Max(*m.loosest, m.end-*b.Room)
	}
	if r.Joint != nil {
		m.fit = r.Joint.Effective
	}
	if b.CaughtBelow != nil {
		m.below = &b.CaughtBelow.Effective
	}
	m.from, m.to = m.approach, m.seat
	m.most = m.effective[20]
	for _, x := range []*float64{&m.contact, m.nominal, m.loosest, &m.end, m.zone} {
		if x != nil {
			m.from, m.to = math.Min(m.from, *x), math.Max(m.to, *x)
		}
	}
	for _, x := range []*float64{m.below, m.above} {
		if x != nil {
			m.most = math.Max(m.most, *x)
		}
	}
	if m.fit != nil {
		m.most = math.Max(m.most, m.fit[2])
	}
	m.desc = m.describe(r)
	return m
}

func (m *probeModel) describe(r *press.Result) string {
	b := &r.Probe
	s := []string{m.title + ".", "The probe pushes at " + words.Setting(*b.Setting) + " from " + m.pos.At(m.approach) + " and ends at " + m.pos.At(m.end) + "."}
	if m.nominal != nil {
		s = append(s, "The nominal part stalls it at "+m.pos.At(*m.nominal)+".")
	} else {
		s = append(s, "The nominal part does not stall it.")
	}
	if m.loosest != nil {
		s = append(s, "The loosest sound part stalls it at "+m.pos.At(*m.loosest)+".")
	} else {
		s = append(s, "The loosest sound part does not stall it.")
	}
	if m.zone != nil {
		s = append(s, "The zone begins at "+m.pos.At(*m.zone)+".")
	}
	s = append(s, "Arrival before the end: go on. No arrival: refused, loose or missing.")
	if m.below != nil {
		s = append(s, "Under an effective interference of "+words.Microns(*m.below)+" a part is refused surely.")
	}
	if m.above != nil {
		s = append(s, "Over "+words.Microns(*m.above)+" it passes surely.")
	}
	return strings.Join(s, " ")
}

// probeDrawing is the probe laid out in px.
type probeDrawing struct {
	*chart // the chance of refusal
	m      *probeModel
	ruler  scale
	marks  callouts
	top    float64 // of the ram's lane
	figure callouts
}

const (
	probeRam     = 46 // height of the lane with the ram
	probeSignal  = 34
	probeVerdict = 34
	probeChance  = 150
)

func layProbe(m *probeModel, o Options) *probeDrawing {
	d := &probeDrawing{m: m, chart: newChart(o, m.title, 0)}
	pad := 0.03 * (m.to - m.from)
	left := margin + 60.0
	d.ruler = newScale(m.from-pad, m.to+pad, left, d.width-margin)
	d.marks = layCallouts(d.places(), margin, d.width-margin)
	d.top = d.plot.y0 - 18 + d.marks.height()
	d.plot.x1 = d.width - margin
	d.plot.y0 = d.top + probeRam + probeSignal + probeVerdict + 20 + axisFigures + axisName + small + 14
	d.x = newScale(0, 1.05*m.most, d.plot.x0, d.plot.x1)
	d.yNameAt = d.plot.y0 - 8
	d.figure = layCallouts(d.limits(), margin, d.width-margin)
	d.plot.y0 += d.figure.height()
	d.plot.y1 = d.plot.y0 + probeChance
	if o.Flat {
		d.plot.y1 = d.plot.y0 + plotHeightFlat
	}
	d.y = newScale(0, 100, d.plot.y1, d.plot.y0)
	d.xName, d.yName = "effective interference, µm", "chance that the probe refuses, %"
	d.height = math.Ceil(d.bottom() + margin)
	return d
}

// places are what is named over the ruler.
func (d *probeDrawing) places() []callout {
	m := d.m
	var out []callout
	add := func(name string, at *float64, strong bool) {
		if at != nil {
			out = append(out, callout{x: d.ruler.x(*at), lines: []string{name, m.pos.Bare(*at)}, style: style{black, small, strong}})
		}
	}
	add("approach end", &m.approach, false)
	add("contact", &m.contact, false)
	add("nominal stalls", m.nominal, true)
	add("loosest sound part", m.loosest, false)
	add("probe end", &m.end, true)
	add("zone", m.zone, false)
	add("seat", &m.seat, false)
	return out
}

// limits are the two interferences beyond which the probe is sure.
func (d *probeDrawing) limits() []callout {
	var out []callout
	if b := d.m.below; b != nil {
		out = append(out, callout{x: d.x.x(*b), lines: []string{"refused below", words.Microns(*b)}, style: style{black, small, true}})
	}
	if a := d.m.above; a != nil {
		out = append(out, callout{x: d.x.x(*a), lines: []string{"passed above", words.Microns(*a)}, style: style{black, small, true}})
	}
	return out
}

func (d *probeDrawing) paint(p *pen) {
	d.chart.paper(p)
	signal := d.top + probeRam
	verdict := signal + probeSignal
	axis := verdict + probeVerdict + 8
	for _, c := range d.marks.items {
		p.vline(faint, c.x, d.top, axis)
	}
	d.marks.above(p, d.top)
	d.ram(p, d.top)
	d.signal(p, signal)
	d.verdicts(p, verdict)
	d.axis(p, axis)
	d.chance(p)
}

// ram is the ram's tip where the nominal part stalls it, a flag where the loosest sound
// part does, the probe end as a stop and what is kept free behind it.
func (d *probeDrawing) ram(p *pen, y float64) {
	m := d.m
	p.text(style{quiet, small, false}, margin, y+28, start, "ram")
	mid, base := y+14, y+probeRam-8
	if m.nominal != nil {
		x := d.ruler.x(*m.nominal)
		body := rect{d.ruler.x0, mid - 6, x, mid + 6}
		p.fill(black.tint(quietTint), body)
		p.line(black, outline, solid, [2]float64{d.ruler.x0, body.y0}, [2]float64{x, body.y0}, [2]float64{x, body.y1}, [2]float64{d.ruler.x0, body.y1})
	}
	if m.loosest != nil {
		x := d.ruler.x(*m.loosest)
		p.line(black, outline, solid, [2]float64{crisp(x), base}, [2]float64{crisp(x), y + 4})
		p.area(black, [2]float64{crisp(x), y + 4}, [2]float64{crisp(x) - 9, y + 8}, [2]float64{crisp(x), y + 12})
		if r := d.ruler.x(m.reaches); r > x+1 {
			p.line(black, thinLine, solid, [2]float64{x, base - 6}, [2]float64{r, base - 6})
			p.line(black, thinLine, solid, [2]float64{r, base - 9}, [2]float64{r, base - 3})
		}
	}
	x := d.ruler.x(m.end)
	if m.zone != nil {
		if z := d.ruler.x(*m.zone); z > x {
			guard := rect{x, y + 3, z, base}
			p.fill(black.tint(quietTint), guard)
			p.hatch(black, crossHatch, guard)
		}
	}
	p.line(black, 2*outline, solid, [2]float64{x, y + 2}, [2]float64{x, base})
	p.hline(black, d.ruler.x0, d.ruler.x1, base)
}

// signal is arrival: on where a part stalls the ram before the probe end.
func (d *probeDrawing) signal(p *pen, y float64) {
	p.text(style{black, small, true}, margin, y+18, start, "arrival")
	high, low, x := crisp(y+5), crisp(y+24), d.ruler.x(d.m.end)
	from := d.ruler.x(d.m.contact)
	p.fill(black.tint(quietTint), rect{from, high, x, low})
	p.line(black, outline, solid, [2]float64{from, high}, [2]float64{x, high}, [2]float64{x, low}, [2]float64{d.ruler.x1, low})
	p.onPaper(style{quiet, small, false}, (from+x)/2, (high+low)/2+4, middle, words.OnOff(true))
	if st := (style{quiet, small, false}); st.width(words.OnOff(false)) < d.ruler.x1-x-8 {
		p.onPaper(st, (x+d.ruler.x1)/2, low-6, middle, words.OnOff(false))
	}
}

const (
	goesOn       = "go on"
	refusedWords = "refused: loose or missing"
)

// verdicts are what follows from it. The field past the end is hatched, and its words
// stand where there is room: in it, or at its left end.
func (d *probeDrawing) verdicts(p *pen, y float64) {
	x, from := d.ruler.x(d.m.end), d.ruler.x(d.m.contact)
	box := rect{from, y + 2, x, y + 26}
	p.frame(black, thinLine, solid, box)
	past := rect{x, y + 2, d.ruler.x1, y + 26}
	p.fill(black.tint(quietTint), past)
	p.hatch(black, crossHatch, past)
	p.frame(black, thinLine, solid, past)
	st := style{black, small, true}
	if st.width(refusedWords)+12 < past.x1-past.x0 {
		p.onPaper(st, (past.x0+past.x1)/2, y+18, middle, refusedWords)
		p.text(st, (box.x0+box.x1)/2, y+18, middle, goesOn)
		return
	}
	text := refusedWords + " →"
	w := st.width(text)
	if w+st.width(goesOn)+40 > box.x1-box.x0 {
		text, w = "refused →", st.width("refused →")
	}
	p.text(st, box.x1-8, y+18, end, text)
	p.text(st, (box.x0+box.x1-8-w)/2, y+18, middle, goesOn)
}

// axis is the ruler.
func (d *probeDrawing) axis(p *pen, y float64) {
	st := style{quiet, small, false}
	p.hline(black, d.ruler.x0, d.ruler.x1, y)
	w := math.Max(st.width(figure(d.ruler.from, 2)), st.width(figure(d.ruler.to, 2)))
	ticks, decimals := d.ruler.ticks(int((d.ruler.x1 - d.ruler.x0) / (w + 24)))
	free := math.Inf(-1)
	for _, v := range ticks {
		x, text := d.ruler.x(v), figure(v, decimals)
		p.vline(black, x, y, y+4)
		if half := st.width(text) / 2; x-half > free && x+half < d.width-2 {
			p.text(st, x, y+17, middle, text)
			free = x + half + 8
		}
	}
	p.text(st, d.ruler.x1, y+17+axisName, end, "ram reading in the probe, mm")
}

// chance is the chance of refusal; the fit's range lies as a bar on the axis.
func (d *probeDrawing) chance(p *pen) {
	m := d.m
	for _, c := range d.figure.items {
		d.vertical(p, black, dashed, c.x, d.plot.y0)
	}
	var line [][2]float64
	for i := range m.effective {
		line = append(line, d.at(m.effective[i], 100*m.refused[i]))
	}
	if last := m.effective[20]; m.most > last && m.refused[20] < 1e-6 {
		line = append(line, d.at(1.05*m.most, 0))
	}
	p.line(black, outline, solid, line...)
	if f := m.fit; f != nil {
		x0, x1 := d.x.x(f[0]), d.x.x(f[2])
		p.fill(black.tint(bandTint), rect{x0, d.plot.y1 - 7, x1, d.plot.y1})
		p.frame(black, thinLine, solid, rect{x0, d.plot.y1 - 7, x1, d.plot.y1})
		if st := (style{quiet, small, false}); st.width("the fit's range") < d.plot.x1-x0 {
			x := math.Min((x0+x1)/2, d.plot.x1-st.width("the fit's range")/2-2)
			p.onPaper(st, x, d.plot.y1-13, middle, "the fit's range")
		}
	}
	d.chart.frame(p)
	d.figuresX(p, d.plot.y1)
	d.nameX(p, d.plot.y1)
	d.figure.above(p, d.plot.y0)
}
