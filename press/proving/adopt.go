package proving

import (
	"fmt"
	"math"
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

// Taken lists what of the entries that a study may offer one step of a draft changed, and what
// stands in the draft of now as the step left it. A figure that was not given, or cannot be read,
// is not a number.
func Taken(was, is, now *press.Draft) []Change {
	var out []Change
	for _, path := range offered {
		before, after := under(was, path), under(is, path)
		if alike(before, after) || !alike(after, under(now, path)) || len(after) == 0 {
			continue
		}
		c := Change{Path: path}
		if path == curvePoints {
			c.Points, c.Offers = points(before), points(after)
		} else {
			c.Was, c.Is = figure(before), figure(after)
		}
		out = append(out, c)
	}
	return out
}

// offered are the entries that a study may offer, in the order of [Adopt.Changes].
var offered = func() []string {
	out := []string{curvePoints}
	for _, f := range (&Adopt{}).figures(&press.Plan{}) {
		out = append(out, f.path)
	}
	return out
}()

// under are the entries of a draft at a path and in it that are given.
func under(d *press.Draft, path string) []press.Entry {
	var out []press.Entry
	for _, e := range d.Entries {
		if within(e.Path, path) {
			if _, given := press.AsRead(e.Path, e.Text); given {
				out = append(out, e)
			}
		}
	}
	return out
}

// alike tells whether entries mean the same.
func alike(a, b []press.Entry) bool {
	return slices.EqualFunc(a, b, func(x, y press.Entry) bool { return x.Path == y.Path && press.SameMeaning(x.Path, x.Text, y.Text) })
}

func figure(entries []press.Entry) float64 {
	if len(entries) == 1 {
		text, _ := press.AsRead(entries[0].Path, entries[0].Text)
		if x, err := strconv.ParseFloat(text, 64); err == nil {
			return x
		}
	}
	return math.NaN()
}

// points are the points of a curve that its entries make up; none where they cannot be read.
func points(entries []press.Entry) [][2]float64 {
	var out [][2]float64
	for i := 0; i+1 < len(entries); i += 2 {
		p := [2]float64{figure(entries[i : i+1]), figure(entries[i+1 : i+2])}
		if math.IsNaN(p[0]) || math.IsNaN(p[1]) {
			return nil
		}
		out = append(out, p)
	}
	return out
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

func ofCurve(e press.Entry) bool { return within(e.Path, curvePoints) }

// within tells whether a path is an entry or lies in it.
func within(path, entry string) bool {
	rest, ok := strings.CutPrefix(path, entry)
	return ok && (rest == "" || rest[0] == '[')
}

// plain writes a number as it is typed.
func plain(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
