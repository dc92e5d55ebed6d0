package words

import (
	"fmt"
	"slices"
	"strings"

	"ramplan/press"
)

// A Grid is a table for the station, made from a plan: on paper a page behind the
// sheet, as a file rows for other programs.
type Grid struct {
	Name    string // by which it is asked for
	Title   string
	Lead    []string // said over the rows
	Columns []Column
	Rows    [][]string
}

// A Column of a grid: its share of the width, and whether it is filled in by hand.
type Column struct {
	Name   string
	Share  float64
	ByHand bool
}

// grids make the tables, in the order in which they are offered.
var grids = []struct {
	name string
	make func(gridMaker) []Grid
}{
	{"faults", gridMaker.faults},
	{"shift", gridMaker.shift},
	{"setup", gridMaker.setup},
	{"control", gridMaker.control},
	{"failures", gridMaker.failures},
	{"reaction", gridMaker.reaction},
	{"proving", gridMaker.proving},
}

// GridNames lists the names that [Grids] knows.
func GridNames() []string {
	var out []string
	for _, g := range grids {
		out = append(out, g.name)
	}
	return out
}

// Grids makes the tables of these names, each once, in the order of the names.
func Grids(names []string, p *press.Plan, r *press.Result) ([]Grid, error) {
	var out []Grid
	m := gridMaker{p, r, PositionsOf(p)}
	for i, name := range names {
		at := slices.Index(GridNames(), name)
		if at < 0 {
			return nil, fmt.Errorf("words: no page is called %q; there are %s", name, strings.Join(GridNames(), ", "))
		}
		if slices.Contains(names[:i], name) {
			continue
		}
		for _, g := range grids[at].make(m) {
			g.Name = name
			out = append(out, g)
		}
	}
	return out, nil
}

// gridMaker has what the rows are made from.
type gridMaker struct {
	p   *press.Plan
	r   *press.Result
	pos Positions
}

// row finds a row of the fault catalogue that every plan may have.
func (m gridMaker) row(name string) (press.FaultRow, bool) {
	i := slices.IndexFunc(m.r.Faults, func(f press.FaultRow) bool { return f.Name == name && !f.Own })
	if i < 0 {
		return press.FaultRow{}, false
	}
	return m.r.Faults[i], true
}

// lamps are the two signals that a row of the catalogue gives.
func (m gridMaker) lamps(name string) (arrival, zone string) {
	f, ok := m.row(name)
	if !ok {
		return none, none
	}
	return lamp(f.Arrival), lamp(f.Zone)
}

func lamp(on *bool) string {
	if on == nil {
		return none
	}
	return OnOff(*on)
}

// reading of a row of the catalogue.
func (m gridMaker) reading(name string) string {
	f, ok := m.row(name)
	if !ok || f.Reading == nil {
		return none
	}
	return m.pos.At(*f.Reading)
}

// blocked is said over a table that is for use at the station.
func (m gridMaker) blocked() []string {
	if why := NotTyped(m.r); why != "" {
		return []string{why}
	}
	return nil
}
