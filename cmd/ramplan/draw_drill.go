package main

import (
	"context"
	"fmt"
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
		return fmt.Errorf("-pages, -width, -title and -format are not for the drill: it is one HTML file")
	case d.to != "-" && strings.ToLower(filepath.Ext(d.to)) != ".html":
		return fmt.Errorf("draw cannot write the drill to %q; give -o a name that ends in .html", d.to)
	case len(d.plans) > 1:
		return fmt.Errorf("the drill is of one plan; make a file for each")
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
