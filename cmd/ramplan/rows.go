package main

import (
	"context"

	"ramplan/press"
	"ramplan/press/draw"
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

// rows writes the tables of a plan for other programs.
func (d *drawn) rows(ctx context.Context, c console) int {
	from, ok := d.read(ctx, c, d.plans[0])
	if !ok {
		return statusRefused
	}
	r := press.Evaluate(from.plan)
	return c.put(d.to, words.RowsFile(d.papers(from.plan, r), from.identity(r), d.separation))
}

// identity tells which plan it is where its rows lie alone.
func (s source) identity(r *press.Result) words.Identity {
	return draw.SheetOptions{Issue: s.issue, Superseded: s.superseded, Day: words.Today()}.Identity(s.plan, r)
}
