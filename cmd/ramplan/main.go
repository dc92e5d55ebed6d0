// Command ramplan plans press stations: it serves the bench in a browser window
// of the user's own machine, and evaluates and draws plan files.
package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"
	"strings"
	"syscall"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	os.Exit(run(ctx, os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// Exit statuses. Statuses 0 to 2 of eval are part of the result format.
const (
	statusGood    = 0
	statusBlocked = 1 // eval: at least one blocker
	statusDamaged = 1 // check, backup: something is not as it was stored; extract: the file is cut off
	statusRefused = 2 // a file could not be read, or the command line is wrong
)

// A verb is one thing that the program does.
type verb struct {
	name, usage, about string
	run                func(ctx context.Context, c console, args []string) int
	flags              bool // it has flags to tell of
}

// console is where a verb reads and writes.
type console struct {
	in       io.Reader
	out, err io.Writer
}

// complain writes one line to standard error.
func (c console) complain(format string, args ...any) {
	fmt.Fprintf(c.err, "ramplan: "+format+"\n", args...)
}

// verbs in the order in which help lists them.
func verbs() []verb {
	return []verb{
		{"serve", "serve [-data DIR] [-listen ADDRESS] [-open]", "serve the bench to the browser of this machine; so does ramplan alone", serve, true},
		{"eval", "eval PLAN.json …", "print the result of each plan as JSON; - reads one plan from standard input", eval, false},
		{"simulate", "simulate [-parts N] [-seed S] [-json] PLAN.json …", "press many parts in at the station, and tell what becomes of them", simulateVerb, true},
		{"draw", "draw [-what WHAT] -o FILE PLAN.json …", "put plans on paper, as sheet.pdf, .svg or .png; draw -h lists what else", drawVerb, true},
		{"extract", "extract [-o FILE] SHEET", "take the plan out of a sheet or a drawing, byte for byte", extract, true},
		{"verify", "verify [-data DIR] SHEET|DIGITS", "tell whether a sheet, a plan file, or a digest typed from paper, is what the archive issued", verify, true},
		{"check", "check [-data DIR]", "look at everything in the archive, also while it is served", checkVerb, true},
		{"backup", "backup [-data DIR] FILE", "copy the archive into a new file, also while it is served", backup, true},
		{"restore", "restore [-data DIR] FILE", "put a backup in the archive's place; what stood there is kept", restore, true},
		{"out", "out [-data DIR] FOLDER", "write all plans, revisions and rams as plain files into a new folder", out, true},
		{"in", "in [-data DIR] FOLDER|FILE …", "bring plain files, and sheets that are named, in as new plans, with their issued revisions", in, true},
		{"help", "help", "print this page", help, false},
		{"version", "version", "print the version", version, false},
	}
}

// run does what the command line says and returns the exit status.
func run(ctx context.Context, args []string, in io.Reader, out, errs io.Writer) int {
	c := console{in, out, errs}
	switch {
	case len(args) == 0:
		args = []string{"serve"}
	case asksHelp(args[0]):
		args = append([]string{"help"}, args[1:]...)
	case strings.HasPrefix(args[0], "-"):
		args = append([]string{"serve"}, args...)
	}
	for _, v := range verbs() {
		if v.name == args[0] {
			return v.run(ctx, c, args[1:])
		}
	}
	c.complain("no verb %q; try: ramplan help", args[0])
	return statusRefused
}

func asksHelp(arg string) bool { return arg == "-h" || arg == "-help" || arg == "--help" }
