package issue

import (
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/drafts"
)

// A Figure is one that the drill asks about: which, and what it was and is, mm; nil
// where there is none.
type Figure struct {
	Name    string
	Was, Is *float64
}

// The figures that the drill asks about.
const (
	ZoneStart  = "zone start"
	ZoneEnd    = "zone end"
	PushEnd    = "push end"
	HeightLow  = "lower limit"
	HeightHigh = "upper limit"
)

// Asked is what of two plans differs that the drill asks about.
type Asked struct {
	Figures []Figure        // those that changed, as they are computed
	Entries []drafts.Change // of sizes of faults and of reactions, as typed
	Lamps   bool            // the four pairs mean something else
}

// AskedOf compares two plans in what the drill asks about.
func AskedOf(was, is *press.Plan) Asked {
	out := Asked{Lamps: !SameLamps(was, is)}
	before, after := figuresOf(was), figuresOf(is)
	for i, f := range before {
		if !same(f.Is, after[i].Is) {
			out.Figures = append(out.Figures, Figure{f.Name, f.Is, after[i].Is})
		}
	}
	for _, c := range drafts.Changes(was.Draft(), is.Draft()) {
		if strings.HasPrefix(c.Path, "faults.") || strings.HasPrefix(c.Path, "quality.reactions") {
			out.Entries = append(out.Entries, c)
		}
	}
	return out
}

func figuresOf(p *press.Plan) []Figure {
	r := press.Evaluate(p)
	var zone [2]*float64
	if r.Window.Zone != nil {
		zone = *r.Window.Zone
	}
	return []Figure{
		{Name: ZoneStart, Is: zone[0]}, {Name: ZoneEnd, Is: zone[1]}, {Name: PushEnd, Is: r.Travel.PushEnd},
		{Name: HeightLow, Is: &p.Requirement.HeightLow}, {Name: HeightHigh, Is: &p.Requirement.HeightHigh},
	}
}

func same(a, b *float64) bool {
	if a == nil || b == nil {
		return a == b
	}
	return math.Abs(*a-*b) < 1e-9
}
