package main

import (
	"context"
	"errors"
	"flag"
	"strings"
	"time"
	"unicode"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/carry"
)

// kept is a plan in the archive, as the command line names it.
type kept struct {
	number, letter string
	last           string // letter of the last revision, once one was read
	data           *string
	old            string // by which revision the one that was read is superseded, in words
}

func (k *kept) flags(flags *flag.FlagSet) {
	text(flags, &k.number, "plan", "", say.PlanNumberFlag())
	text(flags, &k.letter, "revision", "", say.RevisionFlag())
	k.data = dataFlag(flags)
}

// stem starts the name of a file of the plan: its number as every system allows it
// in a file name, and its state.
func (k *kept) stem() string {
	state := "draft"
	if k.letter != "" {
		state = strings.ToUpper(k.letter)
	}
	safe := strings.Map(func(c rune) rune {
		if unicode.IsLetter(c) || unicode.IsDigit(c) || strings.ContainsRune("-_.", c) {
			return c
		}
		return '-'
	}, k.number)
	return strings.TrimLeft(safe, "-.") + "-" + state
}

// plan reads the plan beside the process that serves the archive.
// The studies of its station go into the source.
func (k *kept) plan(ctx context.Context, into *source) (*press.Plan, *carry.Issue, error) {
	dir, err := dataFolder(*k.data)
	if err != nil {
		return nil, nil, err
	}
	a, err := archive.Look(ctx, dir)
	if err != nil {
		return nil, nil, err
	}
	defer a.Close()
	if k.letter != "" {
		return k.issued(ctx, a, into)
	}
	ids, err := a.Numbered(ctx, k.number)
	switch {
	case err != nil:
		return nil, nil, err
	case len(ids) == 0:
		return nil, nil, errors.New(say.NoPlanOfNumber(k.number))
	case len(ids) > 1:
		return nil, nil, errors.New(say.SeveralOfNumber(len(ids), k.number))
	}
	if err := into.keptStudies(ctx, a, ids[0], ""); err != nil {
		return nil, nil, err
	}
	plan, err := a.Sound(ctx, ids[0])
	if faults := (press.Problems)(nil); errors.As(err, &faults) {
		return nil, nil, errors.New(say.DraftUnsound(faults[0]))
	}
	return plan, nil, err
}

func (k *kept) issued(ctx context.Context, a *archive.Archive, into *source) (*press.Plan, *carry.Issue, error) {
	found, err := a.IssuedOf(ctx, k.number, strings.ToUpper(k.letter))
	switch {
	case err != nil:
		return nil, nil, err
	case len(found) == 0:
		return nil, nil, errors.New(say.NoRevisionOfNumber(k.number, strings.ToUpper(k.letter)))
	case len(found) > 1:
		return nil, nil, errors.New(say.SeveralRevisionsOfNumber(len(found), k.number, strings.ToUpper(k.letter)))
	}
	rev, err := a.Revision(ctx, found[0].Plan, found[0].Letter)
	if err != nil {
		return nil, nil, err
	}
	k.last = found[0].Last
	if f := found[0]; f.Superseded() {
		k.old = say.SupersededBy(f.Last, f.LastAt.Local().Format(time.DateOnly))
	}
	return rev.Plan, rev.Paper(), into.keptStudies(ctx, a, found[0].Plan, found[0].Letter)
}
