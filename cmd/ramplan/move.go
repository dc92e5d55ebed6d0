package main

import (
	"context"
	"errors"
	"fmt"
	"math"
	"time"

	"ramplan/press/archive"
)

// out writes all plans as plain files into a folder.
func out(ctx context.Context, c console, args []string) int {
	dir, files, status, ok := c.archiveVerb("out", args, 1, 1, say.FolderToMake())
	if !ok {
		return status
	}
	a, err := archive.Look(ctx, dir)
	if err != nil {
		return c.give(err)
	}
	m, err := a.WriteOut(ctx, files[0], c.progress("out"))
	if m != nil && m.Binned > 0 {
		c.complain("%s", say.BinStays(m.Binned))
	}
	if m != nil && m.Trainings > 0 {
		c.complain("%s", say.TrainingStays(m.Trainings))
	}
	return c.moved(say.WentOut(), m, errors.Join(err, a.Close()))
}

// in brings plain files, sheets and drawings in as new plans. It writes, so no other process may serve
// the archive meanwhile.
func in(ctx context.Context, c console, args []string) int {
	dir, files, status, ok := c.archiveVerb("in", args, 1, math.MaxInt, say.FilesToBringIn())
	if !ok {
		return status
	}
	lock, err := archive.TakeLock(dir)
	if err != nil {
		return c.stopFirst(err)
	}
	a, err := archive.Open(ctx, dir, archive.Options{})
	if err != nil {
		return c.give(errors.Join(err, lock.Release()))
	}
	if a.Made() {
		c.complain("%s", say.NewArchiveIn(a.Path()))
	}
	m, err := a.BringIn(ctx, files, c.progress("in"))
	return c.moved(say.CameIn(), m, errors.Join(err, a.Close(), lock.Release()))
}

// moved says what was moved, and what was not, one a line.
func (c console) moved(how string, m *archive.Moved, err error) int {
	if m != nil {
		for _, f := range m.Faults {
			c.complain("%s", f)
		}
		fmt.Fprintln(c.out, m, how)
	}
	switch {
	case errors.Is(err, context.Canceled):
		c.complain("%s", say.StoppedWhatIsCountedIsDone())
		return statusRefused
	case err != nil:
		return c.give(err)
	case len(m.Faults) > 0:
		return statusRefused
	}
	return statusGood
}

// progress says on standard error how far long work is, from the second second
// on and not more often than once in one.
func (c console) progress(verb string) archive.Progress {
	last := time.Now()
	return func(done, all int, name string) {
		if time.Since(last) < time.Second {
			return
		}
		last = time.Now()
		fmt.Fprintf(c.err, "%s", say.Progress(verb, done, all, name))
	}
}
