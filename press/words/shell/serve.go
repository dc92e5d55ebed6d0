package shell

import (
	"fmt"
)

func (say Words) ListenFlag(defaultAddress string) string {
	return "the `ADDRESS` of this machine to serve on (default " + defaultAddress + ", or the next free port)"
}

func (say Words) OpenFlag() string { return "open the bench in the browser" }

func (say Words) ServeTakesNoFiles(arg string) string {
	return fmt.Sprintf("serve takes no files, found %q; open a plan on the page, or name a verb: ramplan eval PLAN.json", arg)
}

func (say Words) ServesAt(url string, keptIn string, path string) string {
	return fmt.Sprintf("ramplan serves the bench at %s\n%s %s\nStop it with Ctrl-C.\n", url, keptIn, path)
}

func (say Words) NoBrowser(err error, url string) string {
	return fmt.Sprintf("no browser could be started (%v); open %s by hand", err, url)
}

func (say Words) NewArchiveKeptIn() string {
	return "There was no archive yet; a new one, with examples on its shelf, was made in"
}

func (say Words) PlansKeptIn() string { return "The plans are kept in" }
