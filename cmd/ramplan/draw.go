package main

import (
	"bytes"
	"context"
	"flag"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/words"
)

// The picture in the README is drawn by the program.
//
//go:generate go run . draw -what strip -o ../../testdata/golden/strip-example.svg ../../static/examples/example-plan.json

// drawVerb draws one plan into a file whose ending names the format.
func drawVerb(_ context.Context, c console, args []string) int {
	flags := flag.NewFlagSet("draw", flag.ContinueOnError)
	flags.SetOutput(c.err)
	what := flags.String("what", "strip", "the drawing: "+strings.Join(draw.Names(), ", "))
	to := flags.String("o", "-", "the file to write, ending in ."+strings.Join(draw.Formats(), ", .")+"; - writes SVG to standard output")
	if err := flags.Parse(args); err != nil {
		return statusRefused
	}
	format := "svg"
	if *to != "-" {
		format = strings.ToLower(strings.TrimPrefix(filepath.Ext(*to), "."))
	}
	switch {
	case !slices.Contains(draw.Names(), *what):
		c.complain("draw knows no drawing %q; it draws: %s", *what, strings.Join(draw.Names(), ", "))
		return statusRefused
	case !slices.Contains(draw.Formats(), format):
		c.complain("draw cannot write %q; give -o a name that ends in .%s", *to, strings.Join(draw.Formats(), ", ."))
		return statusRefused
	case flags.NArg() != 1:
		c.complain("draw takes one plan, after the flags; try: ramplan draw -what strip -o strip.svg PLAN.json")
		return statusRefused
	}
	plan, ok := c.readPlan(flags.Arg(0))
	if !ok {
		return statusRefused
	}
	result := press.Evaluate(plan)
	words.Explain(result)
	var picture bytes.Buffer
	if err := draw.Write(&picture, format, *what, plan, result); err != nil {
		c.complain("%s: cannot draw: %v", flags.Arg(0), err)
		return statusRefused
	}
	if err := c.write(*to, picture.Bytes()); err != nil {
		c.complain("cannot write %s: %v", *to, err)
		return statusRefused
	}
	return statusGood
}

// write puts data into a file, or on standard output for -.
func (c console) write(name string, data []byte) error {
	if name == "-" {
		_, err := c.out.Write(data)
		return err
	}
	return os.WriteFile(name, data, 0o644)
}
