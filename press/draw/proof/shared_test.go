package proof

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/draw/drawtest/pushed"
)

// forms are the sizes that a drawing is tried at.
var forms = []draw.Options{{}, {Width: 720}, {Width: 1280}, {Compact: true}, {Compact: true, Width: 360}, {Compact: true, Width: 719}, {NoTitle: true}, {Flat: true}}

// subjects are studies of a plan, by the drawing and the kind of data that they are for.
func subjects(p *press.Plan) map[string]map[string]Subject {
	r := press.Evaluate(p)
	of := func(s pushed.Study) Subject { return Subject{r, s.Study, s.Judged} }
	return map[string]map[string]Subject{
		"forces": {"example": of(pushed.Forces(r, 1, 5, 0.995)), "weak": of(pushed.Forces(r, 2, 5, 0.9)), "many": of(pushed.Forces(r, 3, 1400, 1))},
		"block":  {"example": of(pushed.Block(r, 1, 6, 3, false)), "startup": of(pushed.Block(r, 2, 7, 3, true)), "many": of(pushed.Block(r, 3, 10, 1000, false))},
		"master": {"example": of(pushed.Master(r, 1, 25, 0.004, 0.005)), "off": of(pushed.Master(r, 2, 25, 0.05, 0.005)), "many": of(pushed.Master(r, 3, 10000, 0, 0.006)), "one": of(pushed.Master(r, 4, 1, 0, 0))},
		"starts": {"example": of(pushed.Starts(r, 1, 6, 3)), "many": of(pushed.Starts(r, 2, 500, 20)), "two": of(pushed.Starts(r, 3, 2, 1))},
		"trial":  {"example": of(pushed.Trial(r, 1, 40, 0.01)), "wrong": of(pushed.Trial(r, 2, 40, 0.03, 3, 17)), "many": of(pushed.Trial(r, 3, 10000, 0)), "far": of(pushed.Trial(r, 4, 40, 5))},
		"seen":   {"example": of(pushed.Trial(r, 1, 40, 0.01)), "many": of(pushed.Trial(r, 3, 10000, 0))},
		"lamps":  {"example": of(pushed.Samples(r, 3)), "wrong": of(pushed.Samples(r, 3, 2, 7)), "many": of(pushed.Samples(r, 2500, 9000))},
	}
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

func svgOf(d *canvas.Picture) []byte {
	var b bytes.Buffer
	_ = d.SVG(&b) // a buffer takes everything
	return b.Bytes()
}

func named(t testing.TB, name string) Drawing {
	t.Helper()
	d, err := Named(name)
	require.NoError(t, err)
	return d
}

var look = flag.String("look", "", "a folder to write every drawing to, to be looked at")

// TestLook writes the drawings of every kind of study to a folder.
func TestLook(t *testing.T) {
	if *look == "" {
		t.Skip("no folder given with -look")
	}
	for what, list := range subjects(drawtest.Example(t, nil)) {
		for name, s := range list {
			for form, o := range map[string]draw.Options{"wide": {}, "compact": {Compact: true}} {
				var b bytes.Buffer
				require.NoError(t, named(t, what).Write(&b, "png", s, o))
				require.NoError(t, os.WriteFile(filepath.Join(*look, what+"-"+name+"-"+form+".png"), b.Bytes(), 0o644))
			}
		}
	}
}
