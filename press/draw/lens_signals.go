package draw

import (
	"math"
	"strings"

	"ramplan/press/words"
)

// arrival lane: on up to the push end, where the part stops the ram.
func (l *lens) arrival(p *pen, r lensRow) {
	l.lane(p, r.box, func(f field) bool { return f.arrival })
}

// zoneSignal lane: what the zone signal says while the ram is at rest.
func (l *lens) zoneSignal(p *pen, r lensRow) {
	l.lane(p, r.box, func(f field) bool { return f.zone })
}

// lane draws one signal as a raised and lowered line. Beyond the push end the
// ram rests at the end, whatever the part: the line is dashed there.
func (l *lens) lane(p *pen, box rect, on func(field) bool) {
	high, low := crisp(box.y0+4), crisp(box.y1-3)
	level := func(f field) float64 {
		if on(f) {
			return high
		}
		return low
	}
	st := style{quiet, small, false}
	last := math.NaN()
	for _, f := range l.visible() {
		x0, x1 := l.scale.x(f.from), l.scale.x(f.to)
		y := level(f)
		if on(f) {
			p.fill(black.tint(quietTint), rect{x0, high, x1, low})
		}
		if !math.IsNaN(last) && last != y {
			p.line(black, outline, solid, [2]float64{x0, last}, [2]float64{x0, y})
		}
		dash := solid
		if f.past || f.early {
			dash = dashed
		}
		p.line(black, outline, dash, [2]float64{x0, y}, [2]float64{x1, y})
		last = y
		text := words.OnOff(on(f))
		if w := st.width(text); x1-x0 > w+12 {
			mid := (x0 + x1) / 2
			ground := rect{mid - w/2 - 3, high + 1, mid + w/2 + 3, low - 1}
			guided := l.guided(ground.x0, ground.x1)
			if guided {
				p.fill(paper, ground)
				if on(f) {
					p.fill(black.tint(quietTint), ground)
				}
			}
			p.text(st, mid, (high+low)/2+4, middle, text)
			if guided {
				p.cleared(1)
			}
		}
	}
}

// visible are the fields that the lens shows, early ones without a signal left
// out.
func (l *lens) visible() []field {
	var out []field
	for _, f := range l.m.fields {
		if f.to > l.scale.from && f.from < l.scale.to && f.to > f.from {
			out = append(out, f)
		}
	}
	return out
}

// verdicts are the fields of the verdict lane with their words.
func (l *lens) verdicts(p *pen, r lensRow) {
	for _, f := range l.visible() {
		x0, x1 := l.scale.x(f.from), l.scale.x(f.to)
		box := rect{x0, r.box.y0, x1, r.box.y1}
		p.fill(paper, box)
		p.swatch(f.fate, box)
		p.line(f.fate.ink(), outline, solid, [2]float64{x0, box.y0}, [2]float64{x1, box.y0})
		p.line(f.fate.ink(), outline, solid, [2]float64{x0, box.y1}, [2]float64{x1, box.y1})
		l.verdictWord(p, f, box)
	}
	for _, f := range l.visible() {
		if l.scale.has(f.from) {
			p.line(black, outline, solid, [2]float64{l.scale.x(f.from), r.box.y0}, [2]float64{l.scale.x(f.from), r.box.y1})
		}
	}
}

// closeLeading is the distance of baselines of a word on two lines.
const closeLeading = 1.15

// verdictWord writes the word of a field on a clear ground. Where the field is
// narrow it is smaller, on two lines, or says tall for too tall; the table beside
// has it in any case.
func (l *lens) verdictWord(p *pen, f field, box rect) {
	for _, text := range []string{f.verdict, strings.ReplaceAll(f.verdict, "too ", "")} {
		for _, size := range []float64{body, small} {
			if p.wordIn(style{f.fate.ink(), size, true}, text, box) {
				return
			}
		}
	}
}

// wordIn writes a word into the middle of a box, on two lines where it has to, if
// it has room there.
func (p *pen) wordIn(st style, text string, box rect) bool {
	mid, y := (box.x0+box.x1)/2, (box.y0+box.y1)/2
	room := box.x1 - box.x0 - 10
	lines := []string{text}
	if st.width(text) > room {
		lines = st.wrap(text, room)
	}
	var w float64
	for _, line := range lines {
		w = math.Max(w, st.width(line))
	}
	apart := leading * st.size
	if len(lines) > 1 {
		apart = closeLeading * st.size
	}
	h := apart * float64(len(lines))
	if w > room || h > box.y1-box.y0-4 || clipped(lines) {
		return false
	}
	p.fill(paper, rect{mid - w/2 - 4, y - h/2 - 1, mid + w/2 + 4, y + h/2 + 1})
	for i, line := range lines {
		p.text(st, mid, y-h/2+0.98*st.size+apart*float64(i)-(leading*st.size-apart)/2, middle, line)
	}
	p.cleared(len(lines))
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
