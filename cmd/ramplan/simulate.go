package main

import (
	"context"
	"flag"
	"fmt"
	"math"
	"runtime"
	"strconv"

	"ramplan/press"
	"ramplan/press/simulate"
)

// How many parts a simulation may count.
const mostParts = 1e12

// simulateVerb presses many parts in at the stations of plans, and prints what becomes of
// them.
func simulateVerb(ctx context.Context, c console, args []string) int {
	flags := flag.NewFlagSet("simulate", flag.ContinueOnError)
	flags.SetOutput(c.err)
	o := press.SimulationOptions{Parts: 1e6, Seed: 1, Precision: 0.1}
	flags.Func("parts", "how many parts to count, 1 to 1e12 (default 1e6)", func(s string) (err error) { o.Parts, err = partsOf(s); return err })
	flags.Func("seed", "which random numbers, 0 to 2⁶⁴ − 1 (default 1)", func(s string) (err error) { o.Seed, err = seedOf(s); return err })
	flags.Func("precision", "how close the estimate is to come, as a share of it, 0.001 to 1 (default 0.1)", func(s string) (err error) { o.Precision, err = precisionOf(s); return err })
	asJSON := flags.Bool("json", false, "print JSON, one object a plan")
	switch err := flags.Parse(args); {
	case err == flag.ErrHelp:
		return statusGood
	case err != nil:
		return statusRefused
	}
	files, err := names(flags, args)
	if err != nil {
		return c.give(err)
	}
	if len(files) == 0 {
		c.complain("simulate needs the plan files, or - for standard input; try: ramplan simulate PLAN.json")
		return statusRefused
	}
	_ = asJSON
	status := statusGood
	o.Work.Slots = simulate.NewSlots(runtime.GOMAXPROCS(0))
	for _, name := range files {
		plan, ok := c.readPlan(name)
		if !ok {
			status = statusRefused
			continue
		}
		r := press.Evaluate(plan)
		if len(files) > 1 {
			r.File = name
		}
		s := r.Simulate(ctx, o)
		data, err := s.JSON(len(files) == 1 && name != "-")
		if err != nil {
			c.complain("%s: cannot write the simulation: %v", name, err)
			status = statusRefused
			continue
		}
		if _, err := c.out.Write(data); err != nil {
			c.complain("cannot write: %v", err)
			return statusRefused
		}
	}
	return status
}

// partsOf reads a number of parts, written out or as 1e7.
func partsOf(s string) (int64, error) {
	x, err := strconv.ParseFloat(s, 64)
	if err != nil || x != math.Trunc(x) || x < 1 || x > mostParts {
		return 0, fmt.Errorf("a whole number from 1 to 1e12 is wanted")
	}
	return int64(x), nil
}

func seedOf(s string) (uint64, error) {
	n, err := strconv.ParseUint(s, 10, 64)
	if err != nil {
		return 0, fmt.Errorf("a whole number from 0 to %d is wanted", uint64(math.MaxUint64))
	}
	return n, nil
}

func precisionOf(s string) (float64, error) {
	x, err := strconv.ParseFloat(s, 64)
	if err != nil || !(x >= 0.001 && x <= 1) {
		return 0, fmt.Errorf("a share from 0.001 to 1 is wanted")
	}
	return x, nil
}
