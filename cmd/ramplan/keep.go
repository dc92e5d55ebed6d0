package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"path/filepath"
	"slices"

	"ramplan/press/archive"
)

// archiveVerb reads the command line of a verb on the archive: its folder and
// the names that follow, of which there must be from least to most.
func (c console) archiveVerb(name string, args []string, least, most int, needs string) (dir string, files []string, status int, ok bool) {
	flags := flag.NewFlagSet(name, flag.ContinueOnError)
	flags.SetOutput(c.err)
	data := dataFlag(flags)
	if err := flags.Parse(args); errors.Is(err, flag.ErrHelp) {
		return "", nil, statusGood, false
	} else if err != nil {
		return "", nil, statusRefused, false
	}
	files, err := names(flags, args)
	if err != nil {
		return "", nil, c.give(err), false
	}
	if n := len(files); n < least || n > most {
		c.complain("%s", say.VerbNeeds(name, needs))
		return "", nil, statusRefused, false
	}
	if name != "verify" && slices.Contains(files, "-") {
		c.complain("%s", say.VerbNeedsFile(name, needs))
		return "", nil, statusRefused, false
	}
	if dir, err = dataFolder(*data); err != nil {
		return "", nil, c.give(err), false
	}
	return dir, files, statusGood, true
}

// checkVerb looks at everything in the archive and prints the counts; what is
// damaged goes to standard error, one a line.
func checkVerb(ctx context.Context, c console, args []string) int {
	dir, _, status, ok := c.archiveVerb("check", args, 0, 0, say.CheckNeedsNoFile())
	if !ok {
		return status
	}
	report, err := archive.CheckFolder(ctx, dir)
	if err != nil {
		return c.give(err)
	}
	return c.report(report)
}

func (c console) report(r *archive.Report) int {
	for _, f := range slices.Concat(r.Faults, r.NotTaken) {
		c.complain("%s", f)
	}
	fmt.Fprintln(c.out, r)
	if len(r.Faults) > 0 {
		return statusDamaged
	}
	return statusGood
}

// stopFirst gives an error of a verb that needs the archive for itself: where
// another process serves it, that is to be stopped.
func (c console) stopFirst(err error) int {
	status := c.give(err)
	if held := (*archive.Held)(nil); errors.As(err, &held) {
		c.complain("%s", say.StopThatProcess())
	}
	return status
}

// backup copies the archive into a new file.
func backup(ctx context.Context, c console, args []string) int {
	dir, files, status, ok := c.archiveVerb("backup", args, 1, 1, say.FileToMake())
	if !ok {
		return status
	}
	report, err := archive.Backup(ctx, dir, files[0])
	if err != nil {
		return c.give(err)
	}
	fmt.Fprintf(c.out, "%s: ", files[0])
	return c.report(report)
}

// restore puts a backup in the archive's place.
func restore(ctx context.Context, c console, args []string) int {
	dir, files, status, ok := c.archiveVerb("restore", args, 1, 1, say.BackupToPutBack())
	if !ok {
		return status
	}
	aside, report, err := archive.PutBack(ctx, dir, files[0])
	if unsound := (*archive.Unsound)(nil); errors.As(err, &unsound) {
		for _, f := range unsound.Report.Faults {
			c.complain("%s", f)
		}
	}
	if err != nil {
		return c.stopFirst(err)
	}
	fmt.Fprintf(c.out, "%s: %s\n", filepath.Join(dir, archive.FileName), report)
	if aside != "" {
		fmt.Fprintf(c.out, "%s", say.KeptAside(aside))
	}
	return statusGood
}
