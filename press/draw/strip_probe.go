package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/words"
)

// firstLook is the probe on the ruler of the strip, as data.
type firstLook struct {
	end     float64  // mm, where it ends
	zone    *float64 // mm, the zone start, up to which the guard is kept free
	loosest *float64 // mm, where the loosest sound part stalls it
	reaches float64  // mm, up to where that may read
}

// firstLookOf is nil where the lamps are looked at once.
func firstLookOf(r *press.Result) *firstLook {
	if !words.TwoLooks(r) {
		return nil
	}
	b := &r.Probe
	f := &firstLook{end: *b.End, loosest: b.StallLoosest}
	if z := r.Window.Zone; z != nil && z[0] != nil && *z[0] > f.end {
		f.zone = z[0]
	}
	if b.Room != nil && f.loosest != nil {
		f.reaches = math.Max(*f.loosest, f.end-*b.Room)
	}
	return f
}

// Heights of the row, and of it for the ram, px; less in a flat drawing.
const (
	firstLookRow     = 48
	firstLookRowFlat = 36
	firstLookRam     = 0.4
)

// firstLook draws where the probe ends and what is kept free behind it, a flag where the
// loosest sound part stalls it, and under that what follows: go on, or refused. Neither is
// a fate, since the part is not judged yet.
func (l *lens) firstLook(p *canvas.Pen, r lensRow) {
	m := l.m.first
	base := canvas.Crisp(r.box.Y0 + firstLookRam*(r.box.Y1-r.box.Y0))
	at := func(mm float64) float64 { return math.Max(l.scale.X0, math.Min(l.scale.X1, l.scale.At(mm))) }
	x := at(m.end)
	if m.zone != nil {
		if z := at(*m.zone); z > x {
			guard := canvas.Rect(x, r.box.Y0+2, z, base)
			p.Fill(canvas.Black.Tint(canvas.QuietTint), guard)
			p.Hatch(canvas.Black, canvas.CrossHatch, guard)
		}
	}
	if m.loosest != nil && *m.loosest < l.scale.From {
		st, text := canvas.Plain(canvas.Black, canvas.Small), say.LoosestBefore(l.m.pos, *m.loosest)
		if st.Width(text) < x-l.scale.X0-12 {
			p.OnPaper(st, l.scale.X0+6, base-4, canvas.Start, text)
		}
	} else if m.loosest != nil && l.scale.Has(*m.loosest) {
		f := canvas.Crisp(l.scale.At(*m.loosest))
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{f, base}, [2]float64{f, r.box.Y0 + 1})
		p.Area(canvas.Black, [2]float64{f, r.box.Y0 + 1}, [2]float64{f - 9, r.box.Y0 + 5}, [2]float64{f, r.box.Y0 + 9})
		if to := at(m.reaches); to > f+1 {
			p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{f, base - 5}, [2]float64{to, base - 5})
			p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{to, base - 8}, [2]float64{to, base - 2})
		}
		st, text := canvas.Plain(canvas.Black, canvas.Small), say.LoosestSoundPart()
		if w := st.Width(text); f-12-w > l.scale.X0+4 {
			p.OnPaper(st, f-12, base-5, canvas.End, text)
		}
	}
	if l.scale.Has(m.end) {
		p.Line(canvas.Black, 2*canvas.Outline, canvas.Solid, [2]float64{x, r.box.Y0}, [2]float64{x, base})
	}
	on, off := canvas.Rect(l.scale.X0, base, x, r.box.Y1), canvas.Rect(x, base, l.scale.X1, r.box.Y1)
	if off.X1 > off.X0 {
		p.Fill(canvas.Paper, off)
		swatch(p, fateFault, off)
		p.Frame(canvas.Black, canvas.ThinLine, canvas.Solid, off)
		l.lookWord(p, off, refusedWords, say.RefusedAlone())
	}
	if on.X1 > on.X0 {
		p.Fill(canvas.Paper, on)
		p.Frame(canvas.Black, canvas.ThinLine, canvas.Solid, on)
		l.lookWord(p, on, goesOn)
	}
}

// lookWord writes the first of some words that has room in a box.
func (l *lens) lookWord(p *canvas.Pen, box canvas.Rectangle, texts ...string) {
	for _, text := range texts {
		if wordIn(p, canvas.Bold(canvas.Black, canvas.Small), text, box) {
			return
		}
	}
}
