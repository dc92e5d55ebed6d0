package paper

import (
	"testing"

	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

// labelsApart holds that no text of a picture lies over another, or outside.
func labelsApart(t testing.TB, d *canvas.Picture, what string) {
	t.Helper()
	width, height := d.Size()
	var texts []drawtest.Box
	for _, l := range d.Texts() {
		texts = append(texts, drawtest.Box{Text: l.Text, X0: l.X0, Y0: l.Y0, X1: l.X1, Y1: l.Y1})
	}
	drawtest.Apart(t, texts, width, height, what)
}

// cardTexts are the texts of a picture.
func cardTexts(d *canvas.Picture) []string {
	var out []string
	for _, l := range d.Texts() {
		out = append(out, l.Text)
	}
	return out
}
