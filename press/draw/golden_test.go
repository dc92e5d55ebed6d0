package draw

import (
	"testing"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
)

// TestGoldenStrip is a regression value: the strip of the example plan as it was
// looked at and found right.
func TestGoldenStrip(t *testing.T) {
	drawtest.Golden(t, "strip-example.svg", svgOf(modelOf(drawtest.Example(t, nil)).picture(Options{})))
	drawtest.Golden(t, "strip-example-compact.svg", svgOf(modelOf(drawtest.Example(t, nil)).picture(Options{Compact: true})))
}

// TestGoldenCharts holds regression values too: the other drawings of the
// example plan.
func TestGoldenCharts(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	for _, d := range drawings[1:] {
		drawtest.Golden(t, d.name+"-example.svg", svgOf(d.make(p, r, Options{})))
	}
}

// TestGoldenMini holds regression values: the small strips of two rows of the
// example plan, one with a reading and one without.
func TestGoldenMini(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	minis := NewMinis(p, r)
	for name, row := range map[string]string{"mini-nominal": press.RowNominal, "mini-missing": press.RowMissing} {
		drawtest.Golden(t, name+"-example.svg", svgOf(minis.Row(*faultRow(r, row), Options{ID: name})))
	}
}
