package main

import (
	"bytes"
	"context"
	"errors"
	"flag"
	"io"
	"io/fs"
	"os"
	"strings"

	"ramplan/press"
	"ramplan/press/carry"
)

// eval prints the result of each plan: laid out for reading when there is one
// file, else one object a line.
func eval(ctx context.Context, c console, args []string) int {
	flags := flag.NewFlagSet("eval", flag.ContinueOnError)
	flags.SetOutput(c.err)
	flags.Usage = func() {}
	switch err := flags.Parse(args); {
	case err == flag.ErrHelp:
		return help(ctx, c, nil)
	case err != nil:
		return statusRefused
	}
	files, err := names(flags, args)
	if err != nil {
		return c.give(err)
	}
	if len(files) == 0 {
		c.complain("%s", say.EvalNeedsPlans())
		return statusRefused
	}
	status := statusGood
	for _, name := range files {
		if ctx.Err() != nil {
			c.complain("%s", say.StoppedBefore(name))
			return statusRefused
		}
		plan, ok := c.readPlan(name)
		if !ok {
			status = statusRefused
			continue
		}
		r := press.Evaluate(plan)
		say.Explain(r)
		if len(files) > 1 {
			r.File = name
		}
		data, err := r.JSON(len(files) == 1 && name != "-")
		if err != nil {
			c.complain("%s", say.CannotWriteResult(name, err))
			status = statusRefused
			continue
		}
		if _, err := c.out.Write(data); err != nil {
			c.complain("%s", say.CannotWrite(err))
			return statusRefused
		}
		if r.Blocked() && status == statusGood {
			status = statusBlocked
		}
	}
	return status
}

// readPlan reads and checks one plan; what is wrong with it goes to standard
// error, one fault a line.
func (c console) readPlan(name string) (*press.Plan, bool) {
	_, plan, ok := c.readSource(name)
	return plan, ok
}

// readSource is the same, with the plan's own bytes.
func (c console) readSource(name string) ([]byte, *press.Plan, bool) {
	data, err := c.read(name)
	if err != nil {
		c.complain("%s: %s", name, fileFault(err))
		return nil, nil, false
	}
	if inside := carry.Is(data); inside || carry.Foreign(data) {
		c.complain("%s: %s", name, noPlan(data))
		if inside || !bytes.HasPrefix(bytes.TrimSpace(data), []byte("{")) {
			return nil, nil, false
		}
	}
	plan, problems := press.Decode(data)
	for _, p := range problems {
		c.complain("%s: %s", name, p)
	}
	return data, plan, len(problems) == 0
}

// noPlan says why a file is no plan: it is a sheet, or something else.
func noPlan(data []byte) string {
	if !carry.Is(data) {
		return carried(carry.ErrForeign)
	}
	if _, err := carry.All(data); err != nil {
		return carried(err)
	}
	return say.SheetForPlan()
}

// carried is an error of the package carry for people.
func carried(err error) string { return strings.TrimPrefix(err.Error(), "carry: ") }

// read takes one byte more than a file may have, so that the check can say so.
func (c console) read(name string) ([]byte, error) {
	if name == "-" {
		return io.ReadAll(io.LimitReader(c.in, carry.MaxFile+1))
	}
	f, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return io.ReadAll(io.LimitReader(f, carry.MaxFile+1))
}

// fileFault says in plain words why a file could not be read.
func fileFault(err error) string {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return say.NoSuchFile()
	case errors.Is(err, fs.ErrPermission):
		return say.MayNotRead()
	}
	return say.CannotBeRead(err.Error())
}
