package main

import (
	"context"
	"fmt"
	"strings"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/carry"
	"ramplan/press/words"
)

// verify tells whether the plan inside a sheet is what the archive issued, digest
// for digest, and what the sheet says of it. What is printed is not compared. A plan
// file is compared too.
func verify(ctx context.Context, c console, args []string) int {
	dir, files, status, ok := c.archiveVerb("verify", args, 1, 1, "the name of one sheet (an SVG, a PNG or a PDF) or plan")
	if !ok {
		return status
	}
	data, err := c.readSheet(files[0])
	if err != nil {
		c.complain("%s: %s", files[0], fileFault(err))
		return statusRefused
	}
	var sheet carry.Carried
	bare := false
	if plan, faults := press.Decode(data); len(faults) == 0 {
		sheet.Digest, bare = plan.Digest(), true
	} else if sheet, err = carry.Extract(data); err != nil {
		c.complain("%s: %s", files[0], strings.TrimPrefix(err.Error(), "carry: "))
		return statusRefused
	}
	a, err := archive.Look(ctx, dir)
	if err != nil {
		return c.give(err)
	}
	defer a.Close()
	match := matched
	if bare {
		match = matchedPlan
	}
	said, same, err := match(ctx, a, sheet)
	if err != nil {
		return c.give(err)
	}
	fmt.Fprintf(c.out, "%s: %s\n", files[0], said)
	if !same {
		return statusDiffers
	}
	return statusGood
}

// statusDiffers is verify's for a sheet that is not what was issued.
const statusDiffers = 1

// matched compares a sheet with what the archive holds, and says so.
func matched(ctx context.Context, a *archive.Archive, sheet carry.Carried) (said string, same bool, err error) {
	issued, err := a.Issued(ctx, sheet.Digest)
	if err != nil {
		return "", false, err
	}
	if sheet.Issue == nil {
		said := "printed from a draft that was never issued; digest " + words.ShortDigest(sheet.Digest)
		if len(issued) > 0 {
			said = fmt.Sprintf("printed from a draft; the same plan was issued as revision %s of %s, digest %s", issued[0].Letter, called(issued[0]), words.ShortDigest(sheet.Digest))
		}
		return said, false, nil
	}
	for _, f := range issued {
		if f.Letter != sheet.Issue.Revision {
			continue
		}
		rev, err := a.Revision(ctx, f.Plan, f.Letter)
		if err != nil {
			return "", false, err
		}
		if !rev.Says(*sheet.Issue) {
			return fmt.Sprintf("the plan is that of revision %s of %s, but date, names or reason on the sheet are others", f.Letter, called(f)), false, nil
		}
		return fmt.Sprintf("the plan inside is revision %s of %s, issued %s, digest %s; what is printed was not compared", f.Letter, called(f), sheet.Issue.Date, words.ShortDigest(sheet.Digest)), true, nil
	}
	if len(issued) > 0 {
		return fmt.Sprintf("says revision %s, but its plan was issued as revision %s of %s", sheet.Issue.Revision, issued[0].Letter, called(issued[0])), false, nil
	}
	return fmt.Sprintf("says revision %s, but no revision in the archive has its digest %s", sheet.Issue.Revision, words.ShortDigest(sheet.Digest)), false, nil
}

// matchedPlan compares a plan that is no sheet.
func matchedPlan(ctx context.Context, a *archive.Archive, plan carry.Carried) (said string, same bool, err error) {
	issued, err := a.Issued(ctx, plan.Digest)
	if err != nil || len(issued) == 0 {
		return "never issued; digest " + words.ShortDigest(plan.Digest), false, err
	}
	return fmt.Sprintf("issued as revision %s of %s, digest %s", issued[0].Letter, called(issued[0]), words.ShortDigest(plan.Digest)), true, nil
}

func called(f archive.Found) string {
	if f.Number == "" {
		return f.Name
	}
	return f.Number
}
