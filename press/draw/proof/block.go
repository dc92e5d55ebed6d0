package proof

import (
	"math"
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// newBlock draws pushes on a hard block: where the ram came to rest over the force, with the
// line through them, and under that what they differ from it by.
func newBlock(s Subject, o draw.Options) *canvas.Picture {
	r := resultOf[proving.StiffnessResult](s)
	if r == nil || r.Line == nil {
		return nothing("block", o)
	}
	d := &block{r: r, pos: say.Positions(s.Plan.Plan).Fine(), band: r.Line.Band()}
	height := 0.0
	if s.Study.Height != nil {
		height = *s.Study.Height
	}
	for i, row := range s.Study.Rows {
		f := forceOf(row, s.Plan)
		if row.Reading == nil || f == nil || !inside(*f) || !inside(*row.Reading) {
			continue
		}
		high := height
		if row.Height != nil {
			high = *row.Height
		}
		q := blockPush{force: *f, at: *row.Reading + high, row: i + 1}
		q.left = q.at - (r.Line.Intercept + r.Line.Slope*q.force)
		q.startUp = r.StartupBelow != nil && q.force < *r.StartupBelow
		d.pushes = append(d.pushes, q)
	}
	if len(d.pushes) == 0 {
		return nothing("block", o)
	}
	d.lay(o)
	return d.picture(d.paint)
}

// forceOf is the force of a push: as it was measured, else that of the plan's curve at its
// setting; nil where there is neither.
func forceOf(row proving.Row, plan *press.Result) *float64 {
	if row.Force != nil {
		return row.Force
	}
	curve := plan.Traces().Force
	if row.Setting == nil || len(curve) < 2 || *row.Setting < curve[0].At || *row.Setting > curve[len(curve)-1].At {
		return nil
	}
	i, found := slices.BinarySearchFunc(curve, *row.Setting, func(b press.Band, at float64) int {
		switch {
		case b.At < at:
			return -1
		case b.At > at:
			return 1
		}
		return 0
	})
	if found {
		return &curve[i].Typical
	}
	a, b := curve[i-1], curve[i]
	f := a.Typical + (b.Typical-a.Typical)*(*row.Setting-a.At)/(b.At-a.At)
	return &f
}

// A blockPush is one push on the block.
type blockPush struct {
	force, at float64 // N, mm of reading and height
	left      float64 // mm from the line
	startUp   bool    // left out of the line
	row       int
}

type block struct {
	*frame
	r      *proving.StiffnessResult
	pos    words.Positions
	pushes []blockPush
	band   func(float64) (float64, float64)

	line, rest *panel
	spans      []forceSpan // nil: every push is drawn
}

// A forceSpan is what pushes at neighbouring forces reach from and to.
type forceSpan struct {
	force     float64
	at, left  reach
	startUp   bool
	beginning float64
}

// mostOnBlock is how many pushes are drawn one by one.
const mostOnBlock = 400

func (d *block) lay(o draw.Options) {
	right := 128.0
	if o.Compact {
		right = 104
	}
	r := d.r
	var stiff, off *float64
	if r.Stiffness != nil {
		stiff, off = &r.Stiffness.Value, r.Stiffness.Uncertainty
	}
	d.frame = newFrame("block", say.BlockTitle(stiff, off), d.describe(), o, 56, right)
	xs, ys, rest := newReach(), newReach(), newReach()
	dropped := 0
	for _, q := range d.pushes {
		xs.take(q.force)
		ys.take(q.at)
		rest.take(q.left)
		if q.startUp {
			dropped++
		}
	}
	rest.take(0)
	xs.take(0)
	if d.band != nil {
		for _, f := range []float64{xs.from, xs.to} {
			at, half := d.band(f)
			ys.take(at-half, at+half)
			rest.take(-half, half)
		}
	}
	ys.take(r.Line.Intercept)
	from, to := xs.padded(0.04)
	d.across(math.Min(0, from), to, say.ForceOnBlockAxis(r.ForceFrom == proving.FromCell))
	if len(d.pushes) > mostOnBlock {
		d.span()
	}
	from, to = ys.padded(0.06)
	d.line = d.add(170, from, to, say.PositionAxis())
	end := r.Line.Intercept + r.Line.Slope*d.x.To
	d.line.end(end, say.LineThrough(), canvas.Black, true)
	if d.band != nil {
		_, half := d.band(d.x.To)
		d.line.end(end+half, say.LineBand(), canvas.Quiet, false)
	}
	from, to = rest.padded(0.1)
	d.rest = d.add(90, from, to, say.RestAxis())
	d.rest.end(0, say.LineThrough(), canvas.Black, false)
	var key []keyItem
	if d.spans == nil {
		key = append(key, keyItem{markDisc, say.OnTheLine(len(d.pushes) - dropped)})
	} else {
		key = append(key, keyItem{markReach, say.BlockReach(len(d.pushes), len(d.spans))})
	}
	if dropped > 0 {
		key = append(key, keyItem{markRing, say.StartUp(dropped, *r.StartupBelow)})
	}
	if len(r.Outliers) > 0 {
		key = append(key, keyItem{markOdd, say.StandsOut()})
	}
	d.axis(key...)
}

// span gathers pushes of about one force.
func (d *block) span() {
	const most = 30
	sorted := slices.Clone(d.pushes)
	slices.SortStableFunc(sorted, func(a, b blockPush) int {
		switch {
		case a.force < b.force:
			return -1
		case a.force > b.force:
			return 1
		}
		return 0
	})
	wide := (d.x.To - d.x.From) / most
	for _, q := range sorted {
		n := len(d.spans)
		if n == 0 || q.force > d.spans[n-1].beginning+wide || q.startUp != d.spans[n-1].startUp {
			d.spans = append(d.spans, forceSpan{force: q.force, at: *newReach(), left: *newReach(), startUp: q.startUp, beginning: q.force})
			n++
		}
		s := &d.spans[n-1]
		s.force = (s.beginning + q.force) / 2
		s.at.take(q.at)
		s.left.take(q.left)
	}
}

func (d *block) describe() string {
	r := d.r
	s := []string{say.BlockText(d.pos, r.N, r.Used, r.Levels, r.Line.Intercept, r.Line.Slope, r.Line.ResidualSD)}
	if r.Nest != nil {
		s = append(s, say.NestText(d.pos, r.Nest.Value, r.Nest.NestForce, r.Nest.Uncertainty))
	}
	if r.StartupBelow != nil {
		n := 0
		for _, q := range d.pushes {
			if q.startUp {
				n++
			}
		}
		s = append(s, say.StartUp(n, *r.StartupBelow)+".")
	}
	least, most := newReach(), 0.0
	for _, q := range d.pushes {
		least.take(q.force)
		if !q.startUp {
			most = math.Max(most, math.Abs(q.left))
		}
	}
	s = append(s, say.BlockReachText(d.pos, least.from, least.to, most))
	if len(r.Outliers) > 0 {
		s = append(s, say.OutlierRows(r.Outliers))
	}
	return strings.Join(s, " ")
}

func (d *block) paint(p *canvas.Pen) {
	d.grid(p, d.line)
	d.grid(p, d.rest)
	b := d.r.Line
	if d.band != nil {
		const parts = 40
		for _, v := range []struct {
			q        *panel
			straight bool
		}{{d.line, false}, {d.rest, true}} {
			var low, high [][2]float64
			for i := range parts + 1 {
				f := d.x.From + (d.x.To-d.x.From)*float64(i)/parts
				at, half := d.band(f)
				if v.straight {
					at = 0
				}
				low, high = append(low, d.at(v.q, f, at-half)), append(high, d.at(v.q, f, at+half))
			}
			slices.Reverse(high)
			p.Area(canvas.Black.Tint(canvas.FillTint), append(low, high...)...)
		}
	}
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, d.at(d.line, d.x.From, b.Intercept+b.Slope*d.x.From), d.at(d.line, d.x.To, b.Intercept+b.Slope*d.x.To))
	d.rest.level(p, canvas.Black, canvas.Outline, canvas.Solid, 0)
	for _, s := range d.spans {
		p.Line(canvas.Quiet, 3, canvas.Solid, d.at(d.line, s.force, s.at.from), d.at(d.line, s.force, s.at.to))
		p.Line(canvas.Quiet, 3, canvas.Solid, d.at(d.rest, s.force, s.left.from), d.at(d.rest, s.force, s.left.to))
	}
	for _, q := range d.pushes {
		at, left := d.at(d.line, q.force, q.at), d.at(d.rest, q.force, q.left)
		if d.spans == nil {
			mark := markDisc
			if q.startUp {
				mark = markRing
			}
			mark(p, at[0], at[1])
			mark(p, left[0], left[1])
		}
		if slices.Contains(d.r.Outliers, q.row) {
			markOdd(p, at[0], at[1])
			markOdd(p, left[0], left[1])
		}
	}
	d.over(p, d.line)
	d.over(p, d.rest)
	d.below(p)
}
