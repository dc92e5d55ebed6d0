package main

import (
	"context"
	"errors"
	"path/filepath"
	"strings"
	"time"

	"ramplan/web"
)

// drillName is what -what calls the drill in a file of its own.
const drillName = "drill"

// asDrill checks what is asked for: one plan, into one .html.
func (d *drawn) asDrill() error {
	switch {
	case len(d.tables) > 0 || d.width != 0 || !d.title || d.format != "":
		return errors.New(say.DrillHasNoPages())
	case d.to != "-" && strings.ToLower(filepath.Ext(d.to)) != ".html":
		return errors.New(say.DrillNeedsHTML(d.to))
	case len(d.plans) > 1:
		return errors.New(say.DrillOfOnePlan())
	}
	return nil
}

// drill writes drill and station page of a plan as one HTML file.
func (d *drawn) drill(ctx context.Context, c console) int {
	from, ok := d.read(ctx, c, d.plans[0])
	if !ok {
		return statusRefused
	}
	file, err := web.DrillFile(from.plan, from.issue, d.kept.last, time.Now())
	if err != nil {
		c.complain("%s: %v", d.plans[0], err)
		return statusRefused
	}
	return c.put(d.to, file)
}
