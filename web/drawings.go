package web

import (
	"bytes"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/web/view"
)

// drawn draws the plan. The strip comes in both its forms, as the room on the
// page decides which is shown; the others stand in columns and are narrow.
func drawn(p *press.Plan, r *press.Result) (view.Drawings, error) {
	var out view.Drawings
	for _, d := range []struct {
		to      *string
		picture *draw.Picture
	}{
		{&out.Strip, draw.NewStrip(p, r, draw.Options{Width: 800, Brief: true, ID: "strip-wide"})},
		{&out.Strip, draw.NewStrip(p, r, draw.Options{Compact: true, Brief: true, ID: "strip-compact"})},
		{&out.Force, draw.NewForce(p, r, draw.Options{Compact: true, ID: "force-drawing"})},
		{&out.PressIn, draw.NewPressIn(p, r, draw.Options{Compact: true, ID: "pressin-drawing"})},
		{&out.Cycle, draw.NewCycle(p, r, draw.Options{Compact: true, ID: "cycle-drawing"})},
	} {
		var svg bytes.Buffer
		if err := d.picture.SVG(&svg); err != nil {
			return view.Drawings{}, err
		}
		*d.to += svg.String()
	}
	return out, nil
}
