package drill

import (
	"math"
	"math/rand/v2"

	"ramplan/press"
)

// A stretch is a piece of the readings in which the lamps are clear: any part that
// would stop the ram there may be asked for.
type stretch struct{ from, to float64 }

// finest is the finest that heights and positions are written, mm.
const finest = 0.001

// grain is how finely heights are written, mm: as the station shows its positions. A
// part is measured no finer in an exercise than its reading can be.
func (d *Drill) grain() float64 {
	return math.Max(finest, math.Pow10(-d.say.Decimals()))
}

// onGrain is a position as the station shows it.
func (d *Drill) onGrain(mm float64) float64 { return d.grains(math.Round, mm) }

// grains rounds a position to what is shown.
func (d *Drill) grains(round func(float64) float64, mm float64) float64 {
	scale := math.Round(1 / d.grain())
	return round(mm*scale) / scale
}

// heightAt is the height of a part that stops the ram at a reading, as it is written.
func (d *Drill) heightAt(reading float64) float64 { return d.onGrain(d.r.HeightOf(reading)) }

// wordOf is the word of a height by the drawing.
func (d *Drill) wordOf(h float64) string {
	const slack = 1e-9
	switch q := d.p.Requirement; {
	case h > q.HeightHigh+slack:
		return press.Long
	case h < q.HeightLow-slack:
		return press.Short
	}
	return press.Good
}

// stretches are those that the drawing and the lamps tell apart, and two past the
// push end. Of each only what the error of a reading leaves clear, and only where
// the part is met after the push began.
func (d *Drill) stretches() []stretch {
	width := d.r.Window.GoodRange[1] - d.r.Window.GoodRange[0]
	first := d.s.Start
	if contact := d.r.Travel.Contact; !d.s.Early(contact) { // what is taller is met earlier
		first = math.Max(first, first+d.r.Nominal()-contact)
	}
	first += d.unsure()
	var all []stretch
	for _, s := range d.r.Verdict.Segments {
		all = append(all, stretch{math.Max(math.Max(s.From, s.To-3*width), first), s.To})
	}
	past := math.Max(d.s.End, first)
	all = append(all, stretch{past, past + 2*d.unsure() + width/2}, stretch{past + 2*d.unsure() + width/2, past + 2*d.unsure() + 2*width})
	var out []stretch
	for _, s := range all {
		if s, ok := d.clearPart(s); ok {
			out = append(out, s)
		}
	}
	return out
}

// clearPart gives what of a stretch is clear, with room for a height to be
// rounded.
func (d *Drill) clearPart(s stretch) (stretch, bool) {
	middle := (s.from + s.to) / 2
	if s.to <= s.from || !d.clearAt(middle) {
		return s, false
	}
	edge := func(out float64) float64 {
		if d.clearAt(out) {
			return out
		}
		in := middle
		for math.Abs(out-in) > finest/20 {
			if half := (in + out) / 2; d.clearAt(half) {
				in = half
			} else {
				out = half
			}
		}
		return in
	}
	out := stretch{edge(s.from) + d.grain(), edge(s.to) - d.grain()}
	return out, out.from <= out.to
}

func (d *Drill) clearAt(reading float64) bool {
	c, _ := d.r.ChancesAt(reading)
	return !d.s.Early(reading) && d.clear(event{reading: reading}, c)
}

// heightIn picks the height of a part that reads in a stretch: near an end of it
// as often as in its middle.
func (d *Drill) heightIn(rng *rand.Rand, s stretch) float64 {
	share := rng.Float64()
	if rng.IntN(2) == 0 {
		share = math.Round(share) + (0.5-math.Round(share))*0.2*rng.Float64()
	}
	return d.heightAt(s.from + share*(s.to-s.from))
}
