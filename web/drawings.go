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
	}
	var err error
	if out.Strip, err = drawnStrip(p, r, room, nil); err != nil {
		return out, err
	}
	list := []drawing{
		{&out.Force, draw.NewForce, draw.Options{Compact: true, ID: "force-drawing"}},
		{&out.PressIn, draw.NewPressIn, draw.Options{Compact: true, ID: "pressin-drawing"}},
	}
	if draw.Applies("probe", r) {
		list = append(list, drawing{&out.Probe, draw.NewProbe, draw.Options{Compact: true, ID: "probe-drawing"}})
	}
	if draw.Applies("run", r) {
		o := draw.Options{Compact: true, ID: "run-drawing"}
		out.RunPlaces = draw.PlacesOfRun(p, r, o)
		list = append(list, drawing{&out.Run, draw.NewRun, o})
	} else {
		list = append(list, drawing{&out.Cycle, draw.NewCycle, draw.Options{Compact: true, ID: "cycle-drawing"}})
	}
	for _, d := range list {
		var svg strings.Builder
		if err := d.make(p, r, d.o).SVG(&svg); err != nil {
			return view.Drawings{}, err
		}
		*d.to += svg.String()
	}
	return out, nil
}

// drawnStrip draws the strip in the form that there is room for, or in both, with the
// readings as they were simulated where that is known.
func drawnStrip(p *press.Plan, r *press.Result, room string, spread *press.ReadingSpread) (string, error) {
	var svg strings.Builder
	for _, o := range []draw.Options{{Width: 800, ID: "strip-wide"}, {Compact: true, ID: "strip-compact"}} {
		if form := map[bool]string{false: wide, true: narrow}[o.Compact]; room != "" && room != form {
			continue
		}
		o.Brief, o.Spread = true, spread
		if err := draw.NewStrip(p, r, o).SVG(&svg); err != nil {
			return "", err
		}
	}
	return svg.String(), nil
}

// drawnDays draws how a plan fares on other days than the average; nothing where its risks
// are not known. It takes longer than all that the bench draws for every key, and comes
// with the shares.
func drawnDays(p *press.Plan, r *press.Result) (out view.DayDrawings, err error) {
	if !draw.Applies("shift", r) {
		return out, nil
	}
	for _, d := range []struct {
		to   *string
		make func(*press.Plan, *press.Result, draw.Options) *canvas.Picture
		id   string
	}{
		{&out.Shift, draw.NewShift, "shift-drawing"}, {&out.Spread, draw.NewSpread, "spread-drawing"}, {&out.Wear, draw.NewWear, "wear-drawing"},
	} {
		var svg strings.Builder
		if err := d.make(p, r, draw.Options{Compact: true, ID: d.id}).SVG(&svg); err != nil {
			return out, err
		}
		*d.to = svg.String()
	}
	return out, nil
}
