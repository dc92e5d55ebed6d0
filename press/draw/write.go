package draw

import (
	"fmt"
	"io"
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
)

// drawings are all that can be drawn, in the order in which they are offered.
var drawings = []struct {
	name string
	make func(*press.Plan, *press.Result, Options) *canvas.Picture
}{
	{"strip", NewStrip},
	{"force", NewForce},
	{"press", NewPressIn},
	{"cycle", NewCycle},
	{"card", NewCard},
	{"run", NewRun},
	{"probe", NewProbe},
	{"shift", NewShift},
	{"spread", NewSpread},
	{"wear", NewWear},
}

// Names lists the drawings that [Write] and [New] know.
func Names() []string {
	var names []string
	for _, d := range drawings {
		names = append(names, d.name)
	}
	return names
}

// Applies tells whether a drawing shows more than that the plan has nothing for it: the
// probe and the run are of plans that have them, what becomes of the risks of such of which
// they are known.
func Applies(what string, r *press.Result) bool {
	switch what {
	case "probe":
		return r.Probe.InUse && r.Probe.End != nil && r.Probe.Detection != nil
	case "run":
		return r.Sequence != nil
	case "shift", "spread", "wear":
		d := r.WorstDay()
		return d != nil && d.Average != nil
	}
	return true
}

// New makes a drawing by its name.
func New(what string, p *press.Plan, r *press.Result, o Options) (*canvas.Picture, error) {
	for _, d := range drawings {
		if d.name == what {
			return d.make(p, r, o), nil
		}
	}
	return nil, fmt.Errorf("draw: no drawing is called %q; there are %s", what, strings.Join(Names(), ", "))
}

// Write draws a plan in a format: what is one of [Names], format one of
// [Formats]. Both names are looked at before anything is drawn.
func Write(w io.Writer, format, what string, p *press.Plan, r *press.Result) error {
	if err := canvas.CheckFormat(format); err != nil {
		return err
	}
	d, err := New(what, p, r, Options{})
	if err != nil {
		return err
	}
	return d.Write(w, format)
}
