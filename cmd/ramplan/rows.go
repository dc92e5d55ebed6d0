package main

import (
	"bytes"
	"encoding/csv"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// rows writes the tables of a plan for other programs: comma-separated (RFC 4180),
// in UTF-8 with the mark by which spreadsheets know it.
func (d *drawn) rows(c console) int {
	plan, ok := c.readPlan(d.plans[0])
	if !ok {
		return statusRefused
	}
	grids, err := words.Grids(d.tables, plan, press.Evaluate(plan))
	if err != nil {
		c.complain("%s: %v", d.plans[0], err)
		return statusRefused
	}
	var b bytes.Buffer
	b.WriteString("\uFEFF")
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	for i, g := range grids {
		if i > 0 {
			_ = w.Write(nil) // an empty line between tables; a buffer takes everything
		}
		var names []string
		for _, col := range g.Columns {
			names = append(names, col.Name)
		}
		_ = w.Write(names)
		for _, row := range g.Rows {
			_ = w.Write(harmless(row))
		}
	}
	w.Flush()
	return c.put(d.to, b.Bytes())
}

// harmless keeps a spreadsheet from taking a name for a formula.
func harmless(row []string) []string {
	out := make([]string, len(row))
	for i, cell := range row {
		if strings.ContainsAny(cell[:min(1, len(cell))], "=+-@\t\r") {
			cell = "'" + cell
		}
		out[i] = cell
	}
	return out
}
