package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"os/exec"
	"runtime"
	"strings"

	"ramplan/web"
)

// serve serves the bench until it is told to stop.
func serve(ctx context.Context, c console, args []string) int {
	flags := flag.NewFlagSet("serve", flag.ContinueOnError)
	flags.SetOutput(c.err)
	address := flags.String("listen", "", "the `ADDRESS` of this machine to serve on (default "+web.DefaultAddress+", or the next free port)")
	open := flags.Bool("open", false, "open the bench in the browser")
	if err := flags.Parse(args); errors.Is(err, flag.ErrHelp) {
		return statusGood
	} else if err != nil {
		return statusRefused
	}
	if flags.NArg() > 0 {
		c.complain("serve takes no files, found %q; open a plan on the page, or name a verb: ramplan eval PLAN.json", flags.Arg(0))
		return statusRefused
	}
	ln, err := web.Listen(*address)
	if err != nil {
		return c.give(err)
	}
	url := "http://" + ln.Addr().String() + "/"
	fmt.Fprintf(c.out, "ramplan serves the bench at %s\nStop it with Ctrl-C.\n", url)
	if *open {
		if err := openBrowser(url); err != nil {
			c.complain("no browser could be started (%v); open %s by hand", err, url)
		}
	}
	if err := web.Serve(ctx, ln, web.New(), web.DefaultTimeouts, c.err); err != nil {
		return c.give(err)
	}
	return statusGood
}

// give says an error to people: without the name of the package that found it.
func (c console) give(err error) int {
	c.complain("%s", strings.TrimPrefix(err.Error(), "web: "))
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
	go func() { _ = cmd.Wait() }()
	return nil
}
