package draw

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
)

// TestCurveAxes: the axes end at round figures and stay there while a point moves
// a little; every point lies inside. Derived by hand.
func TestCurveAxes(t *testing.T) {
	for _, c := range []struct {
		name                     string
		points                   [][2]float64
		x0, x1, y1, xStep, yStep float64
	}{
		{"to 70 %", [][2]float64{{10, 200}, {70, 2620}}, 0, 80, 3000, 0.5, 10},
		{"moved a little", [][2]float64{{10.5, 210}, {69, 2600}}, 0, 80, 3000, 0.5, 10},
		{"fine", [][2]float64{{1, 0.1}, {1.1, 0.3}}, 0.99, 1.11, 0.35, 0.0005, 0.002},
		{"below zero", [][2]float64{{-20, 5}, {20, 50}}, -25, 25, 55, 0.2, 0.2},
	} {
		trace := &press.CurveTrace{Points: c.points, Line: []press.Pair{c.points[0], c.points[1]}}
		for _, o := range []Options{{}, {Width: 600}} {
			d := NewCurve(trace, nil, o)
			x, y := d.Axes()
			assert.InDeltaSlice(t, []float64{c.x0, c.x1, 0, c.y1}, []float64{x.From, x.To, y.From, y.To}, 1e-9, c.name)
			assert.InDeltaSlice(t, []float64{c.xStep, c.yStep}, []float64{x.Step, y.Step}, 1e-12, c.name)
			for i, at := range d.Points() {
				assert.InDelta(t, x.At+(x.End-x.At)*(c.points[i][0]-x.From)/(x.To-x.From), at[0], 1e-9, c.name)
				assert.InDelta(t, y.At+(y.End-y.At)*(c.points[i][1]-y.From)/(y.To-y.From), at[1], 1e-9, c.name)
			}
		}
	}
}

// TestCurveOfAnyPlan draws the curve of plans of every kind: labels apart, the
// figure at the setting that of the result where the curve was taken at the tool
// on a level ram.
func TestCurveOfAnyPlan(t *testing.T) {
	compared := 0
	for name, p := range drawtest.Plans(t) {
		r := press.Evaluate(p)
		for _, o := range []Options{{}, {Width: 600}, {Width: 10}} {
			for _, setting := range []*float64{nil, &r.Force.Setting} {
				d := NewCurve(p.CurveTrace(), setting, o)
				labelsApart(t, d.Picture, "curve of "+name)
				drawtest.WellFormedSVG(t, svgOf(d.Picture))
				if setting != nil && p.Ram.Curve.Measured == press.MeasuredTool {
					assert.InEpsilon(t, r.Force.Typical, d.d.force, 2e-3, "%s: the line is drawn through what the ram gives", name)
					compared++
				}
			}
		}
	}
	assert.Greater(t, compared, 10)
}

// TestCurveFigures: both axes carry figures, whole and left of the axis. Derived
// by hand.
func TestCurveFigures(t *testing.T) {
	for _, c := range []struct {
		name   string
		points [][2]float64
		want   []string
	}{
		{"thousands", [][2]float64{{10, 200}, {70, 2620}}, []string{"0", "500", "1000", "1500", "2000", "2500", "3000"}},
		{"tenths", [][2]float64{{1, 0.1}, {1.1, 0.3}}, []string{"0.0", "0.1", "0.2", "0.3"}},
		{"large", [][2]float64{{10, 2e5}, {70, 2.6e6}}, []string{"0", "500\u202f000", "1\u202f000\u202f000", "1\u202f500\u202f000", "2\u202f000\u202f000", "2\u202f500\u202f000", "3\u202f000\u202f000"}},
	} {
		trace := &press.CurveTrace{Points: c.points, Line: []press.Pair{c.points[0], c.points[1]}}
		d := NewCurve(trace, nil, Options{})
		var found []string
		for _, l := range d.Texts() {
			if l.X1 <= d.d.plot.X0 && l.Y0 > d.d.plot.Y0-10 {
				found = append(found, l.Text)
				assert.GreaterOrEqual(t, l.X0, 0.0, c.name)
			}
		}
		assert.ElementsMatch(t, c.want, found, c.name)
	}
}
