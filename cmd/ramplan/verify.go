package main

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"math"
	"strings"
	"time"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/carry"
	"ramplan/press/drafts"
	"ramplan/press/words"
)

// verify tells whether the plan inside a sheet is what the archive issued, digest
// for digest, and what the sheet says of it. What is printed is not compared. A plan
// file is compared too, and so are the digits of a digest as somebody reads them from
// paper. That a newer revision was issued is said as well.
func verify(ctx context.Context, c console, args []string) int {
	dir, files, status, ok := c.archiveVerb("verify", args, 1, math.MaxInt, say.SheetOrDigest())
	if !ok {
		return status
	}
	name := strings.Join(files, " ")
	digits, typed := drafts.TypedDigest(name)
	data, err := c.readSheet(name)
	typed = typed && errors.Is(err, fs.ErrNotExist)
	switch {
	case typed:
	case len(files) > 1:
		c.complain("%s", say.VerifyNeedsASheet())
		return statusRefused
	case errors.Is(err, fs.ErrNotExist) && drafts.TooFewDigits(name):
		c.complain("%s", say.TooFewDigits(name))
		return statusRefused
	case err != nil:
		c.complain("%s: %s", name, fileFault(err))
		return statusRefused
	}
	var sheet carry.Carried
	match := matched
	if typed {
		match = func(ctx context.Context, a *archive.Archive, _ carry.Carried) (verdict, error) {
			return matchedDigits(ctx, a, digits)
		}
	} else if plan, faults := press.Decode(data); len(faults) == 0 {
		sheet.Digest, match = plan.Digest(), matchedPlan
	} else if sheet, err = carry.Extract(data); err != nil {
		c.complain("%s: %s", name, strings.TrimPrefix(err.Error(), "carry: "))
		return statusRefused
	}
	a, err := archive.Look(ctx, dir)
	if err != nil {
		return c.give(err)
	}
	defer a.Close()
	v, err := match(ctx, a, sheet)
	if err != nil {
		return c.give(err)
	}
	fmt.Fprintf(c.out, "%s: %s\n", name, v.said)
	cut := !typed && carry.Cut(data)
	if cut {
		c.complain("%s", say.FileCutOff(name))
	}
	switch {
	case cut:
		return statusDiffers
	case !v.same:
		return statusDiffers
	case v.old:
		return statusSuperseded
	}
	return statusGood
}

// A verdict is what verify says of a sheet.
type verdict struct {
	said string
	same bool // it is what was issued
	old  bool // and a newer revision was issued since
}

// issuedAs is a verdict on what was issued as the last of these revisions.
func issuedAs(said string, found ...archive.Found) verdict {
	v := verdict{said: said, same: true, old: true}
	for _, f := range found {
		v.old = v.old && f.Superseded()
	}
	if v.old {
		f := found[len(found)-1]
		v.said = say.Issued(said, strings.ToUpper(say.SupersededBy(f.Last, "")), f.LastAt.Local().Format(time.DateOnly))
	}
	return v
}

// statusDiffers is verify's for a sheet that is not what was issued.
const statusDiffers = 1

// statusSuperseded is verify's for what was issued, and has a newer revision.
const statusSuperseded = 3

// matched compares a sheet with what the archive holds, and says so.
func matched(ctx context.Context, a *archive.Archive, sheet carry.Carried) (verdict, error) {
	issued, err := a.Issued(ctx, sheet.Digest)
	if err != nil {
		return verdict{}, err
	}
	if sheet.Issue == nil {
		said := say.FromDraftNeverIssued(sheet.Digest)
		if len(issued) > 0 {
			said = say.FromDraftIssuedAs(issuedAs(fmt.Sprintf("issued as %s, digest %s", revisionsOf(issued), words.ShortDigest(sheet.Digest)), issued...).said)
		}
		return verdict{said: said}, nil
	}
	for _, f := range issued {
		if f.Letter != sheet.Issue.Revision {
			continue
		}
		rev, err := a.Revision(ctx, f.Plan, f.Letter)
		if old := (*archive.NotTaken)(nil); err != nil && !errors.As(err, &old) { // what was issued stays that
			return verdict{}, err
		}
		if !rev.Says(*sheet.Issue) {
			return verdict{said: say.PlanIssuedPaperOther(f.Letter, called(f))}, nil
		}
		return issuedAs(say.PlanIssuedPaperNotCompared(f.Letter, called(f), sheet.Issue.Date, words.ShortDigest(sheet.Digest)), f), nil
	}
	if len(issued) > 0 {
		return verdict{said: say.SaysOtherRevision(sheet.Issue.Revision, revisionsOf(issued))}, nil
	}
	return verdict{said: say.SaysUnknownRevision(sheet.Issue.Revision, words.ShortDigest(sheet.Digest))}, nil
}

// matchedPlan compares a plan that is no sheet.
func matchedPlan(ctx context.Context, a *archive.Archive, plan carry.Carried) (verdict, error) {
	issued, err := a.Issued(ctx, plan.Digest)
	if err != nil || len(issued) == 0 {
		return verdict{said: say.NeverIssued(plan.Digest)}, err
	}
	return issuedAs(say.IssuedAs(revisionsOf(issued), words.ShortDigest(plan.Digest)), issued...), nil
}

// matchedDigits looks for what was issued with a digest that begins so.
func matchedDigits(ctx context.Context, a *archive.Archive, digits string) (verdict, error) {
	issued, err := a.IssuedAs(ctx, digits)
	if err != nil {
		return verdict{}, err
	}
	if len(issued) == 0 {
		return matchedState(ctx, a, digits)
	}
	return issuedAs(say.DigestOf(revisionsOf(issued)), issued...), nil
}

// matchedState looks for a draft with a digest that begins so: it was never issued.
func matchedState(ctx context.Context, a *archive.Archive, digits string) (verdict, error) {
	states, whole, err := a.DraftsAs(ctx, digits)
	if err != nil {
		return verdict{}, err
	}
	var said []string
	for _, f := range states {
		said = append(said, say.Of(f.At, f.Stands, called(archive.Found{Name: f.Name, Number: f.Number})))
	}
	switch {
	case len(said) > 0:
		return verdict{said: strings.Join(said, say.And())}, nil
	case !whole:
		return verdict{said: say.NothingAmongTheNewest()}, nil
	}
	return verdict{said: say.NothingInTheArchive()}, nil
}

// revisionsOf names revisions of one digest.
func revisionsOf(found []archive.Found) string {
	var names []string
	for _, f := range found {
		names = append(names, say.RevisionOf(f.Letter, called(f)))
	}
	return strings.Join(names, say.AndAs())
}

func called(f archive.Found) string {
	if f.Number == "" {
		return f.Name
	}
	return f.Number
}
