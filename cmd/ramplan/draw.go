package main

import (
	"bytes"
	"context"
	"flag"
	"io"
	"os"
	"sort"
	"strings"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/words"
)

// The picture in the README is drawn by the program.
//
//go:generate go run . draw -what strip -o ../../testdata/golden/strip-example.svg ../../static/examples/example-plan.json

// drawings by the name that -what takes.
var drawings = map[string]func(io.Writer, *press.Plan, *press.Result) error{
	"strip": draw.Strip,
}

// drawVerb draws one plan.
func drawVerb(_ context.Context, c console, args []string) int {
	flags := flag.NewFlagSet("draw", flag.ContinueOnError)
	flags.SetOutput(c.err)
	what := flags.String("what", "strip", "the drawing: "+strings.Join(drawingNames(), ", "))
	to := flags.String("o", "-", "the SVG file to write, - for standard output")
	if err := flags.Parse(args); err != nil {
		return statusRefused
	}
	drawing, known := drawings[*what]
	if !known {
		c.complain("draw knows no drawing %q; it draws: %s", *what, strings.Join(drawingNames(), ", "))
		return statusRefused
	}
	if flags.NArg() != 1 {
		c.complain("draw takes one plan, after the flags; try: ramplan draw -what strip -o strip.svg PLAN.json")
		return statusRefused
	}
	if name := strings.ToLower(*to); name != "-" && !strings.HasSuffix(name, ".svg") {
		c.complain("draw writes SVG; give -o a name that ends in .svg, not %q", *to)
		return statusRefused
	}
	plan, ok := c.readPlan(flags.Arg(0))
	if !ok {
		return statusRefused
	}
	result := press.Evaluate(plan)
	words.Explain(result)
	var picture bytes.Buffer
	if err := drawing(&picture, plan, result); err != nil {
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

func drawingNames() []string {
	names := make([]string, 0, len(drawings))
	for name := range drawings {
		names = append(names, name)
	}
	sort.Strings(names)
	return names
}
