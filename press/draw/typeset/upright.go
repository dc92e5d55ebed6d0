package typeset

import (
	"ramplan/press/draw/canvas"
)

// A4 upright, px.
const (
	UprightWidth  = 210 * canvas.PerMM
	UprightHeight = 297 * canvas.PerMM
)

// Paged makes a picture of the size of the paper: where a note on the typeface
// has to stand under it, the drawing itself is made so much lower.
func Paged(height float64, build func(height float64) *canvas.Picture) *canvas.Picture {
	d := build(height)
	if _, h := d.Size(); h > height {
		d = build(2*height - h)
	}
	return d
}
