package web

import (
	"strings"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/web/view"
)

// drawn draws the plan. The strip comes in the form that there is room for, or in both
// where that is not known: the page then shows the one that fits. The other drawings
// stand in columns and are narrow.
func drawn(p *press.Plan, r *press.Result, room string) (view.Drawings, error) {
	var out view.Drawings
	type drawing struct {
		to   *string
		make func(*press.Plan, *press.Result, draw.Options) *canvas.Picture
		o    draw.Options
		room string
	}
	list := []drawing{
		{&out.Strip, draw.NewStrip, draw.Options{Width: 800, Brief: true, ID: "strip-wide"}, wide},
		{&out.Strip, draw.NewStrip, draw.Options{Compact: true, Brief: true, ID: "strip-compact"}, narrow},
		{&out.Force, draw.NewForce, draw.Options{Compact: true, ID: "force-drawing"}, ""},
		{&out.PressIn, draw.NewPressIn, draw.Options{Compact: true, ID: "pressin-drawing"}, ""},
		{&out.Cycle, draw.NewCycle, draw.Options{Compact: true, ID: "cycle-drawing"}, ""},
	}
	if draw.Applies("probe", r) {
		list = append(list, drawing{&out.Probe, draw.NewProbe, draw.Options{Compact: true, ID: "probe-drawing"}, ""})
	}
	if draw.Applies("run", r) {
		o := draw.Options{Compact: true, ID: "run-drawing"}
		out.RunPlaces = draw.PlacesOfRun(p, r, o)
		list = append(list, drawing{&out.Run, draw.NewRun, o, ""})
	}
	if draw.Applies("shift", r) {
		list = append(list,
			drawing{&out.Shift, draw.NewShift, draw.Options{Compact: true, ID: "shift-drawing"}, ""},
			drawing{&out.Spread, draw.NewSpread, draw.Options{Compact: true, ID: "spread-drawing"}, ""},
			drawing{&out.Wear, draw.NewWear, draw.Options{Compact: true, ID: "wear-drawing"}, ""})
	}
	for _, d := range list {
		if d.room != "" && room != "" && d.room != room {
			continue
		}
		var svg strings.Builder
		if err := d.make(p, r, d.o).SVG(&svg); err != nil {
			return view.Drawings{}, err
		}
		*d.to += svg.String()
	}
	return out, nil
}
