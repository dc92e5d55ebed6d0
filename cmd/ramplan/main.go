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
		{"serve", "serve [-data DIR] [-listen ADDRESS] [-open]", say.ServeDoes(), serve, true},
		{"eval", "eval PLAN.json …", say.EvalDoes(), eval, false},
		{"assess", "assess [-on DATE] PLAN.json STUDY …", say.AssessDoes(), assess, true},
		{"simulate", "simulate [-parts N] [-json] PLAN.json …", say.SimulateDoes(), simulateVerb, true},
		{"draw", "draw [-what WHAT] -o FILE PLAN.json …", say.DrawDoes(), drawVerb, true},
		{"extract", "extract [-o FILE] SHEET", say.ExtractDoes(), extract, true},
		{"verify", "verify [-data DIR] SHEET|DIGITS", say.VerifyDoes(), verify, true},
		{"check", "check [-data DIR]", say.CheckDoes(), checkVerb, true},
		{"backup", "backup [-data DIR] FILE", say.BackupDoes(), backup, true},
		{"restore", "restore [-data DIR] FILE", say.RestoreDoes(), restore, true},
		{"out", "out [-data DIR] FOLDER", say.OutDoes(), out, true},
		{"in", "in [-data DIR] FOLDER|FILE …", say.InDoes(), in, true},
		{"help", "help", say.HelpDoes(), help, false},
		{"version", "version", say.VersionDoes(), version, false},
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
	c.complain("%s", say.NoSuchVerb(args[0]))
	return statusRefused
}

func asksHelp(arg string) bool { return arg == "-h" || arg == "-help" || arg == "--help" }
