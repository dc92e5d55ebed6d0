package proof

import (
	"math"
	"strings"

	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// newTrial draws the readings of parts as they came over the lens of the strip: one under
// the other in their order, and under that how often each came, with what the plan expects.
func newTrial(s Subject, o draw.Options) *canvas.Picture {
	r := resultOf[proving.TrialResult](s)
	if r == nil || len(s.Study.Rows) == 0 {
		return nothing("trial", o)
	}
	d := &trial{r: r, pos: say.Positions(s.Plan.Plan).Fine()}
	wrong, odd := numbers(r.LampMismatch), numbers(r.Outliers)
	for _, i := range inOrder(s.Study.Rows) {
		row := s.Study.Rows[i]
		if row.Reading == nil || !inside(*row.Reading) {
			continue
		}
		q := trialPart{at: *row.Reading, arrived: row.Arrival == nil || *row.Arrival, wrong: wrong[i+1], odd: odd[i+1]}
		d.parts = append(d.parts, q)
		if q.arrived {
			d.used = append(d.used, q.at)
		}
	}
	if len(d.parts) == 0 {
		return nothing("trial", o)
	}
	d.lay(s, o)
	return d.picture(d.paint)
}

func numbers(rows []int) map[int]bool {
	out := map[int]bool{}
	for _, n := range rows {
		out[n] = true
	}
	return out
}

// A trialPart is one part of a trial.
type trialPart struct {
	at                  float64 // mm
	arrived, wrong, odd bool
}

type trial struct {
	*lensFrame
	r     *proving.TrialResult
	pos   words.Positions
	parts []trialPart
	used  []float64 // readings with the arrival signal
	cut   []stretch // nil: every reading is drawn

	run, heap   canvas.Rectangle
	bar         float64 // mm, width of a bar
	bars        []trialBar
	most        float64 // parts in the highest bar, or as many as the plan expects in one
	left, right int     // parts beyond the lens, on its two sides
}

// A trialBar is how many parts came between two readings.
type trialBar struct {
	from float64
	n    int
}

// Sizes, px, and how many readings are drawn one under the other.
const (
	trialRun   = 150
	trialHeap  = 100
	mostParts  = 120
	partsShown = 75 // stretches where there are more
)

func (d *trial) lay(s Subject, o draw.Options) {
	reach := newReach()
	for _, q := range d.parts {
		reach.take(q.at)
	}
	places := []float64{d.r.Nominal}
	if reach.from <= reach.to {
		places = append(places, reach.from, reach.to)
	}
	d.lensFrame = newLensFrame("trial", say.TrialTitle(d.pos, d.r.Mean, d.r.Nominal, len(d.used)), "", s.Plan, o, 0, places...)
	d.bin()
	d.desc = d.title + ". " + d.describe()
	run, heap := float64(trialRun), float64(trialHeap)
	if o.Flat {
		run, heap = 0.6*run, 0.6*heap
	}
	note := say.InTheirOrder(len(d.parts))
	if len(d.parts) > mostParts {
		d.cut = stretches(d.positions(), partsShown)
		note = say.PartsReach(len(d.parts), len(d.cut))
	}
	d.run = d.row(say.ReadingsHead(), note, run, d.paintRun)
	d.heap = d.row(say.HowOften(), say.BarsAre(d.pos, d.bar, int(d.highest())), heap, d.paintHeap)
	d.y = d.heap.Y1
	key := []keyItem{{lying(canvas.Black, canvas.Outline, canvas.Solid), say.PlanExpects()}}
	if d.lens.Overlap() != nil {
		key = append(key, keyItem{field(canvas.Good.Tint(canvas.FillTint), canvas.NoHatch, canvas.Good), say.BothOn()})
	}
	if len(d.r.LampMismatch) > 0 {
		key = append(key, keyItem{markWrong, say.LampsDiffer(len(d.r.LampMismatch))})
	}
	if n := len(d.parts) - len(d.used); n > 0 {
		key = append(key, keyItem{markSquare, say.WithoutArrival(n)})
	}
	if len(d.r.Outliers) > 0 {
		key = append(key, keyItem{markOdd, say.StandsOut()})
	}
	if d.r.Mean != nil {
		key = append(key, keyItem{lying(canvas.Black, 3, canvas.Solid), say.MeanIs(d.pos, *d.r.Mean)})
	}
	key = append(key, keyItem{lying(canvas.Accent, canvas.Outline, canvas.Centring), say.PredictedIs(d.pos, d.r.Nominal)})
	d.foot(key...)
}

func (d *trial) positions() []float64 {
	out := make([]float64, len(d.parts))
	for i, q := range d.parts {
		out[i] = q.at
	}
	return out
}

// bin counts the readings that came with the arrival signal in bars of a round width.
func (d *trial) bin() {
	wide := d.x.To - d.x.From
	d.bar = wide / 20
	if d.r.SD != nil && *d.r.SD > 0 && len(d.used) > 0 {
		d.bar = 3.5 * *d.r.SD / math.Cbrt(float64(len(d.used))) // Scott 1979, from memory
	}
	d.bar = round125(math.Max(wide/160, math.Min(d.bar, wide/8)))
	first := math.Floor(d.x.From/d.bar) - 1
	counts := make([]int, int(math.Ceil(d.x.To/d.bar)-first)+2)
	for _, v := range d.used {
		switch {
		case v < d.x.From:
			d.left++
		case v > d.x.To:
			d.right++
		default:
			counts[int(math.Floor(v/d.bar+1e-9)-first)]++
		}
	}
	for i, n := range counts {
		if n > 0 {
			d.bars = append(d.bars, trialBar{(first + float64(i)) * d.bar, n})
		}
	}
	d.most = d.highest()
	for _, q := range d.lens.Density() {
		if inside(q[1]) {
			d.most = math.Max(d.most, d.expected(q[1]))
		}
	}
}

// highest is how many parts the highest bar has.
func (d *trial) highest() float64 {
	most := 0.0
	for _, b := range d.bars {
		most = math.Max(most, float64(b.n))
	}
	return most
}

// expected is how many parts a bar has by a density, 1/mm.
func (d *trial) expected(density float64) float64 { return density * d.bar * float64(len(d.used)) }

// round125 is the next round figure under one: 1, 2 or 5 with noughts.
func round125(x float64) float64 {
	power := math.Pow10(int(math.Floor(math.Log10(x))))
	for _, m := range []float64{5, 2} {
		if m*power <= x*(1+1e-9) {
			return m * power
		}
	}
	return power
}

func (d *trial) describe() string {
	r := d.r
	s := []string{say.TrialText(d.pos, r.N, len(d.used), r.Mean, r.Nominal, r.SD)}
	if o := d.lens.Overlap(); o != nil {
		s = append(s, say.BothOnFrom(d.pos, o[0], o[1]))
	}
	var bars []string
	for _, b := range d.bars {
		bars = append(bars, say.BarText(d.pos, b.from, b.from+d.bar, b.n))
	}
	if len(bars) > 0 {
		s = append(s, say.BarsText(bars))
	}
	if d.left+d.right > 0 {
		s = append(s, say.BeyondTheLens(d.left, d.right))
	}
	if n := len(d.parts) - len(d.used); n > 0 {
		s = append(s, say.WithoutArrival(n)+".")
	}
	if len(r.LampMismatch) > 0 {
		s = append(s, say.LampsDifferRows(r.LampMismatch))
	}
	if len(r.Outliers) > 0 {
		s = append(s, say.OutlierRows(r.Outliers))
	}
	return strings.Join(s, " ")
}

// paintRun draws the readings, the first of them on top.
func (d *trial) paintRun(p *canvas.Pen, box canvas.Rectangle) {
	d.overlap(p, d.top, d.heap.Y1)
	d.lens.Guides(p, d.top, d.bottom())
	d.paintMeans(p, box)
	y := func(i float64) float64 { return box.Y0 + 3 + (box.Height()-6)*(i+0.5)/float64(len(d.parts)) }
	if d.cut != nil {
		wide := math.Max(1, math.Min(3, box.Height()/float64(len(d.cut))-0.6))
		var mid [][2]float64
		for _, s := range d.cut {
			at := y(float64(s.first+s.last) / 2)
			p.Line(canvas.Quiet, wide, canvas.Solid, [2]float64{d.x.At(s.low), at}, [2]float64{d.x.At(s.high), at})
			mid = append(mid, [2]float64{d.x.At(s.mid), at})
		}
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, mid...)
	} else {
		var line [][2]float64
		for i, q := range d.parts {
			line = append(line, [2]float64{d.x.At(q.at), y(float64(i))})
		}
		p.Line(canvas.Quiet.Tint(0.5), canvas.ThinLine, canvas.Solid, line...)
	}
	marked := 0
	for i, q := range d.parts {
		x, at := d.x.At(q.at), y(float64(i))
		switch {
		case q.wrong && marked < mostMarks:
			markWrong(p, x, at)
			marked++
		case !q.arrived && (d.cut == nil || marked < mostMarks):
			markSquare(p, x, at)
			marked++
		case d.cut == nil:
			d.one(p, x, at, q.at)
		}
		if q.odd {
			markOdd(p, x, at)
		}
	}
}

// one draws a reading, as an arrow where it lies beyond the lens.
func (d *trial) one(p *canvas.Pen, x, y, at float64) {
	switch {
	case at < d.x.From:
		p.Arrow(canvas.Black, x+2, y, -9)
	case at > d.x.To:
		p.Arrow(canvas.Black, x-2, y, 9)
	default:
		markDot(p, x, y)
	}
}

// paintMeans draws the mean of the readings, and where the plan expects it.
func (d *trial) paintMeans(p *canvas.Pen, box canvas.Rectangle) {
	if d.x.Has(d.r.Nominal) {
		x := canvas.Crisp(d.x.At(d.r.Nominal))
		p.Line(canvas.Accent, canvas.Outline, canvas.Centring, [2]float64{x, d.top}, [2]float64{x, d.heap.Y1})
	}
	if d.r.Mean != nil && d.x.Has(*d.r.Mean) {
		x := d.x.At(*d.r.Mean)
		p.Line(canvas.Black, 3, canvas.Solid, [2]float64{x, box.Y1 - 2}, [2]float64{x, d.heap.Y0 - 2})
	}
}

// paintHeap draws how often each reading came, standing on the ruler.
func (d *trial) paintHeap(p *canvas.Pen, box canvas.Rectangle) {
	high := func(n float64) float64 { return box.Y1 - (box.Height()-2)*n/math.Max(d.most, 1e-12) }
	for _, b := range d.bars {
		bar := canvas.Rect(d.x.At(b.from), high(float64(b.n)), d.x.At(b.from+d.bar), box.Y1)
		p.Fill(canvas.Paper, bar)
		p.Fill(canvas.Black.Tint(2*canvas.FillTint), bar)
		p.Frame(canvas.Quiet, canvas.ThinLine, canvas.Solid, bar)
	}
	var curve [][2]float64
	for _, q := range d.lens.Density() {
		if inside(q[0]) && inside(q[1]) && d.x.Has(q[0]) {
			curve = append(curve, [2]float64{d.x.At(q[0]), high(d.expected(q[1]))})
		}
	}
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, curve...)
	st := canvas.Bold(canvas.Black, canvas.Small)
	if d.left > 0 {
		p.OnPaper(st, box.X0+6, box.Y0+14, canvas.Start, say.Beyond(d.left, true))
	}
	if d.right > 0 {
		p.OnPaper(st, box.X1-6, box.Y0+14, canvas.End, say.Beyond(d.right, false))
	}
}
