package web

import (
	"bytes"
	"encoding/json"
	"fmt"
	"net/http"
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/drill"
	"ramplan/web/page"
	"ramplan/web/view"
)

// scenes draw what comes to the station of a plan.
type scenes struct {
	p *press.Plan
	r *press.Result
}

func (s scenes) row(i int) (draw.Scene, bool) {
	c, ok := s.r.CourseOf(i)
	if !ok {
		return draw.Scene{}, false
	}
	return draw.Scene{Course: c, Row: &s.r.Faults[i]}, true
}

func (s scenes) height(mm float64) (draw.Scene, bool) {
	c, ok := s.r.CourseAt(mm)
	return draw.Scene{Course: c, Height: mm}, ok
}

// before draws the station before a push, the lamps not known yet, in both forms.
func (s scenes) before(q drill.Picture, id string) (string, error) {
	return s.picture(q, id, (*draw.Station).Before)
}

// end draws the station when its lamps are read.
func (s scenes) end(q drill.Picture, id string) (string, error) {
	return s.picture(q, id, (*draw.Station).Read)
}

func (s scenes) picture(q drill.Picture, id string, pose func(*draw.Station) draw.Pose) (string, error) {
	scene, ok := s.row(q.Row)
	if q.Height != nil {
		scene, ok = s.height(*q.Height)
	}
	if !ok {
		return "", nil
	}
	var out strings.Builder
	for _, o := range []draw.Options{{ID: id + "-wide"}, {Compact: true, ID: id + "-compact"}} {
		d := draw.NewStation(s.p, s.r, scene, o)
		if err := d.Picture(pose(d)).SVG(&out); err != nil {
			return "", err
		}
	}
	return out.String(), nil
}

// inMotion answers GET …/drill/station: a row of the catalogue, or a part of a
// height.
func (d drilling) inMotion(w http.ResponseWriter, r *http.Request) error {
	if err := r.ParseForm(); err != nil {
		return err
	}
	p := page.StationPage{DrillHead: d.head(say.StationInMotion()), Height: r.Form.Get("height")}
	if d.D == nil {
		return show(w, r, http.StatusUnprocessableEntity, page.StationOf(p))
	}
	status := http.StatusOK
	s := scenes{d.P, d.R}
	row, err := strconv.Atoi(r.Form.Get("row"))
	if err != nil || row < 0 || row >= len(d.R.Faults) {
		row = 0
	}
	scene, _ := s.row(row)
	p.Apart = view.NotInMotion(d.R, row)
	if strings.TrimSpace(p.Height) != "" {
		if h, ok := view.TypedLength(p.Height); ok {
			scene, _ = s.height(h)
			row, p.Hint = -1, d.HeightHint(h)
			p.Apart = view.NotInMotion(d.R, row)
		} else {
			status, p.Trouble = http.StatusUnprocessableEntity, say.HeightNoNumber()
		}
	}
	for i, f := range d.R.Faults {
		p.Rows = append(p.Rows, page.Pick{Value: strconv.Itoa(i), Text: say.Fault(f).Word, Chosen: i == row})
	}
	if err := s.motion(&p, scene); err != nil {
		return err
	}
	return show(w, r, status, page.StationOf(p))
}

// motion fills in the drawings of one scene and what moves them.
func (s scenes) motion(p *page.StationPage, scene draw.Scene) error {
	var strip bytes.Buffer
	var cursors []draw.Cursor
	for _, o := range []draw.Options{{Width: 800, ID: "cursor-wide"}, {Compact: true, ID: "cursor-compact"}} {
		if err := draw.NewStrip(s.p, s.r, o).SVG(&strip); err != nil {
			return err
		}
		cursors = append(cursors, draw.StripCursor(s.p, s.r, o))
	}
	p.Strip = strip.String()
	if err := s.whole(p); err != nil {
		return err
	}
	for form, o := range map[string]draw.Options{"wide": {ID: "station-wide"}, "compact": {Compact: true, ID: "station-compact"}} {
		d := draw.NewStation(s.p, s.r, scene, o)
		begin := d.Poses()[0]
		var svg bytes.Buffer
		if err := d.Picture(begin).SVG(&svg); err != nil {
			return err
		}
		motion, err := json.Marshal(d.Motion(begin))
		if err != nil {
			return err
		}
		p.Figures = append(p.Figures, page.StationFigure{Form: form, SVG: svg.String(), Motion: string(motion)})
	}
	slices.SortFunc(p.Figures, func(a, b page.StationFigure) int { return strings.Compare(b.Form, a.Form) })
	cursor, err := json.Marshal(cursors)
	if err != nil {
		return err
	}
	p.Cursor = string(cursor)
	return s.stills(p, scene)
}

// whole is the whole cycle of a plan that lists steps, to be played on its drawing.
func (s scenes) whole(p *page.StationPage) error {
	o := draw.Options{Compact: true, ID: "whole-run"}
	ways := draw.WaysOfRun(s.p, s.r, o)
	if ways == nil {
		return nil
	}
	d := draw.NewRun(s.p, s.r, o)
	var svg bytes.Buffer
	if err := d.SVG(&svg); err != nil {
		return err
	}
	data, err := json.Marshal(ways)
	if err != nil {
		return err
	}
	w, h := d.Size()
	p.Run = &page.RunPlayed{SVG: svg.String(), Box: fmt.Sprintf("0 0 %g %g", w, h), Ways: string(data)}
	for i, way := range ways {
		p.Run.Names = append(p.Run.Names, page.Pick{Value: strconv.Itoa(i), Text: way.Name})
	}
	return nil
}

// stills are the steps, in words and in pictures.
func (s scenes) stills(p *page.StationPage, scene draw.Scene) error {
	for i, q := range draw.NewStation(s.p, s.r, scene, draw.Options{Compact: true}).Stills() {
		d := draw.NewStation(s.p, s.r, scene, draw.Options{Compact: true, Width: 340, ID: "still-" + strconv.Itoa(i+1)})
		var svg bytes.Buffer
		if err := d.Picture(q).SVG(&svg); err != nil {
			return err
		}
		p.Stills = append(p.Stills, page.StationStill{Caption: strconv.Itoa(i+1) + ". " + q.Phase, SVG: svg.String()})
		if i == 0 {
			p.Steps, p.Scene = d.Steps(), d.Name()
		}
	}
	return nil
}
