package shell

import (
	"fmt"
	"time"

	"ramplan/press/words"
)

func (say Words) SheetOrDigest() string {
	return "the name of one sheet (an SVG, a PNG or a PDF) or plan, or the first 12 digits of a digest"
}

func (say Words) VerifyNeedsASheet() string {
	return "verify needs the name of one sheet (an SVG, a PNG or a PDF) or plan, or the first 12 digits of a digest; try: ramplan help"
}

func (say Words) TooFewDigits(name string) string {
	return fmt.Sprintf("%s: these are too few digits of a digest; give the first 12, as paper has them", name)
}

func (say Words) Issued(said string, letter string, day string) string {
	return said + "; " + letter + ", issued " + day
}

func (say Words) FromDraftNeverIssued(digest string) string {
	return "printed from a draft that was never issued; digest " + words.ShortDigest(digest)
}

func (say Words) FromDraftIssuedAs(said string) string {
	return "printed from a draft; the same plan was " + said
}

func (say Words) PlanIssuedPaperOther(letter string, called string) string {
	return fmt.Sprintf("the plan is that of revision %s of %s, but date, names or reason on the sheet are others", letter, called)
}

func (say Words) PlanIssuedPaperNotCompared(letter string, called string, date string, shortDigest string) string {
	return fmt.Sprintf("the plan inside is revision %s of %s, issued %s, digest %s; what is printed was not compared", letter, called, date, shortDigest)
}

func (say Words) SaysOtherRevision(revision string, revisionsOf string) string {
	return fmt.Sprintf("says revision %s, but its plan was issued as %s", revision, revisionsOf)
}

func (say Words) SaysUnknownRevision(revision string, shortDigest string) string {
	return fmt.Sprintf("says revision %s, but no revision in the archive has its digest %s", revision, shortDigest)
}

func (say Words) NeverIssued(digest string) string {
	return "never issued; digest " + words.ShortDigest(digest)
}

func (say Words) IssuedAs(revisionsOf string, shortDigest string) string {
	return fmt.Sprintf("issued as %s, digest %s", revisionsOf, shortDigest)
}

func (say Words) DigestOf(revisionsOf string) string { return "the digest of " + revisionsOf }

func (say Words) Of(at time.Time, stands bool, called string) string {
	return say.DraftState(at, stands) + ", of " + called
}

func (say Words) And() string { return "; and " }

func (say Words) NothingAmongTheNewest() string {
	return "no revision in the archive, and none of the newest states of its drafts, has a digest that begins so, nor is there a file of this name; older states were not looked at"
}

func (say Words) NothingInTheArchive() string {
	return "no revision and no draft in the archive has a digest that begins so, nor is there a file of this name"
}

func (say Words) RevisionOf(letter string, called string) string {
	return fmt.Sprintf("revision %s of %s", letter, called)
}

func (say Words) AndAs() string { return " and as " }
