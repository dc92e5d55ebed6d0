package main

import (
	"bytes"
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"math"
	"runtime"
	"strconv"
	"strings"
	"text/tabwriter"
	"unicode/utf8"

	"ramplan/press"
	"ramplan/press/simulate"
	"ramplan/press/words"
)

// statusInterrupted is what a shell expects of a program that ^C has ended.
const statusInterrupted = 130

// simulated is what the command line asks simulate for.
type simulated struct {
	press.SimulationOptions
	asJSON bool
	files  []string
}

// simulateVerb presses many parts in at the stations of plans, and prints what becomes of
// them. Simulating is no judgement: a blocker changes nothing.
func simulateVerb(ctx context.Context, c console, args []string) int {
	s, err := simulateFlags(c, args)
	switch {
	case err == flag.ErrHelp:
		return statusGood
	case err != nil:
		c.complain("%v", err)
		return statusRefused
	case s == nil:
		return statusRefused // the flags have said why
	}
	return s.run(ctx, c)
}

// simulateFlags reads the command line; nil without an error where the flags said what is
// wrong.
func simulateFlags(c console, args []string) (*simulated, error) {
	var s simulated
	var parts, seed, precision string
	flags := flag.NewFlagSet("simulate", flag.ContinueOnError)
	flags.SetOutput(c.err)
	text(flags, &parts, "parts", "1e6", say.PartsFlag())
	text(flags, &seed, "seed", "1", say.SeedFlag())
	text(flags, &precision, "precision", "0.1", say.PrecisionFlag())
	flags.BoolVar(&s.asJSON, "json", false, say.SimulateJSONFlag())
	if err := flags.Parse(args); err != nil {
		if err == flag.ErrHelp {
			return nil, err
		}
		return nil, nil
	}
	var err error
	if s.files, err = names(flags, args); err != nil {
		return nil, err
	}
	var ok bool
	if s.Parts, ok = press.PartsFrom(parts); !ok {
		return nil, errors.New(say.PartsRefused(parts))
	}
	if s.Seed, err = strconv.ParseUint(seed, 10, 64); err != nil {
		return nil, errors.New(say.SeedRefused(seed, math.MaxUint64))
	}
	if s.Precision, err = strconv.ParseFloat(precision, 64); err != nil || !(s.Precision >= 0.001 && s.Precision <= 1) {
		return nil, errors.New(say.PrecisionRefused(precision))
	}
	if len(s.files) == 0 {
		return nil, errors.New(say.SimulateNeedsPlans())
	}
	return &s, nil
}

// run simulates as many plans at a time as there are processors, and prints them in the
// order in which they were given.
func (s *simulated) run(ctx context.Context, c console) int {
	status := statusGood
	var plans []*press.Result
	var files []string
	for _, name := range s.files {
		plan, ok := c.readPlan(name)
		if !ok {
			status = statusRefused
			continue
		}
		r := press.Evaluate(plan)
		if len(s.files) > 1 {
			r.File = name
		}
		plans, files = append(plans, r), append(files, name)
	}
	cores := runtime.GOMAXPROCS(0)
	s.Work.Slots = simulate.NewSlots(cores)
	bar := newBar(c.err, s.Parts*int64(len(plans)))
	s.Work.Progress = bar.add
	done := make([]chan printed, len(plans))
	for i := range done {
		done[i] = make(chan printed, 1)
	}
	atOnce := make(chan struct{}, cores)
	go func() {
		defer func() { _ = recover() }() // nothing here panics; whoever waits is told by each plan
		for i, r := range plans {
			atOnce <- struct{}{}
			go func() {
				defer func() {
					if v := recover(); v != nil {
						done[i] <- printed{err: errors.New(say.FaultInThisProgram(fmt.Sprint(v)))}
					}
				}()
				done[i] <- s.simulate(ctx, r)
			}()
		}
	}()
	for i := range plans {
		one := <-done[i]
		<-atOnce
		if one.err != nil {
			c.complain("%s: %v", files[i], one.err)
			status = statusRefused
			continue
		}
		bar.pause()
		if _, err := c.out.Write(one.text); err != nil {
			c.complain("%s", say.CannotWrite(err))
			return statusRefused
		}
	}
	bar.pause()
	if ctx.Err() != nil {
		c.complain("stopped")
		return statusInterrupted
	}
	return status
}

// printed is what is printed of one plan.
type printed struct {
	text []byte
	err  error
}

// simulate presses in at one station. Of a plan that was not begun when all was stopped,
// nothing is printed.
func (s *simulated) simulate(ctx context.Context, r *press.Result) printed {
	if ctx.Err() != nil {
		return printed{}
	}
	answer := r.Simulate(ctx, s.SimulationOptions)
	if !answer.Complete && answer.Parts == 0 && answer.Shares == nil {
		return printed{}
	}
	words.ExplainSimulation(answer)
	if s.asJSON {
		text, err := answer.JSON()
		return printed{text, err}
	}
	var b bytes.Buffer
	for _, t := range words.SimulationText(r, answer) {
		layOut(&b, t)
	}
	return printed{text: b.Bytes()}
}

// layOut writes a table in columns, numbers to the right.
func layOut(b *bytes.Buffer, t words.TextTable) {
	if t.Title != "" {
		fmt.Fprintln(b, t.Title)
	}
	if len(t.Rows) > 0 {
		columns(b, append([][]string{t.Head}, t.Rows...))
	}
	for _, note := range t.Notes {
		fmt.Fprintln(b, note)
	}
	fmt.Fprintln(b)
}

// columns sets the first column to the left and all others to the right.
func columns(b io.Writer, rows [][]string) {
	first := 0
	for _, row := range rows {
		first = max(first, utf8.RuneCountInString(row[0]))
	}
	w := tabwriter.NewWriter(b, 0, 0, 2, ' ', tabwriter.AlignRight)
	for _, row := range rows {
		name := row[0] + strings.Repeat(" ", first-utf8.RuneCountInString(row[0]))
		fmt.Fprintln(w, name+"\t"+strings.Join(row[1:], "\t")+"\t")
	}
	_ = w.Flush() // into memory
}
