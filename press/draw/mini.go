package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
)

// Minis draws the small strips of the fault catalogue: for each row where the
// ram comes to rest, against the good readings, the zone and the push end. All
// strips of a plan have one scale, so that they can be compared.
type Minis struct {
	m    *stripModel
	lens press.Pair // mm
}

// NewMinis makes the small strips of a plan.
func NewMinis(p *press.Plan, r *press.Result) *Minis {
	m := newStripModel(p, r, press.Traces{})
	return &Minis{m: m, lens: miniLens(m)}
}

// miniLens is the stretch of the large strip with some more room before it,
// where the small one writes the word long.
func miniLens(m *stripModel) press.Pair {
	const more = 0.08
	return press.Pair{m.lens[0] - more*(m.lens[1]-m.lens[0]), m.lens[1]}
}

// Default width of a small strip, px, and the narrowest that it can be drawn at.
const (
	miniWidth = 240
	miniLeast = 180
)

// Row makes the strip of one row of the catalogue.
func (s *Minis) Row(row press.FaultRow, o Options) *canvas.Picture {
	d := s.lay(row, o)
	return canvas.NewPicture(canvas.Layout{Kind: "mini", Compact: o.Compact, ID: o.ID, Title: d.title(), Desc: s.desc(), Width: d.width, Height: miniHeight, Paint: d.paint})
}

func (s *Minis) lay(row press.FaultRow, o Options) *mini {
	width := o.width(miniWidth, miniLeast)
	return &mini{m: s.m, name: say.Fault(row).Word, rest: restOf(s.m, row), width: width, scale: canvas.NewScale(s.lens[0], s.lens[1], 1, width-1)}
}

// desc says the figures that the small strips of a plan share.
func (s *Minis) desc() string {
	m := s.m
	text := say.RequiredReadingsTo(m.pos, m.requirement[0], m.requirement[1])
	if m.zoneStart != nil && m.zoneEnd != nil {
		text += say.ZoneBetween(m.pos, *m.zoneStart, *m.zoneEnd)
	}
	if m.end != nil {
		text += say.PushEndAt(m.pos, *m.end)
	}
	return text + "."
}

// rest is where a row leaves the ram.
type rest struct {
	at    *float64 // mm; nil: nobody knows
	met   bool     // something stops it there
	early bool     // the part is met before the push begins
}

func restOf(m *stripModel, row press.FaultRow) rest {
	switch {
	case row.Verdict == press.EarlyContact:
		return rest{early: true}
	case row.Reading != nil && canvas.Finite(*row.Reading):
		return rest{at: row.Reading, met: true}
	}
	return rest{at: m.end}
}

// readingDecimals of a row's reading: some rows lie 0.001 mm apart.
const readingDecimals = 3

// words of the resting place, in the strip.
func (r rest) words() string {
	switch {
	case r.early:
		return say.MetInTheApproach()
	case r.at == nil:
		return say.NoPushEndKnown()
	case r.met:
		return figure(*r.at, readingDecimals)
	}
	return say.NothingMet()
}

// mini is one small strip, laid out in px.
type mini struct {
	m     *stripModel
	name  string
	rest  rest
	width float64
	scale canvas.Scale
}

// title is the message of the strip.
func (d *mini) title() string {
	r := d.rest
	switch {
	case r.early:
		return say.MetInTheApproachBefore(d.name)
	case r.at == nil:
		return say.RestUnknown(d.name)
	case r.met:
		return say.RestAt(d.name, figure(*r.at, readingDecimals))
	}
	return say.MeetsNothing(d.name, d.m.pos, *r.at)
}

// tip is the px of the resting place; ok is false where it lies outside.
func (d *mini) tip() (x float64, ok bool) {
	if d.rest.at == nil {
		return 0, false
	}
	return d.scale.At(*d.rest.at), d.scale.Has(*d.rest.at)
}

// widest gives the widest piece of a stretch when it is cut at some places.
func widest(x0, x1 float64, cuts ...float64) (from, to float64) {
	from, to = x0, x0
	at := x0
	for at < x1 {
		next := x1
		for _, c := range cuts {
			if c > at && c < next {
				next = c
			}
		}
		if next-at > to-from {
			from, to = at, next
		}
		at = math.Max(next, math.Nextafter(at, math.Inf(1)))
	}
	return from, to
}
