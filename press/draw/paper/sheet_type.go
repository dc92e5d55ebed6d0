package paper

import (
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
)

// sheetTitleLeast is the size to which a message shrinks that then stands on one
// line.
var sheetTitleLeast = canvas.Lettered(2.8)

// sheetScale is how much smaller than on a screen the drawings stand on a sheet:
// their smallest type then has the least height of letters.
var sheetScale = typeset.Least / canvas.Small

// A Paper is a size of sheet.
type Paper struct {
	Name          string
	Width, Height float64 // mm, landscape
}

// Papers are the sizes of sheet (ISO 216, and the letter size of North American
// practice), the usual one first.
var Papers = []Paper{{"a4", 297, 210}, {"letter", 279.4, 215.9}}

// Margins of a sheet, mm: the left one is for filing (ISO 5457).
const (
	filingMargin = 20
	sheetMargin  = 10
)

// px gives the size of the paper.
func (s Paper) px() (w, h float64) { return s.Width * canvas.PerMM, s.Height * canvas.PerMM }

// frame is the edge of the drawing space.
func (s Paper) frame() canvas.Rectangle {
	w, h := s.px()
	return canvas.Rect(filingMargin*canvas.PerMM, sheetMargin*canvas.PerMM, w-sheetMargin*canvas.PerMM, h-sheetMargin*canvas.PerMM)
}
