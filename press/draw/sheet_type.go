package draw

import "math"

// perMM is the px of one mm.
const perMM = pxPerInch / 25.4

// capitals is the height of a capital of the face, in type sizes.
const capitals = 1409.0 / 2048

// lettered gives the type size, px, whose capitals are this many mm high: the
// heights of lettering are those of its capitals (ISO 3098-1).
func lettered(mm float64) float64 { return mm * perMM / capitals }

// Styles of a sheet. Nothing on it is lettered smaller than sheetLeast.
var (
	sheetLeast = lettered(1.8)
	sheetText  = style{black, sheetLeast, false}
	sheetQuiet = style{quiet, sheetLeast, false}
	sheetBold  = style{black, sheetLeast, true}
	sheetValue = style{black, lettered(2.5), false}
	sheetLarge = style{black, lettered(2.5), true}
	sheetTitle = style{black, lettered(3.5), true}
)

// sheetTitleLeast is the size to which a message shrinks that then stands on one
// line.
var sheetTitleLeast = lettered(2.8)

// sheetLeading is the distance of baselines on a sheet, in type sizes.
const sheetLeading = 1.27

// sheetScale is how much smaller than on a screen the drawings stand on a sheet:
// their smallest type then has the least height of letters.
var sheetScale = sheetLeast / small

// Lines of a sheet, px: 0.5 and 0.25 mm (ISO 128 proportions).
const (
	sheetThick = 0.5 * perMM
	sheetThin  = 0.25 * perMM
)

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
func (s Paper) px() (w, h float64) { return s.Width * perMM, s.Height * perMM }

// frame is the edge of the drawing space.
func (s Paper) frame() rect {
	w, h := s.px()
	return rect{filingMargin * perMM, sheetMargin * perMM, w - sheetMargin*perMM, h - sheetMargin*perMM}
}

func (r rect) inset(by float64) rect { return rect{r.x0 + by, r.y0 + by, r.x1 - by, r.y1 - by} }

func (r rect) width() float64  { return r.x1 - r.x0 }
func (r rect) height() float64 { return r.y1 - r.y0 }

// fit gives the scale at which something wide goes into a width, never over most.
func fit(wide, into, most float64) float64 { return math.Min(most, into/wide) }
