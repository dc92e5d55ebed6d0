package draw

import (
	"math"

	"ramplan/press"
)

// Options of a drawing.
type Options struct {
	Width   float64              // px; 0: the default of the form
	Compact bool                 // the narrow form, for less than 720 px
	Brief   bool                 // of the strip: the title leaves out what a headline beside it says
	NoTitle bool                 // leave the message away: what stands around the drawing says it
	Flat    bool                 // less high, for a page that holds more
	Spread  *press.ReadingSpread // of the strip: the readings as they were simulated; nil: by the closed form
	ID      string               // starts the ids inside an SVG; give each of several in one page its own
}

// width gives the width asked for, between what the drawing needs and what makes
// sense.
func (o Options) width(usual, least float64) float64 {
	if o.Width > 0 {
		usual = o.Width
	}
	return math.Min(math.Max(usual, least), 4096)
}
