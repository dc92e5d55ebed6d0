package draw

import (
	"math"
	"strings"

	"ramplan/press/draw/canvas"
	"ramplan/press/words"
)

// arrival lane: on up to the push end, where the part stops the ram.
func (l *lens) arrival(p *canvas.Pen, r lensRow) {
	l.lane(p, r.box, func(f field) bool { return f.arrival })
}

// zoneSignal lane: what the zone signal says while the ram is at rest.
func (l *lens) zoneSignal(p *canvas.Pen, r lensRow) {
	l.lane(p, r.box, func(f field) bool { return f.zone })
}

// lane draws one signal as a raised and lowered line. Beyond the push end the
// ram rests at the end, whatever the part: the line is dashed there.
func (l *lens) lane(p *canvas.Pen, box canvas.Rectangle, on func(field) bool) {
	high, low := canvas.Crisp(box.Y0+4), canvas.Crisp(box.Y1-3)
	level := func(f field) float64 {
		if on(f) {
			return high
		}
		return low
	}
	st := canvas.Plain(canvas.Quiet, canvas.Small)
	last := math.NaN()
	for _, f := range l.visible() {
		x0, x1 := l.scale.At(f.from), l.scale.At(f.to)
		y := level(f)
		if on(f) {
			p.Fill(canvas.Black.Tint(canvas.QuietTint), canvas.Rect(x0, high, x1, low))
		}
		if !math.IsNaN(last) && last != y {
			p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{x0, last}, [2]float64{x0, y})
		}
		dash := canvas.Solid
		if f.past || f.early {
			dash = canvas.Dashed
		}
		p.Line(canvas.Black, canvas.Outline, dash, [2]float64{x0, y}, [2]float64{x1, y})
		last = y
		text := words.OnOff(on(f))
		if w := st.Width(text); x1-x0 > w+12 {
			mid := (x0 + x1) / 2
			ground := canvas.Rect(mid-w/2-3, high+1, mid+w/2+3, low-1)
			guided := l.guided(ground.X0, ground.X1)
			if guided {
				p.Fill(canvas.Paper, ground)
				if on(f) {
					p.Fill(canvas.Black.Tint(canvas.QuietTint), ground)
				}
			}
			p.Text(st, mid, (high+low)/2+4, canvas.Middle, text)
			if guided {
				p.Cleared(1)
			}
		}
	}
}

// visible are the fields that the lens shows, early ones without a signal left
// out.
func (l *lens) visible() []field {
	var out []field
	for _, f := range l.m.fields {
		if f.to > l.scale.From && f.from < l.scale.To && f.to > f.from {
			out = append(out, f)
		}
	}
	return out
}

// verdicts are the fields of the verdict lane with their words.
func (l *lens) verdicts(p *canvas.Pen, r lensRow) {
	for _, f := range l.visible() {
		x0, x1 := l.scale.At(f.from), l.scale.At(f.to)
		box := canvas.Rect(x0, r.box.Y0, x1, r.box.Y1)
		p.Fill(canvas.Paper, box)
		swatch(p, f.fate, box)
		p.Line(f.fate.ink(), canvas.Outline, canvas.Solid, [2]float64{x0, box.Y0}, [2]float64{x1, box.Y0})
		p.Line(f.fate.ink(), canvas.Outline, canvas.Solid, [2]float64{x0, box.Y1}, [2]float64{x1, box.Y1})
		l.verdictWord(p, f, box)
	}
	for _, f := range l.visible() {
		if l.scale.Has(f.from) {
			p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{l.scale.At(f.from), r.box.Y0}, [2]float64{l.scale.At(f.from), r.box.Y1})
		}
	}
}

// closeLeading is the distance of baselines of a word on two lines.
const closeLeading = 1.15

// verdictWord writes the word of a field on a clear ground. Where the field is
// narrow it is smaller, on two lines, or says tall for too tall; the table beside
// has it in any case.
func (l *lens) verdictWord(p *canvas.Pen, f field, box canvas.Rectangle) {
	for _, text := range []string{f.verdict, strings.ReplaceAll(f.verdict, "too ", "")} {
		for _, size := range []float64{canvas.Body, canvas.Small} {
			if wordIn(p, canvas.Bold(f.fate.ink(), size), text, box) {
				return
			}
		}
	}
}

// wordIn writes a word into the middle of a box, on two lines where it has to, if
// it has room there.
func wordIn(p *canvas.Pen, st canvas.Style, text string, box canvas.Rectangle) bool {
	mid, y := (box.X0+box.X1)/2, (box.Y0+box.Y1)/2
	room := box.X1 - box.X0 - 10
	lines := []string{text}
	if st.Width(text) > room {
		lines = st.Wrap(text, room)
	}
	var w float64
	for _, line := range lines {
		w = math.Max(w, st.Width(line))
	}
	apart := canvas.Leading * st.Size
	if len(lines) > 1 {
		apart = closeLeading * st.Size
	}
	h := apart * float64(len(lines))
	if w > room || h > box.Y1-box.Y0-4 || clipped(lines) {
		return false
	}
	p.Fill(canvas.Paper, canvas.Rect(mid-w/2-4, y-h/2-1, mid+w/2+4, y+h/2+1))
	for i, line := range lines {
		p.Text(st, mid, y-h/2+0.98*st.Size+apart*float64(i)-(canvas.Leading*st.Size-apart)/2, canvas.Middle, line)
	}
	p.Cleared(len(lines))
	return true
}

func clipped(lines []string) bool {
	for _, l := range lines {
		if len(l) >= 3 && l[len(l)-3:] == "…" {
			return true
		}
	}
	return false
}
