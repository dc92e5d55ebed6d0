package draw

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

// forms are the sizes that the strip is tried at.
var forms = []Options{{}, {Width: 720}, {Width: 1280}, {Compact: true}, {Compact: true, Width: 360}, {Compact: true, Width: 719}}

func modelOf(p *press.Plan) *stripModel {
	r := press.Evaluate(p)
	return newStripModel(p, r, *r.Traces())
}

func labelsApart(t testing.TB, d *canvas.Picture, what string) {
	t.Helper()
	width, height := d.Size()
	var texts []drawtest.Box
	for _, l := range d.Texts() {
		texts = append(texts, drawtest.Box{Text: l.Text, X0: l.X0, Y0: l.Y0, X1: l.X1, Y1: l.Y1})
	}
	drawtest.Apart(t, texts, width, height, what)
}

var look = flag.String("look", "", "a folder to write every drawing to, to be looked at")

// TestLook writes the drawings of every kind of plan to a folder.
func TestLook(t *testing.T) {
	if *look == "" {
		t.Skip("no folder given with -look")
	}
	for name, p := range drawtest.Plans(t) {
		r := press.Evaluate(p)
		for what, draw := range pictures {
			for form, o := range map[string]Options{"wide": {}, "compact": {Compact: true}} {
				file := filepath.Join(*look, what+"-"+name+"-"+form+".svg")
				require.NoError(t, os.WriteFile(file, svgOf(draw(p, r, o)), 0o644))
			}
		}
	}
}

// pictures are all drawings.
var pictures = map[string]func(*press.Plan, *press.Result, Options) *canvas.Picture{
	"strip":   NewStrip,
	"force":   NewForce,
	"pressin": NewPressIn,
	"cycle":   NewCycle,
	"run":     NewRun,
	"probe":   NewProbe,
}

func cardTexts(d *canvas.Picture) []string {
	var out []string
	for _, l := range d.Texts() {
		out = append(out, l.Text)
	}
	return out
}

// svgOf is a drawing as SVG.
func svgOf(d *canvas.Picture) []byte {
	var b bytes.Buffer
	_ = d.SVG(&b) // a buffer takes everything
	return b.Bytes()
}
