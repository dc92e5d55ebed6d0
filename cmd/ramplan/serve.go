package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"log"
	"os"
	"os/exec"
	"runtime"
	"runtime/debug"
	"strings"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/static"
	"ramplan/web"
)

// serve serves the bench until it is told to stop.
func serve(ctx context.Context, c console, args []string) int {
	flags := flag.NewFlagSet("serve", flag.ContinueOnError)
	flags.SetOutput(c.err)
	var address string
	text(flags, &address, "listen", "", say.ListenFlag(web.DefaultAddress))
	data := dataFlag(flags)
	font := fontFlag(flags)
	open := flags.Bool("open", false, say.OpenFlag())
	if err := flags.Parse(args); errors.Is(err, flag.ErrHelp) {
		return statusGood
	} else if err != nil {
		return statusRefused
	}
	if flags.NArg() > 0 {
		c.complain("%s", say.ServeTakesNoFiles(flags.Arg(0)))
		return statusRefused
	}
	if err := useFonts(*font); err != nil {
		return c.give(err)
	}
	ln, err := web.Listen(address)
	if err != nil {
		return c.give(err)
	}
	defer ln.Close()
	a, lock, err := keep(ctx, c, *data)
	if err != nil {
		return c.give(err)
	}
	url := "http://" + ln.Addr().String() + "/"
	err = lock.Say(url)
	if err == nil {
		fmt.Fprintf(c.out, "%s", say.ServesAt(url, keptIn(a), a.Path()))
		if *open {
			if err := openBrowser(url); err != nil {
				c.complain("%s", say.NoBrowser(err, url))
			}
		}
		collectSeldom()
		err = web.Serve(ctx, ln, web.New(a), web.DefaultTimeouts, c.err)
	}
	// The requests have ended: the archive may be let go.
	if err := errors.Join(err, a.Close(), lock.Release()); err != nil {
		return c.give(err)
	}
	return statusGood
}

// keep takes the archive in a folder for this process alone. A new one has the
// examples on its shelf.
func keep(ctx context.Context, c console, named string) (*archive.Archive, *archive.Lock, error) {
	dir, err := dataFolder(named)
	if err != nil {
		return nil, nil, err
	}
	lock, err := archive.TakeLock(dir)
	if err != nil {
		return nil, nil, err
	}
	var first []*press.Draft
	for _, data := range static.Examples() {
		plan, faults := press.Decode(data)
		if len(faults) > 0 {
			panic("ramplan: an example is no plan: " + faults.Error())
		}
		first = append(first, plan.Draft())
	}
	a, err := archive.Open(ctx, dir, archive.Options{First: first, Log: log.New(c.err, "ramplan: ", 0)})
	if err != nil {
		return nil, nil, errors.Join(err, lock.Release())
	}
	return a, lock, nil
}

// keptIn begins the line that names the archive's file.
func keptIn(a *archive.Archive) string {
	if a.Made() {
		return say.NewArchiveKeptIn()
	}
	return say.PlansKeptIn()
}

// give says an error to people, a line each: without the name of the package
// that found it.
func (c console) give(err error) int {
	for line := range strings.Lines(err.Error()) {
		line = strings.TrimSpace(line)
		for _, name := range []string{"web: ", "archive: "} {
			line = strings.TrimPrefix(line, name)
		}
		c.complain("%s", line)
	}
	return statusRefused
}

// openBrowser shows an address in the user's browser.
func openBrowser(url string) error {
	var cmd *exec.Cmd
	switch runtime.GOOS {
	case "darwin":
		cmd = exec.Command("open", url)
	case "windows":
		cmd = exec.Command("rundll32", "url.dll,FileProtocolHandler", url)
	default:
		cmd = exec.Command("xdg-open", url)
	}
	if err := cmd.Start(); err != nil {
		return err
	}
	go func() {
		defer func() { _ = recover() }() // how it ends is of no interest
		_ = cmd.Wait()
	}()
	return nil
}

// collectSeldom lets more memory fill before what is forgotten in it is collected. An
// answer to typing forgets some 2 MB, and little stays: as it is usually done, every
// 4 MB, collecting takes a fifth of its time. Where much is in use it is collected as
// usual. What the environment says of it goes before.
func collectSeldom() {
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(400)
	}
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(256 << 20)
	}
}
