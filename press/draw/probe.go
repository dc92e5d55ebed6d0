package draw

import (
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// NewProbe makes the probe: along the ruler where a sound part stalls and where the
// probe ends, and the chance of refusal against the interference.
func NewProbe(p *press.Plan, r *press.Result, o Options) *canvas.Picture {
	b := &r.Probe
	switch {
	case !b.InUse:
		return stated("probe", words.NoProbe, o, StripLeast, stripCompactLeast)
	case b.End == nil || b.Detection == nil:
		return stated("probe", words.NoProbeFigures, o, StripLeast, stripCompactLeast)
	}
	m := newProbeModel(p, r)
	d := layProbe(m, o)
	return canvas.NewPicture(canvas.Layout{Kind: "probe", Compact: o.Compact, ID: o.ID, Title: m.title, Desc: m.desc, Width: d.width, Height: d.height, Paint: d.paint})
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
		title: say.ProbeTitle(r), pos: say.Positions(p), approach: r.Travel.ApproachEnd, contact: r.Travel.Contact,
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
	s := []string{m.title + ".", say.ProbeText(*b.Setting, m.pos, m.approach, m.end)}
	if m.nominal != nil {
		s = append(s, say.NominalStallsProbe(m.pos, *m.nominal))
	} else {
		s = append(s, say.NominalPassesProbe())
	}
	if m.loosest != nil {
		s = append(s, say.LoosestStallsProbe(m.pos, *m.loosest))
	} else {
		s = append(s, say.LoosestPassesProbe())
	}
	if m.zone != nil {
		s = append(s, say.ZoneBeginsAt(m.pos, *m.zone))
	}
	s = append(s, say.ProbeRule())
	if m.below != nil {
		s = append(s, say.SurelyRefusedUnder(*m.below))
	}
	if m.above != nil {
		s = append(s, say.SurelyPassesOver(*m.above))
	}
	return strings.Join(s, " ")
}

// probeDrawing is the probe laid out in px.
type probeDrawing struct {
	*chart // the chance of refusal
	m      *probeModel
	ruler  canvas.Scale
	marks  typeset.Callouts
	top    float64 // of the ram's lane
	figure typeset.Callouts
	under  float64 // px under the verdicts, for the words of a field too narrow for them
}

const (
	probeRam     = 46 // height of the lane with the ram
	probeSignal  = 34
	probeVerdict = 34
	probeUnder   = 20
	probeChance  = 150
)

func layProbe(m *probeModel, o Options) *probeDrawing {
	d := &probeDrawing{m: m, chart: newChart(o, m.title, 0)}
	pad := 0.03 * (m.to - m.from)
	left := canvas.Margin + 60.0
	d.ruler = canvas.NewScale(m.from-pad, m.to+pad, left, d.width-canvas.Margin)
	d.marks = typeset.LayCallouts(d.places(), canvas.Margin, d.width-canvas.Margin)
	d.top = d.plot.Y0 - 18 + d.marks.Height()
	d.plot.X1 = d.width - canvas.Margin
	if !d.refusedFits() {
		d.under = probeUnder
	}
	d.plot.Y0 = d.top + probeRam + probeSignal + probeVerdict + d.under + 20 + axisFigures + axisName + canvas.Small + 14
	d.x = canvas.NewScale(0, 1.05*m.most, d.plot.X0, d.plot.X1)
	d.yNameAt = d.plot.Y0 - 8
	d.figure = typeset.LayCallouts(d.limits(), canvas.Margin, d.width-canvas.Margin)
	d.plot.Y0 += d.figure.Height()
	d.plot.Y1 = d.plot.Y0 + probeChance
	if o.Flat {
		d.plot.Y1 = d.plot.Y0 + plotHeightFlat
	}
	d.y = canvas.NewScale(0, 100, d.plot.Y1, d.plot.Y0)
	d.xName, d.yName = say.InterferenceAxis(), say.RefusalChanceAxis()
	d.height = math.Ceil(d.bottom() + canvas.Margin)
	return d
}

// places are what is named over the ruler.
func (d *probeDrawing) places() []typeset.Callout {
	m := d.m
	var out []typeset.Callout
	add := func(name string, at *float64, strong bool) {
		if at != nil {
			out = append(out, typeset.Callout{X: d.ruler.At(*at), Lines: []string{name, m.pos.Bare(*at)}, Style: canvas.Style{Ink: canvas.Black, Size: canvas.Small, Bold: strong}})
		}
	}
	add(say.ApproachEnd(), &m.approach, false)
	add("contact", &m.contact, false)
	add(say.NominalStalls(), m.nominal, true)
	add(say.LoosestSoundPart(), m.loosest, false)
	add(say.ProbeEnd(), &m.end, true)
	add("zone", m.zone, false)
	add("seat", &m.seat, false)
	return out
}

// limits are the two interferences beyond which the probe is sure.
func (d *probeDrawing) limits() []typeset.Callout {
	var out []typeset.Callout
	if b := d.m.below; b != nil {
		out = append(out, typeset.Callout{X: d.x.At(*b), Lines: []string{say.RefusedBelow(), say.CaughtBelow(*b)}, Style: canvas.Bold(canvas.Black, canvas.Small)})
	}
	if a := d.m.above; a != nil {
		out = append(out, typeset.Callout{X: d.x.At(*a), Lines: []string{say.PassesAbove(), say.PassedAbove(*a)}, Style: canvas.Bold(canvas.Black, canvas.Small)})
	}
	return out
}

func (d *probeDrawing) paint(p *canvas.Pen) {
	d.chart.paper(p)
	signal := d.top + probeRam
	verdict := signal + probeSignal
	axis := verdict + probeVerdict + d.under + 8
	for _, c := range d.marks.Items {
		p.VLine(canvas.Faint, c.X, d.top, axis)
	}
	d.marks.Above(p, d.top)
	d.ram(p, d.top)
	d.signal(p, signal)
	d.verdicts(p, verdict)
	d.axis(p, axis)
	d.chance(p)
}

// ram is the ram's tip where the nominal part stalls it, a flag where the loosest sound
// part does, the probe end as a stop and what is kept free behind it.
func (d *probeDrawing) ram(p *canvas.Pen, y float64) {
	m := d.m
	p.Text(canvas.Plain(canvas.Quiet, canvas.Small), canvas.Margin, y+28, canvas.Start, "ram")
	mid, base := y+14, y+probeRam-8
	if m.nominal != nil {
		x := d.ruler.At(*m.nominal)
		body := canvas.Rect(d.ruler.X0, mid-6, x, mid+6)
		p.Fill(canvas.Black.Tint(canvas.QuietTint), body)
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{d.ruler.X0, body.Y0}, [2]float64{x, body.Y0}, [2]float64{x, body.Y1}, [2]float64{d.ruler.X0, body.Y1})
	}
	if m.loosest != nil {
		x := d.ruler.At(*m.loosest)
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{canvas.Crisp(x), base}, [2]float64{canvas.Crisp(x), y + 4})
		p.Area(canvas.Black, [2]float64{canvas.Crisp(x), y + 4}, [2]float64{canvas.Crisp(x) - 9, y + 8}, [2]float64{canvas.Crisp(x), y + 12})
		if r := d.ruler.At(m.reaches); r > x+1 {
			p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{x, base - 6}, [2]float64{r, base - 6})
			p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{r, base - 9}, [2]float64{r, base - 3})
		}
	}
	x := d.ruler.At(m.end)
	if m.zone != nil {
		if z := d.ruler.At(*m.zone); z > x {
			guard := canvas.Rect(x, y+3, z, base)
			p.Fill(canvas.Black.Tint(canvas.QuietTint), guard)
			p.Hatch(canvas.Black, canvas.CrossHatch, guard)
		}
	}
	p.Line(canvas.Black, 2*canvas.Outline, canvas.Solid, [2]float64{x, y + 2}, [2]float64{x, base})
	p.HLine(canvas.Black, d.ruler.X0, d.ruler.X1, base)
}

// signal is arrival: on where a part stalls the ram before the probe end.
func (d *probeDrawing) signal(p *canvas.Pen, y float64) {
	p.Text(canvas.Bold(canvas.Black, canvas.Small), canvas.Margin, y+18, canvas.Start, "arrival")
	high, low, x := canvas.Crisp(y+5), canvas.Crisp(y+24), d.ruler.At(d.m.end)
	from := d.ruler.At(d.m.contact)
	p.Fill(canvas.Black.Tint(canvas.QuietTint), canvas.Rect(from, high, x, low))
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{from, high}, [2]float64{x, high}, [2]float64{x, low}, [2]float64{d.ruler.X1, low})
	p.OnPaper(canvas.Plain(canvas.Quiet, canvas.Small), (from+x)/2, (high+low)/2+4, canvas.Middle, words.OnOff(true))
	if st := (canvas.Plain(canvas.Quiet, canvas.Small)); st.Width(words.OnOff(false)) < d.ruler.X1-x-8 {
		p.OnPaper(st, (x+d.ruler.X1)/2, low-6, canvas.Middle, words.OnOff(false))
	}
}

var (
	goesOn       = say.GoOn()
	refusedWords = say.RefusedLooseOrMissing()
)

// refusedFits tells whether the field past the end has room for its words.
func (d *probeDrawing) refusedFits() bool {
	return canvas.Bold(canvas.Black, canvas.Small).Width(refusedWords)+12 < d.ruler.X1-d.ruler.At(d.m.end)
}

// verdicts are what follows from it. The field past the end is hatched, and its words
// stand where there is room: in it, or under it with a line that leads there, never in the
// field of the other.
func (d *probeDrawing) verdicts(p *canvas.Pen, y float64) {
	x, from := d.ruler.At(d.m.end), d.ruler.At(d.m.contact)
	box := canvas.Rect(from, y+2, x, y+26)
	p.Frame(canvas.Black, canvas.ThinLine, canvas.Solid, box)
	past := canvas.Rect(x, y+2, d.ruler.X1, y+26)
	p.Fill(canvas.Black.Tint(canvas.QuietTint), past)
	p.Hatch(canvas.Black, canvas.CrossHatch, past)
	p.Frame(canvas.Black, canvas.ThinLine, canvas.Solid, past)
	st, mid := canvas.Bold(canvas.Black, canvas.Small), (past.X0+past.X1)/2
	p.Text(st, (box.X0+box.X1)/2, y+18, canvas.Middle, goesOn)
	if d.under == 0 {
		p.OnPaper(st, mid, y+18, canvas.Middle, refusedWords)
		return
	}
	p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{canvas.Crisp(mid), past.Y1}, [2]float64{canvas.Crisp(mid), past.Y1 + 5})
	p.OnPaper(st, d.ruler.X1, y+26+17, canvas.End, refusedWords)
}

// axis is the ruler.
func (d *probeDrawing) axis(p *canvas.Pen, y float64) {
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	p.HLine(canvas.Black, d.ruler.X0, d.ruler.X1, y)
	w := math.Max(st.Width(figure(d.ruler.From, 2)), st.Width(figure(d.ruler.To, 2)))
	ticks, decimals := d.ruler.Ticks(int((d.ruler.X1 - d.ruler.X0) / (w + 24)))
	free := math.Inf(-1)
	for _, v := range ticks {
		x, text := d.ruler.At(v), figure(v, decimals)
		p.VLine(canvas.Black, x, y, y+4)
		if half := st.Width(text) / 2; x-half > free && x+half < d.width-2 {
			p.Text(st, x, y+17, canvas.Middle, text)
			free = x + half + 8
		}
	}
	p.Text(st, d.ruler.X1, y+17+axisName, canvas.End, say.ProbeReadingAxis())
}

// chance is the chance of refusal; the fit's range lies as a bar on the axis.
func (d *probeDrawing) chance(p *canvas.Pen) {
	m := d.m
	for _, c := range d.figure.Items {
		d.vertical(p, canvas.Black, canvas.Dashed, c.X, d.plot.Y0)
	}
	var line [][2]float64
	for i := range m.effective {
		line = append(line, d.at(m.effective[i], 100*m.refused[i]))
	}
	if last := m.effective[20]; m.most > last && m.refused[20] < 1e-6 {
		line = append(line, d.at(1.05*m.most, 0))
	}
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, line...)
	if f := m.fit; f != nil {
		x0, x1 := d.x.At(f[0]), d.x.At(f[2])
		p.Fill(canvas.Black.Tint(canvas.BandTint), canvas.Rect(x0, d.plot.Y1-7, x1, d.plot.Y1))
		p.Frame(canvas.Black, canvas.ThinLine, canvas.Solid, canvas.Rect(x0, d.plot.Y1-7, x1, d.plot.Y1))
		if st := (canvas.Plain(canvas.Quiet, canvas.Small)); st.Width(say.FitsRange()) < d.plot.X1-x0 {
			x := math.Min((x0+x1)/2, d.plot.X1-st.Width(say.FitsRange())/2-2)
			p.OnPaper(st, x, d.plot.Y1-13, canvas.Middle, say.FitsRange())
		}
	}
	d.chart.frame(p)
	d.figuresX(p, d.plot.Y1)
	d.nameX(p, d.plot.Y1)
	d.figure.Above(p, d.plot.Y0)
}
