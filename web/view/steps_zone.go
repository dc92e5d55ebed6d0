package view

import (
	"math"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// DoZone starts the command that moves the zone of a step to where the step ends.
const DoZone = "zone"

// A strayed zone holds no place at which its step comes to rest: the target was changed
// after it, or it is meant for something on the way.
type strayed struct {
	target float64    // mm, where the last pass of the step ends
	zone   [2]float64 // mm, as wide as it is, about the target
}

// strayedZones are those of a plan, by step. Where a shift ends follows from the run; it
// has none where there is no run.
func strayedZones(p *press.Plan, r *press.Result) map[int]strayed {
	if p == nil || p.Sequence == nil {
		return nil
	}
	out := map[int]strayed{}
	for i, s := range p.Sequence.Steps {
		if s.Zone == nil {
			continue
		}
		ends := stepEnds(r, i)
		if s.Kind == press.StepMove {
			ends = []float64{s.To}
		}
		holds := func(x float64) bool { return x >= s.Zone[0]-1e-9 && x <= s.Zone[1]+1e-9 }
		if len(ends) == 0 || slices.ContainsFunc(ends, holds) {
			continue
		}
		at := ends[len(ends)-1]
		out[i] = strayed{at, zoneAbout(at, s.Zone[1]-s.Zone[0], p.Station.PositionStep)}
	}
	return out
}

// stepEnds is where the passes of a step leave the nominal part's ram.
func stepEnds(r *press.Result, step int) []float64 {
	if r == nil || r.Sequence == nil {
		return nil
	}
	var out []float64
	for _, s := range r.Sequence.Steps {
		if s.Step == step {
			out = append(out, s.End[1])
		}
	}
	return out
}

// zoneAbout is a zone of a width about a place: begun on a whole position step where one is
// near beside the width.
func zoneAbout(at, width, step float64) [2]float64 {
	from := at - width/2
	if on := math.Round(from/step) * step; step > 0 && math.Abs(on-from) <= width/4 {
		from = on
	}
	micro := func(x float64) float64 { return math.Round(x*1e6) / 1e6 }
	return [2]float64{micro(from), micro(from + width)}
}

// zoneDoubt offers to move the zone of a step that has strayed from its target.
func (f *form) zoneDoubt(row int) []page.Doubt {
	s, ok := f.strayed[row]
	if !ok {
		return nil
	}
	return []page.Doubt{{
		Text:   say.ZoneStrayed(s.target),
		Do:     DoZone + " " + words.Exact(float64(row)),
		Button: say.MoveZone(s.zone),
	}}
}

// MoveZone moves the zone of a step to its target, and says so; false where it holds it
// already, or where the entries are no plan.
func MoveZone(t Typed, row int) (moved Typed, said string, ok bool) {
	p, faults := t.Draft.Check()
	if len(faults) > 0 {
		return t, "", false
	}
	s, ok := strayedZones(p, press.Evaluate(p))[row]
	if !ok {
		return t, "", false
	}
	t.Draft.Entries = slices.Clone(t.Draft.Entries)
	for k, x := range s.zone {
		t.Draft.Set(rowPath(stepRows, row)+".zone["+words.Exact(float64(k))+"]", words.Exact(x))
	}
	return t, say.ZoneMoved(RowName(stepRows, row), s.zone), true
}
