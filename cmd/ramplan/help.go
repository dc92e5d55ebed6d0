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
	fmt.Fprintln(c.out, "ramplan plans press stations: which setting, where to stop, what the signals mean.")
	fmt.Fprintln(c.out)
	for _, v := range verbs() {
		fmt.Fprintf(c.out, "  ramplan %-44s %s\n", v.usage, v.about)
	}
	fmt.Fprintln(c.out)
	fmt.Fprintln(c.out, "eval ends with 0 when no plan has a blocker, 1 when one has, 2 when a file could not be read.")
	fmt.Fprintln(c.out, "check and backup end with 0 when nothing is damaged, 1 when something is, 2 when they could not do it.")
	fmt.Fprintln(c.out, "extract ends with 1 when the file is cut off and the plan inside is whole, 2 when no plan comes out.")
	fmt.Fprintln(c.out, "verify ends with 0 for what was issued last, 1 for what was not issued so or is cut off, 2 when it cannot tell, 3 for what a newer revision has superseded.")
	fmt.Fprintln(c.out, "out and in end with 2 when something could not be moved as it is; standard error names it.")
	fmt.Fprintln(c.out, "DIR is the archive's folder; without -data it is ramplan in the user's data folder.")
	fmt.Fprintln(c.out, "draw writes to standard output with -o -, each plan into a file of its own with -o FOLDER/, all into one with -o FILE.pdf.")
	fmt.Fprintln(c.out, "A planning aid: prove force and position on the station before use.")
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
	c.complain("help prints its page, or what one verb has to say: ramplan help draw")
	return statusRefused
}

func version(_ context.Context, c console, args []string) int {
	if len(args) > 0 {
		c.complain("version takes nothing, found %q", args[0])
		return statusRefused
	}
	v := "(development)"
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		v = info.Main.Version
	}
	fmt.Fprintln(c.out, "ramplan", v)
	return statusGood
}
