package main

import (
	"context"

	"ramplan/press"
	"ramplan/press/draw/paper"
	"ramplan/press/words"
)

// papers makes the pages that were asked for, each once.
func (d *drawn) papers(from source, r *press.Result) []words.Table {
	var out []words.Table
	seen := map[string]bool{}
	names := d.tables
	if d.every {
		names = words.PapersOf(from.plan)
	}
	for _, name := range names {
		if t, ok := from.options().Table(name, from.plan, r); ok && !seen[name] {
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
	return c.put(d.to, words.RowsFile(d.papers(from, r), from.options().Identity(from.plan, r), d.separation))
}

// options say of which state of a plan paper and rows are.
func (s source) options() paper.SheetOptions {
	return paper.SheetOptions{Source: s.bytes, Issue: s.issue, Superseded: s.superseded, Day: say.Today()}
}
