package proving

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
)

// curvePoints is the entry that holds rows.
const curvePoints = "ram.curve.points"

// A Change is one entry of the plan as it is and as a study offers it. Points are set where
// the entry is the curve, else the two figures.
type Change struct {
	Path           string
	Was, Is        float64
	Points, Offers [][2]float64 // %, N
}

// figures are the single figures that a study may offer, in the order of the plan, with what
// the plan says.
func (a *Adopt) figures(p *press.Plan) []struct {
	path  string
	was   float64
	offer *float64
} {
	return []struct {
		path  string
		was   float64
		offer *float64
	}{
		{"ram.repeatability", p.Ram.Repeatability, a.Repeatability},
		{"ram.force_tolerance", p.Ram.ForceTolerance, a.ForceTolerance},
		{"ram.force_scatter", p.Ram.ForceScatter, a.ForceScatter},
		{"station.nest", p.Station.Nest, a.Nest},
		{"station.stiffness", p.Station.Stiffness, a.Stiffness},
		{"station.stiffness_tolerance", p.Station.StiffnessTolerance, a.StiffnessTolerance},
		{"station.reference_uncertainty", p.Station.ReferenceUncertainty, a.Reference},
	}
}

// Changes lists what of the plan would be another value, the curve first; what the plan says
// already is left out.
func (a *Adopt) Changes(p *press.Plan) []Change {
	var out []Change
	if a == nil {
		return out
	}
	if points := p.Ram.Curve.Points; a.CurvePoints != nil && !slices.Equal(points, a.CurvePoints) {
		out = append(out, Change{Path: curvePoints, Points: points, Offers: a.CurvePoints})
	}
	for _, f := range a.figures(p) {
		if f.offer != nil && *f.offer != f.was {
			out = append(out, Change{Path: f.path, Was: f.was, Is: *f.offer})
		}
	}
	return out
}

// Put gives the draft with changes taken over, as typed text. The draft stays as it is.
func Put(d *press.Draft, changes ...Change) *press.Draft {
	out := &press.Draft{Entries: slices.Clone(d.Entries)}
	for _, c := range changes {
		if c.Path == curvePoints {
			putPoints(out, c.Offers)
		} else {
			out.Set(c.Path, plain(c.Is))
		}
	}
	return out
}

// putPoints puts the rows of a curve where those before stood.
func putPoints(d *press.Draft, points [][2]float64) {
	at := slices.IndexFunc(d.Entries, ofCurve)
	if at < 0 {
		at = len(d.Entries)
	}
	d.Entries = slices.DeleteFunc(d.Entries, ofCurve)
	var rows []press.Entry
	for i, p := range points {
		for k, x := range p {
			rows = append(rows, press.Entry{Path: fmt.Sprintf("%s[%d][%d]", curvePoints, i, k), Text: plain(x)})
		}
	}
	d.Entries = slices.Insert(d.Entries, at, rows...)
}

func ofCurve(e press.Entry) bool {
	rest, ok := strings.CutPrefix(e.Path, curvePoints)
	return ok && (rest == "" || rest[0] == '[')
}

// plain writes a number as it is typed.
func plain(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
