package press

import (
	"math"
	"reflect"

	"ramplan/press/strict"
)

// CurveTrace is the curve of a ram for people to look at: its points as entered,
// and the line that is put through them.
type CurveTrace struct {
	Points [][2]float64 // %, N
	Line   []Pair       // %, N
}

// curvePoints is how many points of a curve's line are enough for print.
const curvePoints = 60

// CurveTrace gives the curve of the plan's ram.
func (p *Plan) CurveTrace() *CurveTrace {
	t := &CurveTrace{Points: p.Ram.Curve.Points}
	pieces := 1 // straight from point to point
	if p.Ram.Curve.Interpolation != "linear" {
		pieces = int(math.Ceil(float64(curvePoints) / float64(len(t.Points)-1)))
	}
	for i, point := range t.Points {
		if i > 0 {
			from := t.Points[i-1][0]
			for k := 1; k < pieces; k++ {
				setting := from + (point[0]-from)*float64(k)/float64(pieces)
				if force, err := p.Drive.Force(setting); err == nil {
					t.Line = append(t.Line, Pair{setting, force})
				}
			}
		}
		t.Line = append(t.Line, Pair{point[0], point[1]})
	}
	return t
}

// CurveTrace gives the curve that was typed where it can be read by itself,
// whatever is wrong elsewhere in the draft; nil where it cannot.
func (d *Draft) CurveTrace() *CurveTrace {
	const path = "ram.curve"
	var part Draft
	for _, e := range d.Entries {
		if strict.Below(e.Path, path) {
			part.Entries = append(part.Entries, e)
		}
	}
	doc := &strict.Node{Shape: strict.Object}
	if len(part.build(doc)) > 0 {
		return nil
	}
	given := doc.At(path)
	if given == nil {
		return nil
	}
	c := &checker{plan: &Plan{doc: doc}}
	c.value(root.step(strict.Step{Name: "ram", Index: -1}).step(strict.Step{Name: "curve", Index: -1}), given, reflect.ValueOf(&c.plan.Ram.Curve).Elem(), path)
	if !c.curve() {
		return nil
	}
	return c.plan.CurveTrace()
}
