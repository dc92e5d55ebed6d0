package issue

import (
	"time"

	"ramplan/press"
	"ramplan/press/carry"
)

// A Revision is an issued state of a plan. It never changes.
type Revision struct {
	Letter string
	At     time.Time // of issue
	Signed
	Document   *press.Document // as it was issued; nil where it is damaged or no document of today
	Plan       *press.Plan     // nil where there is none, or today's rules do not take it
	PlanDigest string          // of the plan in canonical form
	Damaged    bool            // the document or what is said of it does not match its digest
	Faults     press.Problems  // why today's rules do not take it, though it is what was issued
}

// Signed is who stands for a revision, and why it was issued.
type Signed struct {
	Prepared, Checked, Approved string
	Reason                      string // for the change
	Despite                     string // why it was issued with blockers; empty without
	Second                      string // who else stands for that
	Drill                       string // whether the change concerns the drill: DrillAgain, DrillSame, or empty where nobody said so
}

// Paths of what is signed.
const (
	PathPrepared = "issue.prepared"
	PathChecked  = "issue.checked"
	PathApproved = "issue.approved"
	PathReason   = "issue.reason"
	PathDespite  = "issue.despite"
	PathSecond   = "issue.second"
	PathDrill    = "issue.drill"
)

// Paper is what paper says of a revision.
func (r Revision) Paper() *carry.Issue {
	return &carry.Issue{
		Revision: r.Letter, Date: r.At.Local().Format(time.DateOnly),
		Prepared: r.Prepared, Checked: r.Checked, Approved: r.Approved,
		Reason: r.Reason, Despite: r.Despite, Second: r.Second,
	}
}

// Says tells whether paper says what was issued. The day may be the one before or
// after: it was printed as the clocks stood where the sheet was made.
func (r Revision) Says(paper carry.Issue) bool {
	day, err := time.Parse(time.DateOnly, paper.Date)
	if err != nil {
		return false
	}
	apart := r.At.Sub(day)
	paper.Date = ""
	mine := *r.Paper()
	mine.Date = ""
	return paper == mine && apart > -24*time.Hour && apart < 48*time.Hour
}
