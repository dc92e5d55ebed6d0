package verdict

import "slices"

// The drawing's words for a part, and the outcome for no insert.
const (
	Long    = "long"    // stands too tall
	Good    = "good"    // seated where the drawing wants it
	Short   = "short"   // stands too short
	Missing = "missing" // no insert
)

// Segment is a stretch of readings with one state of the signals and one word.
type Segment struct {
	From, To      float64 // mm
	Arrival, Zone bool
	Part          string // Long, Good or Short
}

// Range is a closed interval of readings, mm.
type Range struct{ Low, High float64 }

// word is the drawing's word for a reading: a low reading is a tall part.
func (g Range) word(r float64) string {
	switch {
	case r < g.Low:
		return Long
	case r > g.High:
		return Short
	}
	return Good
}

// Segments cuts the stretch [A, E] at the zone's ends and the drawing's limits.
// Pieces under 1e-9 mm have no length and are left out.
func Segments(s Signals, drawing Range) []Segment {
	cuts := []float64{s.Start, s.End}
	for _, x := range []float64{s.ZoneStart, s.ZoneEnd, drawing.Low, drawing.High} {
		if x > s.Start && x < s.End {
			cuts = append(cuts, x)
		}
	}
	if s.Start > s.End {
		return nil
	}
	slices.Sort(cuts)
	out := make([]Segment, 0, len(cuts)-1)
	from := cuts[0]
	for _, to := range cuts[1:] {
		if to-from < Slack {
			continue
		}
		mid := from + (to-from)/2
		out = append(out, Segment{From: from, To: to, Arrival: true, Zone: s.InZone(mid), Part: drawing.word(mid)})
		from = to
	}
	return out
}
