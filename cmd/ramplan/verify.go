package main

import (
	"context"
	"fmt"
	"strings"

	"ramplan/press/archive"
	"ramplan/press/carry"
	"ramplan/press/words"
)

// verify tells whether a sheet is what the archive issued: the plan inside, digest
// for digest, and what is said of it.
func verify(ctx context.Context, c console, args []string) int {
	dir, names, status, ok := c.archiveVerb("verify", args, 1, 1, "the name of one sheet: an SVG, a PNG or a PDF")
	if !ok {
		return status
	}
	data, err := c.readSheet(names[0])
	if err != nil {
		c.complain("%s: %s", names[0], fileFault(err))
		return statusRefused
	}
	sheet, err := carry.Extract(data)
	if err != nil {
		c.complain("%s: %s", names[0], strings.TrimPrefix(err.Error(), "carry: "))
		return statusRefused
	}
	a, err := archive.Look(ctx, dir)
	if err != nil {
		return c.give(err)
	}
	defer a.Close()
	said, same, err := matched(ctx, a, sheet)
	if err != nil {
		return c.give(err)
	}
	fmt.Fprintf(c.out, "%s: %s\n", names[0], said)
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
		return fmt.Sprintf("matches revision %s of %s, issued %s, digest %s", f.Letter, called(f), sheet.Issue.Date, words.ShortDigest(sheet.Digest)), true, nil
	}
	if len(issued) > 0 {
		return fmt.Sprintf("says revision %s, but its plan was issued as revision %s of %s", sheet.Issue.Revision, issued[0].Letter, called(issued[0])), false, nil
	}
	return fmt.Sprintf("says revision %s, but no revision in the archive has its digest %s", sheet.Issue.Revision, words.ShortDigest(sheet.Digest)), false, nil
}

func called(f archive.Found) string {
	if f.Number == "" {
		return f.Name
	}
	return f.Number
}
