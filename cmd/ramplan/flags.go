package main

import (
	"errors"
	"flag"
	"strings"
)

// once is the value of a flag that names something. It is given at most once, and
// names something: of two values one would be dropped unseen, and an empty one, as
// a script's unset variable makes it, would fall back to what nobody asked for.
type once struct {
	to    *string
	given bool
}

func (o *once) String() string {
	if o.to == nil {
		return ""
	}
	return *o.to
}

func (o *once) Set(s string) error {
	switch {
	case s == "":
		return errors.New(say.NamesNothing())
	case o.given:
		return errors.New(say.GivenBefore())
	}
	*o.to, o.given = s, true
	return nil
}

// text adds a flag that names something, with what it is without being given.
func text(flags *flag.FlagSet, to *string, name, otherwise, usage string) {
	*to = otherwise
	flags.Var(&once{to: to}, name, usage)
}

// names gives what follows the flags. A flag behind a name would be taken for a
// file, so it is refused; behind -- everything is a name.
func names(flags *flag.FlagSet, args []string) ([]string, error) {
	rest := flags.Args()
	if before := len(args) - len(rest) - 1; before >= 0 && args[before] == "--" {
		return rest, nil
	}
	for _, name := range rest {
		if len(name) > 1 && strings.HasPrefix(name, "-") {
			return nil, errors.New(say.FlagBehindNames(name))
		}
	}
	return rest, nil
}

// isGiven tells whether a flag stands on the command line.
func isGiven(flags *flag.FlagSet, name string) bool {
	found := false
	flags.Visit(func(f *flag.Flag) { found = found || f.Name == name })
	return found
}
