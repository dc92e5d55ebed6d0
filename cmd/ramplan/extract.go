package main

import (
	"context"
	"flag"
	"io"
	"os"

	"ramplan/press/carry"
)

// extract takes the plan out of a sheet or a drawing, byte for byte as it was put
// in, and says on standard error what it is.
func extract(_ context.Context, c console, args []string) int {
	flags := flag.NewFlagSet("extract", flag.ContinueOnError)
	flags.SetOutput(c.err)
	var to string
	text(flags, &to, "o", "-", say.ExtractOutFlag())
	which := flags.Int("plan", 0, say.WhichPlanFlag())
	switch err := flags.Parse(args); {
	case err == flag.ErrHelp:
		return statusGood
	case err != nil:
		return statusRefused
	case isGiven(flags, "plan") && *which < 1:
		c.complain("%s", say.PlanCountedFromOne(*which))
		return statusRefused
	}
	files, err := names(flags, args)
	switch {
	case err != nil:
		return c.give(err)
	case len(files) != 1:
		c.complain("%s", say.ExtractNeedsASheet())
		return statusRefused
	}
	name := files[0]
	data, err := c.readSheet(name)
	if err != nil {
		c.complain("%s: %s", name, fileFault(err))
		return statusRefused
	}
	all, err := carry.All(data)
	switch {
	case err != nil:
		c.complain("%s: %v", name, err)
	case *which > len(all):
		c.complain("%s", say.NoSuchPlanInside(name, *which, len(all)))
	case *which == 0 && len(all) > 1:
		c.complain("%s", say.SeveralPlansInside(name, len(all)))
		for i, one := range all {
			c.complain("%4d  %s", i+1, one.Says())
		}
	default:
		one := all[max(*which, 1)-1]
		c.complain("%s: %s", name, one.Says())
		status := c.put(to, one.Plan)
		if status == statusGood && carry.Cut(data) {
			c.complain("%s", say.FileCutOff(name))
			return statusDamaged
		}
		return status
	}
	return statusRefused
}

// readSheet takes one byte more than a sheet may have, so that the reader can say
// so.
func (c console) readSheet(name string) ([]byte, error) {
	in := c.in
	if name != "-" {
		f, err := os.Open(name)
		if err != nil {
			return nil, err
		}
		defer f.Close()
		in = f
	}
	return io.ReadAll(io.LimitReader(in, carry.MaxFile+1))
}
