package main

import (
	"bytes"
	"context"

	"ramplan/press"
	"ramplan/press/words"
)

// papers makes the pages that were asked for, each once.
func (d *drawn) papers(p *press.Plan, r *press.Result) []words.Table {
	var out []words.Table
	seen := map[string]bool{}
	for _, name := range d.tables {
		if t, ok := words.Paper(name, p, r); ok && !seen[name] {
			seen[name] = true
			out = append(out, t)
		}
	}
	return out
}

// rows writes the tables of a plan for other programs: comma-separated, in UTF-8
// with the mark by which spreadsheets know it, an empty line between two tables.
func (d *drawn) rows(ctx context.Context, c console) int {
	from, ok := d.read(ctx, c, d.plans[0])
	if !ok {
		return statusRefused
	}
	b := bytes.NewBufferString("\uFEFF")
	for i, t := range d.papers(from.plan, press.Evaluate(from.plan)) {
		if i > 0 {
			b.WriteString("\r\n")
		}
		if err := t.CSV(b); err != nil {
			c.complain("%s: cannot write rows: %v", d.plans[0], err)
			return statusRefused
		}
	}
	return c.put(d.to, b.Bytes())
}
