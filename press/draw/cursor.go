package draw

import "ramplan/press"

// A Cursor says where a line that follows the ram may stand on the decision strip:
// the positions of its magnified stretch, and the px between which it runs.
type Cursor struct {
	ID     string  `json:"id"`   // of the strip
	From   float64 `json:"from"` // mm
	To     float64 `json:"to"`   // mm
	At     float64 `json:"at"`   // px of From
	End    float64 `json:"end"`  // px of To
	Top    float64 `json:"top"`  // px
	Bottom float64 `json:"bottom"`
}

// StripCursor gives the cursor of the strip that [NewStrip] makes with the same
// options.
func StripCursor(p *press.Plan, r *press.Result, o Options) Cursor {
	d := newStripDrawing(newStripModel(p, r, *r.Traces()), o)
	s := d.lens.scale
	return Cursor{o.ID, s.From, s.To, s.X0, s.X1, d.lens.top, d.lens.frameEnd()}
}
