package main

import (
	"context"
	"fmt"
	"runtime/debug"
)

// help prints the page of all verbs, or what one of them has to say.
func help(ctx context.Context, c console, args []string) int {
	if len(args) > 0 {
		return helpOf(ctx, c, args)
	}
	fmt.Fprintln(c.out, say.HelpPurpose())
	fmt.Fprintln(c.out)
	for _, v := range verbs() {
		fmt.Fprintf(c.out, "  ramplan %-44s %s\n", v.usage, v.about)
	}
	fmt.Fprintln(c.out)
	fmt.Fprintln(c.out, say.EvalStatuses())
	fmt.Fprintln(c.out, say.AssessStatuses())
	fmt.Fprintln(c.out, say.SimulateStatuses())
	fmt.Fprintln(c.out, say.CheckAndBackupStatuses())
	fmt.Fprintln(c.out, say.ExtractStatuses())
	fmt.Fprintln(c.out, say.VerifyStatuses())
	fmt.Fprintln(c.out, say.OutAndInStatuses())
	fmt.Fprintln(c.out, say.HelpOfData())
	fmt.Fprintln(c.out, say.HelpOfDrawOut())
	fmt.Fprintln(c.out, say.HelpCaution())
	return statusGood
}

func helpOf(ctx context.Context, c console, args []string) int {
	for _, v := range verbs() {
		if v.name != args[0] || len(args) > 1 {
			continue
		}
		fmt.Fprintf(c.out, "ramplan %s: %s\n", v.usage, v.about)
		if v.flags {
			return v.run(ctx, console{c.in, c.out, c.out}, []string{"-h"})
		}
		return statusGood
	}
	c.complain("%s", say.HelpTakesAVerb())
	return statusRefused
}

func version(_ context.Context, c console, args []string) int {
	if len(args) > 0 {
		c.complain("%s", say.VersionTakesNothing(args[0]))
		return statusRefused
	}
	v := "(development)"
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		v = info.Main.Version
	}
	fmt.Fprintln(c.out, "ramplan", v)
	return statusGood
}
