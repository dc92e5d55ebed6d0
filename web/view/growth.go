package view

import (
	"math"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// DoGrowth fills the reference uncertainty from a warm-up.
const DoGrowth = "grow"

// growthPath is the entry that a warm-up fills.
const growthPath = "station.reference_uncertainty"

// Growth is what was typed into the aid beside the reference uncertainty.
type Growth struct {
	Length, Change, Expansion string
	Faults                    []string
}

// Typed tells whether anything stands in the aid.
func (g Growth) Typed() bool { return g.Length+g.Change+g.Expansion != "" }

// Grow fills the reference uncertainty. Where something is no number, nothing is
// filled in and the faults are told.
func Grow(t Typed, g Growth) (filled Typed, said string, faults []string) {
	number := func(what, text string, standIn float64) float64 {
		if strings.TrimSpace(text) == "" && !math.IsNaN(standIn) {
			return standIn
		}
		x, ok := press.TypedNumber(text)
		if !ok || x < 0 || x > press.Largest {
			faults = append(faults, say.NumberNeeded(what, quoted(text)))
		}
		return x
	}
	length := number("Length", g.Length, math.NaN())
	change := number(say.TemperatureChange(), g.Change, math.NaN())
	expansion := number("Expansion", g.Expansion, press.SteelExpansion)
	if len(faults) > 0 {
		return t, "", faults
	}
	mm := math.Ceil(press.Growth(length, change, expansion)*1000-1e-9) / 1000
	d := press.Draft{Entries: append([]press.Entry(nil), t.Draft.Entries...)}
	d.Set(growthPath, strconv.FormatFloat(mm, 'f', -1, 64))
	t.Draft = d
	return t, say.ReferenceSetToGrowth(words.Exact(mm)), nil
}

func quoted(text string) string {
	if text == "" {
		return "nothing"
	}
	return "\u201c" + text + "\u201d"
}

// growthAid is the aid as the page prints it. It offers the way from home to the
// nest as the length.
func (f *form) growthAid() *page.Growth {
	out := &page.Growth{
		Length: f.growth.Length, Change: f.growth.Change, Expansion: f.growth.Expansion, Faults: f.growth.Faults,
		Open: f.growth.Typed() || len(f.growth.Faults) > 0, Do: DoGrowth, Steel: words.Exact(press.SteelExpansion*1e6) + "e-6",
	}
	nest, ok := press.TypedNumber(f.text["station.nest"])
	home, given := press.TypedNumber(f.text["station.home"])
	if !given {
		home = 0
	}
	if ok && nest > home {
		out.Way = words.Exact(nest - home)
	}
	return out
}
