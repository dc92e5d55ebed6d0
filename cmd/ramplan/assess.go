package main

import (
	"context"
	"flag"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words/proof"
)

// statusNotPassed is what assess ends with where a study failed or is open.
const statusNotPassed = 1

// assess holds a plan against studies of its station and prints the assessment: all of it,
// or nothing where a file could not be read.
func assess(_ context.Context, c console, args []string) int {
	var on string
	flags := flag.NewFlagSet("assess", flag.ContinueOnError)
	flags.SetOutput(c.err)
	text(flags, &on, "on", time.Now().UTC().Format(time.DateOnly), say.OnFlag())
	switch err := flags.Parse(args); {
	case err == flag.ErrHelp:
		return statusGood
	case err != nil:
		return statusRefused
	}
	files, err := names(flags, args)
	if err != nil {
		return c.give(err)
	}
	switch {
	case len(files) < 2:
		c.complain("%s", say.AssessNeedsFiles())
		return statusRefused
	case !proving.IsDay(on):
		c.complain("%s", say.OnRefused(on))
		return statusRefused
	case twice(files, "-"):
		c.complain("%s", say.StandardInputOnce())
		return statusRefused
	}
	plan, sound := c.readPlan(files[0])
	var studies []*proving.Study
	for _, name := range files[1:] {
		study, ok := c.readStudy(name)
		sound = sound && ok
		studies = append(studies, study)
	}
	if !sound {
		return statusRefused
	}
	r := press.Evaluate(plan)
	a := proving.Assess(r, studies, on)
	proof.Words{Printer: say.Printer}.Explain(r, studies, a)
	if _, err := c.out.Write(a.JSON()); err != nil {
		c.complain("%s", say.CannotWrite(err))
		return statusRefused
	}
	for _, j := range a.Studies {
		if j.Verdict == proving.Fail || j.Verdict == proving.Open {
			return statusNotPassed
		}
	}
	return statusGood
}

// twice tells whether a name is listed more than once.
func twice(names []string, name string) bool {
	first := slices.Index(names, name)
	return first >= 0 && slices.Contains(names[first+1:], name)
}

// readStudy reads one study, a table of a file that is named .csv and JSON of any other; what
// is wrong with it goes to standard error, one fault a line.
func (c console) readStudy(name string) (*proving.Study, bool) {
	data, err := c.read(name)
	if err != nil {
		c.complain("%s: %s", name, fileFault(err))
		return nil, false
	}
	if strings.EqualFold(filepath.Ext(name), ".csv") {
		study, lines := proving.ReadCSV(data)
		for _, fault := range lines.Errors(filepath.Base(name)) {
			c.complain("%s", fault)
		}
		return study, lines.Sound()
	}
	study, problems := proving.Decode(data)
	for _, p := range problems {
		c.complain("%s: %s", name, p)
	}
	return study, len(problems) == 0
}
