package view

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/web/page"
)

// mostHandles is how many points can still be told apart on the drawing.
const mostHandles = 60

// curve makes the drawing of the curve over the table of its points: that of
// the points as typed where they can be read, else that of the last valid plan.
func (b Bench) curve() *page.CurveEditor {
	var trace *press.CurveTrace
	var setting *float64
	out := &page.CurveEditor{}
	switch {
	case len(b.Faults) == 0 && b.Plan != nil:
		trace, setting = b.Plan.CurveTrace(), &b.Result.Force.Setting
	case b.Typed.Draft.CurveTrace() != nil:
		trace = b.Typed.Draft.CurveTrace()
	case b.Plan != nil:
		trace, setting = b.Plan.CurveTrace(), &b.Result.Force.Setting
		out.Note = say.CurveOlderThanPoints()
	default:
		return nil
	}
	movable := out.Note == "" && len(trace.Points) <= mostHandles
	switch {
	case movable:
		out.Hint = say.DragAPoint()
	case out.Note == "":
		out.Hint = say.PointsTooClose(mostHandles)
	}
	d := draw.NewCurve(trace, setting, draw.Options{ID: "curve-drawing"})
	var svg strings.Builder
	_ = d.SVG(&svg) // a builder takes everything
	out.Drawing = svg.String()
	if !movable {
		return out
	}
	width, height := d.Size()
	x, y := d.Axes()
	out.Box, out.X, out.Y = "0 0 "+plain(width)+" "+plain(height), axis(x), axis(y)
	for i := range trace.Points {
		row := strconv.Itoa(i)
		out.Points = append(out.Points, page.CurvePoint{ID: "curve-point-" + row, Row: row, Name: RowName(curveRows, i)})
	}
	return out
}

func axis(a draw.Axis) string {
	return strings.Join([]string{plain(a.From), plain(a.To), plain(a.At), plain(a.End), plain(a.Step)}, " ")
}

// plain writes a number as a script reads it.
func plain(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
