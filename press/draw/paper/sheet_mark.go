package paper

import (
	"strings"

	"ramplan/press/draw/canvas"
)

// supersededMark is what stands across a sheet or a drawing of which a newer revision was
// issued, without the day of that: SUPERSEDED BY REVISION B.
func supersededMark(by string) string {
	by, _, _ = strings.Cut(by, ",")
	return strings.ToUpper(by)
}

// draftMark draws the word DRAFT across a page.
func draftMark(p *canvas.Pen, f canvas.Rectangle) { p.Across(f, "DRAFT") }
