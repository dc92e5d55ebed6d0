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
		{"serve", "serve [-data DIR] [-listen ADDRESS] [-open]", say.ServeTheBenchToThe(), serve, true},
		{"eval", "eval PLAN.json …", say.PrintTheResultOfEach(), eval, false},
		{"simulate", "simulate [-parts N] [-seed S] [-json] PLAN.json …", say.PressManyPartsInAt(), simulateVerb, true},
		{"draw", "draw [-what WHAT] -o FILE PLAN.json …", say.PutPlansOnPaperAs(), drawVerb, true},
		{"extract", "extract [-o FILE] SHEET", say.TakeThePlanOutOf(), extract, true},
		{"verify", "verify [-data DIR] SHEET|DIGITS", say.TellWhetherASheetA(), verify, true},
		{"check", "check [-data DIR]", say.LookAtEverythingInThe(), checkVerb, true},
		{"backup", "backup [-data DIR] FILE", say.CopyTheArchiveIntoA(), backup, true},
		{"restore", "restore [-data DIR] FILE", say.PutABackupInThe(), restore, true},
		{"out", "out [-data DIR] FOLDER", say.WriteAllPlansRevisionsAnd(), out, true},
		{"in", "in [-data DIR] FOLDER|FILE …", say.BringPlainFilesAndSheets(), in, true},
		{"help", "help", say.PrintThisPage(), help, false},
		{"version", "version", say.PrintTheVersion(), version, false},
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
	c.complain("%s", say.NoVerbTryRamplanHelp(args[0]))
	return statusRefused
}

func asksHelp(arg string) bool { return arg == "-h" || arg == "-help" || arg == "--help" }
